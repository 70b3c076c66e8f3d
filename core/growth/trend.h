#pragma once

#include "core/base/result.h"

#include <span>
#include <vector>

namespace lathhouse::growth {

/// A point of a series or a scatter.
struct Point {
    double x;
    double y;
};

/// The Theil-Sen line: the median of the slopes between any two points of different x, which a few wild points
/// do not turn.
struct TheilSen {
    double slope;
    double intercept;       ///< Median of y less slope times the median of x.
    double joint_intercept; ///< Median of y - slope x.
    double low;             ///< Limits of the slope at the level asked for.
    double high;
};
/// level: of the limits, 0..1, by the normal approximation of Kendall's score with ties.
/// Errors: WrongUsage under 2 different x.
/// Source: Sen, JASA 63 (1968) 1379-1389; the example there is the test.
Result<TheilSen> theil_sen(std::span<const Point> points, double level = 0.95);

/// The Mann-Kendall test against a trend.
struct MannKendall {
    int score;         ///< Rising pairs less falling pairs.
    double variance;   ///< Of the score where there is no trend, ties counted.
    double z;          ///< With the continuity correction.
    double two_sided;  ///< Chance of a score as far from nought where there is no trend.
};
/// values: in order of time. Errors: WrongUsage under 3 values.
/// Source: Mann, Econometrica 13 (1945) 245; Kendall, Rank Correlation Methods (1975), variance with ties.
Result<MannKendall> mann_kendall(std::span<const double> values);

/// Two straight lines that meet at a break.
struct Segmented {
    double break_x;
    double break_error; ///< Standard error of the break, by the delta method.
    double slope_before;
    double slope_after;
    double slope_before_error;
    double slope_after_error;
    double residual_squares;
};
/// Least squares over breaks and lines, the break anywhere between the second x and the last but one. The least sum
/// of squares of a break inside a gap between neighbours is where the two sides' own lines cross, else at one of the
/// gap's ends, so that looking at those finds the best of all.
/// Errors: WrongUsage under 5 different x.
/// Source: Hudson, JASA 61 (1966) 1097-1129 (from memory); checked against Muggeo's package `segmented` in R.
Result<Segmented> segmented_line(std::span<const Point> points);

} // namespace lathhouse::growth
