#include "tests/cli/with_demonstration.h"

#include "tests/climate/sample_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;

/// A household and files of its own.
class PlaceCommand : public WithDemonstration {
protected:
    PlaceCommand() : WithDemonstration("2026-11-25") {}
    Ran import(const std::string& name, std::vector<std::string> more = {}) const
    {
        std::vector<std::string> arguments{"place", "import", name};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return ask(arguments);
    }
    void expect_nothing_imported() const { EXPECT_TRUE(ask({"place", "--json"}).json()["record"].is_null()); }
};

using climate::sample_table;

const std::vector<std::string> kColumns{"--columns", "date=Day,low=Min,high=Max", "--name", "Porch"};

TEST_F(PlaceCommand, WithoutARecordSaysWhatAnswers)
{
    const auto ran = ask({"place"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("no record of its own"));
    EXPECT_TRUE(ask({"place", "--json"}).json()["record"].is_null());
}

TEST_F(PlaceCommand, ImportsATableAndComparesIt)
{
    const auto ran = import(file("porch.csv", sample_table(2005, 2020)), kColumns);
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Own record Porch, from porch.csv, imported Wed 25 Nov 2026"));
    EXPECT_THAT(ran.out, HasSubstr("15 of 15 cold seasons"));
    EXPECT_THAT(ran.out, HasSubstr("Plausible"));
    const auto json = ask({"place", "--json"}).json();
    EXPECT_EQ(json["record"]["name"], "Porch");
    EXPECT_EQ(json["record"]["first"], "2005-01-01");
    EXPECT_EQ(json["record"]["counted_seasons"], 15);
    EXPECT_EQ(json["record"]["completeness"], 1.0);
    EXPECT_EQ(json["used"], true);
    EXPECT_EQ(json["comparison"]["verdict"], "plausible");
    ASSERT_EQ(json["comparison"]["months"].size(), 12U);
    const auto& july = json["comparison"]["months"][6];
    EXPECT_NEAR(july["low_c"].get<double>() - july["table_low_c"].get<double>(),
                july["low_difference_c"].get<double>(), 1e-5);
}

TEST_F(PlaceCommand, TheRecordAnswersBeforeTheTable)
{
    const auto before = ask({"climate", "--json"}).json();
    EXPECT_EQ(before["own_record"], false);
    ASSERT_EQ(import(file("porch.csv", sample_table(2005, 2020)), kColumns).status, 0);
    const auto after = ask({"climate", "--json"}).json();
    EXPECT_EQ(after["own_record"], true);
    ASSERT_EQ(after["stations"].size(), 1U);
    EXPECT_EQ(after["stations"][0]["name"], "Porch");
    EXPECT_FALSE(after["growing_season_days"].is_null());
    EXPECT_NEAR(after["months"][6]["low_c"].get<double>(), 15.4, 0.5);

    // At the household's place however it is named, and not elsewhere.
    EXPECT_EQ(ask({"climate", "--at", "48.2,20.8", "--elevation", "170", "--json"}).json()["own_record"],
              true);
    EXPECT_EQ(ask({"climate", "--at", "47.0,20.8", "--elevation", "100", "--json"}).json()["own_record"],
              false);
    for (const std::vector<std::string>& command :
         {std::vector<std::string>{"climate"},
          {"frost", "--threshold", "0"},
          {"night", "--date", "2027-04-20"},
          {"chance", "--threshold", "0", "--from", "2027-05-01", "--to", "2027-05-20"},
          {"moves"}}) {
        EXPECT_THAT(ask(command).out, HasSubstr("household's own record Porch")) << command.front();
    }
}

TEST_F(PlaceCommand, FrostDatesAreCountedInTheRecordForAnyLine)
{
    ASSERT_EQ(import(file("porch.csv", sample_table(2005, 2020)), kColumns).status, 0);
    const auto json = ask({"frost", "--threshold", "-1.3", "--risk", "15", "--json"}).json();
    EXPECT_EQ(json["method"], "records");
    EXPECT_EQ(json["thresholds"][0]["last"]["years"], 15);
    EXPECT_TRUE(json["thresholds"][0]["last"]["dates"].contains("15"));
    // One in fifteen seasons is 6.7 %: a rarer chance is the model's business.
    EXPECT_EQ(ask({"frost", "--threshold", "0", "--risk", "5", "--json"}).json()["method"], "monthly");
    EXPECT_EQ(ask({"frost", "--threshold", "0", "--from-monthly", "--json"}).json()["method"], "monthly");
}

TEST_F(PlaceCommand, RemoveGivesTheTableBack)
{
    const auto before = ask({"climate", "--json"}).out;
    ASSERT_EQ(import(file("porch.csv", sample_table(2005, 2020)), kColumns).status, 0);
    EXPECT_EQ(ask({"place", "remove"}).status, 0);
    EXPECT_EQ(ask({"climate", "--json"}).out, before);
    const auto again = ask({"place", "remove"});
    EXPECT_EQ(again.status, 1);
    EXPECT_TRUE(is_one_clear_error(again)) << again.err;
}

TEST_F(PlaceCommand, ASecondRecordNeedsToReplaceTheFirst)
{
    ASSERT_EQ(import(file("porch.csv", sample_table(2005, 2020)), kColumns).status, 0);
    const auto refused = import(file("other.csv", sample_table(2008, 2018)), kColumns);
    EXPECT_EQ(refused.status, 2);
    EXPECT_TRUE(is_one_clear_error(refused)) << refused.err;
    EXPECT_EQ(ask({"place", "--json"}).json()["record"]["file"], "porch.csv");
    auto replacing = kColumns;
    replacing.push_back("--replace");
    EXPECT_EQ(import(file("other.csv", sample_table(2008, 2018)), replacing).status, 0);
    EXPECT_EQ(ask({"place", "--json"}).json()["record"]["file"], "other.csv");
}

TEST_F(PlaceCommand, FahrenheitGivenAsCelsiusIsNotPlausible)
{
    const auto name = file("porch.csv", sample_table(2005, 2020, true));
    const auto refused = import(name, kColumns);
    EXPECT_EQ(refused.status, 2);
    EXPECT_TRUE(is_one_clear_error(refused)) << refused.err;
    EXPECT_THAT(refused.err, HasSubstr("--fahrenheit"));
    expect_nothing_imported();
    auto fahrenheit = kColumns;
    fahrenheit.push_back("--fahrenheit");
    const auto taken = import(name, fahrenheit);
    EXPECT_EQ(taken.status, 0) << taken.err;
    EXPECT_THAT(taken.out, HasSubstr("Plausible"));
}

TEST_F(PlaceCommand, AnImplausibleRecordIsImportedOnlyAtTheGrowersWord)
{
    const auto name = file("south.csv", sample_table(2005, 2020, false, {.mean_low = 5.5, .warmest_month = 1}));
    EXPECT_EQ(import(name, kColumns).status, 2);
    expect_nothing_imported();
    auto anyway = kColumns;
    anyway.push_back("--anyway");
    const auto taken = import(name, anyway);
    EXPECT_EQ(taken.status, 0) << taken.err;
    EXPECT_THAT(taken.out, HasSubstr("Implausible"));
}

TEST_F(PlaceCommand, AShortRecordIsKeptAndNotUsed)
{
    const auto ran = import(file("porch.csv", sample_table(2018, 2020)), kColumns);
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("It is not used"));
    const auto climate = ask({"climate", "--json"});
    EXPECT_EQ(climate.json()["own_record"], false);
    EXPECT_THAT(climate.err, HasSubstr("own record is not used"));
}

