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

std::string sources_in_words(const climate::PlaceClimate& place, words::UnitSystem units)
{
    const auto nearest = std::ranges::min(place.stations, {}, &climate::StationInUse::distance).distance;
    const auto& base = place.stations.front().station->base;
    return std::to_string(place.stations.size()) + (place.stations.size() == 1 ? " station" : " stations") +
           ", the nearest " + words::distance(nearest, units) + " away, " + std::to_string(base.first_year) +
           "\u2013" + std::to_string(base.last_year) + "; a month's mean low is right to about " +
           words::number(place.expected_error.kelvins(), 1) + " K.\n" + words::credits(place) + "\n";
}

} // namespace lathhouse::cli
