#include "app/cli/place_climate_options.h"

#include "app/cli/household_options.h"
#include "app/cli/shipped_climate.h"
#include "app/words/credits.h"
#include "core/climate/own_record.h"

#include <cmath>

namespace lathhouse::cli {

namespace {

/// The answer of the household's own record where it was kept at that place; nullopt where there is none.
/// A household that cannot be read is no matter here: another place was asked for.
std::optional<climate::PlaceClimate> by_own_record(const Globals& globals, Position position,
                                                   std::optional<Metres> elevation)
{
    constexpr double kSamePlaceKilometres = 5.0;
    constexpr double kSameHeightMetres = 100.0;
    if (!has_household(globals)) {
        return std::nullopt;
    }
    const auto household = household_of(globals, WithoutHousehold::IsAnError);
    if (!household || !household->own_record) {
        return std::nullopt;
    }
    auto own = climate::climate_from_own(household->own_record, position, elevation);
    if (!own || own->stations.front().distance.kilometres() > kSamePlaceKilometres ||
        std::abs((own->elevation - household->own_record->elevation).metres()) > kSameHeightMetres) {
        return std::nullopt;
    }
    return std::move(*own);
}

} // namespace

Result<climate::PlaceClimate> climate_of(const Globals& globals, const PlaceOptions& options)
{
    if (!is_given(options)) {
        if (options.elevation_metres) {
            return Error{ErrorCode::WrongUsage,
                         "--elevation belongs to a place named with --at LAT,LON or --place NAME"};
        }
        if (!globals.home_given && !has_household(globals)) {
            return Error{ErrorCode::WrongUsage,
                         "name the place with --at LAT,LON or --place NAME, or a household with --home DIR"};
        }
        return household_of(globals, WithoutHousehold::IsAnError)
            .and_then([](const home::Household& household) { return climate_of(household); });
    }
    const auto position = position_of(options);
    if (!position) {
        return position.error();
    }
    const auto elevation = elevation_of(options);
    if (elevation && !(elevation->metres() >= -500.0 && elevation->metres() <= 9000.0)) {
        return Error{ErrorCode::OutOfRange, "--elevation must lie within -500 and 9000 metres"};
    }
    if (auto own = by_own_record(globals, *position, elevation)) {
        return std::move(*own);
    }
    return shipped_climate(*position, elevation);
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

std::string base_text(const climate::PlaceClimate& place)
{
    const auto years = words::years_in_use(place);
    return std::to_string(years.first_year) + "-" + std::to_string(years.last_year);
}

} // namespace

Json attribution_of(const climate::PlaceClimate& place)
{
    const auto& trend = place.trend;
    return {{"base", base_text(place)},
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
    std::string text = words::stations_in_use(place, units) + "; a month's mean low is right to about " +
                       words::number(place.expected_error.kelvins(), 1) + " K.\n";
    if (place.trend) {
        text += "Lows there moved by " + words::number(place.trend->kelvins_per_decade, 2) +
                " K a decade (\u00b1" + words::number(place.trend->standard_error, 2) +
                ") over these years.\n";
    }
    return text + kNoPromise + std::string{" "} + words::credits(place) + "\n";
}

} // namespace lathhouse::cli
