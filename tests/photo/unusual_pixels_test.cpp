#include "core/photo/photo_file.h"

#include <gtest/gtest.h>
#include <webp/encode.h>

#include <cstdio> // Before jpeglib.h, which needs it.
#include <cstdlib>

#include <jpeglib.h>

namespace lathhouse::photo {
namespace {

constexpr int kSide = 16;

/// One colour everywhere, in the four inks of printers.
Bytes jpeg_of_inks(std::array<JSAMPLE, 4> inks)
{
    jpeg_compress_struct info{};
    jpeg_error_mgr errors{};
    info.err = jpeg_std_error(&errors);
    jpeg_create_compress(&info);
    unsigned char* out = nullptr;
    unsigned long size = 0;
    jpeg_mem_dest(&info, &out, &size);
    info.image_width = kSide;
    info.image_height = kSide;
    info.input_components = 4;
    info.in_color_space = JCS_CMYK;
    jpeg_set_defaults(&info);
    jpeg_set_quality(&info, 100, TRUE);
    info.write_Adobe_marker = FALSE;
    jpeg_start_compress(&info, TRUE);
    std::vector<JSAMPLE> row;
    for (int x = 0; x < kSide; ++x) {
        row.insert(row.end(), inks.begin(), inks.end());
    }
    for (int y = 0; y < kSide; ++y) {
        JSAMPROW line = row.data();
        jpeg_write_scanlines(&info, &line, 1);
    }
    jpeg_finish_compress(&info);
    jpeg_destroy_compress(&info);
    Bytes file(out, out + size);
    std::free(out);
    return file;
}

TEST(UnusualPixels, InksOfPrintersBecomeLight)
{
    // No cyan, much magenta, some black: (255 - ink) (255 - black) / 255, the usual naive turn.
    const auto photo = read_photo(jpeg_of_inks({0, 200, 255, 51}), "a.jpg");
    ASSERT_TRUE(photo) << photo.error().message;
    ASSERT_EQ(photo->picture.width, kSide);
    const auto* pixel = photo->picture.at(8, 8);
    EXPECT_NEAR(pixel[0], 204, 2);
    EXPECT_NEAR(pixel[1], 44, 2);
    EXPECT_NEAR(pixel[2], 0, 2);
}

TEST(UnusualPixels, WhatIsSeenThroughStandsOnWhite)
{
    std::vector<std::uint8_t> rgba;
    for (int i = 0; i < kSide * kSide; ++i) {
        rgba.insert(rgba.end(), {200, 100, 0, static_cast<std::uint8_t>(i < kSide * kSide / 2 ? 0 : 128)});
    }
    std::uint8_t* out = nullptr;
    const auto size = WebPEncodeLosslessRGBA(rgba.data(), kSide, kSide, kSide * 4, &out);
    ASSERT_GT(size, 0U);
    const Bytes file(out, out + size);
    WebPFree(out);
    const auto photo = read_photo(file, "a.webp");
    ASSERT_TRUE(photo) << photo.error().message;
    for (int channel = 0; channel < 3; ++channel) {
        EXPECT_EQ(photo->picture.at(3, 2)[channel], 255);
    }
    const auto* pixel = photo->picture.at(3, 12);
    EXPECT_NEAR(pixel[0], 227, 1); // 200 x 128/255 + 255 x 127/255.
    EXPECT_NEAR(pixel[1], 177, 1);
    EXPECT_NEAR(pixel[2], 127, 1);
}

TEST(UnusualPixels, CutOffFileOfAnyFormIsASentence)
{
    auto file = jpeg_of_inks({0, 0, 0, 0});
    file.resize(file.size() / 3);
    EXPECT_EQ(read_photo(file, "a.jpg").error().code, ErrorCode::Malformed);
}

} // namespace
} // namespace lathhouse::photo
