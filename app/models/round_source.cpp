#include "app/models/round_source.h"

#include "app/models/event_turn.h"
#include "core/base/parse.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <map>
#include <memory>
#include <span>
#include <utility>
#include <vector>

namespace lathhouse::models {

std::string joined_keys(const std::vector<std::string>& tasks)
{
    std::string joined;
    for (const auto& task : tasks) {
        joined += (joined.empty() ? "" : "\n") + task;
    }
    return joined;
}

std::string sown_key(const std::string& lot, const std::string& seeds)
{
    return "sown/" + lot + "/" + seeds;
}

std::string potted_key(const std::string& tray, const std::string& plants)
{
    return "potted/" + tray + "/" + plants;
}

RoundSource round_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load)
{
    auto record = [folder](const std::vector<home::Event>& events) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        return store->record(std::span<const home::Event>{events});
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
    auto take_back = [folder, tells](const std::string& keys, calendar::Instant now) -> Result<void> {
        const auto all = split(keys, '\n');
        for (auto key = all.rbegin(); key != all.rend(); ++key) { // What was entered last is taken back first.
            if (const auto taken = take_back_event(folder, tells(std::string{*key}), now); !taken) {
                return taken;
            }
        }
        return {};
    };
    auto bring_back = [folder, tells](const std::string& keys, calendar::Instant now) -> Result<void> {
        for (const auto& key : split(keys, '\n')) {
            if (const auto brought = bring_back_event(folder, tells(std::string{key}), now); !brought) {
                return brought;
            }
        }
        return {};
    };
    auto sow = [folder](const home::Tray& tray, const std::string&, calendar::Date today,
                        calendar::Instant now) { return door_to_folder(folder, {}).sow(tray, today, now); };
    auto pot_up = [folder](home::TrayId tray, int count, calendar::Date today, calendar::Instant now) {
        return door_to_folder(folder, {}).pot_up({.tray = tray, .plants = count, .on = today}, now);
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
    auto record = [household](const std::vector<home::Event>& events) {
        std::vector<std::string> tasks;
        for (const auto& event : events) {
            tasks.emplace_back(event.detail("task"));
        }
        return household->change(joined_keys(tasks), [&](plan::HouseholdFacts& facts) -> Result<void> {
            for (const auto& event : events) {
                facts.events.push_back(event);
                for (auto& plant : facts.as_told.plants) {
                    if (event.kind == home::EventKind::Moved && event.plant == plant.id) {
                        plant.spot = event.spot;
                    }
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
                                 [&](plan::HouseholdFacts& facts) {
                                     return pot_up_in(facts, {.tray = tray, .plants = count, .on = today}, now);
                                 });
    };
    return {std::move(load), std::move(record), std::move(take_back), std::move(bring_back), false, std::move(sow),
            std::move(pot_up)};
}

RoundSource no_round(Error why)
{
    const auto refuse = [why](const std::string&, calendar::Instant) -> Result<void> { return why; };
    return {[why]() -> Result<plan::HouseholdFacts> { return why; },
            [why](const std::vector<home::Event>&) -> Result<void> { return why; }, refuse, refuse, false};
}

} // namespace lathhouse::models
