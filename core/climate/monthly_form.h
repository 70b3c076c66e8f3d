#pragma once

#include "core/base/csv.h"
#include "core/climate/counted_nights.h"
#include "core/climate/monthly_figures.h"
#include "core/units/position.h"

#include <optional>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// A row of the monthly form: a place and its twelve months.
struct MonthlyPlace {
    std::string station;
    std::string name; ///< Empty where the form has none.
    Position position;
    std::optional<Metres> elevation;
    MonthlyFigures figures;
    std::vector<CountedNights> counted; ///< Without a line whose cells are all blank.
};

/// Reads the monthly form: `station,latitude,longitude`, `low_01..12` and `high_01..12` must be there;
/// `name`, `elevation_m`, `low_sd_01..12`, `mean_sd_01..12`, `lowest_01..12`, `frost_days_01..12`, `years`
/// and `reading_step_c` may be. Degrees Celsius and metres; other columns are passed over. A spread is given
/// for all twelve months of a row or for none. `nights_20f_01..12`, `nights_-5c_01..12` and the like hold the
/// mean number of nights at or below that line, given for all twelve months of a row or for none.
///
/// Errors: Malformed with line and column: a number that is none or cannot be true (a low above its high, a
/// spread that is not positive, more frost days than days, more nights below a line than below a warmer one),
/// a missing column, no row at all.
Result<std::vector<MonthlyPlace>> read_monthly_form(const CsvTable& table);

} // namespace lathhouse::climate
