#include "tests/cli/run_command.h"

#include <gtest/gtest.h>

namespace lathhouse::cli {
namespace {

TEST(MixCommand, GivesTheFixedFormForAFeed)
{
    const auto ran = run_command({"mix", "--feed", "20-10-20", "--ppm", "150", "--water", "2 L", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_NEAR(json["grams"].get<double>(), 1.5, 1e-9);
    EXPECT_TRUE(json["teaspoons"].is_null());
    EXPECT_TRUE(json["millilitres"].is_null());
    EXPECT_TRUE(json["drops_about"].is_null());
}

TEST(MixCommand, GivesTheFixedFormForAnOil)
{
    const auto ran = run_command({"mix", "--percent", "0.52", "--water", "4 cup", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_TRUE(json["grams"].is_null());
    EXPECT_NEAR(json["teaspoons"].get<double>(), 1.0, 0.005);
}

TEST(MixCommand, PutsTheLabelFirstWhereItIsToldToPeople)
{
    const auto spray = run_command({"mix", "--percent", "0.5", "--water", "1 L"});
    EXPECT_NE(spray.out.find("The label and local rules come first"), std::string::npos) << spray.out;
    EXPECT_NE(spray.out.find("one leaf"), std::string::npos);
}

TEST(MixCommand, SaysTheElementsAndWhatAMeterShows)
{
    const auto json =
        run_command({"mix", "--feed", "20-10-20", "--ppm", "100", "--water", "1 L", "--json"}).json();
    EXPECT_NEAR(json["phosphorus_ppm"].get<double>(), 21.82, 0.01);
    EXPECT_NEAR(json["potassium_ppm"].get<double>(), 83.01, 0.01);
    EXPECT_LT(json["conductivity_ms_cm"]["least"].get<double>(), 0.64);
    EXPECT_GT(json["conductivity_ms_cm"]["highest"].get<double>(), 0.64);
    EXPECT_FALSE(json["sources"].empty());
    const auto text = run_command({"mix", "--feed", "20-10-20", "--ppm", "100", "--water", "1 L"}).out;
    EXPECT_NE(text.find("conductivity meter"), std::string::npos) << text;
    EXPECT_NE(text.find("Sources: "), std::string::npos);
}

TEST(MixCommand, TakesTheStrengthOfAClass)
{
    const auto ran = run_command({"mix", "--feed", "20-10-20", "--for", "heavy", "--water", "1 L", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NEAR(ran.json()["nitrogen_ppm"].get<double>(), 200.0, 1e-9);
}

TEST(MixCommand, WarnsOfAnOilThatIsTooStrong)
{
    const auto ran = run_command({"mix", "--percent", "1.5", "--of", "oil", "--water", "1 L"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_NE(ran.err.find("stronger than usual"), std::string::npos) << ran.err;
}

TEST(MixCommand, RefusesWhatMakesNoMix)
{
    const std::vector<std::vector<std::string>> wrong{
        {"mix", "--water", "2 L"},
        {"mix", "--feed", "20-10-20", "--water", "2 L"},
        {"mix", "--ppm", "100", "--water", "2 L"},
        {"mix", "--percent", "400", "--water", "2 L"},
        {"mix", "--percent", "1", "--ppm", "100", "--feed", "1-1-1", "--water", "2 L"},
        {"mix", "--percent", "1", "--water", "a bucket"},
        {"mix", "--feed", "0-0-0", "--ppm", "100", "--water", "1 L"},
        {"mix", "--feed", "20-10-20", "--ppm", "100", "--of", "oil", "--water", "1 L"},
        {"mix", "--percent", "1", "--for", "light", "--water", "1 L"},
        {"mix", "--for", "light", "--water", "1 L"},
        {"mix", "--feed", "20-10-20", "--for", "greedy", "--water", "1 L"}};
    for (const auto& arguments : wrong) {
        const auto ran = run_command(arguments);
        EXPECT_EQ(ran.status, 2) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
}

} // namespace
} // namespace lathhouse::cli
