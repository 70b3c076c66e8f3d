#include "core/climate/night_outlook.h"

#include "core/climate/normal.h"
#include "core/climate/student.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::climate {
namespace {

const NightModel& inland_season()
{
    static const auto model = NightModel::from_monthly(inland_figures(), Latitude::literal(45.0));
    return model;
}

const calendar::DayOfYear kApril = calendar::DayOfYear::from_month_day(4, 20).value();

NightOutlook outlook(double forecast, LeadDays lead)
{
    return {inland_season(), kApril, ForecastLow{Celsius::from_degrees(forecast), lead}};
}

// Upper points of Student's t with 5 degrees of freedom, as printed in any handbook of statistics
// (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2).
TEST(StudentTail, AgreesWithThePrintedTable)
{
    EXPECT_NEAR(student5_below(1.476), 0.90, 5e-5);
    EXPECT_NEAR(student5_below(2.015), 0.95, 5e-5);
    EXPECT_NEAR(student5_below(2.571), 0.975, 5e-5);
    EXPECT_NEAR(student5_below(3.365), 0.99, 2e-5);
    EXPECT_NEAR(student5_below(-5.893), 0.001, 1e-5);
}

// The value that the R package scoringRules (Jordan, Krueger & Lerch, J. Stat. Softw. 90(12), 2019) holds its
// closed form for Student's t to: crps_t(-3, df = 5).
TEST(RankedProbabilityScore, OfStudentsTAgreesWithTheClosedForm)
{
    EXPECT_NEAR(crps(student5_below, -3.0, 60.0), 2.33875895, 2e-5);
}

// Gneiting & Raftery (2007), eq. 21; the same package's value for crps_norm(-3).
TEST(RankedProbabilityScore, OfTheNormalAgreesWithTheClosedForm)
{
    EXPECT_NEAR(crps(normal_below, -3.0, 15.0), 2.43657473, 1e-6);
    const double at_mean = 2.0 * normal_density(0.0) - std::numbers::inv_sqrtpi;
    EXPECT_NEAR(crps(normal_below, 0.0, 12.0), at_mean, 1e-6);
}

TEST(NightOutlook, WithoutAForecastIsTheSeason)
{
    const NightOutlook season{inland_season(), kApril};
    const NightOffset porch{KelvinDelta::from_kelvins(1.5), KelvinDelta::from_kelvins(1.0)};
    for (const double line : {-5.0, 0.0, 4.0}) {
        const auto at = Celsius::from_degrees(line);
        EXPECT_DOUBLE_EQ(season.chance_at_or_below(at).fraction(), inland_season().chance_on(kApril, at).fraction());
        EXPECT_DOUBLE_EQ(season.chance_at_or_below(at, porch).fraction(),
                         inland_season().chance_on(kApril, at, porch).fraction());
    }
}

TEST(NightOutlook, TenDaysAheadIsTheSeason)
{
    EXPECT_DOUBLE_EQ(outlook(-12.0, 10).chance_at_or_below(Celsius::from_degrees(0.0)).fraction(),
                     inland_season().chance_on(kApril, Celsius::from_degrees(0.0)).fraction());
    EXPECT_FALSE(outlook(-12.0, 10).has_forecast());
}

TEST(NightOutlook, DrawsTheForecastTowardTheSeasonTheMoreTheLongerTheLead)
{
    const double season = inland_season().mean_low(kApril).degrees();
    double before = -12.0;
    for (LeadDays lead = 1; lead <= 10; ++lead) {
        const double mean = outlook(-12.0, lead).mean().degrees();
        EXPECT_GT(mean, before) << lead;
        EXPECT_LE(mean, season) << lead;
        before = mean;
    }
    EXPECT_DOUBLE_EQ(before, season);
}

TEST(NightOutlook, SpreadGrowsToTheSeasons)
{
    double before = 0.0;
    for (LeadDays lead = 0; lead <= 10; ++lead) {
        const double spread = outlook(3.0, lead).spread().kelvins();
        EXPECT_GT(spread, before) << lead;
        before = spread;
    }
    EXPECT_DOUBLE_EQ(before, inland_season().spread(kApril).kelvins());
}

// Mean and spread of the whole distribution by numerical integration: a regression keeps the season's
// variance, error^2 + correlation^2 * spread^2 = spread^2.
TEST(NightOutlook, HasTheMeanAndSpreadOfTheRegression)
{
    const auto night = outlook(-2.0, 3);
    const double rho = ForecastErrors{}.correlation(3, inland_season().spread(kApril));
    EXPECT_NEAR(std::pow(night.spread() / inland_season().spread(kApril), 2) + rho * rho, 1.0, 1e-12);
    double mean = 0.0;
    double square = 0.0;
    constexpr double kStep = 0.05;
    for (double at = -60.0; at < 60.0; at += kStep) {
        const double mass = night.chance_at_or_below(Celsius::from_degrees(at + kStep)).fraction() -
                            night.chance_at_or_below(Celsius::from_degrees(at)).fraction();
        const double low = at + kStep; // Middle of the cell; half a reading step belongs to the line.
        mean += mass * low;
        square += mass * low * low;
    }
    EXPECT_NEAR(mean, night.mean().degrees(), 0.15);
    EXPECT_NEAR(std::sqrt(square - mean * mean), night.spread().kelvins(), 0.25);
}

TEST(NightOutlook, ChanceGrowsWithTheLine)
{
    const auto night = outlook(2.0, 2);
    const NightOffset porch{KelvinDelta::from_kelvins(2.0), KelvinDelta::from_kelvins(0.5)};
    double before = 0.0;
    for (double line = -15.0; line <= 20.0; line += 0.25) {
        const double chance = night.chance_at_or_below(Celsius::from_degrees(line), porch).fraction();
        EXPECT_GE(chance, before) << line;
        before = chance;
    }
    EXPECT_GT(before, 0.999);
}

TEST(NightOutlook, HasAHeavierTailThanTheNormalAtShortLead)
{
    const auto night = outlook(6.0, 1);
    const auto far = night.mean() - 4.0 * night.spread();
    EXPECT_GT(night.chance_at_or_below(far).fraction(), 10.0 * normal_below(-4.0));
}

TEST(NightOutlook, QuantileIsTheInverseOfTheChance)
{
    const auto night = outlook(-3.0, 4);
    const NightOffset porch{KelvinDelta::from_kelvins(1.0), KelvinDelta::from_kelvins(0.8)};
    for (const double chance : {0.01, 0.1, 0.5, 0.9}) {
        const auto low = night.quantile(Probability::from_fraction(chance).value(), porch);
        EXPECT_NEAR(night.chance_at_or_below(low, porch).fraction(), chance, 1e-6);
    }
}

// The offset moves the line; its spread widens the night.
TEST(NightOutlook, MovesWithTheOffsetOfTheSpot)
{
    const auto night = outlook(1.0, 1);
    const NightOffset known{KelvinDelta::from_kelvins(2.0), KelvinDelta::from_kelvins(1e-9)};
    EXPECT_NEAR(night.chance_at_or_below(Celsius::from_degrees(2.0), known).fraction(),
                night.chance_at_or_below(Celsius::from_degrees(0.0)).fraction(), 2e-3);
    const NightOffset unsure{KelvinDelta::from_kelvins(2.0), KelvinDelta::from_kelvins(2.0)};
    EXPECT_GT(night.chance_at_or_below(Celsius::from_degrees(-3.0), unsure),
              night.chance_at_or_below(Celsius::from_degrees(-3.0), known));
}

TEST(NightOutlook, ScoreIsBestWhereTheLowComesAsExpected)
{
    const auto night = outlook(2.0, 1);
    EXPECT_LT(night.score(night.mean()), night.score(night.mean() + KelvinDelta::from_kelvins(3.0)));
    EXPECT_LT(night.score(night.mean()), NightOutlook(inland_season(), kApril).score(night.mean()));
}

TEST(NightOutlook, WithoutAForecastHasTheSeasonsQuantiles)
{
    const NightOutlook season{inland_season(), kApril};
    const NightOffset porch{KelvinDelta::from_kelvins(1.5), KelvinDelta::from_kelvins(1.0)};
    for (const double percent : {5.0, 50.0, 95.0}) {
        const auto chance = Probability::clamped(percent / 100.0);
        EXPECT_EQ(season.quantile(chance, porch), inland_season().quantile(kApril, chance, porch));
    }
}

} // namespace
} // namespace lathhouse::climate
