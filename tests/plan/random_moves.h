#pragma once

#include "core/plan/move_problem.h"

#include <random>

namespace lathhouse::plan {

/// An invented move problem: plants x nights x real spots ("nowhere" comes on top) with random costs, about
/// one cell in ten closed, three zones and room for all but a few.
struct RandomMoves {
    std::size_t plants;
    std::size_t nights;
    std::size_t spots;
    std::size_t least_stay;
    int greatest_size;
    unsigned seed;
};
MoveProblem make_moves(const RandomMoves& wanted);

} // namespace lathhouse::plan
