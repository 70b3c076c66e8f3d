#include "app/cli/all_commands.h"
#include "app/cli/growing_year.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/sources_json.h"
#include "app/words/growing_words.h"
#include "core/plan/feeding.h"

#include <array>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct FeedingCommandOptions {
    std::string plant;
    double lamp_hours = 0.0;
    double lamp_flux = 0.0;
    std::string water;
};

constexpr std::array<std::string_view, 19> kFeedingRules{
    "feed_heavy_days", "feed_medium_days",     "feed_light_days",    "feed_dim_days",   "feed_dim_light",
    "feed_succulent",  "feed_day_length",      "feed_lamp_hours",    "feed_index_open", "feed_after_repotting",
    "feed_after_stress", "feed_after_purchase", "feed_after_move",   "feed_wet_season", "leach_months",
    "feed_young_share",
    "leach_volumes",   "hard_water",           "growth_curve"};

Json json_of(const plan::PlantFeeding& feeding, const home::Plant& plant)
{
    Json windows = Json::array();
    for (const auto& window : feeding.windows) {
        windows.push_back({{"from", calendar::to_text(window.from)},
                           {"to", calendar::to_text(window.to)},
                           {"every_days", window.every_days},
                           {"nitrogen_ppm", {json_number(window.nitrogen_ppm.low),
                                             json_number(window.nitrogen_ppm.high)}},
                           {"growth", json_number(window.growth)},
                           {"dim", window.dim},
                           {"by_lamps", window.by_lamps},
                           {"young", window.young}});
    }
    Json withheld = Json::array();
    for (const auto& rest : feeding.withheld) {
        withheld.push_back({{"from", calendar::to_text(rest.from)},
                            {"to", json_date(rest.to)},
                            {"why", words::why(rest)},
                            {"reason", words::to_string(rest.why)},
                            {"until", words::to_string(rest.until)},
                            {"since", json_date(rest.since)}});
    }
    Json feeds = Json::array();
    for (const auto& day : feeding.days) {
        feeds.push_back({{"on", calendar::to_text(day.on)},
                         {"can_wait_until", calendar::to_text(day.can_wait_until)},
                         {"nitrogen_ppm", json_number(day.nitrogen_ppm)}});
    }
    Json leaching = nullptr;
    if (feeding.leaching) {
        leaching = {{"last", json_date(feeding.leaching->last)},
                    {"due", json_date(feeding.leaching->due)},
                    {"water_l", json_number(feeding.leaching->water.litres())},
                    {"pot_guessed_from_weight", feeding.leaching->rough},
                    {"every_months", feeding.leaching->every_months}};
    }
    return {{"id", plant.id},
            {"name", plant.name},
            {"feed_class", plants::to_string(feeding.feed)},
            {"last_fed", json_date(feeding.last_fed)},
            {"windows", windows},
            {"withheld", withheld},
            {"feeds", feeds},
            {"leaching", leaching}};
}

std::string dates(calendar::Date from, std::optional<calendar::Date> to)
{
    return words::right_aligned(words::day(from), 6) + (to ? " to " + words::padded(words::day(*to), 6) : " on       ");
}

void say(std::ostream& text, const plan::PlantFeeding& feeding, const home::Plant& plant,
         words::UnitSystem units)
{
    text << plant.name << " (" << plant.kind << ")";
    if (feeding.feed != plants::FeedClass::None) {
        text << ", " << plants::to_string(feeding.feed) << " feeder";
    }
    text << (feeding.last_fed ? ", last fed " + words::full_day(*feeding.last_fed) : "") << '\n';
    // Windows and what lies between them, by date.
    auto window = feeding.windows.begin();
    auto rest = feeding.withheld.begin();
    while (window != feeding.windows.end() || rest != feeding.withheld.end()) {
        if (rest == feeding.withheld.end() ||
            (window != feeding.windows.end() && window->from < rest->from)) {
            text << "  " << dates(window->from, window->to) << "  every " << words::days(window->every_days)
                 << ", " << words::number(window->nitrogen_ppm.low, 0) << " to "
                 << words::number(window->nitrogen_ppm.high, 0) << " ppm nitrogen"
                 << (window->young ? ", weak: it is young" : window->dim ? ", weak: little light" : "") << (window->by_lamps ? ", by the lamps" : "")
                 << '\n';
            ++window;
        } else {
            text << "  " << dates(rest->from, rest->to) << "  none: " << words::why(*rest) << '\n';
            ++rest;
        }
    }
    if (!feeding.days.empty()) {
        const auto& next = feeding.days.front();
        text << "  next feed " << words::full_day(next.on) << " at "
             << words::number(next.nitrogen_ppm, 0) << " ppm, can wait until "
             << words::day(next.can_wait_until) << '\n';
    }
    if (feeding.leaching && feeding.leaching->due) {
        const auto& leaching = *feeding.leaching;
        text << "  wash salts out about " << words::full_day(*leaching.due) << " with "
             << words::volume(leaching.water, units)
             << (leaching.rough ? " (twice the pot, guessed from its weight)" : " (twice the pot)")
             << (leaching.last ? "" : "; no washing out is logged") << '\n';
    }
}