TEST_F(PlaceCommand, ARecordOfAnotherPlaceIsComparedThereAndNotUsedHere)
{
    auto far = kColumns;
    far.insert(far.end(), {"--at", "49.2,20.8", "--elevation", "200"});
    const auto ran = import(file("porch.csv", sample_table(2005, 2020)), far);
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("It is not used"));
    EXPECT_EQ(ask({"place", "--json"}).json()["used"], false);
}

TEST_F(PlaceCommand, ShowsGapsAndDoubtfulDays)
{
    std::string text = sample_table(2005, 2020);
    const auto year = text.find("2011-01-01");
    text.erase(year, text.find("2012-01-01") - year);
    const auto day = text.find("2013-06-05");
    text.replace(day, text.find('\n', day) - day, "2013-06-05,85.0,20.0,");
    ASSERT_EQ(import(file("porch.csv", text), kColumns).status, 0);
    const auto shown = ask({"place"}).out;
    EXPECT_THAT(shown, HasSubstr("Years without any low: 2011."));
    EXPECT_THAT(shown, HasSubstr("2011-01-01 to 2011-12-31 (365 days)"));
    EXPECT_THAT(shown,
                HasSubstr("Doubtful: 1 day with a value never read on land (taken as a gap): 2013-06-05."));
    const auto json = ask({"place", "--json"}).json()["record"];
    EXPECT_EQ(json["years_without"], (std::vector<int>{2011}));
    EXPECT_EQ(json["doubts"][0]["kind"], "impossible");
    EXPECT_EQ(json["doubts"][0]["low_c"], 85.0);
}

