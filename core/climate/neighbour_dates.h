#pragma once

#include "core/climate/place_climate.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <vector>

namespace lathhouse::climate {

/// By how much the dates counted at a station differ from those of its own monthly figures, days: counted
/// less model, by percent chance. Only those that both have.
struct DateResiduals {
    std::map<double, double> last;
    std::map<double, double> first;
    std::optional<double> nights_per_year;
};

/// At a line of the station's row, or between two of them (straight line). Empty where the station has no
/// dates there, or no ordinary ones.
DateResiduals date_residuals(const Station& station, Celsius line);

/// The same at every line of its row, in their order; the model is made once.
std::vector<DateResiduals> residuals_of_rows(const Station& station);

/// The weighted mean of the residuals of a place's near stations; nullopt where stations with dates have less
/// than half of the weight of those within kCarriedKilometres, or none is so near.
using ResidualsOf = std::function<DateResiduals(const Station&, Celsius)>;
std::optional<DateResiduals> residuals_around(const PlaceClimate& place, Celsius line,
                                              const ResidualsOf& residuals_of = date_residuals);

/// Stations farther than this do not carry their dates, nor do those of less weight: they do not change a
/// date by a day.
inline constexpr double kCarriedKilometres = 300.0;
inline constexpr double kLeastCarriedWeight = 0.05;
bool carries_dates(const StationInUse& use);

/// How much of the neighbours' residual holds at the place; fitted by leaving out every second station.
inline constexpr double kCarriedShare = 0.7;

} // namespace lathhouse::climate
