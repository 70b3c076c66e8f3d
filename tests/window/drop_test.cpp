#include "app/models/changes_model.h"
#include "app/models/home_model.h"
#include "app/models/home_record_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"
#include "core/journal/household_store.h"
#include "core/journal/photo_book.h"
#include "core/photo/drawn_plant.h"
#include "core/photo/encode.h"
#include "tests/climate/sample_table.h"
#include "tests/models/page_fixtures.h"
#include "tests/models/year_filler.h"

#include <QDropEvent>
#include <QMimeData>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <filesystem>
#include <fstream>

namespace lathhouse {
namespace {

namespace fs = std::filesystem;
using models::british_look;
using models::plain_facts;
using models::wait_for;

/// The window of a household in a folder, and files that are let go over it as a file manager does.
class DroppedFiles : public testing::Test {
protected:
    /// How the window answered.
    struct Answer {
        bool entered = false;
        bool moved = false;
        bool dropped = false;
    };

    void SetUp() override
    {
        ASSERT_TRUE(journal::HouseholdStore::create(home_folder(), plain_facts().as_told, plain_facts().events));
        fs::create_directories(inbox());
        const auto look = british_look();
        const auto household = std::make_shared<models::MemoryHousehold>(plain_facts());
        const auto door = models::door_to_memory(household);
        plant_id = plain_facts().as_told.plants[0].id;
        year = std::make_unique<models::YearModel>(
            models::filled_year(), [year = models::filled_year()](Probability risk) { return models::filled_plan(year, risk); }, look.words);
        round = std::make_unique<models::RoundModel>(models::round_in_memory(household), look);
        tonight = std::make_unique<models::TonightModel>(door, look);
        plants = std::make_unique<models::PlantsModel>(
            models::plants_in_folder(home_folder(), []() -> Result<plan::HouseholdFacts> { return plain_facts(); }), look);
        plant = std::make_unique<models::PlantModel>(*plants);
        seeds = std::make_unique<models::SeedsModel>(door, look);
        record = std::make_unique<models::HomeRecordModel>(models::record_in_folder(home_folder(), models::shipped_climate_at), look);
        home = std::make_unique<models::HomeModel>(door, look);
        home->join({.record = record.get()});
        changes = std::make_unique<models::ChangesModel>(models::turn_in_memory(household));
    }
    void TearDown() override { engine.reset(); }

    void open(const char* page)
    {
        engine = std::make_unique<QQmlApplicationEngine>();
        engine->addImportPath("qrc:/qt/qml");
        engine->setInitialProperties({{"year", QVariant::fromValue(year.get())},
                                      {"round", QVariant::fromValue(round.get())},
                                      {"tonight", QVariant::fromValue(tonight.get())},
                                      {"plants", QVariant::fromValue(plants.get())},
                                      {"plant", QVariant::fromValue(plant.get())},
                                      {"seeds", QVariant::fromValue(seeds.get())},
                                      {"home", QVariant::fromValue(home.get())},
                                      {"changes", QVariant::fromValue(changes.get())},
                                      {"page", page},
                                      {"scheme", "light"},
                                      {"width", 1280},
                                      {"height", 800}});
        engine->load(QUrl("qrc:/qt/qml/Lathhouse/Ui/Main.qml"));
        ASSERT_FALSE(engine->rootObjects().isEmpty());
        window = qobject_cast<QQuickWindow*>(engine->rootObjects().first());
        ASSERT_NE(window, nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window));
        settle();
    }
    void open_plant()
    {
        plants->openId(plant_id);
        open("plants");
        ASSERT_EQ(plant->plantId(), plant_id);
    }
    void open_record()
    {
        home->setSection(models::HomeModel::Record);
        open("home");
        ASSERT_NE(item("dropPlace"), nullptr);
        ASSERT_FALSE(record->isThere());
    }
    void settle()
    {
        for (models::SheetModel* page : {static_cast<models::SheetModel*>(plant->coming()), static_cast<models::SheetModel*>(plants.get()),
                                         static_cast<models::SheetModel*>(plant.get()), static_cast<models::SheetModel*>(plant->album()),
                                         static_cast<models::SheetModel*>(record.get()), static_cast<models::SheetModel*>(home.get())}) {
            wait_for(*page);
        }
        QTest::qWait(50);
    }

