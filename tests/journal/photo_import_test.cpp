#include "core/home/demonstration.h"
#include "core/journal/photo_export.h"
#include "core/journal/photo_import.h"
#include "core/base/sha256.h"
#include "tests/journal/temporary_folder.h"
#include "tests/photo/sample_photos.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <fstream>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lathhouse::journal {
namespace {

namespace fs = std::filesystem;

class PhotoImport : public WithFolder {
protected:
    PhotoImport()
        : household_(home::demonstration({.today = calendar::Date{2026, 11, 25}}).value().household),
          store_(HouseholdStore::create(folder_ / "home", household_, {}).value()), book_(store_)
    {
        fs::create_directories(inbox());
    }
    fs::path inbox() const { return folder_ / "inbox"; }
    fs::path write(const std::string& name, const photo::Bytes& bytes) const
    {
        fs::create_directories((inbox() / name).parent_path());
        photo::write_bytes(inbox() / name, bytes);
        return inbox() / name;
    }
    static photo::Bytes jpeg(unsigned seed) { return photo::jpeg_with(photo::drawn_plant(160, 120, seed), photo::sample_exif()); }
    ImportWishes wishes() const
    {
        return {.plants = {}, .taken = {}, .time_zone = "Europe/Budapest", .entered = now_};
    }
    ImportReport import(const ImportWishes& with, std::vector<fs::path> files = {})
    {
        if (files.empty()) {
            files = photo_files_in(inbox()).value();
        }
        return import_photos(store_, files, with, {}, cancel_);
    }
    home::PlantId plant(std::size_t index) const { return household_.plants[index].id; }

