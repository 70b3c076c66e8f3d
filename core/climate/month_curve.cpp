#include "core/climate/month_curve.h"

#include "core/calendar/day_of_year.h"
#include "core/climate/table_sizes.h"

#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace lathhouse::climate {

namespace {

constexpr double kPeriod = 366.0;

using MonthMatrix = std::array<std::array<double, kMonths>, kMonths>;
using DayMatrix = std::array<std::array<double, kMonths>, kDays>;

Monthly<double> middles_of_months()
{
    Monthly<double> middles{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        const int month = static_cast<int>(m) + 1;
        middles[m] = calendar::places_before_month(month) + calendar::days_in_month_of_leap_year(month) / 2.0;
    }
    return middles;
}

/// Where a day stands between the middles of two months.
struct Between {
    std::size_t left;
    std::size_t right;
    double width;    ///< Days from the left middle to the right one.
    double fraction; ///< 0 at the left middle, 1 at the right one.
};

Between locate(std::size_t day, const Monthly<double>& middles)
{
    double at = static_cast<double>(day) + 0.5;
    if (at < middles[0]) {
        at += kPeriod;
    }
    std::size_t left = kMonths - 1;
    while (middles[left] > at) {
        --left;
    }
    const std::size_t right = (left + 1) % kMonths;
    const double width = (right == 0 ? middles[0] + kPeriod : middles[right]) - middles[left];
    return {left, right, width, (at - middles[left]) / width};
}

/// Inverse by Gauss-Jordan with row exchange. Precondition: not singular (a spline's matrix never is).
MonthMatrix inverse(MonthMatrix a)
{
    MonthMatrix b{};
    for (std::size_t i = 0; i < kMonths; ++i) {
        b[i][i] = 1.0;
    }
    for (std::size_t column = 0; column < kMonths; ++column) {
        std::size_t pivot = column;
        for (std::size_t row = column + 1; row < kMonths; ++row) {
            if (std::abs(a[row][column]) > std::abs(a[pivot][column])) {
                pivot = row;
            }
        }
        std::swap(a[pivot], a[column]);
        std::swap(b[pivot], b[column]);
        const double scale = 1.0 / a[column][column];
        for (std::size_t k = 0; k < kMonths; ++k) {
            a[column][k] *= scale;
            b[column][k] *= scale;
        }
        for (std::size_t row = 0; row < kMonths; ++row) {
            const double factor = a[row][column];
            if (row == column || factor == 0.0) {
                continue;
            }
            for (std::size_t k = 0; k < kMonths; ++k) {
                a[row][k] -= factor * a[column][k];
                b[row][k] -= factor * b[column][k];
            }
        }
    }
    return b;
}

/// The spline is linear in its knots: daily value = matrix x knots.
DayMatrix spline_matrix(const Monthly<double>& middles)
{
    // Second derivatives M solve, for each knot i with the widths h on its left and right,
    // hl M[i-1] + 2 (hl + hr) M[i] + hr M[i+1] = 6 ((t[i+1] - t[i]) / hr - (t[i] - t[i-1]) / hl).
    MonthMatrix left_side{};
    MonthMatrix right_side{};
    for (std::size_t i = 0; i < kMonths; ++i) {
        const std::size_t before = (i + kMonths - 1) % kMonths;
        const std::size_t after = (i + 1) % kMonths;
        const double hl = middles[i] - middles[before] + (i == 0 ? kPeriod : 0.0);
        const double hr = middles[after] - middles[i] + (after == 0 ? kPeriod : 0.0);
        left_side[i][before] = hl;
        left_side[i][i] = 2.0 * (hl + hr);
        left_side[i][after] = hr;
        right_side[i][before] = 6.0 / hl;
        right_side[i][i] = -6.0 / hl - 6.0 / hr;
        right_side[i][after] = 6.0 / hr;
    }
    const MonthMatrix solved = inverse(left_side);
    MonthMatrix curvature{};
    for (std::size_t i = 0; i < kMonths; ++i) {
        for (std::size_t k = 0; k < kMonths; ++k) {
            for (std::size_t j = 0; j < kMonths; ++j) {
                curvature[i][k] += solved[i][j] * right_side[j][k];
            }
        }
    }
    DayMatrix daily{};
    for (std::size_t day = 0; day < kDays; ++day) {
        const Between at = locate(day, middles);
        const double b = at.fraction;
        const double a = 1.0 - b;
        const double square = at.width * at.width / 6.0;
        for (std::size_t k = 0; k < kMonths; ++k) {
            daily[day][k] =
                square * ((a * a * a - a) * curvature[at.left][k] + (b * b * b - b) * curvature[at.right][k]);
        }
        daily[day][at.left] += a;
        daily[day][at.right] += b;
    }
    return daily;
}

/// The spline and its ten corrections as one matrix: both are linear in the monthly means.
DayMatrix mean_preserving_matrix()
{
    constexpr int kCorrections = 10;
    const DayMatrix spline = spline_matrix(middles_of_months());
    MonthMatrix knots{};
    for (std::size_t i = 0; i < kMonths; ++i) {
        knots[i][i] = 1.0;
    }
    DayMatrix daily = spline;
    for (int correction = 0; correction < kCorrections; ++correction) {
        for (std::size_t given = 0; given < kMonths; ++given) {
            DailyCurve curve{};
            for (std::size_t day = 0; day < kDays; ++day) {
                curve[day] = daily[day][given];
            }
            const Monthly<double> means = means_of_months(curve);
            for (std::size_t m = 0; m < kMonths; ++m) {
                knots[m][given] += (m == given ? 1.0 : 0.0) - means[m];
            }
        }
        for (std::size_t day = 0; day < kDays; ++day) {
            for (std::size_t given = 0; given < kMonths; ++given) {
                double sum = 0.0;
                for (std::size_t m = 0; m < kMonths; ++m) {
                    sum += spline[day][m] * knots[m][given];
                }
                daily[day][given] = sum;
            }
        }
    }
    return daily;
}

} // namespace

