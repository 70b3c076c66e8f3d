#include "app/models/plant_model.h"
#include "app/models/tonight_model.h"
#include "tests/models/page_fixtures.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace lathhouse::models {
namespace {

class PlantModelTest : public testing::Test {
protected:
    PlantModelTest()
        : measurements(demonstration_measurements(kShownToday)), facts(with_harm(plain_facts(), kShownToday)),
          plants(plants_in_memory(std::make_shared<MemoryHousehold>(facts), measurements), british_look()), model(plants)
    {
        plants.start();
        wait_for(plants);
    }
    void open(home::PlantId id)
    {
        plants.openId(id);
        wait_for(model);
    }
    /// A plant that the story's weed-killer hit and that was measured.
    home::PlantId harmed() const
    {
        for (const auto& event : facts.events) {
            const bool measured = std::ranges::any_of(
                measurements, [&](const home::Measurement& of) { return of.plant == event.plant; });
            if (event.kind == home::EventKind::ChemicalDamage && event.plant && measured) {
                return *event.plant;
            }
        }
        return 0;
    }
    home::PlantId unmeasured() const
    {
        for (const auto& plant : facts.as_told.plants) {
            if (std::ranges::none_of(measurements,
                                     [&](const home::Measurement& of) { return of.plant == plant.id; })) {
                return plant.id;
            }
        }
        return 0;
    }

    std::vector<home::Measurement> measurements;
    plan::HouseholdFacts facts;
    PlantsModel plants;
    PlantModel model;
};

TEST_F(PlantModelTest, APlantThatASprayHitIsNotEatenUnlessItIsNoFood)
{
    ASSERT_NE(harmed(), 0);
    open(harmed());
    EXPECT_EQ(model.warning(), "Do not eat.");
    EXPECT_TRUE(model.warningWhy().startsWith("On ")) << model.warningWhy().toStdString();
    open(unmeasured());
    EXPECT_EQ(model.warning(), "");

    for (auto& event : facts.events.edit()) {
        if (event.kind == home::EventKind::ChemicalDamage) {
            event.details["edible"] = "no";
        }
    }
    PlantsModel others(plants_in_memory(std::make_shared<MemoryHousehold>(facts), measurements), british_look());
    PlantModel of(others);
    others.start();
    wait_for(others);
    others.openId(harmed());
    wait_for(of);
    EXPECT_EQ(of.warning(), "");
}

TEST_F(PlantModelTest, APlantThatDiedKeepsItsPageMarkedAsGone)
{
    const auto id = harmed();
    ASSERT_NE(id, 0);
    open(id);
    EXPECT_EQ(model.left(), "");
    const auto readings = model.readings()->rowCount();
    const auto lines = model.historyCount();
    const auto verdict = model.verdict();
    ASSERT_GT(readings, 0);
    ASSERT_TRUE(model.hasChart());
    ASSERT_TRUE(plants.log(PlantsModel::Died, {}, 0, "frost"));
    wait_for(plants);
    open(id);
    EXPECT_EQ(plants.opened(), id);
    EXPECT_EQ(model.plantId(), id);
    EXPECT_TRUE(model.left().startsWith("Gone: died on ")) << model.left().toStdString();
    EXPECT_EQ(model.readings()->rowCount(), readings);
    EXPECT_EQ(model.historyCount(), lines + 1);
    EXPECT_TRUE(model.hasChart());
    EXPECT_EQ(model.verdict(), verdict);
    EXPECT_EQ(model.nextHead(), "") << "it is not measured again";
    EXPECT_FALSE(model.facts().chart->next_reading);
    EXPECT_EQ(model.chips()->rowCount(), 0);
    EXPECT_FALSE(model.canAskDose());
    plants.undo();
    wait_for(plants);
    wait_for(model);
    EXPECT_EQ(model.left(), "");
    EXPECT_GT(model.chips()->rowCount(), 0);
}

TEST_F(PlantModelTest, ChangesOfSharesArePercentagePoints)
{
    for (const auto& plant : facts.as_told.plants) {
        open(plant.id);
        for (int kind = 0; kind < model.kinds()->rowCount(); ++kind) {
            model.choose(kind);
            wait_for(model);
            const bool share = model.readings()->at(0, "value").toString().contains('%');
            if (share && model.readings()->rowCount() > 1) {
                const QString change = model.readings()->at(0, "change").toString();
                EXPECT_TRUE(change.endsWith(" points")) << change.toStdString();
                EXPECT_FALSE(change.contains('%'));
                return;
            }
        }
    }
    FAIL() << "no share is measured twice";
}

TEST_F(PlantModelTest, VerdictIsThatOfTheCore)
{
    const auto id = harmed();
    ASSERT_NE(id, 0);
    open(id);
    const auto& household = facts.household();
    const auto* plant = household.plant(id);
    const auto measures = plan::measures_of(measurements, id);
    const auto growth = plan::growth_of(*plant, measures.front(), measurements, facts.events,
                                        plan::Whereabouts{*plant, facts.events, {}, kShownToday},
                                        home::SpotClimate{household, facts.climate, facts.log}, facts.log);
    ASSERT_TRUE(growth.recovery);
    EXPECT_EQ(model.verdict(), static_cast<int>(growth.recovery->judgement.verdict));
    ASSERT_TRUE(growth.event);
    EXPECT_TRUE(model.verdictAfter().contains(model.words().date_with_year(growth.event->date)))
        << model.verdictAfter().toStdString();
    EXPECT_EQ(model.readings()->rowCount(), static_cast<int>(growth.readings.size()));
    EXPECT_FALSE(model.chartSpoken().isEmpty());
}

/// A day without its year would be taken for that of this year.
TEST(PlantModel, ADateFarAheadHasItsYear)
{
    const calendar::Date today{2027, 1, 10};
    const auto facts = demonstration_facts(today);
    ASSERT_TRUE(facts);
    const TodayLook look{today, YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)), {{"Roofed balcony", 3}}};
    PlantsModel plants(plants_in_memory(std::make_shared<MemoryHousehold>(*facts), demonstration_measurements(today)), look);
    PlantModel model(plants);
    plants.start();
    wait_for(plants);
    const auto fig = std::ranges::find(facts->as_told.plants, "Ficus benjamina", &home::Plant::kind);
    ASSERT_NE(fig, facts->as_told.plants.end());
    plants.openId(fig->id);
    wait_for(model);
    EXPECT_EQ(model.nextHead(), "Measure again on 12 April 2028.");
}

