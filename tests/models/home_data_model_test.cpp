#include "app/models/home_data_model.h"
#include "core/journal/demonstration_folder.h"
#include "tests/cli/run_command.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <fstream>
#include <span>
#include <utility>
#include <vector>

namespace lathhouse::models {
namespace {

namespace fs = std::filesystem;

class HomeDataModelTest : public testing::Test {
protected:
    HomeDataModelTest()
    {
        const auto made = journal::create_demonstration(home(), {.today = kShownToday});
        EXPECT_TRUE(made) << made.error().message;
        renew();
    }
    fs::path home() const { return path("home"); }
    fs::path path(const char* name) const { return fs::path{folder.path().toStdString()} / name; }
    QString words(const char* name) const { return text(path(name).string()); }
    void renew()
    {
        model = std::make_unique<HomeDataModel>(
            []() -> Result<plan::HouseholdFacts> { return plain_facts(); }, home(), british_look(), kept);
        model->start();
        wait_for(*model);
    }
    QString value(const QString& label) const
    {
        for (int row = 0; row < model->holdings()->rowCount(); ++row) {
            if (model->holdings()->at(row, "label").toString() == label) {
                return model->holdings()->at(row, "value").toString();
            }
        }
        return {};
    }
    void put(const std::string& place, const std::string& content) const
    {
        fs::create_directories((home() / place).parent_path());
        std::ofstream{home() / place, std::ios::binary} << content;
    }
    QTemporaryDir folder;
    std::shared_ptr<KeptSettings> kept = std::make_shared<KeptSettings>(folder.filePath("window.ini"));
    std::unique_ptr<HomeDataModel> model;
};

TEST_F(HomeDataModelTest, SaysWhatTheFolderHolds)
{
    const auto store = journal::HouseholdStore::open(home());
    ASSERT_TRUE(store);
    EXPECT_EQ(value("Plants"), QString::number(store->load()->plants.size()));
    EXPECT_EQ(value("Spots"), QString::number(store->load()->spots.size()));
    EXPECT_EQ(value("Measurements"), QString::number(store->measurements()->size()));
    EXPECT_EQ(value("Photographs"), "none");
    EXPECT_TRUE(model->keeps());
    EXPECT_EQ(model->folder(), words("home"));
}

TEST_F(HomeDataModelTest, CreditsNameThePublishersOfEveryFigure)
{
    QString all;
    for (int row = 0; row < model->credits()->rowCount(); ++row) {
        all += model->credits()->at(row, "sentence").toString() + '\n';
    }
    for (const char* name : {"Deutscher Wetterdienst (CC BY 4.0)", "Natural Earth", "GeoNames", "CC BY 4.0"}) {
        EXPECT_TRUE(all.contains(name)) << name << '\n' << all.toStdString();
    }
    EXPECT_GT(model->sources()->rowCount(), 100);
}

TEST_F(HomeDataModelTest, BackupAsksOnceAndTheCommandFindsItSound)
{
    model->backUp(words("one"));
    EXPECT_EQ(model->asking(), HomeDataModel::BackUp);
    EXPECT_EQ(model->running(), HomeDataModel::Nothing);
    EXPECT_TRUE(model->leavesWords().contains("where your home is"));
    EXPECT_FALSE(fs::exists(path("one.zip")));
    model->answer(true);
    EXPECT_EQ(model->running(), HomeDataModel::BackUp);
    wait_for(*model);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(model->said().startsWith("Wrote " + words("one.zip"))) << model->said().toStdString();
    EXPECT_TRUE(model->lastBackup().contains("16 May 2026"));
    model->backUp(words("two.zip"));
    EXPECT_EQ(model->asking(), HomeDataModel::Nothing) << "it was answered";
    wait_for(*model);
    ASSERT_EQ(cli::run_command({"restore", path("two.zip").string(), path("back").string()}).status, 0);
    const auto checked = cli::run_command({"--home", path("back").string(), "check", "--json"});
    EXPECT_EQ(checked.status, 0) << checked.out << checked.err;
    EXPECT_TRUE(checked.json()["sound"]);
    // Changed again, it asks again.
    model->setLeaves(HomeDataModel::BackUp, false);
    model->backUp(words("three.zip"));
    EXPECT_EQ(model->asking(), HomeDataModel::BackUp);
    model->answer(false);
    EXPECT_FALSE(fs::exists(path("three.zip")));
    EXPECT_TRUE(model->said().contains("Nothing was written"));
}

TEST_F(HomeDataModelTest, FileThatIsThereIsReplacedOnlyWhenAsked)
{
    model->setLeaves(HomeDataModel::BackUp, true);
    std::ofstream{path("old.zip")} << "old";
    model->backUp(words("old.zip"));
    EXPECT_EQ(model->running(), HomeDataModel::Nothing);
    EXPECT_TRUE(model->fileIsThere());
    EXPECT_TRUE(model->error().contains("is there already"));
    EXPECT_EQ(fs::file_size(path("old.zip")), 3U);
    model->backUp(words("old.zip"), true);
    wait_for(*model);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_FALSE(model->fileIsThere());
    EXPECT_GT(fs::file_size(path("old.zip")), 1000U);
}

TEST_F(HomeDataModelTest, StoppedLeavesNothingHalfWritten)
{
    put("photos/ab/" + std::string(64, 'a') + ".jpg", std::string(3'000'000, 'x'));
    fs::create_directory(path("target"));
    model->setLeaves(HomeDataModel::BackUp, true);
    model->backUp(words("target/b.zip"));
    model->stop();
    EXPECT_TRUE(model->stopping());
    wait_for(*model);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(model->said().startsWith("Stopped.")) << model->said().toStdString();
    EXPECT_TRUE(fs::is_empty(path("target")));
    EXPECT_EQ(model->running(), HomeDataModel::Nothing);
    EXPECT_TRUE(model->lastBackup().startsWith("No backup"));
}

TEST_F(HomeDataModelTest, ClosingTheWindowStopsAndLeavesNothing)
{
    put("photos/ab/" + std::string(64, 'a') + ".jpg", std::string(20'000'000, 'x'));
    fs::create_directory(path("target"));
    model->setLeaves(HomeDataModel::BackUp, true);
    model->backUp(words("target/b.zip"));
    model.reset();
    EXPECT_TRUE(fs::is_empty(path("target")));
}

TEST_F(HomeDataModelTest, LooksAndSaysWhatToDo)
{
    model->check();
    wait_for(*model);
    EXPECT_TRUE(model->said().startsWith("The household is sound")) << model->said().toStdString();
    EXPECT_EQ(model->findings()->rowCount(), 0);
    put("photos/ab/" + std::string("ab") + std::string(62, 'a') + ".jpg", "another content");
    put("notes.txt", "mine");
    model->check();
    wait_for(*model);
    ASSERT_EQ(model->findings()->rowCount(), 2) << model->said().toStdString();
    EXPECT_TRUE(model->findings()->at(0, "fault").toBool());
    EXPECT_TRUE(model->findings()->at(0, "todo").toString().endsWith("."));
    EXPECT_FALSE(model->findings()->at(1, "fault").toBool());
    EXPECT_TRUE(model->said().startsWith("One thing is lost or wrong")) << model->said().toStdString();
}

TEST_F(HomeDataModelTest, RestoresIntoAnEmptyFolderAndNowhereElse)
{
    model->setLeaves(HomeDataModel::BackUp, true);
    model->backUp(words("b.zip"));
    wait_for(*model);
    model->restore(words("b.zip"), words("new"));
    wait_for(*model);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(model->said().contains("16 May 2026")) << model->said().toStdString();
    EXPECT_TRUE(journal::check_household(path("new"))->sound());
    model->restore(words("b.zip"), words("new"));
    wait_for(*model);
    EXPECT_EQ(model->about(), HomeDataModel::Restore);
    EXPECT_TRUE(model->error().contains("empty")) << model->error().toStdString();
    model->restore({}, words("other"));
    EXPECT_TRUE(model->error().startsWith("Say which backup"));
    std::ofstream{path("no.zip")} << "this is no zip";
    model->restore(words("no.zip"), words("other"));
    wait_for(*model);
    EXPECT_FALSE(model->error().isEmpty());
    EXPECT_FALSE(fs::exists(path("other")));
}

TEST_F(HomeDataModelTest, OpensWhatWasBroughtBackInAWindowOfItsOwn)
{
    model->setLeaves(HomeDataModel::BackUp, true);
    model->backUp(words("b.zip"));
    wait_for(*model);
    model->restore(words("b.zip"), words("one"));
    wait_for(*model);
    EXPECT_EQ(model->brought(), QString{}) << "nothing here can open it";

    QStringList opened;
    bool starts = true;
    model->opens_with([&](const QString& target) {
        opened.append(target);
        return starts;
    });
    model->openBrought();
    EXPECT_TRUE(opened.isEmpty()) << "nothing was brought back since";
    model->restore(words("b.zip"), words("a folder --home"));
    wait_for(*model);
    EXPECT_EQ(model->brought(), words("a folder --home"));
    model->openBrought();
    EXPECT_EQ(opened, QStringList{words("a folder --home")});
    EXPECT_EQ(model->error(), QString{});
    starts = false;
    model->openBrought();
    EXPECT_TRUE(model->error().contains(words("a folder --home"))) << model->error().toStdString();
    model->check();
    wait_for(*model);
    EXPECT_EQ(model->brought(), QString{}) << "a look through the folder brings nothing back";
}

TEST_F(HomeDataModelTest, TablesAskForThemselvesAndCanBeReadBack)
{
    model->setLeaves(HomeDataModel::BackUp, true);
    model->writeTables(words("tables"));
    EXPECT_EQ(model->asking(), HomeDataModel::Tables);
    model->answer(true);
    wait_for(*model);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(fs::exists(path("tables") / "plants.csv"));
    EXPECT_EQ(cli::run_command({"--home", path("again").string(), "import", "csv", path("tables").string()}).status, 0);
}

TEST_F(HomeDataModelTest, TablesAreReadBackIntoAHouseholdOfTheirOwn)
{
    model->setLeaves(HomeDataModel::Tables, true);
    model->writeTables(words("tables"));
    wait_for(*model);
    model->readTables("", words("again"));
    EXPECT_EQ(model->about(), HomeDataModel::ReadTables);
    EXPECT_TRUE(model->error().contains("which folder has the tables"));
    model->readTables(words("tables"), words("again"));
    wait_for(*model);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(model->said().contains("rows")) << model->said().toStdString();
    EXPECT_TRUE(model->said().contains(words("again")));
    const auto store = journal::HouseholdStore::open(path("again"));
    ASSERT_TRUE(store);
    EXPECT_EQ(store->load()->plants.size(), plain_facts().as_told.plants.size());
    model->readTables(words("tables"), words("again"));
    wait_for(*model);
    EXPECT_FALSE(model->error().isEmpty()) << "the folder is filled";
    std::ofstream{path("tables") / "spots.csv"} << "no,such,columns\r\n";
    model->readTables(words("tables"), words("third"));
    wait_for(*model);
    EXPECT_TRUE(model->error().contains("spots.csv", Qt::CaseInsensitive)) << model->error().toStdString();
    EXPECT_FALSE(fs::exists(path("third")));
}

TEST_F(HomeDataModelTest, ARowThatNamesALostOneEndsItOrIsLeftOut)
{
    model->setLeaves(HomeDataModel::Tables, true);
    model->writeTables(words("tables"));
    wait_for(*model);
    std::ifstream in{path("tables") / "events.csv"};
    std::string all{std::istreambuf_iterator<char>{in}, {}};
    const auto end = all.find("\r\n");
    const auto last = all.rfind("\r\n", all.size() - 3) + 2;
    // The last event once more, of a plant that is not there.
    const auto head = std::count(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(end), ',');
    ASSERT_GT(head, 5);
    std::string row = all.substr(last);
    row.replace(0, row.find(','), "999999");
    const auto second = row.find(',') + 1;
    row.replace(second, row.find(',', second) - second, "888888");
    std::ofstream{path("tables") / "events.csv", std::ios::app} << row;
    model->readTables(words("tables"), words("again"));
    wait_for(*model);
    EXPECT_TRUE(model->error().contains("events", Qt::CaseInsensitive)) << model->error().toStdString();
    EXPECT_FALSE(model->error().contains("--")) << "that is said for the command line";
    EXPECT_FALSE(fs::exists(path("again")));
    model->readTables(words("tables"), words("again"), true);
    wait_for(*model);
    EXPECT_EQ(model->error(), QString{});
    EXPECT_TRUE(model->said().contains("Left out")) << model->said().toStdString();
}

TEST_F(HomeDataModelTest, LongAgoIsSaidQuietlyAsOftenAsWanted)
{
    EXPECT_TRUE(model->overdue().startsWith("No backup")) << model->overdue().toStdString();
    model->setLeaves(HomeDataModel::BackUp, true);
    model->backUp(words("b.zip"));
    wait_for(*model);
    EXPECT_EQ(model->overdue(), QString{});
    auto later = british_look();
    later.today = kShownToday + calendar::Days{40};
    HomeDataModel after([]() -> Result<plan::HouseholdFacts> { return plain_facts(); }, home(), later, kept);
    EXPECT_EQ(after.overdue(), "The last backup is 40 days old.");
    after.setRemindDays(90);
    EXPECT_EQ(after.overdue(), QString{});
    after.setRemindDays(-1);
    EXPECT_EQ(after.remindDays(), 90);
    after.setRemindDays(0);
    later.today = kShownToday + calendar::Days{4000};
    HomeDataModel never([]() -> Result<plan::HouseholdFacts> { return plain_facts(); }, home(), later, kept);
    EXPECT_EQ(never.overdue(), QString{});
}

TEST_F(HomeDataModelTest, TellsHowMuchWasEnteredSinceTheLastBackupWhoeverMadeIt)
{
    ASSERT_TRUE(journal::back_up(home(), path("by_command.zip"), journal::Existing::Refused, kShownToday));
    const auto told = [this] {
        HomeDataModel now([]() -> Result<plan::HouseholdFacts> { return plain_facts(); }, home(), british_look(), kept);
        now.look();
        wait_for(now);
        return std::pair{now.lastBackup(), now.overdue()};
    };
    EXPECT_TRUE(told().first.endsWith("by_command.zip. Nothing was entered since.")) << told().first.toStdString();
    EXPECT_EQ(told().second, QString{});
    const home::Event one{plain_facts().as_told.plants[0].id, home::EventKind::Watered, {}, kShownToday, calendar::start_of_day_utc(kShownToday), ""};
    {
        auto store = *journal::HouseholdStore::open(home());
        ASSERT_TRUE(store.record(std::span{&one, 1}));
        EXPECT_TRUE(told().first.endsWith("One thing was entered since."));
        const std::vector<home::Event> many(120, one);
        ASSERT_TRUE(store.record(std::span<const home::Event>{many}));
    }
    EXPECT_TRUE(told().first.endsWith("121 things were entered since."));
    EXPECT_EQ(told().second, "121 things were entered since the last backup.");
}

TEST_F(HomeDataModelTest, ListsKeepTheRulesOfModels)
{
    QAbstractItemModelTester holdings(model->holdings(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester findings(model->findings(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester credits(model->credits(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    put("notes.txt", "mine");
    model->check();
    wait_for(*model);
    EXPECT_EQ(model->findings()->rowCount(), 1);
    model->check();
    wait_for(*model);
    EXPECT_EQ(model->findings()->rowCount(), 1);
}

TEST_F(HomeDataModelTest, NameOfABackupIsFreeAndOfTheHousehold)
{
    EXPECT_TRUE(model->usualBackup().endsWith("-2026-05-16.zip")) << model->usualBackup().toStdString();
    EXPECT_FALSE(fs::exists(model->usualBackup().toStdString()));
}

TEST(HomeDataModel, DemonstrationInMemoryHasNothingToBackUp)
{
    HomeDataModel model([]() -> Result<plan::HouseholdFacts> { return plain_facts(); }, std::nullopt, british_look(),
                        std::make_shared<KeptSettings>(QString{}));
    model.start();
    wait_for(model);
    EXPECT_FALSE(model.keeps());
    EXPECT_GT(model.holdings()->rowCount(), 2);
    EXPECT_EQ(model.overdue(), QString{});
    model.backUp("/tmp/never.zip");
    EXPECT_TRUE(model.error().contains("nothing to back up"));
    model.check();
    EXPECT_TRUE(model.error().contains("no folder"));
    model.writeTables("/tmp/never");
    EXPECT_TRUE(model.error().contains("nothing to write"));
}

TEST(HomeDataModel, FolderThatIsGoneIsASentence)
{
    HomeDataModel model([]() -> Result<plan::HouseholdFacts> { return plain_facts(); },
                        fs::path{"/nowhere/at/all"}, british_look(), std::make_shared<KeptSettings>(QString{}));
    model.start();
    wait_for(model);
    EXPECT_FALSE(model.known());
    EXPECT_TRUE(model.error().endsWith('.')) << model.error().toStdString();
}

} // namespace
} // namespace lathhouse::models
