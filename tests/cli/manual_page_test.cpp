#include "core/base/csv.h"
#include "core/base/parse.h"
#include "tests/cli/run_command.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace lathhouse::cli {
namespace {

using ManualCommands = std::map<std::string, std::vector<std::string>>; ///< The parts of each command, in order.

/// What a help text lists below "Subcommands:", of several names the first.
std::vector<std::string> listed_in(const std::string& help)
{
    std::vector<std::string> names;
    bool inside = false;
    for (const auto line : split(help, '\n')) {
        if (line.starts_with("Subcommands:")) {
            inside = true;
        } else if (line.empty()) {
            inside = false;
        } else if (inside && line.starts_with("  ") && line[2] != ' ') {
            names.emplace_back(line.substr(2, line.find_first_of(" ,", 2) - 2));
        }
    }
    std::ranges::sort(names);
    return names;
}

/// The lines ".B NAME PART|PART" of the page's section of commands.
ManualCommands told_by_the_page()
{
    auto page = read_text_file(std::filesystem::path{LATHHOUSE_SOURCE} / "app/package/lathhouse.1").value();
    std::erase(page, '\\'); // Before dashes.
    ManualCommands told;
    bool inside = false;
    for (const auto line : split(page, '\n')) {
        if (line.starts_with(".SH ")) {
            inside = line == ".SH COMMANDS";
        } else if (inside && line.starts_with(".B ")) {
            const auto words = split(line, ' ');
            auto& parts = told[std::string{words[1]}];
            if (words.size() > 2) {
                for (const auto part : split(words[2], '|')) {
                    parts.emplace_back(part);
                }
            }
            std::ranges::sort(parts);
        }
    }
    return told;
}

TEST(ManualPage, NamesTheCommandsThatThereAreWithTheirParts)
{
    ManualCommands there;
    for (const auto& name : listed_in(run_command({"--help"}).out)) {
        there[name] = listed_in(run_command({name, "--help"}).out);
    }
    EXPECT_GE(there.size(), 40U);
    EXPECT_THAT(told_by_the_page(), testing::ContainerEq(there));
}

} // namespace
} // namespace lathhouse::cli
