#include "tests/cli/run_command.h"

#include <gtest/gtest.h>

namespace lathhouse::cli {
namespace {

bool says(const Ran& ran, const char* text)
{
    return ran.out.find(text) != std::string::npos;
}

TEST(DamageCommand, ListsTheSymptomsWhenNothingIsSaid)
{
    const auto ran = run_command({"damage", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_GT(ran.json()["symptoms"].size(), 20U);
}

TEST(DamageCommand, RanksWhatTheSignsFitAndIsNeverCertain)
{
    const std::vector<std::string> asked{"--on",          "2026-05-10", "damage", "--symptom", "cupped_leaves",
                                         "--symptom",     "twisted_stems", "--days", "2"};
    const auto text = run_command(asked);
    ASSERT_EQ(text.status, 0) << text.err;
    EXPECT_TRUE(says(text, "not certain")) << text.out;
    EXPECT_TRUE(says(text, "fits well: hormone weed-killers")) << text.out;
    EXPECT_TRUE(says(text, "do not wash the mix through")) << text.out;
    auto as_json = asked;
    as_json.push_back("--json");
    const auto json = run_command(as_json).json();
    EXPECT_EQ(json["courses"][0]["fits"][0]["mode"], "auxin");
    EXPECT_EQ(json["courses"][0]["certain"], false);
    EXPECT_TRUE(json["courses"][0]["mode"].is_null());
}

TEST(DamageCommand, ShowsWhereSourcesDisagreeAndKeepsFoodOffTheTable)
{
    const auto ran = run_command({"--on", "2026-05-10", "damage", "--product", "glyphosate", "--edible", "yes",
                                  "--wet", "no", "--pot", "3"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(says(ran, "Sources disagree: ")) << ran.out;
    EXPECT_TRUE(says(ran, "Do not eat")) << ran.out;
    EXPECT_TRUE(says(ran, "Do not wash the leaves now")) << ran.out;
    EXPECT_FALSE(says(ran, "To wash the mix through")) << ran.out;
}

TEST(DamageCommand, RinsesWithGlovesWhileItIsWet)
{
    const auto ran = run_command({"damage", "--product", "dicamba", "--wet", "yes", "--pot", "2"});
    EXPECT_TRUE(says(ran, "gloves")) << ran.out;
    EXPECT_TRUE(says(ran, "4.0 L of water")) << ran.out;
    EXPECT_TRUE(says(ran, "over a basin")) << ran.out;
}

TEST(DamageCommand, RefusesWhatItDoesNotKnow)
{
    for (const auto& wrong : std::vector<std::vector<std::string>>{
             {"damage", "--symptom", "blue_leaves"},
             {"damage", "--product", "dicamba", "--wet", "maybe"},
             {"damage", "--product", "dicamba", "--days", "-1"},
             {"damage", "--product", "dicamba", "--pot", "0"},
             {"--on", "2026-05-10", "damage", "--product", "dicamba", "--date", "2026-06-01"},
             {"damage", "--plant", "1", "--product", "dicamba"}}) {
        const auto ran = run_command(wrong);
        EXPECT_EQ(ran.status, 2) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
}

TEST(AfterCold, SaysHowLongAndWhatToExpect)
{
    const auto ran = run_command({"--on", "2026-10-12", "after-cold", "--kind", "Peace lily", "--low", "4",
                                  "--evening", "9"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(says(ran, "h below the line of damage")) << ran.out;
    EXPECT_TRUE(says(ran, "Leaf damage")) << ran.out;
    EXPECT_TRUE(says(ran, "15 Oct")) << ran.out;
    EXPECT_TRUE(says(ran, "not beside a heater")) << ran.out;
    EXPECT_TRUE(says(ran, "No feed")) << ran.out;
    EXPECT_TRUE(says(ran, "Sources: ")) << ran.out;
}

TEST(AfterCold, TakesSeveralNightsTheLastOneLast)
{
    const auto json = run_command({"--on", "2026-10-12", "after-cold", "--kind", "Aglaonema commutatum", "--low",
                                   "12", "--low", "11", "--low=12", "--hours", "6", "--json"})
                          .json();
    ASSERT_EQ(json["nights"].size(), 3U);
    EXPECT_EQ(json["nights"][2]["night"], "2026-10-12");
    EXPECT_EQ(json["nights"][1]["low_c"], 11.0);
}

TEST(AfterCold, SaysWhereNoTemperatureWasPublished)
{
    const auto ran = run_command({"after-cold", "--kind", "Beaucarnea recurvata", "--low", "-2"});
    EXPECT_TRUE(says(ran, "so this is a guess")) << ran.out;
}

TEST(AfterCold, RefusesWhatCannotBe)
{
    for (const auto& wrong : std::vector<std::vector<std::string>>{
             {"after-cold", "--low", "4"},
             {"after-cold", "--kind", "Peace lily"},
             {"after-cold", "--kind", "Peace lily", "--low", "4", "--evening", "1"},
             {"after-cold", "--kind", "Peace lily", "--low", "-200"},
             {"after-cold", "--kind", "Peace lily", "--low", "4", "--hours", "100"}}) {
        const auto ran = run_command(wrong);
        EXPECT_EQ(ran.status, 2) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
    EXPECT_EQ(run_command({"after-cold", "--kind", "Moon lily of nowhere", "--low", "4"}).out, "");
}

TEST(SprayCheck, AsksForTheLabelFirst)
{
    const auto ran = run_command({"spray-check", "--spray", "soap"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(says(ran, "Wait")) << ran.out;
    EXPECT_TRUE(says(ran, "Was the label read?")) << ran.out;
}

TEST(SprayCheck, ShowsBothHeatLimitsOfNeem)
{
    const auto ran = run_command({"spray-check", "--spray", "neem", "--temperature", "29"});
    EXPECT_TRUE(says(ran, "Sources disagree on the heat limit")) << ran.out;
    const auto json = run_command({"spray-check", "--spray", "neem", "--temperature", "29", "--json"}).json();
    EXPECT_EQ(json["verdict"], "wait");
    EXPECT_EQ(json["conflicts"][0]["strict"], 27.0);
    EXPECT_EQ(json["conflicts"][0]["usual"], 32.0);
}

TEST(SprayCheck, NeverSoapsAFern)
{
    const auto json =
        run_command({"spray-check", "--spray", "soap", "--kind", "Boston fern", "--json"}).json();
    EXPECT_EQ(json["verdict"], "never");
}

TEST(SprayCheck, LetsGoWhenAllIsAnswered)
{
    const auto ran = run_command(
        {"spray-check", "--spray", "soap",      "--outdoors", "no",  "--label-read", "yes", "--label-forbids",
         "no",          "--test-leaf", "30",    "--leaf-hurt", "no", "--temperature", "20", "--sun",
         "no",          "--dry",   "no",        "--seedling", "no",  "--children",   "no",  "--animals",
         "no",          "--asthma", "no",       "--fresh-air", "yes", "--edible",    "no"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(says(ran, "Go: ")) << ran.out;
    EXPECT_TRUE(says(ran, "label")) << ran.out;
}

TEST(SprayCheck, RefusesWhatItDoesNotKnow)
{
    for (const auto& wrong : std::vector<std::vector<std::string>>{
             {"spray-check"},
             {"spray-check", "--spray", "vodka"},
             {"spray-check", "--spray", "soap", "--sun", "perhaps"},
             {"spray-check", "--spray", "soap", "--temperature", "200"},
             {"spray-check", "--spray", "soap", "--kind", "Boston fern", "--plant", "1"}}) {
        const auto ran = run_command(wrong);
        EXPECT_EQ(ran.status, 2) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
}

} // namespace
} // namespace lathhouse::cli
