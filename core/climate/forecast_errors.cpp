#include "core/climate/forecast_errors.h"

#include "core/climate/student.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {
namespace {

constexpr double kUsualSeasonKelvins = 4.25; // Middle of the 3.5 to 5 K that R141 gives for the season.
constexpr LeadDays kGrowsTo = 7;
constexpr double kAtOnceKelvins = 1.6;
constexpr double kGrowthKelvins = 0.3;

/// The usual error where the season's spread is `season` kelvins.
double usual(LeadDays lead, double season)
{
    if (lead >= kLastUsefulLead) {
        return season;
    }
    const double at_seven = kAtOnceKelvins + kGrowthKelvins * kGrowsTo;
    const double known = kAtOnceKelvins + kGrowthKelvins * std::min(lead, kGrowsTo);
    // Beyond a week from the last known figure to the season's, in three equal steps.
    const auto beyond = [lead](double from, double to) {
        const double share = std::max(0, lead - kGrowsTo) / static_cast<double>(kLastUsefulLead - kGrowsTo);
        return from + (to - from) * share;
    };
    const double absolute = lead > kGrowsTo ? beyond(at_seven, season) : known;
    const double usual_season = lead > kGrowsTo ? beyond(at_seven, kUsualSeasonKelvins) : known;
    return std::min(absolute, season * usual_season / kUsualSeasonKelvins);
}

} // namespace

ForecastErrors ForecastErrors::learned(std::span<const ForecastMiss> record)
{
    constexpr double kUsualNights = 10.0; // How many nights the usual error counts for; common practice.
    constexpr int kSweeps = 40;
    ForecastErrors errors;
    for (Group& group : errors.groups_) {
        const auto belongs = [&group](const ForecastMiss& miss) {
            return miss.lead >= group.first && miss.lead <= group.last &&
                   miss.expected_spread.kelvins() > 0.0;
        };
        group.nights = static_cast<int>(std::ranges::count_if(record, belongs));
        double variance = 1.0; // In units of the expected one.
        for (int sweep = 0; sweep < kSweeps && group.nights > 0; ++sweep) {
            double sum = kUsualNights;
            for (const ForecastMiss& miss : record) {
                if (belongs(miss)) {
                    const double scaled = miss.miss / (miss.expected_spread * kUnitStudentScale);
                    const double square = scaled * scaled;
                    sum += square * (kTailFreedom + 1.0) / (kTailFreedom + square / variance);
                }
            }
            variance = sum / (kUsualNights + group.nights);
        }
        group.factor = std::sqrt(variance);
    }
    return errors;
}

KelvinDelta ForecastErrors::spread(LeadDays lead, KelvinDelta season_spread) const
{
    constexpr double kLeastKelvins = 0.3; // No forecast is better than a thermometer's own error.
    const double season = season_spread.kelvins();
    if (lead > kLastUsefulLead) {
        return season_spread;
    }
    const auto group = std::ranges::find_if(groups_, [lead](const Group& of) { return lead <= of.last; });
    return KelvinDelta::from_kelvins(
        std::min(std::max(usual(lead, season) * group->factor, kLeastKelvins), season));
}

double ForecastErrors::correlation(LeadDays lead, KelvinDelta season_spread) const
{
    const double share = spread(lead, season_spread) / season_spread;
    return std::sqrt(std::max(0.0, 1.0 - share * share));
}

} // namespace lathhouse::climate
