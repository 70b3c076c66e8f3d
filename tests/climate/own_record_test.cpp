#include "core/climate/own_record.h"

#include "core/climate/frost_records.h"
#include "core/climate/line_dates.h"
#include "tests/climate/sample_record.h"

#include <gtest/gtest.h>

#include <array>
#include <fstream>

namespace lathhouse::climate {
namespace {

constexpr Position kPorch{Latitude::literal(48.0), Longitude::literal(20.0)};

std::shared_ptr<const OwnRecord> own(DailyRecord days)
{
    return std::make_shared<const OwnRecord>(OwnRecord{.name = "Porch",
                                                       .file = "porch.csv",
                                                       .position = kPorch,
                                                       .elevation = Metres::from_metres(150.0),
                                                       .imported = {2026, 11, 25},
                                                       .days = std::move(days)});
}

TEST(OwnRecord, UsesTheNewestThirtyYears)
{
    EXPECT_EQ(base_of_own(sample_record(1951, 2020)), (BasePeriod{1991, 2020}));
    EXPECT_EQ(base_of_own(sample_record(2009, 2020)), (BasePeriod{2009, 2020}));
    auto record = sample_record(2001, 2010);
    record.month_to_write(2015, 6).high[0] = *DailyReading::from_tenths(200); // No low there.
    record.month_to_write(1999, 6).high[0] = *DailyReading::from_tenths(200);
    EXPECT_EQ(base_of_own(record), (BasePeriod{2001, 2010}));
}

TEST(OwnRecord, AnswersAloneForItsPlace)
{
    const auto record = own(sample_record(2001, 2020));
    const auto place = climate_from_own(record, kPorch, Metres::from_metres(150.0));
    ASSERT_TRUE(place) << place.error().message;
    ASSERT_EQ(place->stations.size(), 1U);
    EXPECT_EQ(place->stations[0].station->source, StationSource::Own);
    EXPECT_EQ(place->stations[0].station, &place->own->station);
    const auto station = station_of(record).value().station;
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(place->monthly.low[m].degrees(), station.monthly.low[m].degrees(), 1e-9);
        EXPECT_TRUE(place->rain[m].has_value());
    }
}

TEST(OwnRecord, OutlivesWhoeverAskedForIt)
{
    auto record = own(sample_record(2001, 2020));
    const auto place = climate_from_own(record, kPorch, Metres::from_metres(150.0)).value();
    record.reset();
    EXPECT_EQ(place.stations.front().station->name, "Porch");
}

TEST(OwnRecord, ErrsLessTheMoreYearsItHasAndMoreFurtherAway)
{
    const auto error = [](const DailyRecord& days, Position position) {
        return climate_from_own(own(days), position, Metres::from_metres(150.0))
            .value()
            .expected_error.kelvins();
    };
    // Every other year 2 K warmer: the years' means scatter by 1.03 K, so twenty tell the mean to 0.8 x 0.23
    // K.
    auto days = sample_record(2001, 2020, {.weather = 0.0});
    for (int year = 2002; year <= 2020; year += 2) {
        for (int month = 1; month <= 12; ++month) {
            for (auto& low : days.month_to_write(year, month).low) {
                low = low.known() ? *DailyReading::from_tenths(low.tenths() + 20) : low;
            }
        }
    }
    EXPECT_NEAR(error(days, kPorch), 0.184, 0.01);
    EXPECT_GT(error(days, {Latitude::literal(48.3), Longitude::literal(20.0)}), 0.3);
    EXPECT_LT(error(days, {Latitude::literal(48.3), Longitude::literal(20.0)}), 2.0);
}

TEST(OwnRecord, IsBroughtToThePlacesHeight)
{
    const auto record = own(sample_record(2001, 2020));
    const auto here = climate_from_own(record, kPorch, Metres::from_metres(150.0)).value();
    const auto above = climate_from_own(record, kPorch, Metres::from_metres(250.0)).value();
    EXPECT_NEAR((here.monthly.low[0] - above.monthly.low[0]).kelvins(), 0.54, 1e-9);
}

TEST(OwnRecord, DoesNotSpeakForFarPlaces)
{
    const auto record = own(sample_record(2001, 2020));
    const Position far{Latitude::literal(48.6), Longitude::literal(20.0)};
    EXPECT_EQ(climate_from_own(record, far, Metres::from_metres(150.0)).error().code, ErrorCode::NoStation);
    EXPECT_EQ(climate_from_own(record, kPorch, Metres::from_metres(460.0)).error().code,
              ErrorCode::NoStation);
}

TEST(OwnRecord, NeedsYearsEnough)
{
    EXPECT_EQ(climate_from_own(own(sample_record(2001, 2007)), kPorch, std::nullopt).error().code,
              ErrorCode::TooFewYears);
    EXPECT_TRUE(climate_from_own(own(sample_record(2001, 2008)), kPorch, std::nullopt));
}

TEST(OwnRecord, LeavesImpossibleValuesOut)
{
    auto days = sample_record(2001, 2020);
    const auto clean = station_of(own(days)).value();
    days.month_to_write(2010, 1).low[5] = *DailyReading::from_tenths(-1200);
    days.month_to_write(2010, 1).high[5] = *DailyReading::from_tenths(850);
    const auto spoilt = station_of(own(days)).value();
    EXPECT_NEAR(clean.station.monthly.low[0].degrees(), spoilt.station.monthly.low[0].degrees(), 0.05);
    EXPECT_GT(spoilt.station.monthly.lowest[0]->degrees(), -60.0);
}

TEST(OwnRecordDates, AreThoseCountedInTheRecord)
{
    const auto days = sample_record(2001, 2020);
    const auto station = station_of(own(days)).value();
    const std::vector<Celsius> lines{Celsius::from_degrees(-1.3)}; // No line of the shipped table.
    const auto dates = dates_from_own(station, lines, {});
    ASSERT_TRUE(dates.has_value());
    FrostQuestion question;
    question.base = {2001, 2020};
    question.lines = lines;
    const auto counted = frost_dates_of(days, question).thresholds.value();
    EXPECT_EQ(dates->front().last.dates, counted.front().last.dates);
    EXPECT_EQ(dates->front().first.dates, counted.front().first.dates);
    EXPECT_EQ(dates->front().last.years, 19);
}

TEST(OwnRecordDates, AnswerForThePlaceWhereTheRecordWasKept)
{
    const auto record = own(sample_record(2001, 2020));
    const auto place = climate_from_own(record, kPorch, Metres::from_metres(150.0)).value();
    const std::array lines{Celsius::from_degrees(0.0), Celsius::from_degrees(7.5)}; // One that no table counts.
    const auto dates = dates_of_lines(place, lines);
    EXPECT_TRUE(dates.counted);
    const FrostQuestion question{.base = {2001, 2020}, .lines = {lines.begin(), lines.end()}, .turn = std::nullopt};
    const auto counted = frost_dates_of(record->days, question);
    ASSERT_TRUE(counted.thresholds);
    for (std::size_t line = 0; line < lines.size(); ++line) {
        EXPECT_EQ(dates.lines[line].last.dates.at(50.0), (*counted.thresholds)[line].last.dates.at(50.0));
        EXPECT_EQ(dates.lines[line].first.dates.at(10.0), (*counted.thresholds)[line].first.dates.at(10.0));
        // The intervals too, not what the kept dates of a table's row would tell of them.
        for (const auto end : {&ThresholdDates::last, &ThresholdDates::first}) {
            const auto& intervals = ((*counted.thresholds)[line].*end).intervals;
            ASSERT_EQ(intervals.size(), 9U);
            for (const auto& [percent, interval] : intervals) {
                const auto& told = (dates.lines[line].*end).intervals.at(percent);
                EXPECT_EQ(told.from, interval.from) << percent;
                EXPECT_EQ(told.to, interval.to) << percent;
            }
        }
    }
    const auto far = climate_from_own(record, {Latitude::literal(48.3), Longitude::literal(20.0)}, Metres::from_metres(150.0));
    ASSERT_TRUE(far) << far.error().message;
    EXPECT_FALSE(dates_of_lines(*far, lines).counted) << "thirty-three kilometres away the model answers";
}

TEST(OwnRecordDates, LeaveRareChancesToTheModel)
{
    const auto station = station_of(own(sample_record(2001, 2020))).value();
    const std::vector<Celsius> lines{Celsius::from_degrees(0.0)};
    EXPECT_TRUE(
        dates_from_own(station, lines, std::vector{6.0}).has_value()); // One in nineteen seasons is 5.3 %.
    EXPECT_FALSE(dates_from_own(station, lines, std::vector{5.0}).has_value());
}

TEST(OwnRecordDates, NeedTenSeasons)
{
    const auto station = station_of(own(sample_record(2001, 2010))).value();
    EXPECT_FALSE(dates_from_own(station, std::vector{Celsius::from_degrees(0.0)}, {}).has_value());
}

/// Files of the test, removed afterwards.
class RecordFiles : public testing::Test {
protected:
    RecordFiles()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_own_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder_ = pattern;
    }
    ~RecordFiles() override
    {
        std::error_code failure;
        std::filesystem::remove_all(folder_, failure);
    }
    std::filesystem::path file(const char* name, const std::string& text) const
    {
        std::ofstream{folder_ / name} << text;
        return folder_ / name;
    }
    std::filesystem::path folder_;
};

