#pragma once

#include "core/climate/cold_chain.h"
#include "core/climate/counted_nights.h"
#include "core/climate/frost_dates.h"
#include "core/climate/month_curve.h"
#include "core/climate/monthly_figures.h"
#include "core/climate/night_offset.h"
#include "core/climate/night_spread.h"
#include "core/climate/season_chances.h"
#include "core/units/position.h"

#include <array>
#include <span>

namespace lathhouse::climate {

/// The lowest night of a cold season, over the seasons.
struct LowestNight {
    Celsius mean;
    Celsius tenth; ///< One season in ten has a night as cold as this or colder.
    Celsius median;
    Celsius ninetieth; ///< Nine seasons in ten have a night as cold as this or colder.
};

/// Night lows of a place from its monthly figures: smooth daily mean and spread, a day-to-day chain, exact
/// chances. Formulas, source and measured error: docs/methods/nights.md.
class NightModel {
public:
    /// latitude: for the fallback where no spread is known. counted: nights counted at lines, in any order;
    /// they tell the spread of the lows where the figures lack it, and how the tail differs from the usual.
    static NightModel from_monthly(const MonthlyFigures& figures, Latitude latitude,
                                   std::span<const CountedNights> counted = {});

    Celsius mean_low(calendar::DayOfYear day) const;
    KelvinDelta spread(calendar::DayOfYear day) const;
    /// What the spread rests on; the errors to expect depend on it.
    SpreadBasis basis() const { return basis_; }
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
    /// The same for any nights in order of time, not empty; nights in the list follow one another.
    Probability chance_among(std::span<const calendar::DayOfYear> nights, Celsius line,
                             NightOffset offset = {}) const;
    /// Dates for the standard percents and the given further ones.
    ThresholdDates dates(Celsius line, std::span<const double> further_percents = {}, NightOffset offset = {}) const;
    /// Accuracy of the grid: mean 0.02 K, quantiles 0.1 K.
    LowestNight lowest_of_season() const;

private:
    explicit NightModel(SeasonTurn turn) : turn_(turn) {}

    void set_course(const DailyCurve& mean_low, const Monthly<double>& spread);
    void use_lowest_values(const MonthlyFigures& figures, Monthly<double>& spread);
    void use_frost_days(const Monthly<std::optional<double>>& frost_days);
    /// Puts the spread that the counts tell in the place of `spread`; false where they tell none.
    bool use_counted_spread(const Monthly<Celsius>& low, std::span<const CountedNights> counted,
                            const DailyCurve& mean_low, Monthly<double>& spread) const;
    /// Moves and bends the tail month by month toward the counts, as far as so many years of them weigh.
    void use_counted_nights(std::span<const CountedNights> counted, int years);
    /// The true low below which a reading is at or below the line: half a reading step belongs to it. A bare
    /// line of a place read in whole degrees Fahrenheit is taken to the last reading that counts; a line
    /// moved by an offset is no reading and gets the half step alone, so that it moves smoothly.
    double effective_degrees(Celsius line, bool bare) const;
    double barrier(std::size_t place_index, double effective_degrees, double line_degrees) const;
    /// Chance without offset that the night falls below a true low.
    double chance_below(std::size_t place_index, double effective_degrees, double line_degrees) const;
    double chance_at_line(std::size_t place_index, double line_degrees, NightOffset offset) const;

    /// Barriers of those places in time for one line, one case a node of what the season shares.
    void set_cases(BarrierPaths& paths, std::size_t first_case, std::span<const std::size_t> places,
                   std::span<const QuadratureNode> season_nodes, double effective_degrees,
                   double line_degrees) const;
    /// Places of the season in time, from the day after the turn.
    std::array<std::size_t, 366> places_of_season() const;

    /// In more than half of the years every month has a night at or below the line: no safe window.
    bool falls_in_every_month(Celsius line, NightOffset offset) const;

    /// What the tail correction needs of a day.
    struct Day {
        double mean_low;
        double spread;
        double constant, linear, square; ///< c0, c1 and c2 - 0.111 S of docs/methods/nights.md.
        double season_share;             ///< Part of the variance that the whole season shares.
        double frost_shift;              ///< From frost days; 0 where they are not used.
    };
    SeasonTurn turn_;
    bool no_season_ = false;
    SpreadBasis basis_ = SpreadBasis::None;
    double reading_step_kelvins_ = 0.1;
    std::array<Day, 366> days_{}; // 1 January first
};

} // namespace lathhouse::climate
