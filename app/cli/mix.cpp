#include "app/cli/number_or_null.h"
#include "core/plan/mix.h"
#include "app/cli/all_commands.h"
#include "app/cli/growing_year.h"
#include "app/cli/household_options.h"
#include "app/cli/jugs.h"
#include "app/cli/sources_json.h"
#include "app/words/growing_words.h"
#include "app/words/mix_words.h"
#include "core/plan/conductivity.h"
#include "core/plan/growth_index.h"
#include "core/plan/kitchen_measures.h"

#include <array>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct MixOptions {
    std::string feed;
    double ppm = 0.0;
    double percent = 0.0;
    std::string water;
    double density = 0.0;
    bool liquid = false;
    bool has_ppm = false;
    bool has_percent = false;
    bool has_density = false;
    std::string plant;
    std::string feeder;
    std::string stuff;
};

constexpr std::array<std::string_view, 5> kFeedRules{"feed_dose", "powder_density", "conductivity",
                                                     "feed_greenhouse_ppm", "feed_home_share"};
constexpr std::array<std::string_view, 3> kSprayRules{"neem_percent", "oil_percent_most", "soap_percent"};

/// What a mix is asked for, once the options are read.
struct AskedFeed {
    std::optional<plan::FeedLabel> label; ///< None for a percent mix.
    std::optional<plants::FeedClass> feeder;
    std::string plant_name;
    double ppm = 0.0;
    bool ppm_of_class = false; ///< It was taken from the class.
};

std::string of_feed(const plan::Mix& mix, const AskedFeed& asked)
{
    std::ostringstream text;
    text << "Makes " << words::number(asked.ppm, 0) << " ppm nitrogen, "
         << words::number(*mix.phosphorus_ppm, 0) << " ppm phosphorus, "
         << words::number(*mix.potassium_ppm, 0) << " ppm potassium";
    if (asked.ppm_of_class) {
        text << " (the middle of what a " << plants::to_string(*asked.feeder) << " feeder gets"
             << (asked.plant_name.empty() ? "" : ", " + asked.plant_name) << ")";
    }
    text << ".\n" << words::feed_on_a_meter(plan::conductivity_of(*asked.label, asked.ppm)) << "\nThe label comes first; nothing for a plant that rests, is sick or was just potted: see `lathhouse "
            "feeding`.\n";
    return std::move(text).str();
}

std::vector<plan::CautionTopic> topics_of(const AskedFeed& asked, const MixOptions& options)
{
    using plan::CautionTopic;
    if (asked.label) {
        return {CautionTopic::Label, CautionTopic::FertiliserStorage};
    }
    std::vector topics{CautionTopic::Label,       CautionTopic::TestLeaf,  CautionTopic::SprayWeather,
                       CautionTopic::Bees,        CautionTopic::Ventilation, CautionTopic::Breathing,
                       CautionTopic::ChildOrAnimal};
    if (options.stuff == "oil") {
        topics.push_back(CautionTopic::Oil);
        topics.push_back(CautionTopic::Neem);
    } else if (options.stuff == "soap") {
        topics.push_back(CautionTopic::Soap);
        topics.push_back(CautionTopic::HomemadeMix);
    }
    return topics;
}

std::string text_of(const plan::Mix& mix, const MixOptions& options, const AskedFeed& asked, Litres water,
                    words::UnitSystem units)
{
    std::ostringstream text;
    text << "Into " << words::number(water.litres(), 2) << " L";
    if (units.us_measures()) {
        text << " (" << plan::us_measure(water) << ")";
    }
    text << " of water: ";
    if (mix.grams) {
        text << words::number(*mix.grams, 2) << " g of " << options.feed;
    }
    if (mix.volume) {
        text << (mix.grams ? ", " : "") << words::number(mix.volume->millilitres(), 1) << " ml, about "
             << plan::spoons(mix.volume->teaspoons()) << " US teaspoon";
    }
    if (mix.drops_about) {
        text << ", roughly " << words::number(*mix.drops_about, 0) << " drops";
    }
    text << ".\n";
    if (asked.label) {
        text << of_feed(mix, asked) << cautions_in_words(topics_of(asked, options)) << words::sources_line(plan::GrowingRules::built_in().sources_of(kFeedRules));
    } else {
        text << "The label and local rules come first. Try one leaf and wait two days; not above 27 C, not on dry "
                "or young plants. Mix afresh each time.\n"
             << cautions_in_words(topics_of(asked, options))
             << words::sources_line(plan::GrowingRules::built_in().sources_of(kSprayRules));
    }
    return std::move(text).str();
}

std::optional<plants::FeedClass> feeder_of(const std::string& word)
{
    for (const auto feeder :
         {plants::FeedClass::Light, plants::FeedClass::Medium, plants::FeedClass::Heavy}) {
        if (word == plants::to_string(feeder)) {
            return feeder;
        }
    }
    return std::nullopt;
}

Error which_way()
{
    return {ErrorCode::WrongUsage,
            "give either --feed N-P-K with --ppm, --for or --plant, or --percent, each with --water"};
}

Result<AskedFeed> read_feed(const Globals& globals, const MixOptions& options)
{
    AskedFeed asked;
    const auto label = plan::read_feed_label(options.feed);
    if (!label) {
        return label.error();
    }
    asked.label = *label;
    asked.feeder = feeder_of(options.feeder);
    if (!options.plant.empty()) {
        const auto household = household_of(globals, WithoutHousehold::IsAnError);
        if (!household) {
            return household.error();
        }
        const auto plant = plant_called(*household, options.plant);
        if (!plant) {
            return plant.error();
        }
        const auto* kind = plan::kind_of(**plant);
        if (kind == nullptr && !options.has_ppm) {
            return Error{ErrorCode::NotFound, "the kind of " + (*plant)->name +
                                                  " is not in the reference, so its strength is not known; give "
                                                  "--ppm, half of the label's at first"};
        }
        asked.plant_name = (*plant)->name;
        if (kind != nullptr) {
            asked.feeder = kind->feed;
        }
    }
    if (options.has_ppm) {
        asked.ppm = options.ppm;
        return asked;
    }
    const auto usual = plan::usual_nitrogen(*asked.feeder);
    if (!usual) {
        return Error{ErrorCode::OutOfRange, asked.plant_name + " is of a kind that takes no feed"};
    }
    asked.ppm = 0.5 * (usual->low + usual->high);
    asked.ppm_of_class = true;
    return asked;
}

