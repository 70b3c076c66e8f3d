#include "core/photo/greenness.h"
#include "core/photo/leaf_colour.h"
#include "core/photo/photo_file.h"
#include "tests/photo/sample_photos.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace lathhouse::photo {
namespace {

TEST(Otsu, PartsTwoPeaksBetweenThem)
{
    Histogram histogram{};
    histogram[10] = 100;
    histogram[12] = 50;
    histogram[200] = 30;
    EXPECT_EQ(otsu_threshold(histogram), 12);
    EXPECT_GT(separation(histogram, 12), 0.99);
}

TEST(Otsu, OfOneValueIsZeroAndPartsNothing)
{
    Histogram histogram{};
    histogram[77] = 1000;
    EXPECT_EQ(otsu_threshold(histogram), 0);
    EXPECT_TRUE(std::isnan(separation(histogram, 0)));
}

TEST(Otsu, ExplainsThreeQuartersOfAnEvenSpread)
{
    // An even spread cut in the middle: variance between 1/16, within and between together 1/12 of the range squared.
    Histogram histogram{};
    histogram.fill(100);
    const int threshold = otsu_threshold(histogram);
    EXPECT_EQ(threshold, 127);
    EXPECT_NEAR(separation(histogram, threshold), 0.75, 0.001);
}

TEST(GreenCover, CountsADrawnDisc)
{
    const auto picture = drawn_plant(400, 300);
    const auto cover = green_cover(picture, Region::frame(400, 300));
    std::size_t drawn = 0;
    for (int y = 0; y < 300; ++y) {
        for (int x = 0; x < 400; ++x) {
            drawn += std::hypot(x + 0.5 - 200.0, y + 0.5 - 150.0) < 90.0 ? 1U : 0U;
        }
    }
    EXPECT_EQ(cover.green, drawn);
    EXPECT_NEAR(cover.share(), std::numbers::pi * 90 * 90 / (400 * 300), 0.001);
    EXPECT_GT(cover.separation, 0.95);
}

TEST(GreenCover, LooksOnlyIntoTheOutline)
{
    const auto picture = drawn_plant(400, 300);
    // The left half of the disc and of the bench.
    const std::vector<Point> half{{0, 0}, {200, 0}, {200, 300}, {0, 300}};
    const auto left = green_cover(picture, Region::outline(half, 400, 300).value());
    const auto all = green_cover(picture, Region::frame(400, 300));
    EXPECT_EQ(left.all, 60'000U);
    EXPECT_EQ(left.green, all.green / 2);
}

TEST(GreenCover, OfGreyIsNone)
{
    const auto cover = green_cover(Picture{50, 50, 128}, Region::frame(50, 50));
    EXPECT_EQ(cover.green, 0U);
    EXPECT_EQ(cover.threshold, 0);
}

TEST(GreenCover, IsThatOfTwoPublicLibraries)
{
    const auto file = std::filesystem::path{LATHHOUSE_CHECKS} / "green_synth.png";
    if (!std::filesystem::exists(file)) {
        GTEST_SKIP() << "needs the outside check values (LATHHOUSE_CHECKS_DIR)";
    }
    const auto photo = read_photo(read_bytes(file).value(), "green_synth.png").value();
    const auto cover = green_cover(photo.picture, Region::frame(photo.picture.width, photo.picture.height));
    // Two public libraries on the same values: threshold 40, 13,170 pixels, which is also how many were drawn.
    EXPECT_EQ(cover.threshold, 40);
    EXPECT_EQ(cover.green, 13'170U);
}

TEST(Outline, HoldsThePixelsWhoseMiddleLiesInside)
{
    const std::vector<Point> square{{1, 1}, {4, 1}, {4, 3}, {1, 3}};
    EXPECT_EQ(Region::outline(square, 10, 10)->pixels(), 6U);
    const std::vector<Point> whole{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    EXPECT_EQ(Region::outline(whole, 10, 10)->pixels(), 100U);
    const std::vector<Point> triangle{{0, 0}, {100, 0}, {0, 100}};
    EXPECT_NEAR(static_cast<double>(Region::outline(triangle, 100, 100)->pixels()), 5000.0, 50.0);
}

TEST(Outline, ThatCrossesItselfGoesByEvenAndOdd)
{
    // A bow tie: two triangles of a quarter of the square each.
    const std::vector<Point> bow{{0, 0}, {100, 100}, {100, 0}, {0, 100}};
    EXPECT_NEAR(static_cast<double>(Region::outline(bow, 100, 100)->pixels()), 5000.0, 110.0);
}

TEST(Outline, ThatHoldsNothingIsRefused)
{
    const std::vector<Point> two{{0, 0}, {5, 5}};
    EXPECT_EQ(Region::outline(two, 10, 10).error().code, ErrorCode::WrongUsage);
    const std::vector<Point> flat{{1, 1}, {9, 1}, {5, 1}};
    EXPECT_EQ(Region::outline(flat, 10, 10).error().code, ErrorCode::WrongUsage);
    const std::vector<Point> outside{{1, 1}, {11, 1}, {5, 8}};
    EXPECT_EQ(Region::outline(outside, 10, 10).error().code, ErrorCode::OutOfRange);
    const std::vector<Point> nothing{{std::nan(""), 1}, {9, 1}, {5, 8}};
    EXPECT_EQ(Region::outline(nothing, 10, 10).error().code, ErrorCode::OutOfRange);
}

Picture of_colour(std::uint8_t red, std::uint8_t green, std::uint8_t blue)
{
    Picture picture{10, 10};
    for (std::size_t i = 0; i < picture.pixels(); ++i) {
        picture.rgb[3 * i] = red;
        picture.rgb[3 * i + 1] = green;
        picture.rgb[3 * i + 2] = blue;
    }
    return picture;
}

TEST(LeafColours, TellYellowBrownAndGreenApart)
{
    const auto frame = Region::frame(10, 10);
    EXPECT_EQ(leaf_colours(of_colour(220, 200, 40), frame).yellow, 100U); // Yellow.
    EXPECT_EQ(leaf_colours(of_colour(120, 75, 30), frame).yellow, 100U);  // Brown.
    EXPECT_EQ(leaf_colours(of_colour(60, 140, 50), frame).green, 100U);
    for (const auto& neither : {of_colour(128, 128, 128), of_colour(60, 70, 200), of_colour(200, 40, 40),
                                of_colour(10, 8, 2), of_colour(250, 250, 235)}) {
        const auto colours = leaf_colours(neither, frame);
        EXPECT_EQ(colours.yellow + colours.green, 0U);
        EXPECT_FALSE(colours.yellow_of_leaf());
    }
}

TEST(WhiteBalance, TakesTheColourOfLampLightOut)
{
    // A neutral picture in light that has 1.6 times the red and half the blue.
    const auto lit = [](double light, double factor) {
        return static_cast<std::uint8_t>(std::lround(255.0 * stored_of(light * factor)));
    };
    const auto warm = of_colour(lit(0.2, 1.6), lit(0.2, 1.0), lit(0.2, 0.5));
    const auto balance = WhiteBalance::from_grey(warm, Region::frame(10, 10));
    ASSERT_TRUE(balance);
    const auto neutral = balance->applied(warm);
    const auto* pixel = neutral.at(5, 5);
    EXPECT_NEAR(pixel[0], pixel[1], 1); // Rounding of stored values.
    EXPECT_NEAR(pixel[2], pixel[1], 1);
    EXPECT_NEAR(balance->strength(), 3.2, 0.1);
    // A green leaf in that light passes for yellow until it is corrected.
    const auto leaf = of_colour(lit(0.12, 1.6), lit(0.18, 1.0), lit(0.05, 0.5));
    const auto frame = Region::frame(10, 10);
    EXPECT_EQ(leaf_colours(leaf, frame).green, 0U);
    EXPECT_EQ(leaf_colours(balance->applied(leaf), frame).green, 100U);
}

/// Red, green and blue in linear light of what glows at a temperature: Planck's law, the colour-matching functions of CIE 1931 as
/// fitted by Wyman, Sloan and Shirley (JCGT 2 (2013) 1-11, equation 4), the primaries of IEC 61966-2-1.
std::array<double, 3> glow_of(double kelvins)
{
    const auto lobe = [](double nm, double middle, double below, double above) {
        return std::exp(-0.5 * std::pow((nm - middle) / (nm < middle ? below : above), 2.0));
    };
    double x = 0.0;
    double y = 0.0;
    double z = 0.0;
    for (double nm = 380.0; nm <= 780.0; nm += 1.0) {
        const double power = std::pow(nm / 1000.0, -5.0) / std::expm1(1.4388e7 / (nm * kelvins));
        x += power * (1.056 * lobe(nm, 599.8, 37.9, 31.0) + 0.362 * lobe(nm, 442.0, 16.0, 26.7) - 0.065 * lobe(nm, 501.1, 20.4, 26.2));
        y += power * (0.821 * lobe(nm, 568.8, 46.9, 40.5) + 0.286 * lobe(nm, 530.9, 16.3, 31.1));
        z += power * (1.217 * lobe(nm, 437.0, 11.8, 36.0) + 0.681 * lobe(nm, 459.0, 26.0, 13.8));
    }
    return {3.2406 * x - 1.5372 * y - 0.4986 * z, -0.9689 * x + 1.8758 * y + 0.0415 * z, 0.0557 * x - 0.2040 * y + 1.0570 * z};
}

double cast_of(double lamp, double camera)
{
    auto light = glow_of(lamp);
    const auto set_for = glow_of(camera);
    for (std::size_t at = 0; at < 3; ++at) {
        light[at] /= set_for[at];
    }
    return *std::ranges::max_element(light) / *std::ranges::min_element(light);
}

TEST(WhiteBalance, StrongestCastIsThatOfTheWarmestLamps)
{
    EXPECT_NEAR(cast_of(2200.0, 3000.0), kStrongestCast, 0.1);
    EXPECT_LT(cast_of(2700.0, 3000.0), 2.0);
    EXPECT_LT(cast_of(4000.0, 6500.0), kStrongestCast);
    EXPECT_LT(cast_of(10'000.0, 6500.0), 2.0);
}

TEST(WhiteBalance, RefusesWhatIsPlainlyNotGrey)
{
    const auto of = [](std::uint8_t red, std::uint8_t green, std::uint8_t blue) {
        return WhiteBalance::from_grey(of_colour(red, green, blue), Region::frame(10, 10));
    };
    const auto terracotta = of(204, 102, 70);
    ASSERT_FALSE(terracotta);
    EXPECT_EQ(terracotta.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(terracotta.error().message.find("not grey: its strongest colour has 10 times"), std::string::npos)
        << terracotta.error().message;
    EXPECT_TRUE(of(200, 150, 100)); // Grey under a warm lamp.
    EXPECT_TRUE(of(118, 118, 118));
}

TEST(WhiteBalance, NeedsAnAreaThatIsNeitherWhiteNorBlack)
{
    for (const int value : {0, 10, 255}) {
        EXPECT_EQ(WhiteBalance::from_grey(Picture{10, 10, static_cast<std::uint8_t>(value)}, Region::frame(10, 10)).error().code,
                  ErrorCode::OutOfRange);
    }
}

TEST(SrgbCurve, IsThatOfTheStandard)
{
    // IEC 61966-2-1: 18 % of the light is stored as 0.4613 (computed by its formula elsewhere); ends and knee.
    EXPECT_NEAR(stored_of(0.18), 0.46135, 0.0001);
    EXPECT_NEAR(light_of(stored_of(0.002)), 0.002, 1e-12);
    EXPECT_DOUBLE_EQ(light_of(1.0), 1.0);
    EXPECT_DOUBLE_EQ(stored_of(0.0), 0.0);
}

} // namespace
} // namespace lathhouse::photo
