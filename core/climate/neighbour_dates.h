#pragma once

#include "core/climate/place_climate.h"

#include <functional>
#include <map>
#include <optional>
#include <span>

namespace lathhouse::climate {

/// By how much the dates counted at a station differ from those of its own monthly figures, days: counted
/// less model, by percent chance. Only those that both have.
struct DateResiduals {
    std::map<double, double> last;
    std::map<double, double> first;
    std::map<double, double> free_days;
    std::optional<double> nights_per_year;
};

/// At a line of the station's row, or between two of them (straight line). Empty where the station has no
/// dates there, or no ordinary ones.
DateResiduals date_residuals(const Station& station, Celsius line);

/// The weighted mean of the residuals of a place's near stations; nullopt where stations with dates have less
/// than half of the weight of those within kCarriedKilometres, or none is so near.
using ResidualsOf = std::function<DateResiduals(const Station&, Celsius)>;
std::optional<DateResiduals> residuals_around(const PlaceClimate& place, Celsius line,
                                              const ResidualsOf& residuals_of = date_residuals);

/// Stations farther than this do not carry their dates.
inline constexpr double kCarriedKilometres = 300.0;

/// Frost-date statistics carried from neighbours with daily records: their counted dates, each moved by the
/// difference between the model's date at the place and at the neighbour. That is the model's date at the
/// place, put right by kCarriedShare of the weighted mean of what the model misses at the neighbours.
/// Between the residuals' percents a straight line, outside the nearest. Dates keep their order.
/// Measured: docs/methods/between-stations.md.
ThresholdDates carried(ThresholdDates of_model, const DateResiduals& residuals);

} // namespace lathhouse::climate
