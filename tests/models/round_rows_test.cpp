#include "app/models/round_model.h"
#include "app/models/word_form.h"
#include "core/plan/whereabouts.h"
#include "tests/models/page_fixtures.h"

#include <algorithm>

namespace lathhouse::models {
namespace {

void wait_for_round(RoundModel& model)
{
    ASSERT_TRUE(QTest::qWaitFor([&model] { return !model.working(); }, 30'000));
}

QString said_of(const RoundModel& model, int row, RoundModel::Role role)
{
    return model.data(model.index(row), role).toString();
}

/// What a round shows, row by row.
std::vector<std::string> sentences(const RoundModel& model)
{
    std::vector<std::string> all;
    for (int row = 0; row < model.rowCount(); ++row) {
        all.push_back((said_of(model, row, RoundModel::TaskRole) + QLatin1Char('/') + said_of(model, row, RoundModel::PlantRole)).toStdString());
    }
    return all;
}

int row_where(const RoundModel& model, const QString& task)
{
    for (int row = 0; row < model.rowCount(); ++row) {
        if (said_of(model, row, RoundModel::TaskRole).startsWith(task)) {
            return row;
        }
    }
    return -1;
}

TEST(RoundRows, WhatIsDoneStaysInItsPlaceWhenTheWindowIsOpenedAnew)
{
    const auto household = std::make_shared<MemoryHousehold>(with_cold_night(plain_facts(), kShownToday));
    std::vector<std::string> before;
    std::vector<int> done;
    {
        RoundModel model(round_in_memory(household), british_look());
        model.start();
        wait_for_round(model);
        before = sentences(model);
        for (const char* task : {"Out for 1 hour", "Carry it in for the night", "Treat it", "Feel whether"}) { // None that changes what else is due.
            if (const int row = row_where(model, task); row >= 0) {
                model.tick(row);
                done.push_back(row);
            }
        }
        ASSERT_GE(done.size(), 2U);
        wait_for_round(model);
        EXPECT_EQ(sentences(model), before);
    }
    RoundModel model(round_in_memory(household), british_look());
    model.start();
    wait_for_round(model);
    const auto after = sentences(model);
    for (std::size_t row = 0; row < std::max(after.size(), before.size()); ++row) {
        EXPECT_EQ(row < after.size() ? after[row] : "-", row < before.size() ? before[row] : "-") << row;
    }
    for (int row = 0; row < model.rowCount(); ++row) {
        const bool expected = std::ranges::find(done, row) != done.end();
        EXPECT_EQ(model.data(model.index(row), RoundModel::DoneRole).toBool(), expected) << row;
        EXPECT_EQ(said_of(model, row, RoundModel::DoneAtRole).startsWith("done "), expected) << row;
    }
    EXPECT_TRUE(model.doneLine().startsWith(QString::number(done.size()) + " of ")) << model.doneLine().toStdString();
}

TEST(RoundRows, AMoveThatWasTickedStaysInItsPlaceToo)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    QString moved;
    {
        RoundModel model(round_in_memory(household), british_look());
        model.start();
        wait_for_round(model);
        const int row = row_where(model, "Carry it to");
        ASSERT_GE(row, 0);
        moved = said_of(model, row, RoundModel::PlantRole);
        model.tick(row);
        wait_for_round(model);
    }
    RoundModel model(round_in_memory(household), british_look());
    model.start();
    wait_for_round(model);
    const int row = row_where(model, "Carry it to");
    ASSERT_GE(row, 0);
    EXPECT_EQ(said_of(model, row, RoundModel::PlantRole), moved);
    EXPECT_TRUE(model.data(model.index(row), RoundModel::DoneRole).toBool());
    model.undo();
    EXPECT_TRUE(model.error().startsWith("Nothing was done in this window yet"));
}

TEST(RoundRows, TheTimeOfATickIsThatOfTheReadersClock)
{
    RoundModel model(round_in_memory(plain_facts()), british_look());
    model.start();
    wait_for_round(model);
    const auto early = QDateTime::currentDateTime();
    model.tick(0);
    const auto late = QDateTime::currentDateTime();
    const QString told = said_of(model, 0, RoundModel::DoneAtRole);
    EXPECT_TRUE(told == early.toString("'done 'HH:mm") || told == late.toString("'done 'HH:mm")) << told.toStdString();
    EXPECT_TRUE(said_of(model, 0, RoundModel::SentenceRole).contains("Done " + told.mid(5)));
    wait_for_round(model);
    EXPECT_EQ(said_of(model, 0, RoundModel::DoneAtRole), told);
    model.undo();
    wait_for_round(model);
    EXPECT_EQ(said_of(model, 0, RoundModel::DoneAtRole), "");
}

TEST(RoundRows, ATickThatMovedAPlantIsTakenOutWithThePlaceItMovedTo)
{
    auto facts = plain_facts();
    auto& plant = facts.as_told.plants.front();
    const auto stood = facts.as_told.spots.front().id;
    const auto moved_to = facts.as_told.spots.back().id;
    const auto event = [&](calendar::Date on, home::SpotId to, const char* task) {
        home::Event of{plant.id, home::EventKind::Moved, to, on, calendar::start_of_day_utc(on), "", {}};
        if (*task != '\0') {
            of.details["task"] = task;
        }
        return of;
    };
    facts.events.push_back(event(kShownToday - calendar::Days{9}, stood, ""));
    facts.events.push_back(event(kShownToday, moved_to, "move/1/2026-05-16"));
    plant.spot = moved_to;
    const auto events = facts.events.size();
    const auto morning = before_ticks(facts, kShownToday);
    EXPECT_EQ(morning.events.size(), events - 1);
    EXPECT_EQ(morning.as_told.plants.front().spot, stood);
    EXPECT_EQ(before_ticks(facts, kShownToday + calendar::Days{1}).as_told.plants.front().spot, moved_to);
    const auto ticked = ticked_on(facts.events, kShownToday);
    ASSERT_EQ(ticked.size(), 1U);
    EXPECT_TRUE(ticked.contains("move/1/2026-05-16"));
}

TEST(RoundRows, WhatCannotWaitAnyMoreSaysSinceWhenItIsDue)
{
    const auto& facts = plain_facts(); // With mealybugs six days before.
    auto look = british_look();
    look.today = kShownToday + calendar::Days{25};
    RoundModel model(round_in_memory(facts), look);
    model.start();
    wait_for_round(model);
    const auto season = facts.climate.nights();
    const auto rows = rows_of(facts, plan::round_parts(facts, season, look.today, plan::kUsualRisk), unit_system_of(look.words));
    ASSERT_EQ(static_cast<int>(rows.size()), model.rowCount());
    int overdue = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        const auto& task = rows[static_cast<std::size_t>(row)].task;
        const QString told = said_of(model, row, RoundModel::OverdueRole);
        EXPECT_EQ(!told.isEmpty(), task.latest < look.today && task.due < look.today) << row;
        overdue += told.isEmpty() ? 0 : 1;
        if (!told.isEmpty()) {
            EXPECT_EQ(told.simplified(), "was due " + look.words.short_date(task.due)) << row;
            EXPECT_EQ(said_of(model, row, RoundModel::LatestRole), "");
        }
    }
    EXPECT_GT(overdue, 0);
}

TEST(RoundRows, ACarryToWhereAPlantIsKeptIsPinned)
{
    auto facts = plain_facts();
    RoundModel free(round_in_memory(facts), british_look());
    free.start();
    wait_for_round(free);
    for (int row = 0; row < free.rowCount(); ++row) {
        EXPECT_FALSE(free.data(free.index(row), RoundModel::PinnedRole).toBool());
    }
    auto& plant = facts.as_told.plants.back();
    const auto other = std::ranges::find_if(facts.as_told.spots, [&](const home::Spot& spot) { return plant.spot != spot.id && !home::is_outdoors(spot.kind); });
    ASSERT_NE(other, facts.as_told.spots.end());
    plant.pinned_spot = other->id;
    RoundModel model(round_in_memory(facts), british_look());
    model.start();
    wait_for_round(model);
    int pinned = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.data(model.index(row), RoundModel::PinnedRole).toBool()) {
            ++pinned;
            EXPECT_EQ(said_of(model, row, RoundModel::PlantRole), text(plant.name));
            EXPECT_TRUE(said_of(model, row, RoundModel::SentenceRole).contains("Pinned"));
        }
    }
    EXPECT_GT(pinned, 0);
}

