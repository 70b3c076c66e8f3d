#include "core/base/csv.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <string>

#include <sys/stat.h>
#include <unistd.h>

namespace lathhouse {
namespace {

TEST(CsvTable, ReadsQuotedFields)
{
    const auto table = CsvTable::parse(
        "\xEF\xBB\xBF# note\nname,note\n\"Lemon, Meyer\",\"says \"\"hot\"\"\nnow\"\nFig,\n", "t.csv");
    ASSERT_TRUE(table) << table.error().message;
    ASSERT_EQ(table->row_count(), 2u);
    EXPECT_EQ(table->at(0, 0), "Lemon, Meyer");
    EXPECT_EQ(table->at(0, 1), "says \"hot\"\nnow");
    EXPECT_EQ(table->at(1, 1), "");
    EXPECT_EQ(table->line(0), 3u);
    EXPECT_EQ(table->line(1), 5u);
}

TEST(CsvTable, NamesTheLineOfARaggedRow)
{
    const auto table = CsvTable::parse("a,b\r\n1,2\r\n3\r\n", "t.csv");
    ASSERT_FALSE(table);
    EXPECT_EQ(table.error().code, ErrorCode::Malformed);
    EXPECT_EQ(table.error().message, "t.csv, line 3: 1 fields where the head has 2");
}

TEST(CsvTable, CountsLinesOfBlanksThatAreNoRows)
{
    const auto table = CsvTable::parse("a,b\n  \n1,2\n\t \n\n 3,x\n", "t.csv");
    ASSERT_TRUE(table) << table.error().message;
    ASSERT_EQ(table->row_count(), 2u);
    EXPECT_EQ(table->line(0), 3u);
    EXPECT_EQ(table->line(1), 6u);
    // Where a tab stands between fields a line of one tab is a row.
    const auto tabs = CsvTable::parse("a\tb\n\t\n1\t2\n", "t.tsv", '\t');
    ASSERT_TRUE(tabs) << tabs.error().message;
    ASSERT_EQ(tabs->row_count(), 2u);
    EXPECT_EQ(tabs->line(0), 2u);
    EXPECT_EQ(tabs->line(1), 3u);
}

TEST(CsvTable, RefusesAnOpenQuote)
{
    EXPECT_EQ(CsvTable::parse("a,b\n1,\"2\n", "t.csv").error().code, ErrorCode::Malformed);
}

TEST(CsvTable, ReadsALineOfMegabytesWhole)
{
    const std::string head(3'000'000, 'a');
    const auto table = CsvTable::parse(head + ",b\n" + head + ",2\n", "t.csv");
    ASSERT_TRUE(table) << table.error().message;
    EXPECT_EQ(table->column_names().front().size(), head.size());
    EXPECT_EQ(table->at(0, 0), head);
    EXPECT_EQ(table->at(0, 1), "2");
}

TEST(CsvTable, RefusesEmptyText)
{
    EXPECT_EQ(CsvTable::parse("", "t.csv").error().message,
              "t.csv is empty; it needs a line of column names");
}

TEST(CsvTable, TellsBlankFromNumberFromNeither)
{
    const auto table = CsvTable::parse("v\n1.5\n\" \"\nabc\n", "t.csv");
    ASSERT_TRUE(table) << table.error().message;
    EXPECT_EQ(table->number(0, 0).value(), 1.5);
    EXPECT_EQ(table->number(1, 0).value(), std::nullopt);
    EXPECT_EQ(table->number(2, 0).error().message, "t.csv, line 4: \"abc\" is no number (column v)");
}

TEST(CsvTable, SaysWhichColumnIsMissing)
{
    const auto table = CsvTable::parse("a\n1\n", "t.csv");
    EXPECT_EQ(table->require_column("b").error().message, "t.csv has no column \"b\"");
}

TEST(CsvField, QuotesOnlyWhatMustBe)
{
    EXPECT_EQ(csv_field("plain"), "plain");
    EXPECT_EQ(csv_field("a,\"b\""), "\"a,\"\"b\"\"\"");
}

TEST(TextFile, RefusesAFolderAndAMissingFile)
{
    EXPECT_EQ(read_text_file(std::filesystem::temp_directory_path()).error().code, ErrorCode::Unreadable);
    EXPECT_EQ(read_text_file("/no/such/file").error().code, ErrorCode::NotFound);
}

TEST(TextFile, ThatCannotBeReadToItsEndIsNoEmptyText)
{
    // Opens, but reading its first byte fails as on a failing disk: nothing is mapped there.
    const auto text = read_text_file("/proc/self/mem");
    ASSERT_FALSE(text);
    EXPECT_EQ(text.error().code, ErrorCode::Unreadable);
    EXPECT_FALSE(read_text_file("/proc/self/stat")->empty()) << "a file that does not say its size";
}

TEST(TextFile, IsWrittenWhole)
{
    const auto file = std::filesystem::temp_directory_path() / "lathhouse_write_test.txt";
    ASSERT_TRUE(write_file_whole(file, "one"));
    ASSERT_TRUE(write_file_whole(file, "two"));
    EXPECT_EQ(read_text_file(file).value(), "two");
    std::filesystem::remove(file);
    EXPECT_EQ(write_file_whole("/no/such/folder/file", "x").error().code, ErrorCode::Unwritable);
}

TEST(TextFile, TakesNoPlaceOfAPipeAndLeavesALinkALink)
{
    const auto folder = std::filesystem::temp_directory_path() / ("lathhouse_write_test." + std::to_string(::getpid()));
    std::filesystem::create_directory(folder);
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
    const auto refused = write_file_whole(folder / "pipe", "one");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Unwritable);
    EXPECT_TRUE(std::filesystem::is_fifo(folder / "pipe"));
    ASSERT_TRUE(write_file_whole(folder / "file", "one"));
    std::filesystem::create_symlink("file", folder / "link");
    ASSERT_TRUE(write_file_whole(folder / "link", "two"));
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link"));
    EXPECT_EQ(read_text_file(folder / "file").value(), "two");
    std::filesystem::remove_all(folder);
}

} // namespace
} // namespace lathhouse
