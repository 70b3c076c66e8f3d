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

TEST(Said, KeepsItsSentenceAndItsParts)
{
    const auto once = said("%2 of %1 rows, %1 in all", 3, "two");
    EXPECT_EQ(once.text, "two of 3 rows, 3 in all");
    EXPECT_STREQ(once.sentence, "%2 of %1 rows, %1 in all");
    ASSERT_EQ(once.parts.size(), 2U);
    EXPECT_EQ(once.parts[0].text, "3");
    EXPECT_EQ(once.parts[1].sentence, nullptr) << "a text alone";
    EXPECT_EQ(said("5 % of it").text, "5 % of it");
    EXPECT_EQ(said("named %1", "100 %1").text, "named 100 %1") << "a part is no sentence";
}

TEST(Said, AnErrorWithinAnotherKeepsItsOwnSentence)
{
    const Error inner{ErrorCode::Malformed, said("row %1 is blank", 7)};
    const Error outer{ErrorCode::Damaged, said("%1 is damaged (%2)", "a.csv", inner)};
    EXPECT_EQ(outer.message, "a.csv is damaged (row 7 is blank)");
    ASSERT_EQ(outer.parts.size(), 2U);
    EXPECT_STREQ(outer.parts[1].sentence, "row %1 is blank");
    EXPECT_EQ(outer.parts[1].parts.at(0).text, "7");
}

TEST(Error, IsEqualByCodeAndMessage)
{
    const Error told{ErrorCode::NotFound, said("no file %1", "a")};
    EXPECT_EQ(told, (Error{ErrorCode::NotFound, "no file a"}));
    EXPECT_NE(told, (Error{ErrorCode::Damaged, "no file a"}));
    EXPECT_NE(told, (Error{ErrorCode::NotFound, "no file b"}));
}

} // namespace
} // namespace lathhouse
