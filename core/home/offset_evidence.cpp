#include "core/climate/night_outlook.h"
#include "core/home/learned_offset.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lathhouse::home {
namespace {

using climate::NightOffset;

/// A value with its standard deviation, put together from several by the inverse of their variances.
class Weighed {
public:
    void add(Celsius value, KelvinDelta error)
    {
        const double weight = 1.0 / (error.kelvins() * error.kelvins());
        sum_ += weight * value.degrees();
        weights_ += weight;
    }
    bool empty() const { return weights_ == 0.0; }
    Celsius value() const { return Celsius::from_degrees(sum_ / weights_); }
    KelvinDelta error() const { return KelvinDelta::from_kelvins(1.0 / std::sqrt(weights_)); }

private:
    double sum_ = 0.0;
    double weights_ = 0.0;
};

climate::NightOutlook outlook_of(const KeptForecast& forecast, const climate::NightModel& nights)
{
    return {nights, calendar::DayOfYear::of(forecast.night),
            climate::ForecastLow{forecast.low, calendar::days_between(forecast.issued, forecast.night)}};
}

} // namespace

std::vector<OffsetEvidence> offset_evidence(SpotId spot, const NightLog& log,
                                            const climate::NightModel& nights)
{
    std::vector<OffsetEvidence> evidence;
    for (const Reading& reading : log.readings) {
        if (reading.spot != spot) {
            continue;
        }
        Weighed reference;
        if (const auto* forecast = log.last_forecast(reading.night)) {
            const auto outlook = outlook_of(*forecast, nights);
            if (outlook.has_forecast()) {
                reference.add(outlook.mean(), outlook.spread());
            }
        }
        if (reading.station_low) {
            reference.add(*reading.station_low, kStationError);
        }
        const bool season_only = reference.empty();
        if (season_only) {
            const auto day = calendar::DayOfYear::of(reading.night);
            reference.add(nights.mean_low(day), nights.spread(day));
        }
        evidence.push_back({reading.night, reading.low - reference.value(), reference.error(),
                            climate::kind_of(reading.weather), season_only});
    }
    return evidence;
}

LearnedOffset offset_of(const Spot& spot, const NightLog& log, const climate::NightModel& nights)
{
    if (!is_outdoors(spot.kind)) {
        return {.usual = spot.offset, .clear_calm = spot.offset, .other = spot.offset};
    }
    const auto evidence = offset_evidence(spot.id, log, nights);
    return evidence.empty() ? before_readings(spot.offset) : learn_offset(spot.offset, evidence);
}

Household with_learned_offsets(Household household, const NightLog& log, const climate::NightModel& nights)
{
    for (Spot& spot : household.spots) {
        const auto learned = offset_of(spot, log, nights);
        if (learned.nights > 0) {
            spot.offset = learned.usual;
        }
    }
    return household;
}

std::vector<ForecastOutcome> forecast_outcomes(const Household& as_told, const NightLog& log,
                                               const climate::NightModel& nights)
{
    std::vector<std::pair<SpotId, LearnedOffset>> offsets;
    for (const Spot& spot : as_told.spots) {
        if (is_outdoors(spot.kind)) {
            offsets.emplace_back(spot.id, offset_of(spot, log, nights));
        }
    }
    std::vector<ForecastOutcome> outcomes;
    auto reading = log.readings.begin();
    for (const KeptForecast& forecast : log.forecasts) { // Both are in order of their nights.
        while (reading != log.readings.end() && reading->night < forecast.night) {
            ++reading;
        }
        Weighed low;
        for (auto at = reading; at != log.readings.end() && at->night == forecast.night; ++at) {
            const auto offset =
                std::ranges::find(offsets, at->spot, &std::pair<SpotId, LearnedOffset>::first);
            if (offset != offsets.end()) {
                const auto of_night = offset->second.of_night(climate::kind_of(at->weather));
                low.add(at->low - of_night.mean, of_night.spread);
            }
        }
        if (!low.empty()) {
            outcomes.push_back({&forecast, low.value(), low.error()});
        }
    }
    return outcomes;
}

std::vector<climate::ForecastMiss> forecast_misses(std::span<const ForecastOutcome> outcomes,
                                                   const climate::NightModel& nights)
{
    std::vector<climate::ForecastMiss> misses;
    for (const auto& outcome : outcomes) {
        const auto outlook = outlook_of(*outcome.forecast, nights);
        misses.push_back(
            {calendar::days_between(outcome.forecast->issued, outcome.forecast->night),
             outcome.low - outlook.mean(),
             KelvinDelta::from_kelvins(std::hypot(outlook.spread().kelvins(), outcome.spread.kelvins()))});
    }
    return misses;
}

} // namespace lathhouse::home
