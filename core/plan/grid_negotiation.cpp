#include "core/plan/grid_solver.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
/// Every plant takes its cheapest path while crowded cells grow dearer, until none is overfull. Keeps the
/// result in `best` where it is the cheaper one.
bool GridSolver::negotiate(const Prices& prices, double theta, double eta, GridPlan& best,
                           std::uint64_t budget)
{
    const auto& problem = grid_->problem;
    const std::uint64_t end = finder_.work() + budget;
    const double block_weight = static_cast<double>(grid_->block_nights) / 7.0;
    std::vector<float> history(grid_->cells(), 0.0F);
    std::vector<float> cell_price(grid_->cells());
    GridPlan plan = empty_plan();
    for (std::size_t plant = 0; plant < problem.plants; ++plant) {
        finder_.find(plant, prices.of_cell, {}, &scratch_);
        put_in(plan, plant, scratch_, 0.0);
    }
    std::vector<std::size_t> order(problem.plants);
    std::iota(order.begin(), order.end(), std::size_t{0});
    constexpr int kSweeps = 200;
    double pressure = 0.05 * block_weight;
    const double growth = std::pow(200.0, 1.0 / (kSweeps - 1));
    const auto price_of = [&](std::size_t at) {
        const int slack = plan.slack[at];
        const float known = prices.of_cell[at] + history[at];
        return slack >= 1 ? static_cast<float>(theta) * known
                          : known + static_cast<float>(pressure) * static_cast<float>(1 - slack);
    };
    for (int sweep = 0; sweep < kSweeps && finder_.work() < end; ++sweep, pressure *= growth) {
        for (std::size_t block = 0; block < problem.nights; ++block) {
            for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
                cell_price[grid_->cell(block, spot)] = price_of(grid_->cell(block, spot));
            }
        }
        const auto refresh = [&](const MovePath& path) {
            for (std::size_t block = 0; block < problem.nights; ++block) {
                if (path[block] != problem.nowhere()) {
                    cell_price[grid_->cell(block, path[block])] = price_of(grid_->cell(block, path[block]));
                }
            }
        };
        draws_->shuffle(order);
        for (const std::size_t plant : order) {
            take_out(plan, plant);
            refresh(plan.paths[plant]);
            finder_.find(plant, cell_price, {}, &scratch_);
            put_in(plan, plant, scratch_, 0.0);
            refresh(plan.paths[plant]);
        }
        bool overfull = false;
        for (std::size_t block = 0; block < problem.nights; ++block) {
            for (std::size_t spot = 0; spot + 1 < problem.spots; ++spot) {
                const std::size_t at = grid_->cell(block, spot);
                if (plan.slack[at] < 0) {
                    overfull = true;
                    history[at] += static_cast<float>(eta * block_weight * -plan.slack[at] /
                                                      std::max(1, problem.capacity[spot]));
                }
            }
        }
        if (!overfull) {
            break;
        }
    }
    std::vector<std::size_t> outside;
    for (std::size_t plant = 0; plant < problem.plants; ++plant) {
        bool stands_over = false;
        for (std::size_t block = 0; block < problem.nights; ++block) {
            const std::size_t spot = plan.paths[plant][block];
            stands_over =
                stands_over || (spot != problem.nowhere() && plan.slack[grid_->cell(block, spot)] < 0);
        }
        if (stands_over) {
            take_out(plan, plant);
            outside.push_back(plant);
        } else {
            plan.costs[plant] = path_cost(problem, plant, plan.paths[plant]);
        }
    }
    for (const std::size_t plant : outside) {
        insert(plan, plant, {});
    }
    if (plan.cost() < best.cost()) {
        best = std::move(plan);
        return true;
    }
    return false;
}

} // namespace lathhouse::plan
