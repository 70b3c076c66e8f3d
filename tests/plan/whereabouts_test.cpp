#include "core/plan/whereabouts.h"

#include "tests/plan/growing_sample.h"

#include <gtest/gtest.h>

namespace lathhouse::plan {
namespace {

using namespace sample;

TEST(Whereabouts, AreTheJournalsBeforeTodayAndThePlansAfter)
{
    const auto home = potted_household("Ficus benjamina", 48.0, kOpen);
    const std::vector<home::Event> events{moved(date(2026, 10, 1), kSill), moved(date(2027, 5, 15), kOpen)};
    const std::vector<Stay> stays{stay(kOpen, date(2027, 6, 1), date(2027, 9, 20)),
                                  stay(kDim, date(2027, 9, 21), date(2028, 5, 31))};
    const Whereabouts of{home.plants.front(), events, stays, date(2027, 6, 1)};
    EXPECT_FALSE(of.on(date(2026, 9, 30)));
    EXPECT_EQ(of.on(date(2026, 10, 1)), kSill);
    EXPECT_EQ(of.on(date(2027, 5, 14)), kSill);
    EXPECT_EQ(of.on(date(2027, 5, 15)), kOpen);
    EXPECT_EQ(of.on(date(2027, 9, 20)), kOpen);
    EXPECT_EQ(of.on(date(2027, 9, 21)), kDim);
    EXPECT_EQ(of.on(date(2029, 1, 1)), kDim);
}

TEST(Whereabouts, OfAPlantWithoutAMoveAreWhereItStands)
{
    const auto home = potted_household("Ficus benjamina", 48.0, kSill);
    const Whereabouts of{home.plants.front(), {}, {}, date(2027, 6, 1)};
    EXPECT_EQ(of.on(date(2020, 1, 1)), kSill);
    EXPECT_EQ(of.on(date(2030, 1, 1)), kSill);
    auto nowhere = home.plants.front();
    nowhere.spot = std::nullopt;
    EXPECT_FALSE((Whereabouts{nowhere, {}, {}, date(2027, 6, 1)}.on(date(2027, 6, 1))));
}

TEST(Whereabouts, KnowWhichEventsConcernAPlant)
{
    const auto home = potted_household("Ficus benjamina", 48.0, kOpen);
    const std::vector<home::Event> events{moved(date(2026, 10, 1), kSill), moved(date(2027, 5, 15), kOpen)};
    const Whereabouts of{home.plants.front(), events, {}, date(2027, 6, 1)};
    auto watering = event(home::EventKind::Watered, date(2027, 5, 20));
    EXPECT_TRUE(of.concerns(watering));
    watering.plant = 2;
    EXPECT_FALSE(of.concerns(watering));
    watering.plant = std::nullopt;
    EXPECT_FALSE(of.concerns(watering)) << "neither plant nor spot";
    watering.spot = kOpen;
    EXPECT_TRUE(of.concerns(watering));
    watering.spot = kSill;
    EXPECT_FALSE(of.concerns(watering)) << "it had moved away";
}

TEST(Shelter, IsTheFirstSpotIndoorsOfThePlanFromTodayOn)
{
    auto home = potted_household("Ficus benjamina", 48.0, kOpen);
    const auto today = date(2027, 5, 20);
    const std::vector<PlantYear> plan{{1,
                                       {stay(kDim, date(2027, 1, 1), date(2027, 5, 14)), stay(kOpen, date(2027, 5, 15), date(2027, 9, 20)),
                                        stay(kSill, date(2027, 9, 21), date(2027, 12, 31))}}};
    EXPECT_EQ(shelter_of(1, plan, home, today), kSill) << "what is over does not count";
    EXPECT_EQ(shelter_of(1, plan, home, date(2027, 5, 14)), kDim);
    EXPECT_FALSE(shelter_of(2, plan, home, today));
    home.plants.front().spot = kSill; // A room too cold: not the one where it stands.
    EXPECT_FALSE(shelter_of(1, plan, home, today));
}

} // namespace
} // namespace lathhouse::plan
