#include "tests/cli/run_command.h"

#include "app/words/season_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;
using testing::Not;

Ran climate(const std::string& at, const std::string& metres, std::vector<std::string> more = {})
{
    std::vector<std::string> arguments{"climate", "--at=" + at, "--elevation=" + metres};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run_command(arguments);
}

TEST(ClimateCommand, HasTheFiguresOfAPlace)
{
    const auto json = climate("48.2,16.37", "200", {"--json"}).json();
    double degree_days = 0.0;
    double rain = 0.0;
    for (const auto& month : json["months"]) {
        degree_days += month["growing_degree_days"].get<double>();
        rain += month["rain_mm"].get<double>();
        EXPECT_LE(month["soil_10cm"]["high_c"].get<double>(), month["soil_5cm"]["high_c"].get<double>());
        EXPECT_LT(month["pot"]["low_c"].get<double>(), month["pot"]["high_c"].get<double>());
        EXPECT_NEAR(month["soil_5cm"]["mean_c"].get<double>(),
                    (month["low_c"].get<double>() + month["high_c"].get<double>()) / 2.0, 1.5);
    }
    EXPECT_NEAR(json["growing_degree_days"].get<double>(), degree_days, 1e-3);
    EXPECT_NEAR(json["rain_mm"].get<double>(), rain, 1e-3);
    EXPECT_EQ(json["thermal_seasons"][0]["above_c"], 5.0);
    EXPECT_GT(json["thermal_seasons"][0]["days"].get<double>(),
              json["thermal_seasons"][1]["days"].get<double>());
    EXPECT_EQ(json["seasons"]["temperature"], "winter");
    EXPECT_EQ(json["own_record"], false);
    EXPECT_TRUE(json["growing_season_days"].is_null());
}

TEST(ClimateCommand, PotsDrinkByTheirArea)
{
    const auto small = climate("48.2,16.37", "200", {"--pot", "20", "--json"}).json();
    const auto large = climate("48.2,16.37", "200", {"--pot", "40", "--json"}).json();
    EXPECT_NEAR(large["months"][6]["pot_water_l_day"].get<double>(),
                4.0 * small["months"][6]["pot_water_l_day"].get<double>(), 1e-5);
    // July: the depth on the area of the pot's top.
    const double depth = small["months"][6]["reference_et_mm"].get<double>() / 31.0;
    EXPECT_NEAR(small["months"][6]["pot_water_l_day"].get<double>(), depth * 0.0314159, 1e-5);
    const auto ran = climate("48.2,16.37", "200", {"--pot", "0"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST(ClimateCommand, ElevationNeedsAPlace)
{
    const auto ran = run_command({"climate", "--elevation", "20"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST(ClimateCommand, NamesNoWinterInTheTropics)
{
    const auto darwin = climate("-12.42,130.89", "30").out;
    EXPECT_THAT(darwin, HasSubstr("a little cooler from June to August; there is no winter."));
    EXPECT_THAT(darwin, HasSubstr("The wet season is October to April, the dry season May to September."));
    EXPECT_THAT(darwin, HasSubstr("No frost in any of the years."));
    EXPECT_THAT(darwin, Not(HasSubstr("of a winter")));
    EXPECT_THAT(darwin, HasSubstr("all year, above 10.0"));
}

TEST(ClimateCommand, NamesTheCoolSeasonOfTheWarmCoasts)
{
    EXPECT_THAT(climate("25.79,-80.29", "3").out,
                HasSubstr("There is no winter; the cool season is December to February"));
}

TEST(ClimateCommand, PutsTheSouthernWinterInJuly)
{
    const auto sydney = climate("-33.86,151.21", "39").out;
    EXPECT_THAT(sydney, HasSubstr("Winter is coldest from June to August, summer warmest from "));
    EXPECT_THAT(sydney, HasSubstr("No frost in any of the years"));
}

TEST(ClimateCommand, SaysWhereItIsTheSameAllYear)
{
    EXPECT_THAT(climate("-0.18,-78.49", "2812").out, HasSubstr("about as warm all year; there is no winter"));
}

} // namespace
} // namespace lathhouse::cli

namespace lathhouse::words {
namespace {

climate::Monthly<bool> of(std::initializer_list<std::size_t> numbers)
{
    climate::Monthly<bool> which{};
    for (const auto number : numbers) {
        which[number - 1] = true;
    }
    return which;
}

TEST(SeasonWords, MonthsRunOverTheTurnOfTheYear)
{
    EXPECT_EQ(months(of({11, 12, 1, 2})), "November to February");
    EXPECT_EQ(months(of({3, 4, 8, 10, 11, 12})), "March to April, August and October to December");
    EXPECT_EQ(months(of({})), "no month");
    EXPECT_EQ(months(of({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})), "every month");
}

climate::ThresholdDates dates(climate::ThresholdState state, double nights, double without)
{
    const auto share = *Probability::from_fraction(without);
    return {Celsius::from_degrees(0.0), state, nights, {20, share, {}}, {20, share, {}}, {}};
}

TEST(SeasonWords, FrostIsSaidAsOftenAsItComes)
{
    using climate::ThresholdState;
    EXPECT_EQ(frost(dates(ThresholdState::Never, 0.0, 1.0), {}, UnitSystem::Metric),
              "No frost in any of the years.");
    EXPECT_EQ(frost(dates(ThresholdState::NoSeason, 0.0, 1.0), {}, UnitSystem::Metric),
              "No frost in any of the years.");
    EXPECT_EQ(frost(dates(ThresholdState::Ordinary, 0.05, 0.96), {}, UnitSystem::Metric),
              "Frost is an exception, in about 1 in 30 years.");
    EXPECT_EQ(frost(dates(ThresholdState::Ordinary, 1.2, 0.4), {}, UnitSystem::Metric),
              "Frost in some years, 1.2 nights a year on average.");
    EXPECT_EQ(frost(dates(ThresholdState::Ordinary, 88.6, 0.0), {}, UnitSystem::Metric),
              "Frost every year, 89 nights a year.");
    EXPECT_EQ(frost(dates(ThresholdState::NoWindow, 300.0, 0.0), {}, UnitSystem::Metric),
              "Frost in every month, 300 nights a year.");
}

TEST(SeasonWords, TheLowestNightOfTheYearsCountsForMoreThanSmallChances)
{
    const auto rare = dates(climate::ThresholdState::Ordinary, 0.1, 0.9);
    EXPECT_EQ(frost(rare, Celsius::from_degrees(2.1), UnitSystem::Metric),
              "No frost in any of the years; the lowest night had 2.1\u202F°C, so it cannot be ruled out.");
    EXPECT_EQ(frost(rare, Celsius::from_degrees(-0.3), UnitSystem::Metric),
              "Frost in some years, 0.1 nights a year on average.");
}

TEST(SeasonWords, AThermalSeasonWithoutEndsIsSaidInWords)
{
    const auto five = Celsius::from_degrees(5.0);
    EXPECT_EQ(thermal_season({five, 365.25, {}, {}}, UnitSystem::Metric), "above 5.0\u202F°C all year");
    EXPECT_EQ(thermal_season({five, 0.0, {}, {}}, UnitSystem::Metric), "never above 5.0\u202F°C");
}

} // namespace
} // namespace lathhouse::words
