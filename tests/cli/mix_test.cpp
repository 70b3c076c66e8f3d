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

TEST(MixCommand, RefusesWhatMakesNoMix)
{
    const std::vector<std::vector<std::string>> wrong{
        {"mix", "--water", "2 L"},
        {"mix", "--feed", "20-10-20", "--water", "2 L"},
        {"mix", "--ppm", "100", "--water", "2 L"},
        {"mix", "--percent", "400", "--water", "2 L"},
        {"mix", "--percent", "1", "--ppm", "100", "--feed", "1-1-1", "--water", "2 L"},
        {"mix", "--percent", "1", "--water", "a bucket"},
        {"mix", "--feed", "0-0-0", "--ppm", "100", "--water", "1 L"}};
    for (const auto& arguments : wrong) {
        const auto ran = run_command(arguments);
        EXPECT_EQ(ran.status, 2) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
}

} // namespace
} // namespace lathhouse::cli
