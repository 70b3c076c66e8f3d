#include "core/climate/night_outlook.h"

#include "core/climate/normal.h"
#include "core/climate/student.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {
namespace {

constexpr double kHalfReadingStep = 0.05; // Thermometers are read to tenths.

/// Chance that t_scale * t + offset lies below `degrees`, t with five degrees of freedom. The trapezoid rule
/// over four standard deviations of the offset is exact to eight digits for a function as smooth as this.
double student_below(double degrees, double scale, NightOffset offset)
{
    const double centre = degrees - offset.mean.kelvins();
    const double spread = offset.spread.kelvins();
    if (spread <= 0.0) {
        return student5_below(centre / scale);
    }
    constexpr int kSteps = 20;
    constexpr double kWidth = 0.25;
    double sum = 0.0;
    double weights = 0.0;
    for (int step = -kSteps; step <= kSteps; ++step) {
        const double at = kWidth * step;
        const double weight = normal_density(at);
        weights += weight;
        sum += weight * student5_below((centre - at * spread) / scale);
    }
    return sum / weights;
}

} // namespace

NightOutlook::NightOutlook(const NightModel& season, calendar::DayOfYear night,
                           std::optional<ForecastLow> forecast, const ForecastErrors& errors)
    : season_(&season), night_(night), mean_(season.mean_low(night)), spread_(season.spread(night)),
      correlation_(0.0)
{
    if (forecast) {
        correlation_ = errors.correlation(forecast->lead, spread_);
        spread_ = errors.spread(forecast->lead, spread_);
        mean_ = mean_ + correlation_ * (forecast->low - mean_);
    }
}

double NightOutlook::below(double degrees, NightOffset offset) const
{
    const double sure = correlation_ * correlation_;
    const double narrow = std::sqrt(1.0 - sure);
    const double student = sure == 0.0 ? 0.0
                                       : student_below(degrees + kHalfReadingStep - mean_.degrees(),
                                                       spread_.kelvins() * kUnitStudentScale, offset);
    // The season's own shape about the new mean, narrowed: the same as the season at a line and an offset
    // that are widened.
    const Celsius centre = season_->mean_low(night_);
    const Celsius line = centre + (Celsius::from_degrees(degrees) - mean_) / narrow;
    const double season =
        season_->chance_on(night_, line, {offset.mean / narrow, offset.spread / narrow}).fraction();
    return sure * student + (1.0 - sure) * season;
}

Probability NightOutlook::chance_at_or_below(Celsius line, NightOffset offset) const
{
    return Probability::clamped(below(line.degrees(), offset));
}

Celsius NightOutlook::quantile(Probability chance, NightOffset offset) const
{
    if (correlation_ == 0.0) {
        return season_->quantile(night_, chance, offset);
    }
    const double reach = 15.0 * (spread_.kelvins() + offset.spread.kelvins()) + 5.0;
    double low = mean_.degrees() + offset.mean.kelvins() - reach;
    double high = low + 2.0 * reach;
    for (int halving = 0; halving < 40; ++halving) {
        const double middle = (low + high) / 2.0;
        (below(middle, offset) < chance.fraction() ? low : high) = middle;
    }
    return Celsius::from_degrees((low + high) / 2.0);
}

KelvinDelta NightOutlook::score(Celsius observed, NightOffset offset) const
{
    const double away = std::abs((observed - mean_).kelvins() - offset.mean.kelvins());
    const double reach = away + 12.0 * std::hypot(spread_.kelvins(), offset.spread.kelvins());
    return KelvinDelta::from_kelvins(
        crps([&](double degrees) { return below(degrees, offset); }, observed.degrees(), reach));
}

double crps(const std::function<double(double)>& below, double observed, double reach)
{
    constexpr int kSteps = 160; // Even, a side.
    const double width = reach / kSteps;
    double sum = 0.0;
    for (int step = 0; step <= kSteps; ++step) {
        const double weight = step == 0 || step == kSteps ? 1.0 : step % 2 == 1 ? 4.0 : 2.0;
        const double left = below(observed - width * step);
        const double right = 1.0 - below(observed + width * step);
        sum += weight * (left * left + right * right);
    }
    return sum * width / 3.0;
}

} // namespace lathhouse::climate
