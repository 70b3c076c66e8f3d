#include "core/journal/demonstration_folder.h"

#include "core/base/sha256.h"
#include "core/home/seed_lot.h"
#include "core/journal/household_check.h"
#include "core/journal/photo_book.h"
#include "tests/journal/temporary_folder.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <csignal>
#include <fstream>

#include <sys/resource.h>

namespace lathhouse::journal {
namespace {

namespace fs = std::filesystem;
const calendar::Date kDrawnOn{2026, 11, 25};

class DemonstrationFolder : public WithFolder {
protected:
    fs::path home() const { return folder_ / "home"; }
};

TEST_F(DemonstrationFolder, IsAWholeHouseholdWithAYearBehindIt)
{
    auto store = create_demonstration(home(), {.today = kDrawnOn, .years = 1}, 6);
    ASSERT_TRUE(store) << store.error().message;
    const auto household = store->load();
    ASSERT_TRUE(household);
    EXPECT_TRUE(household->demonstration);
    EXPECT_FALSE(store->events()->empty());
    EXPECT_FALSE(store->measurements()->empty());
    const auto book = store->seeds().value();
    EXPECT_FALSE(book.lots.empty());
    EXPECT_FALSE(book.trays.empty());
    EXPECT_FALSE(book.counts.empty());
    EXPECT_TRUE(std::ranges::any_of(book.potted, [](const auto& of) { return !of.plants.empty(); }));
    EXPECT_FALSE(store->gone_plants()->empty());
    const auto photos = PhotoBook{*store}.photos();
    ASSERT_TRUE(photos);
    EXPECT_EQ(photos->size(), 6U);
    for (const auto& photo : *photos) {
        const auto file = PhotoBook{*store}.file_of(photo);
        EXPECT_EQ(sha256_of_file(file).value(), photo.sha256);
        EXPECT_EQ(fs::file_size(file), static_cast<std::uintmax_t>(photo.bytes));
        EXPECT_EQ(photo.taken_from, home::TakenFrom::Exif);
        EXPECT_LE(photo.date(), kDrawnOn);
    }
    const auto report = check_household(home());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->findings.empty());
    EXPECT_EQ(report->photos, 6U);
}

TEST_F(DemonstrationFolder, LeavesWhatIsThereAlone)
{
    fs::create_directory(home());
    std::ofstream{home() / "letter.txt"} << "mine";
    EXPECT_EQ(create_demonstration(home(), {.today = kDrawnOn, .years = 0}).error().code, ErrorCode::Unwritable);
    EXPECT_EQ(fs::file_size(home() / "letter.txt"), 4U);
    EXPECT_EQ(create_demonstration(folder_ / "other", {.today = kDrawnOn, .years = 21}).error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(fs::exists(folder_ / "other"));
}

TEST_F(DemonstrationFolder, ADiskThatFillsMeanwhileLeavesNothing)
{
    fs::create_directory(home()); // An empty one that was there stays, and is empty.
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    int failed = 0;
    for (const rlim_t kilobytes : {60U, 330U, 400U, 500U}) {
        for (const auto& folder : {home(), folder_ / "new"}) {
            rlimit small = before;
            small.rlim_cur = kilobytes * 1024;
            ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
            const auto store = create_demonstration(folder, {.today = kDrawnOn, .years = 1}, 0);
            ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
            if (store) { // There was room.
                fs::remove_all(folder);
                fs::create_directory(home());
                continue;
            }
            ++failed;
            EXPECT_EQ(store.error().code, ErrorCode::Unwritable) << store.error().message;
            EXPECT_FALSE(fs::exists(folder_ / "new"));
            EXPECT_TRUE(fs::is_empty(home()));
        }
    }
    EXPECT_GT(failed, 0);
}

} // namespace
} // namespace lathhouse::journal
