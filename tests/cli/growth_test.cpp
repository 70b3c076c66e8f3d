#include "tests/cli/run_command.h"

#include "app/words/growth_verdict_words.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace lathhouse::cli {
namespace {

/// A folder of its own for each test, gone afterwards.
class GrowthCommand : public testing::Test {
protected:
    GrowthCommand()
        : folder_(std::filesystem::temp_directory_path() /
                  ("lathhouse-growth-" + std::to_string(getpid()) + "-" +
                   testing::UnitTest::GetInstance()->current_test_info()->name()))
    {
        std::filesystem::create_directories(folder_);
    }
    ~GrowthCommand() override { std::filesystem::remove_all(folder_); }

    std::string file(const std::string& name, const std::string& text) const
    {
        const auto path = folder_ / name;
        std::ofstream{path} << text;
        return path.string();
    }
    /// Weekly sizes about 1 May 2026, 9 before and `after` after it, by 5 % a week before and `rate` after.
    static std::string weekly(int after, double rate, const std::string& plant = "", double before = 0.05)
    {
        std::string rows;
        for (int week = -8; week <= after; ++week) {
            const auto date = calendar::Date{2026, 5, 1} + calendar::Days{7 * week};
            const double wobble = week % 2 == 0 ? 0.006 : -0.006;
            rows += plant + (plant.empty() ? "" : ",") + calendar::to_text(date) + "," +
                    std::to_string(20.0 * std::exp(week * (week <= 0 ? before : rate) + wobble)) + "\n";
        }
        return rows;
    }
    std::string series(int after, double rate) const
    {
        return file("series.csv", "date,value\n" + weekly(after, rate));
    }

