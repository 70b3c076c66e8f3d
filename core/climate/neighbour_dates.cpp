#include "core/climate/neighbour_dates.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace lathhouse::climate {

namespace {

/// How much of the neighbours' residual holds at the place; fitted by leaving out every second station.
constexpr double kCarriedShare = 0.7;
/// A neighbour of less weight does not change a date by a day.
constexpr double kLeastWeight = 0.02;

/// Days from one day to another, the short way round the year.
int days_between(calendar::DayOfYear from, calendar::DayOfYear to)
{
    constexpr int kYear = calendar::DayOfYear::kCount;
    const int days = (to.place() - from.place() + kYear) % kYear;
    return days > kYear / 2 ? days - kYear : days;
}

DateResiduals residuals_at_row_line(const NightModel& model, const ThresholdDates& counted)
{
    DateResiduals residuals;
    if (counted.state != ThresholdState::Ordinary) {
        return residuals;
    }
    const ThresholdDates of_model = model.dates(counted.threshold);
    if (of_model.state != ThresholdState::Ordinary) {
        return residuals;
    }
    const auto compare = [](const EndDates& truth, const EndDates& guess, std::map<double, double>& into) {
        for (const auto& [percent, day] : truth.dates) {
            const auto found = guess.dates.find(percent);
            if (day && found != guess.dates.end() && found->second) {
                into[percent] = days_between(*found->second, *day);
            }
        }
    };
    compare(counted.last, of_model.last, residuals.last);
    compare(counted.first, of_model.first, residuals.first);
    for (const auto& [percent, days] : counted.free_days) {
        const auto found = of_model.free_days.find(percent);
        if (days && found != of_model.free_days.end() && found->second) {
            residuals.free_days[percent] = *days - *found->second;
        }
    }
    residuals.nights_per_year = counted.nights_per_year - of_model.nights_per_year;
    return residuals;
}

std::map<double, double> between(const std::map<double, double>& a, const std::map<double, double>& b,
                                 double share_of_b)
{
    std::map<double, double> both;
    for (const auto& [percent, value] : a) {
        if (const auto other = b.find(percent); other != b.end()) {
            both[percent] = value + share_of_b * (other->second - value);
        }
    }
    return both;
}

/// Straight line between the percents that are known, the nearest outside; nullopt where none is.
std::optional<double> at_percent(const std::map<double, double>& known, double percent)
{
    if (known.empty()) {
        return std::nullopt;
    }
    const auto above = known.lower_bound(percent);
    if (above == known.end()) {
        return known.rbegin()->second;
    }
    if (above == known.begin() || above->first == percent) {
        return above->second;
    }
    const auto below = std::prev(above);
    const double share = (percent - below->first) / (above->first - below->first);
    return below->second + share * (above->second - below->second);
}

class WeightedMeans {
public:
    void add(const std::map<double, double>& values, double weight)
    {
        for (const auto& [percent, value] : values) {
            sums_[percent] += weight * value;
            weights_[percent] += weight;
        }
    }
    std::map<double, double> means() const
    {
        std::map<double, double> means;
        for (const auto& [percent, sum] : sums_) {
            means[percent] = sum / weights_.at(percent);
        }
        return means;
    }

private:
    std::map<double, double> sums_;
    std::map<double, double> weights_;
};

/// Moves the dates; `order` is +1 where a higher percent means a later date, -1 where an earlier one.
void carry(std::map<double, std::optional<calendar::DayOfYear>>& dates,
           const std::map<double, double>& residuals, int order)
{
    std::optional<calendar::DayOfYear> before;
    for (auto& [percent, day] : dates) {
        const auto residual = at_percent(residuals, percent);
        if (!day || !residual) {
            continue;
        }
        const int days = static_cast<int>(std::lround(kCarriedShare * *residual));
        day = calendar::DayOfYear::wrapped(day->place() + days);
        if (before && order * days_between(*before, *day) < 0) {
            day = before;
        }
        before = day;
    }
}

} // namespace

DateResiduals date_residuals(const Station& station, Celsius line)
{
    const auto above = std::ranges::find_if(
        station.dates, [line](const auto& known) { return (known.threshold - line).kelvins() > -0.005; });
    if (above == station.dates.end()) {
        return {};
    }
    const NightModel model = NightModel::from_monthly(station.monthly, station.position.latitude);
    DateResiduals upper = residuals_at_row_line(model, *above);
    if (std::abs((above->threshold - line).kelvins()) < 0.005 || above == station.dates.begin()) {
        return std::abs((above->threshold - line).kelvins()) < 0.005 ? upper : DateResiduals{};
    }
    const auto below = std::prev(above);
    const DateResiduals lower = residuals_at_row_line(model, *below);
    const double share = (line - below->threshold) / (above->threshold - below->threshold);
    DateResiduals both{between(lower.last, upper.last, share), between(lower.first, upper.first, share),
                       between(lower.free_days, upper.free_days, share), std::nullopt};
    if (lower.nights_per_year && upper.nights_per_year) {
        both.nights_per_year =
            *lower.nights_per_year + share * (*upper.nights_per_year - *lower.nights_per_year);
    }
    return both;
}

std::optional<DateResiduals> residuals_around(const PlaceClimate& place, Celsius line,
                                              const ResidualsOf& residuals_of)
{
    WeightedMeans last;
    WeightedMeans first;
    WeightedMeans free_days;
    double nights = 0.0;
    double weight_with = 0.0;
    double weight_near = 0.0;
    for (const StationInUse& use : place.stations) {
        if (use.distance.kilometres() > kCarriedKilometres || use.weight < kLeastWeight) {
            continue;
        }
        weight_near += use.weight;
        if (use.station->dates.empty()) {
            continue;
        }
        const DateResiduals residuals = residuals_of(*use.station, line);
        if (!residuals.nights_per_year) {
            continue;
        }
        weight_with += use.weight;
        nights += use.weight * *residuals.nights_per_year;
        last.add(residuals.last, use.weight);
        first.add(residuals.first, use.weight);
        free_days.add(residuals.free_days, use.weight);
    }
    if (weight_near <= 0.0 || weight_with < 0.5 * weight_near) {
        return std::nullopt;
    }
    return DateResiduals{last.means(), first.means(), free_days.means(), nights / weight_with};
}

ThresholdDates carried(ThresholdDates of_model, const DateResiduals& residuals)
{
    if (of_model.state != ThresholdState::Ordinary) {
        return of_model;
    }
    carry(of_model.last.dates, residuals.last, -1);
    carry(of_model.first.dates, residuals.first, +1);
    std::optional<int> before;
    for (auto& [percent, days] : of_model.free_days) {
        const auto residual = at_percent(residuals.free_days, percent);
        if (!days || !residual) {
            continue;
        }
        days = std::clamp(*days + static_cast<int>(std::lround(kCarriedShare * *residual)), 0,
                          before.value_or(*days + 366));
        before = days;
    }
    if (residuals.nights_per_year) {
        of_model.nights_per_year =
            std::clamp(of_model.nights_per_year + kCarriedShare * *residuals.nights_per_year, 0.0, 365.2425);
    }
    return of_model;
}

} // namespace lathhouse::climate
