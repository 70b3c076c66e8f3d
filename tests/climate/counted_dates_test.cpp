#include "core/climate/frost_dates.h"
#include "tests/climate/short_names.h"

#include <gtest/gtest.h>

namespace lathhouse::climate {
namespace {

using calendar::DayOfYear;

const SeasonTurn kTurn{DayOfYear::from_month_day(7, 31).value()};

/// As the station table keeps a line: 27 seasons and three chances.
ThresholdDates kept()
{
    const auto none = Probability::literal(0.0);
    return {Celsius::from_degrees(0.0),
            ThresholdState::Ordinary,
            90.0,
            {27, none, {{10.0, day(5, 20)}, {50.0, day(5, 6)}, {90.0, day(4, 22)}}, {}, {}},
            {27, none, {{10.0, day(9, 25)}, {50.0, day(10, 9)}, {90.0, day(10, 23)}}, {}, {}},
            {{10.0, 176}, {50.0, 156}, {90.0, 136}}};
}

TEST(CountedDates, ElementsFollowTheRule)
{
    // 27 seasons: 27 - floor(0.1 x 27) and ceil(0.1 x 27).
    EXPECT_EQ(element_of_last(10.0, 27), 25);
    EXPECT_EQ(element_of_first(10.0, 27), 3);
    // 0.3 x 10 is exactly 3, whatever binary fractions say.
    EXPECT_EQ(element_of_last(30.0, 10), 7);
    EXPECT_EQ(element_of_first(30.0, 10), 3);
}

TEST(CountedDates, KeptOnesStayAndTheOthersLieBetween)
{
    ThresholdDates dates = kept();
    complete_counted(dates, kTurn);
    EXPECT_EQ(dates.last.dates.size(), 9U);
    EXPECT_EQ(dates.last.dates.at(50.0), day(5, 6));
    EXPECT_EQ(dates.first.dates.at(10.0), day(9, 25));
    for (double percent = 20.0; percent <= 90.0; percent += 10.0) {
        EXPECT_LT(*dates.last.dates.at(percent), *dates.last.dates.at(percent - 10.0)) << percent;
        EXPECT_GT(*dates.first.dates.at(percent), *dates.first.dates.at(percent - 10.0)) << percent;
        EXPECT_LT(*dates.free_days.at(percent), *dates.free_days.at(percent - 10.0)) << percent;
    }
    // On the normal scale 30 % lies 0.5244 standard deviations under the middle, 10 % 1.2816: 14 x 0.4092
    // days.
    EXPECT_EQ(dates.first.dates.at(30.0), day(10, 3));
}

TEST(CountedDates, IntervalOfTheMiddleIsReadBetweenTheKeptDates)
{
    ThresholdDates dates = kept();
    complete_counted(dates, kTurn);
    // Elements 9 and 19 of 27: P(B < 9) = 0.026, P(B < 19) = 0.974; 33 and 70 percent.
    const DateInterval& middle = dates.first.intervals.at(50.0);
    ASSERT_TRUE(middle.from && middle.to);
    EXPECT_LT(*middle.from, day(10, 9));
    EXPECT_GT(*middle.from, day(9, 30));
    EXPECT_GT(*middle.to, day(10, 9));
    EXPECT_LT(*middle.to, day(10, 19));
    EXPECT_GE(middle.coverage.fraction(), 0.9);
}

TEST(CountedDates, NothingLimitsTheOuterChanceOutwards)
{
    ThresholdDates dates = kept();
    complete_counted(dates, kTurn);
    EXPECT_EQ(dates.first.intervals.at(10.0).from, std::nullopt);
    EXPECT_TRUE(dates.first.intervals.at(10.0).to.has_value());
    // `last` for 10 percent is the late end of its seasons.
    EXPECT_TRUE(dates.last.intervals.at(10.0).from.has_value());
    EXPECT_EQ(dates.last.intervals.at(10.0).to, std::nullopt);
}

TEST(CountedDates, ADateThatDoesNotExistLendsNothing)
{
    ThresholdDates dates = kept();
    dates.first.dates[90.0] = std::nullopt;
    complete_counted(dates, kTurn);
    EXPECT_EQ(dates.first.dates.at(60.0), std::nullopt);
    EXPECT_TRUE(dates.first.dates.at(40.0).has_value());
}

TEST(CountedDates, TheModelsOwnDatesAreLeftAlone)
{
    ThresholdDates dates = kept();
    dates.last.years = std::nullopt;
    complete_counted(dates, kTurn);
    EXPECT_EQ(dates.last.dates.size(), 3U);
    EXPECT_TRUE(dates.last.intervals.empty());
}

} // namespace
} // namespace lathhouse::climate
