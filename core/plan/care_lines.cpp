#include "core/plan/care_lines.h"

#include "core/base/cell_reader.h"
#include "core/base/csv.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

namespace lathhouse::plan {

std::string_view embedded_care_lines();

namespace {

constexpr std::array<std::string_view, 2> kLineTopics{"chemical", "cold"};
constexpr std::array<std::string_view, 9> kLists{"now",  "leave",    "ask",     "photograph", "write_down",
                                                 "tell", "rule_out", "tonight", "look"};
constexpr std::array<std::string_view, 15> kCases{"any",     "food",    "wet",       "dry",   "mobile",
                                                  "bound",   "between", "unknown",   "none",  "compost",
                                                  "neighbour", "woody", "soft",      "severe",
                                                  "roots"};

template <std::size_t Count>
std::string one_of(CellReader& row, std::string_view column,
                   const std::array<std::string_view, Count>& known)
{
    auto word = row.filled(column);
    if (std::ranges::find(known, word) == known.end()) {
        row.fail_at("the word \"" + word + "\" is not known in " + std::string{column});
    }
    return word;
}

} // namespace

Result<std::vector<CareLine>> parse_care_lines(std::string_view csv)
{
    const auto table = CsvTable::parse(csv, "care_lines.csv");
    if (!table) {
        return table.error();
    }
    std::vector<CareLine> lines;
    for (std::size_t index = 0; index < table->row_count(); ++index) {
        CellReader row{*table, index};
        CareLine line{row.filled("id"),
                      one_of(row, "topic", kLineTopics),
                      one_of(row, "list", kLists),
                      one_of(row, "applies", kCases),
                      row.filled("text"),
                      row.filled_list("sources")};
        if (std::ranges::find(lines, line.id, &CareLine::id) != lines.end()) {
            row.fail_at("the id " + line.id + " is given twice");
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

std::span<const CareLine> care_lines()
{
    static const std::vector<CareLine> lines = [] {
        auto parsed = parse_care_lines(embedded_care_lines());
        if (!parsed) {
            std::abort(); // A fault of the build; a test parses the same bytes.
        }
        return std::move(parsed).value();
    }();
    return lines;
}

std::vector<const CareLine*> care_lines_for(std::string_view topic, const std::set<std::string>& cases)
{
    std::vector<const CareLine*> found;
    for (const auto& line : care_lines()) {
        if (line.topic == topic && (line.applies == "any" || cases.contains(line.applies))) {
            found.push_back(&line);
        }
    }
    return found;
}

} // namespace lathhouse::plan