constexpr const char* kElements = "AA00000001,20200101,TMIN,-35\nAA00000001,20200101,TMAX,71\n"
                                  "AA00000002,20200101,TMIN,-40\nAA00000002,20200101,TMAX,60\n";

TEST_F(RecordFiles, OfGhcnDailyAreKnownByTheirForm)
{
    const auto record = read_record_file({.file = file("two.csv", kElements), .station = "AA00000002"});
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->month(2020, 1)->low[0].tenths(), -40);
}

TEST_F(RecordFiles, OfSeveralStationsNeedAChoice)
{
    const auto none = read_record_file({.file = file("two.csv", kElements)});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::WrongUsage);
    const auto other = read_record_file({.file = file("two.csv", kElements), .station = "BB"});
    ASSERT_FALSE(other);
    EXPECT_EQ(other.error().code, ErrorCode::NotFound);
}

TEST_F(RecordFiles, OfGhcnDailyAreNeverInFahrenheit)
{
    const auto record = read_record_file({.file = file("two.csv", kElements), .units = TableUnits::Us});
    ASSERT_FALSE(record);
    EXPECT_EQ(record.error().code, ErrorCode::WrongUsage);
}

TEST_F(RecordFiles, ByDayMayBeInFahrenheit)
{
    const auto record = read_record_file(
        {.file = file("day.csv", "STATION,DATE,TMIN,TMAX\nX,2020-01-01,32,50\n"), .units = TableUnits::Us});
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->month(2020, 1)->high[0].tenths(), 100);
}

TEST_F(RecordFiles, ElseAreTheGrowersOwnTable)
{
    const auto record = read_record_file({.file = file("porch.csv", "date,low,high\n2020-01-01,1.5,9\n")});
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->station(), "porch");
    EXPECT_EQ(record->month(2020, 1)->low[0].tenths(), 15);
}

TEST_F(RecordFiles, AFolderIsRefused)
{
    const auto record = read_record_file({.file = folder_});
    ASSERT_FALSE(record);
    EXPECT_EQ(record.error().code, ErrorCode::Unreadable);
}

TEST_F(RecordFiles, WithNamedColumnsAreTheGrowersOwnTable)
{
    const auto record = read_record_file({.file = file("porch.csv", "day,min,max\n2020-01-01,1.5,9\n"),
                                          .columns = DayTableColumns{"day", "min", "max", std::nullopt}});
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->month(2020, 1)->high[0].tenths(), 90);
}

} // namespace
} // namespace lathhouse::climate
