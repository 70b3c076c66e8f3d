#include "core/growth/trend.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <Eigen/Core>
#include <Eigen/QR>

namespace lathhouse::growth {
namespace {

struct Line {
    double level = 0.0; ///< At x = 0.
    double slope = 0.0;
};

/// Least squares through the points that `taken` takes.
template <class Taken>
Line line_of(std::span<const Point> points, Taken taken)
{
    double count = 0.0;
    double mean_x = 0.0;
    double mean_y = 0.0;
    for (const auto& point : points) {
        if (taken(point)) {
            count += 1.0;
            mean_x += (point.x - mean_x) / count;
            mean_y += (point.y - mean_y) / count;
        }
    }
    double squares = 0.0;
    double products = 0.0;
    for (const auto& point : points) {
        if (taken(point)) {
            squares += (point.x - mean_x) * (point.x - mean_x);
            products += (point.x - mean_x) * (point.y - mean_y);
        }
    }
    const double slope = products / squares;
    return {mean_y - slope * mean_x, slope};
}

/// Level, slope and change of slope at a given break, and what is left.
struct Broken {
    Eigen::Vector3d parameters = Eigen::Vector3d::Zero();
    double squares = std::numeric_limits<double>::infinity();
};
Broken broken_at(std::span<const Point> points, double break_x)
{
    const auto rows = static_cast<Eigen::Index>(points.size());
    Eigen::MatrixXd matrix(rows, 3);
    Eigen::VectorXd right(rows);
    for (Eigen::Index i = 0; i < rows; ++i) {
        const auto& point = points[static_cast<std::size_t>(i)];
        matrix.row(i) << 1.0, point.x, std::max(point.x - break_x, 0.0);
        right(i) = point.y;
    }
    const Eigen::Vector3d parameters = matrix.colPivHouseholderQr().solve(right);
    return {parameters, (right - matrix * parameters).squaredNorm()};
}

} // namespace

Result<Segmented> segmented_line(std::span<const Point> points)
{
    std::vector<double> xs;
    for (const auto& point : points) {
        xs.push_back(point.x);
    }
    std::ranges::sort(xs);
    xs.erase(std::unique(xs.begin(), xs.end()), xs.end());
    if (xs.size() < 5) {
        return Error{ErrorCode::WrongUsage,
                     said("a line with a break needs 5 points of different x, has %1", xs.size())};
    }
    double break_x = 0.0;
    Broken best;
    const auto look_at = [&](double candidate) {
        const auto broken = broken_at(points, candidate);
        if (broken.squares < best.squares) {
            best = broken;
            break_x = candidate;
        }
    };
    for (std::size_t at = 1; at + 1 < xs.size(); ++at) {
        look_at(xs[at]);
        if (at + 2 < xs.size()) {
            const auto before = line_of(points, [&](const Point& of) { return of.x <= xs[at]; });
            const auto after = line_of(points, [&](const Point& of) { return of.x > xs[at]; });
            const double crossing = (after.level - before.level) / (before.slope - after.slope);
            if (crossing > xs[at] && crossing < xs[at + 1]) {
                look_at(crossing);
            }
        }
    }
    // Errors by the delta method: the break is a parameter as well, whose derivative is the change of slope.
    const auto rows = static_cast<Eigen::Index>(points.size());
    Eigen::MatrixXd derivatives(rows, 4);
    for (Eigen::Index i = 0; i < rows; ++i) {
        const double x = points[static_cast<std::size_t>(i)].x;
        derivatives.row(i) << 1.0, x, std::max(x - break_x, 0.0), x > break_x ? -best.parameters(2) : 0.0;
    }
    const double variance = best.squares / std::max(1.0, static_cast<double>(rows) - 4.0);
    const Eigen::MatrixXd inverse =
        (derivatives.transpose() * derivatives).completeOrthogonalDecomposition().pseudoInverse();
    const auto error = [&](double of) { return std::sqrt(std::max(0.0, variance * of)); };
    return Segmented{break_x,
                     error(inverse(3, 3)),
                     best.parameters(1),
                     best.parameters(1) + best.parameters(2),
                     error(inverse(1, 1)),
                     error(inverse(1, 1) + 2.0 * inverse(1, 2) + inverse(2, 2)),
                     best.squares};
}

} // namespace lathhouse::growth
