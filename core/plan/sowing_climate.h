#pragma once

#include "core/calendar/date.h"
#include "core/climate/place_climate.h"
#include "core/plan/cold_chances.h"

#include <array>
#include <map>
#include <optional>
#include <vector>

namespace lathhouse::plan {

/// The usual days of a place from a date on, as seeds and young plants feel them; days are counted from it.
///
/// Under a shelter (a cold frame, an unheated greenhouse) nights, days and soil are warmer by the shelter's mean
/// offset and no rain falls: common practice, no source.
class SowingClimate {
public:
    /// Days ahead that are known.
    static constexpr int kDays = 3 * 365;
    /// Depth at which the soil's temperature stands for the seed bed.
    static constexpr double kSeedBedMetres = 0.05;

    SowingClimate(const climate::PlaceClimate& place, calendar::Date today, climate::NightOffset shelter = {});

    calendar::Date today() const { return today_; }
    calendar::Date date(int day) const { return today_ + calendar::Days{day}; }
    Celsius usual_low(int day) const { return Celsius::from_degrees(at(lows_, day)); }
    /// Mean of the day's air.
    Celsius mean(int day) const { return Celsius::from_degrees(at(means_, day)); }
    /// Mean of the day, at seed depth (climate/ground.h).
    Celsius soil(int day) const { return Celsius::from_degrees(at(soils_, day)); }
    double day_length_hours(int day) const { return at(lengths_, day); }
    /// Of a month like the days about it; nullopt where the place's rain is not known.
    std::optional<double> rain_of_month(int day) const;

    /// Whether the line is reached with a chance of at most `risk` in the nights after `from` up to the turn of the
    /// season, and again from the turn up to `to`. A stay on one side of the turn holds where either the nights from
    /// its beginning to the turn or those from the turn to its end do: before it a plant goes on standing once it is
    /// ready, after it no cold night comes earlier than its beginning. Without seasons: the nights of the stay.
    bool nights_hold(int from, int to, Celsius line, Probability risk) const;
    /// Chance of a night at or below the line after that day and up to the turn; of the year to come where the
    /// place has no seasons.
    Probability chance_after(int day, Celsius line) const;
    bool has_seasons() const { return !chances_.nights().no_season(); }

private:
    using Year = std::array<double, 366>;
    int place_of(int day) const { return places_[static_cast<std::size_t>(day)]; }
    double at(const Year& year, int day) const { return year[static_cast<std::size_t>(place_of(day) - 1)]; }
    double expected_nights(int from, int to, Celsius line) const;

    calendar::Date today_;
    climate::NightOffset shelter_;
    ColdChances chances_;
    std::vector<int> places_; ///< Place of the year of each day ahead.
    Year lows_{}, means_{}, soils_{}, lengths_{};
    std::optional<Year> rains_;
    mutable std::map<double, std::vector<double>> sums_; ///< By line: expected nights up to each day ahead.
};

} // namespace lathhouse::plan
