#include "app/models/next_move.h"

#include <gtest/gtest.h>

namespace lathhouse::models {
namespace {

constexpr home::SpotId kLanding = 1;
constexpr home::SpotId kBalcony = 2;
const calendar::Date kNow{2026, 5, 16};

/// A plant that the plan has on the balcony from today to October and on the landing after that.
plan::RoundParts out_for_the_summer()
{
    plan::RoundParts parts{.today = kNow, .plan = {.from = kNow, .risk = plan::kUsualRisk, .plants = {}, .gap = 0.0, .solve_time = {}, .breaches = {}, .refusals = {}},
                           .ladders = {}, .pests = {}, .water = {}, .feeding = {}, .cold = {}, .damage = {}, .nights = {}, .sowing = {}};
    const calendar::Date autumn{2026, 10, 1};
    const plan::Reason why{plan::ReasonKind::NightsAllow, {}, {}};
    parts.plan.plants = {{7, {{kBalcony, kNow, autumn - calendar::Days{1}, why, {}, {}},
                              {kLanding, autumn, kNow + calendar::Days{364}, why, {}, {}}}}};
    return parts;
}

TEST(NextMove, WhereItStandsAlreadyIsNoMove)
{
    const auto parts = out_for_the_summer();
    // It was never carried out: the next move is the one that is due, not the coming in to where it stands.
    const auto due = next_move(parts, 7, kLanding, kNow);
    ASSERT_TRUE(due);
    EXPECT_EQ(due->stay->spot, kBalcony);
    EXPECT_EQ(due->on, kNow);
    const auto later = next_move(parts, 7, kBalcony, kNow);
    ASSERT_TRUE(later);
    EXPECT_EQ(later->stay->spot, kLanding);
    EXPECT_EQ(later->on, (calendar::Date{2026, 10, 1}));
}

TEST(NextMove, WaitsForTheHardening)
{
    auto parts = out_for_the_summer();
    parts.ladders.push_back({.plant = 7, .from = kLanding, .to = kBalcony, .direction = plan::Direction::Out, .planned = kNow,
                             .reached = kNow + calendar::Days{9}, .doublings = 2.0,
                             .colder = KelvinDelta::from_kelvins(3.0), .items = {}, .paused = {}});
    EXPECT_EQ(next_move(parts, 7, kLanding, kNow)->on, kNow + calendar::Days{9});
}

TEST(NextMove, IsNotPutOffByTheHardeningOfNextSpring)
{
    auto parts = out_for_the_summer();
    const calendar::Date spring{2027, 3, 29};
    parts.ladders.push_back({.plant = 7, .from = kLanding, .to = kBalcony, .direction = plan::Direction::Out, .planned = spring,
                             .reached = spring, .doublings = 2.0, .colder = KelvinDelta::from_kelvins(3.0), .items = {}, .paused = {}});
    EXPECT_EQ(next_move(parts, 7, kLanding, kNow)->on, kNow);
}

TEST(NextMove, NoneWhereThePlanLeavesItOrKnowsNothingOfIt)
{
    auto parts = out_for_the_summer();
    EXPECT_FALSE(next_move(parts, 8, kLanding, kNow));
    parts.plan.plants.front().stays.resize(1);
    EXPECT_FALSE(next_move(parts, 7, kBalcony, kNow));
    EXPECT_TRUE(next_move(parts, 7, std::nullopt, kNow)) << "it stands nowhere, so it is to be put somewhere";
}

} // namespace
} // namespace lathhouse::models
