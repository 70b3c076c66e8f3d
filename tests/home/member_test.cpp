#include "core/home/member.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

const calendar::Date kDay{2027, 3, 1};

Event told(const Member& member, int id, calendar::Date on = kDay)
{
    auto event = event_of_member(member, on, calendar::start_of_day_utc(on), "noted");
    event.id = id;
    return event;
}

TEST(MemberKindWords, ReadBackAsTheSameKind)
{
    for (const auto kind : kMemberKinds) {
        EXPECT_EQ(member_kind_of(to_string(kind)), kind);
    }
    EXPECT_FALSE(member_kind_of("Cat"));
    EXPECT_FALSE(member_kind_of(""));
}

TEST(Members, AreWhatWasSaidOfThemLast)
{
    const Member cat{1, MemberKind::Cat, "Mimi", {2, 5}};
    const Member child{2, MemberKind::Child, "", {}};
    Member wider = cat;
    wider.reaches = {2, 5, 7};
    // The last that was entered counts, whatever date it was said for.
    const std::vector<Event> events{told(wider, 3, kDay - calendar::Days{30}), told(cat, 1), told(child, 2)};
    EXPECT_EQ(members_of(events), (std::vector<Member>{wider, child}));
    EXPECT_EQ(next_member_id(events), 3);
}

TEST(Members, WhoWasTakenOffTheListIsNotThereAndKeepsItsNumber)
{
    const Member cat{1, MemberKind::Cat, "Mimi", {2}};
    std::vector<Event> events{told(cat, 1)};
    events.push_back(event_of_parting(cat, kDay, calendar::start_of_day_utc(kDay), "moved out"));
    events.back().id = 2;
    EXPECT_TRUE(members_of(events).empty());
    EXPECT_EQ(next_member_id(events), 2);
    events.push_back(told(cat, 3));
    EXPECT_EQ(members_of(events).size(), 1U);
}

TEST(Members, OtherEventsAndTornDetailsArePassedOver)
{
    auto note = event_of_member({1, MemberKind::Dog, "", {1}}, kDay, calendar::start_of_day_utc(kDay), "");
    auto of_plant = note;
    of_plant.plant = 4;
    auto no_number = note;
    no_number.details["member"] = "the dog";
    auto no_kind = note;
    no_kind.details["member_kind"] = "dragon";
    auto watered = note;
    watered.kind = EventKind::Watered;
    const std::vector<Event> events{of_plant, no_number, no_kind, watered};
    EXPECT_TRUE(members_of(events).empty());
    auto torn = note;
    torn.details["reaches"] = "3, x,,-2, 1,3";
    EXPECT_EQ(members_of(std::vector{torn}).front().reaches, (std::vector<SpotId>{1, 3}));
}

TEST(Members, PutTheirSpotsInReachAndTakeNoMarkAway)
{
    std::vector<Spot> spots;
    for (const int id : {1, 2, 3}) {
        spots.push_back({.id = id,
                         .name = std::to_string(id),
                         .short_name = "",
                         .kind = SpotKind::Indoors,
                         .offset = {},
                         .winter = {},
                         .summer = {},
                         .light_in_summer = DailyLight::from_moles(1.0),
                         .light_in_winter = DailyLight::from_moles(1.0),
                         .capacity = 1,
                         .in_reach = id == 3,
                         .walking_order = id});
    }
    put_in_reach(spots, std::vector<Member>{{1, MemberKind::Cat, "", {2, 9}}});
    EXPECT_FALSE(spots[0].in_reach);
    EXPECT_TRUE(spots[1].in_reach);
    EXPECT_TRUE(spots[2].in_reach);
}

} // namespace
} // namespace lathhouse::home
