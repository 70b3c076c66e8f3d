#include "core/base/named_rows.h"

#include <gtest/gtest.h>

#include <array>

namespace lathhouse {
namespace {

constexpr std::array<std::string_view, 3> kWanted{"date", "low_c", "note"};

NamedRows rows(std::string_view text, const std::vector<ColumnName>& names = {})
{
    const auto parsed = NamedRows::parse(text, "lows", kWanted, names);
    EXPECT_TRUE(parsed) << (parsed ? "" : parsed.error().message);
    return *parsed;
}

TEST(NamedRows, ReadCommaSeparatedTextWithAMark)
{
    const auto read =
        rows("\xEF\xBB\xBF# from the porch\ndate,low_c,other\n2026-09-11, 3.5 ,x\n2026-09-12,,y\n");
    ASSERT_EQ(read.row_count(), 2U);
    EXPECT_EQ(read.text(0, "date"), "2026-09-11");
    EXPECT_EQ(read.number(0, "low_c").value(), 3.5);
    EXPECT_EQ(read.number(1, "low_c").value(), std::nullopt);
    EXPECT_EQ(read.text(0, "note"), "");
    EXPECT_FALSE(read.has("note"));
}

TEST(NamedRows, TakeADecimalCommaOnlyWhereItSeparatesNothing)
{
    EXPECT_EQ(rows("date;low_c\nx;-0,5\n").number(0, "low_c").value(), -0.5);
    EXPECT_EQ(rows("date\tlow_c\nx\t2,25\n").number(0, "low_c").value(), 2.25);
    EXPECT_FALSE(rows("date,low_c\nx,\"2,25\"\n").number(0, "low_c"));
}

TEST(NamedRows, FollowAMapping)
{
    const auto read = rows("Day,Min\nx,4\n", {{"date", "Day"}, {"low_c", "Min"}});
    EXPECT_EQ(read.text(0, "date"), "x");
    EXPECT_EQ(read.number(0, "low_c").value(), 4.0);
}

TEST(NamedRows, NameAMappedColumnThatIsNotThere)
{
    const std::vector<ColumnName> names{{"low_c", "Tmin"}};
    const auto parsed = NamedRows::parse("Day,Min\nx,4\n", "lows", kWanted, names);
    ASSERT_FALSE(parsed);
    EXPECT_EQ(parsed.error().code, ErrorCode::Malformed);
    EXPECT_EQ(parsed.error().message, "lows has no column \"Tmin\"; it has Day, Min");
}

TEST(NamedRows, ReadAListOfObjects)
{
    const auto read = rows(R"([{"date":"a","low_c":1.5},{"date":"b","low_c":null},{"low_c":2}])");
    ASSERT_EQ(read.row_count(), 3U);
    EXPECT_EQ(read.number(0, "low_c").value(), 1.5);
    EXPECT_EQ(read.number(1, "low_c").value(), std::nullopt);
    EXPECT_EQ(read.text(2, "date"), "");
    EXPECT_EQ(read.number(2, "low_c").value(), 2.0);
}

TEST(NamedRows, ReadListsUnderAPathAndRepeatASingleValue)
{
    const auto read = rows(R"({"note":"all","daily":{"time":["a","b"],"min":[1,2]}})",
                           {{"date", "daily.time"}, {"low_c", "daily.min"}});
    ASSERT_EQ(read.row_count(), 2U);
    EXPECT_EQ(read.text(1, "date"), "b");
    EXPECT_EQ(read.text(1, "note"), "all");
}

TEST(NamedRows, SayWhereANumberIsNone)
{
    const auto number = rows("date,low_c\nx,4\ny,cold\n").number(1, "low_c");
    ASSERT_FALSE(number);
    EXPECT_EQ(number.error().message, "lows, line 3: \"cold\" is no number (low_c)");
}

TEST(NamedRows, RefuseANumberBeyondAnyMeasure)
{
    const auto parsed = NamedRows::parse(R"({"date":["x"],"low_c":[1e999]})", "lows", kWanted);
    ASSERT_FALSE(parsed);
    EXPECT_EQ(parsed.error().code, ErrorCode::Malformed);
}

TEST(NamedRows, AgreeWithinJsonAboutHowManyRowsThereAre)
{
    const auto parsed = NamedRows::parse(R"({"date":["a","b"],"low_c":[1,2,3]})", "lows", kWanted);
    ASSERT_FALSE(parsed);
    EXPECT_EQ(parsed.error().code, ErrorCode::Malformed);
}

TEST(ColumnNames, AreReadFromPairs)
{
    const auto names = parse_column_names("date=Day, low_c=T min", kWanted);
    ASSERT_TRUE(names);
    EXPECT_EQ(*names, (std::vector<ColumnName>{{"date", "Day"}, {"low_c", "T min"}}));
    EXPECT_FALSE(parse_column_names("date", kWanted));
    EXPECT_FALSE(parse_column_names("date=", kWanted));
    EXPECT_FALSE(parse_column_names("", kWanted));
    EXPECT_EQ(parse_column_names("lowest=T", kWanted).error().code, ErrorCode::WrongUsage);
}

} // namespace
} // namespace lathhouse
