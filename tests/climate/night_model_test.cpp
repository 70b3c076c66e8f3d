#include "core/climate/night_model.h"

#include "tests/climate/sample_figures.h"
#include "tests/climate/short_names.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace lathhouse::climate {
namespace {

using calendar::DayOfYear;

constexpr Latitude kMiddle = Latitude::literal(45.0);

Celsius celsius(double degrees)
{
    return Celsius::from_degrees(degrees);
}
NightModel inland()
{
    return NightModel::from_monthly(inland_figures(), kMiddle);
}

TEST(NightModel, SeasonTurnsWithTheHemisphere)
{
    EXPECT_EQ(inland().turn().last_day(), day(7, 31));
    EXPECT_EQ(NightModel::from_monthly(turned_half_a_year(inland_figures()), kMiddle).turn().last_day(),
              day(1, 31));
}

TEST(NightModel, BothHemispheresAgreeHalfAYearApart)
{
    const auto south = NightModel::from_monthly(turned_half_a_year(inland_figures()), kMiddle);
    const auto north_last = inland().season(celsius(0)).last(Probability::literal(0.5));
    const auto south_last = south.season(celsius(0)).last(Probability::literal(0.5));
    ASSERT_TRUE(north_last && south_last);
    // Months differ in length, so that half a year is 181 to 185 days.
    EXPECT_NEAR((south_last->place() - north_last->place() + 366) % 366, 183, 4);
}

TEST(NightModel, ChancesOfASeasonAreInOrder)
{
    const SeasonChances season = inland().season(celsius(0));
    double before = 0.0;
    double after = 1.0;
    for (int k = 0; k < 366; ++k) {
        const DayOfYear at = season.turn().day_at(k);
        EXPECT_GE(season.on_or_before(at).fraction(), before);
        EXPECT_LE(season.after(at).fraction(), after);
        before = season.on_or_before(at).fraction();
        after = season.after(at).fraction();
    }
    EXPECT_EQ(after, 0.0);
}

TEST(NightModel, FirstIsTheFirstDayThatReachesTheChance)
{
    const SeasonChances season = inland().season(celsius(0));
    const auto first = season.first(Probability::literal(0.3));
    ASSERT_TRUE(first);
    EXPECT_GE(season.on_or_before(*first).fraction(), 0.3);
    EXPECT_LT(season.on_or_before(DayOfYear::wrapped(first->place() - 1)).fraction(), 0.3);
}

TEST(NightModel, LastIsTheFirstDayWithNoMoreThanTheChanceAfterIt)
{
    const SeasonChances season = inland().season(celsius(0));
    const auto last = season.last(Probability::literal(0.1));
    ASSERT_TRUE(last);
    EXPECT_LE(season.after(*last).fraction(), 0.1);
    EXPECT_GT(season.after(DayOfYear::wrapped(last->place() - 1)).fraction(), 0.1);
}

TEST(NightModel, AWarmerLineIsMetMoreOften)
{
    const NightModel model = inland();
    double before = 0.0;
    for (double line = -20.0; line <= 20.0; line += 1.0) {
        const double chance = model.chance_on(day(4, 20), celsius(line)).fraction();
        EXPECT_GT(chance, before);
        before = chance;
    }
}

TEST(NightModel, QuantileIsTheInverseOfTheChance)
{
    const NightModel model = inland();
    for (const NightOffset offset : {NightOffset{}, NightOffset{kelvins(2.5), kelvins(1.2)}}) {
        for (const double chance : {0.01, 0.1, 0.5, 0.9}) {
            const Celsius low = model.quantile(day(10, 12), Probability::clamped(chance), offset);
            EXPECT_NEAR(model.chance_on(day(10, 12), low, offset).fraction(), chance, 1e-9);
        }
    }
}

TEST(NightModel, AnOffsetWithoutSpreadMovesTheLine)
{
    const NightModel model = inland();
    EXPECT_NEAR(model.chance_on(day(4, 20), celsius(2), {kelvins(2), kelvins(0)}).fraction(),
                model.chance_on(day(4, 20), celsius(0)).fraction(), 1e-12);
    const auto moved = model.season(celsius(2), {kelvins(2), kelvins(0)});
    EXPECT_EQ(moved.last(Probability::literal(0.1)),
              model.season(celsius(0)).last(Probability::literal(0.1)));
}

TEST(NightModel, TheSpreadOfAnOffsetIsIntegratedIntoASeason)
{
    const NightModel model = inland();
    const SeasonChances with = model.season(celsius(0), {kelvins(1), kelvins(1.5)});
    // Independent sum: 61 lines across four standard deviations, weighted by the normal distribution.
    double sum = 0.0;
    double weights = 0.0;
    const DayOfYear at = day(4, 25);
    for (int i = -30; i <= 30; ++i) {
        const double z = i / 7.5;
        const double weight = std::exp(-z * z / 2.0);
        sum +=
            weight * model.season(celsius(-1.0 - 1.5 * z), {kelvins(1e-9), kelvins(0)}).after(at).fraction();
        weights += weight;
    }
    // Each of the lines has the persistence that its own nights ask for, the integral that of their middle.
    EXPECT_NEAR(with.after(at).fraction(), sum / weights, 0.01);
    EXPECT_GT(with.after(at).fraction(), model.season(celsius(-1)).after(at).fraction());
}

TEST(NightModel, ManySeasonsSimulatedGiveTheSameDates)
{
    // A plain simulation of the model as it is described, for the day-to-day part and the chance on each
    // night; the part that a winter shares is left out by a line that only matters above 2 C.
    const NightModel model = inland();
    const Celsius line = celsius(8.0);
    constexpr int kSeasons = 20000;
    std::mt19937_64 random{7};
    std::normal_distribution<double> normal;
    // Barriers from the chance of each night: the inverse normal by bisection, an own way round.
    std::vector<double> barrier(366);
    for (int k = 0; k < 366; ++k) {
        const double chance = model.chance_on(model.turn().day_at(k), line).fraction();
        double low = -9.0;
        double high = 9.0;
        for (int i = 0; i < 60; ++i) {
            const double z = (low + high) / 2.0;
            (0.5 * std::erfc(-z / std::sqrt(2.0)) < chance ? low : high) = z;
        }
        barrier[static_cast<std::size_t>(k)] = low;
    }
    // What joins a night to the one before it, as docs/methods/nights.md has it for lines above freezing.
    std::vector<double> joins(366, 0.0);
    const auto asked_by = [&barrier](std::size_t k) {
        return 0.66 + 0.07 * std::clamp(-barrier[k] - 1.0, -1.0, 2.0);
    };
    for (std::size_t k = 1; k < 366; ++k) {
        joins[k] = std::round(100.0 * (asked_by(k - 1) + asked_by(k)) / 2.0) / 100.0;
        joins[k] = std::max(joins[k], 0.6);
    }
    std::vector<int> first_by(366, 0);
    for (int s = 0; s < kSeasons; ++s) {
        double z = normal(random);
        for (std::size_t k = 0; k < 366; ++k) {
            z = k == 0 ? z : joins[k] * z + std::sqrt(1.0 - joins[k] * joins[k]) * normal(random);
            if (z <= barrier[k]) {
                for (std::size_t rest = k; rest < 366; ++rest) {
                    ++first_by[rest];
                }
                break;
            }
        }
    }
    const SeasonChances season = model.season(line);
    for (int k = 0; k < 366; ++k) {
        const double share = static_cast<double>(first_by[static_cast<std::size_t>(k)]) / kSeasons;
        const double error = std::sqrt(std::max(share * (1.0 - share), 1e-4) / kSeasons);
        EXPECT_NEAR(season.on_or_before(season.turn().day_at(k)).fraction(), share, 4.0 * error + 0.0015)
            << "place " << k;
    }
}

TEST(NightModel, OneNightWithinIsTheChanceOnIt)
{
    const NightModel model = inland();
    EXPECT_NEAR(model.chance_within(day(5, 10), 1, celsius(3)).fraction(),
                model.chance_on(day(5, 10), celsius(3)).fraction(), 0.002);
}

TEST(NightModel, MoreNightsMeanMoreChance)
{
    const NightModel model = inland();
    const double ten = model.chance_within(day(5, 1), 10, celsius(0)).fraction();
    const double twenty = model.chance_within(day(5, 1), 20, celsius(0)).fraction();
    EXPECT_GT(twenty, ten);
    EXPECT_NEAR(model.chance_within(day(8, 1), 366, celsius(0)).fraction(), 1.0, 1e-3);
}

TEST(NightModel, TheWholeSeasonWithinIsTheSeason)
{
    const NightModel model = inland();
    EXPECT_NEAR(model.chance_within(day(8, 1), 366, celsius(-22)).fraction(),
                1.0 - model.season(celsius(-22)).share_without().fraction(), 1e-5);
}

TEST(NightModel, NoSeasonHasNoDates)
{
    const auto model = NightModel::from_monthly(tropical_figures(), Latitude::literal(5.0));
    EXPECT_TRUE(model.no_season());
    const ThresholdDates dates = model.dates(celsius(21));
    EXPECT_EQ(dates.state, ThresholdState::NoSeason);
    EXPECT_FALSE(dates.last.dates.at(50.0).has_value());
    EXPECT_GT(dates.nights_per_year, 1.0);
}

TEST(NightModel, ALineFarBelowIsNeverMet)
{
    const ThresholdDates dates = inland().dates(celsius(-60));
    EXPECT_EQ(dates.state, ThresholdState::Never);
    EXPECT_FALSE(dates.first.dates.at(90.0).has_value());
    EXPECT_FALSE(dates.free_days.at(10.0).has_value());
}

TEST(NightModel, ALineAboveAllNightsLeavesNoWindow)
{
    EXPECT_EQ(inland().dates(celsius(20)).state, ThresholdState::NoWindow);
}

TEST(NightModel, FurtherPercentsAreAnswered)
{
    const std::vector<double> further{5.0, 2.5};
    const ThresholdDates dates = inland().dates(celsius(0), further);
    EXPECT_EQ(dates.state, ThresholdState::Ordinary);
    ASSERT_TRUE(dates.last.dates.at(5.0) && dates.last.dates.at(2.5) && dates.last.dates.at(10.0));
    EXPECT_GT(*dates.last.dates.at(2.5), *dates.last.dates.at(5.0));
    EXPECT_GT(*dates.last.dates.at(5.0), *dates.last.dates.at(10.0));
}

TEST(NightModel, FreeDaysLieBetweenTheDates)
{
    const ThresholdDates dates = inland().dates(celsius(0));
    const int median = *dates.free_days.at(50.0);
    EXPECT_NEAR(median, dates.first.dates.at(50.0)->place() - dates.last.dates.at(50.0)->place(), 3);
    EXPECT_GT(*dates.free_days.at(10.0), median);
    EXPECT_LT(*dates.free_days.at(90.0), median);
}

TEST(NightModel, DatesAtADateDoNotExistWhereTheShareWithoutIsLarge)
{
    // A line that only some seasons reach: late chances exist, early ones do not.
    const NightModel model = inland();
    const ThresholdDates dates = model.dates(celsius(-25));
    const double with = 1.0 - dates.last.share_without.fraction();
    ASSERT_GT(with, 0.1);
    ASSERT_LT(with, 0.9);
    EXPECT_TRUE(dates.first.dates.at(10.0).has_value());
    EXPECT_FALSE(dates.first.dates.at(90.0).has_value());
    EXPECT_TRUE(dates.last.dates.at(10.0).has_value());
    EXPECT_FALSE(dates.last.dates.at(90.0).has_value());
}

TEST(NightModel, WholeFahrenheitReadingsCountHalfADegreeMore)
{
    // Worked in the study: the line 0 C is 32 F and ends at 32.5 F; with tenths it ends at 0.05 C.
    MonthlyFigures figures = inland_figures();
    figures.reading_step = kelvins(0.5556);
    const auto whole = NightModel::from_monthly(figures, kMiddle);
    const auto tenths = inland();
    struct Case {
        double line, ends;
    };
    for (const Case& row : {Case{0, 32.5}, Case{2.2, 36.5}, Case{10, 50.5}, Case{-5, 23.5}, Case{16, 60.5}}) {
        const Celsius end = Celsius::from_fahrenheit(row.ends);
        EXPECT_NEAR(whole.chance_on(day(4, 20), celsius(row.line)).fraction(),
                    tenths.chance_on(day(4, 20), end - kelvins(0.05)).fraction(), 1e-9)
            << row.line;
    }
}

TEST(NightModel, LowestOfTheSeasonIsItsMedianAlmost)
{
    const NightModel model = inland();
    const Celsius lowest = model.lowest_of_season().mean;
    const double without = model.season(lowest).share_without().fraction();
    EXPECT_NEAR(without, 0.55, 0.1);
}

TEST(NightModel, LowestOfTheSeasonIsTheMeanOverLines)
{
    const NightModel model = inland();
    double mean = 0.0;
    for (double line = -60.0; line < 0.0; line += 0.5) {
        mean -= 0.5 *
                (1.0 - model.season(celsius(line), {kelvins(1e-12), kelvins(0)}).share_without().fraction());
    }
    EXPECT_NEAR(model.lowest_of_season().mean.degrees(), mean - 0.25, 0.02);
}

TEST(NightModel, RangeOfTheLowestNightAgreesWithTheSeasonsChances)
{
    const NightModel model = inland();
    const LowestNight lowest = model.lowest_of_season();
    const auto share_with = [&](Celsius line) {
        // Half a reading step is no part of a low that was not read.
        return 1.0 - model.season(line - kelvins(0.05)).share_without().fraction();
    };
    EXPECT_NEAR(share_with(lowest.tenth), 0.1, 0.02);
    EXPECT_NEAR(share_with(lowest.median), 0.5, 0.03);
    EXPECT_NEAR(share_with(lowest.ninetieth), 0.9, 0.02);
    EXPECT_LT(lowest.tenth, lowest.mean);
    EXPECT_GT(lowest.ninetieth, lowest.mean);
}

TEST(NightModel, ARiskOfOnePercentIsAnsweredBeyondTheOthers)
{
    const std::vector<double> further{1.0, 5.0};
    const ThresholdDates dates = inland().dates(celsius(0), further);
    ASSERT_TRUE(dates.last.dates.at(1.0) && dates.first.dates.at(1.0));
    EXPECT_GT(*dates.last.dates.at(1.0), *dates.last.dates.at(5.0));
    EXPECT_LT(*dates.first.dates.at(1.0), *dates.first.dates.at(5.0));
    const SeasonChances season = inland().season(celsius(0));
    EXPECT_LE(season.after(*dates.last.dates.at(1.0)).fraction(), 0.01);
    EXPECT_GT(season.after(DayOfYear::wrapped(dates.last.dates.at(1.0)->place() - 1)).fraction(), 0.01);
}

TEST(NightModel, ColderLinesAreNeverMoreLikely)
{
    // Persistence grows with the line's depth; the chances of a season must fall all the same.
    const NightModel model = inland();
    double before = 1.0;
    for (double line = 2.0; line > -14.0; line -= 0.25) {
        const double now = model.season(celsius(line)).after(day(4, 10)).fraction();
        EXPECT_LE(now, before + 1e-6) << line;
        before = now;
    }
}

TEST(NightModel, ColderLowestValuesMeanMoreSpread)
{
    MonthlyFigures figures = inland_figures();
    figures.mean_spread = figures.low_spread;
    figures.low_spread.reset();
    const auto plain = NightModel::from_monthly(figures, kMiddle);
    figures.years = 20;
    for (std::size_t m = 0; m < 12; ++m) {
        figures.lowest[m] = figures.low[m] - kelvins(20.0);
    }
    const auto told = NightModel::from_monthly(figures, kMiddle);
    EXPECT_EQ(told.basis(), SpreadBasis::Means);
    EXPECT_GT(told.spread(day(7, 10)), plain.spread(day(7, 10)));
}

TEST(NightModel, FrostDaysAreMet)
{
    MonthlyFigures figures = inland_figures();
    figures.mean_spread = kelvins_of({4.6, 4.4, 4.3, 3.9, 3.6, 3.1, 2.6, 2.7, 3.4, 3.6, 3.9, 4.4});
    figures.low_spread.reset();
    figures.frost_days = {26.0, 24.0, 20.0, 8.0, 1.0, {}, {}, {}, 0.6, 6.0, 15.0, 24.5};
    const auto model = NightModel::from_monthly(figures, kMiddle);
    double march = 0.0;
    for (int d = 1; d <= 31; ++d) {
        march += model.chance_on(day(3, d), celsius(-0.1)).fraction();
    }
    EXPECT_NEAR(march, 20.0, 0.5);
    // February's are the mean of common years and leap years.
    double february = 0.25 * model.chance_on(day(2, 29), celsius(-0.1)).fraction();
    for (int d = 1; d <= 28; ++d) {
        february += model.chance_on(day(2, d), celsius(-0.1)).fraction();
    }
    EXPECT_NEAR(february, 24.0, 0.25);
}

} // namespace
} // namespace lathhouse::climate
