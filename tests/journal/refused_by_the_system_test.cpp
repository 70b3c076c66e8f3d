#include "core/base/csv.h"
#include "core/base/sha256.h"
#include "core/base/temporary_folder.h"
#include "core/home/demonstration.h"
#include "core/journal/change_watch.h"
#include "core/journal/folder_kind.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_check.h"
#include "core/journal/household_csv.h"
#include "core/journal/photo_import.h"
#include "core/journal/plant_page.h"
#include "core/photo/photo_file.h"
#include "tests/journal/as_nobody.h"
#include "tests/journal/short_names.h"
#include "tests/journal/temporary_folder.h"

#include <gmock/gmock.h>

#include <fstream>
#include <set>

namespace lathhouse::journal {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

/// A household with one photo, and what a user without rights is told of it.
class RefusedByTheSystem : public WithFolder {
protected:
    RefusedByTheSystem()
    {
        const auto made = home::demonstration({.today = kDate}).value();
        EXPECT_TRUE(HouseholdStore::create(home(), made.household, made.history));
        const auto digest = sha256_of("photo");
        photo_ = home() / "photos" / digest.substr(0, 2) / (digest + ".jpg");
        fs::create_directories(photo_.parent_path());
        std::ofstream{photo_} << "photo";
        SQLite::Database{database().string(), SQLite::OPEN_READWRITE}.exec("PRAGMA wal_checkpoint(TRUNCATE)");
        fs::permissions(folder_, fs::perms{0755});
        fs::permissions(home(), fs::perms{0755});
        fs::permissions(home() / "photos", fs::perms{0755});
        fs::permissions(photo_.parent_path(), fs::perms{0755});
    }
    ~RefusedByTheSystem() override
    {
        std::error_code failure;
        for (const auto& path : {folder_, home(), home() / "photos", photo_.parent_path()}) {
            fs::permissions(path, fs::perms{0755}, failure);
        }
    }
    fs::path home() const { return folder_ / "home"; }
    fs::path database() const { return home() / "household.sqlite3"; }
    fs::path photo_;
};

TEST_F(RefusedByTheSystem, AFileThatMayNotBeReadIsNamedByEveryReader)
{
    fs::permissions(photo_, fs::perms{0});
    fs::permissions(database(), fs::perms{0});
    fs::create_directory(folder_ / "open");
    fs::permissions(folder_ / "open", fs::perms{0777});
    const AsNobody nobody;
    EXPECT_EQ(sha256_of_file(photo_).error().code, ErrorCode::Unreadable);
    EXPECT_THAT(sha256_of_file(photo_).error().message, HasSubstr("check its rights"));
    EXPECT_EQ(read_text_file(photo_).error().code, ErrorCode::Unreadable);
    EXPECT_EQ(photo::read_bytes(photo_).error().code, ErrorCode::Unreadable);
    for (const auto& error : {HouseholdStore::open(home()).error(), read_plant_page(home(), 1, {}).error(),
                              check_household(home()).error(), export_csv(home(), folder_ / "open/out").error()}) {
        EXPECT_EQ(error.code, ErrorCode::Unreadable) << error.message;
        EXPECT_THAT(error.message, HasSubstr("household.sqlite3"));
    }
    EXPECT_FALSE(HouseholdStore::time_zone_in(home()));
    EXPECT_TRUE(fs::is_empty(folder_ / "open"));
}

TEST_F(RefusedByTheSystem, AFolderThatIsReadOnlyIsReadAndNotWritten)
{
    fs::permissions(database(), fs::perms{0444});
    fs::permissions(home(), fs::perms{0555});
    const AsNobody nobody;
    const auto store = HouseholdStore::open(home());
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::Unwritable);
    EXPECT_THAT(store.error().message, HasSubstr("is read-only"));
    EXPECT_TRUE(read_plant_page(home(), 1, {}));
    EXPECT_TRUE(check_household(home())->sound());
}

TEST_F(RefusedByTheSystem, AReadOnlyFolderMayHaveSignsInItsName)
{
    // The way to read it names the file as a URI, where these have a meaning.
    const auto odd = folder_ / "50% of #1?";
    fs::rename(home(), odd);
    fs::permissions(odd, fs::perms{0555});
    {
        const AsNobody nobody;
        EXPECT_TRUE(read_plant_page(odd, 1, {}));
    }
    fs::permissions(odd, fs::perms{0755});
    fs::rename(odd, home());
}

