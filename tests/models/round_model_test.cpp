#include "app/models/round_model.h"
#include "core/journal/household_store.h"
#include "tests/window/demonstration_round.h"

#include <QAbstractItemModelTester>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

namespace lathhouse::models {
namespace {

const calendar::Date kToday{2026, 5, 16};

const plan::HouseholdFacts& facts()
{
    static const auto kFacts = demonstration_facts(kToday);
    EXPECT_TRUE(kFacts);
    return *kFacts;
}

TodayLook look()
{
    return {kToday,
            YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)),
            {{"South sill", 3}}};
}

void wait_for(RoundModel& model)
{
    ASSERT_TRUE(QTest::qWaitFor([&model] { return !model.working(); }, 30'000));
}

QVariant role(const RoundModel& model, int row, RoundModel::Role role)
{
    return model.data(model.index(row), role);
}

int row_of(const RoundModel& model, const QString& sentence_start)
{
    for (int row = 0; row < model.rowCount(); ++row) {
        if (role(model, row, RoundModel::SentenceRole).toString().startsWith(sentence_start)) {
            return row;
        }
    }
    return -1;
}

class RoundModelTest : public testing::Test {
protected:
    RoundModelTest() : model(round_in_memory(facts()), look())
    {
        model.start();
        wait_for(model);
    }
    RoundModel model;
};

TEST_F(RoundModelTest, KeepsTheRulesOfModels)
{
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_GT(model.rowCount(), 5);
    const int before = model.rowCount();
    model.tick(0);
    model.postpone(1, 2);
    wait_for(model);
    EXPECT_EQ(model.rowCount(), before - 1);
    model.undo();
    model.undo();
    wait_for(model);
    EXPECT_EQ(model.rowCount(), before);
    EXPECT_EQ(model.rowCount(model.index(0)), 0);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
}

TEST_F(RoundModelTest, ClassesComeInOrderAndEachHasOneHeadingAfterItsWashing)
{
    QStringList headings;
    int highest = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        const int state = role(model, row, RoundModel::ClassStateRole).toInt();
        EXPECT_GE(state, highest);
        highest = state;
        const QString heading = role(model, row, RoundModel::HeadingRole).toString();
        if (!heading.isEmpty()) {
            headings.append(heading);
            EXPECT_FALSE(role(model, row, RoundModel::HygieneRole).toBool());
            EXPECT_FALSE(role(model, row, RoundModel::HeadingNoteRole).toString().isEmpty());
            if (row > 0) {
                EXPECT_TRUE(role(model, row - 1, RoundModel::HygieneRole).toBool());
            }
        }
        EXPECT_EQ(role(model, row, RoundModel::OrderRole).toInt(), row + 1);
        EXPECT_FALSE(role(model, row, RoundModel::TaskRole).toString().isEmpty());
        EXPECT_FALSE(role(model, row, RoundModel::WhyRole).toString().isEmpty());
        EXPECT_GT(role(model, row, RoundModel::MinutesRole).toInt(), 0);
    }
    EXPECT_EQ(headings, QStringList({"Clean plants", "Suspect plants", "Infested plants"}));
    EXPECT_TRUE(role(model, model.rowCount() - 1, RoundModel::HygieneRole).toBool());
}

TEST_F(RoundModelTest, SpraysCarryTheirCautionsAndAreReadAloudWithThem)
{
    int treated = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        if (role(model, row, RoundModel::TaskRole).toString().startsWith("Treat it")) {
            ++treated;
            const auto cautions = role(model, row, RoundModel::CautionsRole).toStringList();
            EXPECT_GE(cautions.size(), 6);
            for (const auto& caution : cautions) {
                EXPECT_TRUE(role(model, row, RoundModel::SentenceRole).toString().contains(caution));
            }
        }
    }
    EXPECT_GT(treated, 0);
}

