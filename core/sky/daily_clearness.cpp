#include "core/sky/daily_clearness.h"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

namespace lathhouse::sky {
namespace {

constexpr double kLeastClearness = 0.05;
constexpr double kDullestFitted = 0.2;
/// Steepest curve, over the whole width from least to most.
constexpr double kSteepest = 500.0;
/// A straight line for what is flatter: the formulas below would divide by next to nothing.
constexpr double kFlattest = 1e-6;

double most_of(double mean)
{
    const double fitted = std::max(mean, kDullestFitted);
    return 0.6313 + 0.267 * fitted - 11.9 * std::pow(fitted - 0.75, 8);
}

/// Mean, as a share of the width, of days that lie as exp(u x) on 0..1.
double mean_of_width(double u)
{
    return std::fabs(u) < kFlattest ? 0.5 + u / 12.0 : -1.0 / std::expm1(-u) - 1.0 / u;
}

} // namespace

DailyClearness::DailyClearness(double mean)
    : mean_(std::clamp(mean, 0.0, 1.0)), least_(std::min(kLeastClearness, 0.5 * mean_)), most_(most_of(mean_))
{
    const double place = most_ > least_ ? (mean_ - least_) / (most_ - least_) : 0.0;
    if (!(place > mean_of_width(-kSteepest) && place < mean_of_width(kSteepest))) {
        least_ = mean_;
        most_ = mean_;
        return;
    }
    std::uintmax_t turns = 100;
    const auto [low, high] =
        boost::math::tools::toms748_solve([&](double u) { return mean_of_width(u) - place; }, -kSteepest,
                                          kSteepest, boost::math::tools::eps_tolerance<double>(40), turns);
    steepness_ = 0.5 * (low + high) / (most_ - least_);
}

Probability DailyClearness::share_below(double clearness) const
{
    if (!(clearness > least_)) {
        return Probability::literal(0.0);
    }
    if (clearness >= most_) {
        return Probability::literal(1.0);
    }
    const double width = most_ - least_;
    const double u = steepness_ * width;
    const double place = (clearness - least_) / width;
    return Probability::clamped(std::fabs(u) < kFlattest ? place : std::expm1(u * place) / std::expm1(u));
}

double DailyClearness::at(Probability share) const
{
    const double u = steepness_ * (most_ - least_);
    const double place =
        std::fabs(u) < kFlattest ? share.fraction() : std::log1p(share.fraction() * std::expm1(u)) / u;
    return least_ + (most_ - least_) * std::clamp(place, 0.0, 1.0);
}

double diffuse_share_of_day(double clearness, Angle sunset)
{
    const double k = std::clamp(clearness, 0.0, 1.0);
    if (sunset.degrees() <= 81.4) {
        return k < 0.715 ? 1.0 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : 0.143;
    }
    // The curve begins a little above 1.
    return k < 0.722 ? std::min(1.0, 1.0 + k * (0.2832 + k * (-2.5557 + k * 0.8448))) : 0.175;
}

} // namespace lathhouse::sky
