#include "core/climate/line_dates.h"

#include "tests/climate/counted_station.h"
#include "tests/climate/plain_place.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

#include <array>

namespace lathhouse::climate {
namespace {

constexpr Celsius kColdLine = Celsius::from_degrees(0.0);
constexpr calendar::Date kMayDay{2027, 5, 1};

PlaceClimate inland_place()
{
    return plain_place(45.0, 200.0, inland_figures());
}

TEST(LineDates, AreTheModelsWhereNothingWasCounted)
{
    const auto place = inland_place();
    const std::array lines{kColdLine, Celsius::from_degrees(5.0)};
    const std::array further{7.0};
    const auto dates = dates_of_lines(place, lines, further);
    ASSERT_EQ(dates.lines.size(), 2U);
    EXPECT_FALSE(dates.counted);
    EXPECT_FALSE(dates.moved);
    EXPECT_GT(dates.error_days, 0.0);
    EXPECT_EQ(dates.lines[0].last.dates, place.nights().dates(kColdLine, further).last.dates);
    EXPECT_TRUE(dates.lines[0].last.dates.contains(7.0)) << "the chance that was asked for";
    // A warmer line is crossed longer into spring.
    EXPECT_GT(dates.lines[1].last.dates.at(50.0)->place(), dates.lines[0].last.dates.at(50.0)->place());
}

TEST(LineDates, AreTheStationsWhereOneStandsAtThePlace)
{
    const auto counted = counted_dates(inland_figures(), kColdLine, 6, 9);
    const std::vector<Station> stations{station_with({counted})};
    const auto place = climate_among(stations, kHere, kHeight).value();
    ASSERT_TRUE(station_stands_at(place));
    const std::array line{kColdLine};
    const auto dates = dates_of_lines(place, line);
    EXPECT_TRUE(dates.counted);
    EXPECT_FALSE(dates.moved);
    EXPECT_EQ(dates.lines[0].last.dates.at(50.0), counted.last.dates.at(50.0));
    // A chance of one's own, a line that was not counted, or the model alone: then the model answers.
    const std::array further{7.0};
    EXPECT_FALSE(dates_of_lines(place, line, further).counted);
    const std::array another{kColdLine, Celsius::from_degrees(7.5)};
    EXPECT_FALSE(dates_of_lines(place, another).counted);
    const auto left_out = dates_of_lines(place, line, {}, CountedDates::AreLeftOut);
    EXPECT_FALSE(left_out.counted);
    EXPECT_FALSE(left_out.moved);
    EXPECT_NE(left_out.lines[0].last.dates.at(50.0), counted.last.dates.at(50.0));
}

TEST(LineDates, AtASpotAreThoseOfTheOpenAirsLine)
{
    const auto place = inland_place();
    const std::array open_air{Celsius::from_degrees(-2.0)};
    const auto there = dates_at_spot(place, kColdLine, {.mean = KelvinDelta::from_kelvins(2.0)});
    ASSERT_EQ(there.lines.size(), 1U);
    EXPECT_EQ(there.lines[0].last.dates, dates_of_lines(place, open_air).lines[0].last.dates);
    EXPECT_FALSE(there.counted);
    EXPECT_FALSE(there.moved);
    EXPECT_NEAR(there.error_days, dates_of_lines(place, open_air).error_days, 1e-12);
}

TEST(NightsBetween, OfOneNightIsItsOwnChance)
{
    const auto nights = PlaceNights::of(inland_place());
    const auto one = nights_between(nights, kMayDay, kMayDay, kColdLine);
    ASSERT_TRUE(one);
    EXPECT_EQ(one->nights, 1);
    const double chance = nights.chance_on(calendar::DayOfYear::of(kMayDay), kColdLine, {}).fraction();
    EXPECT_NEAR(one->any.fraction(), chance, 1e-3) << "of runs of nights it is known on a grid";
    EXPECT_NEAR(one->expected, chance, 1e-12);
}

TEST(NightsBetween, AddUpAndTellWhatLiesAround)
{
    const auto nights = PlaceNights::of(inland_place());
    const auto may = nights_between(nights, kMayDay, kMayDay + calendar::Days{30}, kColdLine);
    ASSERT_TRUE(may);
    EXPECT_EQ(may->nights, 31);
    double expected = 0.0;
    for (int day = 0; day < 31; ++day) {
        expected += nights_between(nights, kMayDay + calendar::Days{day}, kMayDay + calendar::Days{day}, kColdLine)->expected;
    }
    EXPECT_NEAR(may->expected, expected, 1e-9);
    EXPECT_LE(may->any.fraction(), may->expected);
    ASSERT_TRUE(may->before && may->after);
    EXPECT_GT(may->before->fraction(), 0.99) << "a winter of that place";
    EXPECT_LT(may->after->fraction(), 0.05);
    // On the day after the turn no night lies before.
    const auto first = nights_between(nights, calendar::Date{2027, 8, 1}, calendar::Date{2027, 8, 31}, kColdLine);
    ASSERT_TRUE(first && first->before);
    EXPECT_EQ(first->before->fraction(), 0.0);
    EXPECT_GT(first->after->fraction(), 0.99);
    // A warmer spot has fewer.
    const auto warmer = nights_between(nights, kMayDay, kMayDay + calendar::Days{30}, kColdLine,
                                       {.mean = KelvinDelta::from_kelvins(2.0)});
    EXPECT_LT(warmer->expected, may->expected);
}

TEST(NightsBetween, AreInOrderAndWithinAYear)
{
    const auto nights = PlaceNights::of(inland_place());
    for (const int days : {-1, 367, 5000}) {
        const auto refused = nights_between(nights, kMayDay, kMayDay + calendar::Days{days}, kColdLine);
        ASSERT_FALSE(refused) << days;
        EXPECT_EQ(refused.error().code, ErrorCode::WrongUsage);
    }
    EXPECT_TRUE(nights_between(nights, kMayDay, kMayDay + calendar::Days{366}, kColdLine));
}

TEST(NightsBetween, WithoutAColdSeasonHaveNoBeforeAndAfter)
{
    auto figures = inland_figures();
    figures.low = in_every_month(Celsius::from_degrees(22.0));
    figures.high = in_every_month(Celsius::from_degrees(30.0));
    const auto nights = PlaceNights::of(plain_place(1.0, 20.0, figures));
    const auto may = nights_between(nights, kMayDay, kMayDay + calendar::Days{30}, Celsius::from_degrees(20.0));
    ASSERT_TRUE(may);
    EXPECT_FALSE(may->before);
    EXPECT_FALSE(may->after);
    EXPECT_GT(may->expected, 0.0);
}

} // namespace
} // namespace lathhouse::climate
