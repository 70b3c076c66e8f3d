#include "app/cli/all_commands.h"
#include "app/cli/place_climate_options.h"
#include "core/climate/place_nights.h"

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

/// The two dates and those between. Errors: as parse_date; WrongUsage where they are not in order or more
/// than a year apart.
Result<std::vector<calendar::DayOfYear>> nights_of(const ChanceOptions& options)
{
    const auto from = calendar::parse_date(options.from);
    if (!from) {
        return from.error();
    }
    const auto to = calendar::parse_date(options.to);
    if (!to) {
        return to.error();
    }
    const int days = calendar::days_between(*from, *to);
    if (days < 0 || days > 366) {
        return Error{ErrorCode::WrongUsage,
                     "--to " + options.to + " must be --from " + options.from + " or up to a year later"};
    }
    std::vector<calendar::DayOfYear> nights;
    for (int day = 0; day <= days; ++day) {
        nights.push_back(calendar::DayOfYear::of(*from + calendar::Days{day}));
    }
    return nights;
}

Result<Answer> chance_of(const Globals& globals, const ChanceOptions& options)
{
    if (!(options.threshold >= -90.0 && options.threshold <= 60.0)) {
        return Error{ErrorCode::OutOfRange, "--threshold must lie within -90 and 60 degrees Celsius"};
    }
    const auto nights = nights_of(options);
    if (!nights) {
        return nights.error();
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
    const auto any = here.chance_among(*nights, line, *offset);
    double expected = 0.0;
    for (const auto night : *nights) {
        expected += here.chance_on(night, line, *offset).fraction();
    }
    Json json{{"any", json_number(any.fraction())},
              {"expected_nights", json_number(expected)},
              {"before", nullptr},
              {"after", nullptr},
              {"attribution", attribution_of(*place)}};
    std::string text = "A night at or below " + words::temperature(line, globals.units) + " among " +
                       std::to_string(nights->size()) + ": " + words::chance(any) + "; " +
                       words::number(expected, 1) + " such nights on average.\n";
    if (!here.model().no_season()) {
        const auto season = here.season(line, *offset);
        const auto turn = season.turn().last_day();
        // Before the first night of all, the day after the turn, there is none.
        const auto day_before = calendar::DayOfYear::wrapped(nights->front().place() - 1);
        const auto before = day_before == turn ? Probability::literal(0.0) : season.on_or_before(day_before);
        const auto after = season.after(nights->back());
        json["before"] = json_number(before.fraction());
        json["after"] = json_number(after.fraction());
        text += "One before these, since the turn of the season on " + words::day(turn) + ": " +
                words::chance(before) + ". One after these, up to the next turn: " + words::chance(after) +
                ".\n";
    }
    return Answer{json, text + sources_in_words(*place, globals.units), place->warnings};
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
