#include "app/models/home_journal_model.h"
#include "core/journal/demonstration_folder.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <set>

namespace lathhouse::models {
namespace {

class HomeJournalModelTest : public testing::Test {
protected:
    HomeJournalModelTest() : household(std::make_shared<MemoryHousehold>(plain_facts())) { open(); }
    void open()
    {
        model = std::make_unique<HomeJournalModel>([this]() -> Result<plan::HouseholdFacts> { return household->facts(); }, std::nullopt,
                                                   plants_in_memory(household).record, british_look());
        model->look();
        wait_for(*model);
    }
    int sort(int place, const char* words) const { return static_cast<int>(model->sorts(place).indexOf(words)); }
    QString at(int row, const char* role) const { return model->rows()->at(row, role).toString(); }
    std::shared_ptr<MemoryHousehold> household;
    std::unique_ptr<HomeJournalModel> model;
};

TEST_F(HomeJournalModelTest, HoldsAllThatHappenedNewestFirst)
{
    const QAbstractItemModelTester tester(model->rows());
    const auto facts = household->facts();
    ASSERT_GT(facts.events.size(), 5U);
    ASSERT_EQ(model->rows()->count(), static_cast<int>(facts.events.size()));
    const auto newest = std::ranges::max_element(facts.events, {}, &home::Event::happened);
    const auto oldest = std::ranges::min_element(facts.events, {}, &home::Event::happened);
    EXPECT_EQ(at(0, "date"), british_look().words.date_with_year(newest->happened));
    EXPECT_EQ(at(model->rows()->count() - 1, "date"), british_look().words.date_with_year(oldest->happened));
    for (int row = 0; row < model->rows()->count(); ++row) {
        EXPECT_FALSE(at(row, "what").isEmpty());
        EXPECT_TRUE(at(row, "sentence").contains(at(row, "who")));
    }
}

TEST_F(HomeJournalModelTest, FindsRowsThatHaveEveryWordInAnyCase)
{
    const int all = model->rows()->count();
    const QString who = at(0, "who");
    ASSERT_FALSE(who.isEmpty());
    model->setFind(QStringLiteral("  2026 ") + who.toUpper());
    ASSERT_GT(model->rows()->count(), 0);
    EXPECT_LT(model->rows()->count(), all);
    for (int row = 0; row < model->rows()->count(); ++row) {
        EXPECT_TRUE(at(row, "sentence").contains(who)) << at(row, "sentence").toStdString();
    }
    model->setFind("no such words");
    EXPECT_EQ(model->rows()->count(), 0);
    EXPECT_TRUE(model->line().startsWith("None of"));
    model->setFind({});
    EXPECT_EQ(model->rows()->count(), all);
}

TEST_F(HomeJournalModelTest, LogsAtASpotAndShowsItUntilItIsTakenBack)
{
    const int all = model->rows()->count();
    QSignalSpy written(model.get(), &SheetModel::written);
    ASSERT_TRUE(model->log(1, sort(1, "Note"), {}, "the glass was washed", {}));
    wait_for(*model);
    EXPECT_EQ(model->error(), "");
    EXPECT_EQ(written.count(), 1);
    ASSERT_EQ(model->rows()->count(), all + 1);
    EXPECT_EQ(at(0, "who"), model->spots()[1]);
    EXPECT_EQ(at(0, "what"), "Note: the glass was washed");
    ASSERT_TRUE(model->log(0, sort(0, "Treated"), "soap", "underside", "2"));
    wait_for(*model);
    const auto event = household->facts().events.back();
    EXPECT_EQ(event.detail("with"), "soap");
    EXPECT_EQ(event.note, "underside");
    EXPECT_EQ(event.happened, kShownToday - calendar::Days{2});
    EXPECT_FALSE(event.plant);
    ASSERT_TRUE(household->take_back_last());
    ASSERT_TRUE(household->take_back_last());
    model->look();
    wait_for(*model);
    EXPECT_EQ(model->rows()->count(), all);
}

TEST_F(HomeJournalModelTest, EverySortThatMakesSenseAtASpotIsLoggedAsTheCommandLogsIt)
{
    const auto sorts = model->sorts(0);
    EXPECT_EQ(sorts.size(), 18);
    const int spot = static_cast<int>(model->spots().size()) - 1;
    std::set<home::EventKind> kinds;
    for (int of = 0; of < sorts.size(); ++of) {
        const bool pest = sorts[of] == "Pest found";
        EXPECT_EQ(model->choices(spot, of).isEmpty(), !pest) << sorts[of].toStdString();
        EXPECT_EQ(model->isNote(spot, of), of == 0);
        ASSERT_TRUE(model->log(spot, of, pest ? model->choices(spot, of).front() : QString{}, "seen", {})) << sorts[of].toStdString();
        wait_for(*model);
        EXPECT_EQ(model->error(), "") << sorts[of].toStdString();
        const auto event = household->facts().events.back();
        EXPECT_EQ(event.spot, household->facts().as_told.spots.back().id);
        EXPECT_FALSE(event.plant);
        EXPECT_EQ(event.detail("pest").empty(), !pest);
        kinds.insert(event.kind);
    }
    EXPECT_EQ(kinds.size(), 18U);
    using home::EventKind;
    for (const auto kind : {EventKind::Moved, EventKind::Divided, EventKind::Died, EventKind::GivenAway, EventKind::Removed, EventKind::TaskDone}) {
        EXPECT_FALSE(kinds.contains(kind)) << home::to_string(kind) << " is of a plant";
    }
}

TEST_F(HomeJournalModelTest, WhatIsAskedBesideIsKeptByTheNameThatTheProgramReads)
{
    const auto kept = [this](const char* what, const QString& detail, const char* name) {
        EXPECT_TRUE(model->log(0, sort(0, what), detail, {}, {})) << what << model->error().toStdString();
        wait_for(*model);
        return std::string{household->facts().events.back().detail(name)};
    };
    EXPECT_EQ(kept("Fed", "100", "ppm"), "100");
    EXPECT_EQ(kept("Pest found", "red spider mite", "pest"), "Two-spotted spider mite");
    EXPECT_EQ(kept("Pest found", "something grey", "pest"), "something grey");
    EXPECT_EQ(kept("Cold night", "-1.5", "low_c"), "-1.5");
    EXPECT_EQ(kept("Hit by a spray", "glyphosate", "product"), "glyphosate");
    EXPECT_EQ(model->asked(0, sort(0, "Watered")), "");
    EXPECT_FALSE(model->asked(0, sort(0, "Fed")).isEmpty());
    EXPECT_TRUE(model->heed(0, sort(0, "Treated")).startsWith("The label"));
    EXPECT_EQ(model->heed(0, sort(0, "Watered")), "");
    const auto refused = [this](const char* what, const QString& detail) {
        EXPECT_FALSE(model->log(0, sort(0, what), detail, {}, {})) << what;
        EXPECT_EQ(model->wrong(), HomeJournalModel::Detail);
        EXPECT_FALSE(model->error().isEmpty());
    };
    const auto before = household->facts().events.size();
    refused("Fed", "much");
    refused("Fed", "2001");
    refused("Pest found", "  ");
    refused("Cold night", "cold");
    EXPECT_EQ(household->facts().events.size(), before);
}

TEST_F(HomeJournalModelTest, LogsWhatConcernsTheWholeHousehold)
{
    const int home = static_cast<int>(model->spots().size());
    ASSERT_EQ(model->places().size(), home + 1);
    EXPECT_EQ(model->sorts(home), (QStringList{"Note", "Cold night", "Hit by a spray"}));
    ASSERT_TRUE(model->log(home, sort(home, "Cold night"), "-3", "all windows iced", {}));
    wait_for(*model);
    const auto event = household->facts().events.back();
    EXPECT_FALSE(event.plant);
    EXPECT_FALSE(event.spot);
    EXPECT_EQ(event.detail("low_c"), "-3.0");
    EXPECT_EQ(at(0, "who"), "");
    EXPECT_TRUE(model->said().startsWith("Kept: The whole household")) << model->said().toStdString();
}

TEST_F(HomeJournalModelTest, RefusesWhatIsNotWhole)
{
    const auto before = household->facts().events.size();
    EXPECT_FALSE(model->log(0, sort(0, "Note"), {}, "  ", {}));
    EXPECT_EQ(model->wrong(), HomeJournalModel::Words);
    EXPECT_FALSE(model->error().isEmpty());
    for (const char* days : {"-1", "3651", "some"}) {
        EXPECT_FALSE(model->log(0, sort(0, "Looked over"), {}, {}, days)) << days;
        EXPECT_EQ(model->wrong(), HomeJournalModel::Days);
    }
    EXPECT_FALSE(model->log(99, 0, {}, {}, {}));
    EXPECT_FALSE(model->log(0, 99, {}, {}, {}));
    EXPECT_FALSE(model->log(-1, -1, {}, {}, {}));
    EXPECT_EQ(household->facts().events.size(), before);
}

TEST_F(HomeJournalModelTest, ReadsAFolderWithPlantsThatAreGone)
{
    const QTemporaryDir folder;
    const auto home = std::filesystem::path{folder.path().toStdString()} / "home";
    auto store = journal::create_demonstration(home, {.today = kShownToday});
    ASSERT_TRUE(store);
    const auto plant = store->load()->plants.front();
    const home::Event died{plant.id, home::EventKind::Died, {}, kShownToday, {}, "frost", {}};
    ASSERT_TRUE(store->record(std::span{&died, 1}));
    HomeJournalModel of([]() -> Result<plan::HouseholdFacts> { return plain_facts(); }, home, {}, british_look());
    of.look();
    wait_for(of);
    ASSERT_EQ(of.rows()->count(), static_cast<int>(store->events()->size()));
    EXPECT_EQ(of.rows()->at(0, "who").toString(), text(plant.name));
    EXPECT_TRUE(of.rows()->at(0, "what").toString().contains("frost"));
}

TEST_F(HomeJournalModelTest, TellsWhyItCannotBeRead)
{
    HomeJournalModel of([]() -> Result<plan::HouseholdFacts> { return Error{ErrorCode::NotFound, "the folder is gone"}; }, std::nullopt,
                        {}, british_look());
    of.look();
    wait_for(of);
    EXPECT_FALSE(of.known());
    EXPECT_FALSE(of.error().isEmpty());
    EXPECT_EQ(of.line(), "");
}

TEST_F(HomeJournalModelTest, IsLookedThroughAtOnceWithTwentyThousandLines)
{
    ASSERT_TRUE(household->change("many", [](plan::HouseholdFacts& facts) -> Result<void> {
        const auto plant = facts.as_told.plants.front().id;
        for (int day = 0; day < 20'000; ++day) {
            facts.events.push_back({plant, home::EventKind::Watered, {}, kShownToday - calendar::Days{day % 4000}, {}, "", {}});
        }
        return {};
    }));
    model->look();
    wait_for(*model);
    ASSERT_GT(model->rows()->count(), 20'000);
    QElapsedTimer time;
    time.start();
    model->setFind("watered 2020");
    EXPECT_LT(time.elapsed(), 1000) << "of an unoptimized build";
    EXPECT_GT(model->rows()->count(), 100);
    RecordProperty("find_ms", static_cast<int>(time.elapsed()));
}

} // namespace
} // namespace lathhouse::models
