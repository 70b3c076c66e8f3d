#include "core/plan/hardening.h"

#include "tests/plan/sample_household.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

const Date kMay{2027, 5, 20};
const Date kLongBefore{2027, 3, 1};

class Hardening : public testing::Test {
protected:
    home::Household home_ =
        household({indoors(1, 9, 1.0, 2.0), balcony(2, 9), indoors(3, 2)}, {plant(1, 10.0, 4.0, 0.0)});
    climate::PlaceClimate place_ = climate_of(5.0, 10.0);
    home::SpotClimate climate_{home_, place_};
    Ladder out(Date planned = kMay, Date today = kLongBefore) const
    {
        return ladder_out(home_.plants[0], home_.spots[0], home_.spots[1], climate_, planned, today);
    }
    Ladder in(bool apart = false) const
    {
        return ladder_in(home_.plants[0], home_.spots[1], home_.spots[0], climate_, Date{2027, 9, 25}, apart);
    }
    home::NightLog forecast(std::vector<std::pair<Date, double>> evenings) const
    {
        home::NightLog log;
        for (const auto& [evening, low] : evenings) {
            log.forecasts.push_back({kLongBefore, evening + Days{1}, Celsius::from_degrees(low), {}, {},
                                     calendar::start_of_day_utc(kLongBefore)});
        }
        return log;
    }
};

TEST_F(Hardening, TakesSevenToFourteenDaysByTheStep)
{
    // Extension advice gives the range; the ends are reached by no step and by a great one.
    EXPECT_EQ(days_of_hardening(0.0, KelvinDelta::from_kelvins(0.0)), 7);
    EXPECT_EQ(days_of_hardening(-2.0, KelvinDelta::from_kelvins(-5.0)), 7);
    EXPECT_EQ(days_of_hardening(3.0, KelvinDelta::from_kelvins(9.0)), 13);
    EXPECT_EQ(days_of_hardening(6.0, KelvinDelta::from_kelvins(15.0)), 14);
}

TEST_F(Hardening, GrowsFromAnHourInFullShadeToTheNight)
{
    const auto ladder = out();
    ASSERT_GE(ladder.items.size(), 8u);
    EXPECT_EQ(ladder.items.front().hours, 1);
    EXPECT_EQ(ladder.items.front().shade, Shade::Full);
    EXPECT_EQ(ladder.items.back().kind, LadderItemKind::FirstNightOut);
    EXPECT_EQ(ladder.items.back().date, kMay);
    EXPECT_EQ(ladder.items[ladder.items.size() - 2].shade, Shade::None);
    for (std::size_t i = 1; i < ladder.items.size(); ++i) {
        EXPECT_EQ(ladder.items[i].date, ladder.items[i - 1].date + Days{1});
        EXPECT_LE(ladder.items[i - 1].shade, ladder.items[i].shade);
        if (ladder.items[i].kind == LadderItemKind::OutByDay) {
            EXPECT_GE(ladder.items[i].hours, ladder.items[i - 1].hours);
        }
    }
}

TEST_F(Hardening, IsNotCutShortWhereThePlanIsSoonerThanItCanBe)
{
    const auto ladder = out(kMay, kMay);
    EXPECT_EQ(ladder.items.front().date, kMay);
    EXPECT_EQ(ladder.items.size(), out().items.size());
    EXPECT_GT(ladder.reached, ladder.planned);
}

TEST_F(Hardening, AColdSpellInTheForecastPausesIt)
{
    const auto ladder = out();
    const auto& plant = home_.plants[0];
    const Date first = ladder.items.front().date;
    // Floor 10 C; the usual range is 10 K, so a low of 2 at a spot 1.5 K warmer makes a day of 9.5.
    const auto held = held_up(ladder, plant, home_.spots[1], climate_, forecast({{first, 2.0}, {first + Days{1}, 2.0}}));
    EXPECT_EQ(held.paused.size(), 2u);
    EXPECT_EQ(held.items.front().date, first + Days{2});
    EXPECT_EQ(held.reached, ladder.reached + Days{2});
    const auto mild = held_up(ladder, plant, home_.spots[1], climate_, forecast({{first, 8.0}}));
    EXPECT_EQ(mild.items, ladder.items);
}

