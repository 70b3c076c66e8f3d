#pragma once

#include "core/units/angle.h"

namespace lathhouse::sky {

/// Where the Sun stands as seen from the Earth's centre: equinox and ecliptic of date, light time included.
struct ApparentSun {
    Angle heliocentric_longitude; ///< Of the Earth, 0..360 degrees, before light time and nutation.
    Angle apparent_longitude;     ///< Of the Sun, 0..360 degrees.
    Angle right_ascension;        ///< 0..360 degrees.
    Angle declination;
    double distance_au; ///< Centre of the Earth to centre of the Sun, astronomical units.
    Angle nutation_in_longitude;
    Angle nutation_in_obliquity;
    Angle true_obliquity;
};

/// The Sun at a moment of terrestrial time.
///
/// julian_centuries: of 36,525 days since 2000 January 1.5 TT.
/// Accuracy: about one arc second from 1901 to 2199 (terms under 0.15" are left out).
/// Source: VSOP87 (Bretagnon and Francou 1988) in the terms tabulated by Reda and Andreas, NREL/TP-560-34302
/// (2008), table A4.2, those of at least 70e-8 rad; nutation IAU 1980 (same report, table A4.3, terms of at
/// least 0.001"); Meeus, Astronomical Algorithms, 2nd edition, chapters 22 and 25.
ApparentSun apparent_sun(double julian_centuries);

/// Hour angle of the equinox at Greenwich without nutation, 0..360 degrees.
///
/// days: of 86,400 s of UT1 since 2000 January 1.5 UT1. We take UTC for UT1 (they differ by under 0.9 s).
/// Source: Meeus, formula 12.4 (IAU 1982).
Angle mean_sidereal_time(double days);

/// Terrestrial time less UTC, in seconds, as it has stood since 2017. It was about 71 s less in 1901; the Sun
/// moves by 3" in that time, which is 0.2 s of an hour angle, so one figure serves all our years.
constexpr double kTerrestrialLessUtcSeconds = 69.184;

} // namespace lathhouse::sky
