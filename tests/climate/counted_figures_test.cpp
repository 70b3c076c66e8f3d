#include "core/base/csv.h"
#include "core/climate/degree_days.h"
#include "core/climate/figures.h"
#include "core/climate/station_table.h"
#include "core/climate/thermal_season.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <numeric>

namespace lathhouse::climate {
namespace {

/// Errors of a figure told from monthly figures against the same counted in the daily record.
struct Errors {
    double absolute = 0.0;
    double sum = 0.0;
    double relative = 0.0;
    int count = 0;
    void add(double told, double counted)
    {
        absolute += std::abs(told - counted);
        sum += told - counted;
        relative += std::abs(told - counted) / std::max(counted, 1.0);
        ++count;
    }
    double mean_absolute() const { return absolute / count; }
    double bias() const { return sum / count; }
    double mean_relative() const { return relative / count; }
};

/// tests/data/climate/counted_figures.csv beside the shipped rows of its forty stations.
class CountedFigures : public testing::Test {
protected:
    void SetUp() override
    {
        const auto file = StationTable::find();
        ASSERT_TRUE(file) << file.error().message;
        auto stations = StationTable::load(*file);
        ASSERT_TRUE(stations) << stations.error().message;
        stations_ = *std::move(stations);
        auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/climate/counted_figures.csv");
        ASSERT_TRUE(table) << table.error().message;
        table_ = *std::move(table);
        ASSERT_EQ(table_->row_count(), 40U);
    }
    template <class Told>
    Errors errors(const char* column, Told told) const
    {
        Errors errors;
        for (std::size_t row = 0; row < table_->row_count(); ++row) {
            const auto counted = table_->number(row, *table_->column(column));
            const auto* station = stations_->by_id(table_->at(row, 0));
            EXPECT_NE(station, nullptr) << table_->at(row, 0);
            if (station != nullptr && counted && *counted) {
                errors.add(told(*station), **counted);
            }
        }
        std::printf("%s: %d stations, mean absolute error %.2f (%.1f %%), bias %+.2f\n", column, errors.count,
                    errors.mean_absolute(), 100.0 * errors.mean_relative(), errors.bias());
        return errors;
    }
    std::optional<StationTable> stations_;
    std::optional<CsvTable> table_;
};

TEST_F(CountedFigures, HeatDaysAreRightToThreeDaysWhereBothSpreadsAreKnown)
{
    const auto found = errors("heat_days", [](const Station& station) { return heat_days(station.monthly); });
    EXPECT_LT(found.mean_absolute(), 3.0);
    EXPECT_LT(std::abs(found.bias()), 1.5);
}

TEST_F(CountedFigures, HeatDaysAreRightToFourDaysFromTheSpreadOfMeans)
{
    const auto found = errors("heat_days", [](const Station& station) {
        auto figures = station.monthly;
        figures.low_spread.reset();
        return heat_days(figures);
    });
    EXPECT_LT(found.mean_absolute(), 4.0);
    EXPECT_LT(std::abs(found.bias()), 2.0);
}

TEST_F(CountedFigures, HeatDaysAreRightToAWeekWithoutAnySpread)
{
    const auto found = errors("heat_days", [](const Station& station) {
        auto figures = station.monthly;
        figures.low_spread.reset();
        figures.mean_spread.reset();
        return heat_days(figures);
    });
    EXPECT_LT(found.mean_absolute(), 7.0);
}

TEST_F(CountedFigures, DegreeDaysOfAYearAreRightToTwoPercent)
{
    for (const double base : {5.0, 10.0}) {
        const auto found =
            errors(base == 5.0 ? "degree_days_5" : "degree_days_10", [base](const Station& station) {
                const auto months = degree_days_of_months(station.monthly, Celsius::from_degrees(base));
                return std::accumulate(months.begin(), months.end(), 0.0);
            });
        EXPECT_LT(found.mean_relative(), 0.02);
        EXPECT_LT(std::abs(found.bias()), 25.0);
    }
}

TEST_F(CountedFigures, TheThermalSeasonIsSomeDaysShorterThanTheGrowingSeasonOfTheRecord)
{
    // A season of the course ends where the mean crosses the line, one of a record only with six days below
    // it.
    const auto found = errors("growing_season_days", [](const Station& station) {
        return thermal_season(station.monthly, Celsius::from_degrees(5.0)).days;
    });
    EXPECT_LT(found.mean_absolute(), 10.0);
    EXPECT_LT(found.bias(), 2.0);
}

} // namespace
} // namespace lathhouse::climate
