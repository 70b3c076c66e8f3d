#pragma once

#include "core/calendar/day_of_year.h"
#include "core/climate/season_turn.h"
#include "core/units/probability.h"

#include <array>
#include <map>
#include <optional>
#include <span>

namespace lathhouse::climate {

class DayShift;

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

    /// Days from the last night of one season to the first of the next, by percent chance of exceeding; pairs
    /// that lack an end are longer than all (nullopt).
    ///
    /// The two ends are taken as independent: they lie half a year apart, and the chain forgets within a few
    /// weeks. 29 February is not counted.
    std::map<double, std::optional<int>> free_days(std::span<const double> percents) const;

    /// The same season with its beginning and its end moved; the share of seasons without such a night stays.
    SeasonChances moved(const DayShift& beginning, const DayShift& end, double nights_per_year) const;

private:
    friend class NightModel;
    explicit SeasonChances(SeasonTurn turn) : turn_(turn) {}
    SeasonTurn turn_;
    std::array<double, 366> on_or_before_{}; // by season index
    std::array<double, 366> after_{};        // by season index
    double nights_per_year_ = 0.0;
};

} // namespace lathhouse::climate
