// Published freeze dates of one station against the model, from the station's published monthly figures.

#include "core/base/csv.h"
#include "core/climate/night_model.h"
#include "core/climate/normal.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>

namespace lathhouse::climate {
namespace {

const std::filesystem::path kData = std::filesystem::path{LATHHOUSE_TEST_DATA} / "climate";

double number_at(const CsvTable& table, std::size_t row, const std::string& column)
{
    return *table.number(row, *table.column(column)).value();
}

/// Standard deviation of a normal distribution about the mean low that makes the published numbers of days
/// between the lines most likely. Lows are whole degrees Fahrenheit: "at or below 32" ends at 32.5.
double spread_from_days(const CsvTable& table, std::size_t row)
{
    constexpr std::array kLines = {0, 10, 20, 32, 40, 50, 60, 70};
    constexpr std::array kDaysOfMonths = {31.0, 28.2425, 31.0, 30.0, 31.0, 30.0,
                                          31.0, 31.0,    30.0, 31.0, 30.0, 31.0};
    const double mean = number_at(table, row, "low_f");
    std::array<double, kLines.size()> below{};
    for (std::size_t k = 0; k < kLines.size(); ++k) {
        const std::string column =
            std::string{"days_"} + (kLines[k] < 10 ? "0" : "") + std::to_string(kLines[k]);
        below[k] = std::min(1.0, number_at(table, row, column) / kDaysOfMonths[row]);
    }
    double best = 0.0;
    double most_likely = -1e300;
    for (double spread = 2.0; spread < 20.0; spread += 0.01) {
        double likelihood = 0.0;
        double counted = 0.0;
        double expected = 0.0;
        for (std::size_t k = 0; k <= kLines.size(); ++k) {
            const double next_counted = k < kLines.size() ? below[k] : 1.0;
            const double next_expected =
                k < kLines.size() ? normal_below((kLines[k] + 0.5 - mean) / spread) : 1.0;
            likelihood +=
                std::max(0.0, next_counted - counted) * std::log(std::max(next_expected - expected, 1e-12));
            counted = next_counted;
            expected = next_expected;
        }
        if (likelihood > most_likely) {
            most_likely = likelihood;
            best = spread;
        }
    }
    return best / 1.8;
}

MonthlyFigures lebanon_figures()
{
    const auto table = CsvTable::read(kData / "lebanon_monthly_1991_2020.csv").value();
    const auto none = Celsius::from_degrees(0.0);
    Monthly<Celsius> low{none, none, none, none, none, none, none, none, none, none, none, none};
    Monthly<Celsius> high = low;
    const auto zero = KelvinDelta::from_kelvins(0.0);
    Monthly<KelvinDelta> spread{zero, zero, zero, zero, zero, zero, zero, zero, zero, zero, zero, zero};
    for (std::size_t m = 0; m < 12; ++m) {
        low[m] = Celsius::from_fahrenheit(number_at(table, m, "low_f"));
        high[m] = Celsius::from_fahrenheit(number_at(table, m, "high_f"));
        spread[m] = KelvinDelta::from_kelvins(spread_from_days(table, m));
    }
    return {.low = low,
            .high = high,
            .low_spread = spread,
            .mean_spread = std::nullopt,
            .years = std::nullopt,
            .reading_step = KelvinDelta::from_kelvins(5.0 / 9.0)};
}

/// A published line, how many of its eighteen dates may miss by more than five days, and by how many at most.
struct LebanonLine {
    int fahrenheit;
    int misses;
    int most_days;
};
void PrintTo(const LebanonLine& line, std::ostream* out)
{
    *out << line.fahrenheit << " F";
}

class LebanonFreezeDates : public testing::TestWithParam<LebanonLine> {};

TEST_P(LebanonFreezeDates, AreMetWithinFiveDays)
{
    const auto model = NightModel::from_monthly(lebanon_figures(), Latitude::literal(43.6264));
    const auto published = CsvTable::read(kData / "lebanon_freeze_1991_2020.csv").value();
    // A hair above, since 36 F is 2.222 C and the lines are compared in tenths.
    const auto line = Celsius::from_degrees(
        std::round(Celsius::from_fahrenheit(GetParam().fahrenheit).degrees() * 10.0) / 10.0);
    const SeasonChances season = model.season(line);
    const SeasonTurn turn = season.turn();
    int compared = 0;
    int misses = 0;
    int most = 0;
    for (std::size_t row = 0; row < published.row_count(); ++row) {
        if (static_cast<int>(number_at(published, row, "line_f")) != GetParam().fahrenheit) {
            continue;
        }
        const std::string end = published.at(row, *published.column("end"));
        std::printf("%d F %5s:", GetParam().fahrenheit, end.c_str());
        for (int percent = 10; percent <= 90; percent += 10) {
            const auto chance = Probability::clamped(percent / 100.0);
            const auto ours = end == "last" ? season.last(chance) : season.first(chance);
            ASSERT_TRUE(ours.has_value());
            const auto theirs = calendar::DayOfYear::parse(
                published.at(row, *published.column("p" + std::to_string(percent))));
            const int off = turn.season_index(*ours) - turn.season_index(theirs.value());
            std::printf(" %+d", off);
            ++compared;
            misses += std::abs(off) > 5;
            most = std::max(most, std::abs(off));
        }
        std::printf("\n");
    }
    EXPECT_EQ(compared, 18);
    EXPECT_LE(misses, GetParam().misses);
    EXPECT_LE(most, GetParam().most_days);
}

// The bar is five days at every chance. It is met at the four warmer lines; at 20 and 16 F the earliest
// chance of the first such night misses it, by no more than is written here (docs/methods/nights.md).
INSTANTIATE_TEST_SUITE_P(Lines, LebanonFreezeDates,
                         testing::Values(LebanonLine{36, 0, 5}, LebanonLine{32, 0, 5}, LebanonLine{28, 0, 5},
                                         LebanonLine{24, 0, 5}, LebanonLine{20, 1, 7}, LebanonLine{16, 1, 7}),
                         [](const auto& row) { return "F" + std::to_string(row.param.fahrenheit); });

} // namespace
} // namespace lathhouse::climate
