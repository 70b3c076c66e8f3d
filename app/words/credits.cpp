#include "app/words/credits.h"

#include "app/words/phrase.h"

#include <algorithm>

namespace lathhouse::words {

climate::BasePeriod years_in_use(const climate::PlaceClimate& climate)
{
    auto years = climate.stations.front().station->base;
    for (const auto& use : climate.stations) {
        years.first_year = std::min(years.first_year, use.station->base.first_year);
        years.last_year = std::max(years.last_year, use.station->base.last_year);
    }
    return years;
}

std::string stations_in_use(const climate::PlaceClimate& climate, UnitSystem units)
{
    const auto nearest = std::ranges::min(climate.stations, {}, &climate::StationInUse::distance);
    const auto base = years_in_use(climate);
    const auto away = distance(nearest.distance, units);
    const auto years = std::to_string(base.first_year) + "\u2013" + std::to_string(base.last_year);
    if (climate.own) {
        return phrase("The household's own record %1, kept %2 away, %3", nearest.station->name, away, years);
    }
    return climate.stations.size() == 1
               ? phrase("1 station, the nearest %1 away, %2", away, years)
               : phrase("%1 stations, the nearest %2 away, %3", std::to_string(climate.stations.size()), away, years);
}

std::string credits(const climate::PlaceClimate& climate)
{
    const auto uses = [&](climate::StationSource source) {
        return std::ranges::any_of(climate.stations,
                                   [&](const auto& use) { return use.station->source == source; });
    };
    std::string text;
    const auto add = [&](const std::string& credit) {
        text = text.empty() ? phrase("Climate figures: %1", credit) : text + "; " + credit;
    };
    if (uses(climate::StationSource::WorldMonthly)) {
        add(phrase("2003–2021 means computed from CLIMAT reports, Deutscher Wetterdienst (CC BY 4.0)"));
    }
    if (uses(climate::StationSource::UsDaily)) {
        add(phrase("computed from GHCN-Daily, NOAA NCEI (public domain)"));
    }
    if (uses(climate::StationSource::Own)) {
        add(phrase("the household's own record"));
    }
    return text;
}

} // namespace lathhouse::words
