#pragma once

#include "core/climate/frost_dates.h"
#include "core/climate/low_trend.h"
#include "core/climate/monthly_figures.h"
#include "core/units/position.h"

#include <string>

namespace lathhouse::climate {

/// First and last calendar year of the records behind a figure, both included.
struct BasePeriod {
    int first_year;
    int last_year;
    friend constexpr bool operator==(const BasePeriod&, const BasePeriod&) = default;
};

enum class StationSource {
    UsDaily,      ///< Computed from GHCN-Daily (NOAA NCEI, public domain).
    WorldMonthly, ///< Computed from CLIMAT reports (Deutscher Wetterdienst, CC BY 4.0).
    Own,          ///< A record that the grower imported.
};

/// A row of the station table.
struct Station {
    std::string id;
    std::string name;
    std::string country; ///< As the source has it; empty where it has none.
    Position position;
    Metres elevation;
    BasePeriod base;
    StationSource source;
    MonthlyFigures monthly;
    Monthly<std::optional<Millimetres>> rain;  ///< Mean sum of the month.
    std::optional<Celsius> lowest_of_season;   ///< Mean of the cold seasons' lowest nights.
    std::vector<ThresholdDates> dates;         ///< From daily records, where there are any.
    std::optional<double> persistence{};       ///< Lag-one correlation of daily lows about their season.
    std::optional<LowTrend> trend{};           ///< From a daily record of fifteen full years at least.
    std::optional<Probability> completeness{}; ///< Days with a low among all days of the base.
};

} // namespace lathhouse::climate