TEST_F(RefusedByTheSystem, WhatMayNotBeWrittenIsSaidAndNothingIsLeft)
{
    fs::permissions(database(), fs::perms{0644});
    ASSERT_TRUE(back_up(home(), folder_ / "kept.zip", Existing::Refused, kDate));
    ASSERT_TRUE(export_csv(home(), folder_ / "tables"));
    fs::create_directory(folder_ / "closed");
    fs::permissions(folder_ / "closed", fs::perms{0555});
    const auto made = home::demonstration({.today = kDate}).value();
    {
        const AsNobody nobody;
        for (const auto& error :
             {back_up(home(), folder_ / "closed/new.zip", Existing::Refused, kDate).error(),
              restore(folder_ / "kept.zip", folder_ / "closed/new").error(), export_csv(home(), folder_ / "closed/out").error(),
              import_csv(folder_ / "tables", folder_ / "closed/new").error(),
              HouseholdStore::create(folder_ / "closed/new", made.household).error(),
              write_file_whole(folder_ / "closed/file", "text").error()}) {
            EXPECT_EQ(error.code, ErrorCode::Unwritable) << error.message;
            EXPECT_THAT(error.message, HasSubstr("closed"));
        }
    }
    EXPECT_TRUE(fs::is_empty(folder_ / "closed"));
}

TEST_F(RefusedByTheSystem, PhotosThatMayNotBeReadEndWhatNeedsThemAll)
{
    fs::permissions(database(), fs::perms{0666});
    fs::permissions(home(), fs::perms{0777});
    fs::permissions(photo_, fs::perms{0});
    fs::create_directory(folder_ / "open");
    fs::permissions(folder_ / "open", fs::perms{0777});
    {
        const AsNobody nobody;
        const auto backup = back_up(home(), folder_ / "open/kept.zip", Existing::Refused, kDate);
        ASSERT_FALSE(backup);
        EXPECT_EQ(backup.error().code, ErrorCode::Unreadable) << backup.error().message;
        EXPECT_THAT(backup.error().message, HasSubstr(photo_.filename().string()));
        EXPECT_FALSE(export_csv(home(), folder_ / "open/out"));
        const auto report = check_household(home());
        ASSERT_TRUE(report) << report.error().message;
        EXPECT_THAT(report->findings, testing::Contains(testing::Field(&Finding::kind, FindingKind::PhotoUnreadable)));
    }
    fs::permissions(photo_.parent_path(), fs::perms{0});
    {
        const AsNobody nobody;
        EXPECT_EQ(back_up(home(), folder_ / "open/kept.zip", Existing::Refused, kDate).error().code, ErrorCode::Unreadable);
        EXPECT_EQ(export_csv(home(), folder_ / "open/out").error().code, ErrorCode::Unreadable);
        EXPECT_EQ(check_household(home()).error().code, ErrorCode::Unreadable);
    }
    EXPECT_TRUE(fs::is_empty(folder_ / "open"));
}

TEST_F(RefusedByTheSystem, AnInboxThatMayNotBeReadIsSaid)
{
    fs::create_directory(folder_ / "inbox");
    fs::permissions(folder_ / "inbox", fs::perms{0});
    FolderWatch none{folder_ / "none"};
    EXPECT_EQ(none.settled().error().code, ErrorCode::NotFound);
    const AsNobody nobody;
    const auto files = photo_files_in(folder_ / "inbox");
    // An iterator that passes over what is closed finds nothing there, or says that it may not look.
    EXPECT_TRUE(!files || files->empty());
}

TEST(FolderKindWords, AreEachTheirOwn)
{
    std::set<std::string_view> words;
    for (const auto kind : {FolderKind::Local, FolderKind::Network, FolderKind::UserSpace}) {
        words.insert(to_string(kind));
    }
    EXPECT_EQ(words, (std::set<std::string_view>{"local", "network", "user_space"}));
    EXPECT_EQ(folder_kind_of(0x6969), FolderKind::Network);
    EXPECT_EQ(folder_kind_of(0x65735546), FolderKind::UserSpace);
    EXPECT_EQ(folder_kind_of(0xEF53), FolderKind::Local);
    EXPECT_FALSE(folder_kind("/no/such/folder"));
}

TEST(FindingWords, AreEachTheirOwn)
{
    std::set<std::string_view> words;
    for (const auto kind : {FindingKind::DatabaseDamaged, FindingKind::BrokenReference, FindingKind::PhotoMissing,
                            FindingKind::PhotoAltered, FindingKind::PhotoUnreadable, FindingKind::PhotoUnknown,
                            FindingKind::MeasuredPhotoUnknown, FindingKind::FileUnknown, FindingKind::LeftOver}) {
        words.insert(to_string(kind));
    }
    EXPECT_EQ(words.size(), 9U);
    EXPECT_TRUE(words.contains("left_over"));
    EXPECT_TRUE(words.contains("measured_photo_unknown"));
}

} // namespace
} // namespace lathhouse::journal
