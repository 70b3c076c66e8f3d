#pragma once

#include "core/base/result.h"
#include "core/growth/growth_clock.h"
#include "core/growth/series.h"

#include <span>
#include <string>
#include <vector>

namespace lathhouse::growth {

/// A difference of means with its limits.
struct MeanDifference {
    double difference;
    double low;
    double high;
    double t;
    double freedom;
    double two_sided; ///< Chance of a difference as large where there is none.
    int pairs_or_first; ///< Plants: pairs, or those of the first group.
    int second;         ///< Those of the second group; 0 where paired.
};

/// Mean of the differences, by Student's t. Errors: WrongUsage under 2 differences or where all are equal.
Result<MeanDifference> paired_difference(std::span<const double> differences, double level = 0.95);
/// Mean of the first less mean of the second group, by Welch's t with Satterthwaite's degrees of freedom.
/// Errors: WrongUsage under 2 in a group or where neither varies.
/// Source: Welch, Biometrika 34 (1947) 28-35; checked against R.
Result<MeanDifference> welch_difference(std::span<const double> first, std::span<const double> second,
                                        double level = 0.95);

/// Growth of one plant before and after an event.
struct RatesOfPlant {
    std::string name;
    std::string group;       ///< Empty where all plants met the event.
    int readings_before = 0; ///< On the event's date or before it.
    int readings_after = 0;
    /// A day of the clock, transformed; nullopt under 3 readings on that side or where the clock stood still.
    /// Theil-Sen, so that a misread value does not turn it.
    std::optional<double> before;
    std::optional<double> after;
    std::optional<double> change() const
    {
        return before && after ? std::optional{*after - *before} : std::nullopt;
    }
};
RatesOfPlant rates_of(SeriesKind kind, std::string name, std::span<const SeriesReading> readings,
                      calendar::Date event, const GrowthClock& clock);

} // namespace lathhouse::growth
