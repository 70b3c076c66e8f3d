#pragma once

#include "core/climate/daily_records.h"
#include "core/climate/day_table.h"
#include "core/climate/frost_dates.h"
#include "core/climate/place_climate.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// A station record that the grower imported.
struct OwnRecord {
    std::string name; ///< The grower's word for it.
    std::string file; ///< Name of the file that it came from, without its folders.
    Position position;
    Metres elevation;
    calendar::Date imported;
    DailyRecord days; ///< As it was read; impossible values are still in it.
};

/// The record and the figures computed from it.
struct OwnStation {
    std::shared_ptr<const OwnRecord> record;
    DailyRecord days; ///< As check_record leaves them: impossible values are gaps.
    Station station;
};

/// How to read a file that the grower names.
struct RecordFile {
    std::filesystem::path file;
    std::optional<std::string> station{};     ///< Of a file with several.
    std::optional<DayTableColumns> columns{}; ///< Of a table of the grower's own.
    TableUnits units = TableUnits::Metric;
};

/// The days of one station in any form: those of daily_records.h, else (and where columns or US units are
/// named) the grower's own table. Errors: those of DailyFile and read_day_table; WrongUsage for a file of
/// several stations of which none is named; NotFound for a station that the file does not have.
Result<DailyRecord> read_record_file(const RecordFile& asked);

/// The newest thirty calendar years with lows (the length of a climate normal, WMO-No. 1203), or all there
/// are. Precondition: the record has a low.
BasePeriod base_of_own(const DailyRecord& record);

/// Figures of the record over base_of_own. Errors: TooFewYears (see normals_of).
Result<OwnStation> station_of(std::shared_ptr<const OwnRecord> record);

/// How far a record speaks for a place.
inline constexpr double kOwnReachKilometres = 50.0;
inline constexpr double kOwnReachHeightMetres = 300.0;

/// The climate of a place by the grower's own record alone, brought to the place's height by the usual lapse;
/// `own` of the answer holds the record. The error expected is that of so few years, and what grows with the
/// way. Errors: TooFewYears, NoStation where the place lies beyond the reach.
Result<PlaceClimate> climate_from_own(const std::shared_ptr<const OwnRecord>& record, Position position,
                                      std::optional<Metres> elevation);

/// Frost dates counted in the record over base_of_own; nullopt under kFewestSeasons counted seasons, and
/// where a percent asked for lies beyond what so many seasons can tell (under one in their number).
/// further_percents: besides the standard ones.
std::optional<std::vector<ThresholdDates>> dates_from_own(const OwnStation& own,
                                                          std::span<const Celsius> lines,
                                                          std::span<const double> further_percents);

} // namespace lathhouse::climate