    /// Enters with the files, moves on to the item's middle, and lets go there.
    Answer drop(const char* name, const QList<QUrl>& files)
    {
        QMimeData data;
        data.setUrls(files);
        return drop(name, data);
    }
    Answer drop(const char* name, const QMimeData& data)
    {
        QQuickItem* over = item(name);
        EXPECT_NE(over, nullptr) << name;
        if (over == nullptr) {
            return {};
        }
        const QPoint at = over->mapToScene(QPointF(over->width() / 2, over->height() / 2)).toPoint();
        constexpr auto kActions = Qt::CopyAction | Qt::MoveAction;
        Answer answer;
        QDragEnterEvent enter(at - QPoint(3, 3), kActions, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window, &enter);
        answer.entered = enter.isAccepted();
        QDragMoveEvent move(at, kActions, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window, &move);
        answer.moved = move.isAccepted();
        hovered = over->property("containsDrag").toBool();
        if (!answer.moved) { // The desktop sends no drop where the last move was not wanted.
            QDragLeaveEvent leave;
            QCoreApplication::sendEvent(window, &leave);
            return answer;
        }
        QDropEvent drop(at, kActions, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window, &drop);
        answer.dropped = drop.isAccepted();
        if (answer.dropped) {
            EXPECT_EQ(drop.dropAction(), Qt::CopyAction) << "the file manager must not delete what was moved";
        }
        settle();
        return answer;
    }

    static QQuickItem* item_in(QQuickItem* parent, const char* name)
    {
        for (QQuickItem* child : parent->childItems()) {
            if (child->objectName() == QLatin1String(name)) {
                return child;
            }
            if (QQuickItem* found = item_in(child, name)) {
                return found;
            }
        }
        return nullptr;
    }
    QQuickItem* item(const char* name) const { return item_in(window->contentItem(), name); }

    fs::path home_folder() const { return fs::path{folder.path().toStdString()} / "home"; }
    fs::path inbox() const { return fs::path{folder.path().toStdString()} / "inbox"; }
    QUrl put(const std::string& name, const std::string& content) const
    {
        fs::create_directories((inbox() / name).parent_path());
        std::ofstream{inbox() / name, std::ios::binary} << content;
        return address(name);
    }
    QUrl address(const std::string& name) const { return QUrl::fromLocalFile(QString::fromStdString((inbox() / name).string())); }
    QUrl put_photo(const std::string& name, unsigned seed) const
    {
        photo::DrawnPlant drawn;
        drawn.seed = seed;
        photo::Exif exif;
        exif.taken = photo::parse_local_time("2026-05-01T10:00:00").value();
        exif.camera = "Invented Pocket 3";
        const auto bytes = photo::with_exif(photo::encode_jpeg(photo::drawn_plant(drawn, 160, 120)).value(), photo::make_exif(exif));
        return put(name, {bytes.begin(), bytes.end()});
    }
    /// Pictures that lie in the household's folder, small ones for the window among them.
    std::size_t files_kept() const
    {
        std::size_t files = 0;
        for (const auto& entry : fs::recursive_directory_iterator(home_folder())) {
            files += entry.is_regular_file() && entry.path().extension() == ".jpg" ? 1 : 0;
        }
        return files;
    }
    std::size_t listed() const
    {
        auto store = journal::HouseholdStore::open(home_folder()).value();
        return journal::PhotoBook{store}.photos()->size();
    }
    bool record_kept() const { return journal::HouseholdStore::open(home_folder())->load()->own_record != nullptr; }
    static std::string table()
    {
        auto rows = climate::sample_table(2005, 2020);
        return "date,low,high,rain" + rows.substr(rows.find('\n'));
    }

