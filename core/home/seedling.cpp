#include "core/home/seedling.h"

#include "core/home/new_plant.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lathhouse::home {

Plant make_seedling(const plants::SeedKind& kind, std::string name)
{
    constexpr double kSeedlingKilograms = 1.0;
    if (const auto known = plants::PlantReference::built_in().find(kind.botanical_name)) {
        auto lines = (*known)->lines;
        lines.damage_begins = std::max(lines.damage_begins, kind.damaging_night());
        lines.safe_night = std::max({lines.safe_night, kind.safe_night, lines.damage_begins});
        if (auto made = make_plant(0, **known,
                                   {.name = name,
                                    .safe_night = lines.safe_night,
                                    .damage_begins = lines.damage_begins,
                                    .lethal = lines.lethal,
                                    .wants_open_air = true,
                                    .pot_kilograms = kSeedlingKilograms})) {
            return std::move(made).value();
        }
    }
    const bool hardy = kind.frost == plants::FrostClass::Hardy;
    const bool edible = kind.type == "veg" || kind.type == "herb";
    const bool nightshade =
        kind.botanical_name.starts_with("Solanum") || kind.botanical_name.starts_with("Capsicum");
    return {.id = 0,
            .name = std::move(name),
            .kind = kind.botanical_name,
            .lines = {.safe_night = kind.safe_night,
                      .damage_begins = kind.damaging_night(),
                      .lethal = kind.damaging_night() - KelvinDelta::from_kelvins(hardy ? 4.0 : 2.0)},
            .heat_limit = kind.growth_most + KelvinDelta::from_kelvins(8.0),
            .light_to_survive = DailyLight::from_moles(6.0),
            .light_to_thrive = DailyLight::from_moles(18.0),
            .must_dry = false,
            .hazardous = !edible || nightshade,
            .sulks = false,
            .wants_open_air = true,
            .pot_kilograms = kSeedlingKilograms,
            .spot = {},
            .pinned_spot = {}};
}

std::optional<calendar::Date> old_enough(const Tray& tray, const plants::SeedKind& kind)
{
    if (!kind.weeks_indoors) {
        return std::nullopt;
    }
    const double weeks = (kind.weeks_indoors->low + kind.weeks_indoors->high) / 2.0;
    return tray.sown + calendar::Days{static_cast<int>(std::lround(7.0 * weeks))};
}

bool is_young(const Plant& plant, calendar::Date date, bool outdoors)
{
    constexpr calendar::Days kLongerIndoors{60};
    return plant.young_until && date < (outdoors ? *plant.young_until : *plant.young_until + kLongerIndoors);
}

Household with_young_plants(Household household, const SeedBook& book)
{
    for (const auto& potted : book.potted) {
        const auto* tray = book.tray(potted.tray);
        const auto* lot = tray != nullptr ? book.lot(tray->lot) : nullptr;
        if (lot == nullptr) {
            continue;
        }
        const auto kind = plants::SeedReference::built_in().find(lot->crop);
        if (!kind) {
            continue;
        }
        for (auto& plant : household.plants) {
            if (std::ranges::find(potted.plants, plant.id) != potted.plants.end()) {
                plant.young_until = old_enough(*tray, **kind);
            }
        }
    }
    return household;
}

Result<std::vector<Plant>> seedlings_of(const SeedBook& book, TrayId tray_id, int count, const std::string& stem)
{
    const auto* tray = book.tray(tray_id);
    if (tray == nullptr) {
        return Error{ErrorCode::NotFound, said("there is no such tray; `lathhouse show lot` shows a lot's trays")};
    }
    const auto kind = plants::SeedReference::built_in().find(book.lot(tray->lot)->crop);
    if (!kind) {
        return kind.error();
    }
    const auto before = static_cast<int>(book.potted_from(tray_id));
    const auto called = (stem.empty() ? (*kind)->name() + " " + std::to_string(tray_id) : stem) + "-";
    std::vector<Plant> plants;
    for (int number = 1; number <= count; ++number) {
        plants.push_back(make_seedling(**kind, called + std::to_string(before + number)));
        plants.back().spot = tray->spot;
    }
    return plants;
}

} // namespace lathhouse::home
