#include "app/models/plant_habit.h"

#include <gtest/gtest.h>

#include <set>

namespace lathhouse::models {
namespace {

Habit habit_named(const char* name)
{
    const auto kind = plants::PlantReference::built_in().find(name);
    EXPECT_TRUE(kind) << name;
    return kind ? habit_of(*kind) : Habit::RoundCrown;
}

TEST(PlantHabit, SpeciesComesBeforeGenusAndGenusBeforeGroup)
{
    EXPECT_EQ(habit_named("Ficus benjamina"), Habit::Weeping);
    EXPECT_EQ(habit_named("Ficus elastica"), Habit::RoundCrown);
    EXPECT_EQ(habit_named("Monstera deliciosa"), Habit::SplitLeaves);
    EXPECT_EQ(habit_named("Monstera adansonii"), Habit::Trailing);
    EXPECT_EQ(habit_named("Tradescantia spathacea"), Habit::Blades);
    EXPECT_EQ(habit_named("Tradescantia zebrina"), Habit::Trailing);
    EXPECT_EQ(habit_named("Fuchsia"), Habit::HangingFlowers);
    EXPECT_EQ(habit_named("Jade plant"), Habit::Fleshy);
    EXPECT_EQ(habit_named("Moth orchid"), Habit::ArchingOrchid);
}

TEST(PlantHabit, EveryHabitIsDrawnForSomeKind)
{
    std::set<Habit> habits;
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        habits.insert(habit_of(&kind));
    }
    EXPECT_EQ(habits.size(), 13U);
}

TEST(PlantHabit, KindOfTheGrowersOwnHasACrown)
{
    EXPECT_EQ(habit_of(nullptr), Habit::RoundCrown);
    EXPECT_FALSE(bears_fruit(nullptr));
}

TEST(PlantHabit, CitrusBearsFruit)
{
    EXPECT_TRUE(bears_fruit(*plants::PlantReference::built_in().find("Kumquat")));
    EXPECT_FALSE(bears_fruit(*plants::PlantReference::built_in().find("Rubber plant")));
}

} // namespace
} // namespace lathhouse::models
