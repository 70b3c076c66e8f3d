#pragma once

#include "core/units/probability.h"

#include <optional>

namespace lathhouse::home {

/// Both ends included.
struct RateInterval {
    Probability low;
    Probability high;
};

/// What share of a lot's seeds comes up, as a Beta distribution: what is thought before anything was counted
/// weighs as much as so many seeds, and each counted seed adds one.
///
/// Source: conjugate Beta prior of the binomial (Gelman et al., Bayesian Data Analysis, 3rd ed., 2.4).
class GerminationRate {
public:
    /// before: the stated or least lawful share; weight: in seeds, above 0. The share is kept within 0.5 and
    /// 99.5 %, since no label is certain.
    static GerminationRate before_counting(Probability share, double weight_seeds);
    /// Precondition: 0 <= emerged <= sown.
    GerminationRate after(int sown, int emerged) const;

    double mean() const { return came_ / (came_ + failed_); }
    double weight_seeds() const { return came_ + failed_; }
    /// Equal tails; level: chance that the interval holds the share, within 0 and 1, ends excluded.
    RateInterval interval(Probability level) const;
    /// Chance that at least `plants` of `seeds` come up, the uncertainty of the share included (beta-binomial).
    Probability chance_of(int plants, int seeds) const;

private:
    GerminationRate(double came, double failed) : came_(came), failed_(failed) {}
    double came_;
    double failed_;
};

/// Chance that at least `plants` of `seeds` come up where each does with the same known chance (binomial).
Probability chance_of(int plants, int seeds, Probability each);

/// Fewest seeds from which `plants` come with the chance `sure`; nullopt where more than 100,000 are needed.
/// Preconditions: plants >= 0, 0 < sure < 1.
std::optional<int> seeds_needed(int plants, Probability each, Probability sure);
std::optional<int> seeds_needed(int plants, const GerminationRate& rate, Probability sure);

} // namespace lathhouse::home
