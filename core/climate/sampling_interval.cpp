#include "core/climate/sampling_interval.h"

#include <cassert>
#include <cmath>

namespace lathhouse::climate {

namespace {

/// Chance of exactly `hits` in `size` draws of chance `p`, by logarithms so that long records do not
/// underflow.
double binomial(int hits, int size, double p)
{
    if (p <= 0.0 || p >= 1.0) {
        return hits == (p <= 0.0 ? 0 : size) ? 1.0 : 0.0;
    }
    const double ways = std::lgamma(size + 1.0) - std::lgamma(hits + 1.0) - std::lgamma(size - hits + 1.0);
    return std::exp(ways + hits * std::log(p) + (size - hits) * std::log1p(-p));
}

} // namespace

RankInterval interval_of_quantile(int size, Probability quantile, Probability level)
{
    assert(size >= 1);
    constexpr double kRounding = 1e-12;
    const double beyond = (1.0 - level.fraction()) / 2.0;
    std::optional<int> lower;
    std::optional<int> upper;
    double under_lower = 0.0;
    double under_upper = 1.0;
    double under = 0.0; // P(B < element)
    for (int element = 1; element <= size; ++element) {
        under += binomial(element - 1, size, quantile.fraction());
        if (under <= beyond + kRounding) {
            lower = element;
            under_lower = under;
        }
        if (!upper && under >= 1.0 - beyond - kRounding) {
            upper = element;
            under_upper = under;
        }
    }
    return {lower, upper, Probability::clamped(under_upper - under_lower)};
}

} // namespace lathhouse::climate
