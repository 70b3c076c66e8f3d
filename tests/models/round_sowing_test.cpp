#include "app/models/round_model.h"
#include "app/words/round_words.h"
#include "core/journal/household_store.h"
#include "tests/models/page_fixtures.h"
#include "tests/models/start_fixtures.h"

namespace lathhouse::models {
namespace {

constexpr int kSeedsInTheLot = 60;

home::SeedLot some_beans()
{
    return {.id = 0, .name = "Beans", .crop = "Phaseolus vulgaris", .packed_year = 2026, .stated_percent = 90.0,
            .seeds = kSeedsInTheLot, .note = {}};
}

TodayLook look_of_may()
{
    return {kShownToday, british_look().words, {}};
}

void wait_until_read(RoundModel& model)
{
    ASSERT_TRUE(QTest::qWaitFor([&model] { return !model.working(); }, 30'000));
}

/// A tray of tomatoes, 9 of 12 up and the counting over, as it is to be potted from.
home::SeedBook tomatoes_to_pot()
{
    home::SeedBook seeds;
    seeds.lots = {some_beans()};
    seeds.lots.front().id = 1;
    seeds.lots.front().name = "Tomatoes";
    seeds.lots.front().crop = "Tomato";
    seeds.trays = {home::Tray{1, 1, kShownToday - calendar::Days{20}, 12, 1, {}, {}}};
    seeds.counts = {home::TrayCount{1, kShownToday - calendar::Days{2}, 9, true}};
    return seeds;
}

int row_that_begins(const RoundModel& model, const char* words)
{
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.data(model.index(row), RoundModel::TaskRole).toString().startsWith(words)) {
            return row;
        }
    }
    return -1;
}

int row_of_beans(const RoundModel& model)
{
    for (int row = 0; row < model.rowCount(); ++row) {
        const QString task = model.data(model.index(row), RoundModel::TaskRole).toString();
        if (task.startsWith("Sow ") && task.endsWith("Beans")) {
            return row;
        }
    }
    return -1;
}

TEST(RoundSowing, TickingItMakesTheTrayInOneStep)
{
    auto facts = plain_facts();
    facts.seeds.lots = {some_beans()};
    facts.seeds.lots.front().id = 1;
    const auto household = std::make_shared<MemoryHousehold>(facts);
    RoundModel model(round_in_memory(household), look_of_may());
    model.start();
    wait_until_read(model);
    const int row = row_of_beans(model);
    ASSERT_GE(row, 0);
    model.tick(row);
    EXPECT_FALSE(model.data(model.index(row), RoundModel::DoneRole).toBool()) << "how many is asked first";
    EXPECT_TRUE(model.seedsAsked().contains("60 are left")) << model.seedsAsked().toStdString();
    EXPECT_FALSE(model.sow("many"));
    EXPECT_FALSE(model.sow("61"));
    EXPECT_TRUE(model.error().contains("60"));
    EXPECT_TRUE(model.sow("12"));
    EXPECT_EQ(model.seedsAsked(), "");
    EXPECT_TRUE(model.data(model.index(row), RoundModel::DoneRole).toBool());
    wait_until_read(model);
    ASSERT_EQ(household->facts().seeds.trays.size(), 1u);
    EXPECT_EQ(household->facts().seeds.trays.front().seeds, 12);
    EXPECT_EQ(household->facts().seeds.trays.front().sown, kShownToday);
    EXPECT_TRUE(model.data(model.index(row_of_beans(model)), RoundModel::DoneRole).toBool());
    model.undo();
    wait_until_read(model);
    EXPECT_TRUE(household->facts().seeds.trays.empty());
    EXPECT_FALSE(model.data(model.index(row_of_beans(model)), RoundModel::DoneRole).toBool());
    model.redo();
    wait_until_read(model);
    EXPECT_EQ(household->facts().seeds.trays.size(), 1u);
    EXPECT_EQ(model.error(), "");
}

TEST(RoundSowing, TickingAPottingMakesThePlantsInOneStep)
{
    auto facts = plain_facts();
    facts.seeds = tomatoes_to_pot();
    const auto plants = facts.as_told.plants.size();
    const auto household = std::make_shared<MemoryHousehold>(facts);
    RoundModel model(round_in_memory(household), look_of_may());
    model.start();
    wait_until_read(model);
    const int row = row_that_begins(model, "Pot ");
    ASSERT_GE(row, 0);
    model.tick(row);
    EXPECT_TRUE(model.seedsAsked().contains("9 are in the tray")) << model.seedsAsked().toStdString();
    EXPECT_FALSE(model.sow("none"));
    EXPECT_FALSE(model.sow("10"));
    EXPECT_TRUE(model.error().contains("9 seedlings")) << model.error().toStdString();
    EXPECT_TRUE(model.sow("3"));
    wait_until_read(model);
    EXPECT_EQ(model.error(), "");
    EXPECT_EQ(household->facts().as_told.plants.size(), plants + 3);
    EXPECT_EQ(household->facts().seeds.potted_from(1), 3u);
    model.undo();
    wait_until_read(model);
    EXPECT_EQ(household->facts().as_told.plants.size(), plants);
    model.redo();
    wait_until_read(model);
    EXPECT_EQ(household->facts().seeds.potted_from(1), 3u);
}

TEST(RoundSowing, APottingInAFolderIsTakenBackAsOne)
{
    FreshFolder folder;
    const auto& facts = plain_facts();
    auto store = journal::HouseholdStore::create(folder.path(), facts.as_told, facts.events).value();
    const auto at = calendar::start_of_day_utc(kShownToday);
    const auto book = tomatoes_to_pot();
    ASSERT_TRUE(store.add_lot(book.lots.front(), kShownToday, at));
    ASSERT_TRUE(store.record(book.trays.front(), kShownToday, at));
    ASSERT_TRUE(store.record(book.counts.front(), kShownToday, at));
    const auto before = store.load()->plants.size();
    const auto source = round_in_folder(folder.path(), [&]() -> Result<plan::HouseholdFacts> { return facts; });
    ASSERT_TRUE(source.pot_up(1, 4, kShownToday, at));
    EXPECT_EQ(store.load()->plants.size(), before + 4);
    EXPECT_FALSE(source.take_back(potted_key("1", "3"), at)) << "another potting";
    ASSERT_TRUE(source.take_back(potted_key("1", "4"), at));
    EXPECT_EQ(store.load()->plants.size(), before);
    ASSERT_TRUE(source.bring_back(potted_key("1", "4"), at));
    EXPECT_EQ(store.seeds()->potted_from(1), 4u);
}

TEST(RoundSowing, WhatWasNotSownIsNotTicked)
{
    auto facts = plain_facts();
    facts.seeds.lots = {some_beans()};
    facts.seeds.lots.front().id = 1;
    const auto household = std::make_shared<MemoryHousehold>(facts);
    RoundModel model(round_in_memory(household), look_of_may());
    model.start();
    wait_until_read(model);
    model.tick(row_of_beans(model));
    model.leaveSowing();
    EXPECT_EQ(model.seedsAsked(), "");
    EXPECT_FALSE(model.sow("12"));
    EXPECT_TRUE(household->facts().seeds.trays.empty());
}

TEST(RoundSowing, InAFolderItIsOneEntryThatIsTakenBackAsOne)
{
    FreshFolder folder;
    const auto& facts = plain_facts();
    auto store = journal::HouseholdStore::create(folder.path(), facts.as_told, facts.events).value();
    const auto at = calendar::start_of_day_utc(kShownToday);
    ASSERT_TRUE(store.add_lot(some_beans(), kShownToday, at));
    const auto before = store.events()->size();
    RoundModel model(round_in_folder(folder.path(), [&]() -> Result<plan::HouseholdFacts> {
                         auto now_there = facts;
                         now_there.events = store.events().value();
                         now_there.seeds = store.seeds().value();
                         return now_there;
                     }),
                     look_of_may());
    model.start();
    wait_until_read(model);
    model.tick(row_of_beans(model));
    ASSERT_TRUE(model.sow("1"));
    wait_until_read(model);
    EXPECT_EQ(store.seeds()->trays.size(), 1u);
    EXPECT_EQ(store.events()->size(), before + 1);
    model.undo();
    wait_until_read(model);
    EXPECT_EQ(model.error(), "");
    EXPECT_TRUE(store.seeds()->trays.empty());
    EXPECT_EQ(store.events()->size(), before);
    model.redo();
    wait_until_read(model);
    EXPECT_EQ(store.seeds()->trays.size(), 1u);
}

TEST(SowingWhy, NamesTheLastUsefulDay)
{
    plan::Task task{plan::SowingTask{plan::SowingTaskKind::SowIndoors, 1, {}, kShownToday, kShownToday, 15, "Tomato", false},
                    plan::PestState::Clean, {}, {}, kShownToday, kShownToday, 15, "seeds/1/0l"};
    const auto why = [&] { return words::task_why(task, plain_facts().as_told, words::UnitSystem::Metric); };
    EXPECT_EQ(why(), "its time is now");
    std::get<plan::SowingTask>(task.matter).last_day = true;
    EXPECT_EQ(why(), "today is the last day on which it is of use");
}

} // namespace
} // namespace lathhouse::models
