#include "core/plants/pest.h"

#include "core/base/cell_reader.h"
#include "core/base/csv.h"
#include "core/base/parse.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <utility>

namespace lathhouse::plants {

std::string_view embedded_pests();
std::string_view embedded_pest_clocks();

namespace {

std::optional<PestStage> stage_of(std::string_view word)
{
    if (word == "generation") {
        return PestStage::Generation;
    }
    if (word == "nymph") {
        return PestStage::Nymph;
    }
    if (word == "preoviposition") {
        return PestStage::Preoviposition;
    }
    if (word == "hatch") {
        return PestStage::Hatch;
    }
    return word == "crawler" ? std::optional{PestStage::Crawler} : std::nullopt;
}

std::optional<ClockBasis> basis_of(std::string_view word)
{
    if (word == "published") {
        return ClockBasis::Published;
    }
    if (word == "derived") {
        return ClockBasis::Derived;
    }
    return word == "memory" ? std::optional{ClockBasis::Memory} : std::nullopt;
}

std::optional<Celsius> degrees_if_any(CellReader& row, std::string_view column)
{
    const auto value = row.number_if_any(column);
    return value ? std::optional{Celsius::from_degrees(*value)} : std::nullopt;
}

Pest read_pest(CellReader& row)
{
    Pest pest{.name = row.filled("name"),
              .botanical_name = row.filled("botanical_name"),
              .other_names = row.list("other_names"),
              .upper_limit = Celsius::from_degrees(row.number("upper_c")),
              .lives_above = degrees_if_any(row, "lives_above_c"),
              .dies_above = degrees_if_any(row, "dies_above_c"),
              .gap_days = static_cast<int>(row.number("gap_days")),
              .look_at = row.filled_list("look_at"),
              .found_as = row.filled_list("found_as"),
              .spreads_by = row.filled_list("spreads_by"),
              .hides_in_mix = row.yes("hides_in_mix"),
              .treated_with = row.filled_list("treated_with"),
              .sources = row.filled_list("sources"),
              .confidence = row.filled("confidence"),
              .note = row.text("note"),
              .clocks = {}};
    if (pest.gap_days < 1 || pest.gap_days > 60) {
        row.fail_at("gap_days must lie within 1 and 60");
    }
    return pest;
}

PestClock read_clock(CellReader& row)
{
    PestClock clock{.study = row.filled("study"),
                    .stage = row.word<PestStage>("stage", stage_of, PestStage::Generation),
                    .base = Celsius::from_degrees(row.number("base_c")),
                    .degree_days = row.number("degree_days"),
                    .basis = row.word<ClockBasis>("basis", basis_of, ClockBasis::Memory),
                    .source = row.filled("source"),
                    .confidence = row.filled("confidence"),
                    .note = row.text("note")};
    if (!(clock.degree_days > 0.0)) {
        row.fail_at("degree_days must be above 0");
    }
    const auto days = row.number_if_any("from_days");
    const auto at = row.number_if_any("at_c");
    if (days && at) {
        const double from_days = *days * (*at - clock.base.degrees());
        if (std::abs(from_days - clock.degree_days) > 0.02 * clock.degree_days) {
            row.fail_at("degree_days is not from_days times what at_c is above the base");
        }
    } else if (days || at) {
        row.fail_at("from_days and at_c go together");
    }
    return clock;
}

bool same_name(std::string_view a, std::string_view b)
{
    return lower_case(a) == lower_case(b);
}

} // namespace

bool Pest::flies() const
{
    return std::ranges::find(spreads_by, "flies") != spreads_by.end();
}

const PestClock* Pest::clock(PestStage stage) const
{
    const auto found = std::ranges::find(clocks, stage, &PestClock::stage);
    return found == clocks.end() ? nullptr : &*found;
}

std::vector<std::vector<const PestClock*>> Pest::generations() const
{
    std::vector<std::vector<const PestClock*>> found;
    for (const auto& first : clocks) {
        if (first.stage == PestStage::Generation) {
            found.push_back({&first});
        } else if (first.stage == PestStage::Nymph) {
            for (const auto& second : clocks) {
                if (second.stage == PestStage::Preoviposition && second.study == first.study) {
                    found.push_back({&first, &second});
                }
            }
        }
    }
    return found;
}

Result<PestTable> PestTable::parse(std::string_view pests_csv, std::string_view clocks_csv)
{
    const auto pest_rows = CsvTable::parse(pests_csv, "pests.csv");
    if (!pest_rows) {
        return pest_rows.error();
    }
    const auto clock_rows = CsvTable::parse(clocks_csv, "pest_clocks.csv");
    if (!clock_rows) {
        return clock_rows.error();
    }
    PestTable table;
    for (std::size_t index = 0; index < pest_rows->row_count(); ++index) {
        CellReader row{*pest_rows, index};
        auto pest = read_pest(row);
        auto names = pest.other_names;
        names.push_back(pest.name);
        names.push_back(pest.botanical_name);
        for (const auto& name : names) {
            if (table.find(name)) {
                row.fail_at("the name " + name + " is given twice");
            }
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        table.pests_.push_back(std::move(pest));
    }
    for (std::size_t index = 0; index < clock_rows->row_count(); ++index) {
        CellReader row{*clock_rows, index};
        auto clock = read_clock(row);
        const auto name = row.filled("pest");
        const auto pest = std::ranges::find(table.pests_, name, &Pest::name);
        if (pest == table.pests_.end()) {
            row.fail_at("there is no pest named " + name);
        } else if (clock.base >= pest->upper_limit) {
            row.fail_at("the base must lie below the pest's upper limit");
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        pest->clocks.push_back(std::move(clock));
    }
    for (const auto& pest : table.pests_) {
        if (pest.generations().empty() || pest.clock(PestStage::Crawler) == nullptr) {
            return Error{ErrorCode::Malformed,
                         said("pest_clocks.csv: %1 lacks a generation or a crawler stage", pest.name)};
        }
    }
    return table;
}

const PestTable& PestTable::built_in()
{
    static const PestTable table = [] {
        auto parsed = parse(embedded_pests(), embedded_pest_clocks());
        if (!parsed) {
            std::abort(); // A fault of the build; a test parses the same bytes.
        }
        return std::move(parsed).value();
    }();
    return table;
}

Result<const Pest*> PestTable::find(std::string_view name) const
{
    const auto wanted = trimmed(name);
    std::string known;
    for (const auto& pest : pests_) {
        if (same_name(pest.name, wanted) || same_name(pest.botanical_name, wanted) ||
            std::ranges::any_of(pest.other_names,
                                [&](const std::string& other) { return same_name(other, wanted); })) {
            return &pest;
        }
        known += (known.empty() ? "" : ", ") + pest.name;
    }
    return Error{ErrorCode::NotFound, said("no pest named \"%1\"; known are %2", wanted, known)};
}

} // namespace lathhouse::plants
