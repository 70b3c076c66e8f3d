#include "core/journal/household_store.h"

#include "core/base/csv.h"
#include "core/home/demonstration.h"
#include "core/journal/database.h"
#include "core/journal/migrations.h"
#include "tests/journal/as_nobody.h"
#include "tests/journal/temporary_folder.h"

#include <csignal>
#include <fstream>

#include <sys/resource.h>
#include <unistd.h>

namespace lathhouse::journal {
namespace {

namespace fs = std::filesystem;

home::Demonstration invented()
{
    return home::demonstration({.today = calendar::Date{2026, 11, 25}}).value();
}

class HouseholdStoreTest : public WithFolder {
protected:
    fs::path home() const { return folder_ / "home"; }
    fs::path file() const { return home() / "household.sqlite3"; }
    void make() const
    {
        const auto made = invented();
        const auto store = HouseholdStore::create(home(), made.household, made.history);
        ASSERT_TRUE(store) << store.error().message;
    }
    Error refusal() const
    {
        const auto store = HouseholdStore::open(home());
        EXPECT_FALSE(store);
        return store ? Error{ErrorCode::OutOfRange, "opened"} : store.error();
    }
    /// Names in the folder of the test, to see that nothing was left behind.
    std::vector<std::string> names() const
    {
        std::vector<std::string> found;
        for (const auto& entry : fs::directory_iterator{folder_}) {
            found.push_back(entry.path().filename());
        }
        return found;
    }
    void expect_sentence(const Error& error, ErrorCode code, const std::string& text) const
    {
        EXPECT_EQ(error.code, code) << error.message;
        EXPECT_EQ(error.message, text);
        EXPECT_EQ(error.message.find('\n'), std::string::npos);
    }
};

TEST_F(HouseholdStoreTest, GivesBackWhatWasPutIn)
{
    const auto made = invented();
    make();
    const auto loaded = HouseholdStore::open(home())->load();
    ASSERT_TRUE(loaded) << loaded.error().message;
    EXPECT_EQ(loaded->name, made.household.name);
    EXPECT_TRUE(loaded->demonstration);
    EXPECT_EQ(loaded->place.position, made.household.place.position);
    EXPECT_EQ(loaded->place.elevation, made.household.place.elevation);
    EXPECT_EQ(loaded->place.time_zone, made.household.place.time_zone);
    ASSERT_EQ(loaded->spots.size(), made.household.spots.size());
    for (std::size_t index = 0; index < loaded->spots.size(); ++index) {
        const auto& put = made.household.spots[index];
        const auto& got = loaded->spots[index];
        EXPECT_EQ(got.id, put.id);
        EXPECT_EQ(got.name, put.name);
        EXPECT_EQ(got.short_name, put.short_name);
        EXPECT_EQ(got.kind, put.kind);
        EXPECT_EQ(got.offset, put.offset);
        EXPECT_EQ(got.winter, put.winter);
        EXPECT_EQ(got.summer, put.summer);
        EXPECT_EQ(got.light_in_summer, put.light_in_summer);
        EXPECT_EQ(got.light_in_winter, put.light_in_winter);
        EXPECT_EQ(got.capacity, put.capacity);
        EXPECT_EQ(got.in_reach, put.in_reach);
        EXPECT_EQ(got.walking_order, put.walking_order);
        EXPECT_TRUE(put.view.has_value());
        EXPECT_EQ(got.view, put.view);
    }
    ASSERT_EQ(loaded->plants.size(), made.household.plants.size());
    for (std::size_t index = 0; index < loaded->plants.size(); ++index) {
        const auto& put = made.household.plants[index];
        const auto& got = loaded->plants[index];
        EXPECT_EQ(got.id, put.id);
        EXPECT_EQ(got.name, put.name);
        EXPECT_EQ(got.kind, put.kind);
        EXPECT_EQ(got.lines, put.lines);
        EXPECT_EQ(got.heat_limit, put.heat_limit);
        EXPECT_EQ(got.light_to_survive, put.light_to_survive);
        EXPECT_EQ(got.light_to_thrive, put.light_to_thrive);
        EXPECT_EQ(got.must_dry, put.must_dry);
        EXPECT_EQ(got.hazardous, put.hazardous);
        EXPECT_EQ(got.sulks, put.sulks);
        EXPECT_EQ(got.wants_open_air, put.wants_open_air);
        EXPECT_EQ(got.pot_kilograms, put.pot_kilograms);
        EXPECT_EQ(got.spot, put.spot);
        EXPECT_EQ(got.pinned_spot, put.pinned_spot);
    }
}

TEST_F(HouseholdStoreTest, GivesBackTheHistory)
{
    const auto made = invented();
    make();
    auto events = HouseholdStore::open(home())->events();
    ASSERT_TRUE(events) << events.error().message;
    ASSERT_EQ(events->size(), made.history.size());
    for (std::size_t at = 0; at < events->size(); ++at) {
        EXPECT_TRUE((*events)[at].id);
        (*events)[at].id = std::nullopt; // The journal's own.
        EXPECT_TRUE((*events)[at] == made.history[at]) << at;
    }
}

TEST_F(HouseholdStoreTest, GivesTheHistoryOfOnePlant)
{
    make();
    const auto events = HouseholdStore::open(home())->events(3).value();
    EXPECT_FALSE(events.empty());
    EXPECT_TRUE(std::ranges::all_of(events, [](const home::Event& event) { return event.plant == 3; }));
}

TEST_F(HouseholdStoreTest, WritesTheSameBytesForTheSameHousehold)
{
    const auto made = invented();
    ASSERT_TRUE(HouseholdStore::create(folder_ / "one", made.household, made.history));
    ASSERT_TRUE(HouseholdStore::create(folder_ / "two", made.household, made.history));
    EXPECT_EQ(read_text_file(folder_ / "one/household.sqlite3").value(),
              read_text_file(folder_ / "two/household.sqlite3").value());
}

TEST_F(HouseholdStoreTest, UsesAnEmptyFolderAndMakesThoseAbove)
{
    fs::create_directory(home());
    EXPECT_TRUE(HouseholdStore::create(home(), invented().household));
    EXPECT_TRUE(HouseholdStore::create(folder_ / "a/b/c/", invented().household));
    EXPECT_TRUE(HouseholdStore::open(folder_ / "a/b/c/"));
}

TEST_F(HouseholdStoreTest, LeavesOnlyTheHouseholdInTheFolderAbove)
{
    make();
    EXPECT_EQ(names(), std::vector<std::string>{"home"});
}

TEST_F(HouseholdStoreTest, RecordsAMoveAndWhereThePlantNowStands)
{
    make();
    auto opened = HouseholdStore::open(home());
    const calendar::Date date{2026, 11, 25};
    ASSERT_TRUE(opened->record(std::vector<home::Event>{
        {4, home::EventKind::Moved, 5, date, calendar::start_of_day_utc(date), "out again"}}));
    EXPECT_EQ(opened->load()->plant(4)->spot, 5);
    EXPECT_EQ(opened->events(4)->back().note, "out again");
}

TEST_F(HouseholdStoreTest, AMoveEnteredLateDoesNotUndoALaterOne)
{
    make();
    auto opened = HouseholdStore::open(home());
    const auto before = opened->load()->plant(4)->spot;
    const calendar::Date date{2025, 7, 1};
    ASSERT_TRUE(opened->record(std::vector<home::Event>{
        {4, home::EventKind::Moved, 5, date, calendar::start_of_day_utc(date), ""}}));
    EXPECT_EQ(opened->load()->plant(4)->spot, before);
}

TEST_F(HouseholdStoreTest, RecordsAllOrNothing)
{
    make();
    auto opened = HouseholdStore::open(home());
    const auto before = opened->events()->size();
    const calendar::Date date{2026, 11, 25};
    const auto recorded = opened->record(std::vector<home::Event>{
        {4, home::EventKind::Watered, {}, date, calendar::start_of_day_utc(date), ""},
        {999, home::EventKind::Watered, {}, date, calendar::start_of_day_utc(date), ""}});
    ASSERT_FALSE(recorded);
    EXPECT_EQ(recorded.error().code, ErrorCode::NotFound);
    EXPECT_EQ(opened->events()->size(), before);
}

TEST_F(HouseholdStoreTest, KeepsWhatIsWrittenWhileAnotherHasItOpen)
{
    make();
    auto one = HouseholdStore::open(home());
    auto other = HouseholdStore::open(home());
    const calendar::Date date{2026, 11, 25};
    ASSERT_TRUE(one->record(std::vector<home::Event>{
        {4, home::EventKind::Noted, {}, date, calendar::start_of_day_utc(date), "seen by both"}}));
    EXPECT_EQ(other->events(4)->back().note, "seen by both");
}

TEST_F(HouseholdStoreTest, CopiesIntoOneFile)
{
    make();
    const auto copy = folder_ / "copy.sqlite3";
    ASSERT_TRUE(HouseholdStore::open(home())->copy_to(copy));
    EXPECT_EQ(SQLite::Database{copy.string()}.execAndGet("SELECT count(*) FROM plants").getInt(), 14);
}

TEST_F(HouseholdStoreTest, DerivesStaysFromMoves)
{
    make();
    SQLite::Database database{file().string()};
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM actual_stays WHERE plant_id = 5").getInt(), 5);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM actual_stays WHERE to_on IS NULL").getInt(), 14);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM actual_stays WHERE to_on < from_on").getInt(), 0);
}

