#include "core/plan/grid_solver.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
namespace {

constexpr std::size_t kPartsOfARound = 16;

} // namespace

double GridSolver::lagrangian(std::span<const float> price, std::vector<double>* alone)
{
    const auto& problem = grid_->problem;
    double value = 0.0;
    for (std::size_t plant = 0; plant < problem.plants; ++plant) {
        const double cost = finder_.find(plant, price, {}, nullptr);
        value += cost;
        if (alone != nullptr) {
            (*alone)[plant] = cost;
        }
    }
    for (std::size_t block = 0; block < problem.nights; ++block) {
        for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
            value -= static_cast<double>(price[grid_->cell(block, spot)]) * problem.capacity[spot];
        }
    }
    return value;
}

/// Sixteen times in a round over the plants the prices of crowded cells rise and those of free ones fall:
/// each time a sixteenth of the plants takes its cheapest paths anew, the others count where they stood last.
/// Where a night's spots are all short of room their prices must rise together: the common part is added to
/// each. The steps shrink by the same share every round. The bound is taken at the mean prices of the last
/// round and at those given; the better prices stay. Incremental subgradient steps as in Nedic and Bertsekas,
/// "Incremental subgradient methods for nondifferentiable optimization", SIAM Journal on Optimization 12
/// (2001); named from memory.
void GridSolver::settle_prices(Prices& prices, PriceSteps steps)
{
    const auto& problem = grid_->problem;
    const int everybody = std::accumulate(problem.size.begin(), problem.size.end(), 0);
    const std::size_t parts = std::min(kPartsOfARound, problem.plants);
    std::vector<float> price = prices.of_cell;
    std::vector<float> mean(price.size());
    std::vector<double> gradient(price.size());
    GridPlan plan = empty_plan(); // May be overfull.
    const auto choose = [&](std::size_t plant) {
        finder_.find(plant, price, {}, &scratch_);
        put_in(plan, plant, scratch_, path_cost(problem, plant, scratch_));
    };
    // What the plan costs at the prices; the Lagrangian where all plants have chosen at them.
    const auto value_now = [&] {
        double value = plan.cost();
        for (std::size_t at = 0; at < price.size(); ++at) {
            value -= static_cast<double>(price[at]) * plan.slack[at];
        }
        return value;
    };
    for (std::size_t plant = 0; plant < problem.plants; ++plant) {
        choose(plant);
    }
    prices.bound = std::max(prices.bound, value_now());
    if (steps.rounds == 0) {
        return;
    }

    const auto active = [&](std::size_t at) { return plan.slack[at] <= 0 || price[at] > 0.0F; };
    const double shrink =
        steps.rounds > 1 ? std::pow(steps.last / steps.first, 1.0 / static_cast<double>(steps.rounds - 1))
                         : 1.0;
    double step = steps.first;
    for (std::size_t round = 0; round < steps.rounds; ++round, step *= shrink) {
        std::ranges::fill(mean, 0.0F);
        for (std::size_t part = 0; part < parts; ++part) {
            double square = 0.0;
            for (std::size_t block = 0; block < problem.nights; ++block) {
                double common = 0.0;
                for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
                    const std::size_t at = grid_->cell(block, spot);
                    gradient[at] = active(at) ? -plan.slack[at] : 0.0;
                    square += gradient[at] * gradient[at];
                    common += problem.capacity[spot] < everybody ? gradient[at] : 0.0;
                }
                for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
                    const std::size_t at = grid_->cell(block, spot);
                    gradient[at] += active(at) && problem.capacity[spot] < everybody ? common : 0.0;
                }
                square += common * common;
            }
            if (square <= 0.0 && round == 0 && part == 0) {
                return; // Nothing is crowded: the prices are right.
            }
            const double scale = square > 0.0 ? step * std::max(0.0, value_now() - base_) / square : 0.0;
            for (std::size_t at = 0; at < price.size(); ++at) {
                price[at] = std::max(0.0F, price[at] + static_cast<float>(scale * gradient[at]));
                mean[at] += price[at] / static_cast<float>(parts);
            }
            for (std::size_t plant = part; plant < problem.plants; plant += parts) {
                take_out(plan, plant);
                choose(plant);
            }
        }
    }
    if (const double value = lagrangian(mean, nullptr); value > prices.bound) {
        prices = {std::move(mean), value};
    }
}

} // namespace lathhouse::plan
