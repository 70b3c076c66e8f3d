#pragma once

#include "core/plants/seed_kind.h"
#include "core/units/temperature.h"

#include <optional>

namespace lathhouse::plan {

/// What an emergence rate rests on.
enum class EmergenceBasis {
    Table,       ///< Days by temperature, as counted.
    ThermalTime, ///< The line fitted to that table, outside its temperatures.
    TypicalDays, ///< The usual days of the best range; cooler than that only an estimate.
};

/// Share of the way from sowing to emergence in a day, for the quicker and the slower of the usual seeds; 0
/// where the seed does not germinate.
struct EmergenceRate {
    double quick;
    double slow;
    EmergenceBasis basis;
};

/// At a steady temperature of the mix.
///
/// Between two counted temperatures the rate (1 / days) is a straight line. Beside a temperature that was not
/// tested, or at which nothing germinated, the fitted thermal time answers where the table's row allows it and
/// the temperature lies within the fit; else the line goes down to the 0 of a temperature at which nothing
/// germinated, and beside an untested one the nearest count within the kind's limits stands. A kind without a
/// table has its usual days in its best range; below, the rate falls in a straight line to 0 at 2 K under the
/// least temperature of germination (common practice, no source).
/// Accuracy: docs/methods/sowing.md. Source of the straight line: thermal time, the rate of development linear
/// in temperature; tables after Harrington and Minges (1954).
EmergenceRate emergence_rate(const plants::SeedKind& kind, Celsius mix);

/// Whole days from sowing, both included; nullopt where it does not germinate there.
struct EmergenceDays {
    int from;
    int to;
    EmergenceBasis basis;
};
/// How far a room's or a soil's temperature is from what is expected of it, each way (common practice).
inline constexpr double kMixError = 2.0;
/// With the mix up to kMixError warmer or cooler.
std::optional<EmergenceDays> emergence_days(const plants::SeedKind& kind, Celsius mix);

/// Share of those that will come that have come by so many days after sowing: a lognormal spread about the
/// middle day, of 0.25 in the logarithm (common practice, no source). 0 where it does not germinate there.
double share_emerged(const plants::SeedKind& kind, Celsius mix, int days);

} // namespace lathhouse::plan
