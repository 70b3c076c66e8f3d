#include "core/home/demonstration.h"
#include "core/home/member.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::journal {
namespace {

class Members : public WithFolder {};

TEST_F(Members, PutSpotsInReachUntilTheyAreTakenBack)
{
    const auto today = calendar::make_date(2027, 3, 1).value();
    const auto now = calendar::start_of_day_utc(today);
    const auto shown = home::demonstration({.today = today}).value();
    auto store = HouseholdStore::create(folder_ / "home", shown.household);
    ASSERT_TRUE(store);
    const auto free = std::ranges::find(shown.household.spots, false, &home::Spot::in_reach);
    ASSERT_NE(free, shown.household.spots.end());
    const auto in_reach = [&] { return store->load()->spot(free->id)->in_reach; };
    EXPECT_FALSE(in_reach());
    const auto event = home::event_of_member({1, home::MemberKind::Cat, "Mimi", {free->id}}, today, now, "Mimi, cat");
    ASSERT_TRUE(store->record(std::span{&event, 1}));
    EXPECT_TRUE(in_reach());
    EXPECT_EQ(home::members_of(store->events().value()).size(), 1U);
    ASSERT_TRUE(store->turn_back(HouseholdStore::Direction::Undo, now));
    EXPECT_FALSE(in_reach());
    ASSERT_TRUE(store->turn_back(HouseholdStore::Direction::Redo, now));
    EXPECT_TRUE(in_reach());
    // After a restart as before it.
    const auto again = HouseholdStore::open(folder_ / "home");
    EXPECT_TRUE(again->load()->spot(free->id)->in_reach);
}

} // namespace
} // namespace lathhouse::journal
