#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

namespace lathhouse::plan {

/// Cost of a cell that must not be used: a closed spot, another spot than the pinned one.
constexpr float kForbidden = 1.0e7F;
/// A night nowhere good: dearer than any bearable spot. Keeps every problem solvable, and is named to the
/// user.
constexpr float kNowhereBase = 10.0F;
constexpr float kNowhereBySize = 10.0F;

/// Spots that the solver works on at a time. A problem with a multiple of it ("nowhere" counted) is worked on
/// as it is, without a copy: large ones had better be filled up with closed spots of no capacity.
constexpr std::size_t kSpotsAtOnce = 4;

/// Who stands where on which night, as an assignment: plants x nights x spots with costs, capacities and the
/// cost of carrying, without any word of horticulture.
///
/// Spots are grouped into zones: carrying plant p from spot s to t costs trouble[p] + step[zone(s)][zone(t)],
/// so that a sweep over a night is linear in the spots. The last spot of every problem is "nowhere", which
/// holds any number of pots, is never closed and need not be stayed at.
struct MoveProblem {
    std::size_t plants = 0;
    std::size_t nights = 0;
    std::size_t spots = 0;         ///< With "nowhere" as the last.
    std::size_t zones = 0;         ///< The last holds "nowhere" alone.
    std::size_t least_stay = 1;    ///< Nights that a plant stays at least where it has been carried.
    std::vector<std::size_t> zone; ///< Of each spot; not falling along the spots.
    std::vector<int> capacity;     ///< Of each spot, in units of size; that of "nowhere" is not looked at.
    std::vector<int> size;         ///< Of each plant, at least 1.
    std::vector<float> cost;       ///< [plant][night][spot]; kForbidden and above: closed.
    std::vector<float> trouble;    ///< Of each plant, for each carry.
    std::vector<float> step;       ///< [zone from][zone to].
    std::vector<std::optional<std::size_t>> start; ///< Where each plant stands before the first night.

    std::size_t nowhere() const { return spots - 1; }
    float cost_at(std::size_t plant, std::size_t night, std::size_t spot) const
    {
        return cost[(plant * nights + night) * spots + spot];
    }
    float carry(std::size_t plant, std::size_t from, std::size_t to) const
    {
        return trouble[plant] + step[zone[from] * zones + zone[to]];
    }
};

/// Spot of each night.
using MovePath = std::vector<std::uint16_t>;

/// Cost of a plant's year along a path: its cells and its carries, the one before the first night included.
double path_cost(const MoveProblem& problem, std::size_t plant, const MovePath& path);

/// Whether a plant may take that path: no closed cell, and every stay as long as the least stay, but for one
/// that began before the first night, one that ends with the last night, and "nowhere".
bool path_allowed(const MoveProblem& problem, std::size_t plant, const MovePath& path);

struct MoveSolution {
    std::vector<MovePath> paths;
    double cost = 0.0;
    double bound = -std::numeric_limits<double>::infinity(); ///< No plan costs less.
    double base = 0.0; ///< Sum over plants and nights of the cheapest cell.
    /// (cost - bound) / cost, both above the base; 0 where the plan is the best there can be.
    double gap() const;
};

enum class Effort { Fast, Full };

/// Solves the problem: Lagrangian prices on crowded cells on a grid of fortnights, negotiated congestion,
/// ruin and recreate with swaps of stays between two plants, then the same on weeks and on nights; the bound
/// is taken on nights. Work is counted, not timed, and the draws are seeded: equal problems get equal plans.
/// The plan keeps every capacity, closed cell and least stay. docs/methods/moves.md says how good it is.
/// The parts are standard methods (Lagrangian relaxation with a subgradient step, negotiated congestion as in
/// the routing of circuits, ruin and recreate with annealing; named from memory); their make-up was measured.
MoveSolution solve_moves(const MoveProblem& problem, Effort effort, std::uint64_t seed = 1);

} // namespace lathhouse::plan
