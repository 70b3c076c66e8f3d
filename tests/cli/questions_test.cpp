#include "core/base/csv.h"
#include "core/base/parse.h"
#include "tests/cli/run_command.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace lathhouse::cli {
namespace {

std::vector<std::string> question_lines()
{
    const auto text =
        read_text_file(std::filesystem::path{LATHHOUSE_SOURCE} / "docs" / "questions.md").value();
    std::vector<std::string> lines;
    for (const auto line : split(text, '\n')) {
        if (line.starts_with("| ") && line.size() > 2 && line[2] >= '0' && line[2] <= '9') {
            lines.emplace_back(line);
        }
    }
    return lines;
}

/// What stands between backticks in the text.
std::vector<std::string> commands_in(std::string_view text)
{
    std::vector<std::string> found;
    const auto pieces = split(text, '`');
    for (std::size_t index = 1; index < pieces.size(); index += 2) {
        found.emplace_back(pieces[index]);
    }
    return found;
}

/// Whether the program knows the command, and under it the subcommand or the option that is named. An unknown
/// word is answered with the help of what stands before it, so the line of usage is read.
bool is_known(const std::string& command)
{
    std::vector<std::string> words;
    std::vector<std::string> options;
    std::string usage = "Usage: ";
    for (const auto word : split(command, ' ')) {
        if (word.starts_with("--")) {
            options.emplace_back(word);
        } else {
            words.emplace_back(word);
            usage.append(word).append(" ");
        }
    }
    words.emplace_back("--help");
    const auto help = run_command(words);
    const bool has_options = std::ranges::all_of(
        options, [&](const std::string& option) { return help.out.find(option) != std::string::npos; });
    return help.status == 0 && has_options && help.out.find(usage) != std::string::npos;
}

TEST(Questions, ThereAreFortyFive)
{
    const auto lines = question_lines();
    ASSERT_EQ(lines.size(), 45U);
    for (std::size_t index = 0; index < lines.size(); ++index) {
        const auto cells = split(lines[index], '|');
        ASSERT_EQ(cells.size(), 5U) << lines[index];
        EXPECT_EQ(trimmed(cells[1]), std::to_string(index + 1));
        EXPECT_TRUE(trimmed(cells[2]).ends_with('?')) << lines[index];
        EXPECT_GE(trimmed(cells[3]).size(), 20U) << lines[index];
    }
}

TEST(Questions, EachNamesACommandOrWhomToAsk)
{
    for (const auto& line : question_lines()) {
        EXPECT_TRUE(!commands_in(line).empty() || line.find(" ask ") != std::string::npos) << line;
    }
}

TEST(Questions, EveryCommandNamedIsThere)
{
    std::set<std::string> missing;
    for (const auto& line : question_lines()) {
        for (const auto& command : commands_in(line)) {
            if (!is_known(command)) {
                missing.insert(command);
            }
        }
    }
    EXPECT_THAT(missing, testing::IsEmpty()) << "named in docs/questions.md, unknown to the program";
}

TEST(Questions, AnUnknownCommandIsNotTakenForOne)
{
    EXPECT_TRUE(is_known("tonight --dew-point"));
    EXPECT_FALSE(is_known("tonight --no-such-option"));
    EXPECT_FALSE(is_known("show nothing"));
    EXPECT_FALSE(is_known("perhaps"));
}

} // namespace
} // namespace lathhouse::cli
