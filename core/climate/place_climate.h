#pragma once

#include "core/climate/night_model.h"
#include "core/climate/station.h"
#include "core/climate/station_table.h"

#include <optional>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// A station that speaks for a place, and how much.
struct StationInUse {
    const Station* station; ///< Owned by the table.
    Metres distance;
    double weight; ///< 0..1; all of a place's sum to 1.
};

/// The climate of a place between stations.
struct PlaceClimate {
    Position position;
    Metres elevation; ///< As given, else the weighted height of the stations.
    bool elevation_given;
    std::vector<StationInUse> stations; ///< Heaviest first.
    MonthlyFigures monthly;
    Monthly<std::optional<Millimetres>> rain;
    KelvinDelta expected_error;        ///< Mean absolute error to expect of a month's mean low.
    double expected_error_days;        ///< The same for a frost date at the middle chances.
    std::vector<std::string> warnings; ///< Sentences for people; empty where all is well.

    NightModel nights() const { return NightModel::from_monthly(monthly, position.latitude); }
};

/// Errors: NoStation where none is near enough for any answer.
Result<PlaceClimate> climate_at(const StationTable& table, Position position,
                                std::optional<Metres> elevation);

} // namespace lathhouse::climate
