#include "core/plants/rest_habit.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::plants {
namespace {

RestHabit of(const char* name)
{
    return rest_habit(**PlantReference::built_in().find(name));
}

TEST(RestHabit, SlowsOrdinaryHousePlantsInWinter)
{
    EXPECT_EQ(of("Epipremnum aureum").winter, WinterHabit::Slows);
    EXPECT_EQ(of("Ficus benjamina").winter, WinterHabit::Slows);
    EXPECT_EQ(of("Aglaonema commutatum").winter, WinterHabit::Slows);
    EXPECT_FALSE(of("Ficus benjamina").dry);
}

TEST(RestHabit, LetsTubersAndLeaflessKindsRestDry)
{
    for (const char* name : {"Caladium bicolor", "Colocasia esculenta", "Ficus carica"}) {
        EXPECT_EQ(of(name).winter, WinterHabit::Rests) << name;
    }
    EXPECT_TRUE(of("Caladium bicolor").dry);
}

TEST(RestHabit, LetsWinterGrowersRestInSummer)
{
    const auto calla = of("Zantedeschia aethiopica");
    EXPECT_EQ(calla.winter, WinterHabit::Grows);
    EXPECT_TRUE(calla.summer_rest);
}

TEST(RestHabit, KnowsThatAnnualsHaveNoRest)
{
    for (const auto& kind : PlantReference::built_in().kinds()) {
        if (kind.rest == "annual" || kind.rest == "biennial" || kind.rest.empty()) {
            EXPECT_EQ(rest_habit(kind).winter, WinterHabit::Grows) << kind.botanical_name;
        }
    }
}

TEST(RestHabit, DoesNotSayThatAllKindsRestOrNone)
{
    const auto kinds = PlantReference::built_in().kinds();
    const auto count = [&](WinterHabit habit) {
        return std::ranges::count(kinds, habit, [](const PlantKind& kind) { return rest_habit(kind).winter; });
    };
    EXPECT_GE(count(WinterHabit::Grows), 15);
    EXPECT_GE(count(WinterHabit::Slows), 40);
    EXPECT_GE(count(WinterHabit::Rests), 25);
}

TEST(RestHabit, NeverCallsAKindDryThatDoesNotRest)
{
    for (const auto& kind : PlantReference::built_in().kinds()) {
        const auto habit = rest_habit(kind);
        EXPECT_TRUE(!habit.dry || habit.winter == WinterHabit::Rests || habit.summer_rest) << kind.botanical_name;
    }
}

} // namespace
} // namespace lathhouse::plants