TEST_F(PlantModelTest, EveryMeasureCanBeChosen)
{
    open(harmed());
    ASSERT_GT(model.kinds()->rowCount(), 1);
    for (int kind = 0; kind < model.kinds()->rowCount(); ++kind) {
        model.choose(kind);
        wait_for(model);
        EXPECT_TRUE(model.kinds()->at(kind, "shown").toBool());
        EXPECT_EQ(model.chartTitle(), model.kinds()->at(kind, "words").toString());
    }
    const QString title = model.chartTitle();
    model.choose(99);
    wait_for(model);
    EXPECT_EQ(model.chartTitle(), title);
}

TEST_F(PlantModelTest, GrowthIsJudgedAfterTheEventThatWasChosen)
{
    open(harmed());
    ASSERT_GT(model.judged()->rowCount(), 1);
    int shown = 0;
    for (int event = 0; event < model.judged()->rowCount(); ++event) {
        shown += model.judged()->at(event, "shown").toBool() ? 1 : 0;
    }
    EXPECT_EQ(shown, 1);
    for (int event = 0; event < model.judged()->rowCount(); ++event) {
        model.judge(event);
        wait_for(model);
        EXPECT_TRUE(model.judged()->at(event, "shown").toBool());
        EXPECT_EQ(model.verdictAfter(), "after: " + model.judged()->at(event, "words").toString());
    }
    model.judge(99);
    wait_for(model);
    const auto another = unmeasured();
    if (another != 0) {
        open(another);
        EXPECT_EQ(model.judged()->rowCount(), 0);
    }
}

TEST_F(PlantModelTest, EveryPlantHasAPage)
{
    for (const auto& plant : facts.as_told.plants) {
        open(plant.id);
        EXPECT_EQ(model.plantId(), plant.id);
        EXPECT_EQ(model.name(), text(plant.name));
        EXPECT_GE(model.chips()->rowCount(), 2);
        EXPECT_EQ(model.chips()->at(0, "words").toString(), text(facts.as_told.spot(*plant.spot)->name));
        EXPECT_FALSE(model.needsSpoken().isEmpty());
        EXPECT_TRUE(model.lightWords().contains("mol")) << model.lightWords().toStdString();
        EXPECT_FALSE(model.notes().isEmpty());
        EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    }
}

