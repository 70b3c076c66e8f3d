#include "app/models/year_door.h"
#include "app/models/year_model.h"
#include "core/journal/household_store.h"
#include "tests/window/demonstration_year.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

namespace lathhouse::models {
namespace {

/// The demonstration's year in memory, its first plan there.
class YearByHand : public testing::Test {
protected:
    YearByHand()
    {
        auto facts = facts_of_demonstration({.today = shown_today()});
        EXPECT_TRUE(facts);
        household = std::make_shared<MemoryHousehold>(std::move(*facts));
        auto door = year_in_memory(household, shown_today(), Units::Metric);
        auto shown = door.load();
        EXPECT_TRUE(shown);
        model = std::make_unique<YearModel>(std::move(shown->year), std::move(shown->solver),
                                            YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)),
                                            nullptr, std::move(door));
        EXPECT_TRUE(QTest::qWaitFor([this] { return !model->planning(); }, 30'000));
    }
    /// Waits until what was asked for was read and planned.
    void wait_for_plan(QSignalSpy& household_changed)
    {
        ASSERT_TRUE(household_changed.wait(20'000));
        ASSERT_TRUE(QTest::qWaitFor([this] { return !model->planning(); }, 30'000));
    }
    /// A row whose plant goes out, and the first day of that.
    std::pair<int, int> row_going_out() const
    {
        for (std::size_t row = 0; row < model->order().size(); ++row) {
            const auto& stays = model->stays(model->order()[row]);
            for (std::size_t stay = 1; stay < stays.size(); ++stay) {
                if (model->year().spots[stays[stay].spot].outdoors) {
                    return {static_cast<int>(row), stays[stay].first};
                }
            }
        }
        return {-1, -1};
    }
    home::PlantId plant_of(int row) const
    {
        return model->year().plants[model->order()[static_cast<std::size_t>(row)]].id;
    }
    int row_of(home::PlantId plant) const
    {
        for (std::size_t row = 0; row < model->order().size(); ++row) {
            if (model->year().plants[model->order()[row]].id == plant) {
                return static_cast<int>(row);
            }
        }
        return -1;
    }
    std::shared_ptr<MemoryHousehold> household;
    std::unique_ptr<YearModel> model;
};

TEST_F(YearByHand, FollowsWhatOthersWroteAndKeepsTheCursor)
{
    QAbstractItemModelTester plants(model->plants(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester nights(model->nights(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    model->setCursorDay(100);
    model->setCurrentRow(3);
    const auto current = plant_of(3);
    ASSERT_TRUE(household->change("gone", [](plan::HouseholdFacts& facts) -> Result<void> {
        facts.as_told.plants.pop_back();
        facts.as_told.name = "Another name";
        return {};
    }));
    QSignalSpy changed(model.get(), &YearModel::householdChanged);
    model->follow();
    wait_for_plan(changed);
    EXPECT_EQ(model->household(), "Another name");
    EXPECT_EQ(model->plants()->rowCount(), 13);
    EXPECT_EQ(model->cursorDay(), 100);
    EXPECT_EQ(plant_of(model->currentRow()), current);
}

TEST_F(YearByHand, AnEdgeThatIsDroppedIsWhereThePlantIsCarried)
{
    const auto [row, first] = row_going_out();
    ASSERT_GE(row, 0);
    const auto plant = plant_of(row);
    ASSERT_TRUE(model->edge()->take(row, first + 1, 3));
    EXPECT_EQ(model->edge()->day(), first);
    model->edge()->move(first + 9);
    EXPECT_TRUE(model->edge()->words().contains("of a harmful night after it")) << model->edge()->words().toStdString();
    EXPECT_EQ(row_going_out().second, first + 9); // Shown while it is held.
    QSignalSpy changed(model.get(), &YearModel::householdChanged);
    QSignalSpy written(model.get(), &YearModel::written);
    model->edge()->drop();
    wait_for_plan(changed);
    EXPECT_EQ(written.count(), 1);
    EXPECT_EQ(model->edge()->row(), -1);
    const int now_at = row_of(plant);
    const auto& stays = model->stays(model->order()[static_cast<std::size_t>(now_at)]);
    const auto out = std::ranges::find_if(
        stays, [this](const YearStay& stay) { return model->year().spots[stay.spot].outdoors; });
    ASSERT_NE(out, stays.end());
    EXPECT_EQ(out->first, first + 9);
    const auto index = model->plants()->index(now_at);
    EXPECT_TRUE(model->plants()->data(index, PlantRows::PinnedRole).toString().startsWith("kept at "));
    changed.clear();
    model->unpin(now_at);
    wait_for_plan(changed);
    EXPECT_TRUE(household->facts().as_told.pins.empty());
    EXPECT_EQ(row_going_out().second, first);
}

TEST_F(YearByHand, AnEdgeThatWasDroppedIsTakenBackAsOneWithWordsOfItsOwn)
{
    const QTemporaryDir made;
    const auto folder = std::filesystem::path{made.path().toStdString()} / "household";
    auto invented = facts_of_demonstration({.today = shown_today()});
    ASSERT_TRUE(invented);
    auto store = journal::HouseholdStore::create(folder, invented->as_told);
    ASSERT_TRUE(store) << store.error().message;
    const auto load = [facts = *invented, folder]() -> Result<plan::HouseholdFacts> {
        auto now_known = facts;
        auto kept = journal::HouseholdStore::open(folder);
        if (!kept) {
            return kept.error(); // The year is read anew once more while the test ends.
        }
        now_known.as_told.pins = kept->load()->pins;
        return now_known;
    };
    auto door = year_in_folder(folder, load, shown_today(), Units::Metric);
    auto shown = door.load();
    YearModel of_folder(std::move(shown->year), std::move(shown->solver),
                        YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)), nullptr, std::move(door));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !of_folder.planning(); }, 30'000));
    const auto [row, first] = row_going_out();
    ASSERT_TRUE(of_folder.edge()->take(row, first, 0));
    of_folder.edge()->move(first + 9);
    QSignalSpy written(&of_folder, &YearModel::written);
    of_folder.edge()->drop();
    ASSERT_TRUE(written.wait(20'000));
    EXPECT_EQ(store->load()->pins.size(), 2U);
    const auto undone = store->turn_last(journal::HouseholdStore::Direction::Undo, calendar::start_of_day_utc(shown_today()));
    ASSERT_TRUE(undone && *undone);
    EXPECT_NE(std::get<home::Event>(**undone).note.find("is carried from"), std::string::npos);
    EXPECT_TRUE(store->load()->pins.empty()) << "both pins of one edge go at once";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !of_folder.planning(); }, 30'000));
}

TEST_F(YearByHand, AnEdgeThatIsLeftChangesNothing)
{
    const auto [row, first] = row_going_out();
    ASSERT_TRUE(model->edge()->take(row, first, 0));
    model->edge()->move(-20);
    EXPECT_GE(model->edge()->day(), 1);
    model->edge()->move(100'000);
    EXPECT_LT(model->edge()->day(), model->dayCount());
    model->edge()->leave();
    EXPECT_EQ(row_going_out().second, first);
    EXPECT_TRUE(household->facts().as_told.pins.empty());
    EXPECT_FALSE(model->edge()->take(row, first + 40, 3));
    EXPECT_FALSE(model->edge()->take(-1, first, 3));
    EXPECT_FALSE(model->edge()->take(10'000, first, 3));
}

TEST_F(YearByHand, AKeptPlanNamesWhatIsOtherwise)
{
    EXPECT_TRUE(model->keptLine().startsWith("No plan is kept yet."));
    QSignalSpy changed(model.get(), &YearModel::householdChanged);
    model->keepPlan();
    wait_for_plan(changed);
    EXPECT_TRUE(model->keptLine().startsWith("As in the plan kept on ")) << model->keptLine().toStdString();
    EXPECT_TRUE(model->changes().isEmpty());
    const auto [row, first] = row_going_out();
    ASSERT_TRUE(model->edge()->take(row, first, 0));
    model->edge()->move(first + 9);
    changed.clear();
    model->edge()->drop();
    wait_for_plan(changed);
    EXPECT_FALSE(model->changes().isEmpty());
}

TEST_F(YearByHand, PlantsOutdoorsInSummerAreFed)
{
    const auto [row, first] = row_going_out();
    const auto& feeds = model->feeds(model->order()[static_cast<std::size_t>(row)]);
    EXPECT_FALSE(feeds.empty());
    EXPECT_TRUE(std::ranges::is_sorted(feeds));
    EXPECT_TRUE(model->feeds(1000).empty());
}

TEST_F(YearByHand, WhatCannotBeReadIsSaidAndTheOldYearStays)
{
    YearDoor door;
    door.load = []() -> Result<HouseholdYear> {
        return Error{ErrorCode::Unreadable, "The folder is gone."};
    };
    const auto loaded = year_in_memory(household, shown_today(), Units::Metric).load();
    ASSERT_TRUE(loaded);
    YearModel other(loaded->year, loaded->solver, YearWords(Units::Metric), nullptr, std::move(door));
    other.follow();
    ASSERT_TRUE(QTest::qWaitFor([&other] { return !other.error().isEmpty(); }, 30'000));
    EXPECT_EQ(other.error(), "The folder is gone.");
    EXPECT_EQ(other.plants()->rowCount(), 14);
}

} // namespace
} // namespace lathhouse::models