Result<Answer> mix_of(const Globals& globals, const MixOptions& options)
{
    const bool by_feed = !options.feed.empty() &&
                         (options.has_ppm || !options.plant.empty() || !options.feeder.empty());
    const bool feed_word = !options.feed.empty() || options.has_ppm || !options.plant.empty() ||
                           !options.feeder.empty();
    if (by_feed == options.has_percent || (options.has_percent && feed_word) ||
        (!options.stuff.empty() && !options.has_percent)) {
        return which_way();
    }
    if (!options.plant.empty() && !options.feeder.empty()) {
        return Error{ErrorCode::WrongUsage, "give --plant or --for, not both"};
    }
    const auto jugs = jugs_of(globals);
    if (!jugs) {
        return jugs.error();
    }
    const auto water = plan::read_amount(options.water, *jugs);
    if (!water) {
        return water.error();
    }
    AskedFeed asked;
    if (by_feed) {
        auto read = read_feed(globals, options);
        if (!read) {
            return read.error();
        }
        asked = std::move(read).value();
    }
    auto mixed = options.has_percent
                     ? plan::percent_mix(options.percent, *water,
                                         options.stuff == "oil"    ? plan::SprayStuff::Oil
                                         : options.stuff == "soap" ? plan::SprayStuff::Soap
                                                                   : plan::SprayStuff::Other)
                     : plan::feed_mix(*asked.label, asked.ppm, *water,
                                      options.liquid ? plan::FeedForm::Liquid : plan::FeedForm::Powder,
                                      options.has_density ? std::optional{options.density} : std::nullopt);
    if (!mixed) {
        return mixed.error();
    }
    if (asked.feeder) {
        if (const auto warning = plan::nitrogen_warning(*asked.feeder, asked.ppm)) {
            mixed->warnings.push_back(*warning);
        }
    }
    const auto volume = [&](auto measure) {
        return mixed->volume ? json_number(measure(*mixed->volume)) : Json(nullptr);
    };
    Json json{{"grams", number_or_null(mixed->grams)},
              {"millilitres", volume([](Litres v) { return v.millilitres(); })},
              {"teaspoons", volume([](Litres v) { return v.teaspoons(); })},
              {"drops_about", number_or_null(mixed->drops_about)},
              {"nitrogen_ppm", asked.label ? json_number(asked.ppm) : Json(nullptr)},
              {"phosphorus_ppm", number_or_null(mixed->phosphorus_ppm)},
              {"potassium_ppm", number_or_null(mixed->potassium_ppm)},
              {"water_l", json_number(water->litres())},
              {"conductivity_ms_cm", nullptr}};
    if (asked.label) {
        const auto hint = plan::conductivity_of(*asked.label, asked.ppm);
        json["conductivity_ms_cm"] = {{"least", json_number(hint.least)},
                                      {"usual", json_number(hint.usual)},
                                      {"highest", json_number(hint.highest)}};
        json["sources"] = sources_json(kFeedRules);
    } else {
        json["sources"] = sources_json(kSprayRules);
    }
    json["cautions"] = caution_texts(topics_of(asked, options));
    return Answer{json, text_of(*mixed, options, asked, *water, globals.units), mixed->warnings};
}

} // namespace

void add_mix(Commands& commands)
{
    auto options = std::make_shared<MixOptions>();
    CLI::App& command =
        commands.add("mix", "How much feed, oil or soap goes into the water",
                     "lathhouse mix --feed 20-10-20 --ppm 100 --water '2 L'\n  "
                     "lathhouse mix --percent 0.5 --of oil --water '4 cup'");
    command.add_option("--feed", options->feed, "The three numbers of the feed's label")->type_name("N-P-K");
    CLI::Option* ppm =
        command.add_option("--ppm", options->ppm, "Nitrogen wanted, milligrams a litre")->type_name("N");
    command.add_option("--plant", options->plant, "For this plant of the household, by id or name")
        ->type_name("ID");
    command.add_option("--for", options->feeder, "For a light, medium or heavy feeder")
        ->check(CLI::IsMember({"light", "medium", "heavy"}));
    CLI::Option* percent =
        command.add_option("--percent", options->percent, "Oil or soap, percent of the water's volume")
            ->type_name("P");
    command.add_option("--of", options->stuff, "What the percent are of: oil or soap")
        ->check(CLI::IsMember({"oil", "soap"}));
    command.add_option("--water", options->water, "Such as '2 L', '500 ml', '4 cup', 'gal-us', or a jug's name")
        ->required()
        ->type_name("AMOUNT");
    CLI::Option* density =
        command.add_option("--density", options->density, "Of the feed, grams a millilitre")
            ->type_name("G/ML");
    command.add_flag("--liquid", options->liquid, "The feed is a liquid");
    commands.on_run(command, [options, ppm, percent, density](const Globals& globals) {
        MixOptions asked = *options;
        asked.has_ppm = ppm->count() > 0;
        asked.has_percent = percent->count() > 0;
        asked.has_density = density->count() > 0;
        return mix_of(globals, asked);
    });
}

} // namespace lathhouse::cli
