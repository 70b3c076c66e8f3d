#include "app/cli/all_commands.h"
#include "app/cli/place_climate_options.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct NightOptions {
    PlaceOptions place;
    OffsetOptions offset;
    std::string date;
    std::optional<double> threshold;
    std::optional<double> forecast;
    std::optional<int> lead;
};

Result<Answer> night_of(const Globals& globals, const NightOptions& options)
{
    if (options.lead && !options.forecast) {
        return Error{ErrorCode::WrongUsage, "--lead needs --forecast: say the low that is forecast as well"};
    }
    if (options.forecast) {
        return Error{ErrorCode::Unavailable,
                     "--forecast is not answered yet; leave it out for the chances of the season"};
    }
    const auto date = calendar::parse_date(options.date);
    if (!date) {
        return date.error();
    }
    if (options.threshold && !(*options.threshold >= -90.0 && *options.threshold <= 60.0)) {
        return Error{ErrorCode::OutOfRange, "--threshold must lie within -90 and 60 degrees Celsius"};
    }
    const auto offset = offset_of(options.offset);
    if (!offset) {
        return offset.error();
    }
    const auto place = climate_of(options.place);
    if (!place) {
        return place.error();
    }
    const auto model = place->nights();
    const auto day = calendar::DayOfYear::of(*date);
    const auto low = [&](Probability chance) { return model.quantile(day, chance, *offset); };
    const Celsius median = low(Probability::literal(0.5));
    const Celsius cold = low(Probability::literal(0.05));
    const Celsius mild = low(Probability::literal(0.95));
    Json json{{"median_c", json_number(median.degrees())},
              {"p05_c", json_number(cold.degrees())},
              {"p95_c", json_number(mild.degrees())},
              {"chance", nullptr},
              {"attribution", attribution_of(*place)}};
    std::string text = "The night that ends on the morning of " + words::full_day(*date) + ": about " +
                       words::temperature(median, globals.units) + ", in 9 of 10 years " +
                       words::temperature(cold, globals.units) + " to " +
                       words::temperature(mild, globals.units) + ".\n";
    if (options.threshold) {
        const auto line = Celsius::from_degrees(*options.threshold);
        const auto chance = model.chance_on(day, line, *offset);
        json["chance"] = json_number(chance.fraction());
        text +=
            "At or below " + words::temperature(line, globals.units) + ": " + words::chance(chance) + ".\n";
    }
    return Answer{json, text + sources_in_words(*place, globals.units), place->warnings};
}

} // namespace

void add_night(Commands& commands)
{
    auto options = std::make_shared<NightOptions>();
    CLI::App& command = commands.add("night", "How cold one night is likely to be",
                                     "lathhouse night --at 45.5,-122.7 --date 2027-04-20 --threshold 0");
    add_place_options(command, options->place, true);
    command.add_option("--date", options->date, "The night's morning")->required()->type_name("YYYY-MM-DD");
    command.add_option("--threshold", options->threshold, "Line in degrees Celsius")->type_name("C");
    command.add_option("--forecast", options->forecast, "Low that is forecast, degrees Celsius")
        ->type_name("C");
    command.add_option("--lead", options->lead, "Days from the forecast to the night")->type_name("DAYS");
    add_offset_options(command, options->offset);
    commands.on_run(command, [options](const Globals& globals) { return night_of(globals, *options); });
}

} // namespace lathhouse::cli
