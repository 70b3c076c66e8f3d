#include "core/plan/grid_solver.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

// Measured (docs/methods/moves.md): a first step much above 0.1 overshoots, one below 0.05 needs more rounds.
constexpr PriceSteps kSettleAnew{0.07, 0.0004, 40};
constexpr PriceSteps kSettleOnWeeks{0.001, 0.0001, 8};
constexpr PriceSteps kSettleOnNights{0.0002, 0.0001, 12};

/// A coarser grid's plan on a finer one, every plant put in anew: what a block allows, its nights may not.
GridPlan lifted(GridSolver& fine, const MoveGrid& coarse, const GridPlan& plan)
{
    const auto& grid = fine.grid();
    GridPlan result = fine.empty_plan();
    MovePath path(grid.problem.nights);
    std::vector<std::size_t> misfits;
    for (std::size_t plant = 0; plant < grid.problem.plants; ++plant) {
        for (std::size_t block = 0; block < path.size(); ++block) {
            path[block] = plan.paths[plant][coarse.block_of(block * grid.block_nights)];
        }
        if (path_allowed(grid.problem, plant, path)) {
            fine.put_in(result, plant, path, path_cost(grid.problem, plant, path));
        } else {
            misfits.push_back(plant);
        }
    }
    for (const std::size_t plant : misfits) {
        fine.insert(result, plant, {});
    }
    for (std::size_t plant = 0; plant < grid.problem.plants; ++plant) {
        fine.take_out(result, plant);
        fine.insert(result, plant, {});
    }
    return result;
}

Prices lifted(const MoveGrid& fine, const MoveGrid& coarse, const Prices& prices)
{
    Prices result{std::vector<float>(fine.cells(), 0.0F)};
    for (std::size_t block = 0; block < fine.problem.nights; ++block) {
        const std::size_t from = coarse.block_of(block * fine.block_nights);
        const float share =
            static_cast<float>(fine.nights_in(block)) / static_cast<float>(coarse.nights_in(from));
        for (std::size_t spot = 0; spot < fine.problem.spots; ++spot) {
            result.of_cell[fine.cell(block, spot)] = prices.of_cell[coarse.cell(from, spot)] * share;
        }
    }
    return result;
}

} // namespace

MoveSolution solve_moves(const MoveProblem& problem, Effort effort, std::uint64_t seed)
{
    MoveSolution solution;
    if (problem.plants == 0 || problem.nights == 0) {
        solution.bound = 0.0;
        return solution;
    }
    for (std::size_t row = 0; row < problem.plants * problem.nights; ++row) {
        const auto first = problem.cost.begin() + static_cast<std::ptrdiff_t>(row * problem.spots);
        solution.base +=
            static_cast<double>(*std::min_element(first, first + static_cast<std::ptrdiff_t>(problem.spots)));
    }
    // Work is counted in cells, so that it grows with the plants: 24 sweeps over all of them on nights
    // when it must be quick; else 800, or 1.5 million cells a plant where that is less. A small household
    // gets some all the same.
    const auto plants = static_cast<double>(problem.plants);
    const double sweep = plants * static_cast<double>(problem.nights * problem.spots);
    const bool full = effort == Effort::Full;
    const auto budget = static_cast<std::uint64_t>(
        full ? std::max({5.0e6, 24.0 * sweep, std::min(800.0 * sweep, std::max(3.6e8, 1.5e6 * plants))})
             : std::max(2.5e5, 24.0 * sweep));
    const double mean_trouble = std::accumulate(problem.trouble.begin(), problem.trouble.end(), 0.0) / plants;
    const auto part = [](double share, std::uint64_t whole) {
        return static_cast<std::uint64_t>(share * static_cast<double>(whole));
    };

    MoveDraws draws{seed};
    const MoveGrid fortnights{problem, 14};
    const MoveGrid weeks{problem, 7};
    const MoveGrid nights{problem, 1};
    std::uint64_t spent = 0;

    GridSolver coarse{fortnights, solution.base, draws};
    GridPlan plan = coarse.greedy(nullptr);
    Prices prices{std::vector<float>(fortnights.cells(), 0.0F)};
    coarse.settle_prices(prices, kSettleAnew);
    if (GridPlan priced = coarse.greedy(&prices); priced.cost() < plan.cost()) {
        plan = std::move(priced);
    }
    const std::uint64_t negotiated = coarse.work() + part(0.4, budget - std::min(budget, coarse.work()));
    constexpr double kThetas[] = {0.5, 0.7, 0.85, 0.6};
    double eta = 4.0;
    for (int run = 0; coarse.work() < negotiated && plan.cost() > prices.bound * (1.0 + 1.0e-6); ++run) {
        coarse.negotiate(prices, kThetas[run % 4], eta, plan, negotiated - coarse.work());
        if (run % 2 == 1) {
            eta = std::max(0.125, 0.5 * eta);
        }
    }
    const auto rest = [&] { return budget > spent ? budget - spent : 0; };
    spent = coarse.work();
    coarse.ruin_and_recreate(plan, prices, 0.4 * mean_trouble, part(0.3, rest()));
    spent = coarse.work();

    GridSolver middle{weeks, solution.base, draws};
    Prices weekly = lifted(weeks, fortnights, prices);
    GridPlan weekly_plan = lifted(middle, fortnights, plan);
    middle.settle_prices(weekly, kSettleOnWeeks);
    middle.ruin_and_recreate(weekly_plan, weekly, 0.24 * mean_trouble, part(0.4, rest()));
    spent += middle.work();

    GridSolver fine{nights, solution.base, draws};
    Prices nightly = lifted(nights, weeks, weekly);
    GridPlan nightly_plan = lifted(fine, weeks, weekly_plan);
    fine.settle_prices(nightly, full ? kSettleOnNights : PriceSteps{0.0, 0.0, 0});
    fine.ruin_and_recreate(nightly_plan, nightly, 0.1 * mean_trouble,
                           rest() > fine.work() ? rest() - fine.work() : 0);

    solution.cost = nightly_plan.cost();
    solution.bound = std::min(nightly.bound, solution.cost);
    for (const auto& path : nightly_plan.paths) {
        solution.paths.push_back(nights.nightly_path(path, problem.nowhere()));
    }
    return solution;
}

} // namespace lathhouse::plan
