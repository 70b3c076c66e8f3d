#pragma once

#include "core/climate/night_model.h"
#include "core/climate/station.h"
#include "tests/climate/sample_figures.h"

#include <utility>
#include <vector>

namespace lathhouse::climate {

inline constexpr Position kHere{Latitude::literal(45.0), Longitude::literal(11.0)};
inline constexpr Metres kHeight = Metres::from_metres(200.0);

/// The model's dates at a line, `spring` and `autumn` days later, as if they had been counted.
inline ThresholdDates counted_dates(const MonthlyFigures& figures, Celsius line, int spring, int autumn)
{
    auto dates = NightModel::from_monthly(figures, kHere.latitude).dates(line);
    for (auto& [percent, day] : dates.last.dates) {
        day = day ? std::optional{calendar::DayOfYear::wrapped(day->place() + spring)} : day;
    }
    for (auto& [percent, day] : dates.first.dates) {
        day = day ? std::optional{calendar::DayOfYear::wrapped(day->place() + autumn)} : day;
    }
    return dates;
}

/// An invented station with a daily record.
inline Station station_with(std::vector<ThresholdDates> dates)
{
    MonthlyFigures figures = inland_figures();
    figures.mean_spread = figures.low_spread;
    return {"A",     "A", "",           kHere,           kHeight, {1991, 2018}, StationSource::UsDaily,
            figures, {},  std::nullopt, std::move(dates)};
}

} // namespace lathhouse::climate
