#include "core/home/measurement.h"
#include "core/home/seed_lot.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_store.h"
#include "core/journal/migrations.h"
#include "core/journal/photo_book.h"
#include "tests/journal/every_table.h"
#include "tests/journal/temporary_folder.h"

#include <algorithm>
#include <fstream>
#include <thread>

namespace lathhouse::journal {
namespace {

class EveryVersion : public WithFolder, public testing::WithParamInterface<int> {
protected:
    std::filesystem::path home() const { return folder_ / "home"; }
    void make() const { make_with_rows_up_to(home(), GetParam()); }
    std::vector<int> ids(const HouseholdStore& store) const
    {
        std::vector<int> found;
        const auto events = store.events();
        EXPECT_TRUE(events);
        for (const auto& event : *events) {
            found.push_back(*event.id);
        }
        return found;
    }
};

TEST_P(EveryVersion, KeepsWhatWasWritten)
{
    make();
    auto store = HouseholdStore::open(home());
    ASSERT_TRUE(store) << store.error().message;
    const auto household = store->load();
    ASSERT_TRUE(household) << household.error().message;
    const int version = GetParam();
    EXPECT_EQ(household->plants.size(), version >= 9 ? 3U : 2U);
    EXPECT_EQ(household->plant(1)->spot, 3);
    std::vector expected{2, 5, 9};
    if (version >= 6) {
        expected.push_back(20);
    }
    if (version >= 9) {
        expected.insert(expected.end(), {30, 31, 32});
    }
    if (version >= 13) {
        expected.push_back(40);
    }
    if (version >= 14) {
        expected.push_back(41);
    }
    EXPECT_EQ(ids(*store), expected);
    const auto stays = store->stays(1);
    ASSERT_TRUE(stays);
    ASSERT_EQ(stays->actual.size(), 1U);
    EXPECT_EQ(stays->planned.size(), 1U);
    const auto log = store->night_log();
    ASSERT_TRUE(log);
    ASSERT_EQ(log->readings.size(), version >= 3 ? 1U : 0U);
    if (version >= 3) {
        EXPECT_EQ(log->readings.front().note, "read again");
        EXPECT_EQ(log->forecasts.size(), 1U);
    }
    EXPECT_EQ(household->own_record != nullptr, version >= 4);
    EXPECT_EQ(household->spot(3)->view.has_value(), version >= 5);
    EXPECT_EQ(household->pins.size(), version >= 7 ? 1U : 0U);
    EXPECT_EQ(store->jugs()->size(), version >= 8 ? 1U : 0U);
    EXPECT_EQ(store->seeds()->counts.size(), version >= 9 ? 1U : 0U);
    EXPECT_EQ(store->measurements()->size(), version >= 10 ? 1U : 0U);
    const auto photos = PhotoBook{*store}.photos();
    ASSERT_TRUE(photos) << photos.error().message;
    ASSERT_EQ(photos->size(), version >= 11 ? 1U : 0U);
    if (version >= 11) {
        EXPECT_EQ(photos->front().plants, std::vector{1});
        EXPECT_EQ(photos->front().date(), (calendar::Date{2026, 4, 1}));
    }
    EXPECT_EQ(PhotoBook{*store}.pictures()->size(), version >= 12 ? 1U : 0U);
    EXPECT_EQ(household->spot(9), nullptr); // Off the list from 13 on.
}

TEST_P(EveryVersion, ComesBackFromABackupOfItsTimeAndIsSteppedUpThen)
{
    make();
    std::filesystem::create_directories(home() / "photos" / "6b");
    const std::string photo = "photos/6b/6b752a24800f687461413179918b18b93b11a6e3b72cdf27efdbac90fde4d311.jpg";
    std::ofstream{home() / photo, std::ios::binary} << "pixels\n";
    const auto archive = folder_ / "kept.zip";
    const auto made = back_up(home(), archive, Existing::Refused, calendar::Date{2026, 5, 1});
    ASSERT_TRUE(made) << made.error().message;
    const auto restored = restore(archive, folder_ / "new");
    ASSERT_TRUE(restored) << restored.error().message;
    const auto version_in = [](const std::filesystem::path& folder) {
        SQLite::Database database{(folder / "household.sqlite3").string()};
        return database.execAndGet("PRAGMA user_version").getInt();
    };
    EXPECT_EQ(version_in(home()), GetParam()); // Neither backing up nor restoring takes a step.
    EXPECT_EQ(version_in(folder_ / "new"), GetParam());
    const auto store = HouseholdStore::open(folder_ / "new");
    ASSERT_TRUE(store) << store.error().message;
    EXPECT_EQ(version_in(folder_ / "new"), known_migrations().back().version);
    const auto original = HouseholdStore::open(home());
    ASSERT_TRUE(original) << original.error().message;
    EXPECT_EQ(ids(*store), ids(*original));
    EXPECT_EQ(store->load()->plants.size(), original->load()->plants.size());
    EXPECT_EQ(store->night_log()->readings.size(), original->night_log()->readings.size());
    EXPECT_EQ(*store->measurements(), *original->measurements());
    EXPECT_TRUE(std::filesystem::exists(folder_ / "new" / photo));
}

TEST_P(EveryVersion, IsCopiedBeforeItIsChanged)
{
    make();
    ASSERT_TRUE(HouseholdStore::open(home()));
    const auto copy = home() / "backups" / ("before-schema-" + std::to_string(GetParam() + 1) + ".sqlite3");
    if (GetParam() == known_migrations().back().version) {
        EXPECT_FALSE(std::filesystem::exists(home() / "backups"));
        return;
    }
    SQLite::Database kept{copy.string()};
    EXPECT_EQ(kept.execAndGet("PRAGMA user_version").getInt(), GetParam());
    EXPECT_EQ(kept.execAndGet("PRAGMA integrity_check").getString(), "ok");
    EXPECT_GE(kept.execAndGet("SELECT count(*) FROM events").getInt(), 3);
}

TEST_P(EveryVersion, HoldsItsRulesAfterwards)
{
    make();
    ASSERT_TRUE(HouseholdStore::open(home()));
    SQLite::Database database{(home() / "household.sqlite3").string()};
    EXPECT_EQ(database.execAndGet("PRAGMA integrity_check").getString(), "ok");
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM pragma_foreign_key_check").getInt(), 0);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM undo_order WHERE kind = 'event' AND row_id = 21").getInt(),
              GetParam() >= 6 ? 1 : 0)
        << "what was undone before has its place";
}