struct Hostile {
    const char* name;
    const char* text;
    const char* says;
};
void PrintTo(const Hostile& row, std::ostream* out)
{
    *out << row.name;
}
class PlaceImport : public PlaceCommand, public testing::WithParamInterface<Hostile> {};
TEST_P(PlaceImport, OfAHostileFileLeavesNothing)
{
    const auto ran = import(file("bad.csv", GetParam().text));
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("bad.csv"));
    EXPECT_THAT(ran.err, HasSubstr(GetParam().says));
    expect_nothing_imported();
}
INSTANTIATE_TEST_SUITE_P(
    Hostile, PlaceImport,
    testing::Values(Hostile{"Empty", "", "empty"}, Hostile{"HeadAlone", "date,low,high\n", "no days"},
                    Hostile{"Cut", "date,low,high\n2020-01-01,1,9\n2020-01-02,1", "line 3"},
                    Hostile{"Letters", "date,low,high\n2020-01-01,cold,warm\n", "cold"},
                    Hostile{"DayTwice", "date,low,high\n2020-01-01,1,9\n2020-01-01,1,9\n", "line 2"},
                    Hostile{"NoLows", "date,low,high\n2020-01-01,,9\n", "no night's low"},
                    Hostile{"CutGhcnDaily", "AA00000001,20200101,TMIN,-35\nAA0000", "line 2"},
                    Hostile{"OtherColumns", "When,Coldest,Warmest\n2020-01-01,1,9\n", "--columns"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST_F(PlaceCommand, RefusesAFolderAndAMissingFile)
{
    for (const auto& name : {folder().string(), (folder() / "none.csv").string()}) {
        const auto ran = import(name);
        EXPECT_EQ(ran.status, 1);
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
        EXPECT_THAT(ran.err, HasSubstr(name));
    }
    expect_nothing_imported();
}

TEST_F(PlaceCommand, RefusesWrongOptions)
{
    const auto name = file("porch.csv", sample_table(2005, 2006));
    for (const std::vector<std::string>& more : {std::vector<std::string>{"--columns", "day=Day"},
                                                 {"--columns", "low"},
                                                 {"--at", "91,0"},
                                                 {"--elevation", "20000"}}) {
        const auto ran = import(name, more);
        EXPECT_EQ(ran.status, 2) << more.back();
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
    expect_nothing_imported();
}

TEST_F(PlaceCommand, SaysWhereThereIsNoHousehold)
{
    const auto ran = run_command({"--home", (folder() / "none").string(), "place"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST_F(PlaceCommand, HasHelpWithAnExample)
{
    const auto ran = run_command({"place", "--help"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("Example:\n  lathhouse place"));
}

} // namespace
} // namespace lathhouse::cli
