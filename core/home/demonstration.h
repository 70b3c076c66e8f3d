#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/home/history.h"
#include "core/home/household.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lathhouse::home {

enum class Hemisphere { North, South };

/// What the demonstration is to show.
struct DemonstrationOptions {
    calendar::Date today;
    Hemisphere hemisphere = Hemisphere::North;
    std::optional<int> plants = {}; ///< 1..5000; a generated household where this or `spots` is given.
    std::optional<int> spots = {};  ///< 2..500.
    int years = 2;             ///< 0..20, of history before `today`.
    std::uint32_t seed = 1;
};

struct Demonstration {
    Household household;
    std::vector<Event> history; ///< In order of date; the last move of a plant is where it stands.
};

/// An invented household, for showing, for tests and for timing.
///
/// Without sizes: fourteen plants of different needs in a third-floor flat with a roofed balcony, in a
/// continental town (north) or a subtropical one (south). With sizes: spots and plants drawn at random with
/// `seed`: a share of the spots outside, half of them in full sun and half in shade; the rest bright, medium
/// or dim windows, which together hold one and a fifth of the plants; kinds drawn from the reference.
/// The same options give the same household, whatever the machine and its library.
/// Errors: OutOfRange for a size, a number of years or a date outside the above (dates: 1930 to 2190).
Result<Demonstration> demonstration(const DemonstrationOptions& options);

} // namespace lathhouse::home
