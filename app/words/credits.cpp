#include "app/words/credits.h"

#include <algorithm>

namespace lathhouse::words {

std::string stations_in_use(const climate::PlaceClimate& climate, UnitSystem units)
{
    const auto nearest = std::ranges::min(climate.stations, {}, &climate::StationInUse::distance);
    const auto& base = climate.stations.front().station->base;
    const auto away = distance(nearest.distance, units) + " away, ";
    const auto years = std::to_string(base.first_year) + "\u2013" + std::to_string(base.last_year);
    if (climate.own) {
        return "The household's own record " + nearest.station->name + ", kept " + away + years;
    }
    return std::to_string(climate.stations.size()) +
           (climate.stations.size() == 1 ? " station" : " stations") + ", the nearest " + away + years;
}

std::string credits(const climate::PlaceClimate& climate)
{
    const auto uses = [&](climate::StationSource source) {
        return std::ranges::any_of(climate.stations,
                                   [&](const auto& use) { return use.station->source == source; });
    };
    std::string text;
    const auto add = [&](const char* credit) {
        text += (text.empty() ? "Climate figures: " : "; ") + std::string{credit};
    };
    if (uses(climate::StationSource::WorldMonthly)) {
        add("2003\u20132021 means computed from CLIMAT reports, Deutscher Wetterdienst (CC BY 4.0)");
    }
    if (uses(climate::StationSource::UsDaily)) {
        add("computed from GHCN-Daily, NOAA NCEI (public domain)");
    }
    if (uses(climate::StationSource::Own)) {
        add("the household's own record");
    }
    return text;
}

} // namespace lathhouse::words
