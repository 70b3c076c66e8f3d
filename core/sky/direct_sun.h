#pragma once

#include "core/sky/solar_ephemeris.h"
#include "core/sky/spot_view.h"
#include "core/units/position.h"

#include <vector>

namespace lathhouse::sky {

/// A time in which the Sun, if it shines, shines straight on the leaves.
struct SunSpell {
    calendar::Instant from;
    calendar::Instant to;
    friend bool operator==(const SunSpell&, const SunSpell&) = default;
};

/// The spells of the local mean solar day of the place's longitude with that date, in order.
/// Accuracy: to the minute for the figures given; a window's edge is as sharp here as the Sun were a point.
/// Precondition: the date within the ephemeris' span.
std::vector<SunSpell> direct_sun(const SpotView& view, const SolarEphemeris& ephemeris, Position position,
                                 calendar::Date date);

/// Hours of all the spells together.
double hours_of(const std::vector<SunSpell>& spells);

} // namespace lathhouse::sky