TEST(RoundOfFeeds, OnesBelowTheFirstSayItsCautionsInShort)
{
    auto never_fed = facts();
    std::erase_if(never_fed.events.edit(), [](const home::Event& of) { return of.kind != home::EventKind::Moved; });
    for (const auto& plant : never_fed.as_told.plants) { // A washing out would come first.
        never_fed.events.push_back({plant.id, home::EventKind::Leached, {}, kToday - calendar::Days{30}, {}, ""});
    }
    RoundModel model(round_in_memory(never_fed), look());
    model.start();
    wait_for(model);
    int feeds = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        if (role(model, row, RoundModel::FeedPpmRole).toDouble() <= 0.0) {
            continue;
        }
        const auto shown = role(model, row, RoundModel::CautionsRole).toStringList();
        const QString spoken = role(model, row, RoundModel::SentenceRole).toString();
        EXPECT_TRUE(spoken.contains("Keep fertiliser dry, in its own packet")) << "spoken in full at each";
        if (++feeds == 1) {
            EXPECT_EQ(shown.size(), 3);
            EXPECT_TRUE(shown.contains("Keep fertiliser dry, in its own packet, locked away from children and animals."));
        } else {
            ASSERT_EQ(shown.size(), 1);
            EXPECT_TRUE(shown.front().contains(" · Keep fertiliser dry · ")) << shown.front().toStdString();
            EXPECT_TRUE(shown.front().contains(". In full above, at ")) << shown.front().toStdString();
        }
    }
    EXPECT_GT(feeds, 1);
}

TEST_F(RoundModelTest, HeadLineCountsTasksAndMinutes)
{
    int minutes = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        minutes += role(model, row, RoundModel::MinutesRole).toInt();
    }
    EXPECT_EQ(model.title(), QString::fromUtf8("Saturday’s round"));
    for (const auto language : {QLocale::English, QLocale::German, QLocale::Spanish}) { // Where a comma follows it in a date, too.
        const QString day = YearWords(Units::Metric, QLocale(language)).weekday(kToday);
        EXPECT_EQ(day, QLocale(language).dayName(6)) << day.toStdString();
    }
    EXPECT_TRUE(model.headLine().startsWith(
        QString("Saturday 16 May, %1 tasks, about %2 minutes.").arg(model.rowCount()).arg(minutes)))
        << model.headLine().toStdString();
    EXPECT_EQ(model.minutesLine(), QString("%1 min left").arg(minutes));
}

TEST_F(RoundModelTest, TickedRowStaysInItsPlaceAndIsTakenBack)
{
    const int before = model.rowCount();
    const QString task = role(model, 0, RoundModel::TaskRole).toString();
    model.tick(0);
    EXPECT_TRUE(role(model, 0, RoundModel::DoneRole).toBool()) << "shown at once";
    wait_for(model);
    EXPECT_EQ(role(model, 0, RoundModel::TaskRole).toString(), task);
    EXPECT_TRUE(role(model, 0, RoundModel::DoneRole).toBool());
    EXPECT_EQ(model.doneLine(), QString("1 of %1 done").arg(before));
    EXPECT_TRUE(model.said().startsWith("Done: "));
    model.undo();
    wait_for(model);
    EXPECT_FALSE(role(model, 0, RoundModel::DoneRole).toBool());
    EXPECT_FALSE(model.canUndo());
    EXPECT_EQ(model.rowCount(), before);
}

TEST_F(RoundModelTest, LastWashingStaysWhenEverythingBeforeItIsDone)
{
    for (int row = 0; row + 1 < model.rowCount(); ++row) {
        if (!role(model, row, RoundModel::HygieneRole).toBool()) {
            model.tick(row);
        }
    }
    wait_for(model);
    const int last = model.rowCount() - 1;
    EXPECT_TRUE(role(model, last, RoundModel::HygieneRole).toBool());
    EXPECT_FALSE(role(model, last, RoundModel::DoneRole).toBool());
    model.tick(last);
    wait_for(model);
    EXPECT_TRUE(role(model, last, RoundModel::DoneRole).toBool());
}

