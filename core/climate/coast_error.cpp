#include "core/climate/coast_error.h"

#include "core/climate/date_error.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {

namespace {

constexpr double kShoreKilometres = 5.0;
constexpr double kMostApart = 2.5;
constexpr double kLeastWeight = 0.05;
constexpr double kAlikeShare = 0.1; // Of the place's way to the sea; 0.1 in `apart` at most.

double logarithm_of(Metres distance)
{
    return std::log(distance.kilometres() + kShoreKilometres);
}

std::string whole_kilometres(Metres distance)
{
    return std::to_string(std::lround(distance.kilometres())) + " km";
}

} // namespace

Result<CoastSigns> coast_signs(const PlaceClimate& place, const geodesy::CoastLines& coast)
{
    const auto here = coast.distance_to_coast(place.position);
    if (!here) {
        return here.error();
    }
    double sum = 0.0;
    double weights = 0.0;
    for (const StationInUse& use : place.stations) {
        // The heaviest comes first and always counts.
        if (use.weight < kLeastWeight && weights > 0.0) {
            continue;
        }
        // A station so near to the place cannot be much nearer to the sea: its own way is not worth
        // measuring.
        const bool as_the_place = use.distance.kilometres() < kAlikeShare * here->kilometres();
        const auto there = as_the_place ? here : coast.distance_to_coast(use.station->position);
        if (!there) {
            return there.error();
        }
        sum += use.weight * logarithm_of(*there);
        weights += use.weight;
    }
    const double stations = weights > 0.0 ? sum / weights : logarithm_of(*here);
    return CoastSigns{*here,
                      Metres::from_metres(1000.0 * std::max(0.0, std::exp(stations) - kShoreKilometres)),
                      std::min(kMostApart, std::abs(logarithm_of(*here) - stations))};
}

KelvinDelta error_with_coast(KelvinDelta without, const CoastSigns& signs, StationSource source)
{
    struct Line {
        double of_error;
        double per_apart_squared;
        double behind_the_shore;
    };
    constexpr Line kDaily{0.931, 0.210, 0.505};
    constexpr Line kMonthly{0.906, 0.123, 0.272};
    constexpr double kFarEnough = 1.5; // Places farther apart err no more than these.
    // The sea itself evens the shore; what it does some kilometres behind it, hills and winds decide.
    constexpr double kShoreKilometresToHalf = 3.0;
    constexpr double kShoreReachKilometres = 30.0;
    const double from_sea = signs.place.kilometres();
    const double apart = std::min(signs.apart, kFarEnough);
    const Line& line = source == StationSource::WorldMonthly ? kMonthly : kDaily;
    return KelvinDelta::from_kelvins(line.of_error * without.kelvins() +
                                     line.per_apart_squared * apart * apart +
                                     line.behind_the_shore * from_sea / (from_sea + kShoreKilometresToHalf) *
                                         std::exp(-from_sea / kShoreReachKilometres));
}

Result<void> count_coast_in(PlaceClimate& place, const geodesy::CoastLines& coast)
{
    if (place.own || place.stations.empty()) {
        return {};
    }
    const auto signs = coast_signs(place, coast);
    if (!signs) {
        return signs.error();
    }
    place.expected_error =
        error_with_coast(place.expected_error, *signs, place.stations.front().station->source);
    place.expected_error_days = error_days_of_model(place.monthly, place.expected_error);
    place.expected_error_days_carried = error_days_carried(place.expected_error);
    constexpr double kWorthAWord = 1.0;
    if (signs->apart > kWorthAWord) {
        const bool nearer = signs->place < signs->stations;
        const auto place_from_sea = whole_kilometres(signs->place);
        const auto stations_from_sea = whole_kilometres(signs->stations);
        place.warnings.push_back(nearer ? said("the place lies %1 from the sea, its stations mostly %2: its nights are "
                                               "usually milder than they say",
                                               place_from_sea, stations_from_sea)
                                        : said("the place lies %1 from the sea, its stations mostly %2: its nights are "
                                               "usually colder than they say",
                                               place_from_sea, stations_from_sea));
    }
    return {};
}

} // namespace lathhouse::climate
