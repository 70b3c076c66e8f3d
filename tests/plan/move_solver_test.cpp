#include "tests/plan/random_moves.h"

#include <glpk.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <numeric>

namespace lathhouse::plan {
namespace {

void expect_keeps_everything(const MoveProblem& moves, const MoveSolution& solution)
{
    ASSERT_EQ(solution.paths.size(), moves.plants);
    std::vector<int> standing(moves.nights * moves.spots, 0);
    double cost = 0.0;
    for (std::size_t plant = 0; plant < moves.plants; ++plant) {
        ASSERT_EQ(solution.paths[plant].size(), moves.nights);
        EXPECT_TRUE(path_allowed(moves, plant, solution.paths[plant])) << "plant " << plant;
        cost += path_cost(moves, plant, solution.paths[plant]);
        for (std::size_t night = 0; night < moves.nights; ++night) {
            standing[night * moves.spots + solution.paths[plant][night]] += moves.size[plant];
        }
    }
    EXPECT_NEAR(solution.cost, cost, 1.0e-6 * cost);
    EXPECT_LE(solution.bound, solution.cost);
    for (std::size_t night = 0; night < moves.nights; ++night) {
        for (std::size_t spot = 0; spot < moves.nowhere(); ++spot) {
            EXPECT_LE(standing[night * moves.spots + spot], moves.capacity[spot]) << night << ' ' << spot;
        }
    }
}

/// Every allowed path of a plant, by counting through all of them.
std::vector<MovePath> all_paths(const MoveProblem& moves, std::size_t plant)
{
    std::vector<MovePath> paths;
    MovePath path(moves.nights, 0);
    while (true) {
        if (path_allowed(moves, plant, path)) {
            paths.push_back(path);
        }
        std::size_t night = 0;
        while (night < moves.nights && ++path[night] == moves.spots) {
            path[night++] = 0;
        }
        if (night == moves.nights) {
            return paths;
        }
    }
}

/// Cost of the best plan of two plants, by trying every pair of paths.
double best_of_all(const MoveProblem& moves)
{
    const auto first = all_paths(moves, 0);
    const auto second = all_paths(moves, 1);
    const auto costs_of = [&](std::size_t plant, const std::vector<MovePath>& paths) {
        std::vector<double> costs;
        for (const auto& path : paths) {
            costs.push_back(path_cost(moves, plant, path));
        }
        return costs;
    };
    const auto first_costs = costs_of(0, first);
    const auto second_costs = costs_of(1, second);
    double best = std::numeric_limits<double>::infinity();
    for (std::size_t a = 0; a < first.size(); ++a) {
        for (std::size_t b = 0; b < second.size(); ++b) {
            if (first_costs[a] + second_costs[b] >= best) {
                continue;
            }
            bool fits = true;
            for (std::size_t night = 0; night < moves.nights && fits; ++night) {
                for (std::size_t spot = 0; spot < moves.nowhere(); ++spot) {
                    const int standing = (first[a][night] == spot ? moves.size[0] : 0) +
                                         (second[b][night] == spot ? moves.size[1] : 0);
                    fits = fits && standing <= moves.capacity[spot];
                }
            }
            if (fits) {
                best = first_costs[a] + second_costs[b];
            }
        }
    }
    return best;
}

TEST(MoveSolver, FindsTheBestOfAllPlansInSmallCases)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        const auto moves = make_moves({2, 6, 3, 1 + seed % 4, 1 + static_cast<int>(seed) % 2, seed});
        const auto solution = solve_moves(moves, Effort::Full);
        expect_keeps_everything(moves, solution);
        EXPECT_NEAR(solution.cost, best_of_all(moves), 1.0e-4) << "seed " << seed;
    }
}

