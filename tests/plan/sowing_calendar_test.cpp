#include "core/plan/sowing_calendar.h"

#include "tests/plan/invented_climate.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::plan {
namespace {

constexpr calendar::Date kMarch{2027, 3, 1};

std::vector<SowingNow> sowings_from(calendar::Date today, int days)
{
    const auto place = place_of(kInland);
    return sowing_calendar(place, SowingClimate{place, today}, {}, today, days);
}

TEST(SowingCalendar, HoldsWhatBeginsWithinTheDaysAndNothingElse)
{
    const auto week = sowings_from(kMarch, 7);
    const auto quarter = sowings_from(kMarch, 90);
    ASSERT_FALSE(week.empty());
    EXPECT_GT(quarter.size(), week.size());
    for (const auto& sowing : quarter) {
        EXPECT_LE(sowing.sow.from, kMarch + calendar::Days{89});
        EXPECT_GE(sowing.sow.to, kMarch) << "what is over is no longer told";
        const bool this_week = sowing.sow.from <= kMarch + calendar::Days{6};
        const bool told = std::ranges::any_of(
            week, [&](const auto& of) { return of.kind == sowing.kind && of.method == sowing.method; });
        EXPECT_EQ(told, this_week) << sowing.kind->name();
    }
}

TEST(SowingCalendar, TellsBothWaysAsThePlanOfTheCropDoes)
{
    const auto place = place_of(kInland);
    const SowingClimate climate{place, kMarch};
    bool indoors = false;
    bool outdoors = false;
    for (const auto& sowing : sowings_from(kMarch, 60)) {
        const auto plan = plan_sowing(*sowing.kind, place, climate, {});
        ASSERT_TRUE(plan.season) << sowing.kind->name();
        const bool inside = sowing.method == SowingMethod::Indoors;
        const auto& dates = inside ? plan.season->sow_indoors : plan.season->sow_outdoors;
        ASSERT_TRUE(dates) << sowing.kind->name();
        EXPECT_EQ(dates->from, sowing.sow.from) << sowing.kind->name();
        EXPECT_EQ(dates->to, sowing.sow.to) << sowing.kind->name();
        indoors |= inside;
        outdoors |= !inside;
    }
    EXPECT_TRUE(indoors && outdoors);
}

} // namespace
} // namespace lathhouse::plan
