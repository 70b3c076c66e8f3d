#include "app/models/mend_model.h"
#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "tests/models/start_fixtures.h"

#include <QRegularExpression>
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

TEST_F(MendModelTest, AnotherPlantTakenOffTheListLeavesTheSameOneChosen)
{
    model.addPlants();
    opened();
    auto& form = *model.plants();
    for (const char* kind : {"Ocimum basilicum", "Ficus carica", "Citrus limon"}) {
        form.setFind(QString::fromLatin1(kind));
        form.pick(0);
    }
    form.setCurrent(1);
    const QString chosen = form.currentName();
    form.fewer(0);
    EXPECT_EQ(form.currentName(), chosen);
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

TEST_F(MendModelTest, EveryMeasureOfAWindowReachesTheSpot)
{
    model.editSpot(0);
    opened();
    auto& form = *model.spots();
    ASSERT_EQ(form.kind(), 0);
    const auto type = [&](SpotMeasure measure, const char* typed) { form.setMeasure(static_cast<int>(measure), QString::fromUtf8(typed)); };
    type(SpotMeasure::Width, "150");
    type(SpotMeasure::Height, "40 in");
    type(SpotMeasure::Sill, "−15");
    type(SpotMeasure::Sideways, "20");
    type(SpotMeasure::Overhang, "75,5");
    type(SpotMeasure::Opposite, "30°");
    type(SpotMeasure::Panes, "3");
    type(SpotMeasure::Passes, "65 %");
    kept();
    const auto figures = now_there().spots.front().view->figures();
    EXPECT_DOUBLE_EQ(figures.width.metres(), 1.5);
    EXPECT_DOUBLE_EQ(figures.height.metres(), 40 * 0.0254);
    EXPECT_DOUBLE_EQ(figures.sill.metres(), -0.15);
    EXPECT_DOUBLE_EQ(figures.sideways.metres(), 0.2);
    EXPECT_DOUBLE_EQ(figures.overhang.metres(), 0.755);
    EXPECT_DOUBLE_EQ(figures.opposite.degrees(), 30.0);
    EXPECT_EQ(figures.panes, 3);
    EXPECT_DOUBLE_EQ(figures.passes, 0.65);
    model.editSpot(0); // Opened again and not touched it stays, the part of a centimetre too.
    opened();
    EXPECT_EQ(model.spots()->windowMeasures()->at(5, QStringLiteral("value")).toString(), QStringLiteral("76"));
    kept();
    EXPECT_EQ(now_there().spots.front().view->figures(), figures);
    model.editSpot(0);
    opened();
    type(SpotMeasure::Panes, ""); // Blank is the usual one.
    kept();
    EXPECT_EQ(now_there().spots.front().view->figures().panes, 2);
}

TEST_F(MendModelTest, AMeasureThatCannotBeIsRefusedInTheUnitThatWasTyped)
{
    model.editSpot(0);
    opened();
    auto& form = *model.spots();
    const auto trouble_of = [&](SpotMeasure measure, const char* typed) {
        form.setMeasure(static_cast<int>(measure), QString::fromUtf8(typed));
        const QString trouble = form.measuresTrouble();
        form.setMeasure(static_cast<int>(measure), QString{});
        return trouble;
    };
    EXPECT_EQ(trouble_of(SpotMeasure::Width, "4"), QStringLiteral("Glass, width: This lies from 5 to 3,000 cm."));
    EXPECT_EQ(trouble_of(SpotMeasure::Width, "1 in"), QStringLiteral("Glass, width: This lies from 2 to 1,181 in."));
    EXPECT_EQ(trouble_of(SpotMeasure::Width, "5"), QString{});
    EXPECT_EQ(trouble_of(SpotMeasure::Opposite, "90"), QStringLiteral("House opposite: This lies from 0 to 89 °."));
    EXPECT_TRUE(trouble_of(SpotMeasure::Panes, "1.5").contains(QStringLiteral("whole numbers")));
    EXPECT_TRUE(trouble_of(SpotMeasure::Passes, "101").contains(QStringLiteral("from 0 to 100 %")));
    EXPECT_TRUE(trouble_of(SpotMeasure::Sill, "low").contains(QStringLiteral("not a number")));
    EXPECT_TRUE(trouble_of(SpotMeasure::SummerLight, "12").contains(QStringLiteral("both figures"))); // The other is missing.
    EXPECT_EQ(trouble_of(SpotMeasure::Behind, "90"), QString{}); // A window has none.
}

TEST_F(MendModelTest, TypedLightAndNightsAreThoseOfTheSpot)
{
    model.addSpots();
    opened();
    auto& form = *model.spots();
    const auto type = [&](SpotMeasure measure, const char* typed) { form.setMeasure(static_cast<int>(measure), QString::fromUtf8(typed)); };
    form.addReady(5);
    type(SpotMeasure::SummerLight, "18.25");
    type(SpotMeasure::WinterLight, "3,5 mol");
    type(SpotMeasure::Milder, "4.5 °F");
    type(SpotMeasure::Spread, "0.75");
    kept();
    const auto added = now_there().spots.back();
    EXPECT_FALSE(added.view);
    EXPECT_DOUBLE_EQ(added.light_in_summer.moles(), 18.25);
    EXPECT_DOUBLE_EQ(added.light_in_winter.moles(), 3.5);
    EXPECT_NEAR(added.offset.mean.kelvins(), 2.5, 1e-12);
    EXPECT_DOUBLE_EQ(added.offset.spread.kelvins(), 0.75);
    const int last = static_cast<int>(now_there().spots.size()) - 1;
    model.editSpot(last);
    opened();
    EXPECT_EQ(model.spots()->lightMeasures()->at(1, QStringLiteral("value")).toString(), QStringLiteral("3.5"));
    model.spots()->setKind(1); // By a slip, and back.
    EXPECT_EQ(model.spots()->nightMeasures()->at(0, QStringLiteral("value")).toString(), QString{});
    model.spots()->setKind(2);
    kept();
    EXPECT_EQ(now_there().spots.back().offset, added.offset);
    EXPECT_EQ(now_there().spots.back().light_in_summer, added.light_in_summer);
    EXPECT_FALSE(now_there().spots.back().view);
    model.editSpot(last);
    opened();
    model.spots()->setKind(1); // Another kind has its own.
    kept();
    EXPECT_NE(now_there().spots.back().offset.mean, added.offset.mean);
    EXPECT_TRUE(now_there().spots.back().view);
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

TEST_F(MendModelTest, APlaceIsKeptOnlyOnceItIsKnownWhatItGives)
{
    const auto before = now_there().place;
    model.editPlace();
    opened();
    wait_until_still(*model.place());
    model.place()->setZone(QStringLiteral("Pacific/Easter"));
    model.place()->setFind(QStringLiteral("-48.88, -123.39")); // No land, and no station, within 2600 km.
    model.keep();
    wait_until_still(*model.place());
    wait_until_still(model);
    EXPECT_EQ(model.form(), MendModel::EditPlace);
    EXPECT_EQ(model.error(), model.place()->givenTrouble());
    EXPECT_NE(model.error(), QString{});
    EXPECT_NEAR(now_there().place.position.longitude.degrees(), before.position.longitude.degrees(), 1e-9);
    model.place()->setFind(QStringLiteral("47.07, 15.44"));
    model.keep();
    wait_until_still(*model.place());
    wait_until_still(model);
    EXPECT_EQ(model.form(), MendModel::None) << model.error().toStdString();
    EXPECT_NEAR(now_there().place.position.longitude.degrees(), 15.44, 1e-9);
}

TEST_F(MendModelTest, AnotherPlaceHasItsOwnNameHeightAndZone)
{
    const auto before = now_there().place;
    ASSERT_TRUE(before.elevation);
    model.editPlace();
    opened();
    wait_until_still(*model.place());
    auto& form = *model.place();
    const auto is_as_before = [&] {
        const auto place = form.place();
        ASSERT_TRUE(place);
        EXPECT_EQ(place->name, before.name);
        EXPECT_EQ(place->time_zone, before.time_zone);
        EXPECT_EQ(place->elevation, before.elevation);
    };
    is_as_before();
    form.setFind(QStringLiteral("Sydney"));
    wait_until_still(form);
    ASSERT_GT(form.found()->count(), 0);
    form.choose(0);
    wait_until_still(form);
    EXPECT_EQ(form.name(), "Sydney");
    EXPECT_EQ(form.zone(), "Australia/Sydney");
    EXPECT_NE(form.place()->elevation, before.elevation);
    // Back, and a little beside it: what was told of it stays.
    form.setLatitude(QString::number(before.position.latitude.degrees() + 0.01));
    form.setLongitude(QString::number(before.position.longitude.degrees()));
    wait_until_still(form);
    is_as_before();
    form.setZone(QStringLiteral("Europe/London"));
    form.setFind(QStringLiteral("-33.87, 151.21"));
    wait_until_still(form);
    EXPECT_EQ(form.zone(), "Europe/London") << "as it was typed";
}

TEST_F(MendModelTest, APotThatWasNotTouchedKeepsItsVolumeAndWeight)
{
    auto plant = now_there().plants.front();
    plant.pot_volume = Litres::from_litres(9.0);
    plant.pot_kilograms = 7.0;
    for (const auto units : {Units::Metric, Units::Us}) {
        PlantForm form(british_words(units));
        form.fill(plant, now_there(), {});
        EXPECT_EQ(form.plant().pot_volume, plant.pot_volume) << form.property("volume").toString().toStdString();
        EXPECT_EQ(form.plant().pot_kilograms, plant.pot_kilograms);
    }
    plant.pot_kilograms = 1200.0;
    PlantForm form(british_words());
    form.fill(plant, now_there(), {});
    EXPECT_EQ(form.property("weight"), "1200") << "a mark between thousands is read as a point";
    form.setProperty("volume", QString{});
    form.setProperty("weight", QStringLiteral("1300"));
    EXPECT_EQ(form.plant().pot_volume, std::nullopt);
    EXPECT_EQ(form.plant().pot_kilograms, 1300.0);
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

TEST_F(MendModelTest, ALotIsOfTheCropThatIsLookedAtAndCalledAfterItsYear)
{
    QSignalSpy added(&model, &MendModel::lotAdded);
    model.addLot(QStringLiteral("Zinnia"));
    opened();
    EXPECT_EQ(model.lot()->crop(), "Zinnia");
    kept();
    ASSERT_EQ(store.seeds()->lots.size(), 1U);
    const QString name = text(store.seeds()->lots.front().name);
    EXPECT_TRUE(QRegularExpression("^Zinnia 20\\d\\d$").match(name).hasMatch()) << name.toStdString();
    ASSERT_EQ(added.count(), 1);
    EXPECT_EQ(added.front().front().toString(), name);
    model.addLot(QStringLiteral("Zinnia")); // The same once more.
    opened();
    model.keep();
    EXPECT_EQ(model.lot()->troubleField(), 1);
    EXPECT_EQ(model.lot()->property("name").toString(), name);
}

TEST_F(MendModelTest, APlantIsKeptAtASpotFromOneEveningToAnother)
{
    const auto plant = now_there().plants.front();
    const auto spots = now_there().spots;
    const auto year = static_cast<unsigned short>(kStartToday.year() + 1);
    model.planMove(plant.id, spots[2].id);
    opened();
    EXPECT_EQ(model.pin()->property("spot").toInt(), 2) << "where it is to go";
    model.leave();
    model.pinPlant(plant.id);
    opened();
    auto& form = *model.pin();
    EXPECT_EQ(form.spots().size(), static_cast<qsizetype>(spots.size()));
    EXPECT_EQ(spots[static_cast<std::size_t>(form.property("spot").toInt())].id, *plant.spot) << "where it stands";
    form.setProperty("spot", 1);
    const auto refused = [&](const QString& from, const QString& to, int field, const QString& words) {
        form.setProperty("from", from);
        form.setProperty("to", to);
        model.keep();
        wait_until_still(model);
        EXPECT_EQ(model.form(), MendModel::PinPlant);
        EXPECT_EQ(form.troubleField(), field);
        EXPECT_TRUE(form.trouble().contains(words)) << form.trouble().toStdString();
    };
    const QString first = QStringLiteral("1.2.%1").arg(year);
    const QString last = QStringLiteral("28.2.%1").arg(year);
    refused(first, {}, 2, QStringLiteral("both evenings"));
    refused({}, last, 1, QStringLiteral("both evenings"));
    refused(QStringLiteral("soon"), last, 1, QStringLiteral("“soon” is no date"));
    refused(first, QStringLiteral("30.2.%1").arg(year), 2, QStringLiteral("is no date"));
    refused(last, first, 2, QStringLiteral("exchange the two"));
    refused(QStringLiteral("1.1.2020"), QStringLiteral("2.1.2020"), 2, QStringLiteral("is over"));
    EXPECT_TRUE(now_there().pins.empty());
    form.setProperty("from", first);
    EXPECT_EQ(form.trouble(), QString{}) << "gone with the next word";
    form.setProperty("to", last);
    kept();
    const home::Pin pin{plant.id, spots[1].id, {year, 2, 1}, {year, 2, 28}};
    EXPECT_EQ(now_there().pins, std::vector{pin});
    EXPECT_EQ(model.said(), QStringLiteral("%1 is kept at %2 from 1 February %3 to 28 February %3.")
                                .arg(QString::fromStdString(plant.name), QString::fromStdString(spots[1].name))
                                .arg(year));
    turn(journal::HouseholdStore::Direction::Undo);
    EXPECT_TRUE(now_there().pins.empty());
    turn(journal::HouseholdStore::Direction::Redo);
    model.pinPlant(plant.id);
    opened();
    ASSERT_EQ(form.kept().size(), 1);
    EXPECT_TRUE(form.kept().front().contains(QString::fromStdString(spots[1].name)));
    form.setProperty("spot", 2);
    refused(last, last, 1, QStringLiteral("cannot stand in two places"));
    model.unpin();
    wait_until_still(model);
    EXPECT_EQ(model.form(), MendModel::None);
    EXPECT_TRUE(now_there().pins.empty());
}

TEST_F(MendModelTest, APlantIsKeptAlwaysAndAPoisonousOneNotInReach)
{
    auto household = now_there();
    const auto reached = std::ranges::find_if(household.spots, [](const home::Spot& spot) { return spot.in_reach; });
    const auto poisonous = std::ranges::find_if(household.plants, [](const home::Plant& plant) { return plant.hazardous; });
    const auto harmless = std::ranges::find_if(household.plants, [](const home::Plant& plant) { return !plant.hazardous; });
    ASSERT_NE(reached, household.spots.end());
    ASSERT_NE(poisonous, household.plants.end());
    ASSERT_NE(harmless, household.plants.end());
    const int spot = static_cast<int>(reached - household.spots.begin());
    model.pinPlant(poisonous->id);
    opened();
    model.pin()->setProperty("spot", spot);
    EXPECT_TRUE(model.pin()->caution().contains(QStringLiteral("poisonous or spiny"))) << model.pin()->caution().toStdString();
    model.leave();
    model.pinPlant(harmless->id);
    opened();
    model.pin()->setProperty("spot", spot);
    EXPECT_EQ(model.pin()->caution(), QString{});
    kept();
    EXPECT_EQ(now_there().plant(harmless->id)->pinned_spot, reached->id);
    model.pinPlant(harmless->id);
    opened();
    model.pin()->setProperty("spot", spot);
    model.keep();
    EXPECT_EQ(model.pin()->troubleField(), 0) << "it is kept there already";
    model.unpin();
    wait_until_still(model);
    EXPECT_EQ(now_there().plant(harmless->id)->pinned_spot, std::nullopt);
}

} // namespace
} // namespace lathhouse::models
