#include "core/growth/series.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace lathhouse::growth {
namespace {

Result<std::vector<Measured>> read(std::string_view text, SeriesKind kind = SeriesKind::Size)
{
    const auto table = CsvTable::parse(text, "leaf.csv");
    if (!table) {
        return table.error();
    }
    return measured_from(*table, kind);
}

TEST(Series, IsSortedAndRepeatsAreAveraged)
{
    const auto measured = read("value,date,note\n12,2026-05-08,b\n10,2026-05-01,a\n14,2026-05-08,c\n");
    ASSERT_TRUE(measured.has_value()) << measured.error().message;
    const auto readings = readings_of(*measured);
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0], (SeriesReading{calendar::Date{2026, 5, 1}, 10.0, 1}));
    EXPECT_EQ(readings[1], (SeriesReading{calendar::Date{2026, 5, 8}, 13.0, 2}));
}

TEST(Series, FaultsNameTheLineAndWhatToDo)
{
    struct Case {
        const char* text;
        SeriesKind kind;
        const char* said;
    };
    for (const auto& [text, kind, said] :
         {Case{"date,value\n2026-05-01,10\n2026-05-02,-3\n", SeriesKind::Size, "line 3"},
          Case{"date,value\n2026-05-01,0\n", SeriesKind::Size, "leave the line out"},
          Case{"date,value\n2026-05-01,-1\n", SeriesKind::Count, "negative"},
          Case{"date,value\n2026-05-01,45\n", SeriesKind::Share, "0.45"},
          Case{"date,value\n2026-05-01,-0.1\n", SeriesKind::Yellow, "within 0 and 1"},
          Case{"date,value\n2026-02-30,1\n", SeriesKind::Size, "line 2"},
          Case{"date,value\nMay 1,1\n", SeriesKind::Size, "line 2"},
          Case{"date,value\n2026-05-01,\n", SeriesKind::Size, "missing"},
          Case{"date,value\n2026-05-01,tall\n", SeriesKind::Size, "line 2"},
          Case{"day,value\n2026-05-01,1\n", SeriesKind::Size, "date"}}) {
        const auto measured = read(text, kind);
        ASSERT_FALSE(measured.has_value()) << text;
        EXPECT_EQ(measured.error().code, ErrorCode::Malformed) << text;
        EXPECT_NE(measured.error().message.find(said), std::string::npos) << measured.error().message;
    }
}

TEST(Series, ScalesGoThereAndBack)
{
    for (const auto kind : {SeriesKind::Size, SeriesKind::Count, SeriesKind::Share, SeriesKind::Yellow}) {
        EXPECT_EQ(series_kind_of(to_string(kind)), kind);
        for (const double value : {0.05, 0.4, 0.9}) {
            EXPECT_NEAR(back_transformed(kind, transformed(kind, value)), value, 1e-12);
        }
        EXPECT_GT(spread_ratio(kind, 0.4), 0.0);
    }
    EXPECT_TRUE(std::isfinite(transformed(SeriesKind::Share, 0.0)));
    EXPECT_TRUE(std::isfinite(transformed(SeriesKind::Yellow, 1.0)));
    EXPECT_FALSE(series_kind_of("tall").has_value());
}

} // namespace
} // namespace lathhouse::growth
