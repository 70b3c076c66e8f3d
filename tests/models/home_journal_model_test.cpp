#include "app/models/home_journal_model.h"
#include "core/journal/demonstration_folder.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>

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
    ASSERT_TRUE(model->log(1, HomeJournalModel::Note, "the glass was washed", {}));
    wait_for(*model);
    EXPECT_EQ(model->error(), "");
    EXPECT_EQ(written.count(), 1);
    ASSERT_EQ(model->rows()->count(), all + 1);
    EXPECT_EQ(at(0, "who"), model->spots()[1]);
    EXPECT_EQ(at(0, "what"), "Note: the glass was washed");
    ASSERT_TRUE(model->log(0, HomeJournalModel::Treated, "soap", "2"));
    wait_for(*model);
    const auto event = household->facts().events.back();
    EXPECT_EQ(event.detail("with"), "soap");
    EXPECT_EQ(event.happened, kShownToday - calendar::Days{2});
    EXPECT_FALSE(event.plant);
    ASSERT_TRUE(household->take_back_last());
    ASSERT_TRUE(household->take_back_last());
    model->look();
    wait_for(*model);
    EXPECT_EQ(model->rows()->count(), all);
}

TEST_F(HomeJournalModelTest, RefusesWhatIsNotWhole)
{
    const auto before = household->facts().events.size();
    EXPECT_FALSE(model->log(0, HomeJournalModel::Note, "  ", {}));
    EXPECT_EQ(model->wrong(), HomeJournalModel::Words);
    EXPECT_FALSE(model->error().isEmpty());
    for (const char* days : {"-1", "3651", "some"}) {
        EXPECT_FALSE(model->log(0, HomeJournalModel::LookedOver, {}, days)) << days;
        EXPECT_EQ(model->wrong(), HomeJournalModel::Days);
    }
    EXPECT_FALSE(model->log(99, HomeJournalModel::LookedOver, {}, {}));
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
