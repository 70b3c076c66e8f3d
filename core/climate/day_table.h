#pragma once

#include "core/climate/daily_records.h"

#include <filesystem>
#include <optional>
#include <string>

namespace lathhouse::climate {

/// What the numbers of a grower's own table stand for.
enum class TableUnits {
    Metric, ///< Degrees Celsius and millimetres.
    Us,     ///< Degrees Fahrenheit and inches.
};

/// Names of the columns of a grower's own table, read without regard to case.
struct DayTableColumns {
    std::string date = "date";
    std::string low = "low";
    std::string high = "high";
    std::optional<std::string> rain; ///< Without a name a column "rain" is taken where there is one.
};

/// A comma-separated table with a head line and one row a day, as a logger or a spreadsheet writes it: the
/// date as `1991-01-31` (or `19910131`), the night's low, the day's high, the rain; an empty cell is a gap.
/// Rows may stand in any order; columns that are not named are not read. Values are kept in tenths of a
/// degree Celsius and of a millimetre.
///
/// station: what the record is called.
/// Errors: NotFound, Unreadable (a folder too), Malformed: no such column, no rows, a cell that is no date or
/// number, a day that stands twice, a value that no unit explains (beyond 3000), each with file and line.
Result<DailyRecord> read_day_table(const std::filesystem::path& file, const DayTableColumns& columns,
                                   TableUnits units, std::string station);

/// The same from text; source_name: how errors name it.
Result<DailyRecord> parse_day_table(std::string_view text, std::string source_name,
                                    const DayTableColumns& columns, TableUnits units, std::string station);

} // namespace lathhouse::climate