// --- What is not a household
// ---------------------------------------------------------------------------------

TEST_F(HouseholdStoreTest, SaysThatThereIsNoFolder)
{
    expect_sentence(refusal(), ErrorCode::NotFound,
                    "there is no folder " + home().string() +
                        "; name a household's folder with --home, or make one with `lathhouse demo`");
}

TEST_F(HouseholdStoreTest, SaysThatAFileIsNoFolder)
{
    std::ofstream{home()} << "text";
    expect_sentence(refusal(), ErrorCode::NotAHousehold,
                    home().string() + " is not a folder; name a household's folder");
}

TEST_F(HouseholdStoreTest, SaysThatAFolderHoldsNoHousehold)
{
    fs::create_directory(home());
    expect_sentence(refusal(), ErrorCode::NotAHousehold,
                    home().string() + " is not a household; it has no file household.sqlite3 in it");
}

TEST_F(HouseholdStoreTest, RefusesAFileThatIsNoDatabase)
{
    fs::create_directory(home());
    std::ofstream{file()} << "just text";
    expect_sentence(refusal(), ErrorCode::NotAHousehold,
                    file().string() + " is not a household; it was not made by this program");
}

TEST_F(HouseholdStoreTest, RefusesAnEmptyFile)
{
    fs::create_directory(home());
    std::ofstream{file()};
    EXPECT_EQ(refusal().code, ErrorCode::NotAHousehold);
}

