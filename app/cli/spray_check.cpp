#include "app/cli/all_commands.h"
#include "app/cli/household_options.h"
#include "app/cli/sources_json.h"
#include "app/cli/yes_no.h"
#include "app/words/source_words.h"
#include "app/words/spray_words.h"
#include "core/plan/spray_gate.h"

#include <algorithm>
#include <array>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct SprayOptions {
    std::string spray;
    std::string plant; ///< Id or name.
    std::string kind;
    std::optional<double> temperature;
    std::optional<double> test_leaf_hours;
    std::optional<double> repotted_days;
    std::optional<double> mixed_hours;
    std::string outdoors, label_read, label_forbids, leaf_hurt, sun, dry, seedling, wind, rain, flowers,
        children, animals, asthma, fresh_air, flame, edible, crop_on_label, homemade;
};

struct YesNo {
    const char* name;
    std::string SprayOptions::*given;
    std::optional<bool> plan::SprayAnswers::*answer;
    plan::SprayCheck check; ///< That asks it.
    const char* help;
};

const std::array<YesNo, 18>& yes_no_options()
{
    using plan::SprayAnswers;
    using plan::SprayCheck;
    static const std::array<YesNo, 18> options{
        {{"--outdoors", &SprayOptions::outdoors, &SprayAnswers::outdoors, SprayCheck::Place,
          "Sprayed outdoors"},
         {"--label-read", &SprayOptions::label_read, &SprayAnswers::label_read, SprayCheck::Label,
          "The label was read"},
         {"--label-forbids", &SprayOptions::label_forbids, &SprayAnswers::label_forbids, SprayCheck::LabelForbids,
          "It forbids this plant, pest or place"},
         {"--leaf-hurt", &SprayOptions::leaf_hurt, &SprayAnswers::test_leaf_hurt, SprayCheck::TestLeafHurt,
          "The tried leaf was hurt"},
         {"--sun", &SprayOptions::sun, &SprayAnswers::direct_sun, SprayCheck::DirectSun,
          "In direct sun"},
         {"--dry", &SprayOptions::dry, &SprayAnswers::dry_or_wilted, SprayCheck::DryOrWilted,
          "Dry or wilted"},
         {"--seedling", &SprayOptions::seedling, &SprayAnswers::seedling, SprayCheck::Seedling,
          "A seedling"},
         {"--wind", &SprayOptions::wind, &SprayAnswers::windy, SprayCheck::Windy,
          "Windy"},
         {"--rain", &SprayOptions::rain, &SprayAnswers::rain_soon, SprayCheck::RainSoon,
          "Rain is near"},
         {"--flowers", &SprayOptions::flowers, &SprayAnswers::open_flowers, SprayCheck::OpenFlowers,
          "Flowers are open"},
         {"--children", &SprayOptions::children, &SprayAnswers::child_near, SprayCheck::ChildNear,
          "Children near"},
         {"--animals", &SprayOptions::animals, &SprayAnswers::animal_near, SprayCheck::AnimalNear,
          "Animals near, fish too"},
         {"--asthma", &SprayOptions::asthma, &SprayAnswers::asthma_or_pregnant, SprayCheck::AsthmaOrPregnant,
          "Somebody with asthma, or pregnant"},
         {"--fresh-air", &SprayOptions::fresh_air, &SprayAnswers::fresh_air, SprayCheck::NoFreshAir,
          "Fresh air"},
         {"--flame", &SprayOptions::flame, &SprayAnswers::flame_near, SprayCheck::FlameNear,
          "A flame or spark near"},
         {"--edible", &SprayOptions::edible, &SprayAnswers::edible, SprayCheck::Edible,
          "Any of it is eaten"},
         {"--crop-on-label", &SprayOptions::crop_on_label, &SprayAnswers::crop_on_label, SprayCheck::EdibleNotOnLabel,
          "The crop stands on the label"},
         {"--homemade", &SprayOptions::homemade, &SprayAnswers::homemade, SprayCheck::Homemade,
          "Mixed from household detergent"}}};
    return options;
}

/// The option that answers a question.
std::string option_of(plan::SprayCheck check)
{
    switch (check) {
    case plan::SprayCheck::TestLeaf:
        return "--test-leaf";
    case plan::SprayCheck::TemperatureLow:
    case plan::SprayCheck::TemperatureHigh:
        return "--temperature";
    case plan::SprayCheck::JustRepotted:
        return "--repotted-days";
    case plan::SprayCheck::MixedHours:
        return "--mixed-hours";
    case plan::SprayCheck::OpenFlowersOutdoors:
        return option_of(plan::SprayCheck::OpenFlowers);
    default:
        return std::ranges::find(yes_no_options(), check, &YesNo::check)->name;
    }
}

Result<const plants::PlantKind*> kind_of(const Globals& globals, const SprayOptions& options)
{
    if (!options.plant.empty() && !options.kind.empty()) {
        return Error{ErrorCode::WrongUsage, "give --plant or --kind, not both"};
    }
    if (!options.kind.empty()) {
        return plants::PlantReference::built_in().find(options.kind);
    }
    if (options.plant.empty()) {
        return static_cast<const plants::PlantKind*>(nullptr);
    }
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    const auto plant = plant_called(home->as_told, options.plant);
    if (!plant) {
        return plant.error();
    }
    // A kind of the grower's own has no row; nothing is known of what hurts it.
    const auto kind = plants::PlantReference::built_in().find((*plant)->kind);
    return kind ? *kind : nullptr;
}

