#pragma once

#include "core/climate/frost_dates.h"
#include "core/climate/monthly_figures.h"
#include "core/units/position.h"

#include <array>
#include <span>

namespace lathhouse::climate {

/// How a spot's night lows differ from the open air: a normal distribution that is integrated into every
/// chance.
struct NightOffset {
    KelvinDelta mean = KelvinDelta::from_kelvins(0.0);   ///< Spot less open air; warmer is positive.
    KelvinDelta spread = KelvinDelta::from_kelvins(0.0); ///< Standard deviation of what is not known of it.
    friend constexpr bool operator==(const NightOffset&, const NightOffset&) = default;
};

/// Chances through one cold season for one line, from turn to turn. The *night of date D* ends on the morning
/// of D.
class SeasonChances {
public:
    /// Chance of at least one night at or below the line from the day after the turn to that day, both
    /// included.
    Probability on_or_before(calendar::DayOfYear day) const;
    /// Chance of at least one such night after that day and up to the turn.
    Probability after(calendar::DayOfYear day) const;
    Probability share_without() const;
    /// First day with on_or_before(day) >= chance; nullopt where it is never reached.
    std::optional<calendar::DayOfYear> first(Probability chance) const;
    /// First day of the season with after(day) <= chance; nullopt where that holds for the whole season
    /// already.
    std::optional<calendar::DayOfYear> last(Probability chance) const;
    double nights_per_year() const { return nights_per_year_; }
    const SeasonTurn& turn() const { return turn_; }

private:
    friend class NightModel;
    explicit SeasonChances(SeasonTurn turn) : turn_(turn) {}
    SeasonTurn turn_;
    std::array<double, 366> on_or_before_{}; // by season index
    std::array<double, 366> after_{};        // by season index
    double nights_per_year_ = 0.0;
};

/// Night lows of a place from its monthly figures: smooth daily mean and spread, a day-to-day chain, exact
/// chances. Formulas, source and measured error: docs/methods.md, "Nights from monthly figures".
class NightModel {
public:
    /// latitude: for the fallback where no spread is known.
    static NightModel from_monthly(const MonthlyFigures& figures, Latitude latitude);

    Celsius mean_low(calendar::DayOfYear day) const;
    KelvinDelta spread(calendar::DayOfYear day) const;
    SeasonTurn turn() const { return turn_; }
    bool no_season() const { return no_season_; }

    /// Chance that the night of that day falls to the line or below.
    Probability chance_on(calendar::DayOfYear day, Celsius line, NightOffset offset = {}) const;
    /// The low that the night of that day falls to or below with that chance (0 < chance < 1).
    Celsius quantile(calendar::DayOfYear day, Probability chance, NightOffset offset = {}) const;
    SeasonChances season(Celsius line, NightOffset offset = {}) const;
    /// Chance of at least one night at or below the line among `count` (>= 1) nights beginning with that of
    /// `first`.
    Probability chance_within(calendar::DayOfYear first, int count, Celsius line,
                              NightOffset offset = {}) const;
    /// Dates for the standard percents and the given further ones.
    ThresholdDates dates(Celsius line, std::span<const double> further_percents = {}) const;
    /// Mean over seasons of the season's lowest night.
    Celsius lowest_of_season() const;

private:
    NightModel() : turn_(calendar::DayOfYear::wrapped(213)) {}
    SeasonTurn turn_;
    bool no_season_ = false;
    // Further members are the model's own.
};

} // namespace lathhouse::climate
