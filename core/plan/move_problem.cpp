#include "core/plan/move_problem.h"

#include <algorithm>

namespace lathhouse::plan {

double path_cost(const MoveProblem& problem, std::size_t plant, const MovePath& path)
{
    double cost = 0.0;
    if (problem.start[plant] && *problem.start[plant] != path.front()) {
        cost += static_cast<double>(problem.carry(plant, *problem.start[plant], path.front()));
    }
    for (std::size_t night = 0; night < path.size(); ++night) {
        cost += static_cast<double>(problem.cost_at(plant, night, path[night]));
        if (night > 0 && path[night] != path[night - 1]) {
            cost += static_cast<double>(problem.carry(plant, path[night - 1], path[night]));
        }
    }
    return cost;
}

bool path_allowed(const MoveProblem& problem, std::size_t plant, const MovePath& path)
{
    std::size_t since = 0;
    for (std::size_t night = 0; night < path.size(); ++night) {
        const std::size_t spot = path[night];
        if (problem.cost_at(plant, night, spot) >= kForbidden) {
            return false;
        }
        if (night == 0 || spot == path[night - 1]) {
            continue;
        }
        const std::size_t left = path[night - 1];
        const bool stood_there = since == 0 && (!problem.start[plant] || *problem.start[plant] == left);
        if (night - since < problem.least_stay && !stood_there && left != problem.nowhere()) {
            return false;
        }
        since = night;
    }
    return true;
}

double MoveSolution::gap() const
{
    return cost > base ? std::max(0.0, (cost - bound) / (cost - base)) : 0.0;
}

} // namespace lathhouse::plan
