#include "core/home/demonstration.h"
#include "core/home/measurement.h"
#include "core/journal/database.h"
#include "core/journal/household_check.h"
#include "core/journal/household_store.h"
#include "tests/journal/short_names.h"
#include "tests/journal/temporary_folder.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdlib>
#include <cstring>
#include <iostream>
#include <random>
#include <set>
#include <string>
#include <vector>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

namespace lathhouse::journal {
namespace {

constexpr int kBatch = 3;

calendar::Instant now()
{
    return calendar::start_of_day_utc(kDate);
}

/// How often the writer is killed: 100, or what LATHHOUSE_KILLS says.
int kills()
{
    const char* wanted = std::getenv("LATHHOUSE_KILLS");
    int count = 100;
    if (wanted != nullptr) {
        std::from_chars(wanted, wanted + std::strlen(wanted), count);
    }
    return count;
}

/// Writes batches of three measurements and one event each, and tells the number of each once it is committed.
[[noreturn]] void write_until_killed(const std::filesystem::path& folder, int first, int said)
{
    auto store = HouseholdStore::open(folder);
    if (!store) {
        _exit(2);
    }
    for (int number = first;; ++number) {
        std::vector<home::Measurement> batch(
            kBatch, {4, home::MeasurementKind::Leaves, kDate, {double(number)}, home::MeasurementMethod::Count, now()});
        const home::Event event{4, home::EventKind::Noted, {}, kDate, now(), "batch " + std::to_string(number)};
        if (!store->record(std::span<const home::Measurement>{batch}) || !store->record(std::span{&event, 1})) {
            _exit(3);
        }
        if (write(said, &number, sizeof number) != ssize_t{sizeof number}) {
            _exit(4);
        }
    }
}

class Killed : public WithFolder {};

TEST_F(Killed, AtAnyMomentLeavesWhatWasCommittedAndNothingByHalves)
{
    const auto invented = home::demonstration({.today = kDate}).value();
    const auto folder = folder_ / "home";
    ASSERT_TRUE(HouseholdStore::create(folder, invented.household));
    std::mt19937 random{20261125};
    int committed = 0; // The highest number that the writer has told.
    std::set<std::string> told; // Notes of the events that must be there.
    const auto take = [&](int number) {
        committed = std::max(committed, number);
        told.insert("batch " + std::to_string(number));
    };
    for (int kill_number = 0; kill_number < kills(); ++kill_number) {
        std::array<int, 2> ends{};
        ASSERT_EQ(pipe(ends.data()), 0);
        const pid_t writer = fork();
        ASSERT_GE(writer, 0);
        if (writer == 0) {
            close(ends[0]);
            write_until_killed(folder, committed + 1, ends[1]);
        }
        close(ends[1]);
        // Every tenth is killed while it still opens the file.
        int number = 0;
        if (kill_number % 10 != 0) {
            EXPECT_EQ(read(ends[0], &number, sizeof number), ssize_t{sizeof number});
            take(number);
        }
        usleep(static_cast<useconds_t>(random() % 20'000));
        kill(writer, SIGKILL);
        int status = 0;
        waitpid(writer, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the writer ended by itself with " << WEXITSTATUS(status);
        while (read(ends[0], &number, sizeof number) == ssize_t{sizeof number}) {
            take(number);
        }
        close(ends[0]);

        const auto store = HouseholdStore::open(folder);
        ASSERT_TRUE(store) << store.error().message;
        const auto measurements = store->measurements(4);
        const auto events = store->events(4);
        ASSERT_TRUE(measurements && events);
        std::vector<int> of_number(static_cast<std::size_t>(committed) + 2);
        for (const auto& one : *measurements) {
            ASSERT_LE(one.value(), committed + 1);
            ++of_number[static_cast<std::size_t>(one.value())];
        }
        for (int number_told = 1; number_told <= committed; ++number_told) {
            ASSERT_EQ(of_number[static_cast<std::size_t>(number_told)], kBatch)
                << "batch " << number_told << " was committed";
        }
        const int begun = of_number.back();
        ASSERT_TRUE(begun == 0 || begun == kBatch) << "half a batch: " << begun;
        std::set<std::string> notes;
        for (const auto& event : *events) {
            notes.insert(event.note);
        }
        ASSERT_TRUE(std::ranges::includes(notes, told));
        // What was committed and not yet told is taken off, so that numbers stay unique.
        if (begun == kBatch) {
            ++committed;
        }
        ASSERT_FALSE(std::filesystem::exists(folder / "backups"));
    }
    std::cout << kills() << " kills, " << told.size() << " batches told as committed, all intact\n";
}

TEST_F(Killed, WhileItIsMadeLeavesAWholeHouseholdOrNone)
{
    const auto invented = home::demonstration({.today = kDate, .years = 1}).value();
    std::mt19937 random{5};
    const int rounds = std::max(20, kills() / 5);
    int whole = 0;
    int absent = 0;
    double middle = 50'000.0; // Microseconds after which about half are whole; found on the way, whatever the machine.
    std::filesystem::path last_absent;
    // Kills fall from the first moment to twice as late as it is whole. More of them until both were seen.
    for (int round = 0; round < rounds || ((whole == 0 || absent == 0) && round < 10 * rounds); ++round) {
        const auto folder = folder_ / ("home" + std::to_string(round));
        const pid_t maker = fork();
        ASSERT_GE(maker, 0);
        if (maker == 0) {
            const auto made = HouseholdStore::create(folder, invented.household, invented.history);
            if (made) {
                pause(); // With the household open, as a window has it.
            }
            _exit(2);
        }
        usleep(static_cast<useconds_t>(random() % static_cast<unsigned>(2.0 * middle)));
        kill(maker, SIGKILL);
        int status = 0;
        waitpid(maker, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the maker ended by itself with " << WEXITSTATUS(status);
        if (!std::filesystem::exists(folder)) {
            ++absent;
            middle *= 1.25;
            last_absent = folder;
            EXPECT_EQ(HouseholdStore::open(folder).error().code, ErrorCode::NotFound);
            continue;
        }
        ++whole;
        middle /= 1.25;
        const auto store = HouseholdStore::open(folder);
        ASSERT_TRUE(store) << store.error().message;
        const auto household = store->load();
        ASSERT_TRUE(household) << household.error().message;
        ASSERT_EQ(household->plants.size(), invented.household.plants.size());
        ASSERT_EQ(store->events()->size(), invented.history.size());
        const auto report = check_household(folder);
        ASSERT_TRUE(report) << report.error().message;
        ASSERT_TRUE(report->findings.empty()) << report->findings.front().where << " " << report->findings.front().what.text;
    }
    ASSERT_GT(absent, 0);
    ASSERT_GT(whole, 0);
    // What a killed one had begun is hidden, and in nobody's way.
    for (const auto& entry : std::filesystem::directory_iterator{folder_}) {
        const auto name = entry.path().filename().string();
        EXPECT_TRUE(name.starts_with(".home") || name.starts_with("home")) << name;
    }
    EXPECT_TRUE(HouseholdStore::create(last_absent, invented.household, invented.history));
    std::cout << whole + absent << " kills while a household was made, " << whole << " households whole, the others absent\n";
}

} // namespace
} // namespace lathhouse::journal
