#pragma once

#include "core/calendar/day_of_year.h"
#include "core/climate/daily_records.h"
#include "core/climate/monthly_figures.h"
#include "core/climate/station.h"
#include "core/units/position.h"

#include <optional>

namespace lathhouse::climate {

/// The part of the year whose daily mean lies above a line.
struct ThermalSeason {
    Celsius above;
    double days;                             ///< 0 where it never does, 365.25 where it always does.
    std::optional<calendar::DayOfYear> from; ///< First and last day; nullopt where the season has no ends.
    std::optional<calendar::DayOfYear> to;
};

/// From monthly figures: where the smooth course of (low + high) / 2 crosses the line; the longest stretch
/// where there are several.
/// Accuracy: some 6 days shorter than growing_season_length of the same places' records, which ends only with
/// six days below the line; docs/methods/figures-of-a-place.md.
ThermalSeason thermal_season(const MonthlyFigures& figures, Celsius above);

/// Mean length in days of the growing season in a record: in each year from the first run of six days with a
/// mean above the line to the first run of six days below it after mid-year (1 July; where the year turns
/// with a southern latitude the year runs from 1 July and mid-year is 1 January), to the year's end where
/// there is none, 0 where it never begins. Years with more than 15 days missing are left out; a missing day
/// ends a run.
///
/// nullopt under ten years. Source: index GSL of the CCl/CLIVAR/JCOMM Expert Team on Climate Change Detection
/// and Indices (ETCCDI), there with 5 C.
std::optional<double> growing_season_length(const DailyRecord& record, BasePeriod base, Latitude latitude,
                                            Celsius above);

} // namespace lathhouse::climate
