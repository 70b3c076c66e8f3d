#pragma once

#include "core/base/result.h"
#include "core/units/length.h"
#include "core/units/position.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::geodesy {

/// A row of climate-data/towns.csv: a town under all its names.
struct TownRow {
    std::uint32_t id; ///< Of GeoNames.
    std::string name;
    std::vector<std::string> other_keys; ///< Other names as name_key writes them, the most usual first.
    std::string country;                 ///< ISO 3166, two letters.
    std::string region;                  ///< Code of the country's first division; may be empty.
    Position position;                   ///< To a thousandth of a degree.
    std::optional<Metres> elevation;     ///< Of the ground there, from a terrain model.
    std::uint32_t population;            ///< 0 where it is not known.
    std::string zone;                    ///< IANA name.
};

/// A row of climate-data/regions.csv: a first division of a country.
struct RegionRow {
    std::string country;
    std::string code;
    std::string name; ///< May be empty.
    std::string zone; ///< Of most of its towns; a town's own zone is written only where it differs.
};

struct TownRows {
    std::vector<TownRow> towns;
    std::vector<RegionRow> regions;
};

/// Reads towns.csv and regions.csv of a folder. Errors: NotFound, Unreadable, Malformed with file and line.
Result<TownRows> read_town_rows(const std::filesystem::path& folder);

std::string towns_text(const TownRows& rows);   ///< The content of towns.csv.
std::string regions_text(const TownRows& rows); ///< The content of regions.csv.

/// How the rows are chosen from a gazetteer.
struct TownChoice {
    std::uint32_t least_population = 7000; ///< Of towns; seats of a first division and capitals count anyway.
    std::uint32_t least_population_of_part = 100000; ///< Of parts of towns.
};

/// Rows made from GeoNames' table of populated places (its 19 columns, parted by tabs) and the names of first
/// divisions (JSON: a list of objects with "code", such as "AT.09", and "name"). Left out are places that
/// were given up. A town's other names are kept in the order of how many writings lead to the same key; the
/// more people live there, the more of them.
/// Errors: NotFound, Unreadable, Malformed with file and line.
Result<TownRows> build_town_rows(const std::filesystem::path& places, const std::filesystem::path& divisions,
                                 TownChoice choice = {});

} // namespace lathhouse::geodesy
