#pragma once

#include "core/climate/daily_records.h"
#include "core/climate/frost_dates.h"
#include "core/climate/station.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// A station's figures from its daily record over a base period.
struct RecordNormals {
    std::string station;
    BasePeriod base; ///< As asked.
    int first_year;  ///< First and last year of the base with readings.
    int last_year;
    MonthlyFigures monthly;
    Monthly<std::optional<Millimetres>> rain;
    std::optional<Celsius> lowest_of_season;
    std::optional<double> persistence; ///< Lag-one correlation of the lows about their season, -1..1.
    std::optional<LowTrend> trend;     ///< Of the means of years whose twelve months all count.
    Probability completeness;          ///< Days with a low, of all days from first_year to last_year.
    std::vector<ThresholdDates> dates; ///< For the lines asked; empty under ten counted seasons.
};

/// The fewest years with readings that each month needs.
inline constexpr int kFewestYearsOfMonth = 8;

/// Definitions (docs/methods/records.md): a year's month counts with at least 20 readings of the element;
/// means and `low_spread` over all readings of the counted months (population standard deviation);
/// `mean_spread` the population standard deviation of (low + high) / 2 within each year's month, averaged
/// over the years; frost days the share of lows below 0 C times the month's mean length; rain the mean of
/// daily sums times that length; reading step 5/9 K where at least 75 % of the lows are whole degrees
/// Fahrenheit, else 0.1 K; `lowest_of_season` the mean of the lowest nights of the counted cold seasons, from
/// ten seasons on. Errors: TooFewYears, naming station and month, where a month has lows or highs in fewer
/// than kFewestYearsOfMonth years (a year's month with under 20 readings is not counted as one).
Result<RecordNormals> normals_of(const DailyRecord& record, BasePeriod base, std::span<const Celsius> lines);

} // namespace lathhouse::climate