TEST_F(HouseholdStoreTest, RefusesTheDatabaseOfAnotherProgram)
{
    fs::create_directory(home());
    SQLite::Database{file().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE}.exec(
        "CREATE TABLE t (a)");
    expect_sentence(refusal(), ErrorCode::NotAHousehold,
                    file().string() + " is the database of another program");
}

TEST_F(HouseholdStoreTest, RefusesANewerFileAndLeavesItUntouched)
{
    make();
    {
        SQLite::Database database{file().string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA user_version = 700");
    }
    const auto before = read_text_file(file()).value();
    expect_sentence(refusal(), ErrorCode::TooNew,
                    file().string() +
                        " was written by a newer version of this program (schema 700, this one knows " +
                        std::to_string(known_migrations().back().version) + "); it was left untouched");
    EXPECT_EQ(read_text_file(file()).value(), before);
    EXPECT_FALSE(fs::exists(file().string() + "-shm"));
}

TEST_F(HouseholdStoreTest, SaysThatAFileWasCutOff)
{
    make();
    fs::resize_file(file(), fs::file_size(file()) / 2);
    const auto error = refusal();
    EXPECT_EQ(error.code, ErrorCode::Damaged) << error.message;
    EXPECT_TRUE(error.message.starts_with(file().string() + " is damaged (")) << error.message;
    EXPECT_EQ(error.message.find('\n'), std::string::npos) << error.message;
}

TEST_F(HouseholdStoreTest, AFileThatWasSoundIsLookedAtAgainOnceItChanged)
{
    make();
    ASSERT_TRUE(HouseholdStore::open(home()));
    ASSERT_TRUE(HouseholdStore::open(home())); // Known to be sound.
    { // The second page on, so that the header still stands; the size stays.
        std::fstream stream{file(), std::ios::in | std::ios::out | std::ios::binary};
        stream.seekp(4096);
        const std::string noise(4096, '\xA5');
        stream.write(noise.data(), static_cast<std::streamsize>(noise.size()));
    }
    fs::last_write_time(file(), fs::last_write_time(file()) + std::chrono::seconds{1}); // Clocks of files are coarse.
    EXPECT_EQ(refusal().code, ErrorCode::Damaged);
}

TEST_F(HouseholdStoreTest, SaysThatAFileIsTooShortForItsHeader)
{
    make();
    fs::resize_file(file(), 50);
    expect_sentence(refusal(), ErrorCode::Damaged,
                    file().string() +
                        " is damaged (cut off after 50 bytes); restore a backup, the file was left as it is");
}

TEST_F(HouseholdStoreTest, SaysThatAPageWasOverwritten)
{
    make();
    {
        std::fstream stream{file(), std::ios::in | std::ios::out | std::ios::binary};
        stream.seekp(3 * 4096);
        stream << std::string(4096, '\xA5');
    }
    const auto error = refusal();
    EXPECT_EQ(error.code, ErrorCode::Damaged) << error.message;
    EXPECT_EQ(error.message.find('\n'), std::string::npos) << error.message;
}

TEST_F(HouseholdStoreTest, SaysThatAnotherProgramHoldsTheFile)
{
    make();
    SQLite::Database holder{file().string(), SQLite::OPEN_READWRITE};
    holder.exec("PRAGMA locking_mode = EXCLUSIVE");
    holder.exec("BEGIN EXCLUSIVE");
    expect_sentence(refusal(), ErrorCode::Locked,
                    file().string() + " is held by another program; close that one or try again in a moment");
}

TEST_F(HouseholdStoreTest, SaysThatAnotherProgramIsWriting)
{
    make();
    auto store = HouseholdStore::open(home());
    SQLite::Database writer{file().string(), SQLite::OPEN_READWRITE};
    writer.exec("BEGIN IMMEDIATE");
    const calendar::Date date{2026, 11, 25};
    const auto recorded = store->record(std::vector<home::Event>{
        {4, home::EventKind::Watered, {}, date, calendar::start_of_day_utc(date), ""}});
    ASSERT_FALSE(recorded);
    EXPECT_EQ(recorded.error().code, ErrorCode::Locked);
    EXPECT_TRUE(store->load()) << "reading goes on while another writes";
}

TEST_F(HouseholdStoreTest, SaysThatAFolderIsReadOnly)
{
    make();
    fs::permissions(folder_, fs::perms{0755});
    fs::permissions(home(), fs::perms{0555});
    const auto error = [this] {
        const AsNobody nobody;
        return refusal();
    }();
    fs::permissions(home(), fs::perms::owner_all);
    expect_sentence(error, ErrorCode::Unwritable,
                    home().string() + " is read-only; copy the household to a folder where you may write");
}

// --- Where a household cannot be made
// ------------------------------------------------------------------------

TEST_F(HouseholdStoreTest, IsNotMadeInAFilledFolder)
{
    fs::create_directory(home());
    std::ofstream{home() / "letter.txt"} << "mine";
    const auto store = HouseholdStore::create(home(), invented().household);
    ASSERT_FALSE(store);
    expect_sentence(store.error(), ErrorCode::Unwritable,
                    home().string() + " is not empty; choose a new or an empty folder");
    EXPECT_EQ(read_text_file(home() / "letter.txt").value(), "mine");
}

TEST_F(HouseholdStoreTest, IsNotMadeOverAnother)
{
    make();
    const auto store = HouseholdStore::create(home(), invented().household);
    ASSERT_FALSE(store);
    expect_sentence(store.error(), ErrorCode::Unwritable,
                    home().string() + " already holds a household; choose a new or an empty folder");
}

TEST_F(HouseholdStoreTest, IsNotMadeOverAFile)
{
    std::ofstream{home()} << "mine";
    const auto store = HouseholdStore::create(home(), invented().household);
    ASSERT_FALSE(store);
    expect_sentence(store.error(), ErrorCode::Unwritable,
                    home().string() + " is a file; choose a new or an empty folder");
}

TEST_F(HouseholdStoreTest, IsNotMadeBelowAFile)
{
    std::ofstream{folder_ / "file"} << "mine";
    const auto store = HouseholdStore::create(folder_ / "file" / "home", invented().household);
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::Unwritable) << store.error().message;
}

