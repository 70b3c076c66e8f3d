#include "app/models/home_record_model.h"
#include "core/climate/record_check.h"
#include "core/journal/demonstration_folder.h"
#include "tests/climate/sample_table.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <fstream>

namespace lathhouse::models {
namespace {

constexpr const char* kColumns = "Day,Min,Max,Rain";

class HomeRecordModelTest : public testing::Test {
protected:
    HomeRecordModelTest()
    {
        const auto made = journal::create_demonstration(home(), {.today = kShownToday});
        EXPECT_TRUE(made) << made.error().message;
        renew();
    }
    void renew(Units units = Units::Metric)
    {
        model = std::make_unique<HomeRecordModel>(record_in_folder(home(), shipped_climate_at), british_look(units));
        model->start();
        wait_for(*model);
    }
    std::filesystem::path home() const { return std::filesystem::path{folder.path().toStdString()} / "home"; }
    QString file(const char* name, const std::string& content) const
    {
        const QString path = folder.filePath(name);
        std::ofstream{path.toStdString()} << content;
        return path;
    }
    void take(const QString& path, int units = 0, bool insist = false, const QString& columns = kColumns)
    {
        model->take(path, units, columns, {}, {}, insist);
        wait_for(*model);
    }
    std::shared_ptr<const climate::OwnRecord> kept() const
    {
        return journal::HouseholdStore::open(home())->load()->own_record;
    }
    QTemporaryDir folder;
    std::unique_ptr<HomeRecordModel> model;
};

TEST_F(HomeRecordModelTest, ColumnsOfOtherNamesAreAskedForInTheWindowsOwnWords)
{
    QSignalSpy asked(model.get(), &HomeRecordModel::columnsAsked);
    const auto path = file("garten.csv", "Tag,Tief,Hoch\n2020-01-01,-3.0,2.0\n");
    take(path, 0, false, "");
    EXPECT_EQ(asked.count(), 1);
    EXPECT_TRUE(model->error().contains("Day,Min,Max")) << model->error().toStdString();
    EXPECT_FALSE(model->error().contains("--"));
    take(path, 0, false, "Tag,Tief,Hoch");
    EXPECT_EQ(asked.count(), 1);
    EXPECT_FALSE(model->error().contains("Day,Min,Max")) << "too short, but no longer for its columns";
}

TEST_F(HomeRecordModelTest, TakesATableInAndComparesItMonthByMonth)
{
    EXPECT_FALSE(model->isThere());
    QSignalSpy written(model.get(), &SheetModel::written);
    take(file("porch.csv", climate::sample_table(2005, 2020)));
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(model->isThere());
    EXPECT_EQ(model->title(), "porch, 2005 to 2020");
    EXPECT_EQ(written.count(), 1);
    ASSERT_EQ(model->months()->rowCount(), 12);
    EXPECT_TRUE(model->verdict().startsWith("Plausible")) << model->verdict().toStdString();
    EXPECT_TRUE(model->use().contains("2005 to 2020")) << model->use().toStdString();
    ASSERT_NE(kept(), nullptr);
    const auto table = shipped_climate_at(kept()->position, kept()->elevation);
    const auto core = climate::compare_with_table(kept()->days, *table);
    const YearWords words = british_look().words;
    EXPECT_EQ(model->months()->at(6, "low").toString(), words.bare(*core.months[6].low));
    EXPECT_EQ(model->months()->at(6, "lowApart").toString(), words.difference(*core.months[6].low_difference));
    EXPECT_EQ(model->months()->at(6, "tableHigh").toString(), words.bare(table->monthly.high[6]));
}

TEST_F(HomeRecordModelTest, WrongUnitIsRefusedUntilInsistedOn)
{
    const auto path = file("porch.csv", climate::sample_table(2005, 2020, true));
    take(path);
    EXPECT_TRUE(model->error().startsWith("It is not plausible")) << model->error().toStdString();
    EXPECT_TRUE(model->canInsist());
    EXPECT_EQ(kept(), nullptr);
    take(path, 1);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_FALSE(model->canInsist());
    EXPECT_TRUE(model->verdict().startsWith("Plausible"));
    take(path, 0, true);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(model->doubtful());
}

TEST_F(HomeRecordModelTest, RemovedComesBackAndGoesAgain)
{
    take(file("porch.csv", climate::sample_table(2005, 2020)));
    const auto days = kept()->days.month(2010, 3)->low;
    model->remove();
    wait_for(*model);
    EXPECT_FALSE(model->isThere());
    EXPECT_EQ(kept(), nullptr);
    EXPECT_TRUE(model->canUndo());
    model->undo();
    wait_for(*model);
    ASSERT_NE(kept(), nullptr);
    EXPECT_EQ(kept()->days.month(2010, 3)->low, days);
    EXPECT_FALSE(model->canUndo());
    EXPECT_TRUE(model->canRedo());
    model->redo();
    wait_for(*model);
    EXPECT_EQ(kept(), nullptr);
    EXPECT_TRUE(model->canUndo());
}

TEST_F(HomeRecordModelTest, ReplacedComesBack)
{
    take(file("first.csv", climate::sample_table(2000, 2012)));
    take(file("second.csv", climate::sample_table(2005, 2020)));
    EXPECT_TRUE(model->title().startsWith("second"));
    model->undo();
    wait_for(*model);
    EXPECT_TRUE(model->title().startsWith("first")) << model->title().toStdString();
}

TEST_F(HomeRecordModelTest, EveryFaultIsASentenceAndNothingIsTakenIn)
{
    take({});
    EXPECT_TRUE(model->error().startsWith("Say which file"));
    take(folder.filePath("none.csv"));
    EXPECT_TRUE(model->error().endsWith("Nothing was taken in.")) << model->error().toStdString();
    take(file("porch.csv", climate::sample_table(2005, 2006)), 0, false, "Day,Min");
    EXPECT_TRUE(model->error().contains("commas between")) << model->error().toStdString();
    take(file("porch.csv", climate::sample_table(2005, 2006)), 0, false, "Tag,Min,Max");
    EXPECT_TRUE(model->error().contains("Tag")) << model->error().toStdString();
    take(file("words.csv", "Day,Min,Max\n2001-01-01,cold,warm\n"), 0, false, "Day,Min,Max");
    EXPECT_TRUE(model->error().contains("2")) << "the line is named: " << model->error().toStdString();
    take(folder.path());
    EXPECT_FALSE(model->error().isEmpty());
    model->take(file("porch.csv", climate::sample_table(2005, 2020)), 0, kColumns, {}, "high up", false);
    EXPECT_TRUE(model->error().contains("no height")) << model->error().toStdString();
    EXPECT_EQ(kept(), nullptr);
    EXPECT_FALSE(model->isThere());
}

TEST_F(HomeRecordModelTest, HeightIsOfTheShownUnit)
{
    renew(Units::Us);
    model->take(file("porch.csv", climate::sample_table(2005, 2020)), 0, kColumns, {}, "500", true);
    wait_for(*model);
    ASSERT_NE(kept(), nullptr) << model->error().toStdString();
    EXPECT_NEAR(kept()->elevation.metres(), 152.4, 1e-9);
    EXPECT_TRUE(model->months()->at(0, "lowApart").toString().endsWith("°F"));
}

TEST_F(HomeRecordModelTest, FeetAreOfTheMeasuresNotOfTheDegrees)
{
    EXPECT_FALSE(model->feet());
    const auto look = british_look();
    look.words.shown_units().show_measures(Units::Us);
    model = std::make_unique<HomeRecordModel>(record_in_folder(home(), shipped_climate_at), look);
    model->start();
    wait_for(*model);
    EXPECT_EQ(model->unit(), "°C");
    EXPECT_TRUE(model->feet());
    model->take(file("porch.csv", climate::sample_table(2005, 2020)), 0, kColumns, {}, "500", true);
    wait_for(*model);
    ASSERT_NE(kept(), nullptr) << model->error().toStdString();
    EXPECT_NEAR(kept()->elevation.metres(), 152.4, 1e-9);
}

TEST_F(HomeRecordModelTest, ARecordKeptElsewhereHasItsOwnPosition)
{
    const auto path = file("porch.csv", climate::sample_table(2005, 2020));
    model->take(path, 0, kColumns, {}, {}, true, "nowhere");
    wait_for(*model);
    EXPECT_TRUE(model->error().contains("nowhere")) << model->error().toStdString();
    EXPECT_EQ(kept(), nullptr);
    model->take(path, 0, kColumns, {}, {}, true, "48.3, 20.9");
    wait_for(*model);
    ASSERT_NE(kept(), nullptr) << model->error().toStdString();
    EXPECT_NEAR(kept()->position.latitude.degrees(), 48.3, 1e-9);
    EXPECT_NEAR(kept()->position.longitude.degrees(), 20.9, 1e-9);
}

TEST_F(HomeRecordModelTest, ListsKeepTheRulesOfModels)
{
    QAbstractItemModelTester figures(model->figures(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester months(model->months(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    take(file("porch.csv", climate::sample_table(2005, 2020)));
    model->remove();
    wait_for(*model);
    EXPECT_EQ(model->months()->rowCount(), 0);
}

TEST(HomeRecordModel, WhatCannotBeWrittenIsASentence)
{
    RecordDoor door = record_in_memory([]() -> Result<home::Household> { return plain_facts().as_told; },
                                       [](std::shared_ptr<const climate::OwnRecord>) -> Result<void> {
                                           return Error{ErrorCode::Locked, "another program holds the household"};
                                       },
                                       shipped_climate_at);
    HomeRecordModel model(std::move(door), british_look());
    model.start();
    wait_for(model);
    QTemporaryDir folder;
    std::ofstream{folder.filePath("a.csv").toStdString()} << climate::sample_table(2005, 2020);
    model.take(folder.filePath("a.csv"), 0, kColumns, {}, {}, false);
    wait_for(model);
    EXPECT_EQ(model.error(), "Another program holds the household.");
    EXPECT_FALSE(model.canUndo());
}

} // namespace
} // namespace lathhouse::models
