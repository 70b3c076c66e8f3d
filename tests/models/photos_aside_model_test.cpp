#include "app/models/photos_aside_model.h"
#include "core/base/sha256.h"
#include "core/journal/household_store.h"
#include "core/journal/photo_book.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace lathhouse::models {
namespace {

/// A household in a folder with a photo out of the lists, one of no plant, one of a plant that is gone, and one in its place.
class PhotosAsideModelTest : public testing::Test {
protected:
    PhotosAsideModelTest() : home(std::filesystem::path{folder.path().toStdString()} / "home")
    {
        auto store = journal::HouseholdStore::create(home, plain_facts().as_told, {});
        EXPECT_TRUE(store);
        const auto plants = store->load()->plants;
        stays = plants[0].id;
        dies = plants[1].id;
        dead_name = plants[1].name;
        journal::PhotoBook book{*store};
        const auto kept = book.keep(std::vector{photo("out", 1, {stays}), photo("nobody", 2, {}), photo("dead", 3, {dies}), photo("there", 4, {stays})});
        EXPECT_TRUE(kept);
        EXPECT_TRUE(book.withdraw((*kept)[0].id, journal::PhotoBook::Withdrawn::Yes, {}));
        const home::Event died{dies, home::EventKind::Died, {}, kShownToday, {}, "", {}};
        EXPECT_TRUE(store->record(std::span{&died, 1}));
        model = std::make_unique<PhotosAsideModel>(plants_in_folder(home, [] { return Result<plan::HouseholdFacts>{plain_facts()}; }), british_look());
        model->look();
        wait_for(*model);
    }
    static home::Photo photo(const std::string& name, int day, std::vector<home::PlantId> plants)
    {
        return {.id = 0,
                .sha256 = sha256_of(name),
                .extension = "jpg",
                .bytes = 10,
                .width = 40,
                .height = 30,
                .taken = std::chrono::local_days{std::chrono::year{2026} / 4 / day},
                .zone_offset = {},
                .taken_from = home::TakenFrom::Given,
                .original_name = name + ".jpg",
                .position = {},
                .entered = {},
                .plants = std::move(plants)};
    }
    QString at(int row, const char* role) const { return model->rows()->at(row, role).toString(); }
    std::vector<home::Photo> listed(home::PlantId plant) const
    {
        auto store = journal::HouseholdStore::open(home);
        return journal::PhotoBook{*store}.photos(plant).value();
    }

    QTemporaryDir folder;
    std::filesystem::path home;
    home::PlantId stays = 0, dies = 0;
    std::string dead_name;
    std::unique_ptr<PhotosAsideModel> model;
};

TEST_F(PhotosAsideModelTest, TellsThoseThatNoPagesShowNewestFirst)
{
    const QAbstractItemModelTester tester(model->rows());
    ASSERT_EQ(model->rows()->count(), 3);
    EXPECT_TRUE(at(0, "name").startsWith("dead.jpg, "));
    EXPECT_EQ(at(0, "words"), QString("shows %1, which is gone").arg(text(dead_name)));
    EXPECT_EQ(at(1, "words"), "shows no plant");
    EXPECT_TRUE(at(2, "words").startsWith("out of the lists; shows ")) << at(2, "words").toStdString();
    EXPECT_TRUE(model->rows()->at(2, "out").toBool());
    EXPECT_FALSE(model->rows()->at(1, "out").toBool());
    EXPECT_EQ(at(1, "sentence"), at(1, "name") + ": shows no plant.");
    EXPECT_EQ(model->line(), "");
    EXPECT_FALSE(model->plants().contains(text(dead_name)));
    EXPECT_EQ(at(0, "source"), "") << "its file is not there; it is told all the same";
}

TEST_F(PhotosAsideModelTest, BringsOneBackWithThePlantsThatItShows)
{
    QSignalSpy written(model.get(), &SheetModel::written);
    EXPECT_EQ(listed(stays).size(), 1U);
    model->bringBack(2);
    wait_for(*model);
    EXPECT_EQ(model->error(), "");
    EXPECT_EQ(written.count(), 1);
    EXPECT_EQ(listed(stays).size(), 2U);
    EXPECT_EQ(model->rows()->count(), 2);
    EXPECT_TRUE(model->said().startsWith("The photograph out.jpg of ")) << model->said().toStdString();
    auto store = journal::HouseholdStore::open(home);
    ASSERT_TRUE(store->turn_last(journal::HouseholdStore::Direction::Undo, {}));
    model->look();
    wait_for(*model);
    EXPECT_EQ(model->rows()->count(), 3);
}

TEST_F(PhotosAsideModelTest, GivesOneToAPlantOrTakesItOutOfTheLists)
{
    ASSERT_FALSE(model->plants().isEmpty());
    const auto household = journal::HouseholdStore::open(home)->load().value();
    const int plant = static_cast<int>(model->plants().indexOf(text(household.plant(stays)->name)));
    model->giveTo(1, plant);
    wait_for(*model);
    EXPECT_EQ(listed(stays).size(), 2U);
    ASSERT_EQ(model->rows()->count(), 2);
    model->withdraw(0);
    wait_for(*model);
    ASSERT_EQ(model->rows()->count(), 2);
    EXPECT_TRUE(model->rows()->at(0, "out").toBool());
    model->bringBack(0);
    wait_for(*model);
    model->bringBack(1);
    wait_for(*model);
    EXPECT_EQ(model->rows()->count(), 1) << "of the plant that is gone";
}

TEST_F(PhotosAsideModelTest, LeavesAloneWhatIsNotThere)
{
    QSignalSpy written(model.get(), &SheetModel::written);
    model->bringBack(1); // It is in the lists.
    model->withdraw(2);  // It is not.
    model->bringBack(7);
    model->giveTo(1, 99);
    model->giveTo(-1, 0);
    wait_for(*model);
    EXPECT_EQ(written.count(), 0);
    EXPECT_EQ(model->rows()->count(), 3);
}

TEST(PhotosAside, OfAHouseholdInMemoryAreTheDrawnOnes)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    const auto pictures = demonstration_pictures(kShownToday);
    auto door = plants_in_memory(household, {}, pictures);
    PhotosAsideModel model(door, british_look());
    model.look();
    wait_for(model);
    EXPECT_EQ(model.rows()->count(), 0);
    EXPECT_TRUE(model.line().startsWith("None: "));
    const auto all = door.load()->archive->photos(pictures[0].plant)->size();
    const home::PhotoChange out{.kind = home::PhotoChangeKind::Withdrawn, .photos = {1}, .plant = {}, .name = "a", .taken = kShownToday, .entered = {}};
    ASSERT_TRUE(door.record({.events = {}, .measurements = {}, .photos = out}));
    EXPECT_EQ(door.load()->archive->photos(pictures[0].plant)->size(), all - 1);
    model.look();
    wait_for(model);
    ASSERT_EQ(model.rows()->count(), 1);
    EXPECT_FALSE(model.rows()->at(0, "source").toString().isEmpty());
    model.bringBack(0);
    wait_for(model);
    EXPECT_EQ(model.rows()->count(), 0);
    EXPECT_EQ(door.load()->archive->photos(pictures[0].plant)->size(), all);
}

TEST(PhotosAside, SaysWhyTheyCannotBeRead)
{
    PhotosAsideModel model(no_plants({ErrorCode::NotFound, "the folder is gone"}), british_look());
    model.look();
    wait_for(model);
    EXPECT_FALSE(model.known());
    EXPECT_EQ(model.line(), "");
    EXPECT_FALSE(model.error().isEmpty());
}

} // namespace
} // namespace lathhouse::models
