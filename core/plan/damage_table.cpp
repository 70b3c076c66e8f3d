#include "core/plan/chemical_damage.h"

#include "core/base/cell_reader.h"
#include "core/base/csv.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

namespace lathhouse::plan {

std::string_view embedded_damage_signs();
std::string_view embedded_damage_modes();
std::string_view embedded_damage_patterns();

namespace {

constexpr std::array<std::string_view, 4> kInMix{"none", "bound", "between", "mobile"};
constexpr std::array<std::string_view, 3> kLeach{"no", "unsure", "yes"};
constexpr std::array<std::string_view, 3> kFits{"typical", "possible", "against"};
constexpr std::array<std::string_view, 2> kPrune{"may", "dead_only"};
constexpr std::array<std::string_view, 2> kCauses{"other", "weed_killer"};

template <class Value, std::size_t Count>
Value word_of(CellReader& row, std::string_view column, const std::array<std::string_view, Count>& words)
{
    return row.word<Value>(
        column,
        [&](std::string_view word) -> std::optional<Value> {
            const auto found = std::ranges::find(words, word);
            return found == words.end() ? std::nullopt
                                        : std::optional{static_cast<Value>(found - words.begin())};
        },
        Value{});
}

std::vector<int> days_of(CellReader& row, std::string_view column)
{
    std::vector<int> days;
    for (const auto& piece : row.filled_list(column)) {
        const auto day = parse_integer(piece);
        if (!day || *day < 1 || (!days.empty() && *day <= days.back())) {
            std::string sentence{column};
            sentence += " must be rising whole days";
            row.fail_at(sentence);
            return days;
        }
        days.push_back(*day);
    }
    return days;
}

DamageMode read_mode(CellReader& row)
{
    DamageMode mode{.key = row.filled("mode"),
                    .name = row.filled("name"),
                    .examples = row.list("examples"),
                    .is_weed_killer = word_of<int>(row, "cause", kCauses) == 1,
                    .is_systemic = row.yes("systemic"),
                    .as_vapour = row.yes("vapour"),
                    .first_days_low = row.number("first_days_low"),
                    .first_days_high = row.number("first_days_high"),
                    .in_mix = word_of<InMix>(row, "in_mix", kInMix),
                    .half_life_low_days = row.number_if_any("half_life_low_days"),
                    .half_life_high_days = row.number_if_any("half_life_high_days"),
                    .leach = word_of<LeachAdvice>(row, "leach", kLeach),
                    .look_days = days_of(row, "look_days"),
                    .hold_weeks = static_cast<int>(row.number("hold_weeks")),
                    .prune_dead_only = word_of<int>(row, "prune", kPrune) == 1,
                    .outlook = row.filled("outlook"),
                    .conflict = row.text("conflict"),
                    .sources = row.filled_list("sources"),
                    .confidence = row.filled("confidence"),
                    .note = row.text("note"),
                    .signs = {}};
    if (!(mode.first_days_low > 0.0 && mode.first_days_low <= mode.first_days_high)) {
        row.fail_at("first_days_low must be above 0 and not above first_days_high");
    }
    if (mode.half_life_low_days && mode.half_life_high_days &&
        *mode.half_life_low_days > *mode.half_life_high_days) {
        row.fail_at("the half-life's ends are in the wrong order");
    }
    return mode;
}

} // namespace

std::string_view to_string(InMix held)
{
    return kInMix[static_cast<std::size_t>(held)];
}

std::string_view to_string(LeachAdvice advice)
{
    return kLeach[static_cast<std::size_t>(advice)];
}

Result<DamageTable> DamageTable::parse(std::string_view signs_csv, std::string_view modes_csv,
                                       std::string_view patterns_csv)
{
    const auto sign_rows = CsvTable::parse(signs_csv, "damage_signs.csv");
    if (!sign_rows) {
        return sign_rows.error();
    }
    const auto mode_rows = CsvTable::parse(modes_csv, "damage_modes.csv");
    if (!mode_rows) {
        return mode_rows.error();
    }
    const auto pattern_rows = CsvTable::parse(patterns_csv, "damage_patterns.csv");
    if (!pattern_rows) {
        return pattern_rows.error();
    }
    DamageTable table;
    for (std::size_t index = 0; index < sign_rows->row_count(); ++index) {
        CellReader row{*sign_rows, index};
        DamageSign sign{row.filled("sign"), row.filled("group"), row.filled("text")};
        if (table.sign(sign.key) != nullptr) {
            row.fail_at("the sign " + sign.key + " is given twice");
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        table.signs_.push_back(std::move(sign));
    }
    for (std::size_t index = 0; index < mode_rows->row_count(); ++index) {
        CellReader row{*mode_rows, index};
        auto mode = read_mode(row);
        if (table.mode(mode.key) != nullptr) {
            row.fail_at("the mode " + mode.key + " is given twice");
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        table.modes_.push_back(std::move(mode));
    }
    for (std::size_t index = 0; index < pattern_rows->row_count(); ++index) {
        CellReader row{*pattern_rows, index};
        const auto key = row.filled("mode");
        DamageMode::Sign sign{row.filled("sign"), word_of<SignFit>(row, "fit", kFits),
                              row.filled_list("sources")};
        const auto mode = std::ranges::find(table.modes_, key, &DamageMode::key);
        if (mode == table.modes_.end()) {
            row.fail_at("there is no mode " + key);
        } else if (std::ranges::find(mode->signs, sign.sign, &DamageMode::Sign::sign) != mode->signs.end()) {
            row.fail_at("the sign " + sign.sign + " is given twice for " + key);
        }
        if (table.sign(sign.sign) == nullptr) {
            row.fail_at("there is no sign " + sign.sign);
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        mode->signs.push_back(std::move(sign));
    }
    for (const auto& mode : table.modes_) {
        if (std::ranges::find(mode.signs, SignFit::Typical, &DamageMode::Sign::fit) == mode.signs.end()) {
            return Error{ErrorCode::Malformed, "damage_patterns.csv: " + mode.key + " has no typical sign"};
        }
    }
    return table;
}

const DamageTable& DamageTable::built_in()
{
    static const DamageTable table = [] {
        auto parsed = parse(embedded_damage_signs(), embedded_damage_modes(), embedded_damage_patterns());
        if (!parsed) {
            std::abort(); // A fault of the build; a test parses the same bytes.
        }
        return std::move(parsed).value();
    }();
    return table;
}

const DamageSign* DamageTable::sign(std::string_view key) const
{
    const auto found = std::ranges::find(signs_, key, &DamageSign::key);
    return found == signs_.end() ? nullptr : &*found;
}

const DamageMode* DamageTable::mode(std::string_view name) const
{
    const auto wanted = lower_case(trimmed(name));
    const auto is = [&](const std::string& other) { return !wanted.empty() && lower_case(other) == wanted; };
    for (const auto& mode : modes_) {
        if (is(mode.key) || is(mode.name) || std::ranges::any_of(mode.examples, is)) {
            return &mode;
        }
    }
    return nullptr;
}

} // namespace lathhouse::plan
