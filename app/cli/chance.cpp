#include "app/cli/all_commands.h"
#include "app/cli/place_climate_options.h"
#include "core/climate/line_dates.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct ChanceOptions {
    PlaceOptions place;
    OffsetOptions offset;
    double threshold = 0.0;
    std::string from;
    std::string to;
};

Result<Answer> chance_of(const Globals& globals, const ChanceOptions& options)
{
    if (!(options.threshold >= -90.0 && options.threshold <= 60.0)) {
        return Error{ErrorCode::OutOfRange, "--threshold must lie within -90 and 60 degrees Celsius"};
    }
    const auto from = calendar::parse_date(options.from);
    const auto to = calendar::parse_date(options.to);
    if (!from || !to) {
        return from ? to.error() : from.error();
    }
    const auto offset = offset_of(options.offset);
    if (!offset) {
        return offset.error();
    }
    const auto place = climate_of(globals, options.place);
    if (!place) {
        return place.error();
    }
    const auto here = climate::PlaceNights::of(*place);
    const auto line = Celsius::from_degrees(options.threshold);
    const auto between = climate::nights_between(here, *from, *to, line, *offset);
    if (!between) {
        return Error{between.error().code, "--from and --to: " + between.error().message};
    }
    Json json{{"any", json_number(between->any.fraction())},
              {"expected_nights", json_number(between->expected)},
              {"before", nullptr},
              {"after", nullptr},
              {"attribution", attribution_of(*place)}};
    std::string text = "A night at or below " + words::temperature(line, globals.units) + " among " +
                       std::to_string(between->nights) + ": " + words::chance(between->any) + "; " +
                       words::number(between->expected, 1) + " such nights on average.\n";
    if (between->before && between->after) {
        json["before"] = json_number(between->before->fraction());
        json["after"] = json_number(between->after->fraction());
        text += "One before these, since the turn of the season on " + words::day(here.model().turn().last_day()) + ": " +
                words::chance(*between->before) + ". One after these, up to the next turn: " +
                words::chance(*between->after) + ".\n";
    }
    return Answer{json, text + sources_in_words(*place, globals.units), texts(place->warnings)};
}

} // namespace

void add_chance(Commands& commands)
{
    auto options = std::make_shared<ChanceOptions>();
    CLI::App& command =
        commands.add("chance", "Chance of a night at or below a line among the nights between two dates",
                     "lathhouse chance --at 45.5,-122.7 --threshold 0 --from 2027-05-01 --to 2027-05-20");
    add_place_options(command, options->place, false);
    command.add_option("--threshold", options->threshold, "Line in degrees Celsius")
        ->required()
        ->type_name("C");
    command.add_option("--from", options->from, "First night, named by its morning")
        ->required()
        ->type_name("YYYY-MM-DD");
    command.add_option("--to", options->to, "Last night")->required()->type_name("YYYY-MM-DD");
    add_offset_options(command, options->offset);
    commands.on_run(command, [options](const Globals& globals) { return chance_of(globals, *options); });
}

} // namespace lathhouse::cli
