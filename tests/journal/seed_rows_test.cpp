#include "core/home/demonstration.h"
#include "core/home/lineage.h"
#include "core/home/seed_lot.h"
#include "core/home/seedling.h"
#include "core/journal/database.h"
#include "core/journal/household_store.h"
#include "core/journal/migrations.h"
#include "tests/journal/temporary_folder.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace lathhouse::journal {
namespace {

using calendar::Date;
using testing::HasSubstr;

class SeedRows : public WithFolder {
protected:
    static Date today() { return Date{2027, 4, 20}; }
    static calendar::Instant now() { return calendar::start_of_day_utc(today()); }
    std::filesystem::path home() const { return folder_ / "home"; }
    HouseholdStore make() const
    {
        auto made = home::demonstration({.today = today()}).value();
        return HouseholdStore::create(home(), made.household, made.history).value();
    }
    static home::SeedLot packet() { return {0, "Balcony tomato", "Solanum lycopersicum", 2026, 90.0, 60, "a gift"}; }
};

TEST_F(SeedRows, ComeBackAsTheyWerePutIn)
{
    auto store = make();
    const int lot = store.add_lot(packet(), today(), now()).value();
    const int tray =
        store.record(home::Tray{0, lot, Date{2027, 4, 1}, 20, 1, Celsius::from_degrees(21.0), "sill"}, today(), now())
            .value();
    ASSERT_TRUE(store.record(home::TrayCount{tray, Date{2027, 4, 10}, 14, false}, today(), now()));
    ASSERT_TRUE(store.record(home::TrayCount{tray, Date{2027, 4, 18}, 17, true}, today(), now()));
    const auto book = HouseholdStore::open(home()).value().seeds().value();
    ASSERT_EQ(book.lots.size(), 1U);
    EXPECT_EQ(book.lots.front().name, "Balcony tomato");
    EXPECT_EQ(book.lots.front().packed_year, 2026);
    EXPECT_EQ(book.lots.front().stated_percent, 90.0);
    EXPECT_EQ(book.lots.front().note, "a gift");
    EXPECT_EQ(book.seeds_left(lot), 40);
    ASSERT_EQ(book.trays.size(), 1U);
    EXPECT_EQ(book.trays.front().sown, (Date{2027, 4, 1}));
    EXPECT_EQ(book.trays.front().spot, 1);
    EXPECT_EQ(book.trays.front().mix, Celsius::from_degrees(21.0));
    ASSERT_EQ(book.counts.size(), 2U);
    EXPECT_EQ(book.latest_count(tray)->emerged, 17);
    EXPECT_TRUE(book.latest_count(tray)->last);
}

TEST_F(SeedRows, ADayCountedAnewTakesTheOldCountsPlace)
{
    auto store = make();
    const int lot = store.add_lot(packet(), today(), now()).value();
    const int tray = store.record(home::Tray{0, lot, Date{2027, 4, 1}, 20, {}, {}, {}}, today(), now()).value();
    ASSERT_TRUE(store.record(home::TrayCount{tray, Date{2027, 4, 10}, 14, false}, today(), now()));
    ASSERT_TRUE(store.record(home::TrayCount{tray, Date{2027, 4, 10}, 4, false}, today(), now()));
    const auto book = store.seeds().value();
    ASSERT_EQ(book.counts.size(), 1U);
    EXPECT_EQ(book.counts.front().emerged, 4);
}

TEST_F(SeedRows, UndoTakesThemOutAndRedoBringsThemBack)
{
    auto store = make();
    const int lot = store.add_lot(packet(), today(), now()).value();
    ASSERT_TRUE(store.record(home::Tray{0, lot, Date{2027, 4, 1}, 20, {}, {}, {}}, today(), now()));
    const auto undone = store.turn_back(HouseholdStore::Direction::Undo, now()).value();
    ASSERT_TRUE(undone);
    EXPECT_EQ(undone->kind, home::EventKind::Sown);
    EXPECT_EQ(store.seeds().value().trays.size(), 0U);
    EXPECT_EQ(store.seeds().value().seeds_left(lot), 60);
    ASSERT_TRUE(store.turn_back(HouseholdStore::Direction::Redo, now()).value());
    EXPECT_EQ(store.seeds().value().seeds_left(lot), 40);
    // A lot that is undone takes its trays with it.
    ASSERT_TRUE(store.turn_back(HouseholdStore::Direction::Undo, now()).value());
    ASSERT_TRUE(store.turn_back(HouseholdStore::Direction::Undo, now()).value());
    EXPECT_TRUE(store.seeds().value().lots.empty());
}

TEST_F(SeedRows, RefuseWhatCannotBeAndWriteNothing)
{
    auto store = make();
    const int lot = store.add_lot(packet(), today(), now()).value();
    const auto before = store.events().value().size();
    const auto twice = store.add_lot(packet(), today(), now());
    ASSERT_FALSE(twice);
    EXPECT_THAT(twice.error().message, HasSubstr("another name"));
    EXPECT_FALSE(store.record(home::Tray{0, lot, today(), 61, {}, {}, {}}, today(), now()));
    EXPECT_FALSE(store.record(home::Tray{0, lot, today(), 5, 9999, {}, {}}, today(), now()));
    EXPECT_FALSE(store.record(home::TrayCount{1, today(), 5, false}, today(), now()));
    auto none = packet();
    none.name = "Empty";
    none.seeds = 0;
    EXPECT_FALSE(store.add_lot(none, today(), now()));
    EXPECT_EQ(store.events().value().size(), before);
    EXPECT_EQ(store.seeds().value().lots.size(), 1U);
}

TEST_F(SeedRows, SeedlingsBecomePlantsOfTheHousehold)
{
    auto store = make();
    const int lot = store.add_lot(packet(), today(), now()).value();
    const int tray = store.record(home::Tray{0, lot, Date{2027, 4, 1}, 20, 1, {}, {}}, today(), now()).value();
    ASSERT_TRUE(store.record(home::TrayCount{tray, Date{2027, 4, 12}, 3, true}, today(), now()));
    const auto& tomato = *plants::SeedReference::built_in().find("Tomato").value();
    std::vector<home::Plant> young{home::make_seedling(tomato, "Tomato one"), home::make_seedling(tomato, "Tomato two")};
    young[0].spot = 1;
    const auto ids = store.pot_up(tray, young, today(), now());
    ASSERT_TRUE(ids) << ids.error().message;
    ASSERT_EQ(ids->size(), 2U);
    const auto household = store.load().value();
    EXPECT_EQ(household.plant(ids->at(0))->name, "Tomato one");
    EXPECT_EQ(household.plant(ids->at(0))->spot, 1);
    EXPECT_FALSE(household.plant(ids->at(1))->spot);
    EXPECT_EQ(store.seeds()->potted_from(tray), 2U);
    EXPECT_EQ(store.events(ids->at(0))->size(), 2U); // Moved and repotted.
    EXPECT_EQ(store.events(ids->at(1))->size(), 1U);
    const auto descents = store.descents().value();
    EXPECT_EQ(std::ranges::count(descents, std::optional<int>{tray}, &home::Descent::tray), 2);

    const auto refused = [&](int of_tray, std::vector<home::Plant> plants, Date on) {
        const auto potted = store.pot_up(of_tray, plants, on, now());
        return potted ? std::string{"taken"} : potted.error().message;
    };
    const auto third = home::make_seedling(tomato, "Tomato three");
    EXPECT_THAT(refused(99, {third}, today()), HasSubstr("no such tray"));
    EXPECT_THAT(refused(tray, {}, today()), HasSubstr("has 1 seedlings left to pot, not 0"));
    EXPECT_THAT(refused(tray, {third, third}, today()), HasSubstr("left to pot, not 2"));
    EXPECT_THAT(refused(tray, {third}, Date{2027, 3, 31}), HasSubstr("before their sowing"));
    EXPECT_THAT(refused(tray, {home::make_seedling(tomato, "Tomato one")}, today()), HasSubstr("name is taken"));
    EXPECT_EQ(store.seeds()->potted_from(tray), 2U);
    EXPECT_EQ(refused(tray, {third}, today()), "taken");
}

TEST_F(SeedRows, APottingIsTakenBackAsOne)
{
    auto store = make();
    const int lot = store.add_lot(packet(), today(), now()).value();
    const int tray = store.record(home::Tray{0, lot, Date{2027, 4, 1}, 20, 1, {}, {}}, today(), now()).value();
    ASSERT_TRUE(store.record(home::TrayCount{tray, Date{2027, 4, 12}, 3, true}, today(), now()));
    const auto plants_before = store.load()->plants.size();
    const auto events_before = store.events()->size();
    const auto young = home::seedlings_of(*store.seeds(), tray, 2).value();
    const auto ids = store.pot_up(tray, young, today(), now()).value();
    using enum HouseholdStore::Direction;
    const auto undone = store.turn_last(Undo, now()).value();
    ASSERT_TRUE(undone);
    EXPECT_EQ(std::get<home::Event>(*undone).detail("potted"), "2");
    EXPECT_EQ(store.load()->plants.size(), plants_before);
    EXPECT_EQ(store.events()->size(), events_before);
    EXPECT_EQ(store.seeds()->potted_from(tray), 0U);
    EXPECT_TRUE(store.descents()->empty());
    ASSERT_TRUE(store.turn_last(Redo, now()).value());
    EXPECT_EQ(store.seeds()->potted_from(tray), 2U);
    EXPECT_EQ(store.load()->plant(ids.front())->spot, 1);
    EXPECT_EQ(store.events(ids.front())->size(), 2U);
    ASSERT_TRUE(store.turn_back(Undo, now()).value()); // The same by the undo of events alone.
    EXPECT_EQ(store.seeds()->potted_from(tray), 0U);
    EXPECT_TRUE(store.pot_up(tray, young, today(), now())) << "the names are free again";
    EXPECT_EQ(store.seeds()->potted_from(tray), 2U);
}

TEST_F(SeedRows, AreMadeInAFileOfTheSixthSchema)
{
    const auto file = folder_ / "old.sqlite3";
    SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    ASSERT_TRUE(bring_up_to_date(database, file, known_migrations().first(6)));
    database.exec("INSERT INTO plants (id, name, kind, lethal_celsius, damage_celsius, safe_night_celsius, "
                  "heat_limit_celsius, light_to_survive_moles, light_to_thrive_moles, must_dry, hazardous, sulks, "
                  "pot_kilograms, wants_open_air) VALUES (7, 'Fig', 'Ficus benjamina', 1, 5, 10, 35, 1, 3, 0, 0, 1, 4, 0)");
    ASSERT_TRUE(bring_up_to_date(database, file, known_migrations()));
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM plants WHERE id = 7 AND from_tray_id IS NULL").getInt(), 1);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM seed_lots").getInt(), 0);
}

} // namespace
} // namespace lathhouse::journal
