#pragma once

#include "core/climate/station.h"

#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// A station that did not come into a table, and why.
struct LeftOut {
    std::string id;
    std::string name;
    StationSource source;
    std::string reason;
};

struct WorldRows {
    std::vector<Station> stations;
    std::vector<LeftOut> left_out;
};

/// Reads monthly means made from CLIMAT reports: columns wmo, name, country, lat, lon, elev_m, min_years and
/// tmin, tmax, sd_tmean, prcp_mm, frostdays, absmin, each `_Jan` .. `_Dec`.
///
/// Frost days: many countries report only months that have some, so that the mean is over those. Where no
/// value of a country is 0, a mean f of 3 days and more with at least one free day is turned into t with t /
/// (1 - exp(-0.45 t)) = f, and smaller ones are dropped. Those of Australia, South Africa and Bolivia
/// contradict the same stations' lows and are dropped. (Climate study of this project,
/// docs/methods/records.md.) A row outside sane ranges is left out with its reason. Errors: NotFound,
/// Unreadable, Malformed.
Result<WorldRows> read_world_rows(const std::filesystem::path& file, BasePeriod base);

} // namespace lathhouse::climate
