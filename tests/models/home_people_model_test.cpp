#include "app/models/home_people_model.h"
#include "app/models/household_year.h"
#include "core/home/new_plant.h"
#include "core/journal/demonstration_folder.h"
#include "core/plants/plant_kind.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <algorithm>

namespace lathhouse::models {
namespace {

/// A hazardous plant of the demonstration and the place of its spot among the spots.
struct Standing {
    const home::Plant* plant = nullptr;
    int spot = -1;
};

Standing hazardous_plant(const plan::HouseholdFacts& facts)
{
    for (const auto& plant : facts.as_told.plants) {
        if (plant.hazardous && plant.spot && !facts.as_told.spot(*plant.spot)->in_reach) {
            const auto at = std::ranges::find(facts.as_told.spots, *plant.spot, &home::Spot::id);
            return {&plant, static_cast<int>(at - facts.as_told.spots.begin())};
        }
    }
    return {};
}

class HomePeopleModelTest : public testing::Test {
protected:
    HomePeopleModelTest() : facts(plain_facts()), standing(hazardous_plant(facts))
    {
        EXPECT_NE(standing.plant, nullptr);
        household = std::make_shared<MemoryHousehold>(facts);
        model = std::make_unique<HomePeopleModel>(people_in_memory(household), british_look());
        model->start();
        wait_for(*model);
    }
    void add(int kind, const QString& name)
    {
        EXPECT_TRUE(model->add(kind, name));
        wait_for(*model);
    }
    QString harms() const
    {
        QString all;
        for (int row = 0; row < model->harms()->rowCount(); ++row) {
            all += model->harms()->at(row, "sentence").toString() + '\n';
        }
        return all;
    }
    bool in_reach() const
    {
        return household->facts().as_told.spots[static_cast<std::size_t>(standing.spot)].in_reach;
    }
    plan::HouseholdFacts facts;
    Standing standing;
    std::shared_ptr<MemoryHousehold> household;
    std::unique_ptr<HomePeopleModel> model;
};

TEST_F(HomePeopleModelTest, MemberThatReachesAPlantShowsItsHazardAndTheCaution)
{
    const QString plant = text(standing.plant->name);
    EXPECT_FALSE(harms().contains(plant));
    add(1, "Mimi");
    ASSERT_EQ(model->members()->rowCount(), 1);
    EXPECT_EQ(model->members()->at(0, "name").toString(), "Mimi");
    EXPECT_FALSE(in_reach());
    QSignalSpy written(model.get(), &SheetModel::written);
    model->setReach(0, standing.spot, true);
    wait_for(*model);
    EXPECT_EQ(written.count(), 1);
    EXPECT_TRUE(in_reach());
    EXPECT_TRUE(harms().contains(plant)) << harms().toStdString();
    EXPECT_TRUE(harms().contains("within reach of Mimi"));
    for (int row = 0; row < model->harms()->rowCount(); ++row) {
        EXPECT_FALSE(model->harms()->at(row, "hazard").toString().isEmpty());
        EXPECT_FALSE(model->harms()->at(row, "caution").toString().isEmpty());
    }
    EXPECT_TRUE(model->members()->at(0, "reaches").toList().at(standing.spot).toBool());
}

TEST_F(HomePeopleModelTest, PlanKeepsTheHazardousPlantFromTheSpotAfterwards)
{
    const auto nights_by_spot = [&] {
        const auto now_known = household->facts();
        const auto shown = household_year(now_known, kShownToday, Units::Metric);
        const auto plan = shown.solver(Probability::clamped(0.1));
        const auto plant = static_cast<std::size_t>(standing.plant - facts.as_told.plants.data());
        std::vector<int> nights(now_known.as_told.spots.size());
        for (const auto& stay : plan.stays[plant]) {
            nights[stay.spot] += stay.last - stay.first + 1;
        }
        return nights;
    };
    const auto before = nights_by_spot();
    const auto usual = std::ranges::max_element(before) - before.begin();
    add(2, {});
    model->setReach(0, static_cast<int>(usual), true);
    wait_for(*model);
    EXPECT_EQ(nights_by_spot()[static_cast<std::size_t>(usual)], 0);
    model->setReach(0, static_cast<int>(usual), false);
    wait_for(*model);
    EXPECT_EQ(nights_by_spot(), before);
}

TEST_F(HomePeopleModelTest, EveryChangeIsTakenBackAndDoneAgain)
{
    add(0, "Ida");
    model->setReach(0, standing.spot, true);
    wait_for(*model);
    EXPECT_FALSE(model->rename(0, QString(200, 'x')));
    EXPECT_TRUE(model->error().contains("longer"));
    EXPECT_TRUE(model->rename(0, "Ada"));
    EXPECT_EQ(model->error(), QString{});
    wait_for(*model);
    model->remove(0);
    wait_for(*model);
    EXPECT_EQ(model->members()->rowCount(), 0);
    EXPECT_FALSE(in_reach());
    for (int step = 0; step < 4; ++step) {
        EXPECT_TRUE(model->canUndo());
        model->undo();
        wait_for(*model);
        EXPECT_EQ(model->error(), QString{});
    }
    EXPECT_FALSE(model->canUndo());
    EXPECT_EQ(model->members()->rowCount(), 0);
    for (int step = 0; step < 3; ++step) {
        model->redo();
        wait_for(*model);
    }
    ASSERT_EQ(model->members()->rowCount(), 1);
    EXPECT_EQ(model->members()->at(0, "name").toString(), "Ada");
    EXPECT_TRUE(in_reach());
    EXPECT_TRUE(model->canRedo());
}

TEST_F(HomePeopleModelTest, TwoChangesInARowBothCount)
{
    add(1, {});
    model->setReach(0, 0, true);
    model->setReach(0, 1, true);
    wait_for(*model);
    const auto flags = model->members()->at(0, "reaches").toList();
    EXPECT_TRUE(flags.at(0).toBool());
    EXPECT_TRUE(flags.at(1).toBool());
}

TEST_F(HomePeopleModelTest, WhatIsOutsideTheListsIsIgnored)
{
    EXPECT_FALSE(model->add(4, "x"));
    EXPECT_FALSE(model->add(-1, "x"));
    EXPECT_FALSE(model->add(0, QString(41, 'x')));
    EXPECT_TRUE(model->error().contains("40 letters"));
    model->remove(0);
    model->setReach(0, 0, true);
    EXPECT_FALSE(model->rename(3, "x"));
    model->undo();
    wait_for(*model);
    EXPECT_EQ(model->members()->rowCount(), 0);
}

TEST_F(HomePeopleModelTest, SpotMarkedByHandStaysMarked)
{
    const auto by_hand = std::ranges::find(facts.as_told.spots, true, &home::Spot::in_reach);
    ASSERT_NE(by_hand, facts.as_told.spots.end());
    EXPECT_TRUE(model->marked().contains(text(by_hand->name))) << model->marked().toStdString();
    const int place = static_cast<int>(by_hand - facts.as_told.spots.begin());
    add(1, {});
    model->setReach(0, place, true);
    wait_for(*model);
    EXPECT_TRUE(model->marked().isEmpty());
    model->setReach(0, place, false);
    wait_for(*model);
    EXPECT_TRUE(household->facts().as_told.spots[static_cast<std::size_t>(place)].in_reach);
}

TEST_F(HomePeopleModelTest, ListsKeepTheRulesOfModels)
{
    QAbstractItemModelTester members(model->members(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester harms_list(model->harms(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    add(1, {});
    add(0, "Ida");
    for (int spot = 0; spot < model->spots()->rowCount(); ++spot) {
        model->setReach(1, spot, true);
    }
    wait_for(*model);
    model->remove(0);
    wait_for(*model);
    EXPECT_EQ(model->members()->rowCount(), 1);
}

TEST(HomePeopleModel, InAFolderSurvivesTheWindowAndKnowsWhatCameBetween)
{
    QTemporaryDir folder;
    const std::filesystem::path home = std::filesystem::path{folder.path().toStdString()} / "home";
    auto store = journal::create_demonstration(home, {.today = kShownToday});
    ASSERT_TRUE(store);
    const auto load = [home]() -> Result<plan::HouseholdFacts> {
        const auto open = journal::HouseholdStore::open(home);
        if (!open) {
            return open.error();
        }
        auto facts = plain_facts();
        facts.as_told = open->load().value();
        facts.events = open->events().value();
        return facts;
    };
    {
        HomePeopleModel model(people_in_folder(home, load), british_look());
        model.start();
        wait_for(model);
        EXPECT_TRUE(model.add(1, "Mimi"));
        wait_for(model);
        model.setReach(0, 0, true);
        wait_for(model);
        EXPECT_EQ(model.error(), QString{});
        model.undo();
        wait_for(model);
        EXPECT_EQ(model.error(), QString{});
        model.redo();
        wait_for(model);
        EXPECT_EQ(model.error(), QString{});
    }
    HomePeopleModel model(people_in_folder(home, load), british_look());
    model.start();
    wait_for(model);
    ASSERT_EQ(model.members()->rowCount(), 1);
    EXPECT_TRUE(model.members()->at(0, "reaches").toList().at(0).toBool());
    EXPECT_TRUE(store->load()->spots.front().in_reach);
    model.remove(0);
    wait_for(model);
    const home::Event note{std::nullopt, home::EventKind::Noted, std::nullopt, kShownToday,
                           calendar::start_of_day_utc(kShownToday), "by another program", {}};
    ASSERT_TRUE(store->record(std::span{&note, 1}));
    model.undo();
    wait_for(model);
    EXPECT_TRUE(model.error().contains("something else was written", Qt::CaseInsensitive)) << model.error().toStdString();
    EXPECT_EQ(model.members()->rowCount(), 0);
}

TEST(HomePeopleModel, AtASpotMarkedByHandEverythingThatHurtsIsShown)
{
    auto facts = plain_facts();
    for (auto& spot : facts.as_told.spots) {
        spot.in_reach = false;
    }
    const auto kinds = plants::PlantReference::built_in().kinds();
    const auto irritant = std::ranges::find_if(kinds, [](const plants::PlantKind& kind) {
        return kind.to_people == plants::Toxicity::Irritant && !home::is_hazardous(kind);
    });
    ASSERT_NE(irritant, kinds.end());
    auto& plant = facts.as_told.plants.front();
    plant.kind = irritant->botanical_name;
    plant.hazardous = false;
    const auto spot = std::ranges::find(facts.as_told.spots, *plant.spot, &home::Spot::id);
    spot->in_reach = true;
    HomePeopleModel model(people_in_memory(std::make_shared<MemoryHousehold>(facts)), british_look());
    model.start();
    wait_for(model);
    QStringList shown;
    for (int row = 0; row < model.harms()->rowCount(); ++row) {
        shown.append(model.harms()->at(row, "plant").toString());
    }
    EXPECT_TRUE(shown.contains(text(plant.name))) << model.line().toStdString();
}

} // namespace
} // namespace lathhouse::models
