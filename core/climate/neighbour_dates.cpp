#include "core/climate/neighbour_dates.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace lathhouse::climate {

namespace {

/// With fewer seasons than one in a thousand the model has no dates.
constexpr Probability kNeverShare = Probability::literal(0.999);

DateResiduals residuals_at_row_line(const NightModel& model, const ThresholdDates& counted)
{
    DateResiduals residuals;
    if (counted.state != ThresholdState::Ordinary || model.no_season()) {
        return residuals;
    }
    const SeasonChances of_model = model.season(counted.threshold);
    if (of_model.share_without() > kNeverShare) {
        return residuals;
    }
    for (const auto& [percent, day] : counted.last.dates) {
        const auto guess = of_model.last(Probability::clamped(percent / 100.0));
        if (day && guess) {
            residuals.last[percent] = calendar::short_way(*guess, *day);
        }
    }
    for (const auto& [percent, day] : counted.first.dates) {
        const auto guess = of_model.first(Probability::clamped(percent / 100.0));
        if (day && guess) {
            residuals.first[percent] = calendar::short_way(*guess, *day);
        }
    }
    residuals.nights_per_year = counted.nights_per_year - of_model.nights_per_year();
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
                       std::nullopt};
    if (lower.nights_per_year && upper.nights_per_year) {
        both.nights_per_year =
            *lower.nights_per_year + share * (*upper.nights_per_year - *lower.nights_per_year);
    }
    return both;
}

std::vector<DateResiduals> residuals_of_rows(const Station& station)
{
    std::vector<DateResiduals> found;
    const NightModel model = NightModel::from_monthly(station.monthly, station.position.latitude);
    for (const ThresholdDates& counted : station.dates) {
        found.push_back(residuals_at_row_line(model, counted));
    }
    return found;
}

bool carries_dates(const StationInUse& use)
{
    return use.distance.kilometres() <= kCarriedKilometres && use.weight >= kLeastCarriedWeight;
}

std::optional<DateResiduals> residuals_around(const PlaceClimate& place, Celsius line,
                                              const ResidualsOf& residuals_of)
{
    WeightedMeans last;
    WeightedMeans first;
    double nights = 0.0;
    double weight_with = 0.0;
    double weight_near = 0.0;
    for (const StationInUse& use : place.stations) {
        if (!carries_dates(use)) {
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
    }
    if (weight_near <= 0.0 || weight_with < 0.5 * weight_near) {
        return std::nullopt;
    }
    return DateResiduals{last.means(), first.means(), nights / weight_with};
}

} // namespace lathhouse::climate
