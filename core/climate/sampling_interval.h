#pragma once

#include "core/units/probability.h"

#include <optional>

namespace lathhouse::climate {

/// Elements of a sorted sample, the smallest being 1, between which a quantile of what was sampled lies.
struct RankInterval {
    std::optional<int> lower; ///< nullopt where the sample is too small for a limit on that side.
    std::optional<int> upper;
    Probability coverage; ///< Of the interval as it is: at least the level asked.
    friend bool operator==(const RankInterval&, const RankInterval&) = default;
};

/// The level of the intervals shown beside counted dates.
inline constexpr Probability kSamplingLevel = Probability::literal(0.9);

/// The interval for the quantile, without any assumption on the distribution: the largest element l and the
/// smallest u that each leave at most (1 - level) / 2 beyond. With B binomial of `size` draws and chance
/// `quantile`, P(B < l) <= (1 - level) / 2 and P(B < u) >= 1 - (1 - level) / 2; the coverage is
/// P(l <= B < u), and more where values are tied.
///
/// size: 1 or more. Elements are taken as independent draws: a trend through the years is not counted.
/// Source: order statistics of the binomial distribution; Hahn & Meeker, Statistical Intervals (1991),
/// section 5.2 (cited from memory).
RankInterval interval_of_quantile(int size, Probability quantile, Probability level = kSamplingLevel);

} // namespace lathhouse::climate
