#include "core/base/parse.h"

#include <gtest/gtest.h>

namespace lathhouse {
namespace {

TEST(ParseNumber, TakesTheWholeText)
{
    EXPECT_EQ(parse_number("-2.2"), -2.2);
    EXPECT_EQ(parse_number(" +7 "), 7.0);
    EXPECT_EQ(parse_number("1e3"), 1000.0);
}

TEST(ParseNumber, RefusesWhatIsNotOne)
{
    for (const char* text :
         {"", " ", "1,5", "2x", "nan", "inf", "-inf", "1e999", "+-3", "++3", "0x10", "- 3"}) {
        EXPECT_EQ(parse_number(text), std::nullopt) << text;
    }
}

TEST(ParseInteger, RefusesFractionsAndOverflow)
{
    EXPECT_EQ(parse_integer("-12"), -12);
    EXPECT_EQ(parse_integer("+12"), 12);
    EXPECT_EQ(parse_integer("12.0"), std::nullopt);
    EXPECT_EQ(parse_integer("99999999999"), std::nullopt);
    EXPECT_EQ(parse_integer(""), std::nullopt);
}

TEST(Split, KeepsEmptyPieces)
{
    EXPECT_EQ(split("a,,b,", ','), (std::vector<std::string_view>{"a", "", "b", ""}));
    EXPECT_EQ(split("", ','), std::vector<std::string_view>{""});
}

TEST(Trimmed, TakesBlanksFromBothEnds)
{
    EXPECT_EQ(trimmed(" \ta b\r\n"), "a b");
    EXPECT_EQ(trimmed("  "), "");
}

TEST(LowerCase, LeavesOtherBytesAlone)
{
    EXPECT_EQ(lower_case("Crème BRÛLÉE"), "crème brÛlÉe");
}

} // namespace
} // namespace lathhouse