Result<void> check_number(const char* option, const std::optional<double>& value, double low, double high)
{
    if (value && !(*value >= low && *value <= high)) {
        return Error{ErrorCode::OutOfRange, std::string{option} + " must lie within " +
                                                words::number(low, 0) + " and " + words::number(high, 0)};
    }
    return {};
}

Result<Answer> check_spray(const Globals& globals, const SprayOptions& options)
{
    plan::SprayAnswers answers;
    const auto spray = plan::spray_kind_of(options.spray);
    if (!spray) {
        return Error{ErrorCode::WrongUsage,
                     "--spray takes soap, oil, neem, alcohol, systemic or other, not \"" + options.spray + "\""};
    }
    answers.spray = *spray;
    const auto kind = kind_of(globals, options);
    if (!kind) {
        return kind.error();
    }
    answers.plant = *kind;
    for (const auto& option : yes_no_options()) {
        const auto answer = yes_or_no(option.name, options.*option.given);
        if (!answer) {
            return answer.error();
        }
        answers.*option.answer = *answer;
    }
    for (const auto& checked : {check_number("--temperature", options.temperature, -30.0, 60.0),
                                check_number("--test-leaf", options.test_leaf_hours, 0.0, 1000.0),
                                check_number("--repotted-days", options.repotted_days, 0.0, 10000.0),
                                check_number("--mixed-hours", options.mixed_hours, 0.0, 1000.0)}) {
        if (!checked) {
            return checked.error();
        }
    }
    if (options.temperature) {
        answers.temperature = Celsius::from_degrees(*options.temperature);
    }
    answers.test_leaf_hours = options.test_leaf_hours;
    answers.days_since_repotting = options.repotted_days;
    answers.mixed_hours = options.mixed_hours;
    const auto decision = plan::decide_spray(answers);

    Json findings = Json::array();
    std::ostringstream text;
    text << words::spray_verdict(decision) << '\n';
    std::vector<std::string> said;
    for (const auto& finding : decision.findings) {
        const auto sentence = words::spray_finding(finding, globals.units);
        findings.push_back({{"check", plan::to_string(finding.check)},
                            {"verdict", plan::to_string(finding.verdict)},
                            {"why", sentence},
                            {"sources", finding.sources}});
        text << "  " << plan::to_string(finding.verdict) << ": " << sentence << '\n';
    }
    Json open = Json::array();
    for (const auto check : decision.open) {
        const auto question = words::spray_question(check) + " (" + option_of(check) + ")";
        if (std::ranges::find(said, question) == said.end()) {
            said.push_back(question);
            open.push_back({{"check", plan::to_string(check)}, {"question", question}});
            text << "  open: " << question << '\n';
        }
    }
    Json conflicts = Json::array();
    for (const auto& conflict : decision.conflicts) {
        conflicts.push_back({{"check", plan::to_string(conflict.check)},
                             {"strict", json_number(conflict.strict)},
                             {"strict_sources", conflict.strict_sources},
                             {"usual", json_number(conflict.usual)},
                             {"usual_sources", conflict.usual_sources}});
        text << "  " << words::spray_conflict(conflict, globals.units) << '\n';
    }
    if (decision.verdict == plan::SprayVerdict::Go) {
        text << words::spray_go() << '\n';
    } else if (!options.test_leaf_hours) {
        text << "A leaf tried today is looked at from "
             << words::day(globals.today + calendar::Days{plan::kTestLeafFirstDay}) << " to "
             << words::day(globals.today + calendar::Days{plan::kTestLeafLastDay}) << ".\n";
    }
    text << words::sources_line(decision.sources);
    return Answer{{{"verdict", plan::to_string(decision.verdict)},
                   {"findings", findings},
                   {"open", open},
                   {"conflicts", conflicts},
                   {"sources", sources_json(decision.sources)}},
                  std::move(text).str(),
                  {}};
}

} // namespace

void add_spray_check(Commands& commands)
{
    auto options = std::make_shared<SprayOptions>();
    CLI::App& command =
        commands.add("spray-check", "Whether to spray now, to wait, or not at all, and why",
                     "lathhouse spray-check --spray neem --kind 'Boston fern' --temperature 29 --outdoors no");
    command.add_option("--spray", options->spray, "soap, oil, neem, alcohol, systemic or other")
        ->required()
        ->type_name("KIND");
    command.add_option("--plant", options->plant, "Plant of the household, by id or name")->type_name("ID");
    command.add_option("--kind", options->kind, "Kind of plant by name")->type_name("NAME");
    command.add_option("--temperature", options->temperature, "Warmest until it is dry, degrees Celsius")
        ->type_name("C");
    command.add_option("--test-leaf", options->test_leaf_hours, "Hours since one leaf was tried")
        ->type_name("HOURS");
    command.add_option("--repotted-days", options->repotted_days, "Days since it was repotted")
        ->type_name("DAYS");
    command.add_option("--mixed-hours", options->mixed_hours, "Hours since it was mixed")->type_name("HOURS");
    for (const auto& option : yes_no_options()) {
        command.add_option(option.name, (*options).*option.given, option.help)->type_name("yes|no");
    }
    commands.on_run(command, [options](const Globals& globals) { return check_spray(globals, *options); });
}

} // namespace lathhouse::cli
