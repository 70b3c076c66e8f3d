#pragma once

#include "core/climate/station.h"

#include <filesystem>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::climate {

/// "us_daily", "world_monthly", "own".
std::string_view to_string(StationSource source);
/// Lines for which a row with a daily record carries dates.
std::span<const Celsius> station_row_lines();
/// Percent chances whose dates a row carries.
std::span<const double> station_row_percents();

/// The station table as text: comma-separated, one head line, columns as climate-data/README.md describes.
/// What does not exist is an empty field.
/// Rows of the ids in `without_place` leave position and height empty.
std::string station_rows_text(std::span<const Station> stations,
                              const std::set<std::string>& without_place = {});

/// Reads such a table. Errors: Malformed, OutOfRange with file and line.
Result<std::vector<Station>> parse_station_rows(std::string_view text, std::string source_name);
Result<std::vector<Station>> read_station_rows(const std::filesystem::path& file);

} // namespace lathhouse::climate
