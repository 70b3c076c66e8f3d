#include "core/growth/student_fit.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <Eigen/Cholesky>
#include <Eigen/Core>

namespace lathhouse::growth {
namespace {

// They live on the stack.
constexpr int kMost = static_cast<int>(kMostColumns);
using Vector = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, kMost, 1>;
using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, kMost, kMost>;

constexpr double kFreedom = 4.0;
constexpr double kPriorReadings = 4.0;
constexpr double kStartScale = 1.5;
constexpr int kMostRounds = 14;
constexpr int kLeastRounds = 6;
constexpr std::size_t kManyRows = 200; // So many settle for good the first time.
constexpr double kSettled = 1e-3;
constexpr double kCorrelation = 0.5;
constexpr double kCorrelationWeeks = 3.0;

double residual(const FitRow& row, const Columns& parameters)
{
    double expected = 0.0;
    for (std::size_t column = 0; column < kMostColumns; ++column) {
        expected += row.x[column] * parameters[column];
    }
    return row.y - expected;
}

double weight_of(double z)
{
    return (kFreedom + 1.0) / (kFreedom + z * z);
}

struct Normal {
    Matrix matrix;
    Vector right;
};

/// Weighted normal equations with the priors.
Normal normal_equations(std::span<const FitRow> rows, std::span<const double> weights,
                        std::span<const Prior> priors, double scale)
{
    std::array<double, kMostColumns * kMostColumns> sums{};
    Columns right{};
    const auto add = [&](const FitRow& row, double of, auto... columns) {
        const double weight = of / (row.ratio * row.ratio);
        const auto add_column = [&](std::size_t i) {
            const double weighted = weight * row.x[i];
            right[i] += weighted * row.y;
            // Symmetric: the lower half is enough.
            ((columns <= i ? void(sums[i * kMostColumns + columns] += weighted * row.x[columns]) : void()), ...);
        };
        (add_column(columns), ...);
    };
    for (std::size_t at = 0; at < rows.size(); ++at) {
        const auto& row = rows[at];
        // Readings before an event know nothing of what came after; that half of a long series is soon summed.
        if (row.x[2] == 0.0 && row.x[3] == 0.0 && row.x[4] == 0.0) {
            add(row, weights[at], std::size_t{0}, std::size_t{1});
        } else {
            add(row, weights[at], std::size_t{0}, std::size_t{1}, std::size_t{2}, std::size_t{3}, std::size_t{4});
        }
    }
    const auto size = static_cast<Eigen::Index>(priors.size());
    const double precision = 1.0 / (scale * scale);
    Normal normal{Matrix(size, size), Vector(size)};
    for (Eigen::Index i = 0; i < size; ++i) {
        const auto from = static_cast<std::size_t>(i);
        for (Eigen::Index j = 0; j < size; ++j) {
            const auto column = static_cast<std::size_t>(j);
            normal.matrix(i, j) =
                precision * sums[std::max(from, column) * kMostColumns + std::min(from, column)];
        }
        normal.matrix(i, i) += priors[from].precision;
        normal.right(i) = precision * right[from] + priors[from].precision * priors[from].mean;
    }
    return normal;
}

/// Sum over all pairs of readings of their scores' product times the correlation of their errors. An exponential
/// that fades in time lets one pass carry what all earlier readings leave.
Matrix scores(std::span<const FitRow> rows, std::span<const double> weights,
                  std::span<const Prior> priors, double scale)
{
    std::array<double, kMostColumns * kMostColumns> sums{};
    Columns earlier{};
    double gap = 0.0;
    double fade = 1.0;
    for (std::size_t at = 0; at < rows.size(); ++at) {
        const auto& row = rows[at];
        const double size = std::min(weights[at], 1.0) / (row.ratio * scale);
        if (at > 0) {
            if (const double next = row.weeks - rows[at - 1].weeks; next != gap) { // Most gaps are alike.
                gap = next;
                fade = std::exp(-gap / kCorrelationWeeks);
            }
            for (auto& sum : earlier) {
                sum *= fade;
            }
        }
        Columns score{};
        for (std::size_t i = 0; i < kMostColumns; ++i) {
            score[i] = size * row.x[i];
        }
        for (std::size_t i = 0; i < kMostColumns; ++i) {
            for (std::size_t j = 0; j <= i; ++j) { // Symmetric.
                sums[i * kMostColumns + j] +=
                    score[i] * score[j] + kCorrelation * (score[i] * earlier[j] + earlier[i] * score[j]);
            }
        }
        for (std::size_t i = 0; i < kMostColumns; ++i) {
            earlier[i] += score[i];
        }
    }
    const auto size = static_cast<Eigen::Index>(priors.size());
    Matrix matrix(size, size);
    for (Eigen::Index i = 0; i < size; ++i) {
        for (Eigen::Index j = 0; j < size; ++j) {
            matrix(i, j) = sums[static_cast<std::size_t>(std::max(i, j)) * kMostColumns +
                                static_cast<std::size_t>(std::min(i, j))];
        }
        matrix(i, i) += priors[static_cast<std::size_t>(i)].precision;
    }
    return matrix;
}

} // namespace

StudentFit student_fit(std::span<const FitRow> rows, std::span<const Prior> priors, double usual_scale,
                       std::optional<double> start_scale)
{
    assert(!priors.empty() && priors.size() <= kMostColumns);
    const auto columns = priors.size();
    const double freedom = std::max(1.0, static_cast<double>(rows.size()) - static_cast<double>(columns));
    std::vector<double> weights(rows.size(), 1.0);
    double scale = start_scale.value_or(kStartScale * usual_scale);
    Columns parameters{};
    for (int round = 1; round <= kMostRounds; ++round) {
        const auto normal = normal_equations(rows, weights, priors, scale);
        const Vector solved = normal.matrix.llt().solve(normal.right);
        for (std::size_t column = 0; column < columns; ++column) {
            parameters[column] = solved(static_cast<Eigen::Index>(column));
        }
        double sum = kPriorReadings * usual_scale * usual_scale;
        for (std::size_t at = 0; at < rows.size(); ++at) {
            const double error = residual(rows[at], parameters) / rows[at].ratio;
            weights[at] = weight_of(error / scale);
            sum += weights[at] * error * error;
        }
        const double next = std::sqrt(sum / (freedom + kPriorReadings));
        const bool settled = std::abs(next / scale - 1.0) < kSettled;
        scale = next;
        if (settled && (round >= kLeastRounds || rows.size() > kManyRows)) {
            break;
        }
    }

    double evidence =
        -kPriorReadings * (std::log(scale) + usual_scale * usual_scale / (2.0 * scale * scale));
    double counted = 0.0;
    // The product of many factors near 1 needs one logarithm; it is taken before the product could overflow.
    double product = 1.0;
    for (std::size_t at = 0; at < rows.size(); ++at) {
        const double z = residual(rows[at], parameters) / (rows[at].ratio * scale);
        weights[at] = weight_of(z);
        counted += std::min(weights[at], 1.0);
        product *= 1.0 + z * z / kFreedom;
        if (product > 1e200) {
            evidence -= 0.5 * (kFreedom + 1.0) * std::log(product);
            product = 1.0;
        }
    }
    evidence -= 0.5 * (kFreedom + 1.0) * std::log(product) + static_cast<double>(rows.size()) * std::log(scale);

    const auto normal = normal_equations(rows, weights, priors, scale);
    const auto triangle = normal.matrix.llt();
    for (Eigen::Index i = 0; i < normal.matrix.rows(); ++i) {
        evidence -= std::log(triangle.matrixL()(i, i)); // Half the logarithm of the determinant.
    }
    const auto middle = scores(rows, weights, priors, scale);
    const Matrix half = triangle.solve(middle);
    const Matrix covariance = triangle.solve(half.transpose());
    StudentFit fit{parameters, {}, scale,
                   std::max(2.0, counted - static_cast<double>(columns) + kPriorReadings), evidence};
    for (std::size_t i = 0; i < columns; ++i) {
        for (std::size_t j = 0; j < columns; ++j) {
            fit.covariance[i][j] = covariance(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j));
        }
    }
    return fit;
}

double value_of(const Columns& contrast, const StudentFit& fit)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < kMostColumns; ++i) {
        sum += contrast[i] * fit.parameters[i];
    }
    return sum;
}

double variance_of(const Columns& contrast, const StudentFit& fit)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < kMostColumns; ++i) {
        for (std::size_t j = 0; j < kMostColumns; ++j) {
            sum += contrast[i] * fit.covariance[i][j] * contrast[j];
        }
    }
    return sum;
}

} // namespace lathhouse::growth
