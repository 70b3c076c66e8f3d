#include "core/climate/counted_nights.h"

#include "core/calendar/month_length.h"
#include "core/climate/month_curve.h"
#include "core/climate/night_model.h"
#include "core/climate/normal.h"
#include "core/climate/table_sizes.h"

#include <algorithm>
#include <cmath>
#include <vector>

// What counted nights tell of the spread and of the tail.

namespace lathhouse::climate {

namespace {

/// Of each month two numbers are found: how far the barrier is moved, and by how much it is bent.
constexpr std::size_t kTerms = 2;
constexpr std::size_t kUnknowns = kTerms * kMonths;
using Unknowns = std::array<double, kUnknowns>;

/// Likelihood of the shares, as minus its logarithm for one night, if the lows spread that far.
double unlikeliness(double mean, double spread, std::span<const ShareBelow> shares)
{
    double sum = 0.0;
    double share_before = 0.0;
    double expected_before = 0.0;
    for (std::size_t k = 0; k <= shares.size(); ++k) {
        const double share = k < shares.size() ? shares[k].share : 1.0;
        const double expected =
            k < shares.size() ? normal_below((shares[k].edge_degrees - mean) / spread) : 1.0;
        sum -= std::max(0.0, share - share_before) * std::log(std::max(expected - expected_before, 1e-12));
        share_before = share;
        expected_before = expected;
    }
    return sum;
}

/// Of each day, how much it takes from each month (`lines_between_months`).
const std::array<DailyCurve, kMonths>& parts_of_months()
{
    static const std::array<DailyCurve, kMonths> parts = [] {
        std::array<DailyCurve, kMonths> result{};
        for (std::size_t m = 0; m < kMonths; ++m) {
            Monthly<double> one{};
            one[m] = 1.0;
            result[m] = lines_between_months(one);
        }
        return result;
    }();
    return parts;
}

/// Readings are kept in tenths of a degree: 10 F is 12.2 C below nought there, a hair above -12.22 C.
Celsius in_tenths(Celsius line)
{
    return Celsius::from_degrees(std::round(line.degrees() * 10.0) / 10.0);
}

/// Solves a x = b by Cholesky's factors. Precondition: a is symmetric and positive definite, as the sum of
/// a diagonal of positive numbers and of squares is.
Unknowns solve(std::array<Unknowns, kUnknowns> a, Unknowns b)
{
    for (std::size_t i = 0; i < kUnknowns; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double rest = a[i][j];
            for (std::size_t k = 0; k < j; ++k) {
                rest -= a[i][k] * a[j][k];
            }
            a[i][j] = i == j ? std::sqrt(rest) : rest / a[j][j];
        }
    }
    for (std::size_t i = 0; i < kUnknowns; ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            b[i] -= a[i][k] * b[k];
        }
        b[i] /= a[i][i];
    }
    for (std::size_t i = kUnknowns; i-- > 0;) {
        for (std::size_t k = i + 1; k < kUnknowns; ++k) {
            b[i] -= a[k][i] * b[k];
        }
        b[i] /= a[i][i];
    }
    return b;
}

} // namespace

std::optional<double> spread_of_counted_nights(double mean_low_degrees, std::span<const ShareBelow> shares)
{
    const auto tells = std::ranges::count_if(
        shares, [](const ShareBelow& below) { return below.share > 0.01 && below.share < 0.99; });
    if (tells < 2) {
        return std::nullopt;
    }
    // Golden section; the likelihood has one top.
    constexpr double kGolden = 0.6180339887498949;
    double low = 1.0;
    double high = 12.0;
    while (high - low > 0.001) {
        const double left = high - kGolden * (high - low);
        const double right = low + kGolden * (high - low);
        if (unlikeliness(mean_low_degrees, left, shares) < unlikeliness(mean_low_degrees, right, shares)) {
            high = right;
        } else {
            low = left;
        }
    }
    return (low + high) / 2.0;
}

