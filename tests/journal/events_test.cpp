#include "core/home/demonstration.h"
#include "core/journal/database.h"
#include "core/journal/household_store.h"
#include "core/journal/migrations.h"
#include "tests/journal/temporary_folder.h"
#include "tests/journal/short_names.h"

namespace lathhouse::journal {
namespace {

using home::Event;
using home::EventKind;


class Events : public WithFolder {
protected:
    HouseholdStore made() const
    {
        const auto invented = home::demonstration({.today = kDate}).value();
        return HouseholdStore::create(folder_ / "home", invented.household).value();
    }
    static Event event(EventKind kind, std::optional<home::PlantId> plant, std::optional<home::SpotId> spot = {})
    {
        return {plant, kind, spot, kDate, now(), ""};
    }
    static calendar::Instant now() { return calendar::start_of_day_utc(kDate); }
    static void put(HouseholdStore& store, const Event& event)
    {
        const auto recorded = store.record(std::span{&event, 1});
        ASSERT_TRUE(recorded) << recorded.error().message;
    }
};

TEST_F(Events, KeepEveryKindWithItsDetails)
{
    auto store = made();
    for (const auto kind : home::every_event_kind()) {
        auto one = event(kind, 4, kind == EventKind::Moved ? std::optional{5} : std::nullopt);
        one.details = {{"amount", "few \"here\"; \u00e4"}, {"pest", "mealybug"}};
        put(store, one);
        const auto back = store.events(4)->back();
        EXPECT_EQ(back.kind, kind);
        EXPECT_EQ(back.details, one.details);
        EXPECT_TRUE(back.id);
    }
}

TEST_F(Events, MayConcernASpotOrTheWholeHousehold)
{
    auto store = made();
    put(store, event(EventKind::PestFound, {}, 5));
    put(store, event(EventKind::ColdNight, {}));
    EXPECT_EQ(store.events()->size(), 2u);
    EXPECT_TRUE(store.events(4)->empty());
}

TEST_F(Events, BytesThatAreNoTextAreMended)
{
    auto store = made();
    auto one = event(EventKind::Noted, 4);
    one.details = {{"word", "bad\xff"}};
    put(store, one);
    EXPECT_EQ(store.events()->back().detail("word"), "bad\xef\xbf\xbd");
}

TEST_F(Events, AreUndoneLastFirstAndRedoneAfterARestart)
{
    {
        auto store = made();
        put(store, event(EventKind::Watered, 4));
        put(store, event(EventKind::Fed, 4));
        EXPECT_EQ(store.turn_back(kUndo, now()).value()->kind, EventKind::Fed);
        EXPECT_EQ(store.turn_back(kUndo, now()).value()->kind, EventKind::Watered);
        EXPECT_FALSE(store.turn_back(kUndo, now()).value());
        EXPECT_TRUE(store.events()->empty());
    }
    auto store = HouseholdStore::open(folder_ / "home").value();
    EXPECT_EQ(store.turn_back(kRedo, now()).value()->kind, EventKind::Watered);
    EXPECT_EQ(store.turn_back(kRedo, now()).value()->kind, EventKind::Fed);
    EXPECT_FALSE(store.turn_back(kRedo, now()).value());
    EXPECT_EQ(store.events()->size(), 2u);
}

TEST_F(Events, WhatIsEnteredAfterAnUndoEndsTheRedo)
{
    auto store = made();
    put(store, event(EventKind::Watered, 4));
    ASSERT_TRUE(store.turn_back(kUndo, now()).value());
    put(store, event(EventKind::Fed, 4));
    EXPECT_FALSE(store.turn_back(kRedo, now()).value());
    EXPECT_EQ(store.events()->size(), 1u);
}

TEST_F(Events, AnUndoneMovePutsThePlantBack)
{
    auto store = made();
    put(store, event(EventKind::Moved, 4, 1));
    put(store, event(EventKind::Moved, 4, 5));
    ASSERT_TRUE(store.turn_back(kUndo, now()).value());
    EXPECT_EQ(store.load()->plant(4)->spot, 1);
    ASSERT_TRUE(store.turn_back(kRedo, now()).value());
    EXPECT_EQ(store.load()->plant(4)->spot, 5);
}

TEST_F(Events, OfAnOlderFileAreKept)
{
    const auto file = folder_ / "old.sqlite3";
    SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    database.exec("PRAGMA foreign_keys = ON");
    ASSERT_TRUE(bring_up_to_date(database, file, known_migrations().first(5)));
    database.exec("INSERT INTO plants (id, name, kind, lethal_celsius, damage_celsius, safe_night_celsius, "
                  "heat_limit_celsius, light_to_survive_moles, light_to_thrive_moles, must_dry, hazardous, "
                  "sulks, pot_kilograms) VALUES (1, 'Lemon', 'Citrus limon', -3, 0, 5, 38, 5, 20, 0, 0, 0, 4)");
    database.exec("INSERT INTO events VALUES (7, 1, 'watered', NULL, '2026-05-01', '2026-05-01T06:00:00Z', "
                  "'by hand')");
    ASSERT_TRUE(bring_up_to_date(database, file, known_migrations()));
    SQLite::Statement row{database, "SELECT id, plant_id, kind, note, details FROM events_that_count"};
    ASSERT_TRUE(row.executeStep());
    EXPECT_EQ(row.getColumn(0).getInt(), 7);
    EXPECT_EQ(row.getColumn(3).getString(), "by hand");
    EXPECT_EQ(row.getColumn(4).getString(), "{}");
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM pragma_foreign_key_check").getInt(), 0);
}

} // namespace
} // namespace lathhouse::journal
