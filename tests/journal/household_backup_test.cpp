#include "core/journal/household_backup.h"

#include "core/base/sha256.h"
#include "core/exchange/bag.h"
#include "core/home/demonstration.h"
#include "core/journal/database.h"
#include "core/journal/household_check.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <csignal>
#include <fstream>
#include <sstream>
#include <thread>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace lathhouse::journal {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

const calendar::Date kToday = calendar::make_date(2027, 3, 1).value();

class Backups : public WithFolder {
protected:
    Backups()
    {
        const auto demonstration = home::demonstration({.today = kToday}).value();
        EXPECT_TRUE(HouseholdStore::create(home(), demonstration.household, demonstration.history));
    }
    fs::path home() const { return folder_ / "home"; }
    fs::path archive() const { return folder_ / "kept" / "plants.zip"; }
    std::string add_photo(const std::string& content) const
    {
        const auto digest = sha256_of(content);
        const auto below = home() / "photos" / digest.substr(0, 2);
        fs::create_directories(below);
        std::ofstream{below / (digest + ".jpg"), std::ios::binary} << content;
        return "photos/" + digest.substr(0, 2) + "/" + digest + ".jpg";
    }
    static std::string content_of(const fs::path& path)
    {
        std::ostringstream text;
        text << std::ifstream{path, std::ios::binary}.rdbuf();
        return text.str();
    }
    /// Names in the folder of the backup, hidden ones too.
    std::vector<std::string> names() const
    {
        std::vector<std::string> found;
        if (fs::exists(archive().parent_path())) {
            for (const auto& entry : fs::directory_iterator{archive().parent_path()}) {
                found.push_back(entry.path().filename().string());
            }
        }
        return found;
    }
    static std::string dump(const fs::path& folder)
    {
        SQLite::Database database{(folder / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
        std::string all;
        SQLite::Statement tables{database, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"};
        while (tables.executeStep()) {
            const auto name = tables.getColumn(0).getString();
            SQLite::Statement rows{database, "SELECT * FROM \"" + name + "\" ORDER BY 1, 2"};
            while (rows.executeStep()) {
                all += name;
                for (int column = 0; column < rows.getColumnCount(); ++column) {
                    all += "|" + std::string{rows.getColumn(column).isNull() ? "null" : rows.getColumn(column).getString()};
                }
                all += "\n";
            }
        }
        return all;
    }
};

TEST_F(Backups, AHouseholdComesBackTheSame)
{
    const auto photo = add_photo(std::string(300'000, 'p'));
    const auto made = back_up(home(), archive(), Existing::Refused, kToday);
    ASSERT_TRUE(made) << made.error().message;
    EXPECT_EQ(made->files, 2U);
    EXPECT_EQ(names(), std::vector<std::string>{"plants.zip"});
    const auto restored = restore(archive(), folder_ / "new");
    ASSERT_TRUE(restored) << restored.error().message;
    EXPECT_EQ(fs::status(folder_ / "new").permissions(), fs::perms::owner_all) << "a home is private";
    EXPECT_EQ(restored->bagged_on, "2027-03-01");
    EXPECT_TRUE(restored->oddities.empty());
    EXPECT_EQ(dump(folder_ / "new"), dump(home()));
    EXPECT_EQ(content_of(folder_ / "new" / photo), std::string(300'000, 'p'));
    EXPECT_TRUE(HouseholdStore::open(folder_ / "new"));
    EXPECT_TRUE(check_household(folder_ / "new")->sound());
}

TEST_F(Backups, AFileThatIsThereStaysUnlessAskedFor)
{
    fs::create_directories(archive().parent_path());
    std::ofstream{archive()} << "precious";
    EXPECT_THAT(back_up(home(), archive(), Existing::Refused, kToday).error().message, HasSubstr("--replace"));
    EXPECT_EQ(content_of(archive()), "precious");
    EXPECT_TRUE(back_up(home(), archive(), Existing::Replaced, kToday));
    EXPECT_TRUE(restore(archive(), folder_ / "new"));
    EXPECT_EQ(back_up(home(), folder_, Existing::Replaced, kToday).error().code, ErrorCode::Unwritable);
}

TEST_F(Backups, IsOfOneMomentWhileAnotherWrites)
{
    const auto demonstration = home::demonstration({.today = kToday}).value();
    std::atomic<bool> enough = false;
    std::atomic<int> written = 0;
    // Each writes two events in one transaction; a backup has both or none.
    std::thread writer{[&] {
        auto store = HouseholdStore::open(home()).value();
        while (!enough) {
            auto event = demonstration.history.front();
            event.note = "pair";
            const std::vector<home::Event> pair{event, event};
            if (store.record(pair)) {
                ++written;
            }
        }
    }};
    while (written < 3) {
        std::this_thread::yield();
    }
    for (int round = 0; round < 5; ++round) {
        const auto made = back_up(home(), archive(), Existing::Replaced, kToday);
        EXPECT_TRUE(made) << made.error().message;
        EXPECT_TRUE(restore(archive(), folder_ / ("new" + std::to_string(round))));
        SQLite::Database database{(folder_ / ("new" + std::to_string(round)) / "household.sqlite3").string()};
        EXPECT_EQ(database.execAndGet("SELECT count(*) % 2 FROM events WHERE note = 'pair'").getInt(), 0);
    }
    enough = true;
    writer.join();
}

TEST_F(Backups, NothingIsLeftWhereItIsStopped)
{
    add_photo(std::string(3'000'000, 'p'));
    const auto stop = [](std::uint64_t done, std::uint64_t) { return done > 1'000'000 ? GoOn::No : GoOn::Yes; };
    EXPECT_THAT(back_up(home(), archive(), Existing::Refused, kToday, stop).error().message, HasSubstr("stopped"));
    EXPECT_TRUE(names().empty());
    ASSERT_TRUE(back_up(home(), archive(), Existing::Refused, kToday));
    EXPECT_THAT(restore(archive(), folder_ / "new", stop).error().message, HasSubstr("stopped"));
    EXPECT_FALSE(fs::exists(folder_ / "new"));
}

/// Runs in a process of its own and gives its exit status; -1 where a signal ended it.
template <class Work>
int in_child(Work work)
{
    const pid_t child = fork();
    if (child == 0) {
        _exit(work());
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST_F(Backups, AFullDiskLeavesNothing)
{
    // A limit on the size of files meets the same call that a full disk does.
    add_photo(std::string(3'000'000, 'p'));
    const auto full = [&](auto&& work) {
        return in_child([&] {
            std::signal(SIGXFSZ, SIG_IGN);
            const rlimit limit{1'000'000, 1'000'000};
            setrlimit(RLIMIT_FSIZE, &limit);
            const auto done = work();
            return !done && done.error().code == ErrorCode::Unwritable &&
                           done.error().message.find("the disk is full") != std::string::npos
                       ? 7
                       : 1;
        });
    };
    EXPECT_EQ(full([&] { return back_up(home(), archive(), Existing::Refused, kToday); }), 7);
    EXPECT_TRUE(names().empty());
    ASSERT_TRUE(back_up(home(), archive(), Existing::Refused, kToday));
    EXPECT_EQ(full([&] { return restore(archive(), folder_ / "new"); }), 7);
    EXPECT_FALSE(fs::exists(folder_ / "new"));
    EXPECT_EQ(content_of(archive()).empty(), false);
}

TEST_F(Backups, AReadOnlyHouseholdIsBackedUpAndARefusingTargetIsTold)
{
    fs::create_directory(folder_ / "kept");
    fs::create_directory(folder_ / "closed");
    fs::permissions(folder_, fs::perms{0755});
    fs::permissions(folder_ / "kept", fs::perms{0777});
    fs::permissions(folder_ / "closed", fs::perms{0555});
    fs::permissions(home() / "household.sqlite3", fs::perms{0444});
    fs::permissions(home(), fs::perms{0555});
    const auto outcome = in_child([&] {
        constexpr uid_t kNobody = 65534; // Rights hold for everyone but root.
        if (geteuid() == 0 && setuid(kNobody) != 0) {
            return 2;
        }
        const auto refused = back_up(home(), folder_ / "closed/plants.zip", Existing::Refused, kToday);
        if (refused || refused.error().code != ErrorCode::Unwritable) {
            return 3;
        }
        if (!check_household(home())->sound()) {
            return 4;
        }
        return back_up(home(), archive(), Existing::Refused, kToday) ? 7 : 5;
    });
    fs::permissions(home(), fs::perms{0755});
    EXPECT_EQ(outcome, 7);
    EXPECT_TRUE(restore(archive(), folder_ / "new"));
}

TEST_F(Backups, KilledAtAnyMomentNoPartialFileIsSeen)
{
    add_photo(std::string(4'000'000, 'p'));
    add_photo(std::string(4'000'000, 'q'));
    int killed = 0;
    for (int round = 0; round < 25; ++round) {
        const pid_t child = fork();
        if (child == 0) {
            (void)back_up(home(), archive(), Existing::Replaced, kToday);
            _exit(0);
        }
        usleep(static_cast<useconds_t>(round) * 4'000);
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        killed += WIFSIGNALED(status) ? 1 : 0;
        for (const auto& name : names()) {
            EXPECT_TRUE(name.starts_with('.') || name == "plants.zip") << name;
        }
        if (fs::exists(archive())) { // What has the name is whole.
            const auto restored = restore(archive(), folder_ / "new");
            EXPECT_TRUE(restored) << restored.error().message;
            fs::remove_all(folder_ / "new");
            fs::remove(archive());
        }
    }
    EXPECT_GT(killed, 0);
    ASSERT_TRUE(back_up(home(), archive(), Existing::Replaced, kToday));
    EXPECT_EQ(names(), std::vector<std::string>{"plants.zip"}); // What the killed ones had begun is gone.
}

TEST_F(Backups, WrittenBelowThePhotosItIsNotInItself)
{
    const auto made = back_up(home(), home() / "photos/plants.zip", Existing::Refused, kToday);
    ASSERT_TRUE(made) << made.error().message;
    EXPECT_EQ(made->files, 1U);
}

TEST_F(Backups, RestoresIntoANewOrAnEmptyFolderAlone)
{
    ASSERT_TRUE(back_up(home(), archive(), Existing::Refused, kToday));
    fs::create_directory(folder_ / "empty");
    EXPECT_TRUE(restore(archive(), folder_ / "empty"));
    EXPECT_THAT(restore(archive(), folder_ / "empty").error().message, HasSubstr("already holds a household"));
    fs::create_directory(folder_ / "filled");
    std::ofstream{folder_ / "filled/x"} << "x";
    EXPECT_EQ(restore(archive(), folder_ / "filled").error().code, ErrorCode::Unwritable);
    EXPECT_EQ(restore(archive(), folder_ / "filled/x").error().code, ErrorCode::Unwritable);
}

TEST_F(Backups, OfANewerVersionIsRefusedWithAWord)
{
    {
        SQLite::Database database{(home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA user_version = 900");
    }
    EXPECT_EQ(back_up(home(), archive(), Existing::Refused, kToday).error().code, ErrorCode::TooNew);
    EXPECT_TRUE(names().empty());
}

TEST_F(Backups, WhatHoldsNoHouseholdIsRefusedByTheBackupsName)
{
    // Bags as the standard has them, of content that is no household's.
    const auto refused = [&](const std::string& path, const fs::path& file) {
        const auto kept = folder_ / "other.zip";
        EXPECT_TRUE(exchange::write_bag(kept, std::vector<exchange::BagFile>{{path, file}}, {}, kToday, {}));
        const auto restored = restore(kept, folder_ / "new");
        EXPECT_FALSE(restored);
        EXPECT_FALSE(fs::exists(folder_ / "new"));
        EXPECT_THAT(restored.error().message, HasSubstr("other.zip"));
        return restored.error();
    };
    std::ofstream{folder_ / "letter"} << std::string(2000, 'x');
    EXPECT_THAT(refused("letter.txt", folder_ / "letter").message, HasSubstr("no data/household.sqlite3"));
    EXPECT_EQ(refused("household.sqlite3", folder_ / "letter").code, ErrorCode::NotAHousehold);
    const auto with = [&](const char* sql) {
        fs::remove(folder_ / "database");
        SQLite::Database database{(folder_ / "database").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        database.exec(sql);
        return folder_ / "database";
    };
    EXPECT_EQ(refused("household.sqlite3", with("CREATE TABLE a (b)")).code, ErrorCode::NotAHousehold);
    const auto ours = "PRAGMA application_id = " + std::to_string(kApplicationId) + "; CREATE TABLE a (b);";
    EXPECT_THAT(refused("household.sqlite3", with((ours + "PRAGMA user_version = 900").c_str())).message, HasSubstr("newer version"));
    {
        SQLite::Database database{(home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    auto torn = content_of(home() / "household.sqlite3");
    torn.replace(4096 * 3, 4096, 4096, '\x55');
    std::ofstream{folder_ / "torn", std::ios::binary} << torn;
    EXPECT_THAT(refused("household.sqlite3", folder_ / "torn").message, HasSubstr("use another backup"));
}

TEST_F(Backups, FilesOfOthersInItAreLeftOutAndNamed)
{
    {
        SQLite::Database database{(home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    std::ofstream{folder_ / "letter"} << "x";
    const auto kept = folder_ / "other.zip";
    const std::vector<exchange::BagFile> files{{"household.sqlite3", home() / "household.sqlite3"}, {"letter.txt", folder_ / "letter"}};
    ASSERT_TRUE(exchange::write_bag(kept, files, {}, kToday, {}));
    const auto restored = restore(kept, folder_ / "new");
    ASSERT_TRUE(restored) << restored.error().message;
    EXPECT_EQ(restored->left_out, std::vector<std::string>{"letter.txt"});
    EXPECT_FALSE(fs::exists(folder_ / "new/letter.txt"));
    EXPECT_EQ(dump(folder_ / "new"), dump(home()));
}

TEST_F(Backups, ADatabaseThatIsHeldIsWaitedForAndThenNamed)
{
    SQLite::Database other{(home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
    other.exec("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; UPDATE household SET name = 'Held'");
    const auto made = back_up(home(), archive(), Existing::Refused, kToday);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::Locked) << made.error().message;
    EXPECT_TRUE(names().empty());
    other.exec("ROLLBACK");
}

TEST_F(Backups, LinksAreLeftOutAndMissingPhotosAreTold)
{
    add_photo("photo");
    fs::create_symlink("/etc/passwd", home() / "photos" / "link.jpg");
    const auto made = back_up(home(), archive(), Existing::Refused, kToday);
    ASSERT_TRUE(made) << made.error().message;
    EXPECT_EQ(made->left_out, std::vector<std::string>{"photos/link.jpg"});
    EXPECT_EQ(made->files, 2U);
}

TEST_F(Backups, ADamagedDatabaseIsNotBackedUp)
{
    {
        SQLite::Database database{(home() / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    std::fstream file{home() / "household.sqlite3", std::ios::in | std::ios::out | std::ios::binary};
    file.seekp(4096 * 3);
    file << std::string(4096, '\x55');
    file.close();
    const auto made = back_up(home(), archive(), Existing::Refused, kToday);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::Damaged);
    EXPECT_THAT(made.error().message, HasSubstr("--salvage"));
    EXPECT_TRUE(names().empty());
}

} // namespace
} // namespace lathhouse::journal
