#include "core/plan/mix.h"
#include "app/cli/all_commands.h"
#include "app/words/words.h"
#include "core/plan/kitchen_measures.h"

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
};

Json number_or_null(const std::optional<double>& value)
{
    return value ? json_number(*value) : Json(nullptr);
}

std::string text_of(const plan::Mix& mix, const MixOptions& options, Litres water)
{
    std::ostringstream text;
    text << "Into " << words::number(water.litres(), 2) << " L of water: ";
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
    if (mix.phosphorus_ppm && mix.potassium_ppm) {
        text << "Makes " << words::number(options.ppm, 0) << " ppm nitrogen, "
             << words::number(*mix.phosphorus_ppm, 0) << " ppm phosphorus, "
             << words::number(*mix.potassium_ppm, 0)
             << " ppm potassium. The label comes first; nothing for a plant that rests, is sick or was just "
                "potted. Keep feeds from children and animals.\n";
    } else {
        text << "The label and local rules come first. Try one leaf and wait two days; not in sun, not above "
                "27 C, "
                "not on dry or young plants, never on open flowers that bees visit. Gloves, fresh air, "
                "children and "
                "animals away until it is dry. Mix afresh each time.\n";
    }
    return std::move(text).str();
}

Result<Answer> mix_of(const MixOptions& options)
{
    const bool by_feed = !options.feed.empty() && options.has_ppm;
    if (by_feed == options.has_percent || (!options.feed.empty() && options.has_percent) ||
        (options.has_ppm && !by_feed)) {
        return Error{ErrorCode::WrongUsage,
                     "give either --feed N-P-K with --ppm, or --percent, each with --water"};
    }
    const auto water = plan::read_amount(options.water);
    if (!water) {
        return water.error();
    }
    const auto mixed = [&]() -> Result<plan::Mix> {
        if (options.has_percent) {
            return plan::percent_mix(options.percent, *water);
        }
        const auto label = plan::read_feed_label(options.feed);
        if (!label) {
            return label.error();
        }
        return plan::feed_mix(*label, options.ppm, *water,
                              options.liquid ? plan::FeedForm::Liquid : plan::FeedForm::Powder,
                              options.has_density ? std::optional{options.density} : std::nullopt);
    }();
    if (!mixed) {
        return mixed.error();
    }
    const auto volume = [&](auto measure) {
        return mixed->volume ? json_number(measure(*mixed->volume)) : Json(nullptr);
    };
    return Answer{{{"grams", number_or_null(mixed->grams)},
                   {"millilitres", volume([](Litres v) { return v.millilitres(); })},
                   {"teaspoons", volume([](Litres v) { return v.teaspoons(); })},
                   {"drops_about", number_or_null(mixed->drops_about)},
                   {"phosphorus_ppm", number_or_null(mixed->phosphorus_ppm)},
                   {"potassium_ppm", number_or_null(mixed->potassium_ppm)}},
                  text_of(*mixed, options, *water),
                  mixed->warnings};
}

} // namespace

void add_mix(Commands& commands)
{
    auto options = std::make_shared<MixOptions>();
    CLI::App& command = commands.add("mix", "How much feed, oil or soap goes into the water",
                                     "lathhouse mix --feed 20-10-20 --ppm 100 --water '2 L'");
    command.add_option("--feed", options->feed, "The three numbers of the feed's label")->type_name("N-P-K");
    CLI::Option* ppm =
        command.add_option("--ppm", options->ppm, "Nitrogen wanted, milligrams a litre")->type_name("N");
    CLI::Option* percent =
        command.add_option("--percent", options->percent, "Oil or soap, percent of the water's volume")
            ->type_name("P");
    command.add_option("--water", options->water, "Such as '2 L', '500 ml', '4 cup', 'gal-us'")
        ->required()
        ->type_name("AMOUNT");
    CLI::Option* density =
        command.add_option("--density", options->density, "Of the feed, grams a millilitre")
            ->type_name("G/ML");
    command.add_flag("--liquid", options->liquid, "The feed is a liquid");
    commands.on_run(command, [options, ppm, percent, density](const Globals&) {
        MixOptions asked = *options;
        asked.has_ppm = ppm->count() > 0;
        asked.has_percent = percent->count() > 0;
        asked.has_density = density->count() > 0;
        return mix_of(asked);
    });
}

} // namespace lathhouse::cli
