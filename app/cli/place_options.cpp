#include "app/cli/commands.h"

#include "core/geodesy/read_position.h"

namespace lathhouse::cli {

void add_place_options(CLI::App& command, PlaceOptions& options, bool required)
{
    command
        .add_option("--at", options.at,
                    "Place: LAT,LON in degrees (or degrees-minutes-seconds with N/S/E/W, or "
                    "EPSG:code:easting,northing)")
        ->required(required)
        ->type_name("LAT,LON");
    command.add_option("--elevation", options.elevation_metres, "Height of the place in metres")
        ->type_name("M");
}

Result<Position> position_of(const PlaceOptions& options)
{
    return geodesy::read_position(options.at);
}

std::optional<Metres> elevation_of(const PlaceOptions& options)
{
    return options.elevation_metres ? std::optional{Metres::from_metres(*options.elevation_metres)}
                                    : std::nullopt;
}

Result<const climate::StationTable*> stations()
{
    static const Result<climate::StationTable> table = climate::StationTable::find().and_then(
        [](const auto& file) { return climate::StationTable::load(file); });
    if (!table) {
        return table.error();
    }
    return &*table;
}

} // namespace lathhouse::cli
