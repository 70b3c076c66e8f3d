#pragma once

#include "core/climate/expected_error.h"
#include "core/climate/night_model.h"
#include "core/climate/station.h"
#include "core/climate/station_table.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

struct OwnStation;

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
    /// What a kilometre up does to a month's mean low here, kelvins (negative: colder), as the neighbours
    /// show it, held to the usual lapse where they show little.
    Monthly<double> low_lapse_per_kilometre;
    Monthly<std::optional<Millimetres>> rain;
    /// Mean of the cold seasons' lowest nights, as far below the coldest month as at the stations; nullopt
    /// where no station has it (then `nights().lowest_of_season()` answers).
    std::optional<Celsius> lowest_of_season;
    ErrorSigns signs; ///< What `expected_error` comes from.
    /// The middle by weight of the trends of stations that have one, over their base periods; nullopt unless
    /// most of the weight has it.
    std::optional<LowTrend> trend;
    KelvinDelta expected_error;         ///< Mean absolute error to expect of a month's mean low.
    double expected_error_days;         ///< The same for a frost date of the model at the middle chances.
    double expected_error_days_carried; ///< The same for a date carried from neighbours (neighbour_dates.h).
    std::vector<Said> warnings;         ///< Sentences for people; empty where all is well.
    /// Set where the grower's own record answers; it then owns the station in use.
    std::shared_ptr<const OwnStation> own{};

    /// The same with its range over the seasons: the model's, moved to the stations' mean where they have
    /// one.
    LowestNight lowest_nights() const;
    NightModel nights() const { return NightModel::from_monthly(monthly, position.latitude); }
};

/// Temperatures by the weights of station_weights.h, brought to the place's height; spread, rain, and how far
/// the lowest values lie below the means, as weighted means. Stations of one base period answer alone, the
/// surer ones: daily records (United States, own) or monthly reports (world).
///
/// leave_out: a station not to be used, for measuring the error at it.
/// Errors: NoStation where none is within 1500 km and 2000 m of height.
Result<PlaceClimate> climate_among(std::span<const Station> stations, Position position,
                                   std::optional<Metres> elevation, const Station* leave_out = nullptr);

Result<PlaceClimate> climate_among(std::span<const Station* const> stations, Position position,
                                   std::optional<Metres> elevation, const Station* leave_out = nullptr);

/// As `climate_among`, of all the stations that the program knows.
Result<PlaceClimate> climate_at(const StationTable& table, Position position,
                                std::optional<Metres> elevation);

} // namespace lathhouse::climate
