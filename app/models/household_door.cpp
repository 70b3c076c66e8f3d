#include "app/models/household_door.h"

#include "app/models/event_turn.h"
#include "app/models/gone_in_memory.h"
#include "app/words/phrase.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <map>
#include <span>
#include <tuple>
#include <utility>

namespace lathhouse::models {

namespace {

std::string name_of(const home::TrayCount& count)
{
    return "count of tray " + std::to_string(count.tray) + " on " + calendar::to_text(count.on) + ": " +
           std::to_string(count.emerged) + (count.last ? ", the last" : "");
}

bool tells(const home::Event& event, const home::TrayCount& count)
{
    return event.kind == home::EventKind::Emerged && event.happened == count.on &&
           event.detail("tray") == std::to_string(count.tray) &&
           event.detail("emerged") == std::to_string(count.emerged);
}

/// Puts a record of a night in its place by `before`, instead of one that it replaces.
template <class Record, class Same, class Before>
void put(std::vector<Record>& records, const Record& record, Same same, Before before)
{
    std::erase_if(records, same);
    records.insert(std::ranges::upper_bound(records, record, before), record);
}

void put_reading(plan::HouseholdFacts& facts, const home::Reading& reading)
{
    put(facts.log.readings, reading,
        [&](const home::Reading& other) { return other.spot == reading.spot && other.night == reading.night; },
        [](const auto& a, const auto& b) { return std::tie(a.night, a.spot) < std::tie(b.night, b.spot); });
}

} // namespace

Result<void> add_tray(plan::HouseholdFacts& facts, const home::Tray& tray, calendar::Date today)
{
    if (const auto sound = home::check(tray, facts.seeds, today); !sound) {
        return sound.error();
    }
    auto& trays = facts.seeds.trays;
    trays.push_back(tray);
    trays.back().id = 1;
    for (const auto& other : std::span{trays}.first(trays.size() - 1)) {
        trays.back().id = std::max(trays.back().id, other.id + 1);
    }
    return {};
}

Result<void> pot_up_in(plan::HouseholdFacts& facts, const Potting& potting, calendar::Instant now)
{
    auto plants = potted_plants(facts.seeds, potting);
    if (!plants) {
        return plants.error();
    }
    if (potting.plants < 1 || potting.plants > seedlings_left(facts.seeds, potting.tray)) {
        return Error{ErrorCode::OutOfRange, words::phrase("the tray has not that many seedlings left")};
    }
    if (potting.on < facts.seeds.tray(potting.tray)->sown) {
        return Error{ErrorCode::OutOfRange, words::phrase("the tray was sown after that day")};
    }
    auto& all = facts.as_told.plants;
    std::vector<home::PlantId> ids;
    for (auto& plant : *plants) {
        if (facts.as_told.plant_called(plant.name) != nullptr) {
            return Error{ErrorCode::OutOfRange, words::phrase("there is a plant \"%1\" already", plant.name)};
        }
        plant.id = free_plant_id(facts);
        ids.push_back(plant.id);
        const std::map<std::string, std::string> details{{"tray", std::to_string(potting.tray)}};
        if (plant.spot) {
            facts.events.push_back({plant.id, home::EventKind::Moved, plant.spot, potting.on, now, "", details});
        }
        facts.events.push_back({plant.id, home::EventKind::Repotted, {}, potting.on, now, "", details});
        all.push_back(plant);
    }
    auto& potted = facts.seeds.potted;
    const auto there = std::ranges::find(potted, potting.tray, &home::TrayPlants::tray);
    auto& of_tray = there == potted.end() ? potted.emplace_back(home::TrayPlants{potting.tray, {}}) : *there;
    of_tray.plants.insert(of_tray.plants.end(), ids.begin(), ids.end());
    return {};
}

Error something_else_came()
{
    return {ErrorCode::NotFound,
            "something else was written into the journal since, so nothing is taken back; Undo above the pages takes back "
            "what was written last"};
}

plan::HouseholdFacts MemoryHousehold::facts() const
{
    const std::lock_guard lock(guard_);
    return facts_;
}

Result<void> MemoryHousehold::change(const std::string& name,
                                     const std::function<Result<void>(plan::HouseholdFacts&)>& make)
{
    const std::lock_guard lock(guard_);
    plan::HouseholdFacts changed = facts_;
    if (const auto made = make(changed); !made) {
        return made.error();
    }
    done_.push_back({name, std::exchange(facts_, std::move(changed))});
    undone_.clear();
    return {};
}

Result<void> MemoryHousehold::take_back(const std::string& name)
{
    const std::lock_guard lock(guard_);
    if (done_.empty() || done_.back().name != name) {
        return something_else_came();
    }
    undone_.push_back({name, std::exchange(facts_, std::move(done_.back().other))});
    done_.pop_back();
    return {};
}

Result<void> MemoryHousehold::bring_back(const std::string& name)
{
    const std::lock_guard lock(guard_);
    if (undone_.empty() || undone_.back().name != name) {
        return something_else_came();
    }
    done_.push_back({name, std::exchange(facts_, std::move(undone_.back().other))});
    undone_.pop_back();
    return {};
}

bool MemoryHousehold::take_back_last()
{
    const std::lock_guard lock(guard_);
    if (done_.empty()) {
        return false;
    }
    undone_.push_back({done_.back().name, std::exchange(facts_, std::move(done_.back().other))});
    done_.pop_back();
    return true;
}

bool MemoryHousehold::bring_back_last()
{
    const std::lock_guard lock(guard_);
    if (undone_.empty()) {
        return false;
    }
    done_.push_back({undone_.back().name, std::exchange(facts_, std::move(undone_.back().other))});
    undone_.pop_back();
    return true;
}

HouseholdDoor door_to_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load)
{
    return {.load = std::move(load),
            .log = [folder](const home::Reading& reading) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                return store ? store->record(std::span<const home::Reading>{&reading, 1}) : Result<void>{store.error()};
            },
            .log_all = [folder](const std::vector<home::Reading>& readings) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                return store ? store->record(std::span<const home::Reading>{readings}) : Result<void>{store.error()};
            },
            .keep_forecasts = [folder](const std::vector<home::KeptForecast>& forecasts) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                return store ? store->record(std::span<const home::KeptForecast>{forecasts}) : Result<void>{store.error()};
            },
            .count = [folder](const home::TrayCount& count, calendar::Date today,
                              calendar::Instant entered) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                if (!store) {
                    return store.error();
                }
                const auto id = store->record(count, today, entered);
                return id ? Result<void>{} : Result<void>{id.error()};
            },
            .sow = [folder](const home::Tray& tray, calendar::Date today, calendar::Instant entered) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                if (!store) {
                    return store.error();
                }
                const auto id = store->record(tray, today, entered);
                return id ? Result<void>{} : Result<void>{id.error()};
            },
            .pot_up = [folder](const Potting& potting, calendar::Instant now) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                if (!store) {
                    return store.error();
                }
                const auto seeds = store->seeds();
                if (!seeds) {
                    return seeds.error();
                }
                const auto plants = potted_plants(*seeds, potting);
                if (!plants) {
                    return plants.error();
                }
                const auto ids = store->pot_up(potting.tray, *plants, potting.on, now);
                return ids ? Result<void>{} : Result<void>{ids.error()};
            },
            .take_back = [folder](const home::TrayCount& count,
                                  calendar::Instant now) {
                return take_back_event(folder, [&count](const home::Event& last) { return tells(last, count); }, now);
            },
            .bring_back = [folder](const home::TrayCount& count,
                                   calendar::Instant now) {
                return bring_back_event(folder, [&count](const home::Event& last) { return tells(last, count); }, now);
            },
            .keeps = true};
}

