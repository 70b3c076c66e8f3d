#include "core/home/germination_rate.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::home {
namespace {

constexpr Probability kSure = Probability::literal(0.95);

/// One half before anything was counted, of the weight of two seeds: the even distribution.
GerminationRate even()
{
    return GerminationRate::before_counting(Probability::literal(0.5), 2.0);
}

/// Tables of the cumulative binomial, p = 0.25 (failures): n = 20, 8 or fewer 0.9591; n = 19, 7 or fewer 0.9225;
/// n = 10, 5 or fewer 0.9803 (any statistics tables; e.g. Murdoch and Barnes, table 1).
TEST(Binomial, AgreesWithPrintedTables)
{
    const auto three_quarters = Probability::literal(0.75);
    EXPECT_NEAR(chance_of(12, 20, three_quarters).fraction(), 0.9591, 5e-5);
    EXPECT_NEAR(chance_of(12, 19, three_quarters).fraction(), 0.9225, 5e-5);
    EXPECT_NEAR(chance_of(5, 10, three_quarters).fraction(), 0.9803, 5e-5);
}

TEST(SeedsNeeded, IsTheFewestThatAreSureEnough)
{
    // From the tables above: 19 seeds give twelve plants in 92 of 100 sowings, 20 in 96.
    EXPECT_EQ(seeds_needed(12, Probability::literal(0.75), kSure), 20);
    // One plant: 1 - 0.35^n >= 0.95 from n = ln 0.05 / ln 0.35 = 2.85.
    EXPECT_EQ(seeds_needed(1, Probability::literal(0.65), kSure), 3);
    EXPECT_EQ(seeds_needed(0, Probability::literal(0.65), kSure), 0);
    EXPECT_EQ(seeds_needed(7, Probability::literal(1.0), kSure), 7);
}

TEST(SeedsNeeded, SaysWhereNoHandfulIsEnough)
{
    EXPECT_EQ(seeds_needed(5, Probability::literal(0.0), kSure), std::nullopt);
    EXPECT_EQ(seeds_needed(99'000, Probability::literal(0.5), kSure), std::nullopt);
}

TEST(SeedsNeeded, RisesWithThePlants)
{
    int before = 0;
    for (int plants = 1; plants <= 40; ++plants) {
        const int now = seeds_needed(plants, Probability::literal(0.6), kSure).value();
        EXPECT_GT(now, before);
        before = now;
    }
}

/// With an even share each number of seedlings is equally likely: P(X >= k) = (n - k + 1) / (n + 1).
TEST(GerminationRate, BetaBinomialOfAnEvenShareIsEven)
{
    for (const int seeds : {1, 7, 50, 300}) {
        for (int plants = 0; plants <= seeds; ++plants) {
            EXPECT_NEAR(even().chance_of(plants, seeds).fraction(), (seeds - plants + 1.0) / (seeds + 1.0), 1e-9);
        }
    }
}

/// Beta(2, 1) of two seeds: P(2) = E p^2 = 1/2, P(at least 1) = 1 - E (1 - p)^2 = 1 - 1/6.
TEST(GerminationRate, BetaBinomialAgreesWithTheClosedFormOfTwoSeeds)
{
    const auto rate = even().after(1, 1);
    EXPECT_NEAR(rate.mean(), 2.0 / 3.0, 1e-12);
    EXPECT_NEAR(rate.chance_of(2, 2).fraction(), 0.5, 1e-12);
    EXPECT_NEAR(rate.chance_of(1, 2).fraction(), 5.0 / 6.0, 1e-12);
}

/// Beta(n + 1, 1) has the distribution p^(n+1): its tails are roots.
TEST(GerminationRate, IntervalAgreesWithTheClosedFormOfAllThatCame)
{
    const auto rate = even().after(9, 9);
    const auto interval = rate.interval(Probability::literal(0.9));
    EXPECT_NEAR(interval.low.fraction(), std::pow(0.05, 0.1), 1e-9);
    EXPECT_NEAR(interval.high.fraction(), std::pow(0.95, 0.1), 1e-9);
}

TEST(GerminationRate, CountsMoveTheMeanByTheirWeight)
{
    const auto before = GerminationRate::before_counting(Probability::literal(0.8), 20.0);
    EXPECT_NEAR(before.mean(), 0.8, 1e-12);
    EXPECT_NEAR(before.after(20, 8).mean(), (16.0 + 8.0) / 40.0, 1e-12);
    EXPECT_NEAR(before.after(20, 8).weight_seeds(), 40.0, 1e-12);
}

TEST(GerminationRate, NotKnowingTheShareCostsSeeds)
{
    const auto vague = GerminationRate::before_counting(Probability::literal(0.75), 8.0);
    const auto known = GerminationRate::before_counting(Probability::literal(0.75), 100'000.0);
    EXPECT_GT(seeds_needed(12, vague, kSure).value(), 20);
    EXPECT_EQ(seeds_needed(12, known, kSure), 20); // The binomial's answer.
}

TEST(ChanceOfPlants, IsSureOfNoneAndRulesOutMoreThanSeeds)
{
    EXPECT_EQ(chance_of(0, 5, Probability::literal(0.1)).fraction(), 1.0);
    EXPECT_EQ(chance_of(6, 5, Probability::literal(0.9)).fraction(), 0.0);
    EXPECT_EQ(even().chance_of(0, 5).fraction(), 1.0);
    EXPECT_EQ(even().chance_of(6, 5).fraction(), 0.0);
}

} // namespace
} // namespace lathhouse::home