TEST(RoundRows, WhatIsNotFedForWhatHappenedToItWaits)
{
    auto facts = plain_facts();
    RoundModel before(round_in_memory(facts), british_look());
    before.start();
    wait_for_round(before);
    const int waited = before.waits()->count();
    const auto waits_already = [&](const home::Plant& of) {
        for (int row = 0; row < waited; ++row) {
            if (before.waits()->at(row, "plant") == text(of.name)) {
                return true;
            }
        }
        return false;
    };
    const auto fed = std::ranges::find_if_not(facts.as_told.plants, waits_already);
    ASSERT_NE(fed, facts.as_told.plants.end());
    const auto& plant = *fed;
    const auto on = kShownToday - calendar::Days{2};
    facts.events.push_back({plant.id, home::EventKind::Repotted, std::nullopt, on, calendar::start_of_day_utc(on), "", {}});
    RoundModel model(round_in_memory(facts), british_look());
    model.start();
    wait_for_round(model);
    ASSERT_EQ(model.waits()->count(), waited + 1);
    QString why;
    for (int row = 0; row < model.waits()->count(); ++row) {
        if (model.waits()->at(row, "plant") == text(plant.name)) {
            why = model.waits()->at(row, "why").toString();
        }
    }
    EXPECT_TRUE(why.startsWith("Not fed. Repotted on ")) << why.toStdString();
    EXPECT_TRUE(why.contains("; until ")) << why.toStdString();
}

