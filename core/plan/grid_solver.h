#pragma once

#include "core/plan/move_grid.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <numeric>
#include <random>

namespace lathhouse::plan {

/// Draws that are the same everywhere; the standard distributions are not.
class MoveDraws {
public:
    explicit MoveDraws(std::uint64_t seed) : engine_(seed) {}
    double share() { return static_cast<double>(engine_() >> 11) * 0x1.0p-53; }
    std::size_t below(std::size_t count)
    {
        return static_cast<std::size_t>(share() * static_cast<double>(count));
    }
    template <class T>
    void shuffle(std::vector<T>& items)
    {
        for (std::size_t left = items.size(); left > 1; --left) {
            std::swap(items[left - 1], items[below(left)]);
        }
    }

private:
    std::mt19937_64 engine_;
};

/// A plan on a grid that keeps everything, with the room it leaves.
struct GridPlan {
    std::vector<MovePath> paths;
    std::vector<double> costs; ///< Of each plant.
    std::vector<int> slack;    ///< [block][spot]
    double cost() const { return std::accumulate(costs.begin(), costs.end(), 0.0); }
};

/// Prices of crowded cells and the bound they give.
struct Prices {
    std::vector<float> of_cell; ///< [block][spot], a unit of size
    double bound = -std::numeric_limits<double>::infinity();
};

/// How prices are settled: as shares of what the plan costs above the base.
struct PriceSteps {
    double first;
    double last;
    std::size_t rounds; ///< Over all plants; 0: only the bound is taken.
};

/// One grid at work; a part of plan/move_solver.
class GridSolver {
public:
    GridSolver(const MoveGrid& grid, double base, MoveDraws& draws)
        : grid_(&grid), base_(base), finder_(grid), draws_(&draws)
    {
    }

    std::uint64_t work() const { return finder_.work(); }
    const MoveGrid& grid() const { return *grid_; }

    GridPlan empty_plan() const
    {
        const auto& problem = grid_->problem;
        GridPlan plan{std::vector<MovePath>(problem.plants), std::vector<double>(problem.plants, 0.0),
                      std::vector<int>(grid_->cells())};
        for (std::size_t block = 0; block < problem.nights; ++block) {
            std::copy_n(problem.capacity.begin(), problem.spots,
                        plan.slack.begin() + static_cast<std::ptrdiff_t>(block * problem.spots));
        }
        return plan;
    }

    /// Plants one after another, cheapest path on what is free.
    GridPlan greedy(const Prices* prices)
    {
        const auto& problem = grid_->problem;
        GridPlan plan = empty_plan();
        std::vector<std::size_t> order(problem.plants);
        std::iota(order.begin(), order.end(), std::size_t{0});
        // Big pots first: they find room hardest.
        std::ranges::stable_sort(order, std::greater{}, [&](std::size_t p) { return problem.size[p]; });
        for (const std::size_t plant : order) {
            insert(plan, plant,
                   prices != nullptr ? std::span<const float>{prices->of_cell} : std::span<const float>{});
        }
        return plan;
    }

    void take_out(GridPlan& plan, std::size_t plant) const
    {
        occupy(plan.slack, plant, plan.paths[plant], +1);
    }
    void put_in(GridPlan& plan, std::size_t plant, const MovePath& path, double cost) const
    {
        plan.paths[plant] = path;
        plan.costs[plant] = cost;
        occupy(plan.slack, plant, path, -1);
    }
    /// Puts a plant that is out back on what is free.
    void insert(GridPlan& plan, std::size_t plant, std::span<const float> price)
    {
        finder_.find(plant, price, plan.slack, &scratch_);
        put_in(plan, plant, scratch_, path_cost(grid_->problem, plant, scratch_));
    }

    void settle_prices(Prices& prices, PriceSteps steps);
    bool negotiate(const Prices& prices, double theta, double eta, GridPlan& best, std::uint64_t budget);
    void ruin_and_recreate(GridPlan& plan, const Prices& prices, double temperature, std::uint64_t budget);

private:
    void occupy(std::vector<int>& slack, std::size_t plant, const MovePath& path, int sign) const
    {
        const auto& problem = grid_->problem;
        const int size = sign * problem.size[plant];
        for (std::size_t block = 0; block < problem.nights; ++block) {
            slack[block * problem.spots + path[block]] += size;
        }
    }
    double on_prices(const Prices& prices, std::size_t plant, const MovePath& path) const
    {
        double sum = 0.0;
        for (std::size_t block = 0; block < path.size(); ++block) {
            sum += static_cast<double>(prices.of_cell[grid_->cell(block, path[block])]);
        }
        return sum * grid_->problem.size[plant];
    }
    /// The Lagrangian at the prices: no plan costs less. Sets each plant's cheapest cost in `alone`, where
    /// that is not null.
    double lagrangian(std::span<const float> price, std::vector<double>* alone);
    void swap_stays(GridPlan& plan, double limit, double& cost);
    std::pair<std::size_t, std::size_t> stay_around(const MovePath& path, std::size_t block) const;

    const MoveGrid* grid_;
    double base_; ///< What every plan costs at least, cell by cell.
    PathFinder finder_;
    MoveDraws* draws_;
    MovePath scratch_;
    std::vector<double> alone_; // [plant]: cheapest path at the prices, for the regret
};

} // namespace lathhouse::plan
