#include "core/home/household_change.h"

#include "core/home/demonstration.h"
#include "core/home/lineage.h"
#include "core/home/member.h"
#include "core/journal/household_store.h"
#include "tests/journal/short_names.h"
#include "tests/journal/temporary_folder.h"

#include <algorithm>
#include <span>

namespace lathhouse::journal {
namespace {

class StoredChange : public WithFolder {
protected:
    StoredChange() : store(HouseholdStore::create(folder_ / "home", home::demonstration({.today = kDate})->household).value()) {}
    static calendar::Instant now() { return calendar::start_of_day_utc(kDate); }
    home::Household loaded() const { return store.load().value(); }
    void make(const home::HouseholdChange& change)
    {
        const auto made = store.change(change, kDate, now());
        ASSERT_TRUE(made) << made.error().message;
    }
    home::Plant new_plant(const std::string& name, std::optional<home::SpotId> spot) const
    {
        auto plant = loaded().plants.front();
        plant.id = 0;
        plant.name = name;
        plant.spot = spot;
        plant.pinned_spot.reset();
        return plant;
    }
    home::Spot new_spot(const std::string& name) const
    {
        auto spot = loaded().spots.front();
        spot.id = 0;
        spot.name = name;
        return spot;
    }
    HouseholdStore store;
};

TEST_F(StoredChange, PlantsAreAddedAndTakenBackAsOneAcrossARestart)
{
    const auto before = loaded().plants.size();
    make({.words = "Added 2 plants", .plants = {new_plant("First", 1), new_plant("Second", std::nullopt)}});
    EXPECT_EQ(loaded().plants.size(), before + 2);
    EXPECT_EQ(loaded().plant_called("First")->spot, 1);
    store = HouseholdStore::open(folder_ / "home").value();
    const auto undone = store.turn_last(kUndo, now()).value();
    ASSERT_TRUE(undone);
    EXPECT_EQ(std::get<home::Event>(*undone).note, "Added 2 plants");
    EXPECT_EQ(loaded().plants.size(), before);
    EXPECT_TRUE(store.events()->empty());
    // The name is free again.
    make({.words = "Added First", .plants = {new_plant("First", std::nullopt)}});
    EXPECT_EQ(loaded().plants.size(), before + 1);
}

TEST_F(StoredChange, ANameOfAPlantThatIsGoneIsStillTaken)
{
    const auto gone = loaded().plants.back();
    const home::Event died{gone.id, home::EventKind::Died, {}, kDate, now(), ""};
    ASSERT_TRUE(store.record(std::span{&died, 1}));
    const auto before = store.events()->size();
    const auto made = store.change({.words = "Added", .plants = {new_plant(gone.name, std::nullopt)}}, kDate, now());
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(made.error().message.find("those of plants that are gone"), std::string::npos) << made.error().message;
    EXPECT_EQ(store.events()->size(), before);
    EXPECT_EQ(loaded().plant_called(gone.name), nullptr);
}

TEST_F(StoredChange, WhatWasTakenBackIsBroughtBack)
{
    make({.words = "Added", .plants = {new_plant("First", 2)}});
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_EQ(loaded().plant_called("First"), nullptr);
    EXPECT_EQ(std::ranges::count(store.gone_plants().value(), home::GoneHow::Undone, &home::GonePlant::how), 1);
    ASSERT_TRUE(store.turn_last(kRedo, now()).value());
    ASSERT_NE(loaded().plant_called("First"), nullptr);
    EXPECT_EQ(loaded().plant_called("First")->spot, 2);
    EXPECT_TRUE(store.gone_plants()->empty());
}

TEST_F(StoredChange, TheUndoOfEventsAloneTakesItBackToo)
{
    make({.words = "Added", .plants = {new_plant("First", 2)}});
    ASSERT_TRUE(store.turn_back(kUndo, now()).value());
    EXPECT_EQ(loaded().plant_called("First"), nullptr);
    EXPECT_FALSE(store.turn_back(kUndo, now()).value());
    ASSERT_TRUE(store.turn_back(kRedo, now()).value());
    ASSERT_NE(loaded().plant_called("First"), nullptr);
    EXPECT_EQ(loaded().plant_called("First")->spot, 2);
}

TEST_F(StoredChange, APlantsOwnLinesAreKeptAndRestoredToTheBit)
{
    const auto before = loaded().plants.front();
    auto plant = before;
    plant.name = "Old fig";
    plant.lines.damage_begins = Celsius::from_degrees(1.0 / 3.0);
    plant.lines.lethal = Celsius::from_degrees(-7.1);
    plant.pot_volume = Litres::from_litres(11.3);
    plant.pinned_spot = 2;
    make({.words = "Changed", .plants = {plant}});
    const auto changed = loaded().plants.front();
    EXPECT_EQ(changed.name, "Old fig");
    EXPECT_EQ(changed.lines, plant.lines);
    EXPECT_EQ(changed.pinned_spot, 2);
    EXPECT_EQ(changed.spot, before.spot);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_EQ(loaded().plants.front().lines, before.lines);
    EXPECT_EQ(loaded().plants.front().name, before.name);
    ASSERT_TRUE(store.turn_last(kRedo, now()).value());
    EXPECT_EQ(loaded().plants.front().lines.damage_begins, plant.lines.damage_begins);
}

TEST_F(StoredChange, PinsAreUndoneAndRedoneAsTheyWereSet)
{
    const home::Pin out{4, 3, kDate + calendar::Days{20}, kDate + calendar::Days{30}};
    const home::Pin in{4, 1, kDate + calendar::Days{31}, kDate + calendar::Days{40}};
    make({.words = "The first", .pins = {out}});
    make({.words = "Both", .unpinned = {4}, .pins = {in, out}});
    EXPECT_EQ(loaded().pins, (std::vector{in, out}));
    store = HouseholdStore::open(folder_ / "home").value();
    const auto undone = store.turn_last(kUndo, now()).value();
    ASSERT_TRUE(undone);
    EXPECT_EQ(std::get<home::Event>(*undone).note, "Both");
    EXPECT_EQ(loaded().pins, std::vector{out});
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_TRUE(loaded().pins.empty());
    ASSERT_TRUE(store.turn_last(kRedo, now()).value());
    EXPECT_EQ(loaded().pins, std::vector{out});
    ASSERT_TRUE(store.turn_last(kRedo, now()).value());
    EXPECT_EQ(loaded().pins, (std::vector{in, out}));
}

TEST_F(StoredChange, UndoOfAnUnpinPinsAgainForGood)
{
    auto plant = loaded().plants.front();
    plant.pinned_spot = 2;
    make({.words = "Always", .plants = {plant}});
    make({.words = "No longer", .unpinned = {plant.id}});
    EXPECT_FALSE(loaded().plants.front().pinned_spot);
    ASSERT_TRUE(store.turn_back(kUndo, now()).value());
    EXPECT_EQ(loaded().plants.front().pinned_spot, 2);
}

TEST_F(StoredChange, PinsOfWhatIsNotThereAreRefusedWhole)
{
    EXPECT_EQ(store.change({.words = "", .pins = {{4, 1, kDate, kDate}, {999, 1, kDate, kDate}}}, kDate, now()).error().code,
              ErrorCode::NotFound);
    EXPECT_EQ(store.change({.words = "", .pins = {{4, 1, kDate, kDate - calendar::Days{1}}}}, kDate, now()).error().code,
              ErrorCode::OutOfRange);
    EXPECT_EQ(store.change({.words = "", .unpinned = {999}}, kDate, now()).error().code, ErrorCode::NotFound);
    EXPECT_TRUE(loaded().pins.empty());
    EXPECT_TRUE(store.events()->empty());
}

TEST_F(StoredChange, ASpotIsChangedWithItsView)
{
    const auto before = loaded().spots.front();
    auto spot = before;
    spot.name = "Bay";
    spot.capacity = 2;
    spot.view.reset();
    make({.words = "Changed", .spots = {spot}});
    EXPECT_EQ(loaded().spots.front().name, "Bay");
    EXPECT_FALSE(loaded().spots.front().view);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_EQ(loaded().spots.front().capacity, before.capacity);
    EXPECT_EQ(loaded().spots.front().view, before.view);
    ASSERT_TRUE(store.turn_last(kRedo, now()).value());
    EXPECT_FALSE(loaded().spots.front().view);
}

TEST_F(StoredChange, WhatAMemberReachesIsNoMarkByHandOnceTheSpotIsChanged)
{
    const auto in_reach = [this](const char* spot) { return loaded().spot_called(spot)->in_reach; };
    ASSERT_FALSE(in_reach("South sill"));
    ASSERT_TRUE(in_reach("East sill")) << "marked by hand";
    const home::Member cat{1, home::MemberKind::Cat, "Mia", {1, 2}};
    const auto comes = home::event_of_member(cat, kDate, now(), "");
    ASSERT_TRUE(store.record(std::span{&comes, 1}));
    ASSERT_TRUE(in_reach("South sill"));
    for (auto spot : loaded().spots) {
        spot.capacity += 1;
        make({.words = "Changed", .spots = {spot}});
    }
    EXPECT_TRUE(in_reach("South sill")) << "the cat is there";
    const auto goes = home::event_of_parting(cat, kDate, now(), "");
    ASSERT_TRUE(store.record(std::span{&goes, 1}));
    EXPECT_FALSE(in_reach("South sill"));
    EXPECT_TRUE(in_reach("East sill"));
    auto landing = *loaded().spot_called("Cool landing");
    landing.in_reach = true;
    make({.words = "Changed", .spots = {landing}});
    EXPECT_TRUE(in_reach("Cool landing"));
}

TEST_F(StoredChange, AnEmptySpotGoesAndComesBackUsedOnesStay)
{
    make({.words = "Added", .spots = {new_spot("Attic")}});
    const auto attic = loaded().spot_called("Attic")->id;
    make({.words = "Took Attic off", .spots_gone = {attic}});
    EXPECT_EQ(loaded().spot_called("Attic"), nullptr);
    make({.words = "Added", .spots = {new_spot("Attic")}}); // Another of the name.
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    ASSERT_NE(loaded().spot_called("Attic"), nullptr);
    EXPECT_EQ(loaded().spot_called("Attic")->id, attic);
    const home::Event moved{1, home::EventKind::Moved, attic, kDate, now(), {}};
    ASSERT_TRUE(store.record(std::span{&moved, 1}));
    EXPECT_EQ(store.change({.words = "Off", .spots_gone = {attic}}, kDate, now()).error().code, ErrorCode::OutOfRange);
    const home::Event away{1, home::EventKind::Moved, 1, kDate, now(), {}};
    ASSERT_TRUE(store.record(std::span{&away, 1}));
    const auto told = store.change({.words = "Off", .spots_gone = {attic}}, kDate, now());
    ASSERT_FALSE(told); // Its history is kept.
    EXPECT_NE(told.error().message.find("0 pots"), std::string::npos);
}

TEST_F(StoredChange, ThePlaceIsChangedAndTakenBack)
{
    const auto before = loaded().place;
    const home::Place hill{"Hill", {Latitude::literal(47.1), Longitude::literal(15.4)}, std::nullopt, "Europe/Vienna"};
    make({.words = "Changed the place", .name = "Ours", .place = hill});
    EXPECT_EQ(loaded().name, "Ours");
    EXPECT_EQ(loaded().place.time_zone, "Europe/Vienna");
    EXPECT_FALSE(loaded().place.elevation);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_EQ(loaded().place.name, before.name);
    EXPECT_EQ(loaded().place.position.latitude, before.position.latitude);
    EXPECT_EQ(loaded().place.elevation, before.elevation);
}

TEST_F(StoredChange, WhatIsAddedByItselfKeepsTheSameRules)
{
    auto spot = new_spot("south SILL ");
    EXPECT_EQ(store.add(spot).error().code, ErrorCode::OutOfRange);
    spot.name = "  ";
    EXPECT_EQ(store.add(spot).error().code, ErrorCode::OutOfRange);
    auto plant = loaded().plants.front();
    for (auto& letter : plant.name) {
        letter = letter >= 'a' && letter <= 'z' ? static_cast<char>(letter - 'a' + 'A') : letter;
    }
    ASSERT_NE(plant.name, loaded().plants.front().name);
    const auto made = store.add(plant, kDate, now());
    ASSERT_FALSE(made) << "two plants that nobody could tell apart by name";
    EXPECT_EQ(made.error().code, ErrorCode::OutOfRange);
    spot.name = "Attic";
    EXPECT_TRUE(store.add(spot));
}

TEST_F(StoredChange, WhatIsRefusedLeavesNothingBehind)
{
    const auto before = loaded().plants.size();
    const auto made = store.change({.words = "Added", .spots = {new_spot("Attic")}, .plants = {new_plant(loaded().plants.back().name, 1)}},
                                   kDate, now());
    EXPECT_EQ(made.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(loaded().plants.size(), before);
    EXPECT_EQ(loaded().spot_called("Attic"), nullptr);
    EXPECT_FALSE(store.turn_last(kUndo, now()).value());
}

} // namespace
} // namespace lathhouse::journal