TEST(RoundRows, ACarryForTheNightNamesASpotIndoors)
{
    const auto facts = with_cold_night(plain_facts(), kShownToday);
    const auto season = facts.climate.nights();
    const auto parts = plan::round_parts(facts, season, kShownToday, plan::kUsualRisk);
    int carries = 0;
    for (const auto& row : rows_of(facts, parts, unit_system_of(british_look().words))) {
        if (const auto* carry = std::get_if<plan::CarryInTonight>(&row.task.matter)) {
            ++carries;
            ASSERT_TRUE(carry->to);
            const auto* spot = facts.as_told.spot(*carry->to);
            EXPECT_FALSE(home::is_outdoors(spot->kind));
            EXPECT_EQ(row.words, (carry->stays ? "carry it in, to stay: " : "carry it in for the night: ") + spot->name);
        }
    }
    EXPECT_GE(carries, 3);
}

TEST(RoundRows, WhatIsCarriedTodayIsToldByItsPlantUntilItIsTicked)
{
    const auto household = std::make_shared<MemoryHousehold>(with_cold_night(plain_facts(), kShownToday));
    RoundModel model(round_in_memory(household), british_look());
    EXPECT_TRUE(model.carriesDue().isEmpty());
    model.start();
    wait_for_round(model);
    int carried_in = 0;
    int for_the_day = 0;
    const auto due = model.carriesDue();
    for (int row = 0; row < model.rowCount(); ++row) {
        const QString task = said_of(model, row, RoundModel::TaskRole);
        const QString words = due.value(QString::number(model.plantOf(row))).toString();
        if (task.startsWith("Carry it in for the night") || task.startsWith("Carry it in, to stay")) {
            ++carried_in;
            EXPECT_EQ(words, "carry in this evening") << task.toStdString();
        } else if (task.startsWith("Out for ") && model.carryOf(model.plantOf(row)) == 0) {
            ++for_the_day;
            EXPECT_EQ(words, "carry out for the day today") << task.toStdString();
        }
    }
    EXPECT_EQ(carried_in, model.carriesLeft());
    EXPECT_GE(carried_in, 3);
    EXPECT_GE(for_the_day, 1);
    const int out = row_where(model, "Out for ");
    const QString plant = QString::number(model.plantOf(out));
    ASSERT_TRUE(due.contains(plant));
    model.tick(out);
    EXPECT_FALSE(model.carriesDue().contains(plant) && model.carryOf(model.plantOf(out)) == 0);
    model.tickCarries();
    wait_for_round(model);
    for (const auto& words : model.carriesDue()) {
        EXPECT_NE(words.toString(), "carry in this evening");
    }
    model.undo();
    wait_for_round(model);
    EXPECT_EQ(model.carriesLeft(), carried_in);
}

} // namespace
} // namespace lathhouse::models
