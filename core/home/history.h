#pragma once

#include "core/calendar/date.h"
#include "core/home/household.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

enum class EventKind { Moved, Watered, Fed, Repotted, Pruned, Flowered, Inspected, Noted };
std::string_view to_string(EventKind kind); ///< The name in lower case: "moved", "watered" ...
std::optional<EventKind> event_kind_of(std::string_view word);

/// Something that happened to a plant, as the journal keeps it: it is never changed, only followed by others.
struct Event {
    PlantId plant;
    EventKind kind;
    std::optional<SpotId> spot; ///< Where it was moved to; none for other kinds.
    calendar::Date happened;
    calendar::Instant entered;
    std::string note;
    friend bool operator==(const Event&, const Event&) = default;
};

} // namespace lathhouse::home
