#pragma once

#include "core/climate/day_shift.h"
#include "core/climate/neighbour_dates.h"
#include "core/climate/night_model.h"
#include "core/climate/place_climate.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace lathhouse::climate {

/// What the dates of a line rest on.
enum class DatesFrom {
    Model,      ///< The place's monthly figures alone.
    Neighbours, ///< These, moved by what the model misses at stations near.
    Station,    ///< These, moved to the dates counted at a station that stands where the place is.
};

/// Within these a station's own dates stand for the place.
inline constexpr double kSamePlaceKilometres = 5.0;
inline constexpr double kSameHeightMetres = 50.0;
/// Sampling error of a date counted in so many seasons, at the middle chances, days: 2.5 in some 25, and it
/// shrinks with their root.
double counted_error_days(int seasons);
/// Whether the nearest station of the place stands where the place is.
bool station_stands_at(const PlaceClimate& place);

/// The nights of a place as every answer of the program takes them: the model's from monthly figures, with
/// the beginning and the end of the cold season moved in time to where counted dates have them.
///
/// Where a station with counted dates stands at the place, the season of a line meets its dates; else it is
/// moved by kCarriedShare of the weighted mean of what the model misses at the near stations
/// (neighbour_dates.h). Known at the lines of the station table; between two of them the shift lies between,
/// beyond the outermost it fades over kFadeKelvins. A spot's line counts as the line of the open air at the
/// mean of its offset.
/// Measured: docs/methods/between-stations.md.
class PlaceNights {
public:
    /// Nothing counted is known.
    PlaceNights(NightModel model); // NOLINT(google-explicit-constructor)
    static PlaceNights of(const PlaceClimate& place);
    /// With residuals of the stations at the lines of the table that were worked out before.
    static PlaceNights of(const PlaceClimate& place, const ResidualsOf& residuals_of);

    const NightModel& model() const { return model_; }
    DatesFrom dates_from(Celsius line) const;
    /// Days that a date of the line may be wrong at the middle chances. Where it was counted at the place:
    /// the sampling error of the counted seasons.
    double expected_error_days(const PlaceClimate& place, Celsius line) const;

    SeasonChances season(Celsius line, NightOffset offset = {}) const;
    /// Chance that the night of that day falls to the line or below.
    Probability chance_on(calendar::DayOfYear day, Celsius line, NightOffset offset = {}) const;
    /// At least one of these nights, in order of time, not empty (NightModel::chance_among).
    Probability chance_among(std::span<const calendar::DayOfYear> nights, Celsius line,
                             NightOffset offset = {}) const;
    Probability chance_within(calendar::DayOfYear first, int count, Celsius line,
                              NightOffset offset = {}) const;
    /// Dates for the standard percents and the given further ones, as `season` has them.
    ThresholdDates dates(Celsius line, std::span<const double> further_percents = {}, NightOffset offset = {}) const;

    /// How far a shift still holds beyond the outermost line that has one.
    static constexpr double kFadeKelvins = 5.0;

private:
    using Knots = std::map<double, DayShift::Knot>; ///< By percent chance.
    struct LineShift {
        double line_degrees;
        Knots beginning;
        Knots end;
        double nights_per_year; ///< Added to the model's.
    };
    struct Shift {
        DayShift beginning;
        DayShift end;
        double nights_per_year = 0.0;
    };
    static Knots between(const Knots& a, const Knots& b, double share);
    static Shift shift_of(const LineShift& line, double share);
    Shift shift_at(double open_air_degrees) const;
    /// The place in the model's season that stands for a day.
    double model_place(calendar::DayOfYear day, const Shift& shift) const;
    std::optional<LineShift> shift_to_counted(const ThresholdDates& counted) const;
    LineShift shift_by(Celsius line, const DateResiduals& residuals) const;

    NightModel model_;
    double coldest_place_;           ///< Place in the season of the day with the coldest mean low.
    std::vector<LineShift> lines_{}; ///< By line.
    DatesFrom from_ = DatesFrom::Model;
    int counted_seasons_ = 0; ///< Of the station that stands at the place.
};

} // namespace lathhouse::climate