    home::Household household_;
    HouseholdStore store_;
    PhotoBook book_;
    std::atomic<bool> cancel_ = false;
    calendar::Instant now_ = calendar::start_of_day_utc(calendar::Date{2026, 11, 25});
};

TEST_F(PhotoImport, KeepsTheFileToTheBitUnderItsDigest)
{
    const auto bytes = jpeg(1);
    write("a.jpg", bytes);
    const auto report = import(wishes());
    ASSERT_EQ(report.count(ImportOutcome::Added), 1U);
    const auto photos = book_.photos().value();
    ASSERT_EQ(photos.size(), 1U);
    const auto& photo = photos.front();
    EXPECT_EQ(photo.sha256, sha256_of(bytes));
    EXPECT_EQ(book_.file_of(photo), folder_ / "home" / "photos" / photo.sha256.substr(0, 2) / (photo.sha256 + ".jpg"));
    EXPECT_EQ(photo::read_bytes(book_.file_of(photo)).value(), bytes);
    EXPECT_EQ(photo::to_text(photo.taken), "2026-05-30T14:05:07");
    EXPECT_EQ(photo.zone_offset, std::chrono::minutes{120});
    EXPECT_EQ(photo.taken_from, home::TakenFrom::Exif);
    EXPECT_EQ(photo.original_name, "a.jpg");
    EXPECT_TRUE(photo.position);
    EXPECT_EQ(photo.width, 160);
    EXPECT_TRUE(fs::exists(book_.thumbnail_of(photo)));
}

TEST_F(PhotoImport, KnowsWhatItHasByItsContent)
{
    write("a.jpg", jpeg(1));
    write("again/b.jpg", jpeg(1));
    const auto first = import(wishes());
    EXPECT_EQ(first.count(ImportOutcome::Added), 1U);
    EXPECT_EQ(first.count(ImportOutcome::Known), 1U);
    const auto second = import(wishes());
    EXPECT_EQ(second.count(ImportOutcome::Known), 2U);
    EXPECT_EQ(book_.photos()->size(), 1U);
}

TEST_F(PhotoImport, IsNotStoppedByWhatARunThatWasKilledLeft)
{
    // In a box of its own a program may have the same number each time.
    const auto place = folder_ / "home" / "photos" / sha256_of(jpeg(1)).substr(0, 2);
    fs::create_directories(place);
    for (int number = 0; number < 2000; ++number) {
        std::ofstream{place / (".incoming-" + std::to_string(getpid()) + "-" + std::to_string(number))};
    }
    write("a.jpg", jpeg(1));
    const auto report = import(wishes());
    ASSERT_FALSE(report.stopped) << report.stopped->message;
    EXPECT_EQ(report.count(ImportOutcome::Added), 1U);
}

TEST_F(PhotoImport, AFileOfAnImpossibleYearIsDatedByItsComing)
{
    // Disks in memory hold any year; others stop at 2446 or so.
    const fs::path memory{"/dev/shm"};
    const auto file = memory / ("lathhouse_year_" + std::to_string(getpid()) + ".png");
    photo::write_bytes(file, photo::encode_png(photo::drawn_plant(32, 32, 1)).value());
    const timespec far[2]{{320'000'000'000, 0}, {320'000'000'000, 0}}; // In the year 12110.
    struct stat kept {};
    if (utimensat(AT_FDCWD, file.c_str(), far, 0) != 0 || stat(file.c_str(), &kept) != 0 || kept.st_mtim.tv_sec != far[0].tv_sec) {
        fs::remove(file);
        GTEST_SKIP() << "no disk in memory";
    }
    const auto report = import(wishes(), {file, write("a.jpg", jpeg(1))});
    fs::remove(file);
    ASSERT_FALSE(report.stopped) << report.stopped->message;
    EXPECT_EQ(report.count(ImportOutcome::Added), 2U);
    EXPECT_EQ(report.files.front().photo->date(), (calendar::Date{2026, 11, 25}));
}

TEST_F(PhotoImport, RefusesByNameAndGoesOn)
{
    auto half = jpeg(2);
    half.resize(half.size() / 2);
    auto looped = photo::with_exif(photo::encode_jpeg(photo::drawn_plant(32, 32)).value(), [] {
        auto block = photo::make_exif({});
        block[22] = 8; // The only directory names itself as the next.
        return block;
    }());
    write("1-sound.jpg", jpeg(1));
    write("2-half.jpg", half);
    write("3-looped.jpg", looped);
    write("4-large.png", photo::encode_png(photo::Picture{3000, 2000, 255}).value());
    write("5-text.jpg", photo::Bytes(200, 'x'));
    write("6-empty.jpg", {});
    write("7-sound.jpg", jpeg(3));
    auto with = wishes();
    with.limits.pixels = 5'000'000;
    const auto report = import(with);
    EXPECT_EQ(report.count(ImportOutcome::Added), 2U);
    std::vector<std::string> refused;
    for (const auto& file : report.files) {
        if (file.outcome == ImportOutcome::Refused) {
            refused.push_back(file.trouble.text);
        }
    }
    using testing::HasSubstr;
    EXPECT_THAT(refused, testing::ElementsAre(HasSubstr("2-half.jpg"), HasSubstr("3-looped.jpg"), HasSubstr("4-large.png"),
                                              HasSubstr("5-text.jpg"), HasSubstr("6-empty.jpg")));
    EXPECT_FALSE(report.stopped);
    // Nothing of the refused is left behind.
    EXPECT_EQ(photo_files_in(folder_ / "home" / "photos")->size(), 2U);
}

TEST_F(PhotoImport, DatesByFileTimeInTheHouseholdsZoneOrAsGiven)
{
    const auto file = write("plain.png", photo::encode_png(photo::drawn_plant(20, 20)).value());
    // 2026-07-01 22:30 UTC is half past midnight in Budapest.
    fs::last_write_time(file, fs::file_time_type::clock::from_sys(calendar::start_of_day_utc(calendar::Date{2026, 7, 1}) +
                                                                  std::chrono::minutes{22 * 60 + 30}));
    import(wishes());
    auto photo = book_.photos()->front();
    EXPECT_EQ(photo::to_text(photo.taken), "2026-07-02T00:30:00");
    EXPECT_EQ(photo.taken_from, home::TakenFrom::FileTime);

    write("other.png", photo::encode_png(photo::drawn_plant(21, 20)).value());
    auto with = wishes();
    with.taken = photo::parse_local_time("2025-03-04").value();
    import(with, {inbox() / "other.png"});
    EXPECT_EQ(photo::to_text(book_.photos()->front().taken), "2025-03-04T12:00:00");

    ASSERT_TRUE(book_.date(photo.id, photo::parse_local_time("2026-06-30T08:00:00").value(), now_));
    photo = book_.photo(photo.id).value();
    EXPECT_EQ(photo::to_text(photo.taken), "2026-06-30T08:00:00");
    EXPECT_EQ(photo.taken_from, home::TakenFrom::Given);
}

TEST_F(PhotoImport, StoppedAndRunAgainHasEachPhotoOnce)
{
    for (unsigned i = 0; i < 12; ++i) {
        write("p" + std::to_string(10 + i) + ".jpg", jpeg(100 + i));
    }
    const auto files = photo_files_in(inbox()).value();
    std::size_t last = 0;
    int begun = 0;
    auto with = wishes();
    with.workers = 1;
    with.plants = [&](const fs::path&) {
        cancel_ = ++begun == 5;
        return std::vector<home::PlantId>{};
    };
    const auto stopped = import_photos(store_, files, with,
                                       [&](std::size_t done, std::size_t total) {
                                           EXPECT_EQ(total, 12U);
                                           EXPECT_GT(done, last);
                                           last = done;
                                       },
                                       cancel_);
    EXPECT_EQ(stopped.files.size(), 5U); // What is begun is finished.
    EXPECT_EQ(last, 5U);
    EXPECT_TRUE(stopped.cancelled);
    EXPECT_EQ(book_.photos()->size(), stopped.files.size());
    cancel_ = false;
    const auto rest = import(wishes());
    EXPECT_EQ(rest.count(ImportOutcome::Known), stopped.files.size());
    EXPECT_EQ(rest.count(ImportOutcome::Added), 12U - stopped.files.size());
    EXPECT_EQ(book_.photos()->size(), 12U);
}

TEST_F(PhotoImport, TakesUpAFileThatAKilledRunLeftWithoutItsRow)
{
    const auto bytes = jpeg(5);
    const auto digest = sha256_of(bytes);
    const auto place = folder_ / "home" / "photos" / digest.substr(0, 2);
    fs::create_directories(place);
    photo::write_bytes(place / (digest + ".jpg"), bytes);
    photo::write_bytes(place / ".incoming-1-0", bytes);
    fs::last_write_time(place / ".incoming-1-0", fs::file_time_type::clock::now() - std::chrono::hours{5});
    write("a.jpg", bytes);
    EXPECT_EQ(import(wishes()).count(ImportOutcome::Added), 1U);
    EXPECT_FALSE(fs::exists(place / ".incoming-1-0"));
}

TEST_F(PhotoImport, ThatCannotWriteSaysSoAndKeepsWhatIsDone)
{
    write("a.jpg", jpeg(1));
    // A file where the folder should be.
    const auto digest = sha256_of(jpeg(1));
    photo::write_bytes(folder_ / "home" / "photos" / digest.substr(0, 2), {1});
    const auto report = import(wishes());
    ASSERT_TRUE(report.stopped);
    EXPECT_EQ(report.stopped->code, ErrorCode::Unwritable);
    EXPECT_TRUE(book_.photos()->empty());
}

TEST_F(PhotoImport, AssignsToPlantsWhichCanBeTakenBack)
{
    write("a.jpg", jpeg(1));
    auto with = wishes();
    with.plants = [&](const fs::path&) { return std::vector{plant(0), plant(1)}; };
    import(with);
    const auto id = book_.photos()->front().id;
    EXPECT_EQ(book_.photos(plant(1))->front().plants, (std::vector{plant(0), plant(1)}));
    EXPECT_EQ(book_.last_plant().value(), plant(1));
    ASSERT_TRUE(book_.assign(id, plant(1), PhotoBook::Shows::No, now_));
    EXPECT_TRUE(book_.photos(plant(1))->empty());
    ASSERT_TRUE(book_.assign(id, plant(1), PhotoBook::Shows::Yes, now_));
    EXPECT_EQ(book_.photos(plant(1))->size(), 1U);
    EXPECT_EQ(book_.assign(id, 9999, PhotoBook::Shows::Yes, now_).error().code, ErrorCode::NotFound);
    EXPECT_EQ(book_.assign(9999, plant(0), PhotoBook::Shows::Yes, now_).error().code, ErrorCode::NotFound);
}

TEST_F(PhotoImport, WithdrawnComesBackWhereItIsImportedAgain)
{
    write("a.jpg", jpeg(1));
    import(wishes());
    const auto photo = book_.photos()->front();
    ASSERT_TRUE(book_.withdraw(photo.id, PhotoBook::Withdrawn::Yes, now_));
    EXPECT_TRUE(book_.photos()->empty());
    EXPECT_EQ(book_.photo(photo.id).error().code, ErrorCode::NotFound);
    EXPECT_TRUE(fs::exists(book_.file_of(photo)));
    import(wishes());
    EXPECT_EQ(book_.photos()->size(), 1U);
}

TEST_F(PhotoImport, MakesItsThumbnailsAnew)
{
    write("a.jpg", jpeg(1));
    import(wishes());
    fs::remove_all(folder_ / "home" / "thumbnails");
    const auto photo = book_.photos()->front();
    const auto small = book_.thumbnail(photo);
    ASSERT_TRUE(small) << small.error().message;
    EXPECT_TRUE(fs::exists(*small));
}

TEST_F(PhotoImport, LeavesHiddenFilesAndOthersAlone)
{
    write(".hidden.jpg", jpeg(1));
    write(".folder/a.jpg", jpeg(2));
    write("notes.txt", {1, 2, 3});
    write("deep/er/B.JPEG", jpeg(3));
    EXPECT_THAT(*photo_files_in(inbox()), testing::ElementsAre(inbox() / "deep/er/B.JPEG"));
    EXPECT_EQ(photo_files_in(inbox() / "none").error().code, ErrorCode::NotFound);
}

TEST_F(PhotoImport, WatchedFolderGivesAFileOnceItHasSettled)
{
    FolderWatch watch{inbox()};
    const auto file = write("a.jpg", photo::Bytes(10));
    EXPECT_TRUE(watch.settled()->empty());
    write("a.jpg", photo::Bytes(20)); // Still being copied.
    EXPECT_TRUE(watch.settled()->empty());
    EXPECT_THAT(*watch.settled(), testing::ElementsAre(file));
    EXPECT_TRUE(watch.settled()->empty());
    write("a.jpg", photo::Bytes(30)); // Another file of the same name.
    EXPECT_TRUE(watch.settled()->empty());
    EXPECT_THAT(*watch.settled(), testing::ElementsAre(file));
}

TEST_F(PhotoImport, FindsThePlantInTheFilesName)
{
    auto plants = household_.plants;
    plants[0].name = "Old Lemon";
    plants[1].name = "Lemon";
    EXPECT_EQ(plant_by_name("{plant}_*", "old-lemon_2026.jpg", plants), plants[0].id);
    EXPECT_EQ(plant_by_name("*_{plant}", "2026_LEMON.JPG", plants), plants[1].id);
    EXPECT_EQ(plant_by_name("{plant}", "Old Lemon.png", plants), plants[0].id);
    EXPECT_EQ(plant_by_name("{plant}_*", "rose_1.jpg", plants), std::nullopt);
    EXPECT_EQ(plant_by_name("no place", "lemon.jpg", plants), std::nullopt);
}

TEST_F(PhotoImport, ExportedPhotosDoNotSayWhereTheyWereTaken)
{
    write("a.jpg", jpeg(1));
    auto with = wishes();
    with.plants = [&](const fs::path&) { return std::vector{plant(0)}; };
    import(with);
    const auto photos = book_.photos().value();
    for (const auto position : {PhotoPosition::IsTakenOut, PhotoPosition::Stays}) {
        const auto folder = folder_ / (position == PhotoPosition::Stays ? "with" : "without");
        const auto report = export_photos(book_, household_, photos, folder, position, {}, cancel_);
        ASSERT_TRUE(report) << report.error().message;
        ASSERT_EQ(report->files.size(), 1U);
        EXPECT_TRUE(report->files.front().filename().string().starts_with("2026-05-30_"));
        const auto bytes = photo::read_bytes(report->files.front()).value();
        const auto facts = photo::read_facts(bytes, "exported").value();
        EXPECT_EQ(facts.exif.position.has_value(), position == PhotoPosition::Stays);
        EXPECT_EQ(bytes == jpeg(1), position == PhotoPosition::Stays);
    }
}

TEST_F(PhotoImport, PhotosStandBesideEachOtherByTheirTime)
{
    write("a.jpg", jpeg(1));
    write("b.jpg", jpeg(2));
    import(wishes());
    auto photos = book_.photos().value();
    ASSERT_EQ(photos.size(), 2U);
    std::ranges::reverse(photos);
    const auto file_of = [&](const home::Photo& photo) -> Result<fs::path> { return book_.file_of(photo); };
    const auto file = folder_ / "strip.jpg";
    const auto shown = write_photo_sheet(photos, file_of, file, {.height = 120, .columns = 2});
    ASSERT_TRUE(shown) << shown.error().message;
    ASSERT_EQ(shown->size(), 2U);
    EXPECT_LE(shown->at(0).taken, shown->at(1).taken);
    const auto bytes = photo::read_bytes(file).value();
    const auto facts = photo::read_facts(bytes, "strip").value();
    EXPECT_FALSE(facts.exif.position) << "the photos have one";
    const auto strip = photo::read_photo(bytes, "strip", 5000);
    ASSERT_TRUE(strip);
    EXPECT_GE(strip->picture.height, 120);
    EXPECT_GT(strip->picture.width, strip->picture.height);
    EXPECT_EQ(write_photo_sheet({}, file_of, file).error().code, ErrorCode::NotFound);
    EXPECT_FALSE(write_photo_sheet(photos, file_of, folder_ / "no" / "where.jpg"));
    auto hair = photos;
    hair.front().width = 40'000; // Thirty gigabytes once it is as high as the others.
    hair.front().height = 1;
    const auto refused = write_photo_sheet(hair, file_of, file);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    fs::remove(book_.file_of(photos[0]));
    EXPECT_FALSE(write_photo_sheet(photos, file_of, folder_ / "gone.jpg"));
    EXPECT_FALSE(fs::exists(folder_ / "gone.jpg"));
}

TEST_F(PhotoImport, ExportGoesOnAfterAPhotoThatIsGoneAndStopsWhereItIsTold)
{
    write("a.jpg", jpeg(1));
    write("b.jpg", jpeg(2));
    import(wishes());
    const auto photos = book_.photos().value();
    ASSERT_EQ(photos.size(), 2U);
    fs::remove(book_.file_of(photos[0]));
    std::size_t told = 0;
    const auto report = export_photos(book_, household_, photos, folder_ / "out", PhotoPosition::Stays,
                                      [&](std::size_t done, std::size_t) { told = done; }, cancel_);
    ASSERT_TRUE(report) << report.error().message;
    EXPECT_EQ(report->files.size(), 1U);
    ASSERT_EQ(report->refused.size(), 1U);
    EXPECT_NE(report->refused.front().text.find(photos[0].sha256), std::string::npos);
    EXPECT_EQ(told, 2U);
    write("file", {});
    EXPECT_EQ(export_photos(book_, household_, photos, inbox() / "file", PhotoPosition::Stays, {}, cancel_).error().code,
              ErrorCode::Unwritable);
    fs::create_directories(folder_ / "taken" / report->files.front().filename()); // A folder has its name.
    EXPECT_FALSE(export_photos(book_, household_, photos, folder_ / "taken", PhotoPosition::Stays, {}, cancel_));
    cancel_ = true;
    const auto stopped = export_photos(book_, household_, photos, folder_ / "none", PhotoPosition::Stays, {}, cancel_);
    ASSERT_TRUE(stopped);
    EXPECT_TRUE(stopped->cancelled);
    EXPECT_TRUE(stopped->files.empty());
}

TEST_F(PhotoImport, WithAPlantThatIsNotThereAddsNothing)
{
    write("a.jpg", jpeg(1));
    auto with = wishes();
    with.plants = [](const fs::path&) { return std::vector{9999}; };
    const auto report = import(with);
    ASSERT_TRUE(report.stopped);
    EXPECT_EQ(report.stopped->code, ErrorCode::NotFound);
    EXPECT_TRUE(book_.photos()->empty());
}

TEST_F(PhotoImport, AnyBytesMayNameAFile)
{
    write("caf\xE9 \xC3\xA9 \xE2\x82.jpg", jpeg(1)); // Latin-1, UTF-8, and half a sign.
    EXPECT_EQ(import(wishes()).count(ImportOutcome::Added), 1U);
    EXPECT_EQ(book_.photos()->front().original_name, "caf? \xC3\xA9 ??.jpg");
}

} // namespace
} // namespace lathhouse::journal