    QTemporaryDir folder;
    home::PlantId plant_id = 0;
    bool hovered = false; ///< Whether the place said that it takes what was over it.
    std::unique_ptr<models::YearModel> year;
    std::unique_ptr<models::RoundModel> round;
    std::unique_ptr<models::TonightModel> tonight;
    std::unique_ptr<models::PlantsModel> plants;
    std::unique_ptr<models::PlantModel> plant;
    std::unique_ptr<models::SeedsModel> seeds;
    std::unique_ptr<models::HomeRecordModel> record;
    std::unique_ptr<models::HomeModel> home;
    std::unique_ptr<models::ChangesModel> changes;
    std::unique_ptr<QQmlApplicationEngine> engine;
    QQuickWindow* window = nullptr;
};

TEST_F(DroppedFiles, TwoPhotosComeInAtAPlantsPageAndAreTakenBack)
{
    open_plant();
    const auto before = plant->photos()->rowCount();
    const auto answer = drop("photoDrop", QList<QUrl>{put_photo("a.jpg", 1), put_photo("b.jpg", 2)});
    EXPECT_TRUE(answer.entered && answer.moved && answer.dropped);
    EXPECT_TRUE(hovered);
    EXPECT_EQ(plants->said(), plant->name() + ": 2 photographs came in.");
    EXPECT_EQ(plant->coming()->refused()->rowCount(), 0);
    EXPECT_EQ(plant->photos()->rowCount(), before + 2);
    EXPECT_EQ(listed(), 2U);
    EXPECT_GE(files_kept(), 2U);
    EXPECT_TRUE(fs::exists(inbox() / "a.jpg")) << "it was copied";
    ASSERT_TRUE(plants->canUndo());
    plants->undo();
    settle();
    EXPECT_EQ(plants->error(), QString{});
    EXPECT_EQ(plant->photos()->rowCount(), before);
}

TEST_F(DroppedFiles, OfAFolderAndATextOnlyThePhotographComesInAndTheRestIsSaid)
{
    open_plant();
    put_photo("trip/day/c.jpg", 3);
    put("trip/readme.txt", "not a photograph");
    const auto answer = drop("photoDrop", QList<QUrl>{address("trip"), put("notes.txt", "watered on Monday")});
    EXPECT_TRUE(answer.dropped);
    EXPECT_TRUE(plants->said().startsWith(plant->name() + ": 1 photograph came in.")) << plants->said().toStdString();
    EXPECT_EQ(listed(), 1U);
    QStringList refused;
    for (int row = 0; row < plant->coming()->refused()->rowCount(); ++row) {
        refused << plant->coming()->refused()->at(row, "name").toString() + ": " + plant->coming()->refused()->at(row, "reason").toString();
    }
    EXPECT_TRUE(refused.join('\n').contains("notes.txt")) << refused.join('\n').toStdString();
}

TEST_F(DroppedFiles, AFolderAndATextThatAreNoPhotographsWriteNothing)
{
    open_plant();
    fs::create_directories(inbox() / "empty");
    const auto answer = drop("photoDrop", QList<QUrl>{address("empty"), put("notes.txt", "watered on Monday")});
    EXPECT_TRUE(answer.dropped);
    EXPECT_TRUE(plants->said().startsWith(plant->name() + ": no new photograph.")) << plants->said().toStdString();
    EXPECT_EQ(plant->coming()->error(), QString{});
    ASSERT_EQ(plant->coming()->refused()->rowCount(), 1);
    EXPECT_EQ(plant->coming()->refused()->at(0, "name").toString(), "notes.txt");
    EXPECT_FALSE(plant->coming()->refused()->at(0, "reason").toString().isEmpty());
    EXPECT_EQ(listed(), 0U);
    EXPECT_EQ(files_kept(), 0U);
    EXPECT_FALSE(plants->canUndo()) << "nothing is there to be taken back";
}

TEST_F(DroppedFiles, APictureOfAPageOfTheWebIsAskedForAsAFile)
{
    open_plant();
    const auto answer = drop("photoDrop", QList<QUrl>{QUrl("https://example.org/plant.jpg")});
    EXPECT_TRUE(answer.dropped);
    EXPECT_TRUE(plant->coming()->error().contains("Save the photograph first")) << plant->coming()->error().toStdString();
    EXPECT_EQ(listed(), 0U);
}

TEST_F(DroppedFiles, WordsAreNotWanted)
{
    open_plant();
    QMimeData words;
    words.setText("a line of a letter");
    const auto answer = drop("photoDrop", words);
    EXPECT_FALSE(answer.moved);
    EXPECT_FALSE(hovered);
    EXPECT_EQ(plants->said(), QString{});
}

TEST_F(DroppedFiles, ARecordComesInAtHomeAndIsTakenBack)
{
    open_record();
    const auto answer = drop("dropArea", QList<QUrl>{put("porch.csv", table())});
    EXPECT_TRUE(answer.entered && answer.moved && answer.dropped);
    EXPECT_TRUE(hovered);
    EXPECT_EQ(record->error(), QString{});
    EXPECT_EQ(record->said(), "Taken in: porch.");
    EXPECT_TRUE(record_kept());
    record->undo();
    settle();
    EXPECT_EQ(record->error(), QString{});
    EXPECT_FALSE(record_kept());
    EXPECT_FALSE(record->isThere());
}

TEST_F(DroppedFiles, AFolderAndATextThatAreNoRecordWriteNothingAtHome)
{
    open_record();
    fs::create_directories(inbox() / "tables");
    EXPECT_TRUE(drop("dropArea", QList<QUrl>{address("tables")}).dropped);
    EXPECT_TRUE(record->error().contains("Nothing was taken in")) << record->error().toStdString();
    EXPECT_TRUE(record->error().contains("folder")) << record->error().toStdString();
    EXPECT_FALSE(record_kept());
    EXPECT_TRUE(drop("dropArea", QList<QUrl>{put("notes.txt", "watered on Monday\nand on Friday\n")}).dropped);
    EXPECT_TRUE(record->error().contains("Nothing was taken in")) << record->error().toStdString();
    EXPECT_FALSE(record->error().contains("--")) << record->error().toStdString();
    EXPECT_FALSE(record_kept());
    EXPECT_EQ(record->said(), QString{});
}

TEST_F(DroppedFiles, OfSeveralRecordsNoneIsTakenUnasked)
{
    open_record();
    EXPECT_TRUE(drop("dropArea", QList<QUrl>{put("porch.csv", table()), put("roof.csv", table())}).dropped);
    EXPECT_TRUE(record->error().contains("one file")) << record->error().toStdString();
    EXPECT_FALSE(record_kept());
    EXPECT_TRUE(drop("dropArea", QList<QUrl>{QUrl("https://example.org/porch.csv")}).dropped);
    EXPECT_TRUE(record->error().contains("this computer")) << record->error().toStdString();
    EXPECT_FALSE(record_kept());
}

} // namespace
} // namespace lathhouse
