#include "app/models/moving_stays.h"

#include <gtest/gtest.h>

namespace lathhouse::models {
namespace {

YearStay stay(std::size_t spot, int first, int last)
{
    return {spot, first, last, 0, "", std::nullopt, std::nullopt};
}

/// Every day once, from 0 to 364.
void expect_whole_year(const std::vector<YearStay>& stays)
{
    int next = 0;
    for (const YearStay& stay : stays) {
        EXPECT_EQ(stay.first, next);
        EXPECT_GE(stay.last, stay.first);
        next = stay.last + 1;
    }
    EXPECT_EQ(next, 365);
}

const std::vector<YearStay> kEarly{stay(2, 0, 49), stay(4, 50, 199), stay(2, 200, 364)};
const std::vector<YearStay> kLate{stay(2, 0, 69), stay(4, 70, 189), stay(2, 190, 364)};
const std::vector<YearStay> kInside{stay(2, 0, 364)};
const std::vector<YearStay> kElsewhere{stay(2, 0, 69), stay(5, 70, 189), stay(0, 190, 364)};

TEST(StaysBetween, EndsAreThePlans)
{
    EXPECT_TRUE(looks_the_same(stays_between(kEarly, kLate, 0.0), kEarly));
    EXPECT_TRUE(looks_the_same(stays_between(kEarly, kLate, 1.0), kLate));
    EXPECT_TRUE(looks_the_same(stays_between({}, kLate, 0.3), kLate));
    EXPECT_FALSE(looks_the_same(kEarly, kLate));
}

TEST(StaysBetween, HalfWayIsHalfWay)
{
    const auto moving = stays_between(kEarly, kLate, 0.5);
    ASSERT_EQ(moving.size(), 3U);
    EXPECT_EQ(moving[1].first, 60);
    EXPECT_EQ(moving[1].last, 194);
}

TEST(StaysBetween, YearIsCoveredAllTheWay)
{
    for (const auto& from : {kEarly, kLate, kInside, kElsewhere}) {
        for (const auto& to : {kEarly, kLate, kInside, kElsewhere}) {
            for (int step = 0; step <= 20; ++step) {
                expect_whole_year(stays_between(from, to, step / 20.0));
            }
        }
    }
}

TEST(StaysBetween, StayThatOnlyTheNewPlanHasOpens)
{
    int before = 0;
    for (int step = 1; step < 20; ++step) {
        int days = 0;
        for (const YearStay& part : stays_between(kInside, kEarly, step / 20.0)) {
            days += part.spot == 4 ? part.last - part.first + 1 : 0;
        }
        EXPECT_GE(days, before);
        before = days;
    }
    EXPECT_GT(before, 120);
    EXPECT_LT(before, 150);
}

} // namespace
} // namespace lathhouse::models
