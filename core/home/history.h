#pragma once

#include "core/calendar/date.h"
#include "core/home/household.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

enum class EventKind {
    Moved,
    Watered,
    Fed,
    Leached, ///< Watered through to wash salts out of the mix.
    Repotted,
    Pruned,
    Flowered,
    NewGrowth, ///< New leaves or shoots seen: ends the wait after damage.
    Inspected,
    Noted,
    Treated,
    PestFound,
    Isolated, ///< Set apart from the other plants.
    Released, ///< Back among the other plants.
    ColdNight,
    ChemicalDamage,
    Sown,
    Emerged,
    PlantedOut,
    Divided,
    Died,
    GivenAway,
    Removed, ///< Taken off the list for another reason; what is known of it stays.
    TaskDone, ///< A task of the round that leaves no event of its own.
    TaskPostponed,
    TaskSkipped
};
/// The name in lower case: "moved", "pest_found" ...
std::string_view to_string(EventKind kind);
std::optional<EventKind> event_kind_of(std::string_view word);
/// Every kind, in the order of the list above.
std::vector<EventKind> every_event_kind();

using EventId = int;

/// Something that happened to a plant, at a spot or to the household, as the journal keeps it: it is never
/// changed, only followed by others or undone.
struct Event {
    std::optional<PlantId> plant; ///< None for what concerns a spot or the whole household.
    EventKind kind;
    std::optional<SpotId> spot; ///< Where it was moved to, or where it happened.
    calendar::Date happened;
    calendar::Instant entered;
    std::string note;
    /// What is known of it beyond its date; the room that deals with a kind of event says which names it
    /// takes ("pest", "product", "ppm" ...).
    std::map<std::string, std::string> details = {};
    std::optional<EventId> id = {}; ///< Given by the journal.
    friend bool operator==(const Event&, const Event&) = default;

    /// The detail of that name; empty where there is none.
    std::string_view detail(const std::string& name) const;
};

} // namespace lathhouse::home
