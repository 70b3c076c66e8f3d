#pragma once

#include "core/climate/station.h"

#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::climate {

/// The stations that the program knows, read once and shared.
class StationTable {
public:
    /// Loads the packed table. Errors: NotFound, Unreadable, Damaged (not a table, cut, changed), TooNew.
    static Result<StationTable> load(const std::filesystem::path& packed_file);
    /// The table in the bytes of a packed file; `name` is for errors. Errors: Damaged, TooNew.
    static Result<StationTable> unpack(std::string_view bytes, std::string_view name);
    /// Where the packed table is: $LATHHOUSE_STATIONS, else beside the build, else the installed prefix.
    /// Errors: NotFound, naming the places looked at.
    static Result<std::filesystem::path> find();
    /// A table of the given stations, for tests and for the grower's own records.
    static StationTable of(std::vector<Station> stations);

    std::span<const Station> stations() const { return stations_; }
    const Station* by_id(std::string_view id) const;

private:
    std::vector<Station> stations_;
};

/// The bytes of a packed table (base/packed_head.h, "LHSTATN\n"): the rows; all numbers little-endian. Temperatures are kept in hundredths, so that it gives back what a table row says.
std::string pack_stations(std::span<const Station> stations);

} // namespace lathhouse::climate
