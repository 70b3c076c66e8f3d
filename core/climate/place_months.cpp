#include "core/climate/place_months.h"

#include "core/calendar/month_length.h"
#include "core/climate/degree_days.h"
#include "core/climate/place_nights.h"

#include <algorithm>
#include <numeric>

namespace lathhouse::climate {

PlaceMonths PlaceMonths::of(const PlaceClimate& place, Metres pot)
{
    const auto& monthly = place.monthly;
    const auto light = months_of_light(monthly, place.position, place.elevation);
    Monthly<double> water{};
    for (std::size_t m = 0; m < 12; ++m) {
        const auto day = Millimetres::from_millimetres(light[m].reference_evapotranspiration.millimetres() / calendar::kMeanDaysOfMonths[m]);
        water[m] = pot_water_litres(day, pot);
    }
    std::optional<Millimetres> rain;
    if (std::ranges::all_of(place.rain, [](const auto& month) { return month.has_value(); })) {
        rain = Millimetres::from_millimetres(std::accumulate(place.rain.begin(), place.rain.end(), 0.0, [](double sum, const auto& month) {
            return sum + month->millimetres();
        }));
    }
    std::optional<Celsius> lowest;
    if (std::ranges::all_of(monthly.lowest, [](const auto& month) { return month.has_value(); })) {
        lowest = **std::ranges::min_element(monthly.lowest, {}, [](const auto& month) { return *month; });
    }
    return {light,
            degree_days_of_months(monthly, kDegreeDayBase),
            ground_temperature(monthly, Metres::from_metres(0.05)),
            ground_temperature(monthly, Metres::from_metres(0.10)),
            pot_temperature(monthly, pot),
            water,
            {thermal_season(monthly, Celsius::from_degrees(5.0)), thermal_season(monthly, Celsius::from_degrees(10.0))},
            PlaceNights::of(place).dates(Celsius::from_degrees(0.0)),
            seasons_of(monthly, place.rain),
            rain,
            lowest};
}

} // namespace lathhouse::climate