TEST_F(RoundModelTest, RefusesWithASentence)
{
    const int before = model.rowCount();
    model.undo();
    EXPECT_TRUE(model.error().startsWith("Nothing was done")) << model.error().toStdString();
    model.postpone(0, 0);
    EXPECT_TRUE(model.error().contains("1 to 60 days"));
    model.postpone(model.rowCount() - 1, 1);
    EXPECT_TRUE(model.error().startsWith("Washing cannot be put off"));
    model.tick(-1);
    model.tick(1000);
    model.postpone(1000, 1);
    wait_for(model);
    EXPECT_EQ(model.rowCount(), before);
    EXPECT_FALSE(model.canUndo());
    model.tick(0);
    model.postpone(0, 1);
    EXPECT_TRUE(model.error().startsWith("That is done already"));
    wait_for(model);
}

/// Tasks of clean plants that can wait, each at another shelf.
std::vector<RoundRow> rows_that_wait(int count, calendar::Date today)
{
    std::vector<RoundRow> rows;
    for (int at = 0; at < count; ++at) {
        rows.push_back({.task = {.matter = plan::PlainMove{1},
                                 .state = plan::PestState::Clean,
                                 .plant = {},
                                 .spot = {},
                                 .due = today,
                                 .latest = today + calendar::Days{2},
                                 .minutes = 1,
                                 .key = std::to_string(at)},
                        .spot = at % 2 == 0 ? "Lamp shelf" : "Sill",
                        .plant = {},
                        .words = {},
                        .why = {},
                        .cautions = {}});
    }
    return rows;
}

TEST(RoundFold, RowsBeyondSixOfAClassAreFoldedAndTold)
{
    RoundFold fold;
    const auto today = kToday;
    auto rows = rows_that_wait(9, today);
    fold.renew(rows, today);
    for (std::size_t row = 0; row < rows.size(); ++row) {
        EXPECT_EQ(fold.hides(row), row >= 6) << row;
        EXPECT_EQ(fold.more(rows, row), row == 5 ? QString("3 more: Lamp shelf, Sill") : QString{}) << row;
    }
    EXPECT_TRUE(fold.open(plan::PestState::Clean));
    EXPECT_FALSE(fold.open(plan::PestState::Clean));
    fold.renew(rows, today);
    EXPECT_FALSE(fold.hides(8));
    EXPECT_EQ(fold.more(rows, 5), "");
}

TEST(RoundFold, WhatIsDangerousOverdueOrDoneStaysInSight)
{
    const auto today = kToday;
    auto rows = rows_that_wait(12, today);
    rows[6].cautions = {"Poisonous to cats and dogs."};
    rows[7].task.latest = today;
    rows[8].task.due = today - calendar::Days{1};
    rows[9].done = true;
    RoundFold fold;
    fold.renew(rows, today);
    for (std::size_t row = 0; row < rows.size(); ++row) {
        EXPECT_EQ(fold.hides(row), row >= 10) << row;
    }
    EXPECT_EQ(fold.more(rows, 9), "2 more: Lamp shelf, Sill");
    rows.pop_back();
    fold.renew(rows, today);
    EXPECT_FALSE(fold.hides(10)) << "one alone is not folded";
}

TEST_F(RoundModelTest, WalkingIntoWhatIsFoldedShowsIt)
{
    int folded = -1;
    for (int row = 0; row < model.rowCount() && folded < 0; ++row) {
        folded = role(model, row, RoundModel::FoldedRole).toBool() ? row : -1;
    }
    ASSERT_GE(folded, 6) << "the demonstration household has a long class";
    QString told;
    for (int row = 0; row < model.rowCount(); ++row) {
        told += role(model, row, RoundModel::MoreRole).toString();
    }
    EXPECT_TRUE(told.contains(" more")) << told.toStdString();
    model.setCurrentRow(folded);
    EXPECT_EQ(model.currentRow(), folded);
    EXPECT_FALSE(role(model, folded, RoundModel::FoldedRole).toBool());
}

