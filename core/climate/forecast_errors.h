#pragma once

#include "core/units/temperature.h"

#include <array>
#include <span>

namespace lathhouse::climate {

/// Days from the day a forecast was made to the morning on which the night ends: tonight has 1.
using LeadDays = int;
constexpr LeadDays kLongestLead = 365;
/// From that lead on a forecast of a night's low says no more than the season.
constexpr LeadDays kLastUsefulLead = 10;

/// One forecast held against what the thermometer then said.
struct ForecastMiss {
    LeadDays lead;
    KelvinDelta miss;            ///< Low that came less low that was expected.
    KelvinDelta expected_spread; ///< Standard deviation of such a difference by the usual errors, the
                                 ///< thermometer's part included.
};

/// How far forecasts of a night's low are wrong, by lead.
///
/// Usual errors: standard deviation 1.6 K at lead 0, then 0.3 K more a day up to 3.7 K at seven days, from
/// there straight to the season's own spread at ten days. Where the season's spread is under 4.25 K the error
/// is the same share of the variance as there, since a forecast is never worse than the season.
/// Source: working figures of trade rule R141 (1.9, 2.2, 2.5, 3.1 and 3.7 K at 1, 2, 3, 5 and 7 days). They
/// are a reading of published shares within 2 degrees (about 500 places of Australia 2024-25: 82.8 % of
/// next-day lows; 119 places of the United Kingdom: 86.5 %), which imply 1.3 to 1.6 K at one day and growth
/// near 0.3 K a day, with 0.3 K added for harder sites. Weak: the growth is of one month in three cities, the
/// addition is common practice without a source, and no lead beyond a week was measured for lows.
class ForecastErrors {
public:
    /// The usual errors, before a place has a record of its own.
    ForecastErrors() = default;
    /// Usual errors times a factor for each group of leads, learned from the place's own record: its
    /// variance is the mean of the record's and of ten nights of the usual error, misses weighted as
    /// Student's t with five degrees of freedom asks (expectation maximization of the scale), so that one
    /// bust does not decide it.
    static ForecastErrors learned(std::span<const ForecastMiss> record);

    /// Standard deviation of the low about what a forecast makes of it; at most the season's.
    KelvinDelta spread(LeadDays lead, KelvinDelta season_spread) const;
    /// Correlation of the low with its forecast: the root of 1 - (error / season)^2.
    double correlation(LeadDays lead, KelvinDelta season_spread) const;

    struct Group {
        LeadDays first;
        LeadDays last;
        int nights;    ///< Of the record.
        double factor; ///< Of the usual standard deviation.
    };
    static constexpr std::size_t kGroups = 3;
    std::span<const Group, kGroups> groups() const { return groups_; }

private:
    std::array<Group, kGroups> groups_{{{0, 2, 0, 1.0}, {3, 6, 0, 1.0}, {7, kLastUsefulLead, 0, 1.0}}};
};

} // namespace lathhouse::climate
