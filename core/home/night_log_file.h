#pragma once

#include "core/base/named_rows.h"
#include "core/home/thermometer.h"

#include <array>
#include <string_view>
#include <vector>

namespace lathhouse::home {

/// Columns of a forecast: `date` (the morning on which the night ends), `low_c` or `low_f`; where they are
/// known `dew_point_c` or `dew_point_f`, `sky` (clear, cloudy) or `cloud_percent` (under 30 is clear), `wind`
/// (calm, windy) or `wind_m_s`, `wind_km_h`, `wind_mph` (under 2 m/s is calm), `issued` (the day on which the
/// forecast was made). A date may have a time behind it, which is passed over.
inline constexpr std::array<std::string_view, 12> kForecastColumns{
    "date",          "low_c", "low_f",    "dew_point_c", "dew_point_f", "sky",
    "cloud_percent", "wind",  "wind_m_s", "wind_km_h",   "wind_mph",    "issued"};

/// Columns of a thermometer log: those of a forecast but `issued` and the dew point, and `spot` (id or name),
/// `high_c` or `high_f`, `station_low_c` or `station_low_f`, `note`.
inline constexpr std::array<std::string_view, 15> kReadingColumns{
    "date", "spot", "low_c",    "low_f",     "high_c",   "high_f",        "station_low_c", "station_low_f",
    "sky",  "wind", "wind_m_s", "wind_km_h", "wind_mph", "cloud_percent", "note"};

/// Limits of what counts as clear and as calm. Common practice, no source.
inline constexpr double kClearBelowPercent = 30.0;
inline constexpr double kCalmBelowMetresPerSecond = 2.0;

/// Nights that were over when the forecast was made are passed over.
/// issued: of rows that do not say it.
/// Errors: Malformed with file and line (a column missing, a value that is none, a temperature outside -90 to
/// 60 C, the same night twice in one forecast, no row that is left).
Result<std::vector<KeptForecast>> forecast_from(const NamedRows& rows, calendar::Date issued,
                                                calendar::Instant entered);

/// spot: of rows that name none.
/// Errors: Malformed with file and line, as above, and for a spot that the household has not, a night after
/// `today`, a high below the low, one night and spot twice.
Result<std::vector<Reading>> readings_from(const NamedRows& rows, const Household& household,
                                           std::optional<SpotId> spot, calendar::Date today,
                                           calendar::Instant entered);

/// "clear" or "cloudy", "calm" or "windy"; nullopt for another word.
std::optional<climate::Sky> sky_of(std::string_view word);
std::optional<climate::Wind> wind_of(std::string_view word);
std::string_view to_string(climate::Sky sky);
std::string_view to_string(climate::Wind wind);

} // namespace lathhouse::home
