#include "app/cli/all_commands.h"
#include "app/cli/place_climate_options.h"
#include "app/words/growing_words.h"
#include "app/words/season_words.h"
#include "app/words/us_units.h"
#include "core/climate/figures.h"
#include "core/climate/place_months.h"
#include "core/climate/place_nights.h"

#include <algorithm>
#include <array>
#include <memory>
#include <numeric>

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

const char* name_of(climate::TemperatureSeasons seasons)
{
    switch (seasons) {
    case climate::TemperatureSeasons::None:
        return "none";
    case climate::TemperatureSeasons::CoolSeason:
        return "cool_season";
    case climate::TemperatureSeasons::Winter:
        return "winter";
    }
    return "";
}

const char* name_of(climate::RainSeasons seasons)
{
    switch (seasons) {
    case climate::RainSeasons::Unknown:
        return "unknown";
    case climate::RainSeasons::DryAllYear:
        return "dry_all_year";
    case climate::RainSeasons::RainAllYear:
        return "rain_all_year";
    case climate::RainSeasons::WetAndDry:
        return "wet_and_dry";
    case climate::RainSeasons::DrySummer:
        return "dry_summer";
    case climate::RainSeasons::DryWinter:
        return "dry_winter";
    }
    return "";
}

struct ClimateOptions {
    PlaceOptions place;
    double pot_centimetres = climate::kUsualPotCentimetres;
};

Json json_of(const climate::DayRange& range)
{
    return {{"mean_c", json_number(range.mean.degrees())},
            {"low_c", json_number(range.low.degrees())},
            {"high_c", json_number(range.high.degrees())}};
}

Json json_of(const climate::ThermalSeason& season)
{
    return {{"above_c", json_number(season.above.degrees())},
            {"days", json_number(season.days)},
            {"from", json_day(season.from)},
            {"to", json_day(season.to)}};
}

Json months_json(const climate::PlaceClimate& place, const climate::PlaceMonths& figures)
{
    const auto& monthly = place.monthly;
    Json months = Json::array();
    for (std::size_t m = 0; m < 12; ++m) {
        const auto& rain = place.rain[m];
        const auto& light = figures.light[m];
        months.push_back(
            {{"month", m + 1},
             {"low_c", json_number(monthly.low[m].degrees())},
             {"high_c", json_number(monthly.high[m].degrees())},
             {"low_lapse_c_per_km", json_number(place.low_lapse_per_kilometre[m])},
             {"low_spread_c",
              monthly.low_spread ? json_number((*monthly.low_spread)[m].kelvins()) : Json(nullptr)},
             {"rain_mm", rain ? json_number(rain->millimetres()) : Json(nullptr)},
             {"day_length_s", json_number(light.day_length_seconds)},
             {"daily_light_mol", json_number(light.daily_light.moles())},
             {"reference_et_mm", json_number(light.reference_evapotranspiration.millimetres())},
             {"growing_degree_days", json_number(figures.degree_days[m])},
             {"soil_5cm", json_of(figures.soil_at_5[m])},
             {"soil_10cm", json_of(figures.soil_at_10[m])},
             {"pot", json_of(figures.pot[m])},
             {"pot_water_l_day", json_number(figures.pot_water[m])}});
    }
    return months;
}

std::string months_text(const climate::PlaceClimate& place, const climate::PlaceMonths& figures, words::UnitSystem units)
{
    const auto& monthly = place.monthly;
    std::string text = words::padded("", 10) + words::right_aligned("low", 10) +
                       words::right_aligned("high", 10) + words::right_aligned("rain", 10) +
                       words::right_aligned("day", 14) + words::right_aligned("light mol", 11) +
                       words::right_aligned("water", 10) + "\n";
    for (std::size_t m = 0; m < 12; ++m) {
        const auto& rain = place.rain[m];
        const auto& light = figures.light[m];
        text += words::padded(words::month_name(m), 10) +
                words::right_aligned(words::temperature(monthly.low[m], units), 10) +
                words::right_aligned(words::temperature(monthly.high[m], units), 10) +
                words::right_aligned(rain ? words::rain(*rain, units) : "-", 10) +
                words::right_aligned(words::hours_and_minutes(light.day_length_seconds), 14) +
                words::right_aligned(words::number(light.daily_light.moles(), 1), 11) +
                words::right_aligned(words::rain(light.reference_evapotranspiration, units), 10) + "\n";
    }
    return text;
}

/// Pots and soil, month by month.
std::string ground_text(const climate::PlaceMonths& figures, const std::string& pot_width, words::UnitSystem units)
{
    std::string text = words::padded("", 10) + words::right_aligned("soil 5 cm", 12) +
                       words::right_aligned("soil 10 cm", 12) + words::right_aligned("pot low", 10) +
                       words::right_aligned("pot high", 10) + words::right_aligned("pot drinks", 13) +
                       words::right_aligned("degree days", 13) + "\n";
    for (std::size_t m = 0; m < 12; ++m) {
        text += words::padded(words::month_name(m), 10) +
                words::right_aligned(words::temperature(figures.soil_at_5[m].mean, units), 12) +
                words::right_aligned(words::temperature(figures.soil_at_10[m].mean, units), 12) +
                words::right_aligned(words::temperature(figures.pot[m].low, units), 10) +
                words::right_aligned(words::temperature(figures.pot[m].high, units), 10) +
                words::right_aligned(words::water_of_day(Litres::from_litres(figures.pot_water[m]), units) + "/day", 13) +
                words::right_aligned(words::number(figures.degree_days[m], 0), 13) + "\n";
    }
    return text + "Pot: " + pot_width +
           " across (or its crown, if wider), well watered, in the open; its temperature is that of a pot in "
           "the "
           "shade. A dark pot in full sun gets much hotter and can burn roots and hands.\n";
}

