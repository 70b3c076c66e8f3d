#include "app/models/event_turn.h"

#include "app/models/household_door.h"
#include "core/journal/household_store.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

using Direction = journal::HouseholdStore::Direction;

} // namespace

Result<void> take_back_event(const std::filesystem::path& folder, const TellsOfIt& is_it, calendar::Instant now)
{
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
    if (last == events->end() || !is_it(*last)) {
        return something_else_came();
    }
    const auto undone = store->turn_back(Direction::Undo, now);
    return undone ? Result<void>{} : Result<void>{undone.error()};
}

Result<void> bring_back_event(const std::filesystem::path& folder, const TellsOfIt& is_it, calendar::Instant now)
{
    auto store = journal::HouseholdStore::open(folder);
    if (!store) {
        return store.error();
    }
    const auto again = store->turn_back(Direction::Redo, now);
    if (!again) {
        return again.error();
    }
    if (!*again) {
        return something_else_came();
    }
    if (!is_it(**again)) { // Another program took something back in between: that stays taken back.
        const auto left = store->turn_back(Direction::Undo, now);
        return left ? something_else_came() : left.error();
    }
    return {};
}

} // namespace lathhouse::models
