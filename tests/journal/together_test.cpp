#include "core/home/demonstration.h"
#include "core/home/measurement.h"
#include "core/journal/folder_kind.h"
#include "core/journal/household_store.h"
#include "tests/journal/short_names.h"
#include "tests/journal/temporary_folder.h"

#include <map>
#include <vector>

#include <sys/wait.h>
#include <unistd.h>

namespace lathhouse::journal {
namespace {

constexpr int kPrograms = 4;
constexpr int kEntries = 60;

class Together : public WithFolder {
protected:
    static calendar::Instant now() { return calendar::start_of_day_utc(kDate); }
};

/// 0 where everything was written, each entry in a transaction of its own.
int write_entries(const std::filesystem::path& folder, int program)
{
    auto store = HouseholdStore::open(folder);
    if (!store) {
        return 2;
    }
    const auto entered = calendar::start_of_day_utc(kDate);
    for (int entry = 0; entry < kEntries; ++entry) {
        const home::Event event{program + 1, home::EventKind::Noted, {}, kDate, entered, std::to_string(entry)};
        const home::Measurement height{program + 1, home::MeasurementKind::Height,     kDate, {double(entry)},
                                       home::MeasurementMethod::Ruler,          entered};
        if (!store->record(std::span{&event, 1}) || !store->record(std::span{&height, 1}) || !store->load()) {
            return 3;
        }
    }
    return 0;
}

TEST_F(Together, SeveralProgramsWriteOneFolderWithoutLosingAnEntry)
{
    const auto folder = folder_ / "home";
    const auto invented = home::demonstration({.today = kDate}).value();
    ASSERT_TRUE(HouseholdStore::create(folder, invented.household));
    std::vector<pid_t> programs;
    for (int program = 0; program < kPrograms; ++program) {
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            _exit(write_entries(folder, program));
        }
        programs.push_back(child);
    }
    for (const auto child : programs) {
        int status = 0;
        waitpid(child, &status, 0);
        EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
    }
    const auto store = HouseholdStore::open(folder).value();
    for (int program = 0; program < kPrograms; ++program) {
        const auto events = store.events(program + 1).value();
        ASSERT_EQ(events.size(), std::size_t{kEntries});
        for (int entry = 0; entry < kEntries; ++entry) {
            EXPECT_EQ(events[static_cast<std::size_t>(entry)].note, std::to_string(entry));
        }
        EXPECT_EQ(store.measurements(program + 1)->size(), std::size_t{kEntries});
    }
}

TEST_F(Together, OneSeesWhatTheOtherWrote)
{
    const auto folder = folder_ / "home";
    const auto invented = home::demonstration({.today = kDate}).value();
    auto one = HouseholdStore::create(folder, invented.household).value();
    const auto other = HouseholdStore::open(folder).value();
    EXPECT_TRUE(other.events(1)->empty());
    const home::Event event{1, home::EventKind::Watered, {}, kDate, now(), {}};
    ASSERT_TRUE(one.record(std::span{&event, 1}));
    EXPECT_EQ(other.events(1)->size(), 1U);
}

TEST(FolderKindOf, KnowsNetworksAndDrivesThatProgramsProvide)
{
    EXPECT_EQ(folder_kind_of(0x6969), FolderKind::Network);
    EXPECT_EQ(folder_kind_of(0xFF534D42), FolderKind::Network);
    EXPECT_EQ(folder_kind_of(0xFE534D42), FolderKind::Network);
    EXPECT_EQ(folder_kind_of(0x65735546), FolderKind::UserSpace);
    EXPECT_EQ(folder_kind_of(0xEF53), FolderKind::Local);     // ext4
    EXPECT_EQ(folder_kind_of(0x01021994), FolderKind::Local); // tmpfs
}

TEST(FolderKindOf, ANameSaysNothing)
{
    EXPECT_FALSE(folder_kind("/nowhere/at/all"));
    EXPECT_TRUE(folder_kind("/proc"));
}

} // namespace
} // namespace lathhouse::journal
