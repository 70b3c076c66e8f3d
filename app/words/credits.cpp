#include "app/words/credits.h"

#include <algorithm>

namespace lathhouse::words {

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
