#include "tests/cli/run_command.h"

#include "core/calendar/date.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

namespace lathhouse::cli {
namespace {

/// The demonstration household, made once for all.
class GrowingCommands : public testing::Test {
protected:
    static void SetUpTestSuite()
    {
        ASSERT_EQ(run_command({"--on", "2027-01-10", "demo", folder().string(), "--photos", "0"}).status, 0);
    }
    static void TearDownTestSuite() { std::filesystem::remove_all(folder().parent_path()); }
    /// One of its own for each run, since tests run side by side.
    static const std::filesystem::path& folder()
    {
        static const auto made = [] {
            auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_growing_XXXXXX").string();
            EXPECT_NE(mkdtemp(pattern.data()), nullptr);
            return std::filesystem::path{pattern} / "home";
        }();
        return made;
    }
    static Ran home(std::vector<std::string> command, const std::string& on = "2027-01-10")
    {
        std::vector<std::string> arguments{"--home", folder().string(), "--on", on};
        arguments.insert(arguments.end(), command.begin(), command.end());
        return run_command(arguments);
    }
};

TEST_F(GrowingCommands, SayWhatTheyRestOn)
{
    using Words = std::vector<std::string>;
    for (const auto& command :
         {Words{"feeding"}, Words{"water"}, Words{"harden"}, Words{"light", "--spot", "1"}, Words{"climate"},
          Words{"frost"}, Words{"night", "--date", "2027-04-20"}, Words{"tonight", "--low", "3"}}) {
        const auto ran = home(command);
        ASSERT_EQ(ran.status, 0) << command.front() << ": " << ran.err;
        for (const char* said :
             {"stations, the nearest", "is right to about", "not promises", "Climate figures"}) {
            EXPECT_NE(ran.out.find(said), std::string::npos) << command.front() << ": " << said;
        }
    }
}

TEST_F(GrowingCommands, FeedingHasTheFixedForm)
{
    const auto ran = home({"feeding", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto answer = ran.json();
    ASSERT_EQ(answer["plants"].size(), 14U);
    int windows = 0;
    for (const auto& plant : answer["plants"]) {
        EXPECT_TRUE(plant["id"].is_number_integer());
        for (const auto& window : plant["windows"]) {
            ++windows;
            EXPECT_TRUE(calendar::parse_date(window["from"].get<std::string>()));
            EXPECT_LE(window["from"].get<std::string>(), window["to"].get<std::string>());
            EXPECT_GE(window["every_days"].get<int>(), 7);
        }
        for (const auto& rest : plant["withheld"]) {
            EXPECT_TRUE(calendar::parse_date(rest["from"].get<std::string>()));
            EXPECT_FALSE(rest["why"].get<std::string>().empty());
        }
    }
    EXPECT_GT(windows, 10);
    EXPECT_FALSE(answer["sources"].empty());
    for (const auto& source : answer["sources"]) { // Common practice has no publisher, which is not an empty one.
        EXPECT_NE(source["publisher"], "") << source["key"];
    }
}

TEST_F(GrowingCommands, FeedingOfOnePlantIsThatPlants)
{
    const auto by_id = home({"feeding", "--plant", "3", "--json"}).json();
    ASSERT_EQ(by_id["plants"].size(), 1U);
    EXPECT_EQ(by_id["plants"][0]["id"], 3);
    const auto by_name = home({"feeding", "--plant", by_id["plants"][0]["name"].get<std::string>(), "--json"});
    EXPECT_EQ(by_name.json()["plants"], by_id["plants"]);
}

TEST_F(GrowingCommands, FeedingSaysWhatAGrowerNeeds)
{
    const auto ran = home({"feeding"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    for (const char* words : {"demonstration household, invented", "every ", "none: ", "it rests", "wash salts out",
                              "follow the label", "locked away from children", "Take care: ", "empty the saucer", "Sources: ",
                              "common practice"}) {
        EXPECT_NE(ran.out.find(words), std::string::npos) << words << "\n" << ran.out;
    }
}

TEST_F(GrowingCommands, FeedingUnderLampsNamesTheirDanger)
{
    const auto dark = home({"feeding", "--plant", "12", "--json"}).json();
    const auto lit = home({"feeding", "--plant", "12", "--lamp-hours", "14", "--lamp-ppfd", "60", "--json"}).json();
    EXPECT_NE(dark["plants"][0]["windows"], lit["plants"][0]["windows"]);
    EXPECT_NE(home({"feeding", "--lamp-hours", "14"}).out.find("Keep water away from plugs"), std::string::npos);
}

TEST_F(GrowingCommands, WaterListsLooksAndNoCommands)
{
    const auto ran = home({"water", "--days", "30", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto answer = ran.json();
    ASSERT_EQ(answer["plants"].size(), 14U);
    for (const auto& plant : answer["plants"]) {
        EXPECT_GE(plant["look"].get<std::string>(), "2027-01-10");
        EXPECT_GE(plant["every_days"].get<int>(), 1);
        EXPECT_LE(plant["every_days"].get<int>(), 30);
        EXPECT_GT(plant["pot_l"].get<double>(), 0.0);
        EXPECT_TRUE(plant["roots"]["cold_line_c"].is_number());
        for (const auto& look : plant["looks"]) {
            EXPECT_LT(look.get<std::string>(), "2027-02-09");
        }
    }
    const auto text = home({"water"}).out;
    EXPECT_NE(text.find("A look is a finger in the mix"), std::string::npos) << text;
    EXPECT_NE(text.find("Sources: "), std::string::npos);
    EXPECT_NE(text.find("wet mix weighs"), std::string::npos);
}

TEST_F(GrowingCommands, WaterLearnsFromTheHouseholdsLog)
{
    const auto answer = home({"water", "--json"}).json();
    int taught = 0;
    for (const auto& plant : answer["plants"]) {
        taught += plant["habit"]["intervals"].get<int>() > 0 ? 1 : 0;
    }
    EXPECT_GT(taught, 0) << "the demonstration logs waterings";
}

TEST_F(GrowingCommands, SpeakInUsMeasuresWhereAsked)
{
    EXPECT_NE(home({"--units", "us", "feeding"}).out.find("cups"), std::string::npos);
    EXPECT_NE(home({"--units", "us", "water"}).out.find("cups"), std::string::npos);
}

TEST_F(GrowingCommands, RefuseWhatTheyCannotAnswer)
{
    const std::vector<std::vector<std::string>> wrong{
        {"feeding", "--plant", "99"},          {"feeding", "--plant", "no such"},
        {"feeding", "--lamp-hours", "25"},     {"feeding", "--lamp-ppfd", "50"},
        {"feeding", "--water", "wet"},         {"water", "--plant", "99"},
        {"water", "--days", "0"},              {"water", "--days", "400"},
        {"feeding", "--lamp-hours=-1"},        {"feeding", "--lamp-hours", "nan"}};
    for (const auto& arguments : wrong) {
        const auto ran = home(arguments);
        EXPECT_NE(ran.status, 0) << arguments.back();
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
}

TEST_F(GrowingCommands, JugsMeasureTheWaterOfAMix)
{
    EXPECT_NE(home({"list", "jugs"}).out.find("no jugs yet"), std::string::npos);
    const auto added = home({"add", "jug", "blue can", "1.5 L"});
    ASSERT_EQ(added.status, 0) << added.err;
    EXPECT_EQ(home({"list", "jugs", "--json"}).json()["jugs"][0]["name"], "blue can");
    const auto mix = home({"mix", "--feed", "20-10-20", "--ppm", "100", "--water", "2 blue can", "--json"});
    ASSERT_EQ(mix.status, 0) << mix.err;
    EXPECT_NEAR(mix.json()["grams"].get<double>(), 1.5, 1e-9);
    for (const auto& arguments : std::vector<std::vector<std::string>>{{"add", "jug", "cup", "1 L"},
                                                                       {"add", "jug", "can 2", "1 L"},
                                                                       {"add", "jug", "can", "nothing"},
                                                                       {"add", "jug", "can", "0 L"}}) {
        const auto ran = home(arguments);
        EXPECT_EQ(ran.status, 2) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
    EXPECT_EQ(home({"list", "jugs", "--json"}).json()["jugs"].size(), 1U);
}

TEST_F(GrowingCommands, AMixForAPlantTakesItsClass)
{
    const auto snake = home({"mix", "--feed", "20-10-20", "--plant", "11", "--water", "1 L", "--json"});
    ASSERT_EQ(snake.status, 0) << snake.err;
    EXPECT_NEAR(snake.json()["nitrogen_ppm"].get<double>(), 75.0, 1e-9) << "a light feeder gets 50 to 100";
    const auto strong = home({"mix", "--feed", "20-10-20", "--plant", "11", "--ppm", "200", "--water", "1 L"});
    EXPECT_EQ(strong.status, 0);
    EXPECT_NE(strong.err.find("too strong for a light feeder"), std::string::npos) << strong.err;
}

} // namespace
} // namespace lathhouse::cli
