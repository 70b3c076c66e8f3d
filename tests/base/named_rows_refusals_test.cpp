#include "core/base/named_rows.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

namespace lathhouse {
namespace {

using namespace std::string_view_literals;
using testing::HasSubstr;

constexpr std::array<std::string_view, 2> kDateAndLow{"date", "low_c"};

std::string refusal(std::string_view text)
{
    const auto parsed = NamedRows::parse(text, "lows", kDateAndLow, {});
    EXPECT_FALSE(parsed);
    return parsed ? "" : parsed.error().message;
}

TEST(NamedRowsRefuse, WhatIsNoText)
{
    EXPECT_THAT(refusal("date,low_c\nx,\0 4\n"sv), HasSubstr("zero byte"));
    EXPECT_THAT(refusal("\xEF\xBB\xBF \n"), HasSubstr("is empty"));
}

TEST(NamedRowsRefuse, MoreRowsThanNightsThatMatter)
{
    std::string text = "date,low_c\n";
    for (int row = 0; row < 100'002; ++row) {
        text += "x\n";
    }
    EXPECT_THAT(refusal(text), HasSubstr("leave only the nights that matter"));
}

TEST(NamedRowsRefuse, JsonThatIsNoTable)
{
    EXPECT_THAT(refusal(std::string(80, '[') + std::string(80, ']')), HasSubstr("nested more than 64 deep"));
    EXPECT_THAT(refusal("[{\"date\": \"x\",\n\"low_c\": 1"), HasSubstr("lows, line 2: the JSON breaks off"));
}

TEST(NamedRowsRefuse, ColumnThatIsNeededAndNotThere)
{
    const auto parsed = NamedRows::parse("date,min\nx,4\n", "lows", kDateAndLow, {});
    ASSERT_TRUE(parsed);
    EXPECT_TRUE(parsed->require("date"));
    const auto missing = parsed->require("low_c");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, ErrorCode::Malformed);
    EXPECT_THAT(missing.error().message, HasSubstr("has no column \"low_c\""));
    EXPECT_THAT(missing.error().message, HasSubstr("--columns low_c=NAME"));
}

} // namespace
} // namespace lathhouse
