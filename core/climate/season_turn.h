#pragma once

#include "core/calendar/day_of_year.h"
#include "core/climate/monthly_figures.h"

namespace lathhouse::climate {

/// The day that ends one cold season; the next begins on the day after.
class SeasonTurn {
public:
    /// 31 July, or 31 January where December-February lows are warmer than June-August ones.
    static SeasonTurn of_lows(const Monthly<Celsius>& mean_low);
    explicit constexpr SeasonTurn(calendar::DayOfYear last_day) : last_day_(last_day) {}

    constexpr calendar::DayOfYear last_day() const { return last_day_; }
    /// Place of a day within the season: 0 for the day after the turn, 365 for the turn itself.
    constexpr int season_index(calendar::DayOfYear day) const
    {
        return (day.place() - last_day_.place() - 1 + 2 * calendar::DayOfYear::kCount) %
               calendar::DayOfYear::kCount;
    }
    constexpr calendar::DayOfYear day_at(int season_index) const
    {
        return calendar::DayOfYear::wrapped(last_day_.place() + 1 + season_index);
    }
    friend constexpr bool operator==(const SeasonTurn&, const SeasonTurn&) = default;

private:
    calendar::DayOfYear last_day_;
};

/// The year's swing of the mean low is under 2 C: there are no seasons, so no dates.
bool has_no_season(const Monthly<Celsius>& mean_low);

} // namespace lathhouse::climate
