#pragma once

#include <span>
#include <vector>

namespace lathhouse::plan {

/// How much a plant really draws between two waterings, against what the pot's size and the season say.
struct WateringHabit {
    int intervals;  ///< Logged intervals that taught it.
    double factor;  ///< Above 1: it lasts longer than reckoned. 1 without intervals.
    double spread;  ///< Standard deviation of the factor's logarithm.
};

/// Learns from the intervals between logged waterings.
///
/// ratios: for each interval, oldest first, the water reckoned to be drawn in it over the water reckoned to be
/// there; a gap of the log and a rain spell are left out by the caller. The latest twelve count. With x the
/// logarithms, each held within ln(1/5) and ln(5), n their number, s = 0.35 the spread of one interval about a
/// plant's own and t = 0.5 that of plants about the reckoning (both common practice, no source): factor =
/// exp(sum x / (n + s2/t2)), the mean shrunk toward 1; spread = s / sqrt(n + s2/t2), a normal prior with a
/// normal likelihood (Gelman et al., Bayesian Data Analysis, section 2.5, the standard result).
/// It learns the grower's habit: who waters too early teaches it to look early.
WateringHabit learn_habit(std::span<const double> ratios);

} // namespace lathhouse::plan
