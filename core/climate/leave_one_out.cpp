#include "core/climate/leave_one_out.h"

#include <cmath>
#include <vector>

namespace lathhouse::climate {

Result<LeaveOneOut> leave_one_out(std::span<const Station> stations, std::optional<StationSource> within)
{
    std::vector<Station> chosen;
    for (const Station& station : stations) {
        if (!within || station.source == *within) {
            chosen.push_back(station);
        }
    }
    int count = 0;
    double low = 0.0;
    double bias = 0.0;
    double high = 0.0;
    double expected = 0.0;
    for (const Station& station : chosen) {
        const auto place = climate_among(chosen, station.position, station.elevation, &station);
        if (!place) {
            continue;
        }
        ++count;
        expected += place->expected_error.kelvins();
        for (std::size_t m = 0; m < 12; ++m) {
            const double error = (place->monthly.low[m] - station.monthly.low[m]).kelvins();
            low += std::abs(error) / 12.0;
            bias += error / 12.0;
            high += std::abs((place->monthly.high[m] - station.monthly.high[m]).kelvins()) / 12.0;
        }
    }
    if (count == 0) {
        return Error{ErrorCode::NoStation,
                     "no station has a neighbour to stand for it; nothing can be measured"};
    }
    const auto mean = [count](double sum) { return KelvinDelta::from_kelvins(sum / count); };
    return LeaveOneOut{count, mean(low), mean(bias), mean(high), mean(expected)};
}

} // namespace lathhouse::climate
