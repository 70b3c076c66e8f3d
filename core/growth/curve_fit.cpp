#include "core/growth/curve_fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <string>

#include <Eigen/Core>
#include <Eigen/QR>

namespace lathhouse::growth {
namespace {

constexpr int kMostSteps = 2000;
constexpr double kFirstDamping = 1e-3;
constexpr double kMostDamping = 1e14;
constexpr std::size_t kShapeParameters = 3; // Of a curve of growth.

Eigen::VectorXd residuals(std::span<const Point> points, const CurveModel& model, const Eigen::VectorXd& at)
{
    const std::span<const double> parameters{at.data(), static_cast<std::size_t>(at.size())};
    Eigen::VectorXd errors(static_cast<Eigen::Index>(points.size()));
    for (Eigen::Index i = 0; i < errors.size(); ++i) {
        const auto& point = points[static_cast<std::size_t>(i)];
        errors(i) = point.y - model(point.x, parameters);
    }
    return errors;
}

/// Derivatives of the model by its parameters, by central differences of about the cube root of the rounding.
Eigen::MatrixXd jacobian(std::span<const Point> points, const CurveModel& model, Eigen::VectorXd at)
{
    Eigen::MatrixXd matrix(static_cast<Eigen::Index>(points.size()), at.size());
    for (Eigen::Index column = 0; column < at.size(); ++column) {
        const double value = at(column);
        const double step = 6e-6 * std::max(std::abs(value), 1e-6);
        at(column) = value + step;
        const Eigen::VectorXd above = residuals(points, model, at);
        at(column) = value - step;
        const Eigen::VectorXd below = residuals(points, model, at);
        at(column) = value;
        matrix.col(column) = (below - above) / (2.0 * step);
    }
    return matrix;
}

} // namespace

Result<CurveFit> fit_curve(std::span<const Point> points, const CurveModel& model, std::span<const double> start)
{
    if (points.size() <= start.size()) {
        return Error{ErrorCode::WrongUsage, said("a curve of %1 parameters needs %2 points, has %3", start.size(),
                                                 start.size() + 1, points.size())};
    }
    const auto columns = static_cast<Eigen::Index>(start.size());
    const auto rows = static_cast<Eigen::Index>(points.size());
    Eigen::VectorXd at = Eigen::Map<const Eigen::VectorXd>(start.data(), columns);
    Eigen::VectorXd errors = residuals(points, model, at);
    double squares = errors.squaredNorm();
    double damping = kFirstDamping;
    bool settled = false;
    for (int step = 0; step < kMostSteps && !settled && std::isfinite(squares); ++step) {
        const Eigen::MatrixXd derivatives = jacobian(points, model, at);
        // Damped least squares as one larger problem, solved by QR: squaring the condition number would lose
        // half the digits.
        Eigen::MatrixXd damped(rows + columns, columns);
        Eigen::VectorXd right(rows + columns);
        damped.topRows(rows) = derivatives;
        right.head(rows) = errors;
        right.tail(columns).setZero();
        bool better = false;
        while (!better && damping < kMostDamping) {
            damped.bottomRows(columns).setZero();
            for (Eigen::Index i = 0; i < columns; ++i) {
                damped(rows + i, i) = std::sqrt(damping) * std::max(derivatives.col(i).norm(), 1e-300);
            }
            const Eigen::VectorXd change = damped.colPivHouseholderQr().solve(right);
            const Eigen::VectorXd next = at + change;
            const Eigen::VectorXd next_errors = residuals(points, model, next);
            const double next_squares = next_errors.squaredNorm();
            if (std::isfinite(next_squares) && next_squares <= squares) {
                better = true;
                settled = squares - next_squares <= 1e-15 * squares &&
                          change.norm() <= 1e-10 * (at.norm() + 1e-10);
                at = next;
                errors = next_errors;
                squares = next_squares;
                damping = std::max(damping / 10.0, 1e-15);
            } else {
                damping *= 10.0;
            }
        }
        settled = settled || !better;
    }
    const Eigen::MatrixXd derivatives = jacobian(points, model, at);
    // At a minimum the errors stand at right angles to every derivative.
    const auto qr = derivatives.colPivHouseholderQr();
    const double slope = (derivatives.transpose() * errors).cwiseAbs().maxCoeff();
    const double size = derivatives.cwiseAbs().maxCoeff() * std::sqrt(squares * static_cast<double>(rows));
    if (!settled || !std::isfinite(squares) || !at.allFinite() || qr.rank() < columns ||
        !(slope <= 1e-4 * size + std::numeric_limits<double>::min())) {
        return Error{ErrorCode::OutOfRange, said("the curve finds no best fit from its start")};
    }
    CurveFit fit;
    fit.freedom = static_cast<int>(rows - columns);
    fit.residual_squares = squares;
    // (J'J)^-1 from the triangle of the QR decomposition.
    const Eigen::MatrixXd triangle = qr.matrixR().topLeftCorner(columns, columns).triangularView<Eigen::Upper>();
    const Eigen::MatrixXd inverse = triangle.triangularView<Eigen::Upper>().solve(
        Eigen::MatrixXd::Identity(columns, columns));
    const Eigen::MatrixXd permuted = qr.colsPermutation() * inverse;
    const Eigen::MatrixXd covariance = permuted * permuted.transpose() * (squares / fit.freedom);
    for (Eigen::Index i = 0; i < columns; ++i) {
        fit.parameters.push_back(at(i));
        fit.errors.push_back(std::sqrt(covariance(i, i)));
        for (Eigen::Index j = 0; j < columns; ++j) {
            fit.covariances.push_back(covariance(i, j));
        }
    }
    return fit;
}

double logistic(double x, std::span<const double> p)
{
    return p[0] / (1.0 + std::exp((p[1] - x) / p[2]));
}

double gompertz(double x, std::span<const double> p)
{
    return p[0] * std::exp(-p[1] * std::pow(p[2], x));
}

namespace {

/// Starts of both curves: over guesses of the asymptote a little above the highest point, a transform of y makes
/// the curve a straight line in x; the guess whose fit ends best is kept.
template <class Straightened, class StartOf>
Result<CurveFit> fit_towards_an_end(std::span<const Point> points, const CurveModel& model,
                                    Straightened straightened, StartOf start_of)
{
    if (points.size() <= kShapeParameters) {
        return Error{ErrorCode::WrongUsage, said("a curve of growth needs 4 points, has %1", points.size())};
    }
    double highest = 0.0;
    for (const auto& point : points) {
        highest = std::max(highest, point.y);
    }
    std::optional<CurveFit> best;
    for (const double above : {1.02, 1.1, 1.3, 2.0, 4.0}) {
        const double end = highest * above;
        std::vector<Point> line;
        for (const auto& point : points) {
            if (point.y > 0.0) {
                line.push_back({point.x, straightened(point.y / end)});
            }
        }
        const auto straight = theil_sen(line);
        if (!straight) {
            return straight.error();
        }
        const std::array<double, 3> start = start_of(end, *straight);
        auto fit = fit_curve(points, model, start);
        if (fit && fit->parameters[0] > 0.0 &&
            (!best || fit->residual_squares < best->residual_squares)) {
            best = std::move(*fit);
        }
    }
    if (!best) {
        return Error{ErrorCode::OutOfRange, said("the points do not bend towards an end")};
    }
    return *best;
}

} // namespace

Result<CurveFit> fit_logistic(std::span<const Point> points)
{
    return fit_towards_an_end(
        points, logistic, [](double share) { return std::log(share / (1.0 - share)); },
        [](double end, const TheilSen& line) {
            return std::array{end, -line.joint_intercept / line.slope, 1.0 / line.slope};
        });
}

Result<CurveFit> fit_gompertz(std::span<const Point> points)
{
    return fit_towards_an_end(
        points, gompertz, [](double share) { return std::log(-std::log(share)); },
        [](double end, const TheilSen& line) {
            return std::array{end, std::exp(line.joint_intercept), std::exp(line.slope)};
        });
}

} // namespace lathhouse::growth
