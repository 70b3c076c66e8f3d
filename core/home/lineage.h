#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/home/household.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

/// Why a plant is no longer there.
enum class GoneHow {
    Died,
    GivenAway,
    Removed, ///< Taken off the list for another reason.
    Undone,  ///< The division that made it was undone: it never was.
};
std::string_view to_string(GoneHow how); ///< "died", "given_away", "removed", "undone".

/// A plant that is no longer there; its row and all that is known of it stay.
struct GonePlant {
    Plant plant;
    GoneHow how;
    calendar::Date on;
};

/// What a plant came of.
struct Descent {
    PlantId plant;
    std::optional<PlantId> parent; ///< Divided from it.
    std::optional<int> tray;       ///< Potted on from it.
};

/// Plants that a division of `parent` gives, under those names: as it and where it stands, pinned nowhere.
/// Errors: WrongUsage for a blank name.
Result<std::vector<Plant>> pieces_of(const Plant& parent, std::span<const std::string> names);

/// Names of the pieces that a division's event tells, as its detail "into" has them. Names with a comma in them are told
/// apart there no more.
std::vector<std::string> pieces_in(std::string_view into);

/// Where a plant really stood, from its moves.
struct ActualStay {
    SpotId spot;
    calendar::Date from;
    std::optional<calendar::Date> to; ///< Last evening; none where it still stands there.
    friend bool operator==(const ActualStay&, const ActualStay&) = default;
};

/// Where a plan that was accepted at a moment would have it stand.
struct KeptPlannedStay {
    SpotId spot;
    calendar::Date from;
    calendar::Date to; ///< Last evening.
    calendar::Instant accepted;
    friend bool operator==(const KeptPlannedStay&, const KeptPlannedStay&) = default;
};

/// Planned stays and actual ones are different things and are kept apart.
struct Stays {
    std::vector<ActualStay> actual;       ///< Oldest first.
    std::vector<KeptPlannedStay> planned; ///< Of every plan that was accepted, in the order of acceptance.
};

} // namespace lathhouse::home