TEST_F(RoundModelTest, ATaskIsPutOffToADateHoweverFar)
{
    const int before = model.rowCount();
    model.postponeUntil(0, "1 Mar 2027");
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    EXPECT_TRUE(model.said().contains("1 March 2027")) << model.said().toStdString();
    wait_for(model);
    EXPECT_EQ(model.rowCount(), before - 1);
    model.postponeUntil(0, " 12 ");
    EXPECT_TRUE(model.said().startsWith("Put off to Thu 28 May")) << model.said().toStdString();
    wait_for(model);
    EXPECT_EQ(model.rowCount(), before - 2);
    for (const char* past : {"1 May 2026", "16 May 2026"}) {
        model.postponeUntil(0, past);
        EXPECT_TRUE(model.error().startsWith("A task is put off to a day after today")) << model.error().toStdString();
    }
    for (const char* wrong : {"soon", "", "61", "-3"}) {
        model.postponeUntil(0, wrong);
        EXPECT_FALSE(model.error().isEmpty()) << wrong;
    }
    wait_for(model);
    EXPECT_EQ(model.rowCount(), before - 2);
}

TEST_F(RoundModelTest, InventedHouseholdSaysThatNothingIsKept)
{
    EXPECT_TRUE(model.note().contains("gone when it closes"));
    EXPECT_TRUE(model.note().contains("tonight is not in the round"));
    const int known = row_of(model, "Bougainvillea: ");
    ASSERT_GE(known, 0);
    EXPECT_EQ(role(model, known, RoundModel::SpotColourRole).toInt(), 3);
}

TEST(RoundModel, WithoutPlantsSaysWhatToDo)
{
    auto none = facts();
    none.as_told.plants.clear();
    none.events = {};
    RoundModel model(round_in_memory(std::move(none)), look());
    EXPECT_TRUE(model.emptySentence().isEmpty()) << "nothing is known yet";
    model.start();
    wait_for(model);
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_TRUE(model.emptySentence().contains("under Plants"));
    EXPECT_FALSE(model.hasPlants());
    RoundModel some(round_in_memory(facts()), look());
    some.start();
    wait_for(some);
    EXPECT_TRUE(some.hasPlants());
}

TEST(RoundModel, UnreadableHouseholdIsASentenceAndCanBeReadAgain)
{
    bool there = false;
    auto source = round_in_memory(facts());
    source.load = [&there, load = source.load]() -> Result<plan::HouseholdFacts> {
        return there ? load()
                     : Result<plan::HouseholdFacts>{Error{ErrorCode::NotFound, "the folder is gone"}};
    };
    RoundModel model(std::move(source), look());
    model.start();
    wait_for(model);
    EXPECT_EQ(model.error(), "The folder is gone.");
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_TRUE(model.emptySentence().isEmpty());
    there = true;
    model.reload();
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty());
    EXPECT_GT(model.rowCount(), 0);
}

TEST(RoundModel, TickThatCannotBeWrittenIsTakenOff)
{
    auto source = round_in_memory(facts());
    source.record = [](const std::vector<home::Event>&) -> Result<void> {
        return Error{ErrorCode::Locked, "another program holds the household"};
    };
    RoundModel model(std::move(source), look());
    model.start();
    wait_for(model);
    model.tick(0);
    wait_for(model);
    EXPECT_FALSE(role(model, 0, RoundModel::DoneRole).toBool());
    EXPECT_TRUE(model.error().contains("another program holds the household"));
    EXPECT_FALSE(model.canUndo());
    EXPECT_TRUE(model.said().isEmpty());
}

/// The round of a household in a folder.
TEST(RoundModel, WhatIsTakenBackElsewhereIsDueAgain)
{
    const auto household = std::make_shared<MemoryHousehold>(facts());
    RoundModel model(round_in_memory(household), look());
    model.start();
    wait_for(model);
    for (const bool told : {true, false}) {
        model.tick(0);
        wait_for(model);
        ASSERT_TRUE(role(model, 0, RoundModel::DoneRole).toBool());
        ASSERT_TRUE(household->take_back_last());
        if (told) {
            model.forget();
        }
        model.reload();
        wait_for(model);
        EXPECT_FALSE(role(model, 0, RoundModel::DoneRole).toBool()) << told;
    }
}

