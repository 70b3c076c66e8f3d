#pragma once

#include "core/units/angle.h"
#include "core/units/light.h"
#include "core/units/position.h"

#include <array>

namespace lathhouse::sky {

/// A direction as a unit vector; `up` is the sine of its elevation.
struct Direction {
    double east;
    double north;
    double up;
};

/// Share of a month's mean radiation on the level that comes from the sky and not straight from the Sun.
/// clearness: radiation on the ground over that above the air, 0..1.
/// Accuracy: the ten places of `MeanDay`: sky light 9 % on average, 6 % too low.
/// Source: Page (1961), UN Conference on New Sources of Energy 4: 378-390: 1 - 1.13 clearness; fitted between
/// 40 degrees north and south. Never below 0.15, which clear skies keep.
double diffuse_share(double clearness);

/// A mean day of a month: its radiation laid over the hours, parted into Sun and sky.
///
/// The day's sum goes over the hours by r_t, the sky's part by r_d; what the Sun gives straight is the
/// difference. Hours are of true solar time, so morning and afternoon are alike.
/// Accuracy: walls facing the four ways at ten places of the United States, a month: 6 to 8 % on average
/// where the day's sum is known (test data and docs/methods/light.md). Source: r_t, Collares-Pereira and
/// Rabl, Solar Energy 22 (1979) 155-164; r_d, Liu and Jordan, Solar Energy 4 (1960) 1-19.
class MeanDay {
public:
    static constexpr std::size_t kSteps = 48; ///< Between sunrise and sunset, all of one length.
    struct Step {
        Direction sun{0.0, 0.0, -1.0};
        DailyRadiation beam =
            DailyRadiation::from_megajoules(0.0); ///< Of the step, on a plane that faces the Sun.
    };

    /// global: the day's sum on the level. ordinal_of_year: 1 January = 1 .. 366. In the polar night there is
    /// nothing, whatever `global` says.
    MeanDay(Latitude latitude, int ordinal_of_year, DailyRadiation global);

    DailyRadiation global() const { return global_; }
    DailyRadiation diffuse() const { return diffuse_; } ///< On the level, from the whole sky.
    DailyRadiation beam_on(Direction normal) const;     ///< Straight from the Sun, on a plane.
    double hours_of_step() const { return hours_of_step_; }
    /// Hours of the Sun above a flat horizon.
    double hours() const { return hours_of_step_ * static_cast<double>(kSteps); }
    const std::array<Step, kSteps>& steps() const { return steps_; }

private:
    DailyRadiation global_;
    DailyRadiation diffuse_ = DailyRadiation::from_megajoules(0.0);
    double hours_of_step_ = 0.0;
    std::array<Step, kSteps> steps_{};
};

/// The way a wall faces, as a level direction.
Direction level_direction(Angle azimuth);

/// Share of the light on it that the ground throws back: 0.2, grass, soil and paving alike.
/// Source: common practice, as in Liu and Jordan's successors; snow throws back three times as much.
inline constexpr double kGroundReflectance = 0.2;

/// Radiation on a free wall: Sun, half of an evenly bright sky, and half of what the ground throws back.
DailyRadiation radiation_on_wall(const MeanDay& day, Angle azimuth,
                                 double ground_reflectance = kGroundReflectance);

} // namespace lathhouse::sky
