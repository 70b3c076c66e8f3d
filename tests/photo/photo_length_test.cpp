#include "core/photo/photo_length.h"
#include "core/photo/picture_sheet.h"
#include "core/photo/scale_card.h"
#include "tests/photo/sample_photos.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::photo {
namespace {

Scale scale_of(double pixels, double metres)
{
    return {{{10, 10}, {10 + pixels, 10}}, Metres::from_metres(metres)};
}

Result<PhotoLength> measured(const std::vector<Stretch>& lengths, const std::vector<Scale>& scales)
{
    return length_of(lengths, scales);
}

TEST(PhotoLength, IsInTheRatioOfTheScale)
{
    const Stretch plant{{100, 100}, {400, 500}}; // 500 pixels.
    const auto length = measured({plant}, {scale_of(250, 0.14)});
    ASSERT_TRUE(length);
    EXPECT_NEAR(length->mean.metres(), 0.28, 1e-12);
    EXPECT_FALSE(length->one_reading);
}

TEST(PhotoLength, LearnsItsErrorFromRepeats)
{
    const std::vector<Stretch> repeats{{{0, 0}, {100, 0}}, {{0, 0}, {102, 0}}, {{0, 0}, {98, 0}}};
    const auto length = measured(repeats, {scale_of(100, 0.10)});
    ASSERT_TRUE(length);
    EXPECT_EQ(length->readings.size(), 3U);
    EXPECT_NEAR(length->mean.metres(), 0.10, 1e-12);
    EXPECT_NEAR(length->one_reading->metres(), 0.002, 1e-12);
    EXPECT_NEAR(length->real_change()->metres(), 0.00554, 1e-12);
}

TEST(PhotoLength, TakesEachScaleWithItsLengthWhereThereAreAsMany)
{
    const std::vector<Stretch> lengths{{{0, 0}, {100, 0}}, {{0, 0}, {200, 0}}};
    const std::vector<Scale> scales{scale_of(50, 0.10), scale_of(100, 0.10)};
    const auto length = length_of(lengths, scales);
    EXPECT_NEAR(length->mean.metres(), 0.20, 1e-12);
    EXPECT_NEAR(length->one_reading->metres(), 0.0, 1e-12);
}

TEST(PhotoLength, NeedsPointsThatLieApart)
{
    const Stretch none{{5, 5}, {5, 5}};
    const Stretch some{{5, 5}, {50, 5}};
    EXPECT_EQ(measured({none}, {scale_of(100, 0.1)}).error().code, ErrorCode::WrongUsage);
    EXPECT_EQ(measured({some}, {scale_of(0, 0.1)}).error().code, ErrorCode::WrongUsage);
    EXPECT_EQ(measured({}, {scale_of(100, 0.1)}).error().code, ErrorCode::WrongUsage);
    EXPECT_EQ(measured({some}, {}).error().code, ErrorCode::WrongUsage);
    for (const double metres : {0.0, -0.1, 11.0, std::nan("")}) {
        EXPECT_EQ(measured({some}, {scale_of(100, metres)}).error().code, ErrorCode::OutOfRange);
    }
}

TEST(ScaleCard, IsTrueToTheMillimetre)
{
    const auto svg = scale_card_svg();
    EXPECT_NE(svg.find("width=\"130mm\" height=\"80mm\" viewBox=\"0 0 130 80\""), std::string::npos);
    std::size_t marks = 0;
    for (auto at = svg.find("<line"); at != std::string::npos; at = svg.find("<line", at + 1)) {
        ++marks;
    }
    EXPECT_EQ(marks, 102U); // 0 to 100 millimetres, and the line under them.
    EXPECT_NE(svg.find("<circle cx=\"15\""), std::string::npos);
    EXPECT_NE(svg.find("<circle cx=\"115\""), std::string::npos);
}

TEST(PictureSheet, SetsPicturesOfOneHeightBesideEachOther)
{
    const std::vector<Captioned> pair{{drawn_plant(300, 200), "2026-05-30"}, {drawn_plant(200, 400), "2026-06-20  +21 d"}};
    const auto sheet = picture_sheet(pair, 160, 2);
    EXPECT_GT(sheet.width, 240 + 80);
    EXPECT_GT(sheet.height, 160);
    EXPECT_LT(sheet.height, 220);
    EXPECT_EQ(*sheet.at(0, 0), 255);
    // Something is written under the first picture.
    int ink = 0;
    for (int y = 8 + 160; y < sheet.height; ++y) {
        for (int x = 0; x < 80; ++x) {
            ink += *sheet.at(x, y) < 128 ? 1 : 0;
        }
    }
    EXPECT_GT(ink, 50);
}

TEST(PictureSheet, GoesOnInANewRow)
{
    const std::vector<Captioned> five(5, Captioned{drawn_plant(100, 100), ""});
    const auto one_row = picture_sheet(five, 100, 5);
    const auto three_rows = picture_sheet(five, 100, 2);
    EXPECT_GT(three_rows.height, 300);
    EXPECT_LT(three_rows.width, one_row.width);
}

} // namespace
} // namespace lathhouse::photo
