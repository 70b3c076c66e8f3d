#include "core/base/result.h"

#include <gtest/gtest.h>

#include <memory>

namespace lathhouse {
namespace {

Result<int> half(int number)
{
    if (number % 2 != 0) {
        return Error{ErrorCode::OutOfRange, "odd"};
    }
    return number / 2;
}

TEST(Result, HoldsAValue)
{
    const auto result = half(8);
    ASSERT_TRUE(result.has_value());
    EXPECT_EQ(*result, 4);
}

TEST(Result, HoldsAnError)
{
    const auto result = half(7);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error(), (Error{ErrorCode::OutOfRange, "odd"}));
    EXPECT_EQ(result.value_or(-1), -1);
}

TEST(Result, AndThenStopsAtTheFirstError)
{
    EXPECT_EQ(half(8).and_then(half).value(), 2);
    EXPECT_EQ(half(6).and_then(half).error().message, "odd");
}

TEST(Result, TransformKeepsTheError)
{
    EXPECT_EQ(half(8).transform([](int n) { return n + 0.5; }).value(), 4.5);
    EXPECT_FALSE(half(7).transform([](int n) { return n; }).has_value());
}

TEST(Result, CarriesWhatCannotBeCopied)
{
    Result<std::unique_ptr<int>> result = std::make_unique<int>(3);
    const auto taken = std::move(result).value();
    EXPECT_EQ(*taken, 3);
}

TEST(Result, OfNothingIsSuccessUnlessTold)
{
    EXPECT_TRUE(Result<void>{}.has_value());
    EXPECT_EQ(Result<void>(Error{ErrorCode::Locked, "held"}).error().code, ErrorCode::Locked);
}

TEST(ErrorCode, EachHasAName)
{
    for (int code = 0; code <= static_cast<int>(ErrorCode::Unavailable); ++code) {
        EXPECT_NE(to_string(static_cast<ErrorCode>(code)), "Unknown") << code;
    }
}

} // namespace
} // namespace lathhouse
