#include "core/climate/day_table.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace lathhouse::climate {
namespace {

Result<DailyRecord> read(std::string_view text, TableUnits units = TableUnits::Metric,
                         DayTableColumns columns = {})
{
    return parse_day_table(text, "porch.csv", columns, units, "porch");
}

TEST(DayTable, KeepsTenthsAndGaps)
{
    const auto record = read("date,low,high,rain\n2020-02-29,-3.25,7.1,0\n2020-03-02,,8.0,12.4\n");
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->station(), "porch");
    const auto* february = record->month(2020, 2);
    EXPECT_EQ(february->low[28].tenths(), -33); // Half away from zero.
    EXPECT_EQ(february->high[28].tenths(), 71);
    EXPECT_EQ(february->rain[28].tenths(), 0);
    EXPECT_FALSE(record->month(2020, 3)->low[1].known());
    EXPECT_EQ(record->month(2020, 3)->rain[1].tenths(), 124);
}

TEST(DayTable, ReadsFahrenheitAndInches)
{
    const auto record = read("Date,Low,High,Rain\n2020-01-01,32,50,1.5\n", TableUnits::Us);
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->month(2020, 1)->low[0].tenths(), 0);
    EXPECT_EQ(record->month(2020, 1)->high[0].tenths(), 100);
    EXPECT_EQ(record->month(2020, 1)->rain[0].tenths(), 381);
}

TEST(DayTable, TakesColumnsByNameInAnyOrder)
{
    const auto record = read("max;comment,MIN,Day,max\nx,1.0,20200101,9.0\n", TableUnits::Metric,
                             {"day", "min", "Max", std::nullopt});
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->month(2020, 1)->low[0].tenths(), 10);
    EXPECT_EQ(record->month(2020, 1)->high[0].tenths(), 90);
}

TEST(DayTable, TakesRowsInAnyOrderOfTime)
{
    const auto record = read("date,low,high\n2021-01-01,1,9\n2019-12-31,2,8\n");
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(record->first_year(), 2019);
    EXPECT_EQ(record->last_year(), 2021);
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
class DayTableRefuses : public testing::TestWithParam<Hostile> {};
TEST_P(DayTableRefuses, WithASentence)
{
    const auto record = read(GetParam().text);
    ASSERT_FALSE(record);
    EXPECT_EQ(record.error().code, ErrorCode::Malformed);
    EXPECT_NE(record.error().message.find("porch.csv"), std::string::npos) << record.error().message;
    EXPECT_NE(record.error().message.find(GetParam().says), std::string::npos) << record.error().message;
    EXPECT_EQ(record.error().message.find('\n'), std::string::npos);
}
INSTANTIATE_TEST_SUITE_P(
    Hostile, DayTableRefuses,
    testing::Values(Hostile{"Empty", "", "empty"}, Hostile{"Blank", " \n \n", "empty"},
                    Hostile{"HeadAlone", "date,low,high\n", "no days"},
                    Hostile{"NoHead", "2020-01-01,1,9\n2020-01-02,1,9\n", "no column"},
                    Hostile{"NoHighs", "date,low\n2020-01-01,1\n", "no column \"high\""},
                    Hostile{"Letters", "date,low,high\n2020-01-01,cold,9\n", "line 2"},
                    Hostile{"Cut", "date,low,high\n2020-01-01,1,9\n2020-01-", "line 3"},
                    Hostile{"CutInAQuote", "date,low,high\n2020-01-01,1,\"9", "line 2"},
                    Hostile{"DayTwice", "date,low,high\n2020-01-01,1,9\n2020-01-02,1,9\n2020-01-01,2,8\n",
                            "line 2"},
                    Hostile{"NoSuchDay", "date,low,high\n2019-02-29,1,9\n", "2019-02-29"},
                    Hostile{"DayInAnotherForm", "date,low,high\n1.2.2020,1,9\n", "1.2.2020"},
                    Hostile{"NotANumber", "date,low,high\n2020-01-01,nan,9\n", "line 2"},
                    Hostile{"NoPossibleValue", "date,low,high\n2020-01-01,99999,9\n", "99999"},
                    Hostile{"DecimalComma", "date,low,high\n2020-01-01,1,5,9\n", "line 2"},
                    Hostile{"Rubbish", "\x01\x02\xff\xfe", "no column"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(DayTable, AFolderIsNoTable)
{
    const auto record = read_day_table(LATHHOUSE_TEST_DATA, {}, TableUnits::Metric, "porch");
    ASSERT_FALSE(record);
    EXPECT_EQ(record.error().code, ErrorCode::Unreadable);
}

TEST(DayTable, AFileThatIsNotThereIsSaid)
{
    EXPECT_EQ(read_day_table("/no/such/file.csv", {}, TableUnits::Metric, "porch").error().code,
              ErrorCode::NotFound);
}

TEST(DayTable, SaysWhichNamedColumnIsNotThere)
{
    const auto said = [](DayTableColumns columns) {
        return read("date,low,high\n2020-01-01,1,9\n", TableUnits::Metric, std::move(columns)).error().message;
    };
    EXPECT_NE(said({"date", "coldest", "high", std::nullopt}).find("\"coldest\""), std::string::npos);
    EXPECT_NE(said({"date", "low", "warmest", std::nullopt}).find("\"warmest\""), std::string::npos);
    EXPECT_NE(said({"date", "low", "high", "wet"}).find("\"wet\""), std::string::npos);
}

} // namespace
} // namespace lathhouse::climate
