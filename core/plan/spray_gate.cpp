#include "core/plan/spray_gate.h"

#include "core/base/cell_reader.h"
#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/plan/source_keys.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

namespace lathhouse::plan {

std::string_view embedded_spray_rules();
std::string_view embedded_sensitive_kinds();

namespace {

constexpr std::array<std::string_view, 6> kSprays{"soap", "oil", "neem", "alcohol", "systemic", "other"};
constexpr std::array<std::string_view, 25> kChecks{
    "label",         "label_forbids",       "test_leaf",      "test_leaf_hurt",  "temperature_low",
    "temperature_high", "direct_sun",       "dry_or_wilted",  "just_repotted",   "seedling",
    "windy",         "rain_soon",           "open_flowers_outdoors", "open_flowers", "child_near",
    "animal_near",   "asthma_or_pregnant",  "no_fresh_air",   "flame_near",      "edible",
    "edible_not_on_label", "homemade",      "mixed_hours",    "sensitive_kind",
    "place"};
constexpr std::array<std::string_view, 4> kVerdicts{"go", "note", "wait", "never"};

template <class Value, std::size_t Count>
std::optional<Value> value_of(const std::array<std::string_view, Count>& words, std::string_view word)
{
    const auto found = std::ranges::find(words, word);
    return found == words.end() ? std::nullopt
                                : std::optional{static_cast<Value>(found - words.begin())};
}

std::optional<SprayCheck> check_of(std::string_view word)
{
    return value_of<SprayCheck>(kChecks, word);
}

SprayRule read_rule(CellReader& row)
{
    SprayRule rule{.id = row.filled("id"),
                   .spray = {},
                   .check = row.word<SprayCheck>("check", check_of, SprayCheck::Label),
                   .low = row.number_if_any("low"),
                   .high = row.number_if_any("high"),
                   .verdict = row.word<SprayVerdict>(
                       "verdict", [](std::string_view word) { return value_of<SprayVerdict>(kVerdicts, word); },
                       SprayVerdict::Wait),
                   .sources = row.filled_list("sources"),
                   .confidence = row.filled("confidence"),
                   .note = row.text("note")};
    if (const auto spray = row.filled("spray"); spray != "any") {
        rule.spray = row.word<SprayKind>("spray", spray_kind_of, SprayKind::Other);
    }
    const auto needs = [&](const std::optional<double>& limit, const char* column) {
        if (!limit) {
            row.fail_at(std::string{"this check needs "} + column);
        }
    };
    switch (rule.check) {
    case SprayCheck::TestLeaf:
    case SprayCheck::TemperatureLow:
        needs(rule.low, "low");
        break;
    case SprayCheck::TemperatureHigh:
    case SprayCheck::JustRepotted:
    case SprayCheck::MixedHours:
        needs(rule.high, "high");
        break;
    default:
        break;
    }
    return rule;
}

/// Whether the answers break a rule; nullopt where they do not say. `given` takes the figure.
struct Outcome {
    bool asked = true; ///< False where the question does not arise.
    std::optional<bool> broken;
    std::optional<double> given;
};

Outcome plain(const std::optional<bool>& answer)
{
    return {true, answer, {}};
}

Outcome inverse(const std::optional<bool>& answer)
{
    return {true, answer ? std::optional{!*answer} : std::nullopt, {}};
}

Outcome below(const std::optional<double>& answer, double limit)
{
    return {true, answer ? std::optional{*answer < limit} : std::nullopt, answer};
}

Outcome above(const std::optional<double>& answer, double limit)
{
    return {true, answer ? std::optional{*answer > limit} : std::nullopt, answer};
}

/// A question that arises only where `when` is so; while `when` is open it is not asked either.
Outcome only_when(const std::optional<bool>& when, Outcome outcome)
{
    outcome.asked = when.value_or(false);
    return outcome;
}

Outcome outcome_of(const SprayRule& rule, const SprayAnswers& answers)
{
    const auto degrees = answers.temperature ? std::optional{answers.temperature->degrees()} : std::nullopt;
    switch (rule.check) {
    case SprayCheck::Label:
        return inverse(answers.label_read);
    case SprayCheck::LabelForbids:
        return only_when(answers.label_read, plain(answers.label_forbids));
    case SprayCheck::TestLeaf:
        return below(answers.test_leaf_hours, *rule.low);
    case SprayCheck::TestLeafHurt:
        return only_when(answers.test_leaf_hours.has_value(), plain(answers.test_leaf_hurt));
    case SprayCheck::TemperatureLow:
        return below(degrees, *rule.low);
    case SprayCheck::TemperatureHigh:
        return above(degrees, *rule.high);
    case SprayCheck::DirectSun:
        return plain(answers.direct_sun);
    case SprayCheck::DryOrWilted:
        return plain(answers.dry_or_wilted);
    case SprayCheck::JustRepotted: {
        // Without a figure it is taken as long ago, as it is for most plants.
        auto outcome = below(answers.days_since_repotting, *rule.high);
        outcome.asked = answers.days_since_repotting.has_value();
        return outcome;
    }
    case SprayCheck::Seedling:
        return plain(answers.seedling);
    case SprayCheck::Windy:
        return only_when(answers.outdoors, plain(answers.windy));
    case SprayCheck::RainSoon:
        return only_when(answers.outdoors, plain(answers.rain_soon));
    case SprayCheck::OpenFlowersOutdoors:
        return only_when(answers.outdoors, plain(answers.open_flowers));
    case SprayCheck::OpenFlowers:
        return plain(answers.open_flowers);
    case SprayCheck::ChildNear:
        return plain(answers.child_near);
    case SprayCheck::AnimalNear:
        return plain(answers.animal_near);
    case SprayCheck::AsthmaOrPregnant:
        return plain(answers.asthma_or_pregnant);
    case SprayCheck::NoFreshAir:
        return only_when(!answers.outdoors.value_or(false), inverse(answers.fresh_air));
    case SprayCheck::FlameNear:
        return plain(answers.flame_near);
    case SprayCheck::Edible:
        return plain(answers.edible);
    case SprayCheck::EdibleNotOnLabel:
        return only_when(answers.edible, inverse(answers.crop_on_label));
    case SprayCheck::Homemade: {
        auto outcome = plain(answers.homemade);
        outcome.asked = answers.homemade.has_value();
        return outcome;
    }
    case SprayCheck::MixedHours: {
        auto outcome = above(answers.mixed_hours, *rule.high);
        outcome.asked = answers.mixed_hours.has_value();
        return outcome;
    }
    case SprayCheck::SensitiveKind:
    case SprayCheck::Place:
        break;
    }
    return {false, {}, {}};
}

bool is_named(const plants::PlantKind& kind, std::string_view name)
{
    const auto wanted = lower_case(name);
    const auto is = [&](std::string_view other) { return lower_case(other) == wanted; };
    const std::string_view botanical = kind.botanical_name;
    return is(botanical) || is(botanical.substr(0, botanical.find(' '))) || is(kind.family) ||
           is(kind.group) || std::ranges::any_of(kind.common_names, is);
}

void judge_kind(SprayDecision& decision, const SprayAnswers& answers, const SprayRules& rules)
{
    if (answers.plant == nullptr) {
        return;
    }
    constexpr double kTwoDays = 48.0;
    for (const auto& row : rules.sensitive()) {
        if (row.spray != answers.spray || !is_named(*answers.plant, row.name)) {
            continue;
        }
        add_keys(decision.sources, row.sources);
        const bool stood = answers.test_leaf_hours.value_or(0.0) >= kTwoDays &&
                           !answers.test_leaf_hurt.value_or(true);
        decision.findings.push_back({SprayCheck::SensitiveKind,
                                     row.avoid ? SprayVerdict::Never
                                     : stood   ? SprayVerdict::Note
                                               : SprayVerdict::Wait,
                                     {},
                                     {},
                                     {},
                                     row.sources,
                                     row.name + (row.note.empty() ? "" : ": " + row.note)});
    }
}

/// Rows of one check with different limits for this spray.
void find_conflicts(SprayDecision& decision, const std::vector<const SprayRule*>& used)
{
    for (std::size_t a = 0; a < used.size(); ++a) {
        for (std::size_t b = a + 1; b < used.size(); ++b) {
            const auto& first = *used[a];
            const auto& second = *used[b];
            if (first.check == second.check && first.high && second.high && *first.high != *second.high) {
                const auto& strict = *first.high < *second.high ? first : second;
                const auto& usual = &strict == &first ? second : first;
                decision.conflicts.push_back(
                    {first.check, *strict.high, strict.sources, *usual.high, usual.sources});
            }
        }
    }
}

} // namespace

std::string_view to_string(SprayKind kind)
{
    return kSprays[static_cast<std::size_t>(kind)];
}

std::optional<SprayKind> spray_kind_of(std::string_view word)
{
    return value_of<SprayKind>(kSprays, word);
}

std::string_view to_string(SprayCheck check)
{
    return kChecks[static_cast<std::size_t>(check)];
}

std::string_view to_string(SprayVerdict verdict)
{
    return kVerdicts[static_cast<std::size_t>(verdict)];
}

Result<SprayRules> SprayRules::parse(std::string_view rules_csv, std::string_view kinds_csv)
{
    const auto rule_rows = CsvTable::parse(rules_csv, "spray_rules.csv");
    if (!rule_rows) {
        return rule_rows.error();
    }
    const auto kind_rows = CsvTable::parse(kinds_csv, "sensitive_kinds.csv");
    if (!kind_rows) {
        return kind_rows.error();
    }
    SprayRules rules;
    for (std::size_t index = 0; index < rule_rows->row_count(); ++index) {
        CellReader row{*rule_rows, index};
        auto rule = read_rule(row);
        if (std::ranges::find(rules.rules_, rule.id, &SprayRule::id) != rules.rules_.end()) {
            row.fail_at("the id " + rule.id + " is given twice");
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        rules.rules_.push_back(std::move(rule));
    }
    for (std::size_t index = 0; index < kind_rows->row_count(); ++index) {
        CellReader row{*kind_rows, index};
        const auto grade = row.filled("grade");
        if (grade != "avoid" && grade != "careful") {
            row.fail_at("grade must be avoid or careful, not \"" + grade + "\"");
        }
        SensitiveKind kind{row.word<SprayKind>("spray", spray_kind_of, SprayKind::Other), row.filled("name"),
                           grade == "avoid", row.filled_list("sources"), row.text("note")};
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        rules.sensitive_.push_back(std::move(kind));
    }
    return rules;
}

const SprayRules& SprayRules::built_in()
{
    static const SprayRules rules = [] {
        auto parsed = parse(embedded_spray_rules(), embedded_sensitive_kinds());
        if (!parsed) {
            std::abort(); // A fault of the build; a test parses the same bytes.
        }
        return std::move(parsed).value();
    }();
    return rules;
}

SprayDecision decide_spray(const SprayAnswers& answers, const SprayRules& rules)
{
    SprayDecision decision{SprayVerdict::Go, {}, {}, {}, {}};
    std::vector<const SprayRule*> used;
    for (const auto& rule : rules.rules()) {
        if (rule.spray && *rule.spray != answers.spray) {
            continue;
        }
        const auto outcome = outcome_of(rule, answers);
        if (!outcome.asked) {
            continue;
        }
        used.push_back(&rule);
        add_keys(decision.sources, rule.sources);
        if (!outcome.broken) {
            if (std::ranges::find(decision.open, rule.check) == decision.open.end()) {
                decision.open.push_back(rule.check);
            }
        } else if (*outcome.broken) {
            decision.findings.push_back(
                {rule.check, rule.verdict, outcome.given, rule.low, rule.high, rule.sources, rule.note});
        }
    }
    if (!answers.outdoors) {
        decision.open.push_back(SprayCheck::Place);
    }
    judge_kind(decision, answers, rules);
    find_conflicts(decision, used);
    std::ranges::stable_sort(decision.findings, std::ranges::greater{}, &SprayFinding::verdict);
    if (!decision.findings.empty()) {
        decision.verdict = decision.findings.front().verdict;
    }
    if (!decision.open.empty()) {
        decision.verdict = std::max(decision.verdict, SprayVerdict::Wait);
    }
    if (decision.verdict == SprayVerdict::Note) {
        decision.verdict = SprayVerdict::Go;
    }
    return decision;
}

} // namespace lathhouse::plan
