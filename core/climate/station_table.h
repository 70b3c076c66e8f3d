#pragma once

#include "core/climate/station.h"

#include <filesystem>
#include <span>
#include <string_view>
#include <vector>

namespace lathhouse::climate {

/// The stations that the program knows, read once and shared.
class StationTable {
public:
    /// Loads the packed table. Errors: NotFound, Unreadable, Damaged.
    static Result<StationTable> load(const std::filesystem::path& packed_file);
    /// Where the packed table is: $LATHHOUSE_STATIONS, else beside the build, else the installed prefix.
    /// Errors: NotFound, naming the places looked at.
    static Result<std::filesystem::path> find();

    std::span<const Station> stations() const { return stations_; }
    const Station* by_id(std::string_view id) const;

private:
    std::vector<Station> stations_;
};

} // namespace lathhouse::climate
