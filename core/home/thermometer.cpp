#include "core/home/thermometer.h"

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

} // namespace lathhouse::home
