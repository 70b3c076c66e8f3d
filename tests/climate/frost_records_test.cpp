#include "core/climate/frost_records.h"

#include "core/base/csv.h"
#include "core/calendar/day_of_year.h"
#include "tests/climate/sample_record.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <map>

namespace lathhouse::climate {
namespace {

const std::filesystem::path kChecks = LATHHOUSE_CHECKS;

/// Dates of checks/frost_records_1991_2018.csv: computed from GHCN-Daily (NOAA NCEI, public domain) by the
/// rule of its README, outside the project. Key: station, line in tenths, "last" or "first".
struct ExpectedRow {
    int seasons;
    double share_without;
    std::array<std::string, 9> dates;
};
using Expected = std::map<std::tuple<std::string, int, std::string>, ExpectedRow>;

Expected expected_rows()
{
    const auto table = CsvTable::read(kChecks / "frost_records_1991_2018.csv");
    Expected rows;
    for (std::size_t row = 0; table && row < table->row_count(); ++row) {
        ExpectedRow expected{std::stoi(table->at(row, 3)), std::stod(table->at(row, 4)), {}};
        for (std::size_t k = 0; k < 9; ++k) {
            expected.dates[k] = table->at(row, 5 + k);
        }
        const int tenths = static_cast<int>(std::lround(std::stod(table->at(row, 1)) * 10.0));
        rows[{table->at(row, 0), tenths, table->at(row, 2)}] = expected;
    }
    return rows;
}

FrostQuestion question_of_checks()
{
    FrostQuestion question;
    question.base = {1991, 2018};
    question.lines = {Celsius::from_degrees(0.0), Celsius::from_degrees(2.2), Celsius::from_degrees(10.0)};
    return question;
}

struct DateAgreement {
    int dates = 0;
    int dates_that_differ = 0;
    int counts_that_differ = 0;
    int shares_that_differ = 0;
    std::string first_difference;
};

void compare(const FrostRecord& record, const Expected& expected, DateAgreement& agreement)
{
    if (!record.thresholds) {
        return;
    }
    for (const auto& line : *record.thresholds) {
        for (const std::string which : {"last", "first"}) {
            const int tenths = static_cast<int>(std::lround(line.threshold.degrees() * 10.0));
            const auto row = expected.find({record.station, tenths, which});
            if (row == expected.end()) {
                continue;
            }
            const auto& ends = which == "last" ? line.last : line.first;
            agreement.counts_that_differ += ends.years != row->second.seasons ? 1 : 0;
            agreement.shares_that_differ +=
                std::abs(ends.share_without.fraction() - row->second.share_without) > 6e-4 ? 1 : 0;
            for (std::size_t k = 0; k < 9; ++k) {
                const auto date = ends.dates.at(10.0 * static_cast<double>(k + 1));
                const std::string text = date ? date->to_text() : "";
                ++agreement.dates;
                if (text != row->second.dates[k]) {
                    ++agreement.dates_that_differ;
                    agreement.first_difference = record.station + " " + which + " " + std::to_string(tenths) +
                                                 " p" + std::to_string(10 * (k + 1)) + ": " + text + " for " +
                                                 row->second.dates[k];
                }
            }
        }
    }
}

DateAgreement dates_agreement(const std::vector<std::filesystem::path>& files)
{
    const auto expected = expected_rows();
    DateAgreement agreement;
    for (const auto& path : files) {
        const auto file = DailyFile::open(path);
        EXPECT_TRUE(file) << file.error().message;
        const auto records = for_stations_of(
            *file, [](const DailyRecord& record) { return frost_dates_of(record, question_of_checks()); });
        EXPECT_TRUE(records) << records.error().message;
        for (const auto& record : *records) {
            compare(record, expected, agreement);
        }
    }
    return agreement;
}

TEST(FrostRecords, FourStationsAgreeWithTheOutsideDatesToTheDay)
{
    if (std::string{LATHHOUSE_CHECKS}.empty()) {
        GTEST_SKIP() << "needs the outside check values";
    }
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator{kChecks / "records"}) {
        files.push_back(entry.path());
    }
    const auto agreement = dates_agreement(files);
    EXPECT_GT(agreement.dates, 100);
    EXPECT_EQ(agreement.dates_that_differ, 0) << agreement.first_difference;
    EXPECT_EQ(agreement.counts_that_differ, 0);
    EXPECT_EQ(agreement.shares_that_differ, 0);
}

TEST(FrostRecords, AllStationsAgreeWithTheOutsideDatesToTheDay)
{
    const char* file = std::getenv("LATHHOUSE_US_DAILY");
    if (std::string{LATHHOUSE_CHECKS}.empty() || file == nullptr) {
        GTEST_SKIP() << "needs the outside check values and LATHHOUSE_US_DAILY, the records of all stations";
    }
    const auto agreement = dates_agreement({file});
    EXPECT_EQ(agreement.dates, static_cast<int>(expected_rows().size()) * 9);
    EXPECT_EQ(agreement.dates_that_differ, 0) << agreement.first_difference;
    EXPECT_EQ(agreement.counts_that_differ, 0);
    EXPECT_EQ(agreement.shares_that_differ, 0);
}

// --- Made records: every day 12.0 C but the nights that are set.

class MadeRecord {
public:
    MadeRecord(int first_year, int last_year)
    {
        for (int year = first_year; year <= last_year; ++year) {
            for (int month = 1; month <= 12; ++month) {
                const bool winter = month < 4 || month > 10;
                auto& readings = record_.month_to_write(year, month);
                const bool leap = year % 4 == 0;
                const int days = calendar::days_in_month_of_leap_year(month) - (month == 2 && !leap ? 1 : 0);
                for (int day = 1; day <= days; ++day) {
                    readings.low[static_cast<std::size_t>(day - 1)] =
                        *DailyReading::from_tenths(winter ? 60 : 120);
                }
            }
        }
    }
    MadeRecord& night(int year, int month, int day, std::optional<int> tenths)
    {
        record_.month_to_write(year, month).low[static_cast<std::size_t>(day - 1)] =
            tenths ? *DailyReading::from_tenths(*tenths) : DailyReading{};
        return *this;
    }
    void lose(int year)
    {
        for (int month = 1; month <= 12; ++month) {
            record_.month_to_write(year, month).low.fill(DailyReading{});
        }
    }
    FrostRecord dates(BasePeriod base, double line = 0.0, std::vector<double> percents = standard_percents(),
                      std::optional<SeasonTurn> turn = std::nullopt) const
    {
        FrostQuestion question;
        question.base = base;
        question.lines = {Celsius::from_degrees(line)};
        question.percents = std::move(percents);
        question.turn = turn;
        return frost_dates_of(record_, question);
    }
    const DailyRecord& record() const { return record_; }

private:
    DailyRecord record_{"MADE"};
};

std::string text(const std::optional<calendar::DayOfYear>& day)
{
    return day ? day->to_text() : "";
}

TEST(FrostRecords, ElementRuleTakesNoDateBetweenTwo)
{
    MadeRecord made{2001, 2011}; // Ten seasons.
    for (int k = 0; k < 10; ++k) {
        made.night(2001 + k, 11, 1 + k, -10).night(2002 + k, 3, 1 + k, -10);
    }
    const auto dates = made.dates({2001, 2011});
    ASSERT_TRUE(dates.thresholds);
    const auto& line = dates.thresholds->front();
    EXPECT_EQ(line.state, ThresholdState::Ordinary);
    EXPECT_EQ(text(line.first.dates.at(10)), "11-01");
    EXPECT_EQ(text(line.first.dates.at(90)), "11-09");
    EXPECT_EQ(text(line.last.dates.at(10)), "03-09");
    EXPECT_EQ(text(line.last.dates.at(90)), "03-01");
    EXPECT_NEAR(line.nights_per_year, 2.0, 0.01);
}

TEST(FrostRecords, ARareDateComesFromAModelOfTheRecordAndStandsBesideTheCounted)
{
    const auto record = sample_record(1991, 2010);
    FrostQuestion question;
    question.base = {1991, 2010};
    question.lines = {Celsius::from_degrees(0.0), Celsius::from_degrees(-60.0)};
    question.percents = {1.0, 10.0, 50.0}; // One in a hundred is rarer than nineteen seasons can tell.
    auto answer = frost_dates_of(record, question);
    ASSERT_TRUE(answer.thresholds);
    const auto counted = answer.thresholds->front();
    add_rare_dates(answer, record, question);
    const auto& line = answer.thresholds->front();
    EXPECT_EQ(line.last.dates, counted.last.dates); // What was counted stays what was counted.
    ASSERT_TRUE(line.last.model_dates.at(1.0));
    ASSERT_TRUE(line.first.model_dates.at(1.0));
    EXPECT_FALSE(line.last.model_dates.contains(10.0));
    // Later in spring than one year in ten, and earlier in autumn.
    EXPECT_GT(line.last.model_dates.at(1.0)->index(), line.last.dates.at(10.0)->index());
    EXPECT_LT(line.first.model_dates.at(1.0)->index(), line.first.dates.at(10.0)->index());
    EXPECT_TRUE(answer.thresholds->back().last.model_dates.empty() || !answer.thresholds->back().last.model_dates.at(1.0));
}

TEST(FrostRecords, SeasonsWithoutSuchNightsAreKept)
{
    MadeRecord made{2001, 2011};
    for (int k = 0; k < 5; ++k) {
        made.night(2002 + 2 * k, 1, 10, -5);
    }
    const auto line = made.dates({2001, 2011}).thresholds->front();
    EXPECT_DOUBLE_EQ(line.first.share_without.fraction(), 0.5);
    EXPECT_EQ(text(line.first.dates.at(50)), "01-10");
    EXPECT_EQ(text(line.first.dates.at(60)), "");
    EXPECT_EQ(text(line.last.dates.at(40)), "01-10");
    EXPECT_EQ(text(line.last.dates.at(50)), "");
}

TEST(FrostRecords, NeverIsAState)
{
    const auto line = MadeRecord{2001, 2011}.dates({2001, 2011}).thresholds->front();
    EXPECT_EQ(line.state, ThresholdState::Never);
    EXPECT_EQ(line.nights_per_year, 0.0);
    EXPECT_EQ(line.free_days.at(50), std::nullopt);
}

TEST(FrostRecords, LineReachedInEveryMonthLeavesNoWindow)
{
    const auto line = MadeRecord{2001, 2011}.dates({2001, 2011}, 12.0).thresholds->front();
    EXPECT_EQ(line.state, ThresholdState::NoWindow);
    EXPECT_EQ(text(line.first.dates.at(50)), "08-01");
    EXPECT_EQ(text(line.last.dates.at(50)), "07-31");
}

TEST(FrostRecords, LinesAreComparedInTenths)
{
    MadeRecord made{2001, 2011};
    for (int year = 2002; year <= 2011; ++year) {
        made.night(year, 1, 5, 22);
    }
    EXPECT_EQ(text(made.dates({2001, 2011}, 2.2).thresholds->front().first.dates.at(50)), "01-05");
    EXPECT_EQ(made.dates({2001, 2011}, 2.1).thresholds->front().state, ThresholdState::Never);
}

TEST(FrostRecords, UnderTenSeasonsThereAreNoDates)
{
    const MadeRecord made{2001, 2010};
    EXPECT_EQ(made.dates({2001, 2010}).counted_seasons, 9);
    EXPECT_FALSE(made.dates({2001, 2010}).thresholds);
}

TEST(FrostRecords, ElevenMissingDaysSpoilASeason)
{
    MadeRecord made{2001, 2011};
    for (int day = 1; day <= 20; day += 2) {
        made.night(2005, 2, day, std::nullopt); // Ten days, none in a row.
    }
    EXPECT_EQ(made.dates({2001, 2011}).counted_seasons, 10);
    made.night(2005, 2, 25, std::nullopt);
    EXPECT_EQ(made.dates({2001, 2011}).counted_seasons, 9);
}

TEST(FrostRecords, RunsOfMissingDaysAreCountedWithinTheMonth)
{
    MadeRecord made{2001, 2011};
    for (int day = 27; day <= 30; ++day) {
        made.night(2005, 4, day, std::nullopt);
        made.night(2005, 5, day - 26, std::nullopt);
    }
    EXPECT_EQ(made.dates({2001, 2011}).counted_seasons, 10);
    made.night(2005, 5, 5, std::nullopt);
    EXPECT_EQ(made.dates({2001, 2011}).counted_seasons, 9);
}

TEST(FrostRecords, SeasonsLieWhollyInTheBase)
{
    EXPECT_EQ(MadeRecord(2001, 2020).dates({2005, 2016}).counted_seasons, 11);
    // With the turn at the year's end a season is a calendar year.
    const SeasonTurn year_end{calendar::DayOfYear::wrapped(366)};
    EXPECT_EQ(MadeRecord(2001, 2020).dates({2005, 2016}, 0.0, standard_percents(), year_end).counted_seasons,
              12);
}

TEST(FrostRecords, TurnWithinAMonthSplitsIt)
{
    MadeRecord made{2001, 2012};
    const auto turn = SeasonTurn{*calendar::DayOfYear::from_month_day(1, 15)};
    for (int year = 2002; year <= 2012; ++year) {
        made.night(year, 1, 15, -5).night(year, 1, 16, -5);
    }
    const auto line = made.dates({2001, 2012}, 0.0, standard_percents(), turn).thresholds->front();
    EXPECT_EQ(line.last.years, 11);
    EXPECT_EQ(text(line.first.dates.at(50)), "01-16");
    EXPECT_EQ(text(line.last.dates.at(50)), "01-15");
}

TEST(FrostRecords, TurnFollowsTheLowsNotTheLatitude)
{
    EXPECT_EQ(turn_of(MadeRecord(2001, 2011).record(), {2001, 2011}).last_day().to_text(), "07-31");
    DailyRecord south{"SOUTH"};
    for (int month = 1; month <= 12; ++month) {
        south.month_to_write(2001, month)
            .low.fill(*DailyReading::from_tenths(month < 4 || month > 10 ? 150 : 20));
    }
    EXPECT_EQ(turn_of(south, {2001, 2001}).last_day().to_text(), "01-31");
}

TEST(FrostRecords, FreeDaysRunFromDateToDate)
{
    MadeRecord made{2001, 2012}; // Eleven seasons, ten pairs.
    for (int year = 2002; year <= 2012; ++year) {
        made.night(year, 3, 1, -5);
    }
    for (int k = 0; k < 11; ++k) {
        made.night(2001 + k, 11, 1 + k, -5);
    }
    const auto line = made.dates({2001, 2012}).thresholds->front();
    EXPECT_EQ(line.free_days.at(10), 245 + 9);
    EXPECT_EQ(line.free_days.at(90), 245 + 1);
}

TEST(FrostRecords, SeasonsOnBothSidesOfALostYearAreNoPair)
{
    MadeRecord made{2001, 2014};
    for (int year = 2002; year <= 2014; ++year) {
        made.night(year, 3, 1, -5);
    }
    for (int year = 2001; year <= 2013; ++year) {
        made.night(year, 11, 1, -5);
    }
    const auto whole = made.dates({2001, 2014}).thresholds->front();
    made.lose(2007);
    const auto broken = made.dates({2001, 2014}).thresholds->front();
    EXPECT_LT(*broken.last.years, *whole.last.years);
    // From 1 March to 1 November; none of it spans the year that is lost.
    EXPECT_EQ(broken.free_days.at(10), 245);
    EXPECT_EQ(broken.free_days.at(90), 245);
}

TEST(FrostRecords, WithoutSeasonsTellOfNightsAndHaveNoDates)
{
    const auto record = sample_record(1991, 2010, {.mean_low = 18.0, .swing = 0.3});
    FrostQuestion question;
    question.base = {1991, 2010};
    question.lines = {Celsius::from_degrees(16.0)};
    question.percents = {1.0, 50.0};
    auto answer = frost_dates_of(record, question);
    ASSERT_TRUE(answer.thresholds);
    add_rare_dates(answer, record, question);
    const auto& line = answer.thresholds->front();
    EXPECT_EQ(line.state, ThresholdState::NoSeason);
    EXPECT_GT(line.nights_per_year, 0.0);
    EXPECT_EQ(line.last.dates.at(50.0), std::nullopt);
    EXPECT_EQ(line.first.dates.at(50.0), std::nullopt);
    EXPECT_EQ(line.free_days.at(50.0), std::nullopt);
    EXPECT_TRUE(line.last.model_dates.empty());
}

} // namespace
} // namespace lathhouse::climate
