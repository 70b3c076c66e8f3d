#include "core/plan/grid_solver.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
std::pair<std::size_t, std::size_t> GridSolver::stay_around(const MovePath& path, std::size_t block) const
{
    std::size_t first = block;
    while (first > 0 && path[first - 1] == path[block]) {
        --first;
    }
    std::size_t last = block;
    while (last + 1 < path.size() && path[last + 1] == path[block]) {
        ++last;
    }
    return {first, last};
}

/// Exchanges the paths of two plants over a stay, where that is allowed and within the limit.
void GridSolver::swap_stays(GridPlan& plan, double limit, double& cost)
{
    const auto& problem = grid_->problem;
    const std::size_t p = draws_->below(problem.plants);
    const std::size_t q = draws_->below(problem.plants);
    const std::size_t block = draws_->below(problem.nights);
    auto& one = plan.paths[p];
    auto& other = plan.paths[q];
    if (p == q || one[block] == other[block]) {
        return;
    }
    const auto mine = stay_around(one, block);
    const auto theirs = stay_around(other, block);
    std::pair<std::size_t, std::size_t> window;
    switch (draws_->below(4)) {
    case 0:
        window = mine;
        break;
    case 1:
        window = theirs;
        break;
    case 2:
        window = {std::max(mine.first, theirs.first), std::min(mine.second, theirs.second)};
        break;
    default:
        window = {0, problem.nights - 1};
    }
    const auto exchange = [&] {
        std::swap_ranges(one.begin() + static_cast<std::ptrdiff_t>(window.first),
                         one.begin() + static_cast<std::ptrdiff_t>(window.second + 1),
                         other.begin() + static_cast<std::ptrdiff_t>(window.first));
    };
    exchange();
    const double first_cost = path_cost(problem, p, one);
    const double second_cost = path_cost(problem, q, other);
    const double after = cost - plan.costs[p] - plan.costs[q] + first_cost + second_cost;
    bool keep = after < limit && path_allowed(problem, p, one) && path_allowed(problem, q, other);
    if (keep && problem.size[p] != problem.size[q]) {
        const int more = problem.size[p] - problem.size[q];
        for (std::size_t at = window.first; at <= window.second && keep; ++at) {
            // `one` now stands where `other` stood.
            const auto fits = [&](std::size_t spot, int extra) {
                return spot == problem.nowhere() || plan.slack[grid_->cell(at, spot)] >= extra;
            };
            keep = one[at] == other[at] || (fits(one[at], more) && fits(other[at], -more));
        }
        if (keep) {
            for (std::size_t at = window.first; at <= window.second; ++at) {
                plan.slack[grid_->cell(at, one[at])] -= more;
                plan.slack[grid_->cell(at, other[at])] += more;
            }
        }
    }
    if (!keep) {
        exchange();
        return;
    }
    plan.costs[p] = first_cost;
    plan.costs[q] = second_cost;
    cost = after;
}

void GridSolver::ruin_and_recreate(GridPlan& plan, const Prices& prices, double temperature,
                                   std::uint64_t budget)
{
    const auto& problem = grid_->problem;
    if (problem.plants < 2) {
        return;
    }
    const std::uint64_t begin = finder_.work();
    const std::uint64_t end = begin + budget;
    alone_.resize(problem.plants);
    lagrangian(prices.of_cell, &alone_);
    GridPlan best = plan;
    double cost = plan.cost();
    double best_cost = cost;
    std::vector<float> softened(grid_->cells());
    const auto regret = [&](std::size_t plant) {
        return plan.costs[plant] + on_prices(prices, plant, plan.paths[plant]) - alone_[plant];
    };
    const auto worst_of = [&](std::span<const std::size_t> among, std::size_t tries) {
        std::size_t worst = among[draws_->below(among.size())];
        double most = regret(worst);
        for (std::size_t again = 1; again < tries; ++again) {
            const std::size_t other = among[draws_->below(among.size())];
            if (const double its = regret(other); its > most) {
                most = its;
                worst = other;
            }
        }
        return worst;
    };
    std::vector<std::size_t> everybody(problem.plants);
    std::iota(everybody.begin(), everybody.end(), std::size_t{0});
    std::vector<std::size_t> outside;
    std::vector<std::size_t> occupants;
    std::vector<MovePath> old_paths;
    std::vector<double> old_costs;
    const auto is_best = [&] {
        return best_cost - prices.bound <= 1.0e-4 * std::max(0.0, best_cost - base_);
    };
    while (finder_.work() < end && !is_best()) {
        const double done = static_cast<double>(finder_.work() - begin) / static_cast<double>(budget);
        const double heat = temperature * std::max(0.0, 1.0 - done);
        const auto limit = [&] { return cost - heat * std::log(std::max(1.0e-12, draws_->share())); };
        for (int swap = 0; swap < 10; ++swap) {
            swap_stays(plan, heat > 0.0 ? limit() : cost - 1.0e-9, cost);
        }
        const double theta = draws_->share();
        for (std::size_t at = 0; at < softened.size(); ++at) {
            softened[at] = static_cast<float>(theta) * prices.of_cell[at];
        }
        outside.assign(1, worst_of(everybody, 2));
        take_out(plan, outside.front());
        finder_.find(outside.front(), softened, {}, &scratch_);
        const MovePath wish = scratch_;
        for (int more = 0; more < 3; ++more) {
            // Somebody who stands in its way.
            std::size_t at = problem.nights;
            const std::size_t offset = draws_->below(problem.nights);
            for (std::size_t step = 0; step < problem.nights; ++step) {
                const std::size_t block = (offset + step) % problem.nights;
                const std::size_t spot = wish[block];
                if (spot != problem.nowhere() &&
                    plan.slack[grid_->cell(block, spot)] < problem.size[outside.front()]) {
                    at = block;
                    break;
                }
            }
            if (at == problem.nights) {
                break;
            }
            occupants.clear();
            for (std::size_t plant = 0; plant < problem.plants; ++plant) {
                if (plan.paths[plant][at] == wish[at] && std::ranges::find(outside, plant) == outside.end()) {
                    occupants.push_back(plant);
                }
            }
            if (occupants.empty()) {
                break;
            }
            outside.push_back(worst_of(occupants, 3));
            take_out(plan, outside.back());
        }
        old_paths.clear();
        old_costs.clear();
        double without = cost;
        for (const std::size_t plant : outside) {
            old_paths.push_back(plan.paths[plant]);
            old_costs.push_back(plan.costs[plant]);
            without -= plan.costs[plant];
        }
        std::vector<std::size_t> order(outside.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        if (draws_->share() < 0.5) {
            draws_->shuffle(order);
        }
        double after = without;
        for (const std::size_t which : order) {
            insert(plan, outside[which], softened);
            after += plan.costs[outside[which]];
        }
        if (after <= (heat > 0.0 ? limit() : cost)) {
            cost = after;
        } else {
            for (std::size_t which = 0; which < outside.size(); ++which) {
                take_out(plan, outside[which]);
            }
            for (std::size_t which = 0; which < outside.size(); ++which) {
                put_in(plan, outside[which], old_paths[which], old_costs[which]);
            }
        }
        if (cost < best_cost - 1.0e-9) {
            best_cost = cost;
            best = plan;
        }
    }
    plan = std::move(best);
}

} // namespace lathhouse::plan
