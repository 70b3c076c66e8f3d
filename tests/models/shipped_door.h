#pragma once

#include "app/models/place_form.h"
#include "core/climate/station_table.h"

#include <filesystem>

namespace lathhouse::models {

/// The shipped tables, as the program hands them to the window.
inline PlaceDoor shipped_door()
{
    return {[]() -> Result<const geodesy::TownTable*> {
                static const auto kTowns = geodesy::TownTable::find().and_then(
                    [](const std::filesystem::path& file) { return geodesy::TownTable::load(file); });
                return kTowns ? Result<const geodesy::TownTable*>{&*kTowns} : Result<const geodesy::TownTable*>{kTowns.error()};
            },
            [](Position position, std::optional<Metres> elevation) -> Result<climate::PlaceClimate> {
                static const auto kTable = climate::StationTable::find().and_then(
                    [](const std::filesystem::path& file) { return climate::StationTable::load(file); });
                return kTable ? climate::climate_at(*kTable, position, elevation) : Result<climate::PlaceClimate>{kTable.error()};
            }};
}

} // namespace lathhouse::models
