#include "tests/cli/run_command.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;

std::vector<std::string> zinnia(std::vector<std::string> more = {})
{
    std::vector<std::string> arguments{"--on", "2027-01-10", "sowing", "--at", "44.8,20.5", "--crop", "zinnia"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

TEST(SowingCommand, GivesTheFixedForm)
{
    const auto ran = run_command(zinnia({"--json"}));
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    for (const char* key :
         {"sow_indoors", "sow_outdoors", "plant_out", "emerge", "ready", "last_useful", "seeds", "sources"}) {
        EXPECT_TRUE(json.contains(key)) << key;
    }
    EXPECT_LT(json["sow_indoors"], json["plant_out"]);
    EXPECT_LT(json["plant_out"], json["ready"]["from"]);
    EXPECT_LE(json["sow_outdoors"]["from"], json["sow_outdoors"]["to"]);
    EXPECT_EQ(json["sow_indoors"].get<std::string>().size(), 10U);
    EXPECT_TRUE(json["no_date"].is_null());
    // 1 - 0.35^n >= 0.95 from three seeds on.
    EXPECT_EQ(json["seeds"], 3);
}

TEST(SowingCommand, PlantsOutInSpringOnBothHalvesOfTheGlobe)
{
    const auto north = run_command(zinnia({"--json"})).json()["plant_out"].get<std::string>();
    EXPECT_TRUE(north.substr(5, 2) == "04" || north.substr(5, 2) == "05") << north;
    const auto south = run_command({"--on", "2027-06-10", "sowing", "--at=-31.9,115.9", "--crop", "Tomato", "--json"})
                           .json()["plant_out"]
                           .get<std::string>();
    EXPECT_TRUE(south.substr(5, 2) == "08" || south.substr(5, 2) == "09" || south.substr(5, 2) == "10") << south;
}

TEST(SowingCommand, GivesNullForWhatDoesNotApply)
{
    const auto radish =
        run_command({"--on", "2027-01-10", "sowing", "--at", "44.8,20.5", "--crop", "radish", "--json"}).json();
    EXPECT_TRUE(radish["sow_indoors"].is_null());
    EXPECT_TRUE(radish["plant_out"].is_null());
    EXPECT_FALSE(radish["emerge"].is_null());
    const auto petunia =
        run_command({"--on", "2027-01-10", "sowing", "--at", "44.8,20.5", "--crop", "petunia", "--json"}).json();
    EXPECT_TRUE(petunia["sow_outdoors"].is_null());
    EXPECT_FALSE(petunia["plant_out"].is_null());
}

TEST(SowingCommand, TellsAGrowerWhyAndOnWhatItRests)
{
    const auto ran = run_command(zinnia());
    ASSERT_EQ(ran.status, 0) << ran.err;
    for (const char* text : {"Zinnia elegans", "Sow indoors", "Harden off from", "Plant out", "Last useful sowing",
                             "19 in 20 sure", "common practice", "Plant out not before ", "Sow not later than", "Sources: ",
                             "chances, not promises", "Germination Requirements for Annuals"}) {
        EXPECT_THAT(ran.out, HasSubstr(text));
    }
    EXPECT_EQ(ran.out.find("null"), std::string::npos);
}

TEST(SowingCommand, SaysWhereNoDateExistsAndWhatWouldHelp)
{
    const auto ran = run_command({"--on", "2027-01-10", "sowing", "--at", "64.1,-21.9", "--crop", "watermelon"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("No date exists here"));
    EXPECT_THAT(ran.out, HasSubstr("What would help"));
    const auto json =
        run_command({"--on", "2027-01-10", "sowing", "--at", "64.1,-21.9", "--crop", "watermelon", "--json"}).json();
    EXPECT_TRUE(json["plant_out"].is_null());
    EXPECT_FALSE(json["no_date"]["ways"].empty());
}

TEST(SowingCommand, CalendarNamesWhatCanBeSownNow)
{
    const auto ran =
        run_command({"--on", "2027-04-01", "sowing", "--at", "44.8,20.5", "--calendar", "--days", "14", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    std::vector<std::string> crops;
    for (const auto& row : json["sowings"]) {
        crops.push_back(row["crop"]);
        EXPECT_LE(row["from"].get<std::string>(), "2027-04-14");
    }
    EXPECT_THAT(crops, testing::Contains("Radish"));
    EXPECT_THAT(crops, testing::Contains("Zinnia"));
    EXPECT_EQ(json["to"], "2027-04-14");
    const auto text = run_command({"--on", "2027-04-01", "sowing", "--at", "44.8,20.5", "--calendar"});
    EXPECT_THAT(text.out, HasSubstr("What can be sown"));
    EXPECT_THAT(text.out, HasSubstr("Sources: "));
}

TEST(SowingCommand, RefusesWrongUseWithOneClearLine)
{
    struct Case {
        std::vector<std::string> arguments;
        int status;
        const char* says;
    };
    for (const auto& [arguments, status, says] :
         {Case{{"sowing", "--at", "44.8,20.5"}, 2, "--crop"},
          Case{{"sowing", "--at", "44.8,20.5", "--crop", "zinnia", "--calendar"}, 2, "one of"},
          Case{{"sowing", "--at", "44.8,20.5", "--crop", "zinia"}, 1, "did you mean Zinnia"},
          Case{{"sowing", "--at", "44.8,20.5", "--crop", "zinnia", "--risk", "0"}, 2, "--risk"},
          Case{{"sowing", "--at", "44.8,20.5", "--crop", "zinnia", "--risk", "90"}, 2, "--risk"},
          Case{{"sowing", "--at", "44.8,20.5", "--crop", "zinnia", "--plants", "0"}, 2, "--plants"},
          Case{{"sowing", "--at", "44.8,20.5", "--crop", "zinnia", "--room", "90"}, 2, "--room"},
          Case{{"sowing", "--at", "144.8,20.5", "--crop", "zinnia"}, 2, "atitude"},
          Case{{"sowing", "--at", "44.8,20.5", "--calendar", "--days", "0"}, 2, "--days"}}) {
        const auto ran = run_command(arguments);
        EXPECT_EQ(ran.status, status) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
        EXPECT_THAT(ran.err, HasSubstr(says));
    }
}

} // namespace
} // namespace lathhouse::cli