bool NightModel::use_counted_spread(const Monthly<Celsius>& low, std::span<const CountedNights> counted,
                                    const DailyCurve& mean_low, Monthly<double>& spread) const
{
    constexpr double kLeastVariance = 0.5;
    const Monthly<double> slope = variance_within_months(mean_low);
    Monthly<std::optional<double>> found{};
    double log_ratio = 0.0;
    int count = 0;
    for (std::size_t m = 0; m < kMonths; ++m) {
        std::vector<ShareBelow> shares;
        for (const CountedNights& nights : counted) {
            const double days = calendar::kMeanDaysOfMonths[m];
            shares.push_back(
                {effective_degrees(in_tenths(nights.line), true), std::min(1.0, nights.nights[m] / days)});
        }
        std::ranges::sort(shares, {}, &ShareBelow::edge_degrees);
        if (const auto all = spread_of_counted_nights(low[m].degrees(), shares)) {
            found[m] = std::sqrt(std::max(*all * *all - slope[m], kLeastVariance));
            log_ratio += std::log(*found[m] / spread[m]);
            ++count;
        }
    }
    if (count == 0) {
        return false;
    }
    // A month whose nights lie all on one side of the lines keeps the course of the other knowledge.
    const double ratio = std::exp(log_ratio / count);
    for (std::size_t m = 0; m < kMonths; ++m) {
        spread[m] = found[m].value_or(spread[m] * ratio);
    }
    return true;
}

void NightModel::use_counted_nights(std::span<const CountedNights> counted, int years)
{
    // How far a month's barrier may be expected to be moved and bent, in standard deviations; chosen on one
    // half of the daily records (docs/methods/nights.md).
    constexpr std::array<double, kTerms> kExpected = {0.05, 0.10};
    // Nights follow one another: so many of them count as independent.
    constexpr double kIndependentShare = 0.3;
    // Published to a tenth of a night.
    constexpr double kRounding = 0.1 / 3.4641016151377544;
    // Above the middle the tail's terms end; such lines tell nothing of them.
    constexpr double kWarmest = 0.7;
    constexpr int kSteps = 6;

    const std::array<Day, kDays> before = days_;
    const auto& parts = parts_of_months();
    Unknowns found{};
    const auto apply = [&] {
        // So that a colder line has never the larger chance: the slope of the barrier at the tail's end.
        constexpr double kFarthest = 3.2;
        constexpr double kLeastSlope = 0.02;
        for (std::size_t d = 0; d < kDays; ++d) {
            std::array<double, kTerms> daily{};
            for (std::size_t m = 0; m < kMonths; ++m) {
                for (std::size_t t = 0; t < kTerms; ++t) {
                    daily[t] += parts[m][d] * found[kTerms * m + t];
                }
            }
            const double steepest = (1.0 + before[d].linear - kLeastSlope) / (2.0 * kFarthest);
            days_[d].constant = before[d].constant + daily[0];
            days_[d].square = std::min(before[d].square + daily[1], std::max(steepest, before[d].square));
        }
    };
    for (int step = 0; step < kSteps; ++step) {
        std::array<Unknowns, kUnknowns> square{};
        Unknowns right{};
        for (std::size_t i = 0; i < kUnknowns; ++i) {
            const double weight = 1.0 / (kExpected[i % kTerms] * kExpected[i % kTerms]);
            square[i][i] = weight;
            right[i] = -weight * found[i];
        }
        std::size_t start = 0;
        for (std::size_t m = 0; m < kMonths; ++m) {
            const auto length =
                static_cast<std::size_t>(calendar::days_in_month_of_leap_year(static_cast<int>(m) + 1));
            const auto days = static_cast<double>(length);
            for (const CountedNights& nights : counted) {
                const double edge = effective_degrees(in_tenths(nights.line), true);
                double expected = 0.0;
                Unknowns gradient{};
                for (std::size_t d = start; d < start + length; ++d) {
                    const double b = barrier(d, edge, nights.line.degrees());
                    expected += normal_below(b) / days;
                    const double density = normal_density(b) / days;
                    const double w = std::clamp((edge - days_[d].mean_low) / days_[d].spread, -3.2, 0.0);
                    for (std::size_t from = 0; from < kMonths; ++from) {
                        gradient[kTerms * from] += density * parts[from][d];
                        gradient[kTerms * from + 1] += density * parts[from][d] * (w * w - 1.0);
                    }
                }
                if (expected > kWarmest) {
                    continue;
                }
                const double variance =
                    std::max(expected * (1.0 - expected), 1e-4) / (years * days * kIndependentShare) +
                    kRounding * kRounding / (days * days);
                const double miss = std::min(1.0, nights.nights[m] / calendar::kMeanDaysOfMonths[m]) - expected;
                for (std::size_t i = 0; i < kUnknowns; ++i) {
                    right[i] += gradient[i] * miss / variance;
                    for (std::size_t j = 0; j < kUnknowns; ++j) {
                        square[i][j] += gradient[i] * gradient[j] / variance;
                    }
                }
            }
            start += length;
        }
        const Unknowns change = solve(square, right);
        for (std::size_t i = 0; i < kUnknowns; ++i) {
            found[i] += change[i];
        }
        apply();
    }
}

} // namespace lathhouse::climate
