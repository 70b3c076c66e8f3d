#pragma once

#include "core/climate/world_rows.h"

#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// What a station table is made from.
struct TableSources {
    std::vector<std::filesystem::path> records;  ///< Files of daily records.
    std::optional<std::filesystem::path> places; ///< Columns station, name, latitude, longitude, elevation_m.
    std::optional<std::filesystem::path> world;  ///< Monthly means, as read_world_rows takes them.
    BasePeriod base{1991, 2020};
    BasePeriod world_base{2003, 2021};
};

struct BuiltTable {
    std::vector<Station> stations;  ///< By source and id.
    std::set<std::string> unplaced; ///< Ids without a position, where no places were named.
    std::vector<LeftOut> left_out;
};

/// The table's rows: normals of every daily record and the monthly means, less the stations that fail
/// range_fault or neighbour_faults, have too few years or (where places are named) no position. A station's
/// base runs from its first to its last year with readings inside the base asked for. Errors: those of the
/// files.
Result<BuiltTable> build_station_table(const TableSources& sources);

/// `id,name,source,reason`, one head line.
std::string left_out_text(const std::vector<LeftOut>& left_out);

} // namespace lathhouse::climate
