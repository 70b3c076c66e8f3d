#pragma once

#include "core/units/angle.h"
#include "core/units/probability.h"

namespace lathhouse::sky {

/// How clear the days of a month are, told from the month's mean alone. Clearness: radiation on the ground
/// over that above the air, 0..1.
///
/// The share of days below K rises from K_min to K_max as exp(g K) - exp(g K_min) does. K_min is 0.05, or
/// half the mean where that is less; K_max is 0.6313 + 0.267 m - 11.9 (m - 0.75)^8 with m the mean, 0.2 at
/// least, since the formula falls away below; g is solved so that the days have the mean. A mean so near to
/// either end that there is no room gives days that are all alike.
/// Accuracy: fitted to months of North America. In nine months of Debrecen the brightest day was 6 % dimmer
/// than it says (docs/methods/light.md). In the tropics clear and dull days are both rarer than it says
/// (Saunier, Reddy and Kumar, Solar Energy 38 (1987) 169-177; Udo, Solar Energy 69 (2000) 45-53): there the
/// spread is too wide.
/// Source: Bendt, Collares-Pereira and Rabl, Solar Energy 27 (1981) 1-5, for the curves of Liu and Jordan,
/// Solar Energy 4 (1960) 1-19; K_max: Hollands and Huget, Solar Energy 30 (1983) 195-209; together in Duffie
/// and Beckman, Solar Engineering of Thermal Processes, section 2.9. K_min and K_max of the dullest months:
/// ours.
class DailyClearness {
public:
    explicit DailyClearness(double mean);

    double mean() const { return mean_; }
    double least() const { return least_; }
    double most() const { return most_; }
    /// g; 0 where all are alike.
    double steepness() const { return steepness_; }
    Probability share_below(double clearness) const;
    /// The clearness that so many of the days stay below.
    double at(Probability share) const;

private:
    double mean_;
    double least_;
    double most_;
    double steepness_ = 0.0;
};

/// Share of one day's radiation on the level that comes from the sky and not straight from the Sun;
/// `diffuse_share` is that of a month's mean day. sunset: the hour angle at which the Sun sets.
/// Accuracy: over the days of DailyClearness it gives the same authors' monthly curves within 0.045 for means
/// of 0.3 to 0.7.
/// Source: Erbs, Klein and Duffie, Solar Energy 28 (1982) 293-302, the daily curves: one for sunsets up to
/// 81.4 degrees, one for later ones.
double diffuse_share_of_day(double clearness, Angle sunset);

} // namespace lathhouse::sky
