#include "tests/cli/run_command.h"

#include "core/base/csv.h"
#include "tests/cli/json_keys.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>

namespace lathhouse::cli {
namespace {

class HouseholdCommands : public testing::Test {
protected:
    HouseholdCommands()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_cli_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder_ = pattern;
    }
    ~HouseholdCommands() override
    {
        std::error_code failure;
        std::filesystem::remove_all(folder_, failure);
    }
    std::string home() const { return (folder_ / "home").string(); }
    Ran demo(std::vector<std::string> more = {}) const
    {
        std::vector<std::string> arguments{"--on", "2026-11-25", "demo", home(), "--photos", "0"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return run_command(arguments);
    }
    Ran ask(std::vector<std::string> command) const
    {
        std::vector<std::string> arguments{"--home", home()};
        arguments.insert(arguments.end(), command.begin(), command.end());
        return run_command(arguments);
    }
    std::filesystem::path folder_;
};

/// The keys of an object, sorted.
TEST_F(HouseholdCommands, DemoWritesAHousehold)
{
    const auto ran = demo();
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(ran.err.empty());
    EXPECT_TRUE(std::filesystem::exists(folder_ / "home/household.sqlite3"));
}

TEST_F(HouseholdCommands, DemoTakesSizes)
{
    ASSERT_EQ(demo({"--plants", "60", "--spots", "20", "--years", "1", "--seed", "3"}).status, 0);
    EXPECT_EQ(ask({"list", "plants", "--json"}).json()["plants"].size(), 60U);
    EXPECT_EQ(ask({"list", "spots", "--json"}).json()["spots"].size(), 20U);
}

TEST_F(HouseholdCommands, DemoGoesSouth)
{
    ASSERT_EQ(demo({"--hemisphere", "south"}).status, 0);
    EXPECT_LT(ask({"show", "place", "--json"}).json()["latitude"].get<double>(), 0.0);
}

TEST_F(HouseholdCommands, DemoRefusesAFilledFolder)
{
    ASSERT_EQ(demo().status, 0);
    const auto again = demo();
    EXPECT_EQ(again.status, 1);
    EXPECT_TRUE(is_one_clear_error(again)) << again.err;
}

TEST_F(HouseholdCommands, DemoRefusesASizeThatCannotBe)
{
    const auto ran = demo({"--plants", "0"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    EXPECT_FALSE(std::filesystem::exists(home()));
}

TEST_F(HouseholdCommands, DemoRefusesAnUnknownHemisphere)
{
    const auto ran = demo({"--hemisphere", "west"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST_F(HouseholdCommands, ListPlantsHasTheFixedForm)
{
    ASSERT_EQ(demo().status, 0);
    const auto plants = ask({"list", "plants", "--json"}).json()["plants"];
    ASSERT_EQ(plants.size(), 14U);
    EXPECT_EQ(keys(plants[0]),
              (std::set<std::string>{"id", "name", "kind", "safe_night_c", "damage_c", "lethal_c", "spot"}));
    EXPECT_EQ(plants[0]["name"], "Weeping fig");
    EXPECT_EQ(plants[0]["kind"], "Ficus benjamina");
    EXPECT_EQ(plants[0]["safe_night_c"], 13.0);
}

TEST_F(HouseholdCommands, ListSpotsHasTheFixedForm)
{
    ASSERT_EQ(demo().status, 0);
    const auto spots = ask({"list", "spots", "--json"}).json()["spots"];
    ASSERT_EQ(spots.size(), 6U);
    EXPECT_EQ(keys(spots[0]),
              (std::set<std::string>{"id", "name", "kind", "offset_c", "offset_sd_c", "capacity"}));
    EXPECT_EQ(spots[4]["kind"], "roofed");
    EXPECT_EQ(spots[5]["kind"], "open");
}

TEST_F(HouseholdCommands, ShowPlaceHasTheFixedForm)
{
    ASSERT_EQ(demo().status, 0);
    EXPECT_EQ(ask({"show", "place", "--json"}).out,
              "{\"latitude\":48.2,\"longitude\":20.8,\"elevation_m\":170.0,\"zone\":\"Europe/Budapest\"}\n");
}

TEST_F(HouseholdCommands, TextNamesPlantsAndTheirSpots)
{
    ASSERT_EQ(demo().status, 0);
    const auto text = ask({"list", "plants"}).out;
    EXPECT_NE(text.find("Angel's trumpet"), std::string::npos);
    EXPECT_NE(text.find("Cool landing"), std::string::npos);
}

TEST_F(HouseholdCommands, TextUsesTheChosenUnits)
{
    ASSERT_EQ(demo().status, 0);
    EXPECT_NE(ask({"list", "plants", "--units", "us"}).out.find("°F"), std::string::npos);
    EXPECT_NE(ask({"list", "plants"}).out.find("°C"), std::string::npos);
}

TEST_F(HouseholdCommands, ListNeedsToKnowWhat)
{
    const auto ran = ask({"list"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST_F(HouseholdCommands, SayWhereThereIsNoHousehold)
{
    const auto ran = ask({"list", "plants"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST_F(HouseholdCommands, SayWhereAFileIsNoHousehold)
{
    std::filesystem::create_directory(home());
    std::ofstream{folder_ / "home/household.sqlite3"} << "text";
    const auto ran = ask({"show", "place", "--json"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

} // namespace
} // namespace lathhouse::cli