TEST(PlantModel, TonightHasOneChanceOnItsPageAndInTheRound)
{
    for (const bool forecast : {true, false}) {
        const auto facts = forecast ? with_cold_night(plain_facts(), kShownToday) : plain_facts();
        PlantsModel plants(plants_in_memory(std::make_shared<MemoryHousehold>(facts), demonstration_measurements(kShownToday)), british_look());
        PlantModel model(plants);
        TonightModel tonight(door_of(facts), british_look());
        tonight.start();
        wait_for(tonight);
        plants.start();
        wait_for(plants);
        ASSERT_GT(tonight.plants()->rowCount(), 0);
        for (int row = 0; row < tonight.plants()->rowCount(); ++row) {
            plants.openId(tonight.plants()->at(row, "plantId").toInt());
            wait_for(model);
            const QString chance = tonight.plants()->at(row, "chance").toString();
            EXPECT_TRUE(model.needsSpoken().contains(QString("harmed tonight") + (forecast ? ": " : ", by the season alone: ") + chance + "."))
                << chance.toStdString() << " / " << model.needsSpoken().toStdString();
        }
    }
}

TEST_F(PlantModelTest, FarTooMuchLightIsSaid)
{
    auto& plant = facts.as_told.plants.front();
    for (const bool shade : {false, true}) {
        plant.light_to_thrive = DailyLight::from_moles(shade ? 0.5 : 40.0);
        PlantsModel changed(plants_in_memory(std::make_shared<MemoryHousehold>(facts), measurements), british_look());
        PlantModel page(changed);
        changed.start();
        wait_for(changed);
        changed.openId(plant.id);
        wait_for(page);
        EXPECT_EQ(page.lightWords().endsWith("times as much: sun there may burn its leaves."), shade) << page.lightWords().toStdString();
    }
}

TEST_F(PlantModelTest, WithoutReadingsThereIsNoChart)
{
    const auto id = unmeasured();
    if (id == 0) {
        GTEST_SKIP() << "every plant of the demonstration is measured";
    }
    open(id);
    EXPECT_FALSE(model.hasChart());
    EXPECT_EQ(model.verdict(), -1);
}

TEST_F(PlantModelTest, WhatIsLoggedStandsInTheHistory)
{
    open(facts.as_told.plants.front().id);
    const int before = model.historyCount();
    ASSERT_TRUE(plants.log(PlantsModel::Noted, {}, 0, "a new pot is due"));
    wait_for(plants);
    wait_for(model);
    ASSERT_EQ(model.historyCount(), before + 1);
    EXPECT_EQ(model.history()->at(0, "note").toString(), "a new pot is due");
    plants.undo();
    wait_for(plants);
    wait_for(model);
    EXPECT_EQ(model.historyCount(), before);
}

TEST_F(PlantModelTest, OfALongHistoryTheNewestIsShownAndMoreWhenAsked)
{
    const auto id = harmed();
    ASSERT_NE(id, 0);
    open(id);
    const int all = model.historyCount();
    ASSERT_GT(all, 8);
    EXPECT_EQ(model.history()->rowCount(), 8);
    model.showMoreHistory();
    wait_for(model);
    EXPECT_EQ(model.history()->rowCount(), std::min(all, 58));
    model.showNewestHistory();
    wait_for(model);
    EXPECT_EQ(model.history()->rowCount(), 8);
}

TEST_F(PlantModelTest, PlantThatIsNotThereIsSaidAndLeft)
{
    open(9999);
    EXPECT_EQ(plants.opened(), 0);
    EXPECT_TRUE(plants.error().contains("9999"));
}

