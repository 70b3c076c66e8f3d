// Published freeze dates of one station against the model, from the station's published monthly
// figures and counts of nights.

#include "core/base/csv.h"
#include "core/climate/night_model.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <string>
#include <vector>

namespace lathhouse::climate {
namespace {

const std::filesystem::path kData = std::filesystem::path{LATHHOUSE_TEST_DATA} / "climate";

double number_at(const CsvTable& table, std::size_t row, const std::string& column)
{
    return *table.number(row, *table.column(column)).value();
}

CsvTable published_months()
{
    return CsvTable::read(kData / "lebanon_monthly_1991_2020.csv").value();
}

MonthlyFigures lebanon_figures()
{
    const CsvTable table = published_months();
    Monthly<Celsius> low = in_every_month(Celsius::from_degrees(0.0));
    Monthly<Celsius> high = low;
    for (std::size_t m = 0; m < 12; ++m) {
        low[m] = Celsius::from_fahrenheit(number_at(table, m, "low_f"));
        high[m] = Celsius::from_fahrenheit(number_at(table, m, "high_f"));
    }
    return {.low = low,
            .high = high,
            .low_spread = std::nullopt,
            .mean_spread = std::nullopt,
            .years = 22, // As published for the months from January to May; 23 for the others.
            .reading_step = KelvinDelta::from_kelvins(5.0 / 9.0)};
}

/// The published numbers of nights at or below 0, 10 ... 70 F.
std::vector<CountedNights> lebanon_counts()
{
    const CsvTable table = published_months();
    std::vector<CountedNights> counted;
    for (const int line : {0, 10, 20, 32, 40, 50, 60, 70}) {
        CountedNights nights{Celsius::from_fahrenheit(line), {}};
        for (std::size_t m = 0; m < 12; ++m) {
            nights.nights[m] =
                number_at(table, m, std::string{"days_"} + (line < 10 ? "0" : "") + std::to_string(line));
        }
        counted.push_back(nights);
    }
    return counted;
}

/// By published line, in degrees Fahrenheit.
class LebanonFreezeDates : public testing::TestWithParam<int> {};

TEST_P(LebanonFreezeDates, AreMetWithinFiveDays)
{
    const auto model =
        NightModel::from_monthly(lebanon_figures(), Latitude::literal(43.6264), lebanon_counts());
    const auto published = CsvTable::read(kData / "lebanon_freeze_1991_2020.csv").value();
    // A hair above, since 36 F is 2.222 C and the lines are compared in tenths.
    const auto line =
        Celsius::from_degrees(std::round(Celsius::from_fahrenheit(GetParam()).degrees() * 10.0) / 10.0);
    const SeasonChances season = model.season(line);
    const SeasonTurn turn = season.turn();
    int compared = 0;
    for (std::size_t row = 0; row < published.row_count(); ++row) {
        if (static_cast<int>(number_at(published, row, "line_f")) != GetParam()) {
            continue;
        }
        const std::string end = published.at(row, *published.column("end"));
        std::printf("%d F %5s:", GetParam(), end.c_str());
        for (int percent = 10; percent <= 90; percent += 10) {
            const auto chance = Probability::clamped(percent / 100.0);
            const auto ours = end == "last" ? season.last(chance) : season.first(chance);
            ASSERT_TRUE(ours.has_value());
            const auto theirs = calendar::DayOfYear::parse(
                published.at(row, *published.column("p" + std::to_string(percent))));
            const int off = turn.season_index(*ours) - turn.season_index(theirs.value());
            std::printf(" %+d", off);
            ++compared;
            EXPECT_LE(std::abs(off), 5) << end << " at " << percent << " %";
        }
        std::printf("\n");
    }
    EXPECT_EQ(compared, 18);
}

INSTANTIATE_TEST_SUITE_P(Lines, LebanonFreezeDates, testing::Values(36, 32, 28, 24, 20, 16),
                         [](const auto& row) { return "F" + std::to_string(row.param); });

} // namespace
} // namespace lathhouse::climate
