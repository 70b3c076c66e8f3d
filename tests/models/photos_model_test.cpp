#include "app/models/plant_model.h"
#include "core/home/demonstration_photos.h"
#include "core/journal/household_store.h"
#include "core/journal/photo_book.h"
#include "core/photo/drawn_plant.h"
#include "core/photo/encode.h"
#include "tests/models/page_fixtures.h"

#include <QRegularExpression>
#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace lathhouse::models {
namespace {

namespace fs = std::filesystem;

/// A household in a folder whose first plant has no photo yet, and a folder with files to bring in.
class PhotosOfAPlant : public testing::Test {
protected:
    PhotosOfAPlant()
    {
        auto pattern = (fs::temp_directory_path() / "lathhouse_photos_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        root_ = pattern;
        EXPECT_TRUE(journal::HouseholdStore::create(home(), plain_facts().as_told, plain_facts().events));
        fs::create_directories(inbox());
        plant_ = plain_facts().as_told.plants[0].id;
        plants_ = std::make_unique<PlantsModel>(
            plants_in_folder(home(), []() -> Result<plan::HouseholdFacts> { return plain_facts(); }), british_look());
        page_ = std::make_unique<PlantModel>(*plants_);
        plants_->start();
        plants_->openId(plant_);
        settle();
    }
    ~PhotosOfAPlant() override
    {
        page_.reset();
        plants_.reset();
        std::error_code failure;
        fs::remove_all(root_, failure);
    }
    fs::path home() const { return root_ / "home"; }
    fs::path inbox() const { return root_ / "inbox"; }
    QUrl write(const std::string& name, unsigned seed, const char* taken = "2026-05-01T10:00:00") const
    {
        photo::DrawnPlant drawn;
        drawn.seed = seed;
        photo::Exif exif;
        exif.taken = photo::parse_local_time(taken).value();
        exif.camera = "Invented Pocket 3";
        const auto bytes = photo::with_exif(photo::encode_jpeg(photo::drawn_plant(drawn, 160, 120)).value(), photo::make_exif(exif));
        return put(name, {bytes.begin(), bytes.end()});
    }
    QUrl put(const std::string& name, const std::string& content) const
    {
        std::ofstream{inbox() / name, std::ios::binary} << content;
        return QUrl::fromLocalFile(QString::fromStdString((inbox() / name).string()));
    }
    void settle()
    {
        wait_for(*page_->coming());
        wait_for(*plants_);
        wait_for(*page_);
        wait_for(*page_->album());
        wait_for(*page_->measure());
    }
    void bring(const QList<QUrl>& files)
    {
        ASSERT_TRUE(page_->coming()->add(files, plant_));
        settle();
    }
    std::size_t kept() const
    {
        auto store = journal::HouseholdStore::open(home()).value();
        return journal::PhotoBook{store}.photos()->size();
    }
    PhotosModel& album() { return *page_->album(); }
    /// A plant's page shows some of its photos; the album reads all of them once one is looked at.
    PhotosModel& looked_at()
    {
        album().open(0);
        settle();
        return album();
    }

    fs::path root_;
    home::PlantId plant_ = 0;
    std::unique_ptr<PlantsModel> plants_;
    std::unique_ptr<PlantModel> page_;
};

TEST_F(PhotosOfAPlant, OneIsDatedByHandAndThatIsTakenBack)
{
    bring({write("a.jpg", 1, "2026-05-01T10:00:00"), write("b.jpg", 2, "2026-05-10T10:00:00")});
    ASSERT_EQ(looked_at().count(), 2);
    EXPECT_FALSE(album().dateAs("some day"));
    EXPECT_TRUE(album().error().contains("some day"));
    EXPECT_FALSE(album().dateAs("2026-05-17")) << "that is tomorrow";
    ASSERT_TRUE(album().dateAs("20.4.2026 2:30 pm")) << album().error().toStdString();
    settle();
    EXPECT_EQ(album().date(), "20 April 2026");
    EXPECT_EQ(album().current(), 0) << "it is the older one now";
    EXPECT_TRUE(album().facts()->at(0, "words").toString().contains("14:30")) << album().facts()->at(0, "words").toString().toStdString();
    EXPECT_TRUE(album().facts()->at(0, "words").toString().contains("set by hand"));
    plants_->undo();
    settle();
    EXPECT_EQ(album().date(), "10 May 2026");
    ASSERT_TRUE(album().dateAs("2026-05-03"));
    settle();
    EXPECT_EQ(album().date(), "3 May 2026");
}

TEST_F(PhotosOfAPlant, AreWrittenOutAsFilesAStripAndTwoSideBySide)
{
    bring({write("a.jpg", 1, "2026-05-01T10:00:00"), write("b.jpg", 2, "2026-05-10T10:00:00"), write("c.jpg", 3, "2026-05-12T10:00:00")});
    ASSERT_EQ(looked_at().count(), 3);
    auto& leaving = *page_->leaving();
    const auto write_out = [&](int what, const std::string& name, bool replace = false) {
        leaving.write(what, QString::fromStdString(name.empty() ? name : (root_ / name).string()), false, replace);
        wait_for(leaving);
        return leaving.error();
    };
    EXPECT_FALSE(write_out(PhotoExportModel::AllOfIt, "").isEmpty());
    EXPECT_EQ(write_out(PhotoExportModel::AllOfIt, "out"), "");
    EXPECT_EQ(std::distance(fs::directory_iterator{root_ / "out"}, fs::directory_iterator{}), 3);
    EXPECT_TRUE(leaving.said().startsWith("Wrote 3 photographs")) << leaving.said().toStdString();
    EXPECT_TRUE(leaving.said().contains("taken out"));
    EXPECT_EQ(write_out(PhotoExportModel::Strip, "strip"), "");
    EXPECT_TRUE(fs::exists(root_ / "strip.jpg"));
    EXPECT_TRUE(write_out(PhotoExportModel::Strip, "strip.jpg").contains("there already"));
    EXPECT_TRUE(leaving.fileIsThere());
    EXPECT_EQ(write_out(PhotoExportModel::Strip, "strip.jpg", true), "");
    EXPECT_FALSE(write_out(PhotoExportModel::Strip, "strip.txt").isEmpty());
    EXPECT_FALSE(write_out(PhotoExportModel::Comparison, "two.png").isEmpty()) << "only one is looked at";
    album().openTwo();
    settle();
    EXPECT_EQ(write_out(PhotoExportModel::Comparison, "two.png"), "");
    EXPECT_TRUE(leaving.said().startsWith("Wrote 2 photographs")) << leaving.said().toStdString();
    const auto picture = photo::read_photo(*photo::read_bytes(root_ / "two.png"), "two.png", 4000);
    ASSERT_TRUE(picture);
    EXPECT_GT(picture->picture.width, picture->picture.height);
}

TEST_F(PhotosOfAPlant, AreWrittenOutWithThoseOfTheOthers)
{
    bring({write("a.jpg", 1, "2026-05-01T10:00:00"), write("b.jpg", 2, "2026-05-10T10:00:00")});
    ASSERT_TRUE(page_->coming()->add({write("c.jpg", 3, "2026-05-12T10:00:00")}, plain_facts().as_told.plants[1].id));
    settle();
    PhotoExportModel leaving(*plants_);
    leaving.write(PhotoExportModel::AllOfIt, QString::fromStdString((root_ / "all").string()));
    wait_for(leaving);
    EXPECT_EQ(leaving.error(), "");
    EXPECT_TRUE(leaving.said().startsWith("Wrote 3 photographs")) << leaving.said().toStdString();
    EXPECT_EQ(std::distance(fs::directory_iterator{root_ / "all"}, fs::directory_iterator{}), 3);
    leaving.write(PhotoExportModel::Strip, QString::fromStdString((root_ / "strip.jpg").string()));
    wait_for(leaving);
    EXPECT_FALSE(fs::exists(root_ / "strip.jpg"));
}

TEST_F(PhotosOfAPlant, WithoutADateAreAskedAboutBeforeTheyComeIn)
{
    auto& coming = *page_->coming();
    const auto undated = [this](const std::string& name, unsigned seed) {
        photo::DrawnPlant drawn;
        drawn.seed = seed;
        const auto bytes = photo::encode_jpeg(photo::drawn_plant(drawn, 160, 120)).value();
        return put(name, {bytes.begin(), bytes.end()});
    };
    ASSERT_TRUE(coming.add({write("a.jpg", 1, "2026-05-01T10:00:00"), undated("b.jpg", 2), undated("c.jpg", 3), put("d.jpg", "none")}, plant_));
    settle();
    ASSERT_TRUE(coming.asking());
    EXPECT_FALSE(coming.running());
    EXPECT_TRUE(coming.askWords().contains(": 2 photographs do not say when")) << coming.askWords().toStdString();
    EXPECT_EQ(kept(), 0U) << "nothing comes in before the answer";
    EXPECT_FALSE(coming.add({write("e.jpg", 5)}, plant_)) << "one question at a time";
    EXPECT_FALSE(coming.takeIn("some day"));
    EXPECT_TRUE(coming.error().contains("some day"));
    EXPECT_FALSE(coming.takeIn("2026-05-17")) << "that is tomorrow";
    ASSERT_TRUE(coming.asking());
    ASSERT_TRUE(coming.takeIn("20.4.2026 2:30 pm")) << coming.error().toStdString();
    EXPECT_FALSE(coming.asking());
    settle();
    ASSERT_EQ(kept(), 3U);
    EXPECT_EQ(coming.refused()->rowCount(), 1);
    auto store = journal::HouseholdStore::open(home()).value();
    const auto photos = journal::PhotoBook{store}.photos().value();
    for (const auto& photo : photos) {
        const bool dated = photo.original_name == "a.jpg";
        EXPECT_EQ(photo.taken_from, dated ? home::TakenFrom::Exif : home::TakenFrom::Given) << photo.original_name;
        EXPECT_EQ(photo::to_text(photo.taken), dated ? "2026-05-01T10:00:00" : "2026-04-20T14:30:00") << photo.original_name;
    }
    plants_->undo();
    settle();
    EXPECT_EQ(kept(), 0U) << "one Undo, with their date";
}

TEST_F(PhotosOfAPlant, WithoutADateComeInByTheDatesOfTheirFilesOrNotAtAll)
{
    auto& coming = *page_->coming();
    const auto bytes = photo::encode_jpeg(photo::drawn_plant(photo::DrawnPlant{}, 160, 120)).value();
    const auto file = put("b.jpg", {bytes.begin(), bytes.end()});
    ASSERT_TRUE(coming.add({file}, plant_));
    settle();
    EXPECT_TRUE(coming.askWords().contains(": 1 photograph does not say")) << coming.askWords().toStdString();
    coming.leaveOut();
    EXPECT_FALSE(coming.asking());
    EXPECT_EQ(kept(), 0U);
    ASSERT_TRUE(coming.add({file}, plant_));
    settle();
    ASSERT_TRUE(coming.takeIn(" "));
    settle();
    auto store = journal::HouseholdStore::open(home()).value();
    EXPECT_EQ(journal::PhotoBook{store}.photos()->front().taken_from, home::TakenFrom::FileTime);
}

TEST_F(PhotosOfAPlant, StandInAStripAsHighAndAsManyAsIsTyped)
{
    bring({write("a.jpg", 1, "2026-05-01T10:00:00"), write("b.jpg", 2, "2026-05-10T10:00:00"), write("c.jpg", 3, "2026-05-12T10:00:00")});
    ASSERT_EQ(looked_at().count(), 3);
    auto& leaving = *page_->leaving();
    const auto strip = [&](const QString& height, const QString& columns, const QString& count) {
        leaving.write(PhotoExportModel::Strip, QString::fromStdString((root_ / "strip.png").string()), false, true, height, columns, count);
        wait_for(leaving);
        return leaving.error();
    };
    const auto size = [&] {
        const auto read = photo::read_photo(*photo::read_bytes(root_ / "strip.png"), "strip.png", 4000);
        return read ? std::pair{read->picture.width, read->picture.height} : std::pair{0, 0};
    };
    ASSERT_EQ(strip("100", "", ""), "");
    const auto row = size();
    ASSERT_EQ(strip("100", " 1 ", ""), "");
    const auto column = size();
    EXPECT_LT(column.first, row.first / 2);
    EXPECT_GT(column.second, 300);
    ASSERT_EQ(strip("100", "1", "2"), "");
    EXPECT_TRUE(leaving.said().startsWith("Wrote 2 photographs")) << leaving.said().toStdString();
    EXPECT_LT(size().second, column.second * 3 / 4);
    EXPECT_GT(size().second, column.second / 2);
    ASSERT_EQ(strip("200", "", "1"), "");
    EXPECT_GT(size().second, 200);
    fs::remove(root_ / "strip.png");
    EXPECT_TRUE(strip("2001", "", "").contains("64 to 2000")) << leaving.error().toStdString();
    EXPECT_EQ(leaving.wrong(), PhotoExportModel::Height);
    EXPECT_FALSE(strip("", "0", "").isEmpty());
    EXPECT_EQ(leaving.wrong(), PhotoExportModel::Columns);
    EXPECT_FALSE(strip("", "", "some").isEmpty());
    EXPECT_EQ(leaving.wrong(), PhotoExportModel::Count);
    EXPECT_FALSE(fs::exists(root_ / "strip.png")) << "nothing is written of an answer that is none";
    EXPECT_EQ(PhotoExportModel::usual(PhotoExportModel::Count), 8);
}

TEST_F(PhotosOfAPlant, ComeInFromAWatchedFolderForThePlantThatTheyName)
{
    const auto name = plain_facts().as_told.plants[0].name;
    auto& coming = *page_->coming();
    EXPECT_FALSE(coming.watch(QString::fromStdString((root_ / "nowhere").string())));
    EXPECT_FALSE(coming.error().isEmpty());
    coming.set_pause(20);
    write(name + " in May.jpg", 1);
    write("1_camera.jpg", 2); // The number of a camera is no plant's.
    ASSERT_TRUE(coming.watch(QString::fromStdString(inbox().string())));
    EXPECT_TRUE(coming.error().isEmpty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept() == 1U && coming.refused()->rowCount() == 1; }, 30'000));
    EXPECT_EQ(coming.refused()->at(0, "name").toString(), "1_camera.jpg");
    fs::create_directories(inbox() / name);
    write(name + "/2.jpg", 3);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept() == 2U && !coming.running(); }, 30'000));
    EXPECT_TRUE(coming.watchWords().startsWith("2 photographs")) << coming.watchWords().toStdString();
    coming.unwatch();
    settle();
    EXPECT_TRUE(coming.watched().isEmpty());
    EXPECT_EQ(page_->photos()->rowCount(), 2);
    plants_->undo();
    settle();
    EXPECT_EQ(page_->photos()->rowCount(), 1);
    write(name + " later.jpg", 4);
    QTest::qWait(200);
    EXPECT_EQ(kept(), 1U) << "it is watched no longer";
}

TEST_F(PhotosOfAPlant, ComeInWithTheRefusedNamedAndCanBeTakenBack)
{
    const auto sound = write("a.jpg", 1);
    bring({sound, put("broken.jpg", "no photo at all"), write("b.jpg", 2)});
    EXPECT_EQ(kept(), 2U);
    EXPECT_EQ(page_->photos()->rowCount(), 2);
    EXPECT_EQ(looked_at().count(), 2);
    ASSERT_EQ(page_->coming()->refused()->rowCount(), 1);
    EXPECT_EQ(page_->coming()->refused()->at(0, "name").toString(), "broken.jpg");
    EXPECT_FALSE(page_->coming()->refused()->at(0, "reason").toString().isEmpty());
    EXPECT_TRUE(plants_->said().contains("2 photographs came in. 1 was not taken."));
    bring({sound});
    EXPECT_TRUE(plants_->said().contains("1 was known already")) << plants_->said().toStdString();
    plants_->undo();
    settle();
    EXPECT_EQ(kept(), 0U);
    EXPECT_EQ(album().count(), 0);
    plants_->redo();
    settle();
    EXPECT_EQ(looked_at().count(), 2);
}

TEST_F(PhotosOfAPlant, OneThatIsBroughtToASecondPlantSaysThatItStillShowsTheFirst)
{
    const auto& plants = plain_facts().as_told.plants;
    const auto one = write("a.jpg", 1);
    const auto other = write("b.jpg", 2);
    bring({one, other});
    plant_ = plants[1].id;
    bring({one});
    const QString first = text(plants[0].name);
    EXPECT_TRUE(plants_->said().endsWith("1 was known already and shows the plant now; it still shows " + first + " too."))
        << plants_->said().toStdString();
    plant_ = plants[2].id;
    bring({one, other});
    EXPECT_TRUE(plants_->said().endsWith("2 were known already and show the plant now; some of them still show " + first + " and " +
                                         text(plants[1].name) + " too."))
        << plants_->said().toStdString();
    plant_ = plants[0].id;
    plants_->undo();
    settle();
    bring({other});
    EXPECT_TRUE(plants_->said().contains("still show")) << plants_->said().toStdString();
}

TEST_F(PhotosOfAPlant, AFolderIsTakenInWithAllBelowIt)
{
    write("a.jpg", 1);
    fs::create_directories(inbox() / "deep");
    write("deep/b.jpg", 2);
    bring({QUrl::fromLocalFile(QString::fromStdString(inbox().string()))});
    EXPECT_EQ(kept(), 2U);
}

TEST_F(PhotosOfAPlant, OnlyFilesOfThisComputerComeIn)
{
    EXPECT_FALSE(page_->coming()->add({QUrl("https://example.org/a.jpg")}, plant_));
    EXPECT_FALSE(page_->coming()->error().isEmpty());
    EXPECT_FALSE(page_->coming()->add({}, plant_));
    bring({QUrl::fromLocalFile("/nowhere/at/all.jpg")});
    EXPECT_EQ(page_->coming()->refused()->rowCount(), 1);
    EXPECT_EQ(kept(), 0U);
}

TEST_F(PhotosOfAPlant, StoppedKeepsWhatIsDone)
{
    QList<QUrl> files;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        files.append(write("p" + std::to_string(seed) + ".jpg", seed));
    }
    QSignalSpy progress(page_->coming(), &PhotoImportModel::progressChanged);
    ASSERT_TRUE(page_->coming()->add(files, plant_));
    EXPECT_TRUE(page_->coming()->running());
    EXPECT_FALSE(page_->coming()->add(files, plant_)); // One at a time.
    ASSERT_TRUE(QTest::qWaitFor([&] { return page_->coming()->done() > 0 || !page_->coming()->running(); }, 30'000));
    page_->coming()->stop();
    settle();
    EXPECT_FALSE(page_->coming()->running());
    EXPECT_GT(progress.count(), 1);
    EXPECT_EQ(kept(), static_cast<std::size_t>(looked_at().count()));
    EXPECT_GT(album().count(), 0);
    bring(files);
    EXPECT_EQ(kept(), 40U);
}

TEST_F(PhotosOfAPlant, AreWalkedFromTheNewestAndHeldWithinThoseThereAre)
{
    bring({write("b.jpg", 2, "2026-05-01T10:00:00"), write("a.jpg", 1, "2025-05-01T10:00:00"), write("c.jpg", 3, "2026-05-10T10:00:00")});
    EXPECT_EQ(looked_at().current(), 2);
    EXPECT_EQ(album().place(), "3 of 3");
    album().setCurrent(7);
    EXPECT_EQ(album().current(), 2);
    album().setCurrent(-4);
    EXPECT_EQ(album().current(), 0);
    EXPECT_TRUE(album().date().contains("2025"));
    album().open(0);
    settle();
    EXPECT_EQ(album().view(), PhotosModel::One);
    EXPECT_EQ(album().image().size(), QSize(160, 120));
    EXPECT_EQ(album().facts()->at(1, "words").toString(), "Invented Pocket 3");
    album().openTwo();
    settle();
    EXPECT_EQ(album().view(), PhotosModel::Two);
    EXPECT_FALSE(album().otherImage().isNull());
    EXPECT_TRUE(album().changesNote().contains("374 days apart")) << album().changesNote().toStdString();
    album().close();
    EXPECT_EQ(album().view(), PhotosModel::Closed);
    EXPECT_TRUE(album().image().isNull());
}

TEST_F(PhotosOfAPlant, StandForThePlantAndAreTakenOffIt)
{
    bring({write("a.jpg", 1)});
    EXPECT_FALSE(looked_at().isPicture());
    album().choosePicture();
    settle();
    EXPECT_TRUE(album().isPicture());
    plants_->undo();
    settle();
    EXPECT_FALSE(album().isPicture());
    const auto second = plain_facts().as_told.plants[1].id;
    album().assignTo(second);
    settle();
    album().takeOff();
    settle();
    EXPECT_EQ(album().count(), 0);
    plants_->openId(second);
    settle();
    EXPECT_EQ(looked_at().count(), 1);
    plants_->openId(plant_);
    plants_->undo();
    settle();
    EXPECT_EQ(looked_at().count(), 1);
}

TEST_F(PhotosOfAPlant, GoOutOfTheListsAndComeBackByUndo)
{
    bring({write("a.jpg", 1), write("b.jpg", 2)});
    EXPECT_EQ(looked_at().count(), 2);
    album().open(0);
    settle();
    album().withdraw();
    settle();
    EXPECT_EQ(album().error(), "");
    EXPECT_EQ(album().count(), 1);
    EXPECT_TRUE(plants_->said().contains("out of the lists")) << plants_->said().toStdString();
    auto store = journal::HouseholdStore::open(home());
    ASSERT_TRUE(store);
    EXPECT_EQ(journal::PhotoBook{*store}.withdrawn()->size(), 1U);
    plants_->undo();
    settle();
    EXPECT_EQ(plants_->error(), "");
    EXPECT_EQ(album().count(), 2);
    plants_->redo();
    settle();
    EXPECT_EQ(album().count(), 1);
}

TEST_F(PhotosOfAPlant, ListsArePlainModels)
{
    bring({write("a.jpg", 1), write("b.jpg", 2)});
    for (SheetRows* rows : {album().facts(), album().changes(), album().others(), page_->coming()->refused(), page_->measure()->rows()}) {
        QAbstractItemModelTester tester(rows, QAbstractItemModelTester::FailureReportingMode::Fatal);
    }
}

TEST_F(PhotosOfAPlant, FileThatIsGoneIsSaid)
{
    bring({write("a.jpg", 1)});
    fs::remove_all(home() / "photos");
    album().open(0);
    settle();
    EXPECT_FALSE(album().error().isEmpty());
    EXPECT_TRUE(album().image().isNull());
}

/// The demonstration's lemon in memory: pictures that are true to their ruler.
class MeasuringInPhotos : public testing::Test {
protected:
    MeasuringInPhotos()
    {
        const home::DemonstrationOptions options{.today = kShownToday};
        const auto made = home::demonstration(options).value();
        for (auto& one : home::demonstration_photos(options, made, home::tell_story(options, made))) {
            if (one.plant == kLemon) {
                drawn_.push_back(one);
            }
        }
        plants_ = std::make_unique<PlantsModel>(
            plants_in_memory(std::make_shared<MemoryHousehold>(plain_facts()), demonstration_measurements(kShownToday), drawn_),
            british_look());
        page_ = std::make_unique<PlantModel>(*plants_);
        plants_->start();
        plants_->openId(kLemon);
        settle();
        page_->album()->open(0);
        page_->album()->openMeasuring();
        settle();
    }
    void settle()
    {
        wait_for(*plants_);
        wait_for(*page_);
        wait_for(*page_->album());
        wait_for(*page_->measure());
    }
    MeasureModel& measure() { return *page_->measure(); }
    /// Of the plant that is open.
    std::vector<home::Measurement> measurements() const
    {
        return *plants_->facts().ground->book.archive->measurements(plants_->opened());
    }
    photo::DrawnPlaces places() const
    {
        return photo::drawn_places(drawn_.back().drawn, 640, 480, drawn_.back().reach_cm);
    }
    void set_all(double by = 0.0)
    {
        const auto at = places();
        for (const auto& point : {at.ruler_bottom, at.ruler_top, at.rim, at.top}) {
            measure().place(point.x, point.y + by, 0.1);
        }
    }
    static constexpr home::PlantId kLemon = 3;
    std::vector<home::DemonstrationPhoto> drawn_;
    std::unique_ptr<PlantsModel> plants_;
    std::unique_ptr<PlantModel> page_;
};

TEST_F(MeasuringInPhotos, LengthIsTrueToTheRuler)
{
    EXPECT_FALSE(measure().image().isNull());
    EXPECT_FALSE(measure().canKeep());
    measure().setKnownSize("40");
    set_all();
    EXPECT_TRUE(measure().canKeep());
    EXPECT_EQ(measure().result(), QString::number(drawn_.back().drawn.height_cm, 'f', 1) + " cm");
    EXPECT_TRUE(measure().range().contains("9 in 10"));
    // The last reading of the same kind, and by how much it changed.
    ASSERT_EQ(measure().rows()->rowCount(), 2);
    EXPECT_TRUE(measure().rows()->at(0, "name").toString().startsWith("Last reading"));
    EXPECT_TRUE(measure().rows()->at(1, "note").toString().contains("real"));
}

/// A photo that is shown at a quarter of its size cannot be marked nearer than four of its pixels.
TEST_F(MeasuringInPhotos, ErrorIsThatOfThePixelsOnTheScreen)
{
    const auto at = places();
    const auto range_at = [&](double step, bool by_keys) {
        measure().setKnownSize("40");
        int mark = 0;
        for (const auto& point : {at.ruler_bottom, at.ruler_top, at.rim, at.top}) {
            measure().move(mark, point.x, point.y, step);
            if (by_keys) {
                measure().nudge(0.0, 0.0);
            }
            ++mark;
        }
        static const QRegularExpression kRange("([0-9.]+) cm to ([0-9.]+) cm");
        static const QRegularExpression kShort("([0-9.]+) to ([0-9.]+) cm");
        auto found = kRange.match(measure().range());
        found = found.hasMatch() ? found : kShort.match(measure().range());
        EXPECT_TRUE(found.hasMatch()) << measure().range().toStdString();
        return found.captured(2).toDouble() - found.captured(1).toDouble();
    };
    const double fine = range_at(1.0, false);
    EXPECT_NEAR(range_at(8.0, false), 4.0 * fine, 0.3);
    EXPECT_NEAR(range_at(8.0, true), fine, 0.15) << "arrow keys move by single pixels";
}

TEST_F(MeasuringInPhotos, CommaAndWrongSizesAreUnderstood)
{
    set_all();
    measure().setKnownSize("40,0 cm");
    EXPECT_FALSE(measure().knownWrong());
    EXPECT_TRUE(measure().canKeep());
    for (const char* wrong : {"0", "-3", "long", "5000"}) {
        measure().setKnownSize(wrong);
        EXPECT_TRUE(measure().knownWrong()) << wrong;
        EXPECT_FALSE(measure().canKeep()) << wrong;
    }
}

TEST_F(MeasuringInPhotos, RepeatsGiveMeanAndAreKeptWithTheirPhoto)
{
    measure().setKnownSize("40");
    set_all();
    measure().tryAgain();
    EXPECT_FALSE(measure().isSet(MeasureModel::A));
    set_all();
    measure().nudge(0.0, -4.0); // Point 2, four pixels higher.
    EXPECT_EQ(measure().rows()->at(0, "name").toString(), "Try 1");
    EXPECT_EQ(measure().rows()->at(2, "name").toString(), "Mean of 2");
    const auto before = measurements().size();
    ASSERT_TRUE(measure().keep(""));
    settle();
    const auto all = measurements();
    ASSERT_EQ(all.size(), before + 1);
    const auto kept = std::ranges::find_if(all, [](const home::Measurement& of) { return of.photo.has_value(); });
    ASSERT_NE(kept, all.end());
    EXPECT_EQ(kept->method, home::MeasurementMethod::Photo);
    EXPECT_EQ(kept->repeats.size(), 2U);
    EXPECT_GT(kept->repeats[1], kept->repeats[0]);
    EXPECT_EQ(kept->measured, drawn_.back().taken);
    plants_->undo();
    settle();
    EXPECT_EQ(measurements().size(), before);
}

TEST_F(MeasuringInPhotos, KeysMovePointsAndTakeThemBack)
{
    measure().nudge(0.0, 0.0); // Not set yet: it appears in the middle.
    EXPECT_EQ(measure().at(MeasureModel::A), QPointF(320, 240));
    measure().nudge(-10.0, 1.0);
    EXPECT_EQ(measure().at(MeasureModel::A), QPointF(310, 241));
    EXPECT_TRUE(measure().step(1));
    measure().nudge(5.0, 0.0);
    EXPECT_TRUE(measure().isSet(MeasureModel::B));
    EXPECT_TRUE(measure().step(1));
    EXPECT_TRUE(measure().step(1));
    EXPECT_FALSE(measure().step(1)); // Tab leaves the photograph.
    measure().takeBack();
    EXPECT_FALSE(measure().isSet(MeasureModel::B));
    EXPECT_TRUE(measure().isSet(MeasureModel::A));
    measure().takeBack();
    measure().takeBack();
    EXPECT_FALSE(measure().isSet(MeasureModel::A));
    measure().nudge(-9000.0, 9000.0);
    EXPECT_EQ(measure().at(measure().chosen()), QPointF(0, 480)); // Held within the photograph.
}

TEST_F(MeasuringInPhotos, GreenShareOfAnOutlineIsKeptWithTheYellow)
{
    measure().setMode(MeasureModel::Green);
    for (const auto& corner : places().crown) {
        measure().place(corner.x, corner.y, 0.1);
        settle();
    }
    EXPECT_EQ(measure().corners(), static_cast<int>(places().crown.size()));
    EXPECT_TRUE(measure().canKeep());
    EXPECT_TRUE(measure().result().contains("green"));
    const auto before = measurements().size();
    ASSERT_TRUE(measure().keep(""));
    settle();
    EXPECT_EQ(measurements().size(), before + 2);
}

TEST_F(MeasuringInPhotos, AGreyPatchSetsTheColoursOfTheGreenShare)
{
    measure().setMode(MeasureModel::Green);
    for (const auto& corner : places().crown) {
        measure().place(corner.x, corner.y, 0.1);
        settle();
    }
    const QString taken = measure().result();
    EXPECT_TRUE(measure().advice().contains("grey patch"));
    measure().setMode(MeasureModel::Grey);
    EXPECT_EQ(measure().corners(), 0);
    EXPECT_EQ(measure().result(), "");
    for (const auto& [x, y] : {std::pair{4.0, 4.0}, {44.0, 4.0}, {44.0, 44.0}, {4.0, 44.0}}) { // The ground, which need not be grey.
        measure().place(x, y, 0.1);
        settle();
    }
    EXPECT_EQ(measure().corners(), 4);
    ASSERT_TRUE(measure().canKeep()) << measure().advice().toStdString();
    EXPECT_TRUE(measure().range().contains("colours set by the grey patch")) << measure().range().toStdString();
    ASSERT_GE(measure().rows()->rowCount(), 1);
    EXPECT_EQ(measure().rows()->at(0, "name").toString(), "As the camera took it");
    EXPECT_TRUE(taken.startsWith(measure().rows()->at(0, "value").toString())) << taken.toStdString();
    ASSERT_TRUE(measure().keep(""));
    settle();
    const auto all = measurements();
    const auto kept = std::ranges::find_if(all, [](const home::Measurement& of) { return of.photo.has_value(); });
    ASSERT_NE(kept, all.end());
    EXPECT_EQ(kept->note, "colours set by the grey patch");
    measure().setMode(MeasureModel::Green);
    EXPECT_EQ(measure().corners(), static_cast<int>(places().crown.size())) << "the outline stayed";
}

TEST_F(MeasuringInPhotos, AValueCanBeTypedInstead)
{
    EXPECT_FALSE(measure().keep(""));
    EXPECT_FALSE(measure().error().isEmpty());
    EXPECT_FALSE(measure().keep("tall"));
    const auto before = measurements().size();
    ASSERT_TRUE(measure().keep("27,3"));
    settle();
    EXPECT_EQ(measurements().size(), before + 1);
    EXPECT_TRUE(plants_->said().contains("27.3 cm")) << plants_->said().toStdString();
}

} // namespace
} // namespace lathhouse::models
