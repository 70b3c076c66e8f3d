#include "core/exchange/csv_cell.h"

#include "core/base/csv.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

namespace lathhouse::exchange {
namespace {

const Column kMaybeText{"a", CellType::Text, true};
const Column kText{"a", CellType::Text, false};

/// Through a whole file, as it is read.
Cell back(const Cell& cell, const Column& column)
{
    const auto table = CsvTable::parse("id,a\r\n1," + csv_cell(cell, column) + "\r\n", "t");
    EXPECT_TRUE(table.has_value());
    const auto read = read_csv_cell(table->at(0, 1), column);
    EXPECT_TRUE(read.has_value());
    return *read;
}

TEST(CsvCell, TextsComeBackTheSame)
{
    using namespace std::string_literals;
    for (const auto& text :
         {""s, "'"s, "''"s, "=1+1"s, "+44 1"s, "-2"s, "@SUM(A1)"s, "\tx"s, "\rx"s, "\nx"s, "a\r\nb"s, "\"quoted\""s, "a,b"s, " x "s,
          "#"s, "\xF0\x9F\xAA\xB4 pot"s, "\xEF\xBC\x9D" "1"s, "'=1"s, "1e5"s, "00123"s, "a'b"s, "tab\tin"s, "x\t"s}) {
        EXPECT_EQ(back(text, kMaybeText), Cell{text}) << text;
        EXPECT_EQ(back(text, kText), Cell{text}) << text;
    }
}

TEST(CsvCell, NothingAndAnEmptyTextDiffer)
{
    EXPECT_EQ(back(Missing{}, kMaybeText), Cell{Missing{}});
    EXPECT_EQ(csv_cell(std::string{}, kMaybeText), "'");
    EXPECT_EQ(csv_cell(std::string{}, kText), "");
}

TEST(CsvCell, NoSpreadsheetSeesAFormula)
{
    for (const char* text : {"=1+1", "+1", "-1", "@x", "\t=1", "\r=1", "\xEF\xBC\x9D" "1+1"}) {
        const auto cell = csv_cell(std::string{text}, kText);
        EXPECT_EQ(cell[cell.front() == '"' ? 1 : 0], '\'') << text;
    }
    // Numbers are no formulas, with their sign or without.
    EXPECT_EQ(csv_cell(-2.5, {"a", CellType::Real, false}), "-2.5");
}

TEST(CsvCell, NumbersComeBackToTheBit)
{
    const Column real{"a", CellType::Real, false};
    const Column whole{"a", CellType::Integer, false};
    std::mt19937_64 draw{7};
    for (int round = 0; round < 20'000; ++round) {
        const auto bits = draw();
        double value = 0.0;
        static_assert(sizeof value == sizeof bits);
        std::memcpy(&value, &bits, sizeof value);
        if (value == value) {
            EXPECT_EQ(std::get<double>(*read_csv_cell(csv_cell(value, real), real)), value);
        }
        const auto number = static_cast<std::int64_t>(bits);
        EXPECT_EQ(std::get<std::int64_t>(*read_csv_cell(csv_cell(number, whole), whole)), number);
    }
    EXPECT_EQ(back(Bytes{std::string{"\0\xFF'", 3}}, {"a", CellType::Bytes, true}), Cell{(Bytes{std::string{"\0\xFF'", 3}})});
}

TEST(CsvCell, RandomTextsComeBackTheSame)
{
    std::mt19937 draw{11};
    constexpr std::string_view kLetters = "=+-@'\"\r\n\t, ;#a1\xC3\xA4";
    for (int round = 0; round < 5'000; ++round) {
        std::string text;
        for (auto length = draw() % 9; length > 0; --length) {
            text += kLetters[draw() % kLetters.size()];
        }
        ASSERT_EQ(back(text, kMaybeText), Cell{text}) << testing::PrintToString(text);
    }
}

TEST(CsvCell, WhatIsNoNumberIsRefused)
{
    for (const char* text : {"", "x", "1x", " 1", "1,5", "0x10"}) {
        EXPECT_FALSE(read_csv_cell(text, {"a", CellType::Real, false})) << text;
        EXPECT_FALSE(read_csv_cell(text, {"a", CellType::Integer, false})) << text;
    }
    EXPECT_FALSE(read_csv_cell("1.5", {"a", CellType::Integer, false}));
    EXPECT_FALSE(read_csv_cell("99999999999999999999", {"a", CellType::Integer, false}));
    EXPECT_FALSE(read_csv_cell("abc", {"a", CellType::Bytes, false}));
}

} // namespace
} // namespace lathhouse::exchange
