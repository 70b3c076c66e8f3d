#include "core/home/household.h"

#include "core/base/parse.h"
#include "core/base/straight_apostrophes.h"

#include <algorithm>
#include <array>
#include <utility>

namespace lathhouse::home {
namespace {

constexpr std::array<std::pair<SpotKind, std::string_view>, 5> kSpotKinds{{{SpotKind::Indoors, "indoors"},
                                                                           {SpotKind::Open, "open"},
                                                                           {SpotKind::Roofed, "roofed"},
                                                                           {SpotKind::Screened, "screened"},
                                                                           {SpotKind::Glazed, "glazed"}}};

} // namespace

std::string_view to_string(SpotKind kind)
{
    const auto found = std::ranges::find(kSpotKinds, kind, &std::pair<SpotKind, std::string_view>::first);
    return found == kSpotKinds.end() ? std::string_view{} : found->second;
}

std::optional<SpotKind> spot_kind_of(std::string_view word)
{
    const auto found = std::ranges::find(kSpotKinds, word, &std::pair<SpotKind, std::string_view>::second);
    return found == kSpotKinds.end() ? std::nullopt : std::optional{found->first};
}

std::string_view to_string(PotShade shade)
{
    switch (shade) {
    case PotShade::Light:
        return "light";
    case PotShade::Dark:
        return "dark";
    case PotShade::Unknown:
        break;
    }
    return "";
}

std::optional<PotShade> pot_shade_of(std::string_view word)
{
    for (const auto shade : {PotShade::Unknown, PotShade::Light, PotShade::Dark}) {
        if (to_string(shade) == word) {
            return shade;
        }
    }
    return std::nullopt;
}

const Spot* Household::spot(SpotId id) const
{
    const auto found = std::ranges::find(spots, id, &Spot::id);
    return found == spots.end() ? nullptr : &*found;
}

const Plant* Household::plant(PlantId id) const
{
    const auto found = std::ranges::find(plants, id, &Plant::id);
    return found == plants.end() ? nullptr : &*found;
}

namespace {

/// The one of that id, or of that name without case and blanks at its ends, its apostrophes straight or curly; nullptr where
/// there is none.
template <class Thing>
const Thing* called(const std::vector<Thing>& things, std::string_view id_or_name)
{
    if (const auto id = parse_integer(id_or_name)) {
        const auto found = std::ranges::find(things, *id, &Thing::id);
        if (found != things.end()) {
            return &*found;
        }
    }
    const auto key = [](std::string_view name) { return lower_case(straight_apostrophes(trimmed(name))); };
    const auto wanted = key(id_or_name);
    const auto found =
        std::ranges::find_if(things, [&](const Thing& of) { return key(of.name) == wanted; });
    return found == things.end() ? nullptr : &*found;
}

} // namespace

const Spot* Household::spot_called(std::string_view id_or_name) const
{
    return called(spots, id_or_name);
}

const Plant* Household::plant_called(std::string_view id_or_name) const
{
    return called(plants, id_or_name);
}

} // namespace lathhouse::home
