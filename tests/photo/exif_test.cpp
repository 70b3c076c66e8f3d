#include "core/base/csv.h"
#include "core/photo/exif.h"
#include "core/photo/photo_file.h"
#include "tests/photo/sample_photos.h"

#include <gtest/gtest.h>

namespace lathhouse::photo {
namespace {

TEST(ExifBlock, GivesBackWhatWasPutIn)
{
    const auto exif = sample_exif();
    const auto block = make_exif(exif);
    const auto read = read_exif(block);
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(read->taken, exif.taken);
    EXPECT_EQ(read->zone_offset, exif.zone_offset);
    EXPECT_EQ(read->camera, exif.camera);
    EXPECT_FALSE(read->damaged);
    ASSERT_TRUE(read->position);
    EXPECT_NEAR(read->position->latitude.degrees(), -33.5, 1e-8);
    EXPECT_NEAR(read->position->longitude.degrees(), 151.25, 1e-8);
}

TEST(ExifBlock, KeepsEveryOrientation)
{
    for (int orientation = 1; orientation <= 8; ++orientation) {
        Exif exif;
        exif.orientation = orientation;
        EXPECT_EQ(read_exif(make_exif(exif))->orientation, orientation);
    }
}

TEST(ExifBlock, KeepsAZoneWestOfGreenwich)
{
    auto exif = sample_exif();
    exif.zone_offset = std::chrono::minutes{-210};
    EXPECT_EQ(read_exif(make_exif(exif))->zone_offset, std::chrono::minutes{-210});
}

TEST(ExifBlock, IsNeverReadBeyondItsEnd)
{
    const auto block = make_exif(sample_exif());
    for (std::size_t length = 0; length < block.size(); ++length) {
        const auto read = read_exif(ByteView{block}.first(length));
        ASSERT_TRUE(read || read.error().code == ErrorCode::Malformed) << length;
    }
}

TEST(ExifBlock, SurvivesAnyByteBeingWrong)
{
    const auto sound = make_exif(sample_exif());
    for (std::size_t at = 0; at < sound.size(); ++at) {
        for (const int wrong : {0x00, 0x01, 0x7F, 0xFF}) {
            auto block = sound;
            block[at] = static_cast<std::uint8_t>(wrong);
            const auto read = read_exif(block);
            ASSERT_TRUE(read || read.error().code == ErrorCode::Malformed) << at;
        }
    }
}

TEST(ExifBlock, IsRefusedWhereItLeadsInACircle)
{
    auto block = make_exif(Exif{});
    // One entry: its directory's link to the next one lies at 8 + 2 + 12, and leads back to 8.
    block[22] = 8;
    const auto read = read_exif(block);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::Malformed);
    EXPECT_NE(read.error().message.find("circle"), std::string::npos);
}

TEST(ExifBlock, IsRefusedWhereItLeadsOnAndOn)
{
    // Directories without an entry, each six bytes with its link to the next.
    for (const std::size_t count : {std::size_t{100}, std::size_t{101}, std::size_t{100'000}}) {
        Bytes block{'I', 'I', 42, 0, 8, 0, 0, 0};
        for (std::size_t directory = 1; directory <= count; ++directory) {
            const auto next = directory == count ? 0U : static_cast<std::uint32_t>(8 + 6 * directory);
            block.insert(block.end(), {0, 0});
            for (int byte = 0; byte < 4; ++byte) {
                block.push_back(static_cast<std::uint8_t>(next >> 8 * byte));
            }
        }
        const auto read = read_exif(block);
        ASSERT_EQ(read.has_value(), count == 100) << count;
        if (!read) {
            EXPECT_EQ(read.error().code, ErrorCode::Malformed);
        }
    }
}

TEST(ExifBlock, WithoutSenseIsDamaged)
{
    const Bytes rubbish(64, 0x41);
    EXPECT_TRUE(read_exif(rubbish)->damaged);
    EXPECT_TRUE(read_exif({})->damaged);
}

TEST(LocalTime, IsReadAndWritten)
{
    EXPECT_EQ(to_text(*parse_local_time("2026-02-28T23:59:58")), "2026-02-28T23:59:58");
    EXPECT_EQ(to_text(*parse_local_time("2026-02-28")), "2026-02-28T12:00:00");
    for (const char* wrong : {"", "2026-02-30T10:00:00", "2026-02-28 10:00:00", "2026-02-28T25:00:00", "2026-02-28T10:00",
                              "2026-02-28T1a:00:00", "2026-02-28T", "2026-02-28T10:0:000"}) {
        EXPECT_FALSE(parse_local_time(wrong)) << wrong;
    }
}

/// Samples as the public reader exiv2 sees them; the folder is not shipped.
class OutsideSamples : public testing::Test {
protected:
    std::filesystem::path folder_ = std::filesystem::path{LATHHOUSE_CHECKS} / "exif";
    void SetUp() override
    {
        if (!std::filesystem::exists(folder_ / "expected.csv")) {
            GTEST_SKIP() << "needs the outside check values (LATHHOUSE_CHECKS_DIR)";
        }
    }
};

TEST_F(OutsideSamples, HaveTheDatesAndOrientationsOfAPublicReader)
{
    const auto expected = CsvTable::read(folder_ / "expected.csv").value();
    int compared = 0;
    for (std::size_t row = 0; row < expected.row_count(); ++row) {
        const auto name = expected.at(row, 0);
        auto time = expected.at(row, 3); // DateTime
        if (!name.starts_with("f")) {
            continue;
        }
        time[4] = time[7] = '-';
        time[10] = 'T';
        const auto facts = read_facts(read_bytes(folder_ / name).value(), name);
        ASSERT_TRUE(facts) << name << ": " << facts.error().message;
        EXPECT_EQ(std::to_string(facts->exif.orientation), expected.at(row, 4)) << name;
        ASSERT_TRUE(facts->exif.taken) << name;
        EXPECT_EQ(to_text(*facts->exif.taken), time) << name;
        ++compared;
    }
    EXPECT_EQ(compared, 8);
}

TEST_F(OutsideSamples, OfEightOrientationsAreOnePictureOnceUpright)
{
    const auto first = read_photo(read_bytes(folder_ / "f1-exif.jpg").value(), "f1").value().picture;
    for (int i = 2; i <= 8; ++i) {
        const auto name = "f" + std::to_string(i) + "-exif.jpg";
        const auto photo = read_photo(read_bytes(folder_ / name).value(), name).value();
        ASSERT_EQ(photo.picture.width, first.width) << name;
        ASSERT_EQ(photo.picture.height, first.height) << name;
        EXPECT_EQ(photo.facts.width, first.width) << name;
        double difference = 0.0;
        for (std::size_t k = 0; k < first.rgb.size(); ++k) {
            difference += std::abs(int{photo.picture.rgb[k]} - int{first.rgb[k]});
        }
        // Each was packed by itself, so that edges differ a little; a wrong turn differs by more than 30.
        EXPECT_LT(difference / static_cast<double>(first.rgb.size()), 6.0) << name;
    }
}

TEST_F(OutsideSamples, ThatTrapReadersAreRefusedByName)
{
    const auto looped = read_facts(read_bytes(folder_ / "goexif_infinite_loop_exif.jpg").value(), "trap.jpg");
    ASSERT_FALSE(looped);
    EXPECT_EQ(looped.error().code, ErrorCode::Malformed);
    EXPECT_NE(looped.error().message.find("trap.jpg"), std::string::npos);
    const auto broken = read_photo(read_bytes(folder_ / "goexif_2006-08-03.jpg").value(), "broken.jpg");
    ASSERT_FALSE(broken);
    EXPECT_NE(broken.error().message.find("broken.jpg"), std::string::npos);
}

} // namespace
} // namespace lathhouse::photo