TEST_F(Hardening, TheFirstNightWaitsForTwoSafeNights)
{
    const auto ladder = out();
    const auto held = held_up(ladder, home_.plants[0], home_.spots[1], climate_,
                              forecast({{kMay, 12.0}, {kMay + Days{1}, 7.0}, {kMay + Days{2}, 12.0}}));
    EXPECT_EQ(held.reached, kMay + Days{2});
    EXPECT_EQ(held.items.size(), ladder.items.size());
}

TEST_F(Hardening, TheFloorIsThePlantsOwn)
{
    // Basil and lettuce: the one not below its safe night of 13 C, the other down to its own 1 C.
    const auto lines = [](double safe, double damage, double lethal) {
        return plants::ColdLines{Celsius::from_degrees(safe), Celsius::from_degrees(damage),
                                 Celsius::from_degrees(lethal)};
    };
    EXPECT_DOUBLE_EQ(hardening_floor(lines(13.0, 7.0, 0.0)).degrees(), 13.0);
    EXPECT_DOUBLE_EQ(hardening_floor(lines(4.0, 0.0, -2.0)).degrees(), 7.2);
    EXPECT_DOUBLE_EQ(hardening_floor(lines(1.0, -4.0, -7.0)).degrees(), 1.0);
}

TEST_F(Hardening, ComingInKeepsApartForTwoWeeksWithTwoInspectionsAStageApart)
{
    const auto ladder = in();
    const auto carry = ladder.planned;
    std::vector<Date> after;
    for (const auto& item : ladder.items) {
        if (item.kind == LadderItemKind::Inspect && item.date > carry) {
            after.push_back(item.date);
        }
        if (item.kind == LadderItemKind::KeepApart) {
            EXPECT_EQ(calendar::days_between(item.date, item.until) + 1, 14);
        }
    }
    ASSERT_EQ(after.size(), 2u);
    EXPECT_GE(calendar::days_between(after[0], after[1]), 7);
    EXPECT_GE(calendar::days_between(carry, after[1]), 14);
    EXPECT_TRUE(ladder.no_spot_apart);
    EXPECT_FALSE(in(true).no_spot_apart);
    EXPECT_TRUE(std::ranges::is_sorted(std::vector{ladder.items[0].date, ladder.items[1].date, ladder.items[2].date}));
}

TEST_F(Hardening, SteppingDownTakesFourToEightWeeksByTheDropOfLight)
{
    // K-State Extension: four to eight weeks.
    EXPECT_EQ(weeks_of_stepping_down(-0.5), 0);
    EXPECT_EQ(weeks_of_stepping_down(-1.0), 4);
    EXPECT_EQ(weeks_of_stepping_down(-2.0), 6);
    EXPECT_EQ(weeks_of_stepping_down(-5.0), 8);
}

TEST_F(Hardening, EveryCarryThroughTheDoorOfAPlanHasItsLadder)
{
    const ColdChances chances{place_.nights()};
    const auto plan = plan_year(home_, place_, chances, Date{2027, 1, 10}, Probability::literal(0.1));
    int carries = 0;
    for (std::size_t i = 1; i < plan.plants[0].stays.size(); ++i) {
        carries += home::is_outdoors(home_.spot(plan.plants[0].stays[i].spot)->kind) !=
                   home::is_outdoors(home_.spot(plan.plants[0].stays[i - 1].spot)->kind);
    }
    ASSERT_GT(carries, 0);
    EXPECT_EQ(ladders_of(home_, climate_, plan, Date{2027, 1, 10}).size(), static_cast<std::size_t>(carries));
}

} // namespace
} // namespace lathhouse::plan