Result<plan::FeedingOptions> read_options(const FeedingCommandOptions& options, calendar::Date today)
{
    plan::FeedingOptions read{.from = today};
    if (!(options.lamp_hours >= 0.0 && options.lamp_hours <= 24.0 && options.lamp_flux >= 0.0 &&
          options.lamp_flux <= 2500.0)) {
        return Error{ErrorCode::OutOfRange,
                     "--lamp-hours must lie within 0 and 24, --lamp-ppfd within 0 and 2500"};
    }
    if (options.lamp_flux > 0.0 && !(options.lamp_hours > 0.0)) {
        return Error{ErrorCode::WrongUsage, "--lamp-ppfd goes with --lamp-hours"};
    }
    if (options.lamp_hours > 0.0) {
        read.lamps = plan::lamps_of(options.lamp_hours,
                                    options.lamp_flux > 0.0 ? std::optional{PhotonFlux::from_micromoles(options.lamp_flux)}
                                                            : std::nullopt);
    }
    read.water = options.water == "hard"   ? plan::WaterHardness::Hard
                 : options.water == "soft" ? plan::WaterHardness::Soft
                                           : plan::WaterHardness::Unknown;
    return read;
}

Result<Answer> feeding_of(const Globals& globals, const FeedingCommandOptions& options)
{
    const auto asked = read_options(options, globals.today);
    if (!asked) {
        return asked.error();
    }
    const auto year = growing_year(globals, options.plant);
    if (!year) {
        return year.error();
    }
    const auto& household = year->household;
    const auto feedings = plan::feeding_year(household, year->climate, year->spots, year->events,
                                             year->plan.plants, *asked);
    std::vector topics{plan::CautionTopic::FertiliserStorage, plan::CautionTopic::HeavyPot};
    if (asked->lamps) {
        topics.push_back(plan::CautionTopic::LampsAndWater);
    }
    Json plants = Json::array();
    std::ostringstream text;
    text << "Feeding in the year from " << words::full_day(globals.today) << ", " << household.name
         << (household.demonstration ? " (demonstration household, invented)" : "") << "\n\n";
    for (const auto& feeding : feedings) {
        const auto& plant = *household.plant(feeding.plant);
        if (year->is_asked(plant.id)) {
            plants.push_back(json_of(feeding, plant));
            say(text, feeding, plant, globals.units);
        }
    }
    text << "\nDates are by usual weather: feed when you see it grow, never a dry pot, and follow the label. "
            "`lathhouse mix --plant ID --feed N-P-K --water AMOUNT` gives the dose. ppm: milligrams of nitrogen "
            "a litre.\n"
            "Wash out over a basin or outdoors, in growth, lukewarm, and empty the saucer. "
         << (asked->water == plan::WaterHardness::Hard
                 ? "Hard water leaves a crust and makes the mix less acid: use rain for citrus, ferns and others "
                   "that want it acid. "
                 : "")
         << "Water from a softener holds salt: not for plants.\n"
         << sources_in_words(year->climate, globals.units) << cautions_in_words(topics) << words::sources_line(plan::GrowingRules::built_in().sources_of(kFeedingRules));
    return Answer{{{"plants", plants}, {"cautions", caution_texts(topics)}, {"sources", sources_json(kFeedingRules)}},
                  std::move(text).str(),
                  texts(year->climate.warnings)};
}

} // namespace

void add_feeding(Commands& commands)
{
    auto options = std::make_shared<FeedingCommandOptions>();
    CLI::App& command = commands.add("feeding", "When each plant is fed in the coming year, and when not",
                                     "lathhouse feeding --plant 3");
    command.add_option("--plant", options->plant, "Only this one, by id or name")->type_name("ID");
    command
        .add_option("--lamp-hours", options->lamp_hours,
                    "Hours a day that lamps burn over the plants indoors")
        ->type_name("H");
    command
        .add_option("--lamp-ppfd", options->lamp_flux,
                    "Their light at the leaves, micromoles a square metre and second (default 20, a weak lamp)")
        ->type_name("N");
    command.add_option("--water", options->water, "hard or soft, where you know it")
        ->check(CLI::IsMember({"hard", "soft"}));
    commands.on_run(command, [options](const Globals& globals) { return feeding_of(globals, *options); });
}

} // namespace lathhouse::cli
