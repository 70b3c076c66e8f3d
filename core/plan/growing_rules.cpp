#include "core/plan/growing_rules.h"

#include "core/base/csv.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstdlib>

namespace lathhouse::plan {

// The two tables as the build has embedded them.
std::string_view embedded_growing_rules();
std::string_view embedded_growing_sources();

namespace {

Result<std::vector<plants::Source>> read_sources(std::string_view text)
{
    const auto table = CsvTable::parse(text, "growing_sources.csv");
    if (!table) {
        return table.error();
    }
    const std::array columns{table->column("key"), table->column("title"), table->column("publisher"),
                             table->column("year")};
    if (!std::ranges::all_of(columns, [](const auto& column) { return column.has_value(); })) {
        return Error{ErrorCode::Malformed,
                     "growing_sources.csv must have the columns key, title, publisher, year"};
    }
    std::vector<plants::Source> sources;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto year = table->at(row, *columns[3]);
        const auto number = parse_integer(year);
        if (!year.empty() && !number) {
            return table->error_at(row, Said{"the year is no number"});
        }
        sources.push_back({table->at(row, *columns[0]), table->at(row, *columns[1]),
                           table->at(row, *columns[2]), number});
    }
    return sources;
}

} // namespace

Result<GrowingRules> GrowingRules::parse(std::string_view rules_csv, std::string_view sources_csv)
{
    GrowingRules made;
    auto sources = read_sources(sources_csv);
    if (!sources) {
        return sources.error();
    }
    made.sources_ = std::move(sources).value();
    const auto table = CsvTable::parse(rules_csv, "growing_rules.csv");
    if (!table) {
        return table.error();
    }
    std::array<std::size_t, 10> at{};
    constexpr std::array<std::string_view, 10> kNames{"id",   "topic",      "low",     "high",      "used", "unit",
                                                      "rule", "conditions", "sources", "confidence"};
    for (std::size_t name = 0; name < kNames.size(); ++name) {
        const auto column = table->require_column(kNames[name]);
        if (!column) {
            return column.error();
        }
        at[name] = *column;
    }
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        const auto text = [&](std::size_t name) { return std::string{trimmed(table->at(row, at[name]))}; };
        std::array<std::optional<double>, 3> figures;
        for (std::size_t figure = 0; figure < 3; ++figure) {
            const auto number = table->number(row, at[2 + figure]);
            if (!number) {
                return number.error();
            }
            figures[figure] = *number;
        }
        GrowingRule rule{text(0), text(1), figures[0], figures[1], figures[2],
                         text(5), text(6), text(7),    {},         text(9)};
        for (const auto key : split(table->at(row, at[8]), ';')) {
            rule.sources.emplace_back(trimmed(key));
            if (made.source(rule.sources.back()) == nullptr) {
                return table->error_at(row, Said{"the source " + rule.sources.back() + " is not in the table"});
            }
        }
        if (rule.id.empty() || rule.rule.empty() || made.find(rule.id) != nullptr) {
            return table->error_at(row, Said{"the id is blank or stands twice, or the rule says nothing"});
        }
        if (rule.confidence != "high" && rule.confidence != "medium" && rule.confidence != "low") {
            return table->error_at(row, Said{"the confidence must be high, medium or low"});
        }
        if (rule.low && (!rule.high || !rule.used || *rule.used < std::min(*rule.low, *rule.high) ||
                         *rule.used > std::max(*rule.low, *rule.high))) {
            return table->error_at(row, Said{"the figure in use must lie within low and high"});
        }
        made.rules_.push_back(std::move(rule));
    }
    return made;
}

const GrowingRules& GrowingRules::built_in()
{
    static const GrowingRules rules = [] {
        auto parsed = parse(embedded_growing_rules(), embedded_growing_sources());
        if (!parsed) {
            std::abort(); // The table is part of the program; a test reads the same text.
        }
        return std::move(parsed).value();
    }();
    return rules;
}

const GrowingRule* GrowingRules::find(std::string_view id) const
{
    const auto found = std::ranges::find(rules_, id, &GrowingRule::id);
    return found == rules_.end() ? nullptr : &*found;
}

double GrowingRules::figure(std::string_view id) const
{
    const auto* rule = find(id);
    assert(rule != nullptr && rule->used);
    return *rule->used;
}

const plants::Source* GrowingRules::source(std::string_view key) const
{
    const auto found = std::ranges::find(sources_, key, &plants::Source::key);
    return found == sources_.end() ? nullptr : &*found;
}

std::vector<const plants::Source*> GrowingRules::sources_of(std::span<const std::string_view> ids) const
{
    std::vector<const plants::Source*> found;
    for (const auto& source : sources_) {
        const bool used = std::ranges::any_of(ids, [&](std::string_view id) {
            const auto* rule = find(id);
            return rule != nullptr && std::ranges::find(rule->sources, source.key) != rule->sources.end();
        });
        if (used) {
            found.push_back(&source);
        }
    }
    return found;
}

double growing_figure(std::string_view id)
{
    return GrowingRules::built_in().figure(id);
}

} // namespace lathhouse::plan
