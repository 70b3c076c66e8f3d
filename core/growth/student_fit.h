#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace lathhouse::growth {

/// Most columns of a fit of ours.
inline constexpr std::size_t kMostColumns = 5;
using Columns = std::array<double, kMostColumns>;

/// One reading in a fit: what it should be is the sum of x times the parameters.
struct FitRow {
    double weeks; ///< When it was taken: neighbours in time are taken to be alike in their error.
    Columns x;    ///< Those past the fit's number of columns are 0.
    double y;
    double ratio; ///< Spread of its error as a multiple of the fit's scale.
};

/// What is known of a parameter beforehand: normal with that mean and precision (1 / variance; 0 for nothing).
struct Prior {
    double mean = 0.0;
    double precision = 0.0;
};

struct StudentFit {
    Columns parameters; ///< Those past the number of columns are 0.
    std::array<Columns, kMostColumns> covariance; ///< Of the parameters, for readings whose errors are alike for some weeks.
    double scale;          ///< Of the errors, where ratio is 1.
    double freedom;        ///< Degrees of freedom to hold the parameters' limits against.
    /// Logarithm of how well the fit explains the readings, its parameters integrated out (Laplace), without the
    /// priors' own constants; for comparing fits to the same readings.
    double evidence;
};

/// A straight-line model with errors of Student's t distribution with 4 degrees of freedom, so that a misread
/// value pulls little; the scale has a prior worth 4 readings at usual_scale.
///
/// Repeated weighted least squares: w = 5 / (4 + z^2), z = e / (ratio x scale), scale^2 = (sum w (e / ratio)^2 +
/// 4 usual^2) / (max(1, n - p) + 4). The covariance is a sandwich in which errors correlate by
/// 0.5 exp(-gap / 3 weeks); assumed, since short series cannot tell. Source of the weights: Lange, Little and
/// Taylor, JASA 84 (1989) 881-896 (from memory); the constants are our own, set by simulation
/// (docs/methods/growth-and-recovery.md).
///
/// rows: by weeks. start_scale: where to begin, from a fit to the same readings; saves rounds. Precondition: readings and priors together determine every parameter.
StudentFit student_fit(std::span<const FitRow> rows, std::span<const Prior> priors, double usual_scale,
                       std::optional<double> start_scale = {});

/// Sum of the parameters times the contrast's numbers, and the variance of that sum.
double value_of(const Columns& contrast, const StudentFit& fit);
double variance_of(const Columns& contrast, const StudentFit& fit);

} // namespace lathhouse::growth
