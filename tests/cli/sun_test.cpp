#include "tests/cli/run_command.h"

#include <gtest/gtest.h>

namespace lathhouse::cli {
namespace {

TEST(SunCommand, GivesTheFixedKeysOfADay)
{
    // ERFA, tests/data/sky/solar_days.csv: the equator on 29 February 2024.
    const auto ran = run_command({"sun", "--at=0,0", "--from", "2024-02-29", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto day = ran.json().at("days").at(0);
    EXPECT_EQ(day.at("date"), "2024-02-29");
    EXPECT_EQ(day.at("kind"), "ordinary");
    EXPECT_EQ(day.at("sunrise").get<std::string>().substr(0, 17), "2024-02-29T06:09:");
    EXPECT_EQ(day.at("sunset").get<std::string>().substr(0, 17), "2024-02-29T18:15:");
    EXPECT_EQ(day.at("civil_dawn").get<std::string>().substr(0, 17), "2024-02-29T05:48:");
    EXPECT_EQ(day.at("civil_dusk").get<std::string>().substr(0, 17), "2024-02-29T18:36:");
    EXPECT_EQ(day.at("noon").get<std::string>().substr(0, 17), "2024-02-29T12:12:");
    EXPECT_NEAR(day.at("noon_elevation_deg").get<double>(), 82.33056, 0.0005);
    EXPECT_NEAR(day.at("day_length_s").get<double>(), 43597.8, 1.0);
    EXPECT_NEAR(day.at("extraterrestrial_mj").get<double>(), 38.0, 0.5);
}
TEST(SunCommand, GivesNullForWhatDoesNotHappen)
{
    const auto ran = run_command({"sun", "--at", "82.5018,-62.3481", "--from", "2025-01-04", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto day = ran.json().at("days").at(0);
    EXPECT_EQ(day.at("kind"), "polar_night");
    EXPECT_TRUE(day.at("sunrise").is_null());
    EXPECT_TRUE(day.at("civil_dawn").is_null());
    EXPECT_EQ(day.at("day_length_s"), 0.0);
    EXPECT_EQ(day.at("extraterrestrial_mj"), 0.0);
}
TEST(SunCommand, GivesEveryDayOfTheSpan)
{
    const auto ran =
        run_command({"sun", "--at", "48.2N 16.4E", "--from", "2027-12-30", "--to", "2028-01-02", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto days = ran.json().at("days");
    ASSERT_EQ(days.size(), 4U);
    EXPECT_EQ(days.back().at("date"), "2028-01-02");
}
TEST(SunCommand, BeginsToday)
{
    const auto ran = run_command({"--on", "2027-05-09", "sun", "--at", "48,16", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json().at("days").at(0).at("date"), "2027-05-09");
}
TEST(SunCommand, ShowsTheClockOfTheZone)
{
    // 21 June 2027 at Vienna: sunrise 02:54 UTC, which is 04:54 by the summer clock.
    const auto ran =
        run_command({"sun", "--at", "48.21,16.37", "--from", "2027-06-21", "--zone", "Europe/Vienna"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("04:5"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("Europe/Vienna"), std::string::npos) << ran.out;
}
TEST(SunCommand, RefusesASpanThatRunsBackwards)
{
    const auto ran = run_command({"sun", "--at", "48,16", "--from", "2027-06-21", "--to", "2027-06-20"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}
TEST(SunCommand, PassesOverADateThatTheZoneSkipped)
{
    const std::vector<std::string> start{"sun",    "--at=-13.8,-171.8", "--zone", "Pacific/Apia", "--json",
                                         "--from", "2011-12-30"};
    const auto alone = run_command(start);
    EXPECT_EQ(alone.status, 1);
    EXPECT_TRUE(is_one_clear_error(alone)) << alone.err;
    auto span = start;
    span.insert(span.end(), {"--to", "2011-12-31"});
    const auto ran = run_command(span);
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.json().at("days").size(), 1U);
    EXPECT_NE(ran.err.find("2011-12-30"), std::string::npos) << ran.err;
}

} // namespace
} // namespace lathhouse::cli
