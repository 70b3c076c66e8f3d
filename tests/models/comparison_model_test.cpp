#include "app/models/plant_model.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>

#include <algorithm>

namespace lathhouse::models {
namespace {

class ComparisonModelTest : public testing::Test {
protected:
    ComparisonModelTest()
        : measurements(demonstration_measurements(kShownToday)), facts(with_harm(plain_facts(), kShownToday)),
          plants(plants_in_memory(std::make_shared<MemoryHousehold>(facts), measurements), british_look()),
          model(plants)
    {
        plants.start();
        wait_for(plants);
    }
    void mark(home::PlantId id)
    {
        for (int shown = 0; shown < plants.shownCount(); ++shown) {
            if (plants.shownId(shown) == id) {
                plants.mark(shown);
            }
        }
    }
    void compare(home::PlantId first, home::PlantId second)
    {
        mark(first);
        mark(second);
        ASSERT_TRUE(model.open());
        wait_for(model);
    }
    /// What a row says of a side ("first", "second").
    QString of(const QString& what, const char* side)
    {
        for (int row = 0; row < model.rows()->count(); ++row) {
            if (model.rows()->at(row, QStringLiteral("what")).toString() == what) {
                return model.rows()->at(row, QString::fromLatin1(side)).toString();
            }
        }
        return QStringLiteral("no such row");
    }

    std::vector<home::Measurement> measurements;
    plan::HouseholdFacts facts;
    PlantsModel plants;
    ComparisonModel model;
};

TEST_F(ComparisonModelTest, OnlyTwoMarkedPlantsAreCompared)
{
    EXPECT_FALSE(model.open());
    mark(facts.as_told.plants[0].id);
    EXPECT_FALSE(model.open());
    mark(facts.as_told.plants[1].id);
    EXPECT_TRUE(model.open());
    mark(facts.as_told.plants[2].id);
    model.close();
    EXPECT_FALSE(model.open());
    EXPECT_FALSE(model.shown());
}

TEST_F(ComparisonModelTest, EachSideSaysWhatItsPlantBears)
{
    const auto& first = facts.as_told.plants[0];
    const auto& second = facts.as_told.plants[1];
    ASSERT_LT(first.id, second.id); // Marked plants stand in that order.
    const QAbstractItemModelTester tester(model.rows(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    compare(first.id, second.id);
    EXPECT_EQ(model.first(), text(first.name));
    EXPECT_EQ(model.second(), text(second.name));
    const auto words = british_look().words;
    EXPECT_EQ(of(QStringLiteral("Harmed from"), "first"), words.temperature(first.lines.damage_begins));
    EXPECT_EQ(of(QStringLiteral("Harmed from"), "second"), words.temperature(second.lines.damage_begins));
    EXPECT_EQ(of(QStringLiteral("Botanical name"), "second"), text(second.kind));
}

TEST_F(ComparisonModelTest, WhatDiffersIsCountedAndMarked)
{
    compare(facts.as_told.plants[0].id, facts.as_told.plants[1].id);
    int differing = 0;
    for (int row = 0; row < model.rows()->count(); ++row) {
        const bool differs = model.rows()->at(row, QStringLiteral("differs")).toBool();
        EXPECT_EQ(differs, model.rows()->at(row, QStringLiteral("first")) != model.rows()->at(row, QStringLiteral("second")));
        EXPECT_FALSE(model.rows()->at(row, QStringLiteral("sentence")).toString().isEmpty());
        differing += differs ? 1 : 0;
    }
    EXPECT_GT(differing, 0);
    EXPECT_TRUE(model.summary().contains(QString::number(differing))) << model.summary().toStdString();
}

TEST_F(ComparisonModelTest, GrowthIsThatOfThePlantsPage)
{
    const auto measured = std::ranges::find_if(facts.as_told.plants, [&](const home::Plant& plant) {
        return std::ranges::any_of(measurements, [&](const home::Measurement& of) { return of.plant == plant.id; });
    });
    const auto unmeasured = std::ranges::find_if(facts.as_told.plants, [&](const home::Plant& plant) {
        return std::ranges::none_of(measurements, [&](const home::Measurement& of) { return of.plant == plant.id; });
    });
    ASSERT_NE(measured, facts.as_told.plants.end());
    ASSERT_NE(unmeasured, facts.as_told.plants.end());
    compare(measured->id, unmeasured->id);
    const bool measured_first = measured->id < unmeasured->id;
    EXPECT_EQ(of(QStringLiteral("Measured"), measured_first ? "second" : "first"), "none");
    PlantModel page(plants);
    plants.openId(measured->id);
    wait_for(page);
    EXPECT_EQ(of(QStringLiteral("Measured"), measured_first ? "first" : "second"),
              page.chartTitle() + QStringLiteral(": ") + page.readings()->at(0, QStringLiteral("value")).toString());
}

} // namespace
} // namespace lathhouse::models
