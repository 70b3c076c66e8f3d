#include "core/climate/expected_error.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {

namespace {

struct Line {
    double start;
    double per_standard_error;
    double per_hundred_kilometres;
    double per_kilometre_off;
    double per_kilometre_of_relief;
};
constexpr Line kDailyLine{0.0, 0.756, 0.0, 1.075, 1.33};
constexpr Line kMonthlyLine{0.292, 0.456, 0.0, 0.256, 0.928};
constexpr double kLeastKelvins = 0.3;

} // namespace

ErrorSigns error_signs(const StationWeights& weights, Metres elevation)
{
    const Metres nearest = std::ranges::min(weights.stations, {}, &WeightedStation::distance).distance;
    double mean = 0.0;
    double square = 0.0;
    for (const WeightedStation& s : weights.stations) {
        const double up = (s.station->elevation - elevation).kilometres();
        mean += s.positive_share * up;
        square += s.positive_share * up * up;
    }
    return {weights.standard_error_kelvins, nearest, Metres::from_metres(1000.0 * std::abs(mean)),
            Metres::from_metres(1000.0 * std::sqrt(std::max(square - mean * mean, 0.0)))};
}

KelvinDelta expected_low_error(const ErrorSigns& signs, StationSource source)
{
    const Line& line = source == StationSource::WorldMonthly ? kMonthlyLine : kDailyLine;
    const double error = line.start + line.per_standard_error * signs.standard_error_kelvins +
                         line.per_hundred_kilometres * signs.nearest.kilometres() / 100.0 +
                         line.per_kilometre_off * signs.height_off.kilometres() +
                         line.per_kilometre_of_relief * signs.relief.kilometres();
    return KelvinDelta::from_kelvins(std::max(error, kLeastKelvins));
}

} // namespace lathhouse::climate
