#include "core/climate/counted_nights.h"

#include "core/climate/night_model.h"
#include "core/climate/normal.h"

#include <gtest/gtest.h>

#include <vector>

namespace lathhouse::climate {
namespace {

using calendar::DayOfYear;

MonthlyFigures figures_of_a_cold_valley(std::optional<double> spread)
{
    const std::array<double, 12> lows = {-9, -8, -3, 1, 6, 11, 14, 13, 8, 3, -1, -6};
    MonthlyFigures figures{.low = in_every_month(Celsius::from_degrees(0.0)),
                           .high = in_every_month(Celsius::from_degrees(0.0)),
                           .low_spread = std::nullopt,
                           .mean_spread = std::nullopt,
                           .years = 30};
    for (std::size_t m = 0; m < 12; ++m) {
        figures.low[m] = Celsius::from_degrees(lows[m]);
        figures.high[m] = Celsius::from_degrees(lows[m] + 11.0);
    }
    if (spread) {
        figures.low_spread = in_every_month(KelvinDelta::from_kelvins(*spread));
    }
    return figures;
}

NightModel model_of(const MonthlyFigures& figures, std::span<const CountedNights> counted = {})
{
    return NightModel::from_monthly(figures, Latitude::literal(45.0), counted);
}

/// As many nights at or below the line as the model has, times a factor.
CountedNights nights_of(const NightModel& model, double line, double factor = 1.0)
{
    CountedNights counted{Celsius::from_degrees(line), {}};
    int place = 0;
    for (std::size_t m = 0; m < 12; ++m) {
        for (int day = 0; day < calendar::days_in_month_of_leap_year(static_cast<int>(m) + 1); ++day) {
            const auto chance = model.chance_on(DayOfYear::wrapped(++place), counted.line);
            counted.nights[m] += factor * chance.fraction();
        }
        if (m == 1) {
            counted.nights[m] *= 28.2425 / 29.0; // One 29 February in four years.
        }
    }
    return counted;
}

std::vector<CountedNights> counts_of(const NightModel& model, double factor = 1.0)
{
    std::vector<CountedNights> counted;
    for (const double line : {-15.0, -10.0, -5.0, 0.0, 5.0, 10.0, 15.0}) {
        counted.push_back(nights_of(model, line, factor));
    }
    return counted;
}

TEST(SpreadOfCountedNights, IsThatOfNormalShares)
{
    std::vector<ShareBelow> shares;
    for (const double edge : {-10.0, -4.0, 0.0, 5.0}) {
        shares.push_back({edge, normal_below((edge - 1.5) / 4.25)});
    }
    EXPECT_NEAR(spread_of_counted_nights(1.5, shares).value(), 4.25, 0.002);
}

TEST(SpreadOfCountedNights, NeedsTwoLinesThatPartTheNights)
{
    EXPECT_FALSE(spread_of_counted_nights(10.0, std::vector<ShareBelow>{}).has_value());
    EXPECT_FALSE(spread_of_counted_nights(
                     10.0, std::vector<ShareBelow>{{-5.0, 0.0}, {0.0, 0.004}, {8.0, 0.3}, {25.0, 1.0}})
                     .has_value());
}

TEST(CountedNights, ThatTheModelHasItselfMoveNoDate)
{
    const MonthlyFigures figures = figures_of_a_cold_valley(5.0);
    const NightModel plain = model_of(figures);
    const NightModel counted = model_of(figures, counts_of(plain));
    for (const double line : {-8.0, 0.0, 3.0}) {
        for (const double chance : {0.1, 0.5, 0.9}) {
            const auto at = Celsius::from_degrees(line);
            const auto percent = Probability::clamped(chance);
            EXPECT_EQ(counted.season(at).first(percent), plain.season(at).first(percent)) << line;
            EXPECT_EQ(counted.season(at).last(percent), plain.season(at).last(percent)) << line;
        }
    }
}

TEST(CountedNights, MoveTheModelTowardThemTheMoreYearsTheyHave)
{
    MonthlyFigures figures = figures_of_a_cold_valley(5.0);
    const NightModel plain = model_of(figures);
    const std::vector<CountedNights> half = {nights_of(plain, -8.0, 0.5)};
    const double before = plain.season(half.front().line).nights_per_year();
    figures.years = 5;
    const double few = model_of(figures, half).season(half.front().line).nights_per_year();
    figures.years = 60;
    const double many = model_of(figures, half).season(half.front().line).nights_per_year();
    EXPECT_LT(few, before);
    EXPECT_LT(many, few);
    EXPECT_GT(many, 0.5 * before);
}

TEST(CountedNights, NeverMakeAColderNightLikelier)
{
    const MonthlyFigures figures = figures_of_a_cold_valley(3.0);
    const NightModel plain = model_of(figures);
    for (const double factor : {0.0, 0.2, 3.0}) {
        const std::vector<CountedNights> odd = {nights_of(plain, -8.0, factor), nights_of(plain, -2.0)};
        const NightModel model = model_of(figures, odd);
        for (int day = 1; day <= 366; day += 9) {
            double before = 0.0;
            for (double line = -30.0; line < 15.0; line += 0.5) {
                const double chance =
                    model.chance_on(DayOfYear::wrapped(day), Celsius::from_degrees(line)).fraction();
                EXPECT_GE(chance, before - 1e-12) << factor << ' ' << day << ' ' << line;
                before = chance;
            }
        }
    }
}

TEST(CountedNights, TellTheSpreadWhereTheFiguresLackIt)
{
    const NightModel known = model_of(figures_of_a_cold_valley(5.0));
    const MonthlyFigures bare = figures_of_a_cold_valley(std::nullopt);
    const NightModel counted = model_of(bare, counts_of(known));
    EXPECT_EQ(model_of(bare).basis(), SpreadBasis::None);
    EXPECT_EQ(counted.basis(), SpreadBasis::Lows);
    for (int day = 15; day <= 366; day += 30) {
        const auto at = DayOfYear::wrapped(day);
        // The model's nights of deep winter spread a little wider than their normal distribution.
        EXPECT_NEAR(counted.spread(at).kelvins(), known.spread(at).kelvins(), 0.6) << day;
    }
}

TEST(CountedNights, ThatPartNoMonthLeaveTheModelAsItWas)
{
    const MonthlyFigures bare = figures_of_a_cold_valley(std::nullopt);
    const std::vector<CountedNights> none = {{Celsius::from_degrees(-60.0), {}}};
    const NightModel counted = model_of(bare, none);
    EXPECT_EQ(counted.basis(), SpreadBasis::None);
    EXPECT_EQ(counted.spread(DayOfYear::wrapped(20)).kelvins(),
              model_of(bare).spread(DayOfYear::wrapped(20)).kelvins());
}

} // namespace
} // namespace lathhouse::climate