TEST_F(PlantModelTest, PhotosAreSpreadOverTimeAndTheNewestIsAmongThem)
{
    auto door = plants_in_memory(std::make_shared<MemoryHousehold>(facts), measurements);
    const auto id = facts.as_told.plants.front().id;
    const auto load = door.load;
    door.load = [load, id]() {
        auto book = load();
        auto photos = *book->archive->photos(id);
        for (int at = 0; at < 20; ++at) {
            const auto day = calendar::start_of_day_utc(kShownToday - calendar::Days{(20 - at) * 15});
            photos.push_back({.id = at + 1,
                                    .sha256 = std::string(64, 'a'),
                                    .extension = "jpg",
                                    .bytes = 1,
                                    .width = 4,
                                    .height = 3,
                                    .taken = std::chrono::local_seconds{day.time_since_epoch()},
                                    .zone_offset = {},
                                    .taken_from = home::TakenFrom::Given,
                                    .original_name = "p.jpg",
                                    .position = {},
                                    .entered = day,
                                    .plants = {id}});
        }
        book->archive = archive_of(*book->archive->measurements(id), photos);
        return book;
    };
    door.thumbnail = [](const home::Photo& photo) -> Result<std::filesystem::path> {
        return photo.id == 1 ? Result<std::filesystem::path>{Error{ErrorCode::NotFound, "gone"}}
                             : Result<std::filesystem::path>{"/nowhere/" + std::to_string(photo.id) + ".jpg"};
    };
    PlantsModel of_photos(door, british_look());
    PlantModel page(of_photos);
    of_photos.start();
    wait_for(of_photos);
    of_photos.openId(id);
    wait_for(page);
    ASSERT_EQ(page.photos()->rowCount(), 6);
    EXPECT_EQ(page.photosHead(), "20 photographs");
    EXPECT_EQ(page.photos()->at(0, "words").toString(), "file missing");
    EXPECT_TRUE(page.photos()->at(5, "newest").toBool());
    EXPECT_TRUE(page.photos()->at(5, "source").toUrl().toString().endsWith("/20.jpg"));
    page.setPhotosShown(9);
    wait_for(page);
    EXPECT_EQ(page.photos()->rowCount(), 9);
}

/// A second plant of the harmed one's kind that was measured on the same days and grew on.
TEST_F(PlantModelTest, ASparedPlantOfItsKindIsTheClock)
{
    const auto id = harmed();
    auto with_twin = facts;
    auto twin = *facts.household().plant(id);
    twin.id = 900;
    twin.name = "Twin";
    with_twin.as_told.plants.push_back(twin);
    auto readings = measurements;
    for (const auto& of : measurements) {
        if (of.plant == id) {
            readings.push_back(of);
            readings.back().plant = twin.id;
        }
    }
    PlantsModel collection(plants_in_memory(std::make_shared<MemoryHousehold>(with_twin), readings), british_look());
    PlantModel page(collection);
    collection.start();
    wait_for(collection);
    collection.openId(id);
    wait_for(page);
    ASSERT_EQ(page.spared()->rowCount(), 1);
    EXPECT_EQ(page.spared()->at(0, "words").toString(), "Twin");
    EXPECT_FALSE(page.spared()->at(0, "shown").toBool());
    const double alone = page.share();
    page.takeForSpared(0);
    wait_for(page);
    EXPECT_TRUE(page.spared()->at(0, "shown").toBool());
    EXPECT_NE(page.share(), alone) << "it grew as the other did, so it lost nothing against it";
    page.takeForSpared(0);
    wait_for(page);
    EXPECT_FALSE(page.spared()->at(0, "shown").toBool());
    EXPECT_EQ(page.share(), alone);
}

TEST_F(PlantModelTest, ATwinThatHadTroubleOfItsOwnIsNotOffered)
{
    const auto id = harmed();
    const auto offered = [&](int days_after) {
        auto with_twin = facts;
        auto twin = *facts.household().plant(id);
        twin.id = 900;
        twin.name = "Twin";
        with_twin.as_told.plants.push_back(twin);
        const auto harm = std::ranges::find_if(facts.events, [id](const home::Event& of) {
            return of.kind == home::EventKind::ChemicalDamage && of.plant == id;
        });
        auto trouble = *harm;
        trouble.plant = twin.id;
        trouble.kind = home::EventKind::Repotted;
        trouble.happened = harm->happened + calendar::Days{days_after};
        with_twin.events.push_back(trouble);
        std::ranges::stable_sort(with_twin.events.edit(), {}, &home::Event::happened);
        auto readings = measurements;
        for (const auto& of : measurements) {
            if (of.plant == id) {
                readings.push_back(of);
                readings.back().plant = twin.id;
            }
        }
        PlantsModel collection(plants_in_memory(std::make_shared<MemoryHousehold>(with_twin), readings), british_look());
        PlantModel page(collection);
        collection.start();
        wait_for(collection);
        collection.openId(id);
        wait_for(page);
        EXPECT_TRUE(page.hasChart());
        return page.spared()->rowCount();
    };
    EXPECT_EQ(offered(3), 0);
    EXPECT_EQ(offered(-60), 1) << "that is long ago";
}