const std::array<int, 366>& month_of_places()
{
    static const std::array<int, 366> months = [] {
        std::array<int, 366> result{};
        for (int month = 1; month <= 12; ++month) {
            const int start = calendar::places_before_month(month);
            for (int day = 0; day < calendar::days_in_month_of_leap_year(month); ++day) {
                result[static_cast<std::size_t>(start + day)] = month - 1;
            }
        }
        return result;
    }();
    return months;
}

Monthly<double> means_of_months(const DailyCurve& curve)
{
    Monthly<double> sums{};
    for (std::size_t day = 0; day < kDays; ++day) {
        sums[static_cast<std::size_t>(month_of_places()[day])] += curve[day];
    }
    for (std::size_t m = 0; m < kMonths; ++m) {
        sums[m] /= calendar::days_in_month_of_leap_year(static_cast<int>(m) + 1);
    }
    return sums;
}

Monthly<double> variance_within_months(const DailyCurve& curve)
{
    const Monthly<double> means = means_of_months(curve);
    Monthly<double> sums{};
    for (std::size_t day = 0; day < kDays; ++day) {
        const auto m = static_cast<std::size_t>(month_of_places()[day]);
        sums[m] += (curve[day] - means[m]) * (curve[day] - means[m]);
    }
    for (std::size_t m = 0; m < kMonths; ++m) {
        sums[m] /= calendar::days_in_month_of_leap_year(static_cast<int>(m) + 1);
    }
    return sums;
}

DailyCurve curve_through_months(const Monthly<double>& monthly_means)
{
    static const DayMatrix matrix = mean_preserving_matrix();
    DailyCurve curve{};
    for (std::size_t day = 0; day < kDays; ++day) {
        for (std::size_t m = 0; m < kMonths; ++m) {
            curve[day] += matrix[day][m] * monthly_means[m];
        }
    }
    return curve;
}

DailyCurve lines_between_months(const Monthly<double>& at_middles)
{
    static const Monthly<double> middles = middles_of_months();
    DailyCurve curve{};
    for (std::size_t day = 0; day < kDays; ++day) {
        const Between at = locate(day, middles);
        curve[day] = at_middles[at.left] * (1.0 - at.fraction) + at_middles[at.right] * at.fraction;
    }
    return curve;
}

} // namespace lathhouse::climate