/// Optimum of a problem by GLPK's branch and cut, on the flow of each plant through (night, spot, nights
/// spent there); a general-purpose solver that knows nothing of ours. Returns its best plan's cost and its
/// bound.
struct IntegerOptimum {
    double cost;
    double bound;
};
IntegerOptimum by_integer_programme(const MoveProblem& moves)
{
    glp_term_out(GLP_OFF);
    const std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> lp{glp_create_prob(), &glp_delete_prob};
    glp_set_obj_dir(lp.get(), GLP_MIN);
    const std::size_t settled = moves.least_stay; // Nights spent there, this and more alike.
    std::vector<int> rows{0}, columns{0};
    std::vector<double> values{0.0};
    std::map<std::vector<std::size_t>, int> node_rows;
    const auto node = [&](std::size_t plant, std::size_t night, std::size_t spot, std::size_t age) {
        const auto [found, is_new] = node_rows.try_emplace({plant, night, spot, age}, 0);
        if (is_new) {
            found->second = glp_add_rows(lp.get(), 1);
            glp_set_row_bnds(lp.get(), found->second, GLP_FX, 0.0, 0.0);
        }
        return found->second;
    };
    std::vector<int> crowd(moves.nights * moves.spots, 0);
    for (std::size_t night = 0; night < moves.nights; ++night) {
        for (std::size_t spot = 0; spot < moves.nowhere(); ++spot) {
            const int row = glp_add_rows(lp.get(), 1);
            glp_set_row_bnds(lp.get(), row, GLP_UP, 0.0, moves.capacity[spot]);
            crowd[night * moves.spots + spot] = row;
        }
    }
    const auto put = [&](int row, int column, double value) {
        rows.push_back(row);
        columns.push_back(column);
        values.push_back(value);
    };
    for (std::size_t plant = 0; plant < moves.plants; ++plant) {
        const int source = glp_add_rows(lp.get(), 1);
        glp_set_row_bnds(lp.get(), source, GLP_FX, 1.0, 1.0);
        const auto arc = [&](int from, double sign, std::size_t night, std::size_t spot, std::size_t age,
                             double cost) {
            const int column = glp_add_cols(lp.get(), 1);
            glp_set_col_kind(lp.get(), column, GLP_BV);
            glp_set_obj_coef(lp.get(), column, cost + static_cast<double>(moves.cost_at(plant, night, spot)));
            put(from, column, sign);
            if (night + 1 < moves.nights) {
                put(node(plant, night, spot, age), column, 1.0);
            }
            if (spot != moves.nowhere()) {
                put(crowd[night * moves.spots + spot], column, moves.size[plant]);
            }
        };
        const auto open = [&](std::size_t night, std::size_t spot) {
            return moves.cost_at(plant, night, spot) < kForbidden;
        };
        for (std::size_t spot = 0; spot < moves.spots; ++spot) {
            if (open(0, spot)) {
                const bool carried = moves.start[plant] && *moves.start[plant] != spot;
                arc(source, 1.0, 0, spot, carried ? 1 : settled,
                    carried ? static_cast<double>(moves.carry(plant, *moves.start[plant], spot)) : 0.0);
            }
        }
        for (std::size_t night = 0; night + 1 < moves.nights; ++night) {
            for (std::size_t spot = 0; spot < moves.spots; ++spot) {
                for (std::size_t age = 1; age <= settled; ++age) {
                    const auto known = node_rows.find({plant, night, spot, age});
                    if (known == node_rows.end()) {
                        continue;
                    }
                    const int from = known->second;
                    if (open(night + 1, spot)) {
                        arc(from, -1.0, night + 1, spot, std::min(age + 1, settled), 0.0);
                    }
                    const bool may_leave =
                        age == settled || spot == moves.nowhere() || !open(night + 1, spot);
                    for (std::size_t to = 0; to < moves.spots && may_leave; ++to) {
                        if (to != spot && open(night + 1, to)) {
                            arc(from, -1.0, night + 1, to, 1,
                                static_cast<double>(moves.carry(plant, spot, to)));
                        }
                    }
                }
            }
        }
    }
    glp_load_matrix(lp.get(), static_cast<int>(rows.size()) - 1, rows.data(), columns.data(), values.data());
    glp_smcp simplex;
    glp_init_smcp(&simplex);
    simplex.presolve = GLP_ON;
    glp_simplex(lp.get(), &simplex);
    const double relaxed = glp_get_obj_val(lp.get());
    glp_iocp integer;
    glp_init_iocp(&integer);
    integer.presolve = GLP_ON;
    integer.gmi_cuts = GLP_ON;
    integer.tm_lim = 20000;
    if (glp_intopt(lp.get(), &integer) != 0) {
        return {std::numeric_limits<double>::infinity(), relaxed};
    }
    return {glp_mip_obj_val(lp.get()), relaxed};
}

