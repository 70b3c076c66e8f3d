#include "app/models/round_source.h"

#include "app/models/event_turn.h"
#include "app/models/gone_in_memory.h"
#include "app/words/phrase.h"
#include "core/home/seedling.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <map>
#include <memory>
#include <span>
#include <utility>
#include <vector>

namespace lathhouse::models {

std::string sown_key(const std::string& lot, const std::string& seeds)
{
    return "sown/" + lot + "/" + seeds;
}

std::string potted_key(const std::string& tray, const std::string& plants)
{
    return "potted/" + tray + "/" + plants;
}

namespace {

/// Plants that come of a tray's seedlings, in memory as the journal does it. Errors: as home::seedlings_of; OutOfRange
/// where a name is taken or the tray has not that many left.
Result<void> pot_up_in(plan::HouseholdFacts& facts, home::TrayId tray, int count, calendar::Date today, calendar::Instant now)
{
    auto plants = home::seedlings_of(facts.seeds, tray, count);
    if (!plants) {
        return plants.error();
    }
    const auto counted = facts.seeds.latest_count(tray);
    const auto came = counted ? counted->emerged : facts.seeds.tray(tray)->seeds;
    if (count < 1 || count > came - static_cast<int>(facts.seeds.potted_from(tray))) {
        return Error{ErrorCode::OutOfRange, words::phrase("the tray has not that many seedlings left")};
    }
    auto& all = facts.as_told.plants;
    std::vector<home::PlantId> ids;
    for (auto& plant : *plants) {
        if (facts.as_told.plant_called(plant.name) != nullptr) {
            return Error{ErrorCode::OutOfRange, words::phrase("there is a plant \"%1\" already", plant.name)};
        }
        plant.id = free_plant_id(facts);
        ids.push_back(plant.id);
        const std::map<std::string, std::string> details{{"tray", std::to_string(tray)}};
        if (plant.spot) {
            facts.events.push_back({plant.id, home::EventKind::Moved, plant.spot, today, now, "", details});
        }
        facts.events.push_back({plant.id, home::EventKind::Repotted, {}, today, now, "", details});
        all.push_back(plant);
    }
    auto& potted = facts.seeds.potted;
    const auto there = std::ranges::find(potted, tray, &home::TrayPlants::tray);
    auto& of_tray = there == potted.end() ? potted.emplace_back(home::TrayPlants{tray, {}}) : *there;
    of_tray.plants.insert(of_tray.plants.end(), ids.begin(), ids.end());
    return {};
}

Result<void> pot_up_in_folder(const std::filesystem::path& folder, home::TrayId tray, int count, calendar::Date today,
                              calendar::Instant now)
{
    auto store = journal::HouseholdStore::open(folder);
    if (!store) {
        return store.error();
    }
    const auto seeds = store->seeds();
    if (!seeds) {
        return seeds.error();
    }
    const auto plants = home::seedlings_of(*seeds, tray, count);
    if (!plants) {
        return plants.error();
    }
    const auto ids = store->pot_up(tray, *plants, today, now);
    return ids ? Result<void>{} : Result<void>{ids.error()};
}

} // namespace

RoundSource round_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load)
{
    auto record = [folder](const home::Event& event) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        return store->record(std::span<const home::Event>{&event, 1});
    };
    const auto tells = [](const std::string& key) {
        return [key](const home::Event& event) {
            if (!event.detail("potted").empty()) {
                return potted_key(std::string{event.detail("tray")}, std::string{event.detail("potted")}) == key;
            }
            return event.kind == home::EventKind::Sown
                       ? sown_key(std::string{event.detail("lot")}, std::string{event.detail("seeds")}) == key
                       : event.detail("task") == key;
        };
    };
    auto take_back = [folder, tells](const std::string& key, calendar::Instant now) {
        return take_back_event(folder, tells(key), now);
    };
    auto bring_back = [folder, tells](const std::string& key, calendar::Instant now) {
        return bring_back_event(folder, tells(key), now);
    };
    auto sow = [folder](const home::Tray& tray, const std::string&, calendar::Date today,
                        calendar::Instant now) { return door_to_folder(folder, {}).sow(tray, today, now); };
    auto pot_up = [folder](home::TrayId tray, int count, calendar::Date today, calendar::Instant now) {
        return pot_up_in_folder(folder, tray, count, today, now);
    };
    return {std::move(load), std::move(record), std::move(take_back), std::move(bring_back), true, std::move(sow),
            std::move(pot_up)};
}

RoundSource round_in_memory(plan::HouseholdFacts facts)
{
    return round_in_memory(std::make_shared<MemoryHousehold>(std::move(facts)));
}

RoundSource round_in_memory(std::shared_ptr<MemoryHousehold> household)
{
    auto load = [household]() -> Result<plan::HouseholdFacts> { return household->facts(); };
    auto record = [household](const home::Event& event) {
        return household->change(std::string{event.detail("task")}, [&](plan::HouseholdFacts& facts) -> Result<void> {
            facts.events.push_back(event);
            for (auto& plant : facts.as_told.plants) {
                if (event.kind == home::EventKind::Moved && event.plant == plant.id) {
                    plant.spot = event.spot;
                }
            }
            return {};
        });
    };
    auto take_back = [household](const std::string& key, calendar::Instant) { return household->take_back(key); };
    auto bring_back = [household](const std::string& key, calendar::Instant) { return household->bring_back(key); };
    auto sow = [household](const home::Tray& tray, const std::string& lot, calendar::Date today, calendar::Instant) {
        return household->change(sown_key(lot, std::to_string(tray.seeds)),
                                 [&](plan::HouseholdFacts& facts) { return add_tray(facts, tray, today); });
    };
    auto pot_up = [household](home::TrayId tray, int count, calendar::Date today, calendar::Instant now) {
        return household->change(potted_key(std::to_string(tray), std::to_string(count)),
                                 [&](plan::HouseholdFacts& facts) { return pot_up_in(facts, tray, count, today, now); });
    };
    return {std::move(load), std::move(record), std::move(take_back), std::move(bring_back), false, std::move(sow),
            std::move(pot_up)};
}

RoundSource no_round(Error why)
{
    const auto refuse = [why](const std::string&, calendar::Instant) -> Result<void> { return why; };
    return {[why]() -> Result<plan::HouseholdFacts> { return why; },
            [why](const home::Event&) -> Result<void> { return why; }, refuse, refuse, false};
}

} // namespace lathhouse::models
