#include "app/cli/all_commands.h"
#include "app/cli/place_climate_options.h"
#include "core/climate/figures.h"

#include <array>
#include <memory>

namespace lathhouse::cli {
namespace {

Json json_of(const climate::StationInUse& used)
{
    const auto& station = *used.station;
    return {{"id", station.id},
            {"name", station.name},
            {"distance_km", json_number(used.distance.kilometres())},
            {"elevation_m", json_number(station.elevation.metres())},
            {"weight", json_number(used.weight)},
            {"base", std::to_string(station.base.first_year) + "-" + std::to_string(station.base.last_year)}};
}

constexpr std::array<const char*, 12> kMonthNames{"January",   "February", "March",    "April",
                                                  "May",       "June",     "July",     "August",
                                                  "September", "October",  "November", "December"};

Result<Answer> climate_answer(const Globals& globals, const PlaceOptions& options)
{
    const auto place = climate_of(options);
    if (!place) {
        return place.error();
    }
    const auto& monthly = place->monthly;
    const auto light = climate::months_of_light(monthly, place->position, place->elevation);
    const Celsius lowest =
        place->lowest_of_season ? *place->lowest_of_season : place->nights().lowest_of_season();
    const std::string zone = climate::hardiness_zone(lowest);
    const double heat = climate::heat_days(monthly);

    Json stations = Json::array();
    for (const auto& used : place->stations) {
        stations.push_back(json_of(used));
    }
    Json months = Json::array();
    std::string text = words::padded("", 10) + words::right_aligned("low", 10) +
                       words::right_aligned("high", 10) + words::right_aligned("rain", 10) +
                       words::right_aligned("day", 14) + words::right_aligned("light mol", 11) +
                       words::right_aligned("water", 10) + "\n";
    for (std::size_t m = 0; m < 12; ++m) {
        const auto& rain = place->rain[m];
        months.push_back(
            {{"month", m + 1},
             {"low_c", json_number(monthly.low[m].degrees())},
             {"high_c", json_number(monthly.high[m].degrees())},
             {"low_lapse_c_per_km", json_number(place->low_lapse_per_kilometre[m])},
             {"low_spread_c",
              monthly.low_spread ? json_number((*monthly.low_spread)[m].kelvins()) : Json(nullptr)},
             {"rain_mm", rain ? json_number(rain->millimetres()) : Json(nullptr)},
             {"day_length_s", json_number(light[m].day_length_seconds)},
             {"daily_light_mol", json_number(light[m].daily_light.moles())},
             {"reference_et_mm", json_number(light[m].reference_evapotranspiration.millimetres())}});
        text += words::padded(kMonthNames[m], 10) +
                words::right_aligned(words::temperature(monthly.low[m], globals.units), 10) +
                words::right_aligned(words::temperature(monthly.high[m], globals.units), 10) +
                words::right_aligned(rain ? words::rain(*rain, globals.units) : "-", 10) +
                words::right_aligned(words::hours_and_minutes(light[m].day_length_seconds), 14) +
                words::right_aligned(words::number(light[m].daily_light.moles(), 1), 11) +
                words::right_aligned(words::rain(light[m].reference_evapotranspiration, globals.units), 10) +
                "\n";
    }
    text += "Lowest night of a winter, on average " + words::temperature(lowest, globals.units) +
            ": hardiness zone " + zone + ". Days above " +
            words::temperature(Celsius::from_degrees(30.0), globals.units) + ": " + words::number(heat, 0) +
            " a year.\n" + sources_in_words(*place, globals.units);
    return Answer{{{"stations", stations},
                   {"months", months},
                   {"lowest_c", json_number(lowest.degrees())},
                   {"hardiness_zone", zone},
                   {"heat_days", json_number(heat)},
                   {"expected_error_c", json_number(place->expected_error.kelvins())},
                   {"attribution", attribution_of(*place)}},
                  text,
                  place->warnings};
}

} // namespace

void add_climate(Commands& commands)
{
    auto options = std::make_shared<PlaceOptions>();
    CLI::App& command =
        commands.add("climate", "The twelve months of a place, and the stations they come from",
                     "lathhouse climate --at 45.5,-122.7 --elevation 60");
    add_place_options(command, *options, true);
    commands.on_run(command, [options](const Globals& globals) { return climate_answer(globals, *options); });
}

} // namespace lathhouse::cli
