#pragma once

#include "core/climate/station_rows.h"

#include <filesystem>
#include <vector>

namespace lathhouse::climate {

/// The shipped rows, read once. A table that cannot be read stops the tests.
inline const std::vector<Station>& shipped()
{
    static const auto stations =
        read_station_rows(std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data/stations.csv").value();
    return stations;
}

} // namespace lathhouse::climate
