#include "core/home/demonstration.h"
#include "core/journal/change_watch.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

#include <gtest/gtest.h>

namespace lathhouse::journal {
namespace {

class ChangeWatchTest : public WithFolder {};

TEST_F(ChangeWatchTest, SeesWhatOthersWriteAndNotWhatTheyRead)
{
    const auto folder = folder_ / "home";
    const calendar::Date today{2026, 3, 14};
    const auto shown = home::demonstration({.today = today});
    ASSERT_TRUE(shown);
    auto store = HouseholdStore::create(folder, shown->household);
    ASSERT_TRUE(store);
    auto watch = ChangeWatch::open(folder);
    ASSERT_TRUE(watch) << watch.error().message;
    EXPECT_FALSE(watch->changed());
    ASSERT_TRUE(store->load());
    ASSERT_TRUE(HouseholdStore::open(folder));
    EXPECT_FALSE(watch->changed());
    const home::Event watered{1, home::EventKind::Watered, std::nullopt, today, calendar::start_of_day_utc(today), ""};
    ASSERT_TRUE(store->record(std::span<const home::Event>{&watered, 1}));
    EXPECT_TRUE(watch->changed());
    EXPECT_FALSE(watch->changed());
    auto other = HouseholdStore::open(folder);
    ASSERT_TRUE(other);
    ASSERT_TRUE(other->record(std::span<const home::Event>{&watered, 1}));
    EXPECT_TRUE(watch->changed());
}

TEST_F(ChangeWatchTest, AFolderWithoutAHouseholdIsAnError)
{
    EXPECT_FALSE(ChangeWatch::open(folder_ / "nowhere"));
}

} // namespace
} // namespace lathhouse::journal
