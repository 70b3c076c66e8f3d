#include "core/photo/photo_file.h"

#include "core/photo/drawn_plant.h"
#include "core/photo/encode.h"
#include "core/photo/greenness.h"
#include "core/photo/resize.h"
#include "core/photo/thumbnail.h"
#include "tests/journal/temporary_folder.h"
#include "tests/photo/sample_photos.h"

#include <gtest/gtest.h>

namespace lathhouse::photo {
namespace {

double mean_difference(const Picture& a, const Picture& b)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < a.rgb.size(); ++i) {
        sum += std::abs(int{a.rgb[i]} - int{b.rgb[i]});
    }
    return sum / static_cast<double>(a.rgb.size());
}

TEST(PhotoFile, GivesPngAndWebPToTheBit)
{
    const auto drawn = drawn_plant(61, 40);
    for (const auto& file : {encode_png(drawn).value(), webp_of(drawn)}) {
        const auto photo = read_photo(file, "x");
        ASSERT_TRUE(photo) << photo.error().message;
        EXPECT_EQ(photo->picture.rgb, drawn.rgb);
    }
}

TEST(PhotoFile, GivesJpegWithinItsLoss)
{
    const auto drawn = drawn_plant(160, 120);
    const auto photo = read_photo(encode_jpeg(drawn, 95).value(), "x.jpg");
    ASSERT_TRUE(photo);
    EXPECT_LT(mean_difference(photo->picture, drawn), 3.0);
}

TEST(PhotoFile, GivesHeicWithItsDate)
{
    const auto file = heic_of(drawn_plant(128, 96), make_exif(sample_exif()));
    if (file.empty()) {
        GTEST_SKIP() << "needs a HEIC encoder in libheif";
    }
    const auto photo = read_photo(file, "x.heic");
    ASSERT_TRUE(photo) << photo.error().message;
    EXPECT_EQ(photo->facts.format, PhotoFormat::Heic);
    EXPECT_EQ(photo->facts.width, 128);
    EXPECT_EQ(photo->facts.exif.taken, sample_exif().taken);
    EXPECT_TRUE(photo->facts.exif.position);
    EXPECT_LT(mean_difference(photo->picture, drawn_plant(128, 96)), 8.0);
}

TEST(PhotoFile, IsUprightForEveryOrientation)
{
    // A mark in one corner of the upright picture, put where each orientation has it stored.
    struct Corner {
        int orientation;
        bool right;
        bool below;
    };
    for (const auto& stored : {Corner{1, false, false}, Corner{2, true, false}, Corner{3, true, true},
                               Corner{4, false, true}, Corner{5, false, false}, Corner{6, false, true},
                               Corner{7, true, true}, Corner{8, true, false}}) {
        Picture picture{64, 32, 255};
        for (int y = 0; y < 8; ++y) {
            for (int x = 0; x < 8; ++x) {
                std::fill_n(picture.at(stored.right ? 63 - x : x, stored.below ? 31 - y : y), 3, std::uint8_t{0});
            }
        }
        Exif exif;
        exif.orientation = stored.orientation;
        const auto photo = read_photo(jpeg_with(picture, exif), "x.jpg").value();
        EXPECT_EQ(photo.picture.width, stored.orientation >= 5 ? 32 : 64);
        EXPECT_LT(*photo.picture.at(3, 3), 60) << stored.orientation;
    }
}

TEST(PhotoFile, IsUnpackedSmallerWhereThatIsEnough)
{
    const auto file = encode_jpeg(drawn_plant(1600, 1200)).value();
    const auto small = read_photo(file, "x.jpg", 512);
    ASSERT_TRUE(small);
    EXPECT_LE(small->picture.width, 512);
    EXPECT_GE(small->picture.width, 384);
    EXPECT_EQ(small->facts.width, 1600);
}

TEST(PhotoFile, BreakingOffAnywhereIsSaid)
{
    const auto drawn = drawn_plant(200, 150);
    for (const auto& file : {encode_jpeg(drawn).value(), encode_png(drawn).value(), webp_of(drawn)}) {
        for (std::size_t part = 0; part < 19; ++part) {
            const auto cut = file.size() * part / 20;
            const auto photo = read_photo(ByteView{file}.first(cut), "half.jpg");
            ASSERT_FALSE(photo) << part << " of 20 parts of " << file.size();
            EXPECT_NE(photo.error().message.find("half.jpg"), std::string::npos);
        }
    }
}

TEST(PhotoFile, WithWrongBytesNeverCrashes)
{
    const auto drawn = drawn_plant(48, 32);
    const auto heic = heic_of(drawn, make_exif(sample_exif()));
    unsigned seed = 7;
    for (const auto& file : {jpeg_with(drawn, sample_exif()), encode_png(drawn).value(), webp_of(drawn), heic}) {
        for (int round = 0; round < 200 && !file.empty(); ++round) {
            auto wrong = file;
            for (int k = 0; k < 3; ++k) {
                seed = seed * 1664525U + 1013904223U;
                wrong[(seed >> 8) % wrong.size()] = static_cast<std::uint8_t>(seed);
            }
            const auto photo = read_photo(wrong, "x", {}, {.file_bytes = 1 << 20, .pixels = 1'000'000});
            EXPECT_TRUE(photo || !photo.error().message.empty());
        }
    }
}

