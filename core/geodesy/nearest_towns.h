#pragma once

#include "core/geodesy/town_table.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::geodesy {

struct TownNear {
    const Town* town;
    Metres distance;
};

/// The `count` towns nearest to a position, nearest first. Some 3 ms.
std::vector<TownNear> nearest_towns(std::span<const Town> towns, Position position, std::size_t count);

/// A time zone to propose to the grower, who decides.
struct ZoneProposal {
    std::string zone; ///< IANA name, of the nearest town.
    TownNear from;
    /// Zones of other towns not much farther away (twice the distance and 30 km): a border may run between.
    std::vector<std::string> others;
    /// Nothing speaks against it: no other zone near, and the town within 100 km.
    bool is_plain() const { return others.empty() && from.distance <= Metres::from_kilometres(100.0); }
};
/// nullopt where there is no town within 1500 km.
/// Accuracy: docs/methods/where.md.
std::optional<ZoneProposal> propose_zone(std::span<const Town> towns, Position position);

} // namespace lathhouse::geodesy