Result<Answer> climate_answer(const Globals& globals, const ClimateOptions& options)
{
    if (!(options.pot_centimetres >= climate::kNarrowestPotCentimetres && options.pot_centimetres <= climate::kWidestPotCentimetres)) {
        return Error{ErrorCode::OutOfRange, "--pot must lie within 5 and 100 centimetres"};
    }
    const auto place = climate_of(globals, options.place);
    if (!place) {
        return place.error();
    }
    const auto& monthly = place->monthly;
    const auto figures = climate::PlaceMonths::of(*place, Metres::from_metres(options.pot_centimetres / 100.0));
    const Celsius lowest =
        place->lowest_of_season ? *place->lowest_of_season : place->nights().lowest_of_season().mean;
    const std::string zone = climate::hardiness_zone(lowest);
    const double heat = climate::heat_days(monthly);
    const double degree_days = std::accumulate(figures.degree_days.begin(), figures.degree_days.end(), 0.0);
    const auto& of_the_year = figures.of_the_year;
    // Six-day runs can only be counted in a record.
    const auto counted_length =
        place->own ? climate::growing_season_length(place->own->days, place->own->station.base,
                                                    place->position.latitude, Celsius::from_degrees(5.0))
                   : std::nullopt;

    Json stations = Json::array();
    for (const auto& used : place->stations) {
        stations.push_back(json_of(used));
    }
    Json dry_months = Json::array();
    for (std::size_t m = 0; m < 12; ++m) {
        if (of_the_year.dry[m]) {
            dry_months.push_back(m + 1);
        }
    }
    const auto units = globals.units;
    std::string text = months_text(*place, figures, units);
    text +=
        words::seasons(of_the_year) + " " + words::frost(figures.frost, figures.lowest, units) + "\n";
    text += "On average the day is " + words::thermal_season(figures.seasons[0], units) + ", " +
            words::thermal_season(figures.seasons[1], units) + ".\n";
    text +=
        (of_the_year.temperature == climate::TemperatureSeasons::Winter ? "Lowest night of a winter"
                                                                        : "Lowest night of a year") +
        std::string{", on average "} + words::temperature(lowest, units) + ": hardiness zone " + zone +
        ". Days above " + words::temperature(Celsius::from_degrees(30.0), units) + ": " +
        words::number(heat, 0) + " a year. Degree days above " + words::temperature(climate::kDegreeDayBase, units) +
        ": " + words::number(degree_days, 0) + " a year (in °C)" +
        (figures.rain ? ". Rain: " + words::rain(*figures.rain, units) + " a year" : std::string{}) + ".\n\n";
    const auto width = units.us_measures() ? words::number(options.pot_centimetres / words::kCentimetresInAnInch, 0) + " in"
                                           : words::number(options.pot_centimetres, 0) + " cm";
    text += ground_text(figures, width, units) + "\n" + sources_in_words(*place, units);
    return Answer{{{"stations", stations},
                   {"months", months_json(*place, figures)},
                   {"lowest_c", json_number(lowest.degrees())},
                   {"hardiness_zone", zone},
                   {"heat_days", json_number(heat)},
                   {"expected_error_c", json_number(place->expected_error.kelvins())},
                   {"own_record", place->own != nullptr},
                   {"growing_degree_days", json_number(degree_days)},
                   {"growing_degree_days_base_c", json_number(climate::kDegreeDayBase.degrees())},
                   {"rain_mm", figures.rain ? json_number(figures.rain->millimetres()) : Json(nullptr)},
                   {"thermal_seasons", {json_of(figures.seasons[0]), json_of(figures.seasons[1])}},
                   {"growing_season_days", counted_length ? json_number(*counted_length) : Json(nullptr)},
                   {"seasons",
                    {{"temperature", name_of(of_the_year.temperature)},
                     {"rain", name_of(of_the_year.rain)},
                     {"coldest_from_month", of_the_year.coldest_from + 1},
                     {"warmest_from_month", of_the_year.warmest_from + 1},
                     {"dry_months", dry_months},
                     {"koppen", of_the_year.koppen ? Json(*of_the_year.koppen) : Json(nullptr)}}},
                   {"frost_nights_per_year", json_number(figures.frost.nights_per_year)},
                   {"attribution", attribution_of(*place)}},
                  text,
                  texts(place->warnings)};
}

} // namespace

void add_climate(Commands& commands)
{
    auto options = std::make_shared<ClimateOptions>();
    CLI::App& command =
        commands.add("climate", "The twelve months of a place, and the stations they come from",
                     "lathhouse climate --at 45.5,-122.7 --elevation 60");
    add_place_options(command, options->place, false);
    command.add_option("--pot", options->pot_centimetres, "Width of the pot, or of its crown (default 30)")
        ->type_name("CM");
    commands.on_run(command, [options](const Globals& globals) { return climate_answer(globals, *options); });
}

} // namespace lathhouse::cli
