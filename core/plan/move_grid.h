#pragma once

#include "core/plan/move_problem.h"

#include <span>

namespace lathhouse::plan {

/// A move problem on blocks of nights: what the solver works on. Parts of plan/move_solver; of no use
/// elsewhere.
struct MoveGrid {
    /// The nightly problem must outlive the grid.
    MoveGrid(const MoveProblem& nightly, std::size_t nights_of_a_block);
    MoveGrid(const MoveGrid&) = delete;
    MoveGrid& operator=(const MoveGrid&) = delete;

    std::size_t block_of(std::size_t night) const { return night / block_nights; }
    std::size_t cell(std::size_t block, std::size_t spot) const { return block * problem.spots + spot; }
    std::size_t cells() const { return problem.nights * problem.spots; }
    std::size_t nights_in(std::size_t block) const
    {
        return block + 1 < problem.nights ? block_nights : whole_nights - block * block_nights;
    }

    /// A path of this grid, a spot for each night.
    MovePath nightly_path(const MovePath& path, std::size_t nowhere) const;

    std::size_t block_nights;
    std::size_t whole_nights;
    /// Its nights are blocks; a cell is closed if any of its nights is. Closed spots before "nowhere" round
    /// the number up for the machine's vectors. On nights the nightly problem itself, where its spots are a
    /// multiple already.
    const MoveProblem& problem;

private:
    MoveProblem own_;
};

/// Finds cheapest paths of single plants; keeps its tables between calls.
class PathFinder {
public:
    explicit PathFinder(const MoveGrid& grid);

    /// The plant's cheapest path and its cost, each cell costing its own cost and `size x price` of the cell
    /// (blocks x spots; empty: none). Where `slack` is not empty, a cell with less slack than the plant's
    /// size is closed. `path` may be null.
    double find(std::size_t plant, std::span<const float> price, std::span<const int> slack, MovePath* path);
    /// Cells looked at so far: the measure of work.
    std::uint64_t work() const { return work_; }

private:
    void walk_back(std::size_t plant, MovePath& path) const;
    std::size_t arrived_from(std::size_t plant, std::size_t block, std::size_t spot) const;

    const MoveGrid* grid_;
    // Per block and spot: cheapest with any time spent there, of those free to leave, of arrivals on that
    // block; and the running sum of the open cells' costs.
    std::vector<float> any_, free_, arrival_, running_;
    std::size_t lanes_ = 0;                 // Zones, rounded up for the machine's vectors.
    std::vector<std::size_t> zone_begin_;   // [zone], and the end
    std::vector<float> step_;               // [zone from][lane]
    std::vector<float> best_free_;          // [block][lane]
    std::vector<float> carried_;            // [block][lane]: cheapest arrival in the zone
    std::vector<float> arrives_;            // [spot], while sweeping
    std::vector<std::int32_t> last_shut_;   // [spot], while sweeping
    std::vector<std::int32_t> shut_before_; // [block][spot]
    std::uint64_t work_ = 0;
};

} // namespace lathhouse::plan
