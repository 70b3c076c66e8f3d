#include "core/home/demonstration.h"
#include "core/journal/change_watch.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

#include <gtest/gtest.h>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

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

/// Whether another process finds a lock of this one on the file; such locks are not seen by whoever holds them.
bool is_locked_for_others(const std::filesystem::path& file)
{
    const pid_t other = fork();
    if (other == 0) {
        const int handle = open(file.c_str(), O_RDWR | O_CLOEXEC);
        struct flock lock = {};
        lock.l_type = F_WRLCK;
        lock.l_whence = SEEK_SET;
        const bool asked = handle >= 0 && fcntl(handle, F_GETLK, &lock) == 0;
        _exit(asked && lock.l_type != F_UNLCK ? 1 : 0);
    }
    int status = 0;
    return waitpid(other, &status, 0) == other && WIFEXITED(status) && WEXITSTATUS(status) == 1;
}

TEST_F(ChangeWatchTest, OpeningTheHouseholdOnceMoreLeavesTheLocksOfThoseWhoHaveItOpen)
{
    const auto folder = folder_ / "home";
    const auto shown = home::demonstration({.today = calendar::Date{2026, 3, 14}});
    ASSERT_TRUE(shown);
    ASSERT_TRUE(HouseholdStore::create(folder, shown->household));
    const auto watch = ChangeWatch::open(folder);
    ASSERT_TRUE(watch) << watch.error().message;
    ASSERT_TRUE(is_locked_for_others(folder / "household.sqlite3"));
    ASSERT_TRUE(HouseholdStore::open(folder));
    EXPECT_TRUE(is_locked_for_others(folder / "household.sqlite3"));
    ASSERT_TRUE(HouseholdStore::time_zone_in(folder));
    EXPECT_TRUE(is_locked_for_others(folder / "household.sqlite3"));
}

TEST_F(ChangeWatchTest, AFileThatWasReplacedCountsAsChangedEachTime)
{
    const auto folder = folder_ / "home";
    const auto shown = home::demonstration({.today = calendar::Date{2026, 3, 14}});
    ASSERT_TRUE(shown);
    ASSERT_TRUE(HouseholdStore::create(folder, shown->household));
    auto watch = ChangeWatch::open(folder);
    ASSERT_TRUE(watch) << watch.error().message;
    EXPECT_FALSE(watch->changed());
    std::filesystem::copy_file(folder / "household.sqlite3", folder / "other.sqlite3");
    std::filesystem::rename(folder / "other.sqlite3", folder / "household.sqlite3");
    EXPECT_TRUE(watch->changed());
    EXPECT_TRUE(watch->changed());
}

TEST_F(ChangeWatchTest, AFolderWithoutAHouseholdIsAnError)
{
    EXPECT_FALSE(ChangeWatch::open(folder_ / "nowhere"));
}

} // namespace
} // namespace lathhouse::journal
