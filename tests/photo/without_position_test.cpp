#include "core/photo/without_position.h"
#include "tests/photo/sample_photos.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::photo {
namespace {

bool holds(const Bytes& file, std::string_view text)
{
    return !std::ranges::search(file, text, [](std::uint8_t byte, char letter) {
                return byte == static_cast<std::uint8_t>(letter);
            }).empty();
}

/// A JPEG segment of that marker.
Bytes segment(std::uint8_t marker, const std::string& content)
{
    const auto length = content.size() + 2;
    Bytes bytes{0xFF, marker, static_cast<std::uint8_t>(length >> 8), static_cast<std::uint8_t>(length)};
    bytes.insert(bytes.end(), content.begin(), content.end());
    return bytes;
}

void check_plain(const Bytes& file, const Bytes& plain)
{
    const auto before = read_photo(file, "before").value();
    const auto after = read_photo(plain, "after");
    ASSERT_TRUE(after) << after.error().message;
    EXPECT_EQ(after->picture.rgb, before.picture.rgb);
    EXPECT_TRUE(before.facts.exif.position);
    EXPECT_FALSE(after->facts.exif.position);
    EXPECT_EQ(after->facts.exif.taken, before.facts.exif.taken);
    EXPECT_EQ(after->facts.exif.orientation, before.facts.exif.orientation);
}

TEST(WithoutPosition, LeavesTheJpegsPixelsToTheBit)
{
    auto exif = sample_exif();
    exif.orientation = 8;
    const auto file = jpeg_with(drawn_plant(320, 200), exif);
    const auto plain = without_position(file, "x.jpg");
    ASSERT_TRUE(plain) << plain.error().message;
    check_plain(file, *plain);
}

TEST(WithoutPosition, TakesEveryOtherPartThatMaySayItToo)
{
    const auto sound = jpeg_with(drawn_plant(64, 64), sample_exif());
    Bytes file{sound.begin(), sound.begin() + 2};
    for (const auto& part : {segment(0xE1, std::string{"http://ns.adobe.com/xap/1.0/\0PLACE-XMP", 38}),
                             segment(0xED, "Photoshop 3.0 PLACE-CAPTION"), segment(0xFE, "PLACE-COMMENT")}) {
        file.insert(file.end(), part.begin(), part.end());
    }
    file.insert(file.end(), sound.begin() + 2, sound.end());
    const std::string behind = "PLACE-BEHIND";
    file.insert(file.end(), behind.begin(), behind.end());
    const auto plain = without_position(file, "x.jpg");
    ASSERT_TRUE(plain) << plain.error().message;
    check_plain(file, *plain);
    EXPECT_TRUE(holds(file, "PLACE"));
    EXPECT_FALSE(holds(*plain, "PLACE"));
}

TEST(WithoutPosition, LeavesThePngsPixelsToTheBit)
{
    const auto sound = encode_png(drawn_plant(50, 40)).value();
    // An eXIf chunk as a phone writes it, behind the head (8 + 25 bytes); its checksum is not looked at by readers of
    // chunks they pass over.
    const auto block = make_exif(sample_exif());
    Bytes file{sound.begin(), sound.begin() + 33};
    const Bytes head{0, 0, static_cast<std::uint8_t>(block.size() >> 8), static_cast<std::uint8_t>(block.size()),
                     'e', 'X', 'I', 'f'};
    file.insert(file.end(), head.begin(), head.end());
    file.insert(file.end(), block.begin(), block.end());
    file.insert(file.end(), 4, 0);
    file.insert(file.end(), sound.begin() + 33, sound.end());
    const auto plain = without_position(file, "x.png");
    ASSERT_TRUE(plain) << plain.error().message;
    check_plain(file, *plain);
}

TEST(WithoutPosition, LeavesTheWebPsPixelsToTheBit)
{
    const auto simple = webp_of(drawn_plant(50, 40));
    const auto block = make_exif(sample_exif());
    Bytes file{simple.begin(), simple.begin() + 12};
    // VP8X: flags (EXIF), three bytes of nothing, width - 1 and height - 1 in three bytes each.
    const Bytes extended{'V', 'P', '8', 'X', 10, 0, 0, 0, 0x08, 0, 0, 0, 49, 0, 0, 39, 0, 0};
    file.insert(file.end(), extended.begin(), extended.end());
    file.insert(file.end(), simple.begin() + 12, simple.end());
    const Bytes head{'E', 'X', 'I', 'F', static_cast<std::uint8_t>(block.size()), static_cast<std::uint8_t>(block.size() >> 8), 0, 0};
    file.insert(file.end(), head.begin(), head.end());
    file.insert(file.end(), block.begin(), block.end());
    file.resize(file.size() + block.size() % 2);
    for (int i = 0; i < 4; ++i) {
        file[static_cast<std::size_t>(4 + i)] = static_cast<std::uint8_t>((file.size() - 8) >> 8 * i);
    }
    const auto plain = without_position(file, "x.webp");
    ASSERT_TRUE(plain) << plain.error().message;
    check_plain(file, *plain);
}

TEST(WithoutPosition, LeavesTheHeicsPixelsToTheBit)
{
    const auto file = heic_of(drawn_plant(128, 96), make_exif(sample_exif()));
    if (file.empty()) {
        GTEST_SKIP() << "needs a HEIC encoder in libheif";
    }
    const auto plain = without_position(file, "x.heic");
    ASSERT_TRUE(plain) << plain.error().message;
    EXPECT_EQ(plain->size(), file.size());
    check_plain(file, *plain);
}

TEST(WithoutPosition, OfNoPhotoIsRefused)
{
    EXPECT_EQ(without_position(Bytes(50, 1), "x").error().code, ErrorCode::Malformed);
}

} // namespace
} // namespace lathhouse::photo
