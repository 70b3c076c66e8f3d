#include "app/models/household_year.h"
#include "app/models/year_door.h"
#include "app/models/year_model.h"
#include "core/plan/year_plan.h"
#include "tests/window/demonstration_year.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::models {
namespace {

/// The demonstration's year, looked at from other dates.
class YearFrom : public testing::Test {
protected:
    YearFrom()
    {
        household = std::make_shared<MemoryHousehold>(facts_of_demonstration({.today = shown_today()}).value());
        auto door = year_in_memory(household, shown_today(), Units::Metric);
        auto shown = door.load().value();
        model = std::make_unique<YearModel>(std::move(shown.year), std::move(shown.solver),
                                            YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)),
                                            nullptr, std::move(door));
        EXPECT_TRUE(QTest::qWaitFor([this] { return !model->planning(); }, 30'000));
    }
    void show_from(const QString& typed)
    {
        QSignalSpy changed(model.get(), &YearModel::householdChanged);
        ASSERT_TRUE(model->begin()->show(typed)) << model->begin()->trouble().toStdString();
        ASSERT_TRUE(changed.wait(20'000));
        ASSERT_TRUE(QTest::qWaitFor([this] { return !model->planning(); }, 30'000));
    }
    /// Row, day of an edge between two stays.
    std::pair<int, int> an_edge() const
    {
        for (std::size_t row = 0; row < model->order().size(); ++row) {
            if (const auto& stays = model->stays(model->order()[row]); stays.size() > 1) {
                return {static_cast<int>(row), stays[1].first};
            }
        }
        return {-1, -1};
    }
    static calendar::Date next_march() { return {static_cast<unsigned short>(shown_today().year() + 1), 3, 1}; }

    std::shared_ptr<MemoryHousehold> household;
    std::unique_ptr<YearModel> model;
};

TEST_F(YearFrom, AnotherDateHasItsOwnTwelveMonthsAndPlan)
{
    const QString today = model->todayLong();
    const QString usual = model->begin()->title();
    EXPECT_FALSE(model->begin()->elsewhere());
    ASSERT_NO_FATAL_FAILURE(show_from(model->begin()->example()));
    EXPECT_TRUE(model->begin()->elsewhere());
    EXPECT_EQ(model->year().days.front().date, next_march());
    EXPECT_EQ(model->dayCount(), plan::kNightsOfAPlan);
    EXPECT_EQ(model->begin()->title(), "The year from " + model->words().date_with_year(next_march()));
    EXPECT_EQ(model->todayLong(), today) << "today stays today";
    EXPECT_TRUE(model->cursor()->longDate().contains(QString::number(int{next_march().year()}))) << model->cursor()->longDate().toStdString();
    EXPECT_TRUE(model->cursor()->shortDate().contains(QString::number(int{next_march().year()}))) << model->cursor()->shortDate().toStdString();
    // The same plan as the command line's for that date: as the plants stand today.
    const auto facts = household->facts();
    const auto solved = household_year(facts, shown_today(), Units::Metric, next_march()).solver(model->risk());
    ASSERT_EQ(solved.stays.size(), model->year().plants.size());
    for (std::size_t plant = 0; plant < solved.stays.size(); ++plant) {
        ASSERT_EQ(model->stays(plant).size(), solved.stays[plant].size());
        for (std::size_t stay = 0; stay < solved.stays[plant].size(); ++stay) {
            EXPECT_EQ(model->stays(plant)[stay].first, solved.stays[plant][stay].first);
            EXPECT_EQ(model->stays(plant)[stay].spot, solved.stays[plant][stay].spot);
        }
    }
    ASSERT_NO_FATAL_FAILURE(show_from(" "));
    EXPECT_FALSE(model->begin()->elsewhere());
    EXPECT_EQ(model->begin()->title(), usual);
    EXPECT_EQ(model->year().days.front().date, shown_today());
}

TEST_F(YearFrom, NothingOfItIsKeptOrPinned)
{
    const auto pinned = household->facts().as_told.plants.front();
    ASSERT_TRUE(pinned.spot);
    ASSERT_TRUE(household->change("pin", [&](plan::HouseholdFacts& facts) -> Result<void> {
        facts.as_told.pins = {{pinned.id, *pinned.spot, shown_today(), shown_today() + calendar::Days{700}}};
        return {};
    }));
    EXPECT_TRUE(model->canKeep());
    ASSERT_NO_FATAL_FAILURE(show_from("2027-03-01"));
    EXPECT_FALSE(model->canKeep());
    const auto [row, day] = an_edge();
    ASSERT_GE(row, 0);
    EXPECT_FALSE(model->edge()->isNear(row, day, 3));
    EXPECT_FALSE(model->edge()->take(row, day, 3));
    for (int of = 0; of < static_cast<int>(model->order().size()); ++of) {
        model->unpin(of);
    }
    model->keepPlan();
    QTest::qWait(50);
    EXPECT_EQ(household->facts().as_told.pins.size(), 1U);
    EXPECT_FALSE(household->facts().accepted);
    ASSERT_NO_FATAL_FAILURE(show_from(""));
    EXPECT_TRUE(model->canKeep());
    const auto [again, edge] = an_edge();
    EXPECT_TRUE(model->edge()->isNear(again, edge, 3));
}

TEST_F(YearFrom, WhatOthersWriteIsReadFromThatDateOn)
{
    ASSERT_NO_FATAL_FAILURE(show_from("2027-03-01"));
    const auto first = household->facts().as_told.plants.front();
    ASSERT_TRUE(household->change("gone", [&](plan::HouseholdFacts& facts) -> Result<void> {
        std::erase_if(facts.as_told.pins, [&](const home::Pin& pin) { return pin.plant == first.id; });
        std::erase_if(facts.as_told.plants, [&](const home::Plant& plant) { return plant.id == first.id; });
        return {};
    }));
    QSignalSpy changed(model.get(), &YearModel::householdChanged);
    const auto plants = model->order().size();
    model->follow();
    ASSERT_TRUE(changed.wait(20'000));
    EXPECT_TRUE(model->begin()->elsewhere());
    EXPECT_EQ(model->year().days.front().date, (calendar::Date{2027, 3, 1}));
    EXPECT_EQ(model->order().size(), plants - 1);
}

TEST_F(YearFrom, ADateThatIsNoneOrTooFarIsASentence)
{
    EXPECT_FALSE(model->begin()->show("spring"));
    EXPECT_TRUE(model->begin()->trouble().contains("spring")) << model->begin()->trouble().toStdString();
    EXPECT_TRUE(model->begin()->trouble().contains(model->begin()->example()));
    EXPECT_FALSE(model->begin()->show("1.3.2199"));
    EXPECT_TRUE(model->begin()->trouble().contains("five years"));
    EXPECT_FALSE(model->begin()->show("1.3.1999"));
    model->begin()->forgive();
    EXPECT_EQ(model->begin()->trouble(), "");
    EXPECT_FALSE(model->begin()->elsewhere());
}

TEST(ShelteredSpot, IsOneThatIsWarmerThanTheOpenAir)
{
    auto facts = facts_of_demonstration({.today = shown_today()}).value();
    const auto usual = household_year(facts, shown_today(), Units::Metric).year;
    ASSERT_TRUE(usual.sheltered);
    EXPECT_GT(facts.as_told.spots[usual.sheltered->spot].offset.mean, KelvinDelta::from_kelvins(0.0));
    for (auto& spot : facts.as_told.spots) {
        spot.offset = {};
    }
    EXPECT_FALSE(household_year(facts, shown_today(), Units::Metric).year.sheltered);
}

} // namespace
} // namespace lathhouse::models
