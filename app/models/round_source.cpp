#include "app/models/round_source.h"

#include "core/journal/household_store.h"

#include <algorithm>
#include <memory>
#include <span>
#include <utility>
#include <vector>

namespace lathhouse::models {

namespace {

Error something_else_came()
{
    return {ErrorCode::NotFound,
            "something else was written into the journal since, so nothing is taken back; "
            "`lathhouse log undo` takes back what was written last"};
}

/// Facts that change as a journal would change them.
struct InMemory {
    plan::HouseholdFacts facts;
    /// Spot of each plant before each event, to be put back.
    std::vector<std::vector<home::Plant>> before;
};

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
    auto take_back = [folder](const std::string& key, calendar::Instant now) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        const auto events = store->events();
        if (!events) {
            return events.error();
        }
        // The event entered last has the highest id. Another program may have written since.
        const auto last = std::ranges::max_element(*events, {}, &home::Event::id);
        if (last == events->end() || last->detail("task") != key) {
            return something_else_came();
        }
        const auto undone = store->turn_back(journal::HouseholdStore::Direction::Undo, now);
        return undone ? Result<void>{} : Result<void>{undone.error()};
    };
    return {std::move(load), std::move(record), std::move(take_back), true};
}

RoundSource round_in_memory(plan::HouseholdFacts facts)
{
    const auto kept = std::make_shared<InMemory>(InMemory{std::move(facts), {}});
    auto load = [kept]() -> Result<plan::HouseholdFacts> { return kept->facts; };
    auto record = [kept](const home::Event& event) -> Result<void> {
        kept->before.push_back(kept->facts.as_told.plants);
        kept->facts.events.push_back(event);
        for (auto& plant : kept->facts.as_told.plants) {
            if (event.kind == home::EventKind::Moved && event.plant == plant.id) {
                plant.spot = event.spot;
            }
        }
        return {};
    };
    auto take_back = [kept](const std::string& key, calendar::Instant) -> Result<void> {
        if (kept->before.empty() || kept->facts.events.back().detail("task") != key) {
            return something_else_came();
        }
        kept->facts.events.pop_back();
        kept->facts.as_told.plants = std::move(kept->before.back());
        kept->before.pop_back();
        return {};
    };
    return {std::move(load), std::move(record), std::move(take_back), false};
}

RoundSource no_round(Error why)
{
    return {[why]() -> Result<plan::HouseholdFacts> { return why; },
            [why](const home::Event&) -> Result<void> { return why; },
            [why](const std::string&, calendar::Instant) -> Result<void> { return why; }, false};
}

} // namespace lathhouse::models