HouseholdDoor door_to_memory(std::shared_ptr<MemoryHousehold> household)
{
    return {.load = [household]() -> Result<plan::HouseholdFacts> { return household->facts(); },
            .log =
                [household](const home::Reading& reading) {
                    return household->change("reading", [&](plan::HouseholdFacts& facts) -> Result<void> {
                        put_reading(facts, reading);
                        return {};
                    });
                },
            .log_all =
                [household](const std::vector<home::Reading>& readings) {
                    return household->change("readings", [&](plan::HouseholdFacts& facts) -> Result<void> {
                        for (const auto& reading : readings) {
                            put_reading(facts, reading);
                        }
                        return {};
                    });
                },
            .keep_forecasts =
                [household](const std::vector<home::KeptForecast>& forecasts) {
                    return household->change("forecast", [&](plan::HouseholdFacts& facts) -> Result<void> {
                        for (const auto& forecast : forecasts) {
                            put(facts.log.forecasts, forecast,
                                [&](const home::KeptForecast& other) {
                                    return other.night == forecast.night && other.issued == forecast.issued;
                                },
                                [](const auto& a, const auto& b) {
                                    return std::tie(a.night, a.issued) < std::tie(b.night, b.issued);
                                });
                        }
                        return {};
                    });
                },
            .count =
                [household](const home::TrayCount& count, calendar::Date today, calendar::Instant) {
                    return household->change(name_of(count), [&](plan::HouseholdFacts& facts) -> Result<void> {
                        auto& counts = facts.seeds.counts;
                        std::erase_if(counts, [&](const home::TrayCount& other) {
                            return other.tray == count.tray && other.on == count.on;
                        });
                        if (const auto sound = home::check(count, facts.seeds, today); !sound) {
                            return sound.error();
                        }
                        counts.insert(std::ranges::upper_bound(counts, count,
                                                               [](const auto& a, const auto& b) {
                                                                   return std::tie(a.tray, a.on) <
                                                                          std::tie(b.tray, b.on);
                                                               }),
                                      count);
                        return {};
                    });
                },
            .sow =
                [household](const home::Tray& tray, calendar::Date today, calendar::Instant) {
                    return household->change("sowing",
                                             [&](plan::HouseholdFacts& facts) { return add_tray(facts, tray, today); });
                },
            .pot_up =
                [household](const Potting& potting, calendar::Instant now) {
                    return household->change("potting",
                                             [&](plan::HouseholdFacts& facts) { return pot_up_in(facts, potting, now); });
                },
            .take_back = [household](const home::TrayCount& count,
                                     calendar::Instant) { return household->take_back(name_of(count)); },
            .bring_back = [household](const home::TrayCount& count,
                                      calendar::Instant) { return household->bring_back(name_of(count)); },
            .keeps = false};
}

HouseholdDoor no_door(Error why)
{
    return {.load = [why]() -> Result<plan::HouseholdFacts> { return why; },
            .log = [why](const home::Reading&) -> Result<void> { return why; },
            .log_all = [why](const std::vector<home::Reading>&) -> Result<void> { return why; },
            .keep_forecasts = [why](const std::vector<home::KeptForecast>&) -> Result<void> { return why; },
            .count = [why](const home::TrayCount&, calendar::Date, calendar::Instant) -> Result<void> { return why; },
            .sow = [why](const home::Tray&, calendar::Date, calendar::Instant) -> Result<void> { return why; },
            .pot_up = [why](const Potting&, calendar::Instant) -> Result<void> { return why; },
            .take_back = [why](const home::TrayCount&, calendar::Instant) -> Result<void> { return why; },
            .bring_back = [why](const home::TrayCount&, calendar::Instant) -> Result<void> { return why; },
            .keeps = false};
}

} // namespace lathhouse::models
