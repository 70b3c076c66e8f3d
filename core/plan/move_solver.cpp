#include "core/plan/move_grid.h"
#include "core/plan/move_problem.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace lathhouse::plan {
namespace {

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

/// One grid at work.
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

    void raise_bound(Prices& prices, double upper, double first_step, std::size_t rounds,
                     std::uint64_t budget);
    void evaluate(Prices& prices);
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
    void swap_stays(GridPlan& plan, double limit, double& cost);
    std::pair<std::size_t, std::size_t> stay_around(const MovePath& path, std::size_t block) const;

    const MoveGrid* grid_;
    double base_; ///< What every plan costs at least, cell by cell.
    PathFinder finder_;
    MoveDraws* draws_;
    MovePath scratch_;
    std::vector<double> alone_; // [plant]: cheapest path at the prices, for the regret
};

/// One evaluation of the Lagrangian; leaves each cell's use in `use`.
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
    lagrangian(finder_, *grid_, prices.of_cell, nullptr, &alone_);
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
    while (finder_.work() < end) {
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
    // Work is counted in cells: 800 sweeps over all plants, or 1.5 million cells a plant where that is less; a
    // twelfth of it when it must be quick. A small household gets five million all the same.
    const auto plants = static_cast<double>(problem.plants);
    const double sweep = plants * static_cast<double>(problem.nights * problem.spots);
    const double full = std::max(5.0e6, std::min(800.0 * sweep, std::max(3.6e8, 1.5e6 * plants)));
    const auto budget = static_cast<std::uint64_t>(effort == Effort::Full ? full : full / 12.0);
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
    coarse.raise_bound(prices, plan.cost(), 1.0, 250, part(0.35, budget));
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
    middle.raise_bound(weekly, weekly_plan.cost(), 0.3, 60, part(0.2, rest()));
    middle.ruin_and_recreate(weekly_plan, weekly, 0.24 * mean_trouble, part(0.4, rest()));
    spent += middle.work();

    GridSolver fine{nights, solution.base, draws};
    Prices nightly = lifted(nights, weeks, weekly);
    GridPlan nightly_plan = lifted(fine, weeks, weekly_plan);
    fine.raise_bound(nightly, nightly_plan.cost(), 0.05, 4, part(0.3, rest()));
    if (nightly.bound == -std::numeric_limits<double>::infinity()) {
        fine.evaluate(nightly);
    }
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