TEST_P(EveryVersion, UndoesInTheOrderOfEntryThoughAClockStoodWrong)
{
    make();
    auto store = HouseholdStore::open(home()).value();
    const auto now = calendar::start_of_day_utc(calendar::Date{2026, 5, 1});
    const auto last = store.turn_last(HouseholdStore::Direction::Undo, now);
    ASSERT_TRUE(last) << last.error().message;
    ASSERT_TRUE(*last);
    if (GetParam() >= 14) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 41);
        EXPECT_TRUE(store.load()->pins.empty());
    } else if (GetParam() >= 13) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 40);
        EXPECT_NE(store.load()->spot(9), nullptr);
    } else if (GetParam() >= 12) {
        EXPECT_EQ(std::get<home::PhotoChange>(**last).kind, home::PhotoChangeKind::Chosen);
        EXPECT_TRUE(PhotoBook{store}.pictures()->empty());
    } else if (GetParam() >= 10) { // Photos of version 11 are in no order of entry.
        EXPECT_EQ(std::get<home::Measurement>(**last).id, 4);
    } else if (GetParam() >= 9) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 32);
    } else if (GetParam() >= 6) {
        EXPECT_EQ(std::get<home::Event>(**last).id, 20);
    } else if (GetParam() >= 3) {
        EXPECT_EQ(std::get<home::Reading>(**last).note, "read again");
        EXPECT_EQ(store.night_log()->readings.front().low, Celsius::from_degrees(3.5));
    } else {
        EXPECT_EQ(std::get<home::Event>(**last).id, 9);
    }
}

TEST_P(EveryVersion, MayBeOpenedByTwoAtOnce)
{
    make();
    std::vector<std::optional<Error>> errors(2);
    std::vector<std::thread> programs;
    for (auto& error : errors) {
        programs.emplace_back([&error, this] {
            if (const auto store = HouseholdStore::open(home()); !store) {
                error = store.error();
            }
        });
    }
    for (auto& program : programs) {
        program.join();
    }
    for (const auto& error : errors) {
        EXPECT_FALSE(error) << error->message;
    }
}

INSTANTIATE_TEST_SUITE_P(Schema, EveryVersion,
                         testing::Range(1, static_cast<int>(known_migrations().size()) + 1));

} // namespace
} // namespace lathhouse::journal
