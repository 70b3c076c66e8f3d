#include "tests/cli/with_demonstration.h"

#include "core/base/csv.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace lathhouse::cli {
namespace {

const std::vector<std::string> kTown{"--on",      "2026-12-21",  "light", "--at",
                                     "48.2,20.5", "--elevation", "150",   "--json"};

nlohmann::json months(std::vector<std::string> more)
{
    auto arguments = kTown;
    arguments.insert(arguments.end(), more.begin(), more.end());
    const auto ran = run_command(arguments);
    EXPECT_EQ(ran.status, 0) << ran.err;
    return ran.status == 0 ? ran.json()["months"] : nlohmann::json::array();
}
double moles(const nlohmann::json& month)
{
    return month["daily_light_mol"].get<double>();
}

TEST(Light, HasTwelveMonthsWithTheKeysOfTheForm)
{
    const auto year = months({"--facing", "S"});
    ASSERT_EQ(year.size(), 12U);
    for (std::size_t m = 0; m < year.size(); ++m) {
        EXPECT_EQ(year[m]["month"], m + 1);
        // 1 mol over eight hours is 174.2 foot-candles of daylight (54 lux to the micromole).
        EXPECT_NEAR(year[m]["foot_candles_8h"].get<double>(), moles(year[m]) * 174.2, 0.1 * moles(year[m]));
        EXPECT_GE(year[m]["direct_sun_h"].get<double>(), year[m]["likely_sun_h"].get<double>());
    }
}
TEST(Light, WithoutASpotIsThatOfTheOpen)
{
    const auto open = months({});
    const auto climate = run_command({"climate", "--at", "48.2,20.5", "--elevation", "150", "--json"});
    ASSERT_EQ(climate.status, 0);
    for (std::size_t m = 0; m < 12; ++m) {
        const double level = moles(climate.json()["months"][m]);
        EXPECT_NEAR(moles(open[m]) / level, 1.0, 0.03) << m + 1;
    }
}
TEST(Light, OfTheOpenIsWithinTwelvePercentAtTheTenPlaces)
{
    // The whole way: the stations' lows and highs at the place, radiation, light. Typical years of
    // tests/data/sky.
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/sky/light_of_ten_places.csv");
    ASSERT_TRUE(table);
    std::map<std::string, double> errors;
    nlohmann::json year;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        if (!errors.contains(table->at(row, 0))) {
            const auto ran = run_command({"climate", "--at", table->at(row, 1) + "," + table->at(row, 2),
                                          "--elevation", table->at(row, 3), "--json"});
            ASSERT_EQ(ran.status, 0) << ran.err;
            year = ran.json()["months"];
        }
        const auto month = static_cast<std::size_t>(**table->number(row, 4)) - 1;
        const double published = 2.018 * **table->number(row, table->require_column("horizontal_mj").value());
        errors[table->at(row, 0)] += std::fabs(moles(year[month]) / published - 1.0) / 12.0;
    }
    ASSERT_EQ(errors.size(), 10U);
    double mean = 0.0;
    double worst = 0.0;
    for (const auto& [place, error] : errors) {
        mean += error / 10.0;
        worst = std::max(worst, error);
    }
    EXPECT_LT(mean, 0.12);
    RecordProperty("mean", std::to_string(mean));
    RecordProperty("worst", std::to_string(worst));
}
TEST(Light, OfASouthSillHasItsSeasons)
{
    const auto sill = months({"--facing", "S"});
    const auto open = months({});
    // A level leaf gets more in June; but of the outdoor light a window to the south keeps more in December.
    EXPECT_GT(moles(sill[5]), moles(sill[11]));
    const double in_june = sill[5]["facing_light_mol"].get<double>() / moles(open[5]);
    const double in_december = sill[11]["facing_light_mol"].get<double>() / moles(open[11]);
    EXPECT_GT(in_december, 2.0 * in_june);
}
TEST(Light, HasDarkAndBrightDaysRoundTheMean)
{
    for (const auto& year : {months({}), months({"--facing", "S"}), months({"--facing", "N", "--lamp", "20", "--target", "4"})}) {
        for (const auto& month : year) {
            EXPECT_LT(month["dark_day_mol"].get<double>(), month["middle_day_mol"].get<double>());
            EXPECT_LT(month["middle_day_mol"].get<double>(), month["bright_day_mol"].get<double>());
            EXPECT_LT(month["dark_day_mol"].get<double>(), moles(month));
            EXPECT_GT(month["bright_day_mol"].get<double>(), moles(month));
        }
    }
    // Clouds change less at a window that the Sun does not reach.
    const auto widest = [](const nlohmann::json& month) { return month["bright_day_mol"].get<double>() / moles(month); };
    EXPECT_LT(widest(months({"--facing", "N"})[11]), widest(months({"--facing", "S"})[11]) - 0.5);
    const auto text = run_command({"light", "--at", "48.2,20.5", "--elevation", "150", "--facing", "S"});
    EXPECT_NE(text.out.find("9 days in 10: what clouds change"), std::string::npos) << text.out;
}
TEST(Light, OfADeepCornerIsDimAndNotNothing)
{
    const auto corner = months({"--facing", "S", "--distance", "5", "--sideways", "3"});
    EXPECT_LT(moles(corner[11]), 0.2);
    EXPECT_GT(moles(corner[11]), 0.005);
    EXPECT_LT(moles(corner[5]), 1.5);
}
TEST(Light, KnowsTheKindsOfShelterAndTheWinds)
{
    EXPECT_GT(moles(months({"--kind", "roofed", "--facing", "S"})[5]), moles(months({"--facing", "S"})[5]));
    EXPECT_LT(moles(months({"--kind", "glazed"})[5]), moles(months({})[5]));
    EXPECT_EQ(months({"--facing", "SW"}), months({"--facing", "225"}));
    EXPECT_LT(moles(months({"--facing", "S", "--opposite", "40"})[11]), moles(months({"--facing", "S"})[11]));
    EXPECT_LT(moles(months({"--facing", "S", "--overhang", "1"})[5]), moles(months({"--facing", "S"})[5]));
    EXPECT_LT(moles(months({"--facing", "S", "--panes", "3"})[5]), moles(months({"--facing", "S"})[5]));
    EXPECT_LT(moles(months({"--facing", "N"})[11]), moles(months({"--facing", "S"})[11]));
    EXPECT_LT(moles(months({"--behind", "70", "--kind", "open", "--facing", "N"})[5]), moles(months({})[5]));
}
TEST(Light, GivesTheDirectSunOfADate)
{
    auto arguments = kTown;
    arguments.insert(arguments.end(), {"--facing", "S"});
    const auto today = run_command(arguments).json()["today"];
    EXPECT_EQ(today["date"], "2026-12-21");
    ASSERT_EQ(today["spells"].size(), 1U);
    // Sunrise of that day at 48.2 N 20.5 E is 06:29 UTC, sunset 14:47 (lathhouse sun).
    EXPECT_GT(today["spells"][0]["from"], "2026-12-21T06:29:00Z");
    EXPECT_LT(today["spells"][0]["to"], "2026-12-21T14:47:00Z");
    EXPECT_GT(today["direct_sun_h"].get<double>(), 5.0);
}
TEST(Light, FillsAGapWithALamp)
{
    const auto year = months({"--facing", "S", "--distance", "1", "--lamp", "100", "--target", "6"});
    const double gap = 6.0 - moles(year[11]);
    ASSERT_GT(gap, 0.0);
    EXPECT_NEAR(year[11]["lamp_h"].get<double>(), gap / 0.36, 1e-4); // 100 micromoles make 0.36 mol an hour.
    EXPECT_TRUE(months({"--facing", "S", "--lamp", "10", "--target", "20"})[11]["lamp_h"].is_null());
    EXPECT_EQ(months({"--lamp", "10", "--target", "1"})[5]["lamp_h"], 0.0);
    const auto text = run_command({"light", "--at", "48.2,20.5", "--elevation", "150", "--facing", "N",
                                   "--lamp", "20", "--target", "4"});
    EXPECT_NE(text.out.find("water and wet hands stay away"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("dark hours"), std::string::npos) << text.out;
}
TEST(Light, ConvertsFootCandlesAndBack)
{
    const auto there = run_command({"light", "--foot-candles", "1000", "--hours", "8", "--json"});
    ASSERT_EQ(there.status, 0) << there.err;
    EXPECT_NEAR(there.json()["daily_light_mol"].get<double>(), 5.7407, 0.0005);
    EXPECT_NEAR(there.json()["micromoles"].get<double>(), 199.33, 0.01);
    const auto back = run_command({"light", "--mol", "5.7407", "--hours", "8", "--json"});
    EXPECT_NEAR(back.json()["foot_candles"].get<double>(), 1000.0, 0.1);
}

TEST(LightOfAHousehold, ComesFromTheSpotsOwnWindow)
{
    const auto home = demonstration_of("2026-11-25", {}).string();
    const auto ran = run_command({"--home", home, "light", "--spot", "1", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto year = ran.json()["months"];
    EXPECT_GT(moles(year[5]), moles(year[11]));
    EXPECT_TRUE(year[0]["direct_sun_h"].is_number());
    const auto dim = run_command({"--home", home, "light", "--spot", "4", "--json"}).json()["months"];
    EXPECT_LT(moles(dim[0]), moles(year[0]));
    const auto missing = run_command({"--home", home, "light", "--spot", "99"});
    EXPECT_EQ(missing.status, 1);
    EXPECT_TRUE(is_one_clear_error(missing)) << missing.err;
}
TEST(LightOfAHousehold, IsSpreadOverTheDaysButUnderLamps)
{
    const auto home = demonstration_of("2026-11-25", {}).string();
    const auto june = [&](const char* spot) {
        return run_command({"--home", home, "light", "--spot", spot, "--json"}).json()["months"][5];
    };
    EXPECT_GT(june("1")["bright_day_mol"].get<double>(), moles(june("1")));
    ASSERT_EQ(run_command({"--home", home, "add", "spot", "Lamp shelf", "--kind", "indoors", "--capacity", "4",
                           "--light-summer", "9", "--light-winter", "9"})
                  .status,
              0);
    EXPECT_TRUE(june("7")["dark_day_mol"].is_null());
    EXPECT_TRUE(june("7")["middle_day_mol"].is_null());
    EXPECT_TRUE(june("7")["bright_day_mol"].is_null());
    EXPECT_NEAR(moles(june("7")), 9.0, 1e-6);
    const auto text = run_command({"--home", home, "light", "--spot", "7"}).out;
    EXPECT_NE(text.find("as under lamps"), std::string::npos) << text;
}
TEST(LightOfAHousehold, WithoutAWindowIsItsTwoFigures)
{
    const auto home = demonstration_of("2026-11-25", {"--plants", "5", "--spots", "3"}).string();
    const auto ran = run_command({"--home", home, "light", "--spot", "1", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(ran.json()["months"][0]["direct_sun_h"].is_null());
    EXPECT_FALSE(ran.json().contains("today"));
    EXPECT_NE(run_command({"--home", home, "light", "--spot", "1"}).out.find("no window"),
              std::string::npos);
}

} // namespace
} // namespace lathhouse::cli