TEST(PhotoFile, ThatUnpacksToTooMuchIsRefusedByItsHead)
{
    auto bomb = encode_png(drawn_plant(8, 8)).value();
    const auto put = [&](std::size_t at, std::uint32_t number) {
        for (std::size_t i = 0; i < 4; ++i) {
            bomb[at + i] = static_cast<std::uint8_t>(number >> (24 - 8 * i));
        }
    };
    put(16, 12'000);
    put(20, 11'000);
    std::uint32_t sum = 0xFFFFFFFF; // The head's checksum, by annex D of the PNG standard.
    for (std::size_t i = 12; i < 29; ++i) {
        sum ^= bomb[i];
        for (int bit = 0; bit < 8; ++bit) {
            sum = (sum & 1) != 0 ? 0xEDB88320 ^ sum >> 1 : sum >> 1;
        }
    }
    put(29, ~sum);
    const auto refused = read_photo(bomb, "bomb.png");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(refused.error().message.find("12000 x 11000"), std::string::npos);
}

TEST(PhotoFile, OfAnotherKindIsRefused)
{
    const std::string text = "GIF89a, and then nothing of use";
    const auto refused = read_facts(ByteView{reinterpret_cast<const std::uint8_t*>(text.data()), text.size()}, "x.jpg");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Malformed);
}

class PhotoOnDisk : public journal::WithFolder {};

TEST_F(PhotoOnDisk, IsReadOnlyWhereItIsAFileOfSize)
{
    EXPECT_EQ(read_bytes(folder_ / "none.jpg").error().code, ErrorCode::NotFound);
    EXPECT_EQ(read_bytes(folder_).error().code, ErrorCode::Unreadable);
    write_bytes(folder_ / "empty.jpg", {});
    EXPECT_EQ(read_bytes(folder_ / "empty.jpg").error().code, ErrorCode::Malformed);
    write_bytes(folder_ / "large.jpg", Bytes(100));
    EXPECT_EQ(read_bytes(folder_ / "large.jpg", {.file_bytes = 99}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(read_bytes(folder_ / "large.jpg", {.file_bytes = 100})->size(), 100U);
}

TEST_F(PhotoOnDisk, IsWrittenInTheFormThatItsNameSays)
{
    const auto drawn = drawn_plant(64, 48);
    for (const char* name : {"a.jpg", "b.JPEG", "c.png"}) {
        ASSERT_TRUE(write_picture(folder_ / name, drawn)) << name;
        const auto read = read_photo(read_bytes(folder_ / name).value(), name);
        ASSERT_TRUE(read) << read.error().message;
        EXPECT_LT(mean_difference(read->picture, drawn), 6.0) << name;
    }
    EXPECT_EQ(read_photo(read_bytes(folder_ / "c.png").value(), "c.png")->picture.rgb, drawn.rgb);
    const auto other = write_picture(folder_ / "d.bmp", drawn);
    ASSERT_FALSE(other);
    EXPECT_EQ(other.error().code, ErrorCode::WrongUsage);
    EXPECT_FALSE(std::filesystem::exists(folder_ / "d.bmp"));
    EXPECT_EQ(write_picture(folder_ / "none/e.png", drawn).error().code, ErrorCode::Unwritable);
}

TEST(Thumbnail, IsSmallUprightAndSaysNothingOfThePlace)
{
    auto exif = sample_exif();
    exif.orientation = 6;
    const auto small = thumbnail_of(jpeg_with(drawn_plant(1200, 800), exif), "x.jpg");
    ASSERT_TRUE(small);
    const auto read = read_photo(small->jpeg, "small").value();
    EXPECT_GT(read.picture.height, read.picture.width);
    EXPECT_LE(read.picture.height, kThumbnailSide);
    EXPECT_FALSE(read.facts.exif.position);
}

TEST(DrawnPlants, OfEveryFormAreGreenInTheirOutlineAndReachTheirHeight)
{
    for (const auto form : {DrawnForm::Tree, DrawnForm::Bush, DrawnForm::Blades, DrawnForm::Arching}) {
        DrawnPlant plant;
        plant.form = form;
        plant.height_cm = 45.0;
        plant.leaves = 60;
        const auto picture = lathhouse::photo::drawn_plant(plant, 320, 240);
        EXPECT_EQ(picture.rgb, lathhouse::photo::drawn_plant(plant, 320, 240).rgb); // The same plant, to the bit.
        const auto places = drawn_places(plant, 320, 240, plant.height_cm);
        const auto region = Region::outline(places.crown, 320, 240);
        ASSERT_TRUE(region) << static_cast<int>(form);
        EXPECT_GT(green_cover(picture, *region).share(), 0.02) << static_cast<int>(form);
        const double per_cm = (places.ruler_bottom.y - places.ruler_top.y) / kDrawnRulerCm;
        EXPECT_NEAR((places.rim.y - places.top.y) / per_cm, plant.height_cm, 1.5) << static_cast<int>(form);
        plant.yellow_share = 0.9;
        const auto yellow = lathhouse::photo::drawn_plant(plant, 320, 240);
        EXPECT_LT(green_cover(yellow, *region).share(), green_cover(picture, *region).share()) << static_cast<int>(form);
    }
}

TEST(Resized, KeepsTheMean)
{
    const auto drawn = drawn_plant(301, 200);
    const auto small = resized(drawn, 97, 41);
    const auto mean = [](const Picture& picture) {
        double sum = 0.0;
        for (const auto value : picture.rgb) {
            sum += value;
        }
        return sum / static_cast<double>(picture.rgb.size());
    };
    EXPECT_NEAR(mean(small), mean(drawn), 0.2); // Rounding of each pixel.
}

TEST(PhotoFile, IsNamedByItsForm)
{
    EXPECT_EQ(extension_of(PhotoFormat::Jpeg), "jpg");
    EXPECT_EQ(extension_of(PhotoFormat::Png), "png");
    EXPECT_EQ(extension_of(PhotoFormat::WebP), "webp");
    EXPECT_EQ(extension_of(PhotoFormat::Heic), "heic");
}

} // namespace
} // namespace lathhouse::photo