class RoundInFolder : public testing::Test {
protected:
    RoundInFolder()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_round_model_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder = std::filesystem::path{pattern} / "home";
        EXPECT_TRUE(journal::HouseholdStore::create(folder, facts().as_told, facts().events));
    }
    ~RoundInFolder() override
    {
        std::error_code failure;
        std::filesystem::remove_all(folder.parent_path(), failure);
    }
    std::vector<home::Event> events() const
    {
        return *journal::HouseholdStore::open(folder).and_then(
            [](const auto& store) { return store.events(); });
    }
    RoundSource source() const
    {
        return round_in_folder(folder, [folder = folder]() -> Result<plan::HouseholdFacts> {
            const auto store = journal::HouseholdStore::open(folder);
            if (!store) {
                return store.error();
            }
            auto loaded = facts();
            loaded.as_told = *store->load();
            loaded.events = *store->events();
            return loaded;
        });
    }
    std::filesystem::path folder;
};

TEST_F(RoundInFolder, TickIsInTheJournalAndUndoTakesItOut)
{
    const auto before = events().size();
    RoundModel model(source(), look());
    model.start();
    wait_for(model);
    const int rows = model.rowCount();
    model.tick(0);
    wait_for(model);
    ASSERT_EQ(events().size(), before + 1);
    EXPECT_FALSE(model.note().contains("invented"));
    model.undo();
    wait_for(model);
    EXPECT_EQ(events().size(), before);
    EXPECT_EQ(model.rowCount(), rows);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
}

TEST_F(RoundInFolder, SeveralAtOnceAreTakenBackAtOnceAndBroughtBackInOrder)
{
    const auto written = [](const char* task) {
        return home::Event{1, home::EventKind::TaskDone, std::nullopt, kToday, calendar::Instant{}, "", {{"task", task}}};
    };
    const auto before = events().size();
    const auto round = source();
    const calendar::Instant at{};
    ASSERT_TRUE(round.record({written("in/1"), written("in/2"), written("in/3")}));
    ASSERT_EQ(events().size(), before + 3);
    EXPECT_FALSE(round.take_back(joined_keys({"in/3", "in/2"}), at)) << "the last was in/3";
    EXPECT_EQ(events().size(), before + 3);
    const auto keys = joined_keys({"in/1", "in/2", "in/3"});
    ASSERT_TRUE(round.take_back(keys, at));
    EXPECT_EQ(events().size(), before);
    ASSERT_TRUE(round.bring_back(keys, at));
    const auto again = events();
    ASSERT_EQ(again.size(), before + 3);
    EXPECT_EQ(again.back().detail("task"), "in/3");
}

TEST_F(RoundInFolder, WhatIsTickedIsWrittenThoughTheWindowClosesAtOnce)
{
    const auto before = events().size();
    {
        RoundModel model(source(), look());
        model.start();
        wait_for(model);
        model.tick(0);
        model.tick(1);
    }
    EXPECT_EQ(events().size(), before + 2);
}

TEST_F(RoundInFolder, UndoLeavesWhatAnotherProgramWroteSince)
{
    RoundModel model(source(), look());
    model.start();
    wait_for(model);
    model.tick(0);
    wait_for(model);
    const home::Event note{{},    home::EventKind::Noted, {}, kToday, calendar::start_of_day_utc(kToday),
                           "rain"};
    ASSERT_TRUE(journal::HouseholdStore::open(folder)->record(std::span<const home::Event>{&note, 1}));
    const auto before = events().size();
    model.undo();
    wait_for(model);
    EXPECT_EQ(events().size(), before);
    EXPECT_TRUE(model.error().contains("something else was written") ||
                model.error().startsWith("Something else"))
        << model.error().toStdString();
    EXPECT_TRUE(role(model, 0, RoundModel::DoneRole).toBool());
}

} // namespace
} // namespace lathhouse::models
