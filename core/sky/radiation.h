#pragma once

#include "core/units/angle.h"
#include "core/units/length.h"
#include "core/units/light.h"
#include "core/units/position.h"
#include "core/units/temperature.h"

namespace lathhouse::sky {

/// The Sun as FAO-56 has it: simple formulas of the day's number in the year, good to about 0.1 of
/// radiation's figures. For moments of rise and set use sun.h.
struct Fao56Sun {
    double inverse_relative_distance; ///< d_r, eq. 23.
    Angle declination;                ///< eq. 24.
    Angle sunset_hour_angle;          ///< eq. 25, 0..180 degrees; the ends are polar night and day.
};
/// ordinal_of_year: 1 January = 1 .. 366.
/// Source: Allen et al., FAO Irrigation and Drainage Paper 56 (1998), chapter 3.
Fao56Sun fao56_sun(Latitude latitude, int ordinal_of_year);

/// Energy of a day's sunlight on a level plane above the air, R_a.
/// Source: FAO-56 eq. 21, solar constant 0.0820 MJ m-2 min-1. Its table 2.6 is met within 0.15 MJ (the table
/// stands for the 15th and is rounded).
DailyRadiation extraterrestrial_radiation(Latitude latitude, int ordinal_of_year);

/// Hours of the Sun above a flat horizon, N, without refraction and the Sun's size. Source: FAO-56 eq. 34.
double daylight_hours(Latitude latitude, int ordinal_of_year);

/// A cloudless day's radiation on the ground, R_so. Source: FAO-56 eq. 37.
DailyRadiation clear_sky_radiation(DailyRadiation extraterrestrial, Metres elevation);

/// Where a place lies, for the radiation that a temperature range stands for.
enum class Setting {
    Inland, ///< Air masses are the land's own: k_Rs 0.16.
    Coast,  ///< On or beside a large water's coast: k_Rs 0.19.
};
/// Radiation on the ground from the day's temperature range, R_s, at most a cloudless day's.
///
/// A high below the low counts as no range.
/// Accuracy: 10-15 % for a month's mean, worse on coasts and in humid summers.
/// Source: FAO-56 eq. 50 (Hargreaves), capped by eq. 37.
DailyRadiation radiation_from_temperature_range(DailyRadiation extraterrestrial, Celsius low, Celsius high,
                                                Setting setting, Metres elevation);

/// k_Rs of eq. 50 for a place of which nobody has said whether it lies on a coast: 0.137 + 0.0186 e, at most
/// 0.19, with e in kPa the saturation vapour pressure at the mean low (the dew point as FAO-56 eq. 48 takes
/// it). Moist air keeps nights warm, so that the same range of temperature stands for more sun.
/// Source: our own fit to ten places of the United States (least squares of the relative error; docs/methods/
/// light.md); the upper limit is the book's figure for coasts.
double range_coefficient(Celsius mean_low);

/// Radiation on the ground from the day's temperature range with `range_coefficient`, at most a cloudless
/// day's. low, high: a month's means.
/// Accuracy: leaving each of the ten places out of the fit, a month is off by 8 % on average, the worst place
/// by 15 %; too high by a fifth at one cloudy coast of the humid tropics (FAO-56, Cabinda). Not measured
/// elsewhere.
DailyRadiation radiation_from_temperature_range(DailyRadiation extraterrestrial, Celsius low, Celsius high,
                                                Metres elevation);

/// Radiation on the ground from the hours of bright sunshine. Source: FAO-56 eq. 35 with a = 0.25, b = 0.50.
/// Where there is no daylight there is none.
DailyRadiation radiation_from_sunshine(DailyRadiation extraterrestrial, double sunshine_hours,
                                       double possible_hours);

/// Photons that plants use in a day's radiation: 2.018 mol per MJ.
/// Source: Faust and Logan, HortScience 53 (2018) 1250-1257: 0.007265 mol per Wh. Published figures run from
/// 1.96 to 2.08 with cloud and haze.
DailyLight daily_light(DailyRadiation radiation);

} // namespace lathhouse::sky
