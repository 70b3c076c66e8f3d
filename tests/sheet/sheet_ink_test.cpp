#include "tests/sheet/printed.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::sheet {
namespace {

/// A page as poppler draws it, in greys; 0 is black.
struct Picture {
    int width = 0;
    int height = 0;
    std::string pixels;
    int at(double x_share, double y_share) const
    {
        const auto column = static_cast<std::size_t>(x_share * (width - 1));
        const auto row = static_cast<std::size_t>(y_share * (height - 1));
        return static_cast<unsigned char>(pixels[row * static_cast<std::size_t>(width) + column]);
    }
    /// Darkest point of a box, in shares of the page.
    int darkest(double left, double top, double right, double bottom) const
    {
        int least = 255;
        for (double y = top; y <= bottom; y += 0.5 / height) {
            for (double x = left; x <= right; x += 0.5 / width) {
                least = std::min(least, at(x, y));
            }
        }
        return least;
    }
};

/// Reads the grey map that pdftoppm writes: "P5 width height 255" and the bytes.
Picture picture_of(const std::string& bytes)
{
    Picture picture;
    std::istringstream input{bytes};
    std::string kind;
    int most = 0;
    input >> kind >> picture.width >> picture.height >> most;
    input.get();
    picture.pixels.assign(std::istreambuf_iterator<char>{input}, {});
    return picture;
}

Picture drawn(const std::string& file)
{
    const auto ran = run_shell("pdftoppm -gray -r 72 -f 1 -l 1 " + file, usual().folder);
    return picture_of(ran.out);
}

class YearSheetInk : public testing::Test {
protected:
    static void SetUpTestSuite()
    {
        const std::string file = usual().file("ink.pdf");
        ASSERT_EQ(usual().run("export sheet year " + file).status, 0);
        page_ = drawn(file);
    }
    static Picture page_;
};
Picture YearSheetInk::page_;

TEST_F(YearSheetInk, IsDrawnWhole)
{
    ASSERT_GT(page_.width, 800);
    ASSERT_EQ(page_.pixels.size(), static_cast<std::size_t>(page_.width) * static_cast<std::size_t>(page_.height));
}

TEST_F(YearSheetInk, LeavesTheMarginsThatPrintersCannotReach)
{
    constexpr double kSix = 6.0 / 297.0; // Millimetres of the long edge.
    EXPECT_EQ(page_.darkest(0.0, 0.0, kSix, 1.0), 255);
    EXPECT_EQ(page_.darkest(1.0 - kSix, 0.0, 1.0, 1.0), 255);
    EXPECT_EQ(page_.darkest(0.0, 0.0, 1.0, 6.0 / 210.0), 255);
    EXPECT_EQ(page_.darkest(0.0, 1.0 - 4.0 / 210.0, 1.0, 1.0), 255);
}

TEST_F(YearSheetInk, HasTodayAsAHeavyLineFromTheMonthsToTheLastRow)
{
    constexpr double kToday = 190.0 / 1280.0;
    for (const double height : {0.12, 0.25, 0.45, 0.6}) {
        EXPECT_LT(page_.darkest(kToday - 0.002, height, kToday + 0.002, height + 0.004), 96) << height;
    }
}

TEST_F(YearSheetInk, HasNoColour)
{
    const auto ran = run_shell("pdftoppm -r 36 -f 1 -l 1 " + usual().file("ink.pdf"), usual().folder);
    std::istringstream input{ran.out};
    std::string kind;
    int width = 0;
    int height = 0;
    int most = 0;
    input >> kind >> width >> height >> most;
    input.get();
    const std::string pixels{std::istreambuf_iterator<char>{input}, {}};
    ASSERT_EQ(pixels.size(), static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 3);
    std::size_t coloured = 0;
    for (std::size_t at = 0; at + 2 < pixels.size(); at += 3) {
        coloured += pixels[at] != pixels[at + 1] || pixels[at] != pixels[at + 2] ? 1 : 0;
    }
    EXPECT_EQ(coloured, 0U);
}

} // namespace
} // namespace lathhouse::sheet
