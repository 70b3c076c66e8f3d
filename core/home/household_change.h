#pragma once

#include "core/base/result.h"
#include "core/home/household.h"

#include <optional>
#include <string>
#include <vector>

namespace lathhouse::home {

/// Something of the household itself that is made another: its place, spots, plants, and where a hand keeps plants. It
/// is entered as one thing and undone as one.
struct HouseholdChange {
    std::string words;                          ///< What was changed, for people: "Added 3 plants".
    std::optional<std::string> name = {};       ///< Of the household.
    std::optional<Place> place = {};
    std::vector<Spot> spots = {};               ///< Those of an id as they are to be; id 0: a new one.
    std::vector<SpotId> spots_gone = {};
    std::vector<Plant> plants = {};             ///< As spots. Where a plant stands is changed by moves alone.
    std::vector<PlantId> unpinned = {};         ///< Plants whose pins are all taken back, before those below.
    std::vector<Pin> pins = {};                 ///< Nights on which a plant is kept at a spot from now on.
};

/// Makes the change in a household in memory; new ids are the next free ones, as the journal gives them.
/// Errors: NotFound for an id that is not there; OutOfRange for a blank name, a name that is taken (without case and
/// blanks at its ends), an impossible time zone name (blank), a spot to remove where a plant stands or is pinned, be it
/// for some nights, a pin that ends before it begins. Then nothing is changed.
Result<void> make(const HouseholdChange& change, Household& household);

/// A pin of the household that wants the plant of `wanted` at another spot on one of the same nights; nullptr where there is none.
const Pin* contradicting(const Household& household, const Pin& wanted);

} // namespace lathhouse::home
