#pragma once

#include "core/base/result.h"
#include "core/growth/trend.h"

#include <functional>
#include <span>
#include <vector>

namespace lathhouse::growth {

/// y of an x under parameters.
using CurveModel = std::function<double(double x, std::span<const double> parameters)>;

struct CurveFit {
    std::vector<double> parameters;
    std::vector<double> errors; ///< Standard errors, from the curvature at the fit.
    double residual_squares = 0.0;
    int freedom = 0;
    std::vector<double> covariances; ///< Row by row.

    double covariance(std::size_t i, std::size_t j) const { return covariances[i * parameters.size() + j]; }
};

/// Least squares by Levenberg's damped steps with derivatives from central differences.
///
/// Errors: WrongUsage with fewer points than parameters plus one; OutOfRange where no minimum was reached from that
/// start.
/// Source: Marquardt, SIAM J. Appl. Math. 11 (1963) 431-441; checked against the certified values of NIST's
/// Statistical Reference Datasets.
Result<CurveFit> fit_curve(std::span<const Point> points, const CurveModel& model, std::span<const double> start);

/// asymptote / (1 + exp((middle - x) / scale)).
double logistic(double x, std::span<const double> asymptote_middle_scale);
/// asymptote x exp(-b2 x b3^x).
double gompertz(double x, std::span<const double> asymptote_b2_b3);

/// Growth that ends: a curve and where it leads. Starts are found from the points themselves.
/// Errors: as fit_curve; OutOfRange where the points do not bend towards an end.
Result<CurveFit> fit_logistic(std::span<const Point> points);
Result<CurveFit> fit_gompertz(std::span<const Point> points);

} // namespace lathhouse::growth
