#include "app/cli/spots.h"

#include "app/cli/household_options.h"
#include "app/cli/list.h"
#include "app/words/tonight_words.h"
#include "core/home/learned_offset.h"
#include "core/home/night_log_file.h"
#include "core/plan/tonight.h"

#include <memory>

namespace lathhouse::cli {
namespace {

/// A household with its log and what the log has taught of each spot.
struct Taught {
    HouseholdWithLog home;
    std::vector<home::LearnedOffset> offsets; ///< One for each spot, in their order.
};

/// Without readings nothing needs the climate of the place, and a place without stations is no error.
Result<Taught> taught_of(const Globals& globals)
{
    auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    Taught taught{std::move(home).value(), {}};
    const auto& spots = taught.home.as_told.spots;
    std::optional<climate::NightModel> nights;
    if (!taught.home.log.readings.empty()) {
        const auto climate = climate_of(taught.home.as_told);
        if (!climate) {
            return climate.error();
        }
        nights = climate->nights();
    }
    for (const auto& spot : spots) {
        taught.offsets.push_back(nights ? home::offset_of(spot, taught.home.log, *nights)
                                        : home::before_readings(spot.offset));
    }
    return taught;
}

/// One standard deviation, so with both signs.
std::string both_signs(KelvinDelta spread, words::UnitSystem units)
{
    return "\u00b1" + words::temperature_difference(spread, units).substr(1);
}

Result<Answer> list_spots(const Globals& globals)
{
    const auto taught = taught_of(globals);
    if (!taught) {
        return taught.error();
    }
    const auto units = globals.units;
    Json spots = Json::array();
    std::vector<std::vector<std::string>> rows{
        {"id", "spot", "kind", "night low", "known to", "pots", "from"}};
    for (std::size_t at = 0; at < taught->offsets.size(); ++at) {
        const auto& spot = taught->home.as_told.spots[at];
        const auto& learned = taught->offsets[at];
        const auto offset = learned.nights > 0 ? learned.usual : spot.offset;
        spots.push_back({{"id", spot.id},
                         {"name", spot.name},
                         {"kind", home::to_string(spot.kind)},
                         {"offset_c", json_number(offset.mean.kelvins())},
                         {"offset_sd_c", json_number(offset.spread.kelvins())},
                         {"capacity", spot.capacity}});
        std::string low = words::temperature_difference(offset.mean, units);
        std::string known;
        std::string from;
        if (home::is_outdoors(spot.kind)) {
            known = both_signs(offset.spread, units);
            from = learned.nights > 0 ? std::to_string(learned.nights) + " readings; before " +
                                            words::temperature_difference(spot.offset.mean, units) + " " +
                                            both_signs(spot.offset.spread, units)
                                      : "its kind, no readings";
        } else if (spot.winter && spot.summer) {
            low = words::temperature(*spot.winter, units) + " to " + words::temperature(*spot.summer, units);
        } else {
            low.clear();
        }
        rows.push_back({std::to_string(spot.id), spot.name, std::string{home::to_string(spot.kind)}, low,
                        known, std::to_string(spot.capacity), from});
    }
    return Answer{{{"spots", spots}},
                  table(rows) + "A night low with a sign is against the open air; how far it is known is one "
                                "standard deviation.\n",
                  {}};
}

Json json_of(climate::NightOffset offset, int readings)
{
    const auto [low, high] = words::nine_in_ten(offset);
    return {{"offset_c", json_number(offset.mean.kelvins())},
            {"offset_sd_c", json_number(offset.spread.kelvins())},
            {"interval_c", {json_number(low.kelvins()), json_number(high.kelvins())}},
            {"readings", readings}};
}

Result<Answer> show_spot(const Globals& globals, const std::string& id_or_name)
{
    const auto taught = taught_of(globals);
    if (!taught) {
        return taught.error();
    }
    const auto& household = taught->home.as_told;
    const auto found = spot_called(household, id_or_name);
    if (!found) {
        return found.error();
    }
    const auto& spot = **found;
    const auto& learned = taught->offsets[static_cast<std::size_t>(&spot - household.spots.data())];
    const bool outdoors = home::is_outdoors(spot.kind);
    const auto units = globals.units;
    Json json{
        {"id", spot.id},
        {"name", spot.name},
        {"kind", home::to_string(spot.kind)},
        {"capacity", spot.capacity},
        {"level", 0.9},
        {"prior", outdoors ? json_of(spot.offset, 0) : Json(nullptr)},
        {"offset", outdoors ? json_of(learned.nights > 0 ? learned.usual : spot.offset, learned.nights)
                            : Json(nullptr)},
        {"clear_calm", outdoors ? json_of(learned.clear_calm, learned.clear_calm_nights) : Json(nullptr)},
        {"other", outdoors ? json_of(learned.other, learned.other_nights) : Json(nullptr)}};
    std::string text = spot.name + ", " + std::string{home::to_string(spot.kind)} + ", room for " +
                       std::to_string(spot.capacity) + " pots\n";
    if (!outdoors) {
        if (spot.winter && spot.summer) {
            text += "Night lows " + words::temperature(*spot.winter, units) + " in the cold season, " +
                    words::temperature(*spot.summer, units) + " in the warm one.\n";
        }
        return Answer{json, text, {}};
    }
    text += "From its kind: " + words::against_open_air(spot.offset.mean, units) + ", " +
            both_signs(spot.offset.spread, units) + " (one standard deviation).\n";
    if (learned.nights == 0) {
        text +=
            "No readings yet. Ten to twenty nights with a minimum thermometer make it your own: lathhouse "
            "log reading --spot " +
            std::to_string(spot.id) + " --low C\n";
        return Answer{json, text, {}};
    }
    auto sentence = words::learned(learned, units);
    sentence.front() = 'Y';
    text += sentence + " (9 in 10).\n";
    const auto kind = [&](const char* nights, climate::NightOffset offset, int count) {
        const auto [low, high] = words::nine_in_ten(offset);
        return std::string{nights} + ": " + words::temperature_difference(offset.mean, units) + ", " +
               words::temperature_difference(low, units) + " to " +
               words::temperature_difference(high, units) + ", from " + std::to_string(count) +
               " readings.\n";
    };
    text += kind("Clear calm nights", learned.clear_calm, learned.clear_calm_nights) +
            kind("Cloudy or windy nights", learned.other, learned.other_nights);
    if (learned.nights < 10) {
        text += "Ten to twenty nights make it your own number.\n";
    }
    return Answer{json, text, {}};
}

Result<Answer> list_readings(const Globals& globals, const std::string& of_spot)
{
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    std::optional<home::SpotId> only;
    if (!of_spot.empty()) {
        const auto found = spot_called(home->as_told, of_spot);
        if (!found) {
            return found.error();
        }
        only = (*found)->id;
    }
    const auto units = globals.units;
    Json readings = Json::array();
    std::vector<std::vector<std::string>> rows{
        {"morning", "spot", "low", "high", "station", "sky", "wind", "note"}};
    const auto degrees = [](const std::optional<Celsius>& value) {
        return value ? json_number(value->degrees()) : Json(nullptr);
    };
    const auto shown = [units](const std::optional<Celsius>& value) {
        return value ? words::temperature(*value, units) : std::string{};
    };
    for (const auto& reading : home->log.readings) {
        if (only && reading.spot != *only) {
            continue;
        }
        const auto sky = reading.weather.sky ? std::string{home::to_string(*reading.weather.sky)} : "";
        const auto wind = reading.weather.wind ? std::string{home::to_string(*reading.weather.wind)} : "";
        readings.push_back({{"spot", reading.spot},
                            {"date", calendar::to_text(reading.night)},
                            {"low_c", json_number(reading.low.degrees())},
                            {"high_c", degrees(reading.high)},
                            {"station_low_c", degrees(reading.station_low)},
                            {"sky", sky.empty() ? Json(nullptr) : Json(sky)},
                            {"wind", wind.empty() ? Json(nullptr) : Json(wind)},
                            {"note", reading.note}});
        rows.push_back({calendar::to_text(reading.night), home->as_told.spot(reading.spot)->name,
                        shown(reading.low), shown(reading.high), shown(reading.station_low), sky, wind,
                        reading.note});
    }
    return Answer{
        {{"readings", readings}}, !readings.empty() ? table(rows) : only ? "No readings of that spot yet.\n" : "No readings yet.\n", {}};
}

Result<Answer> show_forecasts(const Globals& globals)
{
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    const auto climate = climate_of(home->as_told);
    if (!climate) {
        return climate.error();
    }
    const auto season = climate->nights();
    const auto record = plan::forecast_record(home->as_told, home->log, season);
    Json leads = Json::array();
    std::vector<std::vector<std::string>> rows{
        {"days ahead", "nights", "error", "score", "usual error", "season alone"}};
    const auto kelvins = [&](KelvinDelta value) {
        return words::number(
            !globals.units.fahrenheit() ? value.kelvins() : value.fahrenheit_degrees(), 2);
    };
    for (std::size_t at = 0; at < record.scores.size(); ++at) {
        const auto& group = record.errors.groups()[at];
        const auto& scores = record.scores[at];
        const bool any = scores.nights > 0;
        const auto score = [any](KelvinDelta value) {
            return any ? json_number(value.kelvins()) : Json(nullptr);
        };
        leads.push_back({{"from_days", group.first},
                         {"to_days", group.last},
                         {"nights", scores.nights},
                         {"error_factor", json_number(group.factor)},
                         {"score_c", score(scores.learned)},
                         {"score_usual_error_c", score(scores.forecast)},
                         {"score_season_c", score(scores.season)}});
        rows.push_back({std::to_string(group.first) + " to " + std::to_string(group.last),
                        std::to_string(scores.nights), words::number(group.factor, 2) + " x usual",
                        any ? kelvins(scores.learned) : "-", any ? kelvins(scores.forecast) : "-",
                        any ? kelvins(scores.season) : "-"});
    }
    return Answer{{{"leads", leads}},
                  table(rows) +
                      "Error: of the usual error of a forecast, after what your readings said. Scores "
                      "(continuous ranked probability score, in degrees) are mean misses with the stated "
                      "uncertainty weighed in: lower is better, and a forecast that scores no lower than the "
                      "season alone is of no use.\n",
                  texts(climate->warnings)};
}

} // namespace

void add_spot_lists(Commands& commands, CLI::App& list)
{
    CLI::App& spots = *list.add_subcommand("spots", "Spots, how they differ from the open air and what fits");
    spots.fallthrough();
    commands.on_run(spots, list_spots);
    auto of_spot = std::make_shared<std::string>();
    CLI::App& readings = *list.add_subcommand("readings", "What the thermometers said, night by night");
    readings.fallthrough();
    readings.add_option("--spot", *of_spot, "Only this spot, by id or name")->type_name("ID");
    commands.on_run(readings, [of_spot](const Globals& globals) { return list_readings(globals, *of_spot); });
}

void add_spot_shows(Commands& commands, CLI::App& show)
{
    auto id = std::make_shared<std::string>();
    CLI::App& spot = *show.add_subcommand("spot", "One spot and what its thermometer has taught");
    spot.fallthrough();
    spot.add_option("spot", *id, "Id or name")->required()->type_name("ID");
    commands.on_run(spot, [id](const Globals& globals) { return show_spot(globals, *id); });
    CLI::App& forecasts =
        *show.add_subcommand("forecasts", "How right the kept forecasts were at this place");
    forecasts.fallthrough();
    commands.on_run(forecasts, show_forecasts);
}

} // namespace lathhouse::cli
