#pragma once

#include "core/climate/figures.h"
#include "core/climate/frost_dates.h"
#include "core/climate/ground.h"
#include "core/climate/place_climate.h"
#include "core/climate/seasons.h"
#include "core/climate/thermal_season.h"

#include <array>
#include <optional>

namespace lathhouse::climate {

/// Degree days are counted above it (common practice for warm-season crops).
inline constexpr Celsius kDegreeDayBase = Celsius::from_degrees(10.0);
/// Widths of a pot, or of its crown where that is wider, between which the figures of pots hold.
inline constexpr double kNarrowestPotCentimetres = 5.0;
inline constexpr double kWidestPotCentimetres = 100.0;
inline constexpr double kUsualPotCentimetres = 30.0;

/// The figures of a place beside those of its stations, month by month, and what a well-watered pot in the open meets.
/// Source: months_of_light, degree_days_of_months, ground_temperature, pot_temperature, pot_water_litres, thermal_season.
struct PlaceMonths {
    Monthly<MonthOfLight> light;
    Monthly<double> degree_days; ///< Above kDegreeDayBase, in kelvins.
    Monthly<DayRange> soil_at_5; ///< Centimetres.
    Monthly<DayRange> soil_at_10;
    Monthly<DayRange> pot;
    Monthly<double> pot_water;            ///< Litres a day.
    std::array<ThermalSeason, 2> seasons; ///< Above 5 C and above 10 C.
    ThresholdDates frost;                 ///< At or below 0 C.
    Seasons of_the_year;
    std::optional<Millimetres> rain; ///< Of the year; nullopt unless every month has its own.
    std::optional<Celsius> lowest; ///< Coldest night of all the years; nullopt unless every month has its own.

    /// pot: its width, or that of its crown where that is wider.
    static PlaceMonths of(const PlaceClimate& place, Metres pot);
};

} // namespace lathhouse::climate
