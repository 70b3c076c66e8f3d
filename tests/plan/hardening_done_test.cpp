#include "core/plan/hardening_done.h"

#include "core/plan/round_parts.h"
#include "tests/plan/sample_household.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

const Date kFirstDay{2027, 5, 10};

class HardeningDone : public testing::Test {
protected:
    home::Household home_ = household({indoors(1, 9, 1.0, 2.0), balcony(2, 9)}, {plant(1, 10.0, 4.0, 0.0)});
    climate::PlaceClimate place_ = climate_of(5.0, 10.0);
    home::SpotClimate climate_{home_, place_};
    std::vector<home::Event> events_;

    /// What ticking the day's hour outdoors writes.
    void tick(Date date, home::PlantId plant = 1)
    {
        const LadderStep step{{LadderItemKind::OutByDay, date, date, 1, Shade::Full}, 2};
        events_.push_back(done_event({step, PestState::Clean, plant, 1, date, date, 5,
                                      "out-by-day/" + std::to_string(plant) + "/" + calendar::to_text(date)},
                                     date, calendar::start_of_day_utc(date)));
    }
    /// The plan wants it out at once, whatever the day it is asked on.
    Ladder ladder_on(Date today) const
    {
        return with_days_hardened({ladder_out(home_.plants[0], home_.spots[0], home_.spots[1], climate_, today, today)},
                                  events_, today)
            .front();
    }
    static const LadderItem* item_on(const Ladder& ladder, Date date)
    {
        const auto there = std::ranges::find(ladder.items, date, &LadderItem::date);
        return there == ladder.items.end() ? nullptr : &*there;
    }
};

TEST_F(HardeningDone, EachDayTickedIsAStepNearerToTheNightOut)
{
    const auto first = ladder_on(kFirstDay);
    int hours = 0;
    Date today = kFirstDay;
    for (; item_on(ladder_on(today), today) != nullptr; today += Days{1}) {
        const auto ladder = ladder_on(today);
        EXPECT_LE(ladder.reached, first.reached) << "it does not run away";
        const auto item = *item_on(ladder, today);
        if (item.kind == LadderItemKind::FirstNightOut) {
            break;
        }
        EXPECT_GE(item.hours, hours);
        hours = item.hours;
        tick(today);
        ASSERT_LT(today, kFirstDay + Days{20});
    }
    EXPECT_EQ(hours, 10);
    ASSERT_NE(item_on(ladder_on(today), today), nullptr);
    EXPECT_EQ(item_on(ladder_on(today), today)->kind, LadderItemKind::FirstNightOut);
}

TEST_F(HardeningDone, ADayThatWasNotTickedIsDoneOnTheNext)
{
    tick(kFirstDay);
    tick(kFirstDay + Days{1});
    const Date today = kFirstDay + Days{4}; // Two days of rain.
    EXPECT_EQ(days_hardened(1, events_, today), 2);
    const auto ladder = ladder_on(today);
    EXPECT_EQ(item_on(ladder, today)->hours, ladder.items[2].hours);
}

TEST_F(HardeningDone, BeginsAnewAfterAWeekOrAMove)
{
    tick(kFirstDay);
    tick(kFirstDay + Days{1});
    EXPECT_EQ(days_hardened(1, events_, kFirstDay + Days{8}), 2);
    EXPECT_EQ(days_hardened(1, events_, kFirstDay + Days{9}), 0);
    EXPECT_EQ(days_hardened(2, events_, kFirstDay + Days{2}), 0) << "another plant";
    events_.push_back({1, home::EventKind::Moved, 1, kFirstDay + Days{2}, calendar::start_of_day_utc(kFirstDay), ""});
    EXPECT_EQ(days_hardened(1, events_, kFirstDay + Days{3}), 0);
}

TEST_F(HardeningDone, TodaysTickCountsFromTomorrow)
{
    tick(kFirstDay);
    EXPECT_EQ(days_hardened(1, events_, kFirstDay), 0) << "the row of today stays the one that was ticked";
    EXPECT_EQ(days_hardened(1, events_, kFirstDay + Days{1}), 1);
}

TEST_F(HardeningDone, APlanForLaterKeepsItsDateAndAWayInIsLeftAlone)
{
    tick(kFirstDay);
    const Date today = kFirstDay + Days{1};
    const Date planned = kFirstDay + Days{16};
    const auto ladders = with_days_hardened(
        {ladder_out(home_.plants[0], home_.spots[0], home_.spots[1], climate_, planned, today),
         ladder_in(home_.plants[0], home_.spots[1], home_.spots[0], climate_, Date{2027, 9, 25}, true)},
        events_, today);
    EXPECT_EQ(ladders[0].reached, planned);
    EXPECT_EQ(ladders[0].items.front().date, kFirstDay);
    EXPECT_EQ(ladders[0].items.back().date, planned);
    EXPECT_EQ(ladders[1].items,
              ladder_in(home_.plants[0], home_.spots[1], home_.spots[0], climate_, Date{2027, 9, 25}, true).items);
}

TEST_F(HardeningDone, AColdForecastHoldsUpWhatIsStillToCome)
{
    tick(kFirstDay);
    const Date today = kFirstDay + Days{1};
    home::NightLog log;
    for (const Date evening : {kFirstDay, today}) { // The first is behind.
        log.forecasts.push_back({kFirstDay, evening + Days{1}, Celsius::from_degrees(-8.0), {}, {},
                                 calendar::start_of_day_utc(kFirstDay)});
    }
    const auto ladder = ladder_on(today);
    const auto held = held_up_from(ladder, home_.plants[0], home_.spots[1], climate_, log, today);
    ASSERT_EQ(held.paused, std::vector{today});
    EXPECT_EQ(held.items.size(), ladder.items.size());
    EXPECT_EQ(held.items.front().date, kFirstDay);
    EXPECT_EQ(held.reached, ladder.reached + Days{1});
}

} // namespace
} // namespace lathhouse::plan
