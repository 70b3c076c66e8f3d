#include "core/climate/leave_one_out.h"

#include "core/base/csv.h"
#include "core/climate/station_rows.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace lathhouse::climate {

namespace {

std::string fixed(double number, int decimals)
{
    std::array<char, 48> text{};
    std::snprintf(text.data(), text.size(), "%.*f", decimals, number);
    return text.data();
}

} // namespace

Result<LeaveOneOut> leave_one_out(std::span<const Station> stations, std::optional<StationSource> within)
{
    std::vector<const Station*> chosen;
    std::array<std::vector<const Station*>, 3> of_source;
    for (const Station& station : stations) {
        if (!within || station.source == *within) {
            chosen.push_back(&station);
            of_source[static_cast<std::size_t>(station.source)].push_back(&station);
        }
    }
    std::vector<StationLeftOut> left_out;
    double low = 0.0;
    double bias = 0.0;
    double high = 0.0;
    double expected = 0.0;
    for (const Station* station : chosen) {
        const auto& others = of_source[static_cast<std::size_t>(station->source)];
        const auto place = climate_among(others, station->position, station->elevation, station);
        if (!place) {
            continue;
        }
        double low_here = 0.0;
        double bias_here = 0.0;
        double high_here = 0.0;
        for (std::size_t m = 0; m < 12; ++m) {
            const double error = (place->monthly.low[m] - station->monthly.low[m]).kelvins();
            low_here += std::abs(error) / 12.0;
            bias_here += error / 12.0;
            high_here += std::abs((place->monthly.high[m] - station->monthly.high[m]).kelvins()) / 12.0;
        }
        low += low_here;
        bias += bias_here;
        high += high_here;
        expected += place->expected_error.kelvins();
        left_out.push_back({station, place->signs, KelvinDelta::from_kelvins(low_here),
                            KelvinDelta::from_kelvins(bias_here), KelvinDelta::from_kelvins(high_here),
                            place->expected_error});
    }
    if (left_out.empty()) {
        return Error{ErrorCode::NoStation, said("no station has a neighbour to stand for it; nothing can be measured")};
    }
    const auto count = static_cast<int>(left_out.size());
    const auto mean = [count](double sum) { return KelvinDelta::from_kelvins(sum / count); };
    return LeaveOneOut{std::move(left_out), count, mean(low), mean(bias), mean(high), mean(expected)};
}

std::string leave_one_out_text(const LeaveOneOut& result)
{
    std::string text = "id,name,latitude,longitude,elevation_m,source,nearest_km,height_off_m,relief_m,"
                       "standard_error_c,low_mae_c,low_bias_c,high_mae_c,expected_error_c\n";
    for (const StationLeftOut& s : result.stations) {
        const Station& station = *s.station;
        text += csv_field(station.id) + "," + csv_field(station.name) + "," +
                fixed(station.position.latitude.degrees(), 4) + "," +
                fixed(station.position.longitude.degrees(), 4) + "," + fixed(station.elevation.metres(), 1) +
                "," + std::string{to_string(station.source)} + "," + fixed(s.signs.nearest.kilometres(), 1) +
                "," + fixed(s.signs.height_off.metres(), 0) + "," + fixed(s.signs.relief.metres(), 0) + "," +
                fixed(s.signs.standard_error_kelvins, 3) + "," + fixed(s.low_error.kelvins(), 3) + "," +
                fixed(s.low_bias.kelvins(), 3) + "," + fixed(s.high_error.kelvins(), 3) + "," +
                fixed(s.expected.kelvins(), 3) + "\n";
    }
    return text;
}

Result<BaseOffset> base_offset(std::span<const Station> stations, StationSource of, StationSource from)
{
    constexpr double kNearKilometres = 100.0;
    constexpr int kFewest = 10;
    std::vector<const Station*> neighbours;
    for (const Station& station : stations) {
        if (station.source == from) {
            neighbours.push_back(&station);
        }
    }
    int count = 0;
    double sum = 0.0;
    double squares = 0.0;
    for (const Station& station : stations) {
        if (station.source != of) {
            continue;
        }
        const auto place = climate_among(neighbours, station.position, station.elevation, &station);
        if (!place || place->signs.nearest.kilometres() > kNearKilometres) {
            continue;
        }
        double off = 0.0;
        for (std::size_t m = 0; m < 12; ++m) {
            off += (station.monthly.low[m] - place->monthly.low[m]).kelvins() / 12.0;
        }
        ++count;
        sum += off;
        squares += off * off;
    }
    if (count < kFewest) {
        return Error{ErrorCode::NoStation,
                     said("only %1 stations of one base period lie near those of the other; ten are needed", count)};
    }
    const double mean = sum / count;
    return BaseOffset{count, KelvinDelta::from_kelvins(mean),
                      KelvinDelta::from_kelvins(std::sqrt(std::max(squares / count - mean * mean, 0.0)))};
}

} // namespace lathhouse::climate
