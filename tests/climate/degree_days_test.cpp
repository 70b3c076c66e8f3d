#include "core/climate/degree_days.h"

#include "core/base/csv.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

#include <numeric>

namespace lathhouse::climate {
namespace {

Celsius c(double degrees)
{
    return Celsius::from_degrees(degrees);
}

TEST(DegreeDays, AgreeWithClosedFormsAndIntegration)
{
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/climate/degree_days.csv");
    ASSERT_TRUE(table) << table.error().message;
    ASSERT_EQ(table->row_count(), 15U);
    struct Column {
        const char* name;
        DegreeDayMethod method;
        bool upper;
    };
    constexpr Column kColumns[] = {{"method1_no_upper", DegreeDayMethod::SimpleAverage, false},
                                   {"method2_no_upper", DegreeDayMethod::ModifiedAverage, false},
                                   {"method2_upper", DegreeDayMethod::ModifiedAverage, true},
                                   {"single_sine_no_upper", DegreeDayMethod::SingleSine, false},
                                   {"single_sine_horizontal_upper", DegreeDayMethod::SingleSine, true}};
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto number = [&](const char* name) { return **table->number(row, *table->column(name)); };
        for (const auto& column : kColumns) {
            const auto upper = column.upper ? std::optional{c(number("upper"))} : std::nullopt;
            EXPECT_NEAR(
                degree_days(c(number("tmin")), c(number("tmax")), c(number("base")), upper, column.method),
                number(column.name), 1e-6)
                << column.name << " of line " << table->line(row);
        }
    }
}

TEST(DegreeDays, SimpleAverageIsCutOffAtTheUpperLimit)
{
    EXPECT_DOUBLE_EQ(degree_days(c(35), c(40), c(12), c(33), DegreeDayMethod::SimpleAverage), 21.0);
}

TEST(DegreeDays, ADayWithoutARangeIsItsMean)
{
    for (const auto method :
         {DegreeDayMethod::SimpleAverage, DegreeDayMethod::ModifiedAverage, DegreeDayMethod::SingleSine}) {
        EXPECT_DOUBLE_EQ(degree_days(c(14), c(14), c(10), {}, method), 4.0);
        EXPECT_DOUBLE_EQ(degree_days(c(10), c(10), c(10), {}, method), 0.0);
        EXPECT_DOUBLE_EQ(degree_days(c(14), c(12), c(10), {}, method), 4.0); // The high counts as the low.
    }
}

TEST(DegreeDaysOfMonths, ADayToDaySpreadMakesColdMonthsCount)
{
    auto figures = inland_figures();
    const auto with = degree_days_of_months(figures, c(10));
    figures.low_spread = kelvins_of({0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0});
    const auto without = degree_days_of_months(figures, c(10));
    EXPECT_GT(with[2], without[2]);          // March lies about the base.
    EXPECT_NEAR(with[6], without[6], 8.0);   // July lies far above it.
    EXPECT_NEAR(without[6], 31 * 12.7, 4.0); // (16.5 + 28.9) / 2 less 10, every day above the base.
}

TEST(DegreeDaysOfMonths, AreTheSameHalfAYearLaterBelowTheEquator)
{
    const auto north = degree_days_of_months(inland_figures(), c(10));
    const auto south = degree_days_of_months(turned_half_a_year(inland_figures()), c(10));
    EXPECT_NEAR(std::accumulate(north.begin(), north.end(), 0.0),
                std::accumulate(south.begin(), south.end(), 0.0), 25.0);
}

} // namespace
} // namespace lathhouse::climate
