#include "app/models/mend_model.h"
#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "tests/models/start_fixtures.h"

#include <QSignalSpy>

#include <algorithm>

namespace lathhouse::models {
namespace {

/// A folder with the demonstration household, changed through the model.
class MendModelTest : public testing::Test {
protected:
    MendModelTest()
        : store(journal::HouseholdStore::create(folder.path(), home::demonstration({.today = kStartToday})->household).value()),
          model(mend_in_folder(folder.path(), [this] { return load(); }, shipped_door()), {kStartToday, british_words()}),
          written(&model, &MendModel::written)
    {
    }
    Result<plan::HouseholdFacts> load()
    {
        const auto household = journal::HouseholdStore::open(folder.path())->load();
        const auto climate = shipped_door().climate(household->place.position, household->place.elevation);
        return plan::HouseholdFacts{.as_told = *household, .log = {}, .events = {}, .climate = *climate, .seeds = store.seeds().value()};
    }
    home::Household now_there() { return store.load().value(); }
    void opened()
    {
        wait_until_still(model);
        ASSERT_EQ(model.error(), QString{});
        ASSERT_NE(model.form(), MendModel::None);
    }
    void kept()
    {
        model.keep();
        wait_until_still(model);
        ASSERT_EQ(model.error(), QString{});
        ASSERT_EQ(model.form(), MendModel::None);
    }
    /// As the window does for every page.
    void turn(journal::HouseholdStore::Direction direction)
    {
        const auto turned = store.turn_last(direction, calendar::start_of_day_utc(kStartToday));
        ASSERT_TRUE(turned);
        ASSERT_TRUE(*turned);
    }
    FreshFolder folder;
    journal::HouseholdStore store;
    MendModel model;
    QSignalSpy written;
};

TEST_F(MendModelTest, PlantsAreAddedTakenBackAndDoneAgain)
{
    const auto before = now_there().plants.size();
    model.addPlants();
    opened();
    model.plants()->setFind(QStringLiteral("Ocimum basilicum"));
    model.plants()->pick(0);
    model.plants()->pick(0);
    kept();
    EXPECT_EQ(now_there().plants.size(), before + 2);
    EXPECT_EQ(model.said(), QStringLiteral("Added 2 plants."));
    EXPECT_EQ(written.count(), 1);
    turn(journal::HouseholdStore::Direction::Undo);
    EXPECT_EQ(now_there().plants.size(), before);
    turn(journal::HouseholdStore::Direction::Redo);
    EXPECT_EQ(now_there().plants.size(), before + 2);
}

TEST_F(MendModelTest, ASpotIsAddedChangedAndTakenOff)
{
    model.addSpots();
    opened();
    model.spots()->addReady(8);
    kept();
    const auto spots = now_there().spots;
    EXPECT_EQ(spots.back().name, "Glasshouse");
    EXPECT_GT(spots.back().walking_order, spots.front().walking_order);
    model.editSpot(static_cast<int>(spots.size()) - 1);
    opened();
    model.spots()->setName(QStringLiteral("Cold frame"));
    model.spots()->setPots(QStringLiteral("4"));
    kept();
    EXPECT_EQ(now_there().spots.back().name, "Cold frame");
    EXPECT_EQ(now_there().spots.back().capacity, 4);
    model.editSpot(static_cast<int>(spots.size()) - 1);
    opened();
    model.removeSpot();
    wait_until_still(model);
    EXPECT_EQ(now_there().spots.size(), spots.size() - 1);
}

TEST_F(MendModelTest, ASpotThatWasNotTouchedStaysAsItWas)
{
    const auto before = now_there().spots;
    for (int spot = 0; spot < static_cast<int>(before.size()); ++spot) {
        model.editSpot(spot);
        opened();
        kept();
        const auto& was = before[static_cast<std::size_t>(spot)];
        const auto is = now_there().spots[static_cast<std::size_t>(spot)];
        EXPECT_EQ(is.view, was.view) << was.name;
        EXPECT_EQ(is.winter, was.winter) << was.name;
        EXPECT_EQ(is.capacity, was.capacity);
        EXPECT_EQ(is.in_reach, was.in_reach);
        EXPECT_EQ(is.short_name, was.short_name);
    }
}

TEST_F(MendModelTest, ASpotWithPlantsIsNotTakenOff)
{
    model.editSpot(0);
    opened();
    model.removeSpot();
    wait_until_still(model);
    EXPECT_TRUE(model.error().contains(QStringLiteral("move it first"))) << model.error().toStdString();
    EXPECT_EQ(model.form(), MendModel::EditSpot);
}

TEST_F(MendModelTest, APlantHasItsOwnLinesPotAndSpot)
{
    const auto before = now_there().plants.front();
    model.editPlant(before.id);
    opened();
    auto& form = *model.plant();
    form.setProperty("name", QString::fromStdString(now_there().plants.back().name));
    model.keep();
    EXPECT_NE(model.form(), MendModel::None);
    EXPECT_FALSE(form.nameTrouble().isEmpty());
    form.setProperty("name", QStringLiteral("Old fig"));
    form.setProperty("volume", QStringLiteral("11,5"));
    form.setProperty("shade", 2);
    form.setProperty("damage", QStringLiteral("30"));
    EXPECT_FALSE(form.linesTrouble().isEmpty());
    form.setProperty("damage", QStringLiteral("2.5"));
    form.setProperty("lethal", QStringLiteral("-1"));
    form.setProperty("pinned", 1);
    kept();
    const auto plant = *now_there().plant(before.id);
    EXPECT_EQ(plant.name, "Old fig");
    EXPECT_EQ(plant.pot_volume, Litres::from_litres(11.5));
    EXPECT_EQ(plant.pot_shade, home::PotShade::Dark);
    EXPECT_EQ(plant.lines.damage_begins, Celsius::from_degrees(2.5));
    EXPECT_EQ(plant.lines.safe_night, before.lines.safe_night);
    EXPECT_EQ(plant.pinned_spot, now_there().spots.front().id);
    turn(journal::HouseholdStore::Direction::Undo);
    EXPECT_EQ(now_there().plant(before.id)->name, before.name);
}

TEST_F(MendModelTest, ThePlaceIsChanged)
{
    model.editPlace();
    opened();
    wait_until_still(*model.place());
    EXPECT_EQ(model.place()->zone(), QString::fromStdString(now_there().place.time_zone));
    model.place()->setZone(QStringLiteral("Nowhere"));
    model.keep();
    EXPECT_EQ(model.form(), MendModel::EditPlace);
    model.place()->setFind(QStringLiteral("47.07, 15.44"));
    model.place()->setZone(QStringLiteral("Europe/Vienna"));
    wait_until_still(*model.place());
    kept();
    EXPECT_NEAR(now_there().place.position.longitude.degrees(), 15.44, 1e-9);
    turn(journal::HouseholdStore::Direction::Undo);
    EXPECT_NEAR(now_there().place.position.longitude.degrees(), 20.8, 1e-9);
}

TEST_F(MendModelTest, ALotIsAddedAndTakenBack)
{
    model.addLot();
    opened();
    model.keep();
    EXPECT_EQ(model.lot()->troubleField(), 0);
    model.lot()->setCrop(QStringLiteral("tomat"));
    ASSERT_GT(model.lot()->crops()->count(), 0);
    model.lot()->choose(0);
    model.lot()->setProperty("percent", QStringLiteral("140"));
    model.keep();
    EXPECT_EQ(model.lot()->troubleField(), 3);
    model.lot()->setProperty("percent", QStringLiteral("85"));
    model.lot()->setProperty("year", QStringLiteral("2025"));
    kept();
    ASSERT_EQ(store.seeds()->lots.size(), 1U);
    EXPECT_EQ(store.seeds()->lots.front().crop, "Solanum lycopersicum");
    turn(journal::HouseholdStore::Direction::Undo);
    EXPECT_TRUE(store.seeds()->lots.empty());
}

} // namespace
} // namespace lathhouse::models