    std::filesystem::path folder_;
};

TEST_F(GrowthCommand, GivesTheFixedForm)
{
    const auto ran = run_command({"growth", "--series", series(10, 0.05), "--event", "2026-05-01", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_EQ(json["verdict"], "no_setback");
    EXPECT_NEAR(json["rate_before"].get<double>(), 0.05 / 7.0, 0.0005);
    EXPECT_NEAR(json["rate_after"].get<double>(), 0.05 / 7.0, 0.0005);
    EXPECT_NEAR(json["share_regained"].get<double>(), 1.0, 0.1);
    EXPECT_LT(json["interval"][0].get<double>(), json["share_regained"].get<double>());
    EXPECT_GT(json["interval"][1].get<double>(), json["share_regained"].get<double>());
    EXPECT_EQ(json["level"], 0.9);
    EXPECT_TRUE(json["next_reading"].is_null());
    EXPECT_EQ(json["clock"], "calendar");
    EXPECT_EQ(json["repeatability"]["from"], "fit");
}

TEST_F(GrowthCommand, TellsTheVerdictsApart)
{
    const auto verdict = [&](int after, double rate) {
        return run_command({"growth", "--series", series(after, rate), "--event", "2026-05-01", "--json"})
            .json()["verdict"]
            .get<std::string>();
    };
    EXPECT_EQ(verdict(14, 0.0), "holding");
    EXPECT_EQ(verdict(10, -0.05), "declining");
    EXPECT_EQ(verdict(16, 0.025), "recovering");
    EXPECT_EQ(verdict(2, 0.05), "too_early");
}

TEST_F(GrowthCommand, SaysItPlainlyWithNumbers)
{
    const auto early = run_command({"growth", "--series", series(2, 0.05), "--event", "2026-05-01"}).out;
    EXPECT_NE(early.find("Too early"), std::string::npos) << early;
    EXPECT_NE(early.find("9 readings before the event and 2 after"), std::string::npos) << early;
    EXPECT_NE(early.find("5 Jun 2026"), std::string::npos) << early;
    const auto slow = run_command({"growth", "--series", series(16, 0.025), "--event", "2026-05-01"}).out;
    EXPECT_NE(slow.find("Recovering"), std::string::npos) << slow;
    EXPECT_NE(slow.find("% a week before"), std::string::npos);
    EXPECT_NE(slow.find("at 9 in 10"), std::string::npos);
    EXPECT_NE(slow.find("is a real change"), std::string::npos);
}

TEST_F(GrowthCommand, SaysALossAsALossAndRatesInWeeksOfTheCalendar)
{
    const auto loss = run_command({"growth", "--series", series(10, -0.05), "--event", "2026-05-01"}).out;
    EXPECT_NE(loss.find("% a week before and loses 4."), std::string::npos) << loss;
    EXPECT_EQ(loss.find("of what it was"), std::string::npos) << loss;
    // By the weather of the place a day of spring counts less than one, and a ruler knows nothing of it.
    const auto path = series(16, 0.05);
    const auto rates = [&](std::vector<std::string> more) {
        std::vector<std::string> command{"growth", "--series", path, "--event", "2026-05-01"};
        command.insert(command.end(), more.begin(), more.end());
        const auto out = run_command(command).out;
        const auto from = out.find("It grew ");
        return from == std::string::npos ? -1.0 : std::stod(out.substr(from + 8));
    };
    EXPECT_NEAR(rates({}), 5.1, 0.2);
    EXPECT_NEAR(rates({"--at", "44.8,20.5"}), 5.1, 0.8);
}

TEST_F(GrowthCommand, SaysThatTooFewReadingsBeforeAreNotMendedByLaterOnes)
{
    const auto ran = run_command({"growth", "--series", series(6, 0.05), "--event", "2026-03-14"}).out;
    EXPECT_NE(ran.find("Cannot be judged by this measure: it has 2 of the 3 readings needed before"), std::string::npos) << ran;
    EXPECT_EQ(ran.find("Too early"), std::string::npos) << ran;
}

TEST_F(GrowthCommand, PointsOutSeveralEvents)
{
    const auto ran = run_command({"growth", "--series", series(12, 0.05), "--event", "2026-05-01", "--event",
                                  "2026-05-04", "--event", "2026-07-03", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["also"][0]["date"], "2026-05-04");
    EXPECT_EQ(ran.json()["left_out_beyond"][0]["date"], "2026-07-03");
    EXPECT_EQ(ran.json()["cautions"].size(), 2U);
}

TEST_F(GrowthCommand, RunsOnTheClimateOfAPlace)
{
    const auto path = series(10, 0.05);
    const auto ran = run_command({"growth", "--series", path, "--event", "2026-05-01", "--at", "44.8,20.5", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["clock"], "place");
    const auto calendar = run_command({"growth", "--series", path, "--event", "2026-05-01", "--json"}).json();
    EXPECT_GT(ran.json()["rate_before"], calendar["rate_before"]) << "a day of spring counts less than one";
    const auto grown = run_command({"growth", "--series", path, "--event", "2026-05-01", "--at", "44.8,20.5", "--grown",
                                    "fuchsia", "--json"});
    EXPECT_EQ(grown.status, 0) << grown.err;
}

TEST_F(GrowthCommand, AClockThatStandsGivesTooEarly)
{
    std::string rows = "date,value\n";
    for (int day = 0; day < 100; day += 10) {
        const auto date = calendar::Date{2026, 1, 1} + calendar::Days{day / 2};
        rows += calendar::to_text(date) + "," + std::to_string(20 + day / 50) + "\n";
    }
    const auto ran = run_command({"growth", "--series", file("cold.csv", rows), "--event", "2026-01-20", "--at",
                                  "62.0,129.7", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["verdict"], "too_early");
    EXPECT_EQ(ran.json()["why"], "clock_stands");
}

TEST_F(GrowthCommand, TakesSparedCompanionsAsItsClock)
{
    const auto spared =
        file("spared.csv", "plant,date,value\n" + weekly(10, 0.02, "a") + weekly(10, 0.02, "b"));
    const auto ran = run_command(
        {"growth", "--series", series(10, 0.02), "--event", "2026-05-01", "--spared", spared, "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["clock"], "spared");
    const auto alone = run_command({"growth", "--series", series(10, 0.02), "--event", "2026-05-01", "--json"}).json();
    EXPECT_GT(ran.json()["share_regained"], alone["share_regained"]);
}

TEST_F(GrowthCommand, ComparesSeveralPlants)
{
    std::string rows = "plant,group,date,value\n";
    int number = 0;
    for (const double rate : {0.05, 0.045, 0.055, 0.02, 0.03, 0.01}) {
        const std::string name = "plant " + std::to_string(number) + (number < 3 ? ",left" : ",moved");
        rows += weekly(8, rate, name);
        ++number;
    }
    const auto path = file("plants.csv", rows);
    const auto ran = run_command({"growth", "--compare", path, "--event", "2026-05-01", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_EQ(json["plants"].size(), 6U);
    EXPECT_EQ(json["paired"].size(), 2U);
    EXPECT_EQ(json["paired"][1]["plants"], 3);
    EXPECT_NEAR(json["between_groups"]["difference"].get<double>(), 0.03 / 7.0, 0.0008);
    EXPECT_GT(json["between_groups"]["interval"][0].get<double>(), 0.0);
    const auto text = run_command({"growth", "--compare", path, "--event", "2026-05-01"}).out;
    EXPECT_NE(text.find("no experiment"), std::string::npos) << text;
    EXPECT_NE(text.find("3 plants, each against itself"), std::string::npos);
}

TEST_F(GrowthCommand, ComparedRatesAreOfWeeksOfTheCalendarOnAnyClock)
{
    const auto path = file("two.csv", "plant,group,date,value\n" + weekly(8, 0.05, "fern,") + weekly(8, 0.03, "lemon,"));
    const std::vector<std::string> plainly{"growth", "--compare", path, "--event", "2026-05-01"};
    auto at_place = plainly;
    at_place.insert(at_place.end(), {"--at", "44.8,20.5"});
    const auto said = run_command(at_place).out;
    const auto before = [](const std::string& text, const std::string& plant) {
        const auto line = text.find("  " + plant);
        return std::stod(text.substr(text.find_first_of("0123456789", line)));
    };
    const auto calendar = run_command(plainly).out;
    EXPECT_NEAR(before(said, "fern"), before(calendar, "fern"), 0.5) << said;
    EXPECT_NEAR(before(said, "lemon"), before(calendar, "lemon"), 0.5) << said;
    EXPECT_NE(said.find("each against itself, by the growth clock, which takes warmth and light out: growth changed by"),
              std::string::npos) << said;
    EXPECT_EQ(said.find("weeks of the growth clock"), std::string::npos);
    EXPECT_EQ(calendar.find("growth clock"), std::string::npos);
}

TEST_F(GrowthCommand, AnswersForAPlantOfTheDemonstration)
{
    const auto home = (folder_ / "home").string();
    ASSERT_EQ(run_command({"--on", "2027-01-10", "demo", home, "--photos", "0"}).status, 0);
    const auto plants = run_command({"--home", home, "--on", "2027-01-10", "list", "plants", "--json"}).json();
    int judged = 0;
    for (const auto& plant : plants["plants"]) {
        const auto ran = run_command({"--home", home, "--on", "2027-01-10", "growth", "--plant",
                                      std::to_string(plant["id"].get<int>()), "--json"});
        if (ran.status == 0) {
            ++judged;
            EXPECT_EQ(ran.json()["clock"], "plant");
            EXPECT_FALSE(ran.json()["measure"].get<std::string>().empty());
        } else {
            EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
        }
    }
    EXPECT_GT(judged, 0) << "the demonstration measures plants";
}

TEST_F(GrowthCommand, RefusesWhatItCannotAnswer)
{
    const auto good = series(10, 0.05);
    const auto bad = file("bad.csv", "date,value\n2026-05-01,-4\n");
    for (const auto& arguments : std::vector<std::vector<std::string>>{
             {"growth"},
             {"growth", "--series", good},
             {"growth", "--series", good, "--event", "yesterday"},
             {"growth", "--series", good, "--event", "2026-05-01", "--kind", "tall"},
             {"growth", "--series", good, "--event", "2026-05-01", "--compare", good},
             {"growth", "--series", good, "--event", "2026-05-01", "--measure", "height"},
             {"growth", "--series", good, "--event", "2026-05-01", "--grown", "fuchsia"},
             {"growth", "--series", good, "--event", "2026-05-01", "--kind", "share"},
             {"growth", "--series", good, "--event", "2026-05-01", "--spared", bad},
             {"growth", "--series", bad, "--event", "2026-05-01"},
             {"growth", "--series", (folder_ / "none.csv").string(), "--event", "2026-05-01"},
             {"growth", "--compare", good, "--event", "2026-05-01"}}) {
        const auto ran = run_command(arguments);
        EXPECT_NE(ran.status, 0) << arguments.back();
        EXPECT_TRUE(is_one_clear_error(ran)) << arguments.back() << ": " << ran.err;
    }
    EXPECT_NE(run_command({"growth", "--series", bad, "--event", "2026-05-01"}).err.find("line 2"), std::string::npos);
}

TEST(GrowthWords, WhatReachesBelowNoughtIsNone)
{
    growth::Recovery recovery;
    recovery.rate_before = 0.01;
    recovery.rate_after = 0.001;
    const auto said = [&recovery](growth::SeriesKind kind, double share, std::optional<double> low, std::optional<double> high) {
        recovery.share_regained = share;
        recovery.share_low = low;
        recovery.share_high = high;
        return words::growth_verdict(kind, recovery, words::ClockKind::Calendar);
    };
    const auto size = growth::SeriesKind::Size;
    EXPECT_NE(said(size, 0.05, -0.84, 0.34).find("That is 0.05 of what it was, none to 0.34 at 9 in 10."), std::string::npos);
    EXPECT_NE(said(size, 0.05, -0.84, std::nullopt).find(", none to open at 9 in 10."), std::string::npos);
    EXPECT_NE(said(size, 0.05, -0.001, 0.34).find(", between 0.00 and 0.34 at 9 in 10."), std::string::npos);
    EXPECT_NE(said(size, 0.4, 0.1, 0.7).find(", between 0.10 and 0.70 at 9 in 10."), std::string::npos);
    const auto yellow = growth::SeriesKind::Yellow;
    EXPECT_NE(said(yellow, -0.2, -0.5, -0.1).find("turned yellow none of it is gone again, none at 9 in 10."), std::string::npos);
}

} // namespace
} // namespace lathhouse::cli
