#include "app/cli/place_climate_options.h"

#include "app/words/credits.h"

#include <algorithm>

namespace lathhouse::cli {

Result<climate::PlaceClimate> climate_of(const PlaceOptions& options)
{
    const auto position = position_of(options);
    if (!position) {
        return position.error();
    }
    const auto elevation = elevation_of(options);
    if (elevation && !(elevation->metres() >= -500.0 && elevation->metres() <= 9000.0)) {
        return Error{ErrorCode::OutOfRange, "--elevation must lie within -500 and 9000 metres"};
    }
    const auto table = stations();
    if (!table) {
        return table.error();
    }
    return climate::climate_at(**table, *position, elevation);
}

void add_offset_options(CLI::App& command, OffsetOptions& options)
{
    command
        .add_option("--offset", options.mean_kelvins,
                    "How much warmer the spot's nights are than the open air, in kelvins (default 0)")
        ->type_name("K");
    command
        .add_option("--offset-sd", options.spread_kelvins,
                    "Standard deviation of what is not known of the offset (default 0)")
        ->type_name("K");
}

Result<climate::NightOffset> offset_of(const OffsetOptions& options)
{
    constexpr double kMost = 30.0;
    if (!(options.mean_kelvins >= -kMost && options.mean_kelvins <= kMost)) {
        return Error{ErrorCode::OutOfRange, "--offset must lie within -30 and 30 kelvins"};
    }
    if (!(options.spread_kelvins >= 0.0 && options.spread_kelvins <= kMost)) {
        return Error{ErrorCode::OutOfRange, "--offset-sd must lie within 0 and 30 kelvins"};
    }
    return climate::NightOffset{KelvinDelta::from_kelvins(options.mean_kelvins),
                                KelvinDelta::from_kelvins(options.spread_kelvins)};
}

namespace {

constexpr const char* kNoPromise = "These are chances, not promises.";

std::string base_text(const climate::PlaceClimate& place, const char* dash)
{
    // Stations of one source answer alone; their records begin and end in different years.
    const auto first = std::ranges::min(place.stations, {}, [](const auto& use) {
                           return use.station->base.first_year;
                       }).station->base.first_year;
    const auto last = std::ranges::max(place.stations, {}, [](const auto& use) {
                          return use.station->base.last_year;
                      }).station->base.last_year;
    return std::to_string(first) + dash + std::to_string(last);
}

} // namespace

Json attribution_of(const climate::PlaceClimate& place)
{
    const auto& trend = place.trend;
    return {{"base", base_text(place, "-")},
            {"trend_c_per_decade", trend ? json_number(trend->kelvins_per_decade) : Json(nullptr)},
            {"trend_error_c_per_decade", trend ? json_number(trend->standard_error) : Json(nullptr)},
            {"stations", place.stations.size()},
            {"nearest_km", json_number(place.signs.nearest.kilometres())},
            {"height_off_m", json_number(place.signs.height_off.metres())},
            {"expected_error_c", json_number(place.expected_error.kelvins())},
            {"credits", words::credits(place)},
            {"note", kNoPromise}};
}

std::string sources_in_words(const climate::PlaceClimate& place, words::UnitSystem units)
{
    std::string text = std::to_string(place.stations.size()) +
                       (place.stations.size() == 1 ? " station" : " stations") + ", the nearest " +
                       words::distance(place.signs.nearest, units) + " away, " + base_text(place, "\u2013") +
                       "; a month's mean low is right to about " +
                       words::number(place.expected_error.kelvins(), 1) + " K.\n";
    if (place.trend) {
        text += "Lows there moved by " + words::number(place.trend->kelvins_per_decade, 2) +
                " K a decade (\u00b1" + words::number(place.trend->standard_error, 2) +
                ") over these years.\n";
    }
    return text + kNoPromise + std::string{" "} + words::credits(place) + "\n";
}

} // namespace lathhouse::cli
