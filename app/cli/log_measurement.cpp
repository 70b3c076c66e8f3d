#include "app/cli/log_measurement.h"

#include "app/clock.h"
#include "app/cli/entry_text.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/list.h"
#include "app/cli/open_household.h"
#include "app/cli/subcommand.h"
#include "app/words/measurement_words.h"
#include "app/words/us_units.h"
#include "core/base/parse.h"
#include "core/home/measured_time.h"

#include <algorithm>
#include <memory>

namespace lathhouse::cli {
namespace {

/// A length that is so many times the last one, or so small a part of it, is likely in the wrong unit.
constexpr double kUnlikelyChange = 2.0;

struct MeasurementOptions {
    std::string kind;
    std::vector<std::string> values;
    std::string plant;
    std::string date;
    std::string time;
    std::string zone;
    std::string method;
    std::string by;
    std::optional<double> litres;
    std::string mix;
    std::string photo;
    std::string note;
};

std::string measurement_kinds()
{
    std::string text;
    for (const auto kind : home::every_measurement_kind()) {
        text += (text.empty() ? "" : ", ") + std::string{home::to_string(kind)};
    }
    return text;
}

/// Errors: WrongUsage with the kinds there are.
Result<home::MeasurementKind> kind_of(const std::string& word)
{
    const auto kind = home::measurement_kind_of(word);
    if (!kind) {
        return Error{ErrorCode::WrongUsage,
                     "nothing called \"" + word + "\" is measured; there are " + measurement_kinds()};
    }
    return *kind;
}

/// "43.5", "43.5cm", "17in" or "35%", in the kind's unit. Errors: WrongUsage.
Result<double> reading_of(const std::string& text, home::MeasurementKind kind, words::UnitSystem units)
{
    const auto unit = home::unit_of(kind);
    std::string_view digits = trimmed(text);
    const auto takes = [&](std::string_view ending) {
        if (!digits.ends_with(ending)) {
            return false;
        }
        digits.remove_suffix(ending.size());
        return true;
    };
    double factor = 1.0;
    if (unit == home::MeasurementUnit::Centimetres) {
        const bool inches = takes("in") || (!takes("cm") && units.us_measures());
        factor = inches ? words::kCentimetresInAnInch : 1.0;
    } else if (unit == home::MeasurementUnit::Share && takes("%")) {
        factor = 0.01;
    }
    const auto number = parse_number(digits);
    if (!number) {
        return Error{ErrorCode::WrongUsage,
                     "\"" + text + "\" is no reading of " + words::measured(kind) +
                         (unit == home::MeasurementUnit::Centimetres ? "; write for example 43.5, 43.5cm or 17in"
                          : unit == home::MeasurementUnit::Count     ? "; write a whole number"
                                                                     : "; write for example 0.35 or 35%")};
    }
    return *number * factor;
}

/// "08:05". Errors: WrongUsage.
Result<std::chrono::minutes> time_of(const std::string& text)
{
    const auto parts = split(text, ':');
    const auto hours = parts.size() == 2 ? parse_integer(parts[0]) : std::nullopt;
    const auto minutes = parts.size() == 2 ? parse_integer(parts[1]) : std::nullopt;
    if (!hours || !minutes || *hours < 0 || *hours > 23 || *minutes < 0 || *minutes > 59) {
        return Error{ErrorCode::WrongUsage, "--time " + text + " is no time of day; write for example 08:05"};
    }
    return std::chrono::hours{*hours} + std::chrono::minutes{*minutes};
}

/// What makes one doubt the reading; empty where nothing does.
std::vector<std::string> doubts(const home::Measurement& measurement, std::span<const home::Measurement> before,
                                words::UnitSystem units)
{
    if (home::unit_of(measurement.kind) != home::MeasurementUnit::Centimetres) {
        return {};
    }
    const home::Measurement* last = nullptr;
    for (const auto& one : before) {
        if (one.measured <= measurement.measured) {
            last = &one;
        }
    }
    const double value = measurement.value();
    if (last == nullptr || last->value() <= 0.0 || value <= 0.0 ||
        (value < last->value() * kUnlikelyChange && value * kUnlikelyChange > last->value())) {
        return {};
    }
    return {"the last " + words::measured(measurement.kind) + " was " +
            words::measured_value(measurement.kind, last->value(), units) + " on " +
            calendar::to_text(last->measured) +
            "; where the unit or the plant is wrong, `lathhouse log undo` takes this one back"};
}

Result<Answer> log_measurement(const Globals& globals, const MeasurementOptions& options)
{
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto home = with_gone_plants(*store);
    if (!home) {
        return home.error();
    }
    const auto plant = plant_called(*home, options.plant);
    if (!plant) {
        return plant.error();
    }
    const auto kind = kind_of(options.kind);
    if (!kind) {
        return kind.error();
    }
    const auto date = past_date_of("--date", options.date, globals.today, "the journal keeps what has been measured");
    if (!date) {
        return date.error();
    }
    home::Measurement measurement{.plant = (*plant)->id,
                                  .kind = *kind,
                                  .measured = *date,
                                  .repeats = {},
                                  .method = home::usual_method(*kind),
                                  .entered = now(),
                                  .by = options.by,
                                  .pot = (*plant)->pot_volume,
                                  .mix = options.mix,
                                  .note = options.note};
    for (const auto& text : options.values) {
        const auto reading = reading_of(text, *kind, globals.units);
        if (!reading) {
            return reading.error();
        }
        measurement.repeats.push_back(*reading);
    }
    if (!options.method.empty()) {
        measurement.method = *home::measurement_method_of(options.method);
    }
    if (options.litres) {
        measurement.pot = Litres::from_litres(*options.litres);
    }
    if (!options.photo.empty()) {
        measurement.photo = lower_case(options.photo);
        if (options.method.empty()) {
            measurement.method = home::MeasurementMethod::Photo;
        }
    }
    if (options.time.empty() && !options.zone.empty()) {
        return Error{ErrorCode::WrongUsage, "--zone says where a --time was read; give both"};
    }
    if (!options.time.empty()) {
        const auto time = time_of(options.time);
        if (!time) {
            return time.error();
        }
        if (const auto set = home::set_time(measurement, *time, options.zone, home->place.time_zone); !set) {
            return set.error();
        }
        if (measurement.measured > globals.today) {
            return Error{ErrorCode::OutOfRange, options.time + " in " + options.zone + " on " + calendar::to_text(*date) +
                                                    " is after today at home, where it is " +
                                                    calendar::to_text(measurement.measured) +
                                                    " by then; say the day there with --date"};
        }
    }
    const auto before = store->measurements(measurement.plant, measurement.kind);
    if (!before) {
        return before.error();
    }
    const auto ids = store->record(std::span<const home::Measurement>{&measurement, 1});
    if (!ids) {
        return ids.error();
    }
    measurement.id = ids->front();
    return Answer{{{"logged", 1}, {"measurement", entry_json(measurement)}},
                  "Logged " + words::measured(*kind) + " of " + (*plant)->name + ": " +
                      words::measured_value(measurement, globals.units) + " on " +
                      calendar::to_text(measurement.measured) + ".\n",
                  doubts(measurement, *before, globals.units)};
}

struct ListOptions {
    std::string plant;
    std::string kind;
    std::size_t count = 30;
};

Result<Answer> list_measurements(const Globals& globals, const ListOptions& options)
{
    const auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto home = with_gone_plants(*store);
    if (!home) {
        return home.error();
    }
    const auto plant = plant_asked(*home, options.plant);
    if (!plant) {
        return plant.error();
    }
    std::optional<home::MeasurementKind> kind;
    if (!options.kind.empty()) {
        const auto found = kind_of(options.kind);
        if (!found) {
            return found.error();
        }
        kind = *found;
    }
    const auto measurements = store->measurements(*plant != nullptr ? std::optional{(*plant)->id} : std::nullopt, kind);
    if (!measurements) {
        return measurements.error();
    }
    const auto first = measurements->size() - std::min(measurements->size(), options.count);
    Json json = Json::array();
    std::vector<std::vector<std::string>> rows{{"id", "date", "plant", "measured", "value", "how", "by"}};
    for (auto at = first; at < measurements->size(); ++at) {
        const auto& one = (*measurements)[at];
        json.push_back(entry_json(one));
        const auto* of = home->plant(one.plant);
        rows.push_back({std::to_string(*one.id), calendar::to_text(one.measured),
                        of != nullptr ? of->name : std::to_string(one.plant), words::measured(one.kind),
                        words::measured_value(one, globals.units), std::string{home::to_string(one.method)}, one.by});
    }
    std::string text = !measurements->empty()               ? table(rows)
                       : *plant == nullptr && !kind ? "Nothing was measured yet.\n"
                                                    : "Nothing of that was measured yet.\n";
    if (first > 0) {
        text += std::to_string(first) + " earlier ones; --count " + std::to_string(measurements->size()) +
                " shows all.\n";
    }
    return Answer{{{"measurements", json}, {"earlier", first}}, std::move(text), {}};
}

struct DivideOptions {
    std::string plant;
    std::vector<std::string> names;
    std::string spot;
    std::string date;
    std::string note;
};

Result<Answer> log_divided(const Globals& globals, const DivideOptions& options)
{
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto home = store->load();
    if (!home) {
        return home.error();
    }
    const auto parent = plant_called(*home, options.plant);
    if (!parent) {
        return parent.error();
    }
    const auto date = past_date_of("--date", options.date, globals.today, "the journal keeps what has happened");
    if (!date) {
        return date.error();
    }
    const auto spot = spot_asked(*home, options.spot);
    if (!spot) {
        return spot.error();
    }
    auto made = home::pieces_of(**parent, options.names);
    if (!made) {
        return Error{made.error().code, "--into: " + made.error().message};
    }
    auto& pieces = *made;
    for (auto& piece : pieces) {
        piece.spot = *spot ? *spot : piece.spot;
    }
    const auto ids = store->divide((*parent)->id, pieces, *date, now(), options.note);
    if (!ids) {
        return ids.error();
    }
    Json json = Json::array();
    std::string text = "Divided " + (*parent)->name + " into itself and";
    for (std::size_t at = 0; at < pieces.size(); ++at) {
        json.push_back({{"id", (*ids)[at]}, {"name", pieces[at].name}});
        text += (at == 0 ? " " : ", ") + pieces[at].name + " (plant " + std::to_string((*ids)[at]) + ")";
    }
    return Answer{{{"parent", (*parent)->id}, {"pieces", json}}, text + ".\n", {}};
}

} // namespace

void add_measurement_logs(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<MeasurementOptions>();
    CLI::App& command = add_subcommand(group, "measurement", "What was measured of a plant, with its repeats",
                                 "lathhouse log measurement height 43.5 43.7 43.4 --plant Lemon");
    command.add_option("kind", options->kind, measurement_kinds())->required()->type_name("KIND");
    command
        .add_option("value", options->values,
                    "Each reading: lengths in centimetres (with --units us inches; 43.5cm and 17in always work), "
                    "counts, shares as 0.35 or 35%")
        ->required()
        ->type_name("VALUE");
    command.add_option("--plant", options->plant, "Plant by id or name")->required()->type_name("ID");
    command.add_option("--date", options->date, "When it was measured (default: today)")->type_name("YYYY-MM-DD");
    command.add_option("--time", options->time, "Time of day, on the household's clock")->type_name("HH:MM");
    command.add_option("--zone", options->zone, "Zone of --date and --time, where it is another one")
        ->type_name("ZONE");
    command.add_option("--method", options->method, "ruler, count, eye or photo (default: by kind)")
        ->check(CLI::IsMember({"ruler", "count", "eye", "photo"}));
    command.add_option("--by", options->by, "Who measured")->type_name("NAME");
    command.add_option("--litres", options->litres, "Pot that it stands in (default: as the household has it)")
        ->type_name("L");
    command.add_option("--mix", options->mix, "What it stands in")->type_name("TEXT");
    command.add_option("--photo", options->photo, "SHA-256 of the photo that was measured")->type_name("SHA256");
    command.add_option("--note", options->note, "Anything worth keeping");
    commands.on_run(command, [options](const Globals& globals) { return log_measurement(globals, *options); });

    auto divided = std::make_shared<DivideOptions>();
    CLI::App& divide = add_subcommand(group, "divided", "A plant was divided; the pieces keep where they came from",
                                "lathhouse log divided --plant \"Snake plant\" --into \"Snake plant, small\"");
    divide.add_option("--plant", divided->plant, "Plant by id or name; it stays")->required()->type_name("ID");
    divide.add_option("--into", divided->names, "Name of a new piece; may be given more than once")
        ->required()
        ->type_name("NAME");
    divide.add_option("--spot", divided->spot, "Where the pieces stand (default: where the plant does)")
        ->type_name("ID");
    divide.add_option("--date", divided->date, "When (default: today)")->type_name("YYYY-MM-DD");
    divide.add_option("--note", divided->note, "Anything worth keeping");
    commands.on_run(divide, [divided](const Globals& globals) { return log_divided(globals, *divided); });
}

void add_measurement_list(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<ListOptions>();
    CLI::App& command = add_subcommand(group, "measurements", "What was measured, the latest last",
                                 "lathhouse list measurements --plant Lemon --kind height");
    command.add_option("--plant", options->plant, "Of one plant, by id or name")->type_name("ID");
    command.add_option("--kind", options->kind, measurement_kinds())->type_name("KIND");
    command.add_option("--count", options->count, "The last so many (default 30)")->check(CLI::Range(1, 1000000));
    commands.on_run(command, [options](const Globals& globals) { return list_measurements(globals, *options); });
}

} // namespace lathhouse::cli
