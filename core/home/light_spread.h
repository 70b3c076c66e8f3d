#pragma once

#include "core/home/spot_light.h"

#include <optional>

namespace lathhouse::home {

/// Daily light on a level leaf at a spot through the days of a month.
struct DaysAtSpot {
    DailyLight dark; ///< 1 day in 20 is darker.
    DailyLight middle; ///< Half of the days are darker; not the mean, which `spot_light` gives.
    DailyLight bright; ///< 1 day in 20 is brighter.
};

/// How the light at a spot differs from day to day with the clouds, and from the month's beginning to its
/// end.
///
/// For the 5th, 15th and 25th each, twenty days as clear as sky::DailyClearness has them are parted into Sun
/// and sky by sky::diffuse_share_of_day and go the way that the mean day goes, through the window or from the
/// open sky; the sixty are brought to the month's mean light, which so stays what `months_at` says, and put
/// in order. At a window that the Sun does not reach, the brightest days are those of bright cloud, not the
/// clearest.
/// Accuracy: in the open as sky::DailyClearness; behind a window nothing was measured against. The spread is
/// one of days, not of what is known of the spot (spot_view.h).
/// Takes about 10 milliseconds.
climate::Monthly<DaysAtSpot> days_at(const sky::SpotView& view, const YearOfSky& year);

/// The same for any spot, about the light that `spot_light` gives.
///
/// A spot without a view, of which the grower's two figures are known: as the days differ in the open, in
/// shares. nullopt where these do not rise towards the summer, as under lamps: then nothing says what the
/// clouds change.
std::optional<climate::Monthly<DaysAtSpot>> light_spread(const Spot& spot, const YearOfSky& year);

} // namespace lathhouse::home