/// The day on which a grower needs to hear it: the spray is written down, and no reading came after it.
TEST_F(PlantModelTest, WhatHappenedSinceTheLastReadingIsAwaited)
{
    const auto id = harmed();
    const auto open_with = [&](int readings_kept) {
        auto of_one = facts;
        auto series = measurements;
        std::erase_if(series, [&](const auto& of) { return of.plant == id && of.kind != home::MeasurementKind::Height; });
        std::vector<home::Measurement> own;
        std::ranges::copy_if(series, std::back_inserter(own), [&](const auto& of) { return of.plant == id; });
        std::erase_if(series, [&](const auto& of) { return of.plant == id; });
        own.resize(static_cast<std::size_t>(readings_kept), own.front());
        for (std::size_t at = 0; at < own.size(); ++at) { // Weekly, the last one today.
            own[at].measured = kShownToday - calendar::Days{7 * (readings_kept - 1 - static_cast<int>(at))};
        }
        std::ranges::copy(own, std::back_inserter(series));
        auto harm = *std::ranges::find_if(facts.events, [id](const home::Event& of) {
            return of.kind == home::EventKind::ChemicalDamage && of.plant == id;
        });
        harm.happened = kShownToday;
        of_one.events = std::vector{harm};
        PlantsModel collection(plants_in_memory(std::make_shared<MemoryHousehold>(of_one), series), british_look());
        PlantModel page(collection);
        collection.start();
        wait_for(collection);
        collection.openId(id);
        wait_for(page);
        return std::array{page.verdictWord(), page.verdictWords(), page.nextHead(), page.nextRest()};
    };
    const auto day = [this](int ahead) { return model.words().short_date(kShownToday + calendar::Days{ahead}); };
    const auto many = open_with(5);
    EXPECT_EQ(many[0], "Too early");
    EXPECT_EQ(many[1], "It has 0 of the 4 readings that are needed after the event.");
    EXPECT_EQ(many[2], "Measure again on " + day(7) + ".");
    EXPECT_EQ(many[3], "The last of 5 readings that are still needed, about " + day(35) + ", could settle it.");
    const auto few = open_with(2);
    EXPECT_EQ(few[0], "Cannot be judged");
    EXPECT_EQ(few[1], "It has 2 of the 3 readings needed before the event, and later ones cannot help.");
    EXPECT_EQ(few[2], "");
}

TEST_F(PlantModelTest, FeedingThroughTheYearIsToldUnderLampsToo)
{
    auto& feeding = *model.feedingAsked();
    const auto lemon = facts.as_told.plant_called("Lemon")->id;
    open(lemon);
    const auto ask = [&](const QString& hours, const QString& flux, int water) {
        const bool taken = feeding.ask(hours, flux, water);
        wait_for(feeding);
        return taken;
    };
    ASSERT_TRUE(ask("", "", FeedingAskModel::NotKnown)) << feeding.error().toStdString();
    ASSERT_GT(feeding.spells()->rowCount(), 1);
    QStringList without;
    for (int row = 0; row < feeding.spells()->rowCount(); ++row) {
        without.append(feeding.spells()->at(row, "sentence").toString());
    }
    EXPECT_FALSE(without.join('\n').contains("lamps"));
    EXPECT_FALSE(feeding.notes().join('\n').contains("Hard water"));
    ASSERT_TRUE(ask("16", "400", FeedingAskModel::Hard));
    QStringList lit;
    for (int row = 0; row < feeding.spells()->rowCount(); ++row) {
        lit.append(feeding.spells()->at(row, "sentence").toString());
    }
    EXPECT_NE(lit, without);
    EXPECT_TRUE(feeding.notes().join('\n').contains("Hard water"));
    EXPECT_TRUE(feeding.notes().join('\n').contains("plugs")) << "the caution of lamps stands there";
    EXPECT_FALSE(ask("25", "", 0));
    EXPECT_FALSE(ask("many", "", 0));
    EXPECT_FALSE(ask("8", "9000", 0));
    EXPECT_FALSE(ask("", "200", 0));
    EXPECT_TRUE(feeding.error().contains("hours"));
    open(facts.as_told.plant_called("Olive")->id);
    EXPECT_EQ(feeding.spells()->rowCount(), 0) << "another plant's page";
}

TEST_F(PlantModelTest, HistorySaysWhenAndByWhomItWasMeasured)
{
    open(unmeasured());
    ASSERT_TRUE(plants.logMeasured("27.3", 0, -1, "8:05", "Anna", "after the bath")) << plants.error().toStdString();
    wait_for(plants);
    wait_for(model);
    ASSERT_GT(model.history()->rowCount(), 0);
    EXPECT_EQ(model.history()->at(0, "note").toString(), "at 08:05, by Anna, after the bath");
}

} // namespace
} // namespace lathhouse::models
