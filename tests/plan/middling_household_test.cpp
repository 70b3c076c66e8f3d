#include "core/home/demonstration.h"
#include "core/plan/household_moves.h"
#include "core/plan/stress.h"
#include "tests/plan/random_moves.h"
#include "tests/plan/sample_household.h"

#include <gtest/gtest.h>

namespace lathhouse::plan {
namespace {

const calendar::Date kFromOfMiddling{2027, 1, 10};
constexpr Probability kRiskOfMiddling = Probability::literal(0.1);

home::Household middling(int plants, int spots, std::uint32_t seed)
{
    home::DemonstrationOptions options{kFromOfMiddling};
    options.plants = plants;
    options.spots = spots;
    options.years = 0;
    options.seed = seed;
    return home::demonstration(options).value().household;
}

class MiddlingHousehold : public testing::Test {
protected:
    HouseholdMoves moves_of(const home::Household& home) const
    {
        return {home, place_, chances_, kFromOfMiddling, kRiskOfMiddling, none_};
    }
    climate::PlaceClimate place_ = climate_of(5.0, 10.0);
    ColdChances chances_{place_.nights()};
    PlanWishes none_;
};

TEST_F(MiddlingHousehold, QuickPlansAreWithinThreeAndAHalfPercentOfTheBound)
{
    for (const std::uint32_t seed : {1U, 2U}) {
        const auto home = middling(120, 24, seed);
        EXPECT_LT(solve_moves(moves_of(home).problem(), Effort::Fast).gap(), 0.035) << "seed " << seed;
    }
}

TEST_F(MiddlingHousehold, QuickPlansAreNoWorseForFourTimesThePlantsAndSpots)
{
    // The work must grow with the household: with that of a small one the gap was a third and more.
    const auto home = middling(240, 48, 3);
    EXPECT_LT(solve_moves(moves_of(home).problem(), Effort::Fast).gap(), 0.03);
}

TEST_F(MiddlingHousehold, FullEffortComesCloserThanQuickPlansDo)
{
    const auto home = middling(30, 10, 4);
    const auto moves = moves_of(home);
    const auto quick = solve_moves(moves.problem(), Effort::Fast);
    const auto full = solve_moves(moves.problem(), Effort::Full);
    EXPECT_LE(full.cost, quick.cost);
    EXPECT_GE(full.bound, quick.bound);
    // Either bound holds for either plan.
    EXPECT_LE(full.bound, quick.cost);
    EXPECT_LE(quick.bound, full.cost);
    EXPECT_LT(full.gap(), 0.015);
}

TEST_F(MiddlingHousehold, WhatAlikePlantsFeelIsWhatEachOfThemFeels)
{
    auto home = middling(40, 9, 5); // Kinds come more than once.
    home.plants[7].must_dry = !home.plants[7].must_dry;
    home.plants[11].lines.lethal = home.plants[11].lines.lethal + KelvinDelta::from_kelvins(1.0);
    const auto moves = moves_of(home);
    const auto& problem = moves.problem();
    ASSERT_EQ(moves.real_spots(), home.spots.size());
    const auto nights = place_.nights();
    for (std::size_t p = 0; p < home.plants.size(); ++p) {
        for (std::size_t s = 0; s < moves.real_spots(); ++s) {
            std::vector<char> allowed(kNightsOfAPlan, 1);
            if (home::is_outdoors(moves.spot(s).kind)) {
                allowed = admissible_evenings(home.plants[p], moves.spot(s), chances_, kFromOfMiddling,
                                              kRiskOfMiddling);
            }
            const bool in_reach = home.plants[p].hazardous && moves.spot(s).in_reach;
            for (std::size_t night = p; night < problem.nights; night += 61) {
                const float cost = problem.cost_at(p, night, s);
                ASSERT_EQ(cost < kForbidden, allowed[night] && !in_reach) << p << ' ' << s << ' ' << night;
                if (cost < kForbidden) {
                    EXPECT_FLOAT_EQ(cost, static_cast<float>(stress_of(home.plants[p], moves.spot(s), place_,
                                                                       nights, moves.date(night))));
                }
            }
        }
    }
}

TEST_F(MiddlingHousehold, SpotsThatFillUpTheNumberTakeNobody)
{
    const auto home = middling(12, 5, 6); // Six with "nowhere", eight filled up.
    const auto moves = moves_of(home);
    const auto& problem = moves.problem();
    ASSERT_EQ(problem.spots, 8U);
    for (const auto& path : solve_moves(problem, Effort::Fast).paths) {
        for (const std::size_t spot : path) {
            EXPECT_TRUE(spot < moves.real_spots() || spot == problem.nowhere());
        }
    }
}

TEST(FilledUpMoves, AreSolvedAsTheSameMovesBare)
{
    const auto bare = make_moves({10, 60, 6, 7, 2, 5}); // Seven with "nowhere".
    MoveProblem filled = bare;
    filled.spots = 8;
    filled.zone.insert(filled.zone.end() - 1, bare.zone[5]);
    filled.capacity.insert(filled.capacity.end() - 1, 0);
    filled.cost.clear();
    for (std::size_t row = 0; row < bare.plants * bare.nights; ++row) {
        const float* from = &bare.cost[row * bare.spots];
        filled.cost.insert(filled.cost.end(), from, from + 6);
        filled.cost.insert(filled.cost.end(), {kForbidden, from[6]});
    }
    const auto one = solve_moves(bare, Effort::Fast);
    const auto other = solve_moves(filled, Effort::Fast);
    EXPECT_EQ(one.bound, other.bound);
    EXPECT_EQ(one.cost, other.cost);
    for (std::size_t plant = 0; plant < bare.plants; ++plant) {
        for (std::size_t night = 0; night < bare.nights; ++night) {
            const std::size_t spot = other.paths[plant][night];
            EXPECT_EQ(one.paths[plant][night], spot == filled.nowhere() ? bare.nowhere() : spot);
        }
    }
}

} // namespace
} // namespace lathhouse::plan
