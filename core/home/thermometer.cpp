#include "core/home/thermometer.h"

#include "core/calendar/day_of_year.h"

#include <cmath>

namespace lathhouse::home {

const KeptForecast* NightLog::last_forecast(calendar::Date night) const
{
    const KeptForecast* last = nullptr;
    for (const auto& forecast : forecasts) {
        if (forecast.night == night && (last == nullptr || forecast.issued >= last->issued)) {
            last = &forecast;
        }
    }
    return last;
}

climate::Monthly<Celsius> usual_lows(const Spot& spot, climate::Monthly<Celsius> in_the_open)
{
    if (spot.winter && !is_outdoors(spot.kind)) {
        in_the_open.fill(*spot.winter);
    }
    return in_the_open;
}

Celsius of_night(const climate::Monthly<Celsius>& lows, calendar::Date night)
{
    return lows[static_cast<std::size_t>(calendar::DayOfYear::of(night).month() - 1)];
}

bool is_slip_of_low(Celsius low, Celsius usual)
{
    constexpr double kFurthestFromUsual = 40.0;
    return std::abs(low.degrees() - usual.degrees()) > kFurthestFromUsual;
}

} // namespace lathhouse::home
