#pragma once

#include "app/words/words.h"
#include "core/climate/frost_dates.h"
#include "core/climate/seasons.h"
#include "core/climate/thermal_season.h"

#include <optional>
#include <string>

namespace lathhouse::words {

/// "January" for 0; month: 0 to 11.
const char* month_name(std::size_t month);

/// "March to May, August and November", from months of the year (January first); the year may be turned over.
/// "every month" and "no month" for all and none.
std::string months(const climate::Monthly<bool>& which);

/// What the year is like, one or two whole sentences: "Winter is coldest from June to August, summer warmest
/// from December to February. Rain falls in every season." Where there is no winter none is named.
std::string seasons(const climate::Seasons& seasons);

/// How much frost there is: "No frost in any of the years.", "Frost in some years only, 0.3 nights a year."
/// and so on. dates: for 0 C.
/// lowest: the lowest low of all the years, where it is known; above 0 C it counts for more than the model's
/// small chances.
std::string frost(const climate::ThresholdDates& dates, std::optional<Celsius> lowest, UnitSystem units);

/// "above 5 °C on average from 20 Mar to 7 Nov (232 days)", or that it always or never is.
std::string thermal_season(const climate::ThermalSeason& season, UnitSystem units);

} // namespace lathhouse::words
