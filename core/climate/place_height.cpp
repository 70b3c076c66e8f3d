#include "core/climate/place_height.h"

#include "core/climate/date_error.h"
#include "core/climate/station_weights.h"
#include "core/climate/whole_number.h"

#include <cmath>
#include <vector>

namespace lathhouse::climate {

std::optional<HeightTaken> height_near(std::span<const geodesy::Town> towns, Position position)
{
    constexpr std::size_t kAsked = 8; // Some have no height.
    constexpr int kCounted = 3;
    constexpr double kSoftKilometres = 2.0;
    constexpr double kErrorMetres = 10.0;
    constexpr double kErrorMetresPerKilometre = 4.5;
    std::optional<double> nearest;
    double sum = 0.0;
    double weights = 0.0;
    int counted = 0;
    for (const auto& near : geodesy::nearest_towns(towns, position, kAsked)) { // Nearest first.
        if (!near.town->elevation || counted == kCounted) {
            continue;
        }
        nearest = nearest.value_or(near.distance.kilometres());
        const double weight = std::pow(near.distance.kilometres() + kSoftKilometres, -2.0);
        sum += weight * near.town->elevation->metres();
        weights += weight;
        ++counted;
    }
    if (!nearest || *nearest > kHeightKilometres) {
        return std::nullopt;
    }
    return HeightTaken{Metres::from_metres(sum / weights),
                       Metres::from_metres(kErrorMetres + kErrorMetresPerKilometre * *nearest),
                       Metres::from_kilometres(*nearest)};
}

Result<PlaceClimate> climate_at_height_near(std::span<const Station* const> stations,
                                            std::span<const geodesy::Town> towns, Position position,
                                            const Station* leave_out)
{
    const auto taken = height_near(towns, position);
    auto place =
        climate_among(stations, position, taken ? std::optional{taken->height} : std::nullopt, leave_out);
    if (!place || !taken) {
        return place;
    }
    place->elevation_given = false;
    place->expected_error = KelvinDelta::from_kelvins(
        std::hypot(place->expected_error.kelvins(), Lapse::kLowPerKilometre * taken->error.kilometres()));
    place->expected_error_days = error_days_of_model(place->monthly, place->expected_error);
    place->expected_error_days_carried = error_days_carried(place->expected_error);
    place->warnings.insert(place->warnings.begin(),
                           said("the height of the place is not given; %1 m is taken, as high as the towns near it lie",
                                whole(taken->height.metres())));
    return place;
}

Result<PlaceClimate> climate_at_height_near(const StationTable& table, std::span<const geodesy::Town> towns,
                                            Position position)
{
    std::vector<const Station*> stations;
    for (const Station& station : table.stations()) {
        stations.push_back(&station);
    }
    return climate_at_height_near(stations, towns, position);
}

} // namespace lathhouse::climate
