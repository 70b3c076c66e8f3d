#include "tests/cli/run_command.h"

#include "core/calendar/date.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace lathhouse::cli {
namespace {

class Moves : public testing::Test {
protected:
    void SetUp() override
    {
        folder_ =
            std::filesystem::temp_directory_path() /
            ("lathhouse_moves_" + std::string{testing::UnitTest::GetInstance()->current_test_info()->name()});
        std::filesystem::remove_all(folder_);
    }
    void TearDown() override { std::filesystem::remove_all(folder_); }
    Ran demo(std::vector<std::string> more = {})
    {
        std::vector<std::string> arguments{"--on", "2027-01-10", "demo", folder_.string(), "--photos", "0"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return run_command(arguments);
    }
    Ran home(std::vector<std::string> command)
    {
        std::vector<std::string> arguments{"--home", folder_.string(), "--on", "2027-01-10"};
        arguments.insert(arguments.end(), command.begin(), command.end());
        return run_command(arguments);
    }
    std::filesystem::path folder_;
};

/// Every plant's stays cover the 365 nights once.
void expect_whole_year(const nlohmann::json& answer)
{
    ASSERT_FALSE(answer["plants"].empty());
    for (const auto& plant : answer["plants"]) {
        auto expected = *calendar::parse_date("2027-01-10");
        for (const auto& stay : plant["stays"]) {
            EXPECT_EQ(stay["from"], calendar::to_text(expected)) << plant["name"];
            EXPECT_FALSE(stay["why"].get<std::string>().empty());
            expected = *calendar::parse_date(stay["to"].get<std::string>()) + calendar::Days{1};
        }
        EXPECT_EQ(calendar::to_text(expected), "2028-01-10") << plant["name"];
    }
}

TEST_F(Moves, OfTheDemonstrationCoverTheYear)
{
    ASSERT_EQ(demo().status, 0);
    const auto ran = home({"moves", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto answer = ran.json();
    EXPECT_EQ(answer["plants"].size(), 14u);
    expect_whole_year(answer);
    EXPECT_TRUE(answer["gap"].is_number());
}

TEST_F(Moves, OfTheSouthernDemonstrationCoverTheYear)
{
    ASSERT_EQ(demo({"--hemisphere", "south"}).status, 0);
    const auto ran = home({"moves", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    expect_whole_year(ran.json());
    EXPECT_LT(home({"show", "place", "--json"}).json()["latitude"], 0.0);
}

TEST_F(Moves, TextNamesTheRiskAndTheCaution)
{
    ASSERT_EQ(demo().status, 0);
    const auto ran = home({"moves"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("1 in 10"), std::string::npos);
    EXPECT_NE(ran.out.find("chances, not promises"), std::string::npos);
    EXPECT_NE(ran.out.find("demonstration"), std::string::npos);
}

TEST_F(Moves, NoStayOutdoorsExceedsTheRisk)
{
    ASSERT_EQ(demo().status, 0);
    for (const auto& plant : home({"moves", "--risk", "10", "--json"}).json()["plants"]) {
        for (const auto& stay : plant["stays"]) {
            for (const char* end : {"risk_out", "risk_in"}) {
                if (stay[end].is_number()) {
                    EXPECT_LE(stay[end].get<double>(), 0.1 + 1e-9) << plant["name"] << ' ' << end;
                }
            }
        }
    }
}

TEST_F(Moves, DemonstrationDoesNotOverwrite)
{
    ASSERT_EQ(demo().status, 0);
    const auto again = demo();
    EXPECT_EQ(again.status, 1);
    EXPECT_TRUE(is_one_clear_error(again)) << again.err;
}

TEST_F(Moves, StepsOfHardeningCountTheDaysThatWereTicked)
{
    ASSERT_EQ(demo().status, 0);
    const auto ask = [this](std::vector<std::string> command) {
        command.insert(command.begin(), {"--home", folder_.string(), "--on", "2027-04-12"});
        return run_command(command);
    };
    const auto steps = [&] {
        const auto answer = ask({"moves", "--json"}).json();
        for (const auto& plant : answer["plants"]) {
            if (plant["name"] == "Lemon") {
                return plant["steps"];
            }
        }
        return nlohmann::json::array();
    };
    const auto afresh = steps();
    ASSERT_FALSE(afresh.empty());
    EXPECT_EQ(afresh[0]["date"], "2027-04-12");
    for (const std::string day : {"2027-04-10", "2027-04-11"}) {
        ASSERT_EQ(ask({"log", "event", "task_done", "--plant", "Lemon", "--date", day, "--detail",
                       "task=out-by-day/3/" + day})
                      .status,
                  0);
    }
    const auto ticked = steps();
    ASSERT_FALSE(ticked.empty());
    EXPECT_EQ(ticked[0]["date"], "2027-04-10");
    EXPECT_EQ(ticked[2]["date"], "2027-04-12");
    EXPECT_EQ(ticked[2]["what"], afresh[2]["what"]) << "the third step is today's";
    const auto answer = ask({"harden", "--plant", "Lemon", "--json"}).json();
    const auto& hardened = answer["ladders"][0]["steps"];
    EXPECT_EQ(hardened[0]["date"], ticked[0]["date"]);
    EXPECT_EQ(hardened[2]["what"], ticked[2]["what"]);
}

} // namespace
} // namespace lathhouse::cli
