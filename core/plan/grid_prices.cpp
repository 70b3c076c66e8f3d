#include "core/plan/grid_solver.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
double lagrangian(PathFinder& finder, const MoveGrid& grid, std::span<const float> price,
                  std::vector<int>* use, std::vector<double>* alone)
{
    const auto& problem = grid.problem;
    double value = 0.0;
    MovePath path;
    for (std::size_t plant = 0; plant < problem.plants; ++plant) {
        const double cost = finder.find(plant, price, {}, use != nullptr ? &path : nullptr);
        value += cost;
        if (alone != nullptr) {
            (*alone)[plant] = cost;
        }
        if (use != nullptr) {
            for (std::size_t block = 0; block < problem.nights; ++block) {
                (*use)[grid.cell(block, path[block])] += problem.size[plant];
            }
        }
    }
    for (std::size_t block = 0; block < problem.nights; ++block) {
        for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
            value -= static_cast<double>(price[grid.cell(block, spot)]) * problem.capacity[spot];
        }
    }
    return value;
}

void GridSolver::evaluate(Prices& prices)
{
    prices.bound = std::max(prices.bound, lagrangian(finder_, *grid_, prices.of_cell, nullptr, nullptr));
}

/// Subgradient ascent. Where a night's spots are all short of room their prices must rise together: the
/// common part of the gradient is added to each.
void GridSolver::raise_bound(Prices& prices, double upper, double first_step, std::size_t rounds,
                             std::uint64_t budget)
{
    const auto& problem = grid_->problem;
    const std::uint64_t end = finder_.work() + budget;
    const int everybody = std::accumulate(problem.size.begin(), problem.size.end(), 0);
    std::vector<float> price = prices.of_cell;
    std::vector<int> use(grid_->cells());
    std::vector<double> gradient(grid_->cells());
    double step = first_step;
    int without_gain = 0;
    for (std::size_t round = 0; round < rounds && finder_.work() < end; ++round) {
        std::ranges::fill(use, 0);
        const double value = lagrangian(finder_, *grid_, price, &use, nullptr);
        if (value > prices.bound + 1.0e-4 * std::max(0.0, prices.bound - base_)) {
            without_gain = 0;
        } else if (++without_gain == 5) {
            step *= 0.7;
            without_gain = 0;
        }
        if (value > prices.bound) {
            prices.bound = value;
            prices.of_cell = price;
        }
        if (upper - prices.bound < 1.0e-6 * std::max(1.0, std::fabs(upper))) {
            return; // The plan is the best there can be.
        }
        const double target = std::min(upper, prices.bound + 0.25 * (prices.bound - base_) + 1.0);
        double square = 0.0;
        for (std::size_t block = 0; block < problem.nights; ++block) {
            double common = 0.0;
            for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
                const std::size_t at = grid_->cell(block, spot);
                const int over = use[at] - problem.capacity[spot];
                const bool active = !(over < 0 && price[at] <= 0.0F);
                gradient[at] = active ? over : 0.0;
                square += gradient[at] * gradient[at];
                if (active && problem.capacity[spot] < everybody) {
                    common += over;
                }
            }
            for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
                const std::size_t at = grid_->cell(block, spot);
                const int over = use[at] - problem.capacity[spot];
                if (!(over < 0 && price[at] <= 0.0F) && problem.capacity[spot] < everybody) {
                    gradient[at] += common;
                }
            }
            square += common * common;
        }
        if (square <= 0.0) {
            return; // Nothing is crowded: the prices are right.
        }
        const double scale = step * std::max(0.0, target - value) / square;
        for (std::size_t at = 0; at < price.size(); ++at) {
            price[at] = std::max(0.0F, price[at] + static_cast<float>(scale * gradient[at]));
        }
    }
}

} // namespace lathhouse::plan
