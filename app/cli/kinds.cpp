#include "app/cli/kinds.h"

#include "app/cli/list.h"
#include "app/cli/sources_json.h"
#include "app/words/kind_words.h"
#include "core/base/parse.h"
#include "core/plan/cautions.h"
#include "core/plants/plant_kind.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <set>

namespace lathhouse::cli {
namespace {

using plants::PlantKind;
using plants::PlantReference;

/// One figure of a row as it is shown: what it is, its value, what it rests on.
struct Figure {
    std::string key; ///< In JSON.
    std::string name;
    Json value;
    std::string shown;
    std::string rests_on;
};

Json range_json(plants::Range range)
{
    return {json_number(range.low), json_number(range.high)};
}
std::string range_text(plants::Range range, const std::string& unit)
{
    const auto bare = [](double value) { return words::number(value, value == std::floor(value) ? 0 : 1); };
    return bare(range.low) + (range.high > range.low ? " to " + bare(range.high) : "") + " " + unit;
}

std::vector<Figure> figures_of(const PlantKind& kind, words::UnitSystem units)
{
    std::vector<Figure> figures;
    const auto add = [&](std::string key, std::string name, Json value, std::string shown, std::string on) {
        figures.push_back(
            {std::move(key), std::move(name), std::move(value), std::move(shown), std::move(on)});
    };
    const auto add_degrees = [&](std::string key, std::string name, Celsius value, const std::string& on) {
        add(std::move(key), std::move(name), json_number(value.degrees()), words::temperature(value, units),
            on);
    };
    const auto cold = words::rests_on(kind.cold_evidence);
    add_degrees("safe_night_c", "safe night", kind.lines.safe_night, cold);
    add_degrees("damage_c", "damage begins", kind.lines.damage_begins, cold);
    add_degrees("lethal_c", "may kill", kind.lines.lethal, cold);
    const auto row = words::rests_on_row(kind);
    add_degrees("comfort_low_c", "grows well from", kind.comfort_low, row);
    add_degrees("comfort_high_c", "grows well to", kind.comfort_high, row);
    add_degrees("heat_limit_c", "heat harms from", kind.heat_limit, row);
    const auto moles = [](DailyLight light) { return words::number(light.moles(), 2) + " mol a day"; };
    add("light", "light", plants::to_string(kind.light), words::light_class(kind.light), row);
    const std::string by_light = "its light class; the turning into moles is common practice, no source";
    add("light_survive_mol", "light to survive", json_number(kind.light_to_survive.moles()),
        moles(kind.light_to_survive), by_light);
    add("light_thrive_mol", "light to thrive", json_number(kind.light_to_thrive.moles()),
        moles(kind.light_to_thrive), by_light);
    const std::string practice = "common practice, no source";
    add("drying_class", "water", kind.drying_class, words::drying_class(kind.drying_class), practice);
    add("growth_season", "grows in", kind.growth_season, kind.growth_season, row);
    add("rest", "rest", kind.rest.empty() ? Json(nullptr) : Json(kind.rest),
        kind.rest.empty() ? "none known" : kind.rest, row);
    add("photoperiod", "day length", kind.photoperiod.empty() ? Json(nullptr) : Json(kind.photoperiod),
        kind.photoperiod.empty() ? "not known" : kind.photoperiod, row);
    add("feed", "feed", plants::to_string(kind.feed), std::string{plants::to_string(kind.feed)}, practice);
    add("feed_nitrogen_ppm", "nitrogen of each feed",
        kind.feed == plants::FeedClass::None ? Json(nullptr) : range_json(kind.feed_nitrogen_ppm),
        kind.feed == plants::FeedClass::None ? "not fed" : range_text(kind.feed_nitrogen_ppm, "ppm"),
        "its feed class; " + practice);
    add("repot_years", "repot after", range_json(kind.repot_years), range_text(kind.repot_years, "years"),
        practice);
    add("sulks", "sheds leaves when moved", kind.sulks, kind.sulks ? "yes" : "not known to", row);
    const auto poison = words::toxicity_rests_on(kind);
    add("to_people", "to people", plants::to_string(kind.to_people), words::toxicity(kind.to_people), poison);
    add("to_pets", "to animals", plants::to_string(kind.to_pets), words::toxicity(kind.to_pets), poison);
    return figures;
}

std::string confidence_sentence(const PlantKind& kind)
{
    return "Confidence in the row as a whole: " + kind.confidence + "." +
           (kind.cold_evidence == plants::Evidence::Memory ? " No published temperature was found: the cold "
                                                             "lines are common practice, set to the cautious "
                                                             "side.\n"
                                                           : "\n");
}

Answer kind_answer(const PlantKind& kind, words::UnitSystem units)
{
    const auto& reference = PlantReference::built_in();
    Json figures = Json::object();
    std::vector<std::vector<std::string>> rows{{"figure", "value", "rests on"}};
    for (const auto& figure : figures_of(kind, units)) {
        figures[figure.key] = {{"value", figure.value}, {"rests_on", figure.rests_on}};
        rows.push_back({figure.name, figure.shown, figure.rests_on});
    }
    std::string text = kind.common_names.front() + " (" + kind.botanical_name + "), " + kind.family + ", " +
                       kind.group + "\n";
    for (std::size_t index = 1; index < kind.common_names.size(); ++index) {
        text += (index == 1 ? "Also " : ", ") + kind.common_names[index];
    }
    text += (kind.common_names.size() > 1 ? "\n\n" : "\n") + table(rows) + "\n" + confidence_sentence(kind);
    if (!kind.note.empty()) {
        text += "Note: " + kind.note + "\n";
    }
    if (!kind.hazards.empty()) {
        text += "Hazards: " + kind.hazards + "\n";
    }
    Json cautions = Json::array();
    for (const auto* caution : plan::cautions_for_plant(kind)) {
        text += (cautions.empty() ? "\nTake care\n- " : "- ") + caution->text + "\n";
        cautions.push_back({{"id", caution->id}, {"text", caution->text}});
    }
    text += "\nSources\n";
    Json sources = Json::array();
    for (const auto piece : split(kind.sources, ';')) {
        const auto& source = *reference.source(trimmed(piece)); // The reader has checked that it is there.
        sources.push_back(source_json(source));
        sources.back()["common_practice"] = source.key == plants::kCommonPractice;
        text += "- " + words::source_line(source) + "\n";
    }
    return {{{"botanical_name", kind.botanical_name},
             {"common_names", kind.common_names},
             {"family", kind.family},
             {"group", kind.group},
             {"figures", figures},
             {"evidence", plants::to_string(kind.cold_evidence)},
             {"evidence_means", words::rests_on(kind.cold_evidence)},
             {"confidence", kind.confidence},
             {"hazards", kind.hazards.empty() ? Json(nullptr) : Json(kind.hazards)},
             {"note", kind.note.empty() ? Json(nullptr) : Json(kind.note)},
             {"cautions", cautions},
             {"sources", sources}},
            text,
            {}};
}

/// Names that have `part` in them, for a part of a name such as "lavender".
std::vector<std::string> names_with(std::string_view part)
{
    constexpr std::size_t kLeastLetters = 3;
    constexpr std::size_t kMost = 6;
    std::vector<std::string> found;
    if (part.size() < kLeastLetters) {
        return found;
    }
    for (const auto& kind : PlantReference::built_in().kinds()) {
        std::vector<std::string> names = kind.common_names;
        names.push_back(kind.botanical_name);
        for (const auto& name : names) {
            if (found.size() < kMost && lower_case(name).find(part) != std::string::npos) {
                found.push_back(name);
                break;
            }
        }
    }
    return found;
}

Result<Answer> show_kind(const std::string& name, words::UnitSystem units)
{
    const auto wanted = std::string{trimmed(name)};
    if (wanted.empty()) {
        return Error{ErrorCode::WrongUsage, "show kind needs a name, such as lathhouse show kind Oleander"};
    }
    const auto& reference = PlantReference::built_in();
    const auto found = reference.find(wanted);
    if (found) {
        return kind_answer(**found, units);
    }
    const auto parts = names_with(lower_case(wanted));
    if (parts.empty()) {
        return found.error();
    }
    std::string message = "no plant named \"" + wanted + "\" in the reference; these have it in their name: ";
    for (std::size_t index = 0; index < parts.size(); ++index) {
        message += (index == 0 ? "" : ", ") + parts[index];
    }
    return Error{ErrorCode::NotFound, message};
}

struct Filter {
    std::string evidence;
    std::string group;
};

/// Errors: WrongUsage with the words that are known.
Result<void> known_word(const std::string& option, const std::string& word,
                        const std::set<std::string>& known)
{
    if (word.empty() || known.contains(word)) {
        return {};
    }
    std::string message = option + " \"" + word + "\" is not known; take one of";
    for (const auto& each : known) {
        message += (each == *known.begin() ? " " : ", ") + each;
    }
    return Error{ErrorCode::WrongUsage, message};
}

Result<Answer> list_kinds(const Filter& filter, words::UnitSystem units)
{
    const auto kinds = PlantReference::built_in().kinds();
    std::set<std::string> evidences;
    std::set<std::string> groups;
    for (const auto& kind : kinds) {
        evidences.emplace(plants::to_string(kind.cold_evidence));
        groups.insert(kind.group);
    }
    for (const auto& checked : {known_word("--evidence", filter.evidence, evidences),
                                known_word("--group", filter.group, groups)}) {
        if (!checked) {
            return checked.error();
        }
    }
    Json listed = Json::array();
    std::vector<std::vector<std::string>> rows{
        {"plant", "botanical name", "group", "safe night", "damage", "lethal", "evidence", "confidence"}};
    for (const auto& kind : kinds) {
        const std::string evidence{plants::to_string(kind.cold_evidence)};
        if ((!filter.evidence.empty() && evidence != filter.evidence) ||
            (!filter.group.empty() && kind.group != filter.group)) {
            continue;
        }
        listed.push_back({{"name", kind.common_names.front()},
                          {"botanical_name", kind.botanical_name},
                          {"group", kind.group},
                          {"safe_night_c", json_number(kind.lines.safe_night.degrees())},
                          {"damage_c", json_number(kind.lines.damage_begins.degrees())},
                          {"lethal_c", json_number(kind.lines.lethal.degrees())},
                          {"evidence", evidence},
                          {"confidence", kind.confidence}});
        rows.push_back({kind.common_names.front(), kind.botanical_name, kind.group,
                        words::temperature(kind.lines.safe_night, units),
                        words::temperature(kind.lines.damage_begins, units),
                        words::temperature(kind.lines.lethal, units), evidence, kind.confidence});
    }
    const auto count = listed.size();
    return Answer{{{"kinds", listed}},
                  (count > 0 ? table(rows) : std::string{}) + std::to_string(count) + " of " +
                      std::to_string(kinds.size()) +
                      " kinds; lathhouse show kind NAME gives every figure with its source\n",
                  {}};
}

} // namespace

void add_kind_lists(Commands& commands, CLI::App& list)
{
    CLI::App& command = *list.add_subcommand("kinds", "Plants that the program knows, with their evidence");
    command.fallthrough();
    const auto filter = std::make_shared<Filter>();
    command.add_option("--evidence", filter->evidence,
                       "Only those whose cold lines rest on it, such as memory or published_number");
    command.add_option("--group", filter->group, "Only those of a group, such as succulent or herb");
    commands.on_run(command, [filter](const Globals& globals) { return list_kinds(*filter, globals.units); });
}

void add_kind_shows(Commands& commands, CLI::App& show)
{
    CLI::App& command =
        *show.add_subcommand("kind", "One kind of plant: every figure, what it rests on, its sources");
    command.fallthrough();
    const auto name = std::make_shared<std::vector<std::string>>();
    command.add_option("NAME", *name, "Common or botanical name")->required();
    commands.on_run(command, [name](const Globals& globals) {
        std::string joined;
        for (const auto& word : *name) {
            joined += (joined.empty() ? "" : " ") + word;
        }
        return show_kind(joined, globals.units);
    });
}

} // namespace lathhouse::cli
