#include "app/models/changes_model.h"
#include "app/models/household_door.h"
#include "tests/window/demonstration_year.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace lathhouse::models {
namespace {

std::shared_ptr<MemoryHousehold> household()
{
    auto facts = facts_of_demonstration({.today = shown_today()});
    EXPECT_TRUE(facts);
    return std::make_shared<MemoryHousehold>(std::move(*facts));
}

bool rename_first(MemoryHousehold& of, const std::string& name)
{
    return of.change("rename", [&name](plan::HouseholdFacts& facts) -> Result<void> {
                 facts.as_told.plants.front().name = name;
                 return {};
             })
        .has_value();
}

TEST(ChangesModel, TakesBackTheLastChangeAndLetsItCountAgain)
{
    const auto of = household();
    const std::string before = of->facts().as_told.plants.front().name;
    ASSERT_TRUE(rename_first(*of, "Old lemon"));
    ASSERT_TRUE(rename_first(*of, "Older lemon"));
    ChangesModel changes(turn_in_memory(of));
    QSignalSpy written(&changes, &SheetModel::written);
    changes.undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changes.working(); }, 30'000));
    EXPECT_EQ(of->facts().as_told.plants.front().name, "Old lemon");
    EXPECT_TRUE(changes.canRedo());
    changes.undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changes.working(); }, 30'000));
    EXPECT_EQ(of->facts().as_told.plants.front().name, before);
    changes.redo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changes.working(); }, 30'000));
    EXPECT_EQ(of->facts().as_told.plants.front().name, "Old lemon");
    EXPECT_EQ(written.count(), 3);
}

TEST(ChangesModel, WhatWasTakenBackStaysInWordsOnAnotherPage)
{
    const auto of = household();
    ASSERT_TRUE(rename_first(*of, "Old lemon"));
    ChangesModel changes(turn_in_memory(of));
    changes.undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changes.working(); }, 30'000));
    const QString said = changes.said();
    ASSERT_FALSE(said.isEmpty());
    changes.pass();
    EXPECT_EQ(changes.said(), said);
    EXPECT_TRUE(changes.canRedo());
    changes.undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changes.working(); }, 30'000));
    EXPECT_EQ(changes.said(), "Nothing is left to take back.");
    changes.pass();
    EXPECT_EQ(changes.said(), "") << "it speaks of no change";
}

TEST(ChangesModel, SaysWhereNothingIsLeft)
{
    ChangesModel changes(turn_in_memory(household()));
    QSignalSpy written(&changes, &SheetModel::written);
    changes.undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changes.working(); }, 30'000));
    EXPECT_EQ(changes.said(), "Nothing is left to take back.");
    EXPECT_FALSE(changes.canRedo());
    EXPECT_EQ(written.count(), 0);
    changes.leave();
    EXPECT_EQ(changes.said(), "");
}

TEST(ChangesModel, AFailureIsSaidAndChangesNothing)
{
    ChangesModel changes([](Turn) -> Result<std::optional<std::string>> {
        return Error{ErrorCode::Locked, "another program is writing; try again in a moment"};
    });
    changes.undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !changes.working(); }, 30'000));
    EXPECT_EQ(changes.error(), "Another program is writing; try again in a moment.");
    EXPECT_EQ(changes.said(), "");
}

} // namespace
} // namespace lathhouse::models
