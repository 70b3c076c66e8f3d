#include "app/words/demonstration_words.h"

#include "app/words/table_words.h"
#include "core/plants/plant_kind.h"

#include <array>
#include <cctype>
#include <string>
#include <string_view>
#include <utility>

namespace lathhouse::words {

namespace {

/// A name begins as a sentence does; tables of kinds have theirs as they stand within one.
std::string begun_large(std::string name)
{
    constexpr std::array<std::pair<std::string_view, std::string_view>, 8> kAccented{
        {{"á", "Á"}, {"é", "É"}, {"í", "Í"}, {"ó", "Ó"}, {"ú", "Ú"}, {"ä", "Ä"}, {"ö", "Ö"}, {"ü", "Ü"}}};
    for (const auto& [small, large] : kAccented) {
        if (name.starts_with(small)) {
            return name.replace(0, small.size(), large);
        }
    }
    if (!name.empty()) {
        name.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(name.front())));
    }
    return name;
}

std::string note_for_reader(const std::string& note)
{
    constexpr std::string_view kBefore = "dropped ";
    constexpr std::string_view kAfter = " leaves after the move";
    if (!note.starts_with(kBefore) || !note.ends_with(kAfter)) {
        return table_text(note);
    }
    const auto count = note.substr(kBefore.size(), note.size() - kBefore.size() - kAfter.size());
    auto said = table_text("dropped %1 leaves after the move");
    const auto place = said.find("%1");
    return place == std::string::npos ? note : said.replace(place, 2, count);
}

} // namespace

void name_for_reader(home::Household& demonstration)
{
    if (language().empty()) {
        return;
    }
    demonstration.name = table_text(demonstration.name);
    demonstration.place.name = table_text(demonstration.place.name);
    for (auto& spot : demonstration.spots) {
        spot.name = table_text(spot.name);
        spot.short_name = table_text(spot.short_name);
    }
    for (auto& plant : demonstration.plants) {
        const auto kind = plants::PlantReference::built_in().find(plant.kind);
        auto own = table_text(plant.name); // A shelf has no room for the longest names of kinds.
        if (own == plant.name && kind && plant.name == (*kind)->common_names.front()) {
            own = begun_large(common_name(plant.kind, plant.name));
        }
        plant.name = std::move(own);
    }
}

void name_for_reader(std::vector<home::Event>& history)
{
    if (language().empty()) {
        return;
    }
    for (auto& event : history) {
        event.note = note_for_reader(event.note);
        if (const auto product = event.details.find("product"); product != event.details.end()) {
            product->second = table_text(product->second);
        }
    }
}

void name_for_reader(home::SeedBook& seeds)
{
    if (language().empty()) {
        return;
    }
    for (auto& lot : seeds.lots) {
        lot.name = table_text(lot.name);
        lot.note = table_text(lot.note);
    }
}

} // namespace lathhouse::words