struct MiddlingCase {
    const char* name;
    RandomMoves wanted;
};
void PrintTo(const MiddlingCase& row, std::ostream* out)
{
    *out << row.name;
}
class MoveSolverAgainstIntegerSolver : public testing::TestWithParam<MiddlingCase> {};

TEST_P(MoveSolverAgainstIntegerSolver, IsWithinHalfAPercentOfTheOptimum)
{
    const auto moves = make_moves(GetParam().wanted);
    const auto solution = solve_moves(moves, Effort::Full);
    expect_keeps_everything(moves, solution);
    const auto optimum = by_integer_programme(moves);
    ASSERT_TRUE(std::isfinite(optimum.cost)) << "the integer solver found no proof in its time";
    EXPECT_GE(solution.cost, optimum.cost - 1.0e-3);
    EXPECT_LE(solution.cost, optimum.cost * 1.005);
    EXPECT_LE(solution.bound, optimum.cost + 1.0e-3) << "a bound above the optimum is none";
    RecordProperty("above_optimum_percent", std::to_string(100.0 * (solution.cost / optimum.cost - 1.0)));
}

INSTANTIATE_TEST_SUITE_P(Sizes, MoveSolverAgainstIntegerSolver,
                         testing::Values(MiddlingCase{"NightsFreeStay", {6, 20, 4, 1, 1, 11}},
                                         MiddlingCase{"NightsFourNightStay", {6, 20, 4, 4, 1, 12}},
                                         MiddlingCase{"NightsEightNightStay", {5, 20, 3, 8, 1, 13}},
                                         MiddlingCase{"SizesFourNightStay", {5, 16, 4, 4, 3, 14}},
                                         MiddlingCase{"TwelveBySixFortnights", {12, 13, 6, 1, 1, 15}},
                                         MiddlingCase{"EightByFiveSizes", {8, 10, 5, 1, 3, 16}}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(MoveSolver, GivesEqualPlansForEqualProblems)
{
    const auto moves = make_moves({10, 60, 6, 7, 2, 5});
    EXPECT_EQ(solve_moves(moves, Effort::Fast).paths, solve_moves(moves, Effort::Fast).paths);
}

TEST(MoveSolver, UsesNowhereWhereTheRoomDoesNotReach)
{
    auto moves = make_moves({4, 40, 2, 5, 1, 6});
    moves.capacity = {1, 1, 0};
    const auto solution = solve_moves(moves, Effort::Full);
    expect_keeps_everything(moves, solution);
    int nowhere = 0;
    for (const auto& path : solution.paths) {
        nowhere += static_cast<int>(std::ranges::count(path, moves.nowhere()));
    }
    EXPECT_GE(nowhere, 2 * 40); // Four pots, two places.
}

TEST(MoveSolver, LeavesASpotOnlyAfterTheLeastStay)
{
    auto moves = make_moves({1, 30, 2, 10, 1, 7});
    std::ranges::fill(moves.cost, 0.0F);
    moves.start = {std::nullopt};
    moves.capacity = {1, 1, 0};
    for (std::size_t night = 0; night < 30; ++night) {
        moves.cost[night * 3 + 1] = night < 12 ? 5.0F : 0.0F;        // The second spot is bad at first,
        moves.cost[night * 3 + 0] = night >= 20 ? kForbidden : 0.0F; // the first one closes,
        moves.cost[night * 3 + 2] = 20.0F;                           // and nowhere is worst.
    }
    const auto path = solve_moves(moves, Effort::Full).paths.front();
    EXPECT_EQ(path.front(), 0);
    EXPECT_EQ(path.back(), 1);
    EXPECT_TRUE(path_allowed(moves, 0, path));
    MovePath hasty(30, 0);
    std::fill(hasty.begin() + 5, hasty.begin() + 8, std::uint16_t{1});
    std::fill(hasty.begin() + 20, hasty.end(), std::uint16_t{1});
    EXPECT_FALSE(path_allowed(moves, 0, hasty)) << "three nights are no stay";
}

TEST(MoveSolver, OfNoPlantsIsNothing)
{
    const auto solution = solve_moves(MoveProblem{}, Effort::Fast);
    EXPECT_TRUE(solution.paths.empty());
    EXPECT_EQ(solution.cost, 0.0);
    EXPECT_EQ(solution.bound, 0.0);
}

} // namespace
} // namespace lathhouse::plan
