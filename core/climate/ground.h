#pragma once

#include "core/climate/monthly_figures.h"
#include "core/units/length.h"

namespace lathhouse::climate {

/// A month's mean temperature and the mean daily low and high about it.
struct DayRange {
    Celsius mean;
    Celsius low;
    Celsius high;
};

/// Bare or thinly covered level ground at a depth, each month.
///
/// The yearly course of the air's mean (its first three harmonics) and the day's swing (half the daily range)
/// run down as waves, smaller by exp(-z/d) and later by z/d; d = sqrt(2 k / w) with the thermal diffusivity k
/// = 5e-7 m2/s of moist mineral soil, so 2.2 m for the year and 0.12 m for the day. Not for ground under snow
/// (warmer), under mulch or shade (swings less), or peat (k down to 1.2e-7: swings less). Precondition: 0 <=
/// depth <= 2 m. Source: Hillel, Introduction to Soil Physics (1982), sinusoidal model; k as in course tables
/// (saturated mineral soil 5.0e-7). Accuracy: docs/methods/figures-of-a-place.md.
Monthly<DayRange> ground_temperature(const MonthlyFigures& figures, Metres depth);

/// A pot as wide as it is high, in the shade in the open: its contents follow the air as a body with one
/// temperature, with the lag C V / (h A).
///
/// diameter: within 0.05 and 1 m.
/// Rough: h = 10 W per m2 and kelvin (common practice for air outdoors, no source), C = 2.1 MJ per m3 and
/// kelvin (45 % water at 4.18, 10 % solids at 2.5; usual figures of soil physics, from memory). In the sun a
/// dark pot gets much hotter: above 46 C in nursery pots (Witcher, Pickens, Blythe, Horticulturae 6 (2020)
/// 22).
Monthly<DayRange> pot_temperature(const MonthlyFigures& figures, Metres diameter);

/// How far a pot's daily swing follows the air's, 0..1.
double pot_swing(Metres diameter);

/// Litres a day that a well watered plant in the open draws, pot and crown together: the reference
/// evapotranspiration of the day on the area of the pot's top or of the crown, whichever is wider.
///
/// Source: the factor 1 is common practice; a bare pot of 25.4 cm evaporated 0.16 L a day in Florida and one
/// with a young shrub up to 0.6 L (Beeson, HortScience 45 (2010) 1260-1264). Succulents draw a third or less,
/// plants in shade about half (common practice, no source).
double pot_water_litres(Millimetres reference_evapotranspiration_of_day, Metres width);

} // namespace lathhouse::climate