TEST_F(HouseholdStoreTest, WhatAKilledMakerLeftGoesAndTheNewOneIsPrivate)
{
    constexpr int kNobody = 999'999'999; // No system has so many programs.
    const auto left = folder_ / ("." + home().filename().string() + "." + std::to_string(kNobody) + ".part");
    std::filesystem::create_directories(left / "photos");
    ASSERT_TRUE(HouseholdStore::create(home(), invented().household));
    EXPECT_FALSE(std::filesystem::exists(left));
    EXPECT_EQ(std::filesystem::status(home()).permissions(), std::filesystem::perms::owner_all);
}

TEST_F(HouseholdStoreTest, IsNotMadeWhereTheSystemAllowsNoFolder)
{
    // No user, not even root, may make a folder there.
    const auto store = HouseholdStore::create("/proc/lathhouse_household", invented().household);
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::Unwritable) << store.error().message;
    EXPECT_TRUE(store.error().message.starts_with("/proc cannot be written (")) << store.error().message;
}

TEST_F(HouseholdStoreTest, LeavesNothingBehindWhereTheDiskIsFull)
{
    // A limit on the size of files stands for the full disk; the system refuses the write in the same way.
    const auto made = invented();
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    rlimit small = before;
    small.rlim_cur = 64 * 1024;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto store = HouseholdStore::create(home(), made.household, made.history);
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::Unwritable) << store.error().message;
    EXPECT_NE(store.error().message.find("disk"), std::string::npos) << store.error().message;
    EXPECT_TRUE(names().empty());
}

TEST_F(HouseholdStoreTest, IsNotMadeWithTwoPlantsOfOneName)
{
    auto made = invented();
    made.household.plants[1].name = made.household.plants[0].name;
    const auto store = HouseholdStore::create(home(), made.household);
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::OutOfRange) << store.error().message;
    EXPECT_TRUE(names().empty());
}

} // namespace
} // namespace lathhouse::journal
