#include "core/growth/temperature_response.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace lathhouse::growth {
namespace {

constexpr double kLeastBase = 4.0;          // Degrees Celsius.
constexpr double kBaseUnderComfort = 3.0;   // Kelvins.
constexpr double kMaximumOverComfort = 2.0; // Kelvins.
constexpr int kHours = 24;

} // namespace

double temperature_response(Celsius temperature, const CardinalTemperatures& cardinal)
{
    assert(cardinal.base < cardinal.optimum && cardinal.optimum < cardinal.maximum);
    if (!(temperature > cardinal.base && temperature < cardinal.maximum)) {
        return 0.0;
    }
    const double up = (cardinal.optimum - cardinal.base).kelvins();
    const double down = (cardinal.maximum - cardinal.optimum).kelvins();
    return (cardinal.maximum - temperature).kelvins() / down *
           std::pow((temperature - cardinal.base).kelvins() / up, up / down);
}

double day_response(Celsius low, Celsius high, const CardinalTemperatures& cardinal)
{
    const auto half = std::max(high, low) - low;
    double sum = 0.0;
    for (int hour = 0; hour < kHours; ++hour) {
        const double share = 0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * (hour + 0.5) / kHours);
        sum += temperature_response(low + half * share, cardinal);
    }
    return sum / kHours;
}

CardinalTemperatures cardinal_temperatures(const plants::PlantKind& kind)
{
    const auto kelvins = [](double value) { return KelvinDelta::from_kelvins(value); };
    const auto comfort = std::max(kind.comfort_high, kind.comfort_low) - kind.comfort_low;
    const auto base = std::min(std::max(kind.lines.safe_night, Celsius::from_degrees(kLeastBase)),
                               kind.comfort_low - kelvins(kBaseUnderComfort));
    const auto optimum = kind.comfort_low + comfort * (2.0 / 3.0);
    const auto maximum =
        std::max(kind.heat_limit, kind.comfort_low + comfort + kelvins(kMaximumOverComfort));
    return {base, optimum, maximum};
}

double light_response(DailyLight light, DailyLight good)
{
    assert(good.moles() > 0.0);
    return light.moles() > 0.0 ? 1.0 - std::exp(-light.moles() / good.moles()) : 0.0;
}

} // namespace lathhouse::growth
