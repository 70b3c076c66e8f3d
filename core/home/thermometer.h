#pragma once

#include "core/calendar/date.h"
#include "core/climate/monthly_figures.h"
#include "core/climate/night_weather.h"
#include "core/home/household.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::home {

/// What a minimum thermometer said of one night at one spot. Where a night of a spot was read twice, the
/// reading that was entered last counts.
struct Reading {
    SpotId spot;
    calendar::Date night; ///< The morning on which the night ended.
    Celsius low;
    std::optional<Celsius> high; ///< Highest since the last reading.
    climate::NightWeather weather;
    std::optional<Celsius> station_low; ///< What a station near by, in the open, had that same night.
    calendar::Instant entered;
    std::string note;
    friend bool operator==(const Reading&, const Reading&) = default;
};

/// A forecast of one night as it was given on a day, kept to see how right it was.
struct KeptForecast {
    calendar::Date issued;
    calendar::Date night; ///< The morning on which the night ends; on `issued` or after it.
    Celsius low;
    climate::NightWeather weather;
    std::optional<Celsius> dew_point;
    calendar::Instant entered;
    friend bool operator==(const KeptForecast&, const KeptForecast&) = default;
};

/// The thermometer log and the forecasts of a household.
struct NightLog {
    std::vector<Reading> readings;       ///< By night, one a night and spot.
    std::vector<KeptForecast> forecasts; ///< By night, then by day of issue; one a night and day.

    /// The forecast of that night that was issued last; nullptr where none was kept.
    const KeptForecast* last_forecast(calendar::Date night) const;
};

/// Bounds of what is taken for a temperature of the air; wider than any ever measured.
inline constexpr Celsius kColdestLogged = Celsius::from_degrees(-90.0);
inline constexpr Celsius kWarmestLogged = Celsius::from_degrees(60.0);

/// What nights usually fall to at a spot: the room's winter lows where it has such, else the months' mean lows in the open.
climate::Monthly<Celsius> usual_lows(const Spot& spot, climate::Monthly<Celsius> in_the_open);
/// Of the month of the morning on which the night ends.
Celsius of_night(const climate::Monthly<Celsius>& lows, calendar::Date night);
/// Whether a low is taken for a slip of the pen where such a night usually has `usual`. Further than 40 K from the month's
/// mean no low lies (common practice, no source).
bool is_slip_of_low(Celsius low, Celsius usual);

} // namespace lathhouse::home
