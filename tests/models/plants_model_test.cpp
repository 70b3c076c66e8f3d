#include "app/models/plants_model.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <algorithm>

namespace lathhouse::models {
namespace {

class PlantsModelTest : public testing::Test {
protected:
    PlantsModelTest()
        : household(std::make_shared<MemoryHousehold>(plain_facts())),
          model(plants_in_memory(household, demonstration_measurements(kShownToday)), british_look())
    {
        model.start();
        wait_for(model);
    }
    int shown_of(const QString& name)
    {
        auto* table = model.table();
        for (int row = 0; row < table->rowCount(); ++row) {
            if (table->data(table->index(row), PlantTable::NameRole).toString() == name) {
                return row;
            }
        }
        return -1;
    }
    QString in_table(int row, int role) { return model.table()->data(model.table()->index(row), role).toString(); }
    QVariant of_line(int line, int role) { return model.shelves()->data(model.shelves()->index(line), role); }
    int events_of(home::EventKind kind)
    {
        const auto facts = household->facts();
        return static_cast<int>(std::ranges::count(facts.events, kind, &home::Event::kind));
    }

    std::shared_ptr<MemoryHousehold> household;
    PlantsModel model;
};

TEST_F(PlantsModelTest, EveryPlantStandsOnTheShelfOfItsSpot)
{
    EXPECT_EQ(model.title(), "14 plants");
    int plants = 0;
    QString spot;
    for (int line = 0; line < model.shelves()->rowCount(); ++line) {
        const QString begins = of_line(line, PlantShelves::SpotRole).toString();
        spot = begins.isEmpty() ? spot : begins;
        for (const auto& name : of_line(line, PlantShelves::NamesRole).toStringList()) {
            const auto facts = household->facts();
            const auto* plant = facts.as_told.plant_called(name.toStdString());
            ASSERT_NE(plant, nullptr);
            EXPECT_EQ(text(facts.as_told.spot(*plant->spot)->name), spot);
            ++plants;
        }
    }
    EXPECT_EQ(plants, 14);
}

TEST_F(PlantsModelTest, FreePlacesAreThoseOfTheSpot)
{
    for (int line = 0; line < model.shelves()->rowCount(); ++line) {
        const auto names = of_line(line, PlantShelves::NamesRole).toStringList();
        const int free = of_line(line, PlantShelves::FreeRole).toInt();
        EXPECT_LE(names.size() + free, model.columns());
        EXPECT_GE(free, 0);
    }
    model.setFilter(PlantsModel::Poisonous);
    for (int line = 0; line < model.shelves()->rowCount(); ++line) {
        EXPECT_EQ(of_line(line, PlantShelves::FreeRole).toInt(), 0) << "a filtered shelf is not empty";
    }
}

TEST_F(PlantsModelTest, PestsFoundAreToldUnderTheName)
{
    const QString name = text(plain_facts().as_told.plants[1].name);
    EXPECT_EQ(in_table(shown_of(name), PlantTable::StateRole), "pests found");
    model.setFilter(PlantsModel::ToLookAt);
    EXPECT_GE(shown_of(name), 0);
}

TEST_F(PlantsModelTest, FiltersShowWhatTheyCount)
{
    for (int row = 0; row < model.filters()->rowCount(); ++row) {
        const int number = model.filters()->at(row, "words").toString().section(' ', -1).toInt();
        model.setFilter(model.filters()->at(row, "filter").toInt());
        EXPECT_EQ(model.shownCount(), number) << model.filters()->at(row, "words").toString().toStdString();
    }
    model.setFilter(99);
    EXPECT_NE(model.filter(), 99);
}

TEST_F(PlantsModelTest, FindTakesCommonBotanicalAndOwnNames)
{
    const auto& plant = plain_facts().as_told.plants.front();
    model.setFind(text(plant.kind).left(6).toUpper());
    EXPECT_GE(shown_of(text(plant.name)), 0);
    EXPECT_LT(model.shownCount(), 14);
    model.setFind("no such plant");
    EXPECT_EQ(model.shownCount(), 0);
    EXPECT_EQ(model.current(), -1);
    EXPECT_TRUE(model.target().isEmpty());
    EXPECT_FALSE(model.log(PlantsModel::Watered, {}, 0, {}));
    EXPECT_TRUE(model.error().startsWith("Choose a plant"));
    model.setFind({});
    EXPECT_EQ(model.shownCount(), 14);
}

TEST_F(PlantsModelTest, TableSortsBothWaysAndEmptyCellsComeLast)
{
    model.setByTable(true);
    const auto column = [this](int role) {
        QStringList cells;
        for (int row = 0; row < model.table()->rowCount(); ++row) {
            cells.append(in_table(row, role).toCaseFolded());
        }
        return cells;
    };
    QStringList names = column(PlantTable::NameRole);
    EXPECT_TRUE(std::ranges::is_sorted(names));
    model.sortBy(0);
    EXPECT_TRUE(model.descending());
    names = column(PlantTable::NameRole);
    EXPECT_TRUE(std::ranges::is_sorted(names, std::greater{}));
    model.sortBy(2);
    EXPECT_FALSE(model.descending());
    const QStringList states = column(PlantTable::StateRole);
    const auto first_empty = std::ranges::find(states, QString{});
    EXPECT_TRUE(std::all_of(first_empty, states.end(), [](const QString& of) { return of.isEmpty(); }));
    EXPECT_TRUE(std::is_sorted(states.begin(), first_empty));
}

TEST_F(PlantsModelTest, ArrowsWalkBetweenShelves)
{
    auto* shelves = model.shelves();
    model.setColumns(4);
    for (int shown = 0; shown < model.shownCount(); ++shown) {
        const int line = shelves->lineOf(shown);
        ASSERT_GE(line, 0);
        const int below = shelves->beside(shown, 1);
        EXPECT_GE(shelves->lineOf(below), line);
        EXPECT_GE(shelves->beside(shown, -1), 0);
    }
    EXPECT_EQ(shelves->beside(0, -1), 0);
    EXPECT_EQ(shelves->lineOf(999), -1);
}

TEST_F(PlantsModelTest, WateringSeveralIsOneEntryToTakeBack)
{
    const int before = events_of(home::EventKind::Watered);
    QSignalSpy written(&model, &SheetModel::written);
    model.mark(0);
    model.mark(1);
    EXPECT_EQ(model.target(), "2 plants");
    ASSERT_TRUE(model.log(PlantsModel::Watered, {}, 0, "rain barrel"));
    wait_for(model);
    EXPECT_EQ(model.said(), "2 plants: watered today.");
    EXPECT_EQ(events_of(home::EventKind::Watered), before + 2);
    EXPECT_EQ(household->facts().events.back().note, "rain barrel");
    model.undo();
    wait_for(model);
    EXPECT_EQ(events_of(home::EventKind::Watered), before);
    model.redo();
    wait_for(model);
    EXPECT_EQ(events_of(home::EventKind::Watered), before + 2);
    EXPECT_EQ(written.count(), 3);
    EXPECT_EQ(model.markedCount(), 2) << "marks stay";
}

TEST_F(PlantsModelTest, APlantThatDiedIsOffTheShelvesUntilItIsTakenBack)
{
    const auto all = household->facts().as_told.plants.size();
    const int id = model.shownId(0);
    model.openId(id);
    EXPECT_EQ(model.goneCount(), 0);
    const QString name = QString::fromStdString(household->facts().as_told.plant(id)->name);
    ASSERT_TRUE(model.log(PlantsModel::Died, {}, 0, "rotten at the base"));
    EXPECT_EQ(model.opened(), 0) << "its page is closed";
    wait_for(model);
    EXPECT_TRUE(model.said().contains("died today")) << model.said().toStdString();
    EXPECT_EQ(household->facts().as_told.plants.size(), all - 1);
    EXPECT_EQ(model.count(), static_cast<int>(all) - 1);
    EXPECT_EQ(model.goneCount(), 1);
    ASSERT_EQ(model.gone()->count(), 1);
    EXPECT_EQ(model.gone()->at(0, "plant").toInt(), id);
    EXPECT_EQ(model.gone()->at(0, "name").toString(), name);
    EXPECT_TRUE(model.gone()->at(0, "words").toString().startsWith("died on ")) << model.gone()->at(0, "words").toString().toStdString();
    model.undo();
    wait_for(model);
    EXPECT_EQ(model.count(), static_cast<int>(all));
    model.openId(id);
    EXPECT_EQ(model.opened(), id);
    ASSERT_TRUE(model.log(PlantsModel::Repotted, {}, 0, {}));
    wait_for(model);
    EXPECT_EQ(model.opened(), id);
    EXPECT_EQ(household->facts().events.back().kind, home::EventKind::Repotted);
}

TEST_F(PlantsModelTest, APlantThatIsGoneIsFoundAndTakesNotesAlone)
{
    const int id = model.shownId(0);
    const QString name = text(household->facts().as_told.plant(id)->name);
    model.openId(id);
    ASSERT_TRUE(model.log(PlantsModel::GivenAway, {}, 0, "to Anna"));
    wait_for(model);
    const auto all = model.count();
    const auto ids = [&] {
        std::vector<int> shown;
        for (int at = 0; at < model.shownCount(); ++at) {
            shown.push_back(model.shownId(at));
        }
        return shown;
    };
    EXPECT_EQ(std::ranges::count(ids(), id), 0) << "it stands on no shelf";
    model.setFilter(PlantsModel::Gone);
    EXPECT_EQ(ids(), std::vector{id});
    EXPECT_EQ(of_line(0, PlantShelves::SpotRole).toString(), "Gone");
    EXPECT_TRUE(of_line(0, PlantShelves::SentencesRole).toStringList().front().contains("given away on"));
    model.mark(0);
    EXPECT_EQ(model.markedCount(), 0);
    EXPECT_TRUE(model.error().contains(name));
    EXPECT_TRUE(model.targetGone());
    const auto events = household->facts().events.size();
    EXPECT_FALSE(model.log(PlantsModel::Watered, {}, 0, {}));
    EXPECT_FALSE(model.log(PlantsModel::Measured, "12", 0, {}));
    EXPECT_FALSE(model.logSeen(PlantsModel::LookedOver, {}, 0, {}));
    EXPECT_FALSE(model.moveTo(0));
    EXPECT_TRUE(model.error().contains("is gone (given away on")) << model.error().toStdString();
    EXPECT_EQ(household->facts().events.size(), events);
    ASSERT_TRUE(model.log(PlantsModel::Noted, {}, 0, "still thrives there")) << model.error().toStdString();
    wait_for(model);
    EXPECT_EQ(model.error(), "");
    EXPECT_EQ(household->facts().events.back().note, "still thrives there");
    EXPECT_EQ(model.count(), all);
    model.setFilter(PlantsModel::All);
    model.setFind(" Gone ");
    EXPECT_EQ(ids(), std::vector{id});
    model.setFind(name);
    EXPECT_EQ(std::ranges::count(ids(), id), 1);
}

TEST_F(PlantsModelTest, MeasurementNeedsANumberThatCanBe)
{
    model.setCurrent(0);
    EXPECT_FALSE(model.log(PlantsModel::Measured, "tall", 0, {}));
    EXPECT_TRUE(model.error().contains("tall"));
    EXPECT_FALSE(model.log(PlantsModel::Measured, "-3", 0, {}));
    EXPECT_FALSE(model.log(PlantsModel::Measured, "3", 99, {}));
    EXPECT_FALSE(model.canUndo());
    EXPECT_TRUE(model.log(PlantsModel::Measured, " 27,3 cm ", 0, {}));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty());
    EXPECT_DOUBLE_EQ(model.facts().ground->book.archive->leading()->back().value(), 27.3);
    EXPECT_EQ(model.facts().ground->book.archive->leading()->back().measured, kShownToday);
    model.mark(0);
    model.mark(1);
    EXPECT_FALSE(model.log(PlantsModel::Measured, "27", 0, {}));
}

TEST_F(PlantsModelTest, NoteMustSaySomethingAndFeedMayNameItsNitrogen)
{
    model.setCurrent(0);
    EXPECT_FALSE(model.log(PlantsModel::Noted, {}, 0, "  "));
    EXPECT_FALSE(model.log(PlantsModel::Fed, "9999", 0, {}));
    EXPECT_TRUE(model.log(PlantsModel::Fed, "100", 0, {}));
    wait_for(model);
    EXPECT_EQ(household->facts().events.back().detail("ppm"), "100");
    EXPECT_FALSE(model.log(42, {}, 0, {}));
}

TEST_F(PlantsModelTest, MovePutsThePlantOnAnotherShelf)
{
    model.setCurrent(0);
    const QString name = model.target();
    const auto id = household->facts().as_told.plant_called(name.toStdString())->id;
    const int last = model.spots()->rowCount() - 1;
    const QString spot = model.spots()->at(last, "name").toString();
    ASSERT_TRUE(model.moveTo(last));
    wait_for(model);
    EXPECT_EQ(text(household->facts().as_told.spot(*household->facts().as_told.plant(id)->spot)->name), spot);
    EXPECT_EQ(model.target(), name) << "the same plant stays chosen";
    EXPECT_EQ(model.movedPlant(), id) << "it may have been planned";
    EXPECT_EQ(model.movedSpot(), *household->facts().as_told.plant(id)->spot);
    EXPECT_FALSE(model.moveTo(last)) << "it stands there already";
    EXPECT_FALSE(model.moveTo(99));
    model.undo();
    wait_for(model);
    EXPECT_NE(text(household->facts().as_told.spot(*household->facts().as_told.plant(id)->spot)->name), spot);
    EXPECT_EQ(model.movedPlant(), 0);
    ASSERT_TRUE(model.log(PlantsModel::Watered, {}, 0, {}));
    wait_for(model);
    EXPECT_EQ(model.movedPlant(), 0) << "watered, not moved";
}

TEST_F(PlantsModelTest, APoisonousPlantThatMovesWithinReachIsSpokenOf)
{
    const auto home = household->facts().as_told;
    const auto poisonous = std::ranges::find_if(home.plants, [](const home::Plant& plant) { return plant.hazardous; });
    const auto reached = std::ranges::find_if(
        home.spots, [&](const home::Spot& spot) { return spot.in_reach && spot.id != poisonous->spot; });
    const auto harmless = std::ranges::find_if(
        home.plants, [&](const home::Plant& plant) { return !plant.hazardous && plant.spot != reached->id; });
    ASSERT_NE(reached, home.spots.end());
    const int spot = static_cast<int>(reached - home.spots.begin());
    for (const auto& plant : {*poisonous, *harmless}) {
        model.openId(plant.id);
        ASSERT_TRUE(model.moveTo(spot)) << model.error().toStdString();
        wait_for(model);
        EXPECT_EQ(model.said().contains(text(plant.name) + " is poisonous or spiny"), plant.hazardous) << model.said().toStdString();
    }
}

TEST_F(PlantsModelTest, ListsKeepTheRulesOfModels)
{
    QAbstractItemModelTester shelves(model.shelves(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester table(model.table(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setFilter(PlantsModel::Poisonous);
    model.setColumns(2);
    model.setFind("a");
    model.sortBy(1);
    model.mark(0);
    model.setFind("zzzz");
    model.setFind({});
    model.setFilter(PlantsModel::All);
    model.reload();
    wait_for(model);
    EXPECT_EQ(model.table()->rowCount(), 14);
}

TEST(PlantsModel, WhatCannotBeKeptIsSaid)
{
    auto door = plants_in_memory(std::make_shared<MemoryHousehold>(plain_facts()));
    door.record = [](const PlantEntries&) -> Result<void> {
        return Error{ErrorCode::Locked, "another program holds the household"};
    };
    PlantsModel model(door, british_look());
    model.start();
    wait_for(model);
    EXPECT_TRUE(model.log(PlantsModel::Watered, {}, 0, {}));
    wait_for(model);
    EXPECT_TRUE(model.error().contains("another program holds the household"));
    EXPECT_FALSE(model.canUndo());
    EXPECT_TRUE(model.said().isEmpty());
}

TEST(PlantsModel, BrokenHouseholdIsOneSentence)
{
    PlantsModel model(no_plants({ErrorCode::NotFound, "the folder is gone"}), british_look());
    model.start();
    wait_for(model);
    EXPECT_EQ(model.error(), "The folder is gone.");
    EXPECT_FALSE(model.known());
    EXPECT_EQ(model.count(), 0);
}

TEST(PlantsModel, InchesAreKeptAsCentimetres)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    PlantsModel model(plants_in_memory(household), british_look(Units::Us));
    model.start();
    wait_for(model);
    ASSERT_EQ(model.measures()->at(0, "unit").toString(), "in");
    ASSERT_TRUE(model.log(PlantsModel::Measured, "10", 0, {}));
    wait_for(model);
    EXPECT_NEAR(model.facts().ground->book.archive->leading()->back().value(), 25.4, 1e-9);
}

TEST_F(PlantsModelTest, MeasurementSaysWhenWithWhatAndByWhom)
{
    model.setCurrent(0);
    EXPECT_FALSE(model.logMeasured("27.3", 0, -1, "noonish", {}, {}));
    EXPECT_TRUE(model.error().contains("noonish"));
    EXPECT_FALSE(model.logMeasured("27.3; long", 0, -1, {}, {}, {}));
    EXPECT_TRUE(model.error().contains("long"));
    ASSERT_TRUE(model.logMeasured("27.3; 27,5", 0, 2, "8:05", " Anna ", {}, 1)) << model.error().toStdString();
    wait_for(model);
    const auto all = model.facts().ground->book.archive->measurements(model.shownId(0));
    const auto there = std::ranges::find(*all, "Anna", &home::Measurement::by);
    ASSERT_NE(there, all->end());
    const auto& made = *there;
    EXPECT_EQ(made.repeats, (std::vector{27.3, 27.5}));
    EXPECT_EQ(made.method, home::MeasurementMethod::Eye);
    EXPECT_EQ(made.time, std::chrono::minutes{8 * 60 + 5});
    EXPECT_EQ(made.time_zone, household->facts().as_told.place.time_zone);
    EXPECT_EQ(made.measured, kShownToday - calendar::Days{1});
    EXPECT_EQ(made.pot, household->facts().as_told.plant(model.shownId(0))->pot_volume);
}

TEST_F(PlantsModelTest, MeasurementSaysWhereItsClockStoodAndInWhatThePlant)
{
    model.setCurrent(0);
    const auto refused = [&](const char* time, const char* zone, const char* pot, const char* why) {
        model.measuredIn(zone, pot, {});
        EXPECT_FALSE(model.logMeasured("27.3", 0, -1, time, {}, {}));
        EXPECT_TRUE(model.error().contains(why)) << model.error().toStdString();
    };
    refused("", "Asia/Tokyo", "", "write the time too");
    refused("8:00", "Moon", "", "No time zone is called “Moon”");
    refused("23:00", "Pacific/Honolulu", "", "after today at home");
    refused("", "", "deep", "volume");
    refused("", "", "-2", "volume");
    model.measuredIn("Asia/Tokyo", "2,5", " bark ");
    ASSERT_TRUE(model.logMeasured("27.3", 0, -1, "3:00", "Kei", {}, 1)) << model.error().toStdString();
    wait_for(model);
    const auto all = model.facts().ground->book.archive->measurements(model.shownId(0));
    const auto made = std::ranges::find(*all, "Kei", &home::Measurement::by);
    ASSERT_NE(made, all->end());
    EXPECT_EQ(made->mix, "bark");
    ASSERT_TRUE(made->pot);
    EXPECT_NEAR(made->pot->litres(), 2.5, 1e-9);
    EXPECT_EQ(made->time_zone, household->facts().as_told.place.time_zone);
    EXPECT_EQ(made->measured, kShownToday - calendar::Days{2}) << "three in the morning there is the evening before at home";
    ASSERT_TRUE(model.logMeasured("27.9", 0, -1, {}, "Lea", {}));
    wait_for(model);
    const auto later = model.facts().ground->book.archive->measurements(model.shownId(0));
    const auto next = std::ranges::find(*later, "Lea", &home::Measurement::by);
    ASSERT_NE(next, later->end());
    EXPECT_EQ(next->mix, "") << "what stood beside one is not the next one's";
}

TEST_F(PlantsModelTest, ANameIsFoundHoweverItsApostropheIsTyped)
{
    ASSERT_TRUE(household->change("rename", [](plan::HouseholdFacts& facts) -> Result<void> {
        facts.as_told.plants[0].name = "Mum's lemon";
        facts.as_told.plants[1].name = "Dad’s lime";
        return {};
    }));
    model.reload();
    wait_for(model);
    for (const char* typed : {"mum's", "mum’s", "dad's", "dad’s", "Dad‘s"}) {
        model.setFind(typed);
        ASSERT_EQ(model.shownCount(), 1) << typed;
    }
    EXPECT_GE(shown_of("Dad’s lime"), 0) << "as it was typed";
    const auto facts = household->facts();
    EXPECT_NE(facts.as_told.plant_called("mum’s lemon"), nullptr);
    EXPECT_NE(facts.as_told.plant_called("Dad's lime"), nullptr);
}

} // namespace
} // namespace lathhouse::models
