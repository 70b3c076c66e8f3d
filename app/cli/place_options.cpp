#include "app/cli/commands.h"

#include "core/geodesy/read_position.h"
#include "core/geodesy/town_table.h"

namespace lathhouse::cli {

void add_position_options(CLI::App& command, PlaceOptions& options, bool required)
{
    command
        .add_option("--at", options.at,
                    std::string{required ? "Place (needed, or --place): " : "Place: "} +
                        "LAT,LON in degrees (or degrees-minutes-seconds with N/S/E/W, or "
                        "EPSG:code:easting,northing)")
        ->type_name("LAT,LON");
    command
        .add_option("--place", options.town,
                    "Place by the name of a town, with region or country after a comma where several bear it")
        ->type_name("NAME");
}

void add_place_options(CLI::App& command, PlaceOptions& options, bool required)
{
    add_position_options(command, options, required);
    command.add_option("--elevation", options.elevation_metres, "Height of the place in metres")
        ->type_name("M");
}

bool is_given(const PlaceOptions& options)
{
    return !options.at.empty() || !options.town.empty();
}

namespace {

Result<const geodesy::Town*> town_of(const PlaceOptions& options)
{
    return geodesy::TownTable::shipped().and_then([&](const geodesy::TownTable* table) { return table->only(options.town); });
}

} // namespace

Result<Position> position_of(const PlaceOptions& options)
{
    if (!is_given(options)) {
        return Error{ErrorCode::WrongUsage, "a place is needed: --at LAT,LON or --place NAME"};
    }
    if (options.town.empty()) {
        return geodesy::read_position(options.at);
    }
    if (!options.at.empty()) {
        return Error{ErrorCode::WrongUsage, "--at and --place both name a place; leave one out"};
    }
    return town_of(options).transform([](const geodesy::Town* town) { return town->position; });
}

std::optional<Metres> elevation_of(const PlaceOptions& options)
{
    if (options.elevation_metres) {
        return Metres::from_metres(*options.elevation_metres);
    }
    const auto town = options.town.empty() ? Error{ErrorCode::WrongUsage, ""} : town_of(options);
    return town ? (*town)->elevation : std::nullopt;
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
