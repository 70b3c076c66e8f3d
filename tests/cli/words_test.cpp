#include "app/words/words.h"

#include <gtest/gtest.h>

namespace lathhouse::words {
namespace {

TEST(Words, ChancesAreSaidAsGrowersSayThem)
{
    const std::pair<double, const char*> cases[] = {{1.0, "almost sure"},    {0.951, "almost sure"},
                                                    {0.9, "9 in 10"},        {0.6, "6 in 10"},
                                                    {0.5, "1 in 2"},         {0.33, "1 in 3"},
                                                    {0.1, "1 in 10"},        {0.05, "1 in 20"},
                                                    {0.001, "1 in 1000"},    {0.0009, "under 1 in 1000"},
                                                    {0.0, "under 1 in 1000"}};
    for (const auto& [fraction, words] : cases) {
        EXPECT_EQ(chance(*Probability::from_fraction(fraction)), words) << fraction;
    }
}

TEST(Words, NumbersHaveATrueMinusAndNoMinusZero)
{
    EXPECT_EQ(number(-2.25, 1), "\u22122.2");
    EXPECT_EQ(number(-0.04, 1), "0.0");
}

TEST(Words, TemperaturesFollowTheUnits)
{
    EXPECT_EQ(temperature(Celsius::from_degrees(8.3), UnitSystem::Metric), "8.3\u202F°C");
    EXPECT_EQ(temperature(Celsius::from_degrees(0.0), UnitSystem::UsCustomary), "32\u202F°F");
    EXPECT_EQ(temperature_difference(KelvinDelta::from_kelvins(2.0), UnitSystem::UsCustomary),
              "+3.6\u202F°F");
}

TEST(Words, PadsByCharactersNotBytes)
{
    EXPECT_EQ(padded("8°", 4), "8°  ");
    EXPECT_EQ(right_aligned("8°", 4), "  8°");
}

TEST(Words, DaysAreShort)
{
    EXPECT_EQ(full_day(*calendar::make_date(2026, 5, 30)), "Sat 30 May 2026");
    EXPECT_EQ(hours_and_minutes(63000.0), "17 h 30 min");
}

} // namespace
} // namespace lathhouse::words
