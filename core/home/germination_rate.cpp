#include "core/home/germination_rate.h"

#include "core/base/in_doubles.h"

#include <boost/math/special_functions/beta.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>

namespace lathhouse::home {
namespace {

constexpr int kMostSeeds = 100'000;

double log_choose(int n, int k)
{
    return std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0);
}

double log_beta(double a, double b)
{
    return std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b);
}

/// The chance rises with the seeds, so the fewest are found by doubling and halving.
std::optional<int> fewest(int plants, Probability sure, const std::function<Probability(int)>& chance)
{
    if (plants == 0) {
        return 0;
    }
    int enough = plants;
    while (chance(enough) < sure) {
        if (enough >= kMostSeeds) {
            return std::nullopt;
        }
        enough = enough > kMostSeeds / 2 ? kMostSeeds : enough * 2;
    }
    int too_few = plants - 1;
    while (enough - too_few > 1) {
        const int middle = too_few + (enough - too_few) / 2;
        (chance(middle) < sure ? too_few : enough) = middle;
    }
    return enough;
}

} // namespace

GerminationRate GerminationRate::before_counting(Probability share, double weight_seeds)
{
    assert(weight_seeds > 0.0);
    const double kept = std::clamp(share.fraction(), 0.005, 0.995);
    return {kept * weight_seeds, (1.0 - kept) * weight_seeds};
}

GerminationRate GerminationRate::after(int sown, int emerged) const
{
    assert(0 <= emerged && emerged <= sown);
    return {came_ + emerged, failed_ + (sown - emerged)};
}

RateInterval GerminationRate::interval(Probability level) const
{
    const double tail = level.complement().fraction() / 2.0;
    return {Probability::clamped(boost::math::ibeta_inv(came_, failed_, tail, InDoubles{})),
            Probability::clamped(boost::math::ibeta_inv(came_, failed_, 1.0 - tail, InDoubles{}))};
}

Probability GerminationRate::chance_of(int plants, int seeds) const
{
    if (plants <= 0) {
        return Probability::literal(1.0);
    }
    if (plants > seeds) {
        return Probability::literal(0.0);
    }
    const auto one = [&](int k) {
        return std::exp(log_choose(seeds, k) + log_beta(k + came_, seeds - k + failed_) -
                        log_beta(came_, failed_));
    };
    // The shorter side is summed.
    double sum = 0.0;
    if (plants > seeds / 2) {
        for (int k = plants; k <= seeds; ++k) {
            sum += one(k);
        }
        return Probability::clamped(sum);
    }
    for (int k = 0; k < plants; ++k) {
        sum += one(k);
    }
    return Probability::clamped(1.0 - sum);
}

Probability chance_of(int plants, int seeds, Probability each)
{
    if (plants <= 0) {
        return Probability::literal(1.0);
    }
    if (plants > seeds) {
        return Probability::literal(0.0);
    }
    // P(X >= k) = I_p(k, n - k + 1): DLMF 8.17.5.
    return Probability::clamped(
        boost::math::ibeta(static_cast<double>(plants), seeds - plants + 1.0, each.fraction(), InDoubles{}));
}

std::optional<int> seeds_needed(int plants, Probability each, Probability sure)
{
    return fewest(plants, sure, [&](int seeds) { return chance_of(plants, seeds, each); });
}

std::optional<int> seeds_needed(int plants, const GerminationRate& rate, Probability sure)
{
    return fewest(plants, sure, [&](int seeds) { return rate.chance_of(plants, seeds); });
}

} // namespace lathhouse::home
