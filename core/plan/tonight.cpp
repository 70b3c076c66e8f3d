#include "core/plan/tonight.h"

#include "core/climate/student.h"
#include "core/home/learned_offset.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lathhouse::plan {
namespace {

constexpr int kRoomNights = 21;

/// Readings of a spot of the last three weeks.
std::vector<const home::Reading*> recent(const home::NightLog& log, home::SpotId spot, calendar::Date today)
{
    std::vector<const home::Reading*> found;
    for (const auto& reading : log.readings) {
        const int ago = calendar::days_between(reading.night, today);
        if (reading.spot == spot && ago >= 0 && ago < kRoomNights) {
            found.push_back(&reading);
        }
    }
    return found;
}

/// The low of a room from its logged lows.
struct RoomNights {
    double mean;
    double scale;
    Probability at_or_below(Celsius line) const
    {
        constexpr double kHalfReadingStep = 0.05;
        return Probability::clamped(
            climate::student5_below((line.degrees() + kHalfReadingStep - mean) / scale));
    }
};

std::optional<RoomNights> room_nights(const std::vector<const home::Reading*>& readings)
{
    if (readings.empty()) {
        return std::nullopt;
    }
    constexpr double kAddedNights = 4.0;
    constexpr double kAddedSpread = 1.5;
    const auto count = static_cast<double>(readings.size());
    double mean = 0.0;
    for (const auto* reading : readings) {
        mean += reading->low.degrees() / count;
    }
    double squares = kAddedNights * kAddedSpread * kAddedSpread;
    for (const auto* reading : readings) {
        squares += (reading->low.degrees() - mean) * (reading->low.degrees() - mean);
    }
    const double variance = squares / (kAddedNights + count - 1.0) * (1.0 + 1.0 / count);
    return RoomNights{mean, std::sqrt(variance) * climate::kUnitStudentScale};
}

/// By the low in the open, which is what frost was observed with.
LeafFrost leaf_frost(const NightAhead& ahead, const climate::NightOutlook& outlook, const home::Spot& spot)
{
    const auto kind = climate::kind_of(ahead.weather);
    if (spot.kind != home::SpotKind::Open || !ahead.forecast || kind == climate::NightKind::Other ||
        outlook.chance_at_or_below(kLeafFrostBelow) < Probability::literal(0.5)) {
        return LeafFrost::None;
    }
    return kind == climate::NightKind::ClearCalm ? LeafFrost::Likely : LeafFrost::IfClearAndCalm;
}

std::size_t group_of(climate::LeadDays lead)
{
    const auto usual = climate::ForecastErrors{};
    const auto groups = usual.groups();
    for (std::size_t at = 0; at < groups.size(); ++at) {
        if (lead <= groups[at].last) {
            return at;
        }
    }
    return groups.size(); // Beyond the last useful lead.
}

} // namespace

std::vector<NightAhead> nights_of_forecast(std::span<const home::KeptForecast> forecasts,
                                           calendar::Date today)
{
    std::map<calendar::Date, const home::KeptForecast*> latest;
    for (const auto& forecast : forecasts) {
        const int ahead = calendar::days_between(today, forecast.night);
        if (ahead < 1 || ahead > kNightsAhead || forecast.issued > today) {
            continue;
        }
        auto& known = latest[forecast.night];
        if (known == nullptr || forecast.issued >= known->issued) {
            known = &forecast;
        }
    }
    std::vector<NightAhead> nights;
    for (const auto& [night, forecast] : latest) {
        nights.push_back(
            {night, climate::ForecastLow{forecast->low, calendar::days_between(forecast->issued, night)},
             forecast->weather, forecast->dew_point});
    }
    return nights;
}

std::vector<NightPlan> plan_nights(const home::Household& as_told, const home::NightLog& log,
                                   const climate::NightModel& season, std::span<const NightAhead> nights,
                                   calendar::Date today, Probability risk, const climate::PlaceNights* by_season)
{
    const auto outcomes = home::forecast_outcomes(as_told, log, season);
    const auto errors = climate::ForecastErrors::learned(home::forecast_misses(outcomes, season));
    std::map<home::SpotId, home::LearnedOffset> offsets;
    std::map<home::SpotId, std::optional<RoomNights>> rooms;
    for (const auto& spot : as_told.spots) {
        if (home::is_outdoors(spot.kind)) {
            offsets.emplace(spot.id, home::offset_of(spot, log, season));
        } else {
            rooms.emplace(spot.id, room_nights(recent(log, spot.id, today)));
        }
    }
    const auto lethal_risk = Probability::clamped(risk.fraction() / 10.0);
    std::vector<NightPlan> plans;
    for (const NightAhead& ahead : nights) {
        const climate::NightOutlook outlook{season, calendar::DayOfYear::of(ahead.night), ahead.forecast,
                                            errors};
        NightPlan plan{ahead, outlook, {}};
        for (const auto& plant : as_told.plants) {
            const auto* spot = plant.spot ? as_told.spot(*plant.spot) : nullptr;
            if (spot == nullptr) {
                continue;
            }
            if (!home::is_outdoors(spot->kind)) {
                if (const auto& room = rooms.at(spot->id)) {
                    const auto damage = room->at_or_below(plant.lines.damage_begins);
                    plan.plants.push_back(
                        {plant.id, spot->id, damage, room->at_or_below(plant.lines.lethal), false,
                         damage > risk ? NightReason::RoomTooCold : NightReason::RoomHolds, LeafFrost::None});
                }
                continue;
            }
            const auto offset = offsets.at(spot->id).of_night(climate::kind_of(ahead.weather));
            const auto chance = [&](Celsius line) {
                return by_season != nullptr && !outlook.has_forecast()
                           ? by_season->chance_on(calendar::DayOfYear::of(ahead.night), line, offset)
                           : outlook.chance_at_or_below(line, offset);
            };
            const auto damage = chance(plant.lines.damage_begins);
            const auto lethal = chance(plant.lines.lethal);
            const auto reason = damage > risk          ? NightReason::DamageLikely
                                : lethal > lethal_risk ? NightReason::DeathLikely
                                                       : NightReason::WithinRisk;
            plan.plants.push_back({plant.id, spot->id, damage, lethal, reason != NightReason::WithinRisk,
                                   reason, leaf_frost(ahead, outlook, *spot)});
        }
        plans.push_back(std::move(plan));
    }
    return plans;
}

std::vector<ComingNight> coming_nights(const home::Household& as_told, const home::NightLog& log,
                                       const climate::NightModel& season, const climate::PlaceNights& by_season,
                                       calendar::Date today, Probability risk)
{
    NightAhead tonight{.night = today + calendar::Days{1}};
    for (const auto& ahead : nights_of_forecast(log.forecasts, today)) {
        tonight = ahead.night == tonight.night ? ahead : tonight;
    }
    const auto plans = plan_nights(as_told, log, season, std::span{&tonight, 1}, today, risk, &by_season);
    const auto& plan = plans.front();
    std::vector<ComingNight> nights;
    for (const auto& of : plan.plants) {
        const auto& spot = *as_told.spot(of.spot);
        if (home::is_outdoors(spot.kind)) {
            const auto offset = home::offset_of(spot, log, season).of_night(climate::kind_of(tonight.weather));
            nights.push_back({of, plan.outlook.quantile(Probability::literal(0.5), offset), tonight.forecast.has_value()});
        }
    }
    return nights;
}

std::vector<RoomRemark> room_remarks(const home::Household& household, const home::NightLog& log,
                                     calendar::Date today)
{
    std::vector<RoomRemark> remarks;
    for (const auto& plant : household.plants) {
        const auto* spot = plant.spot ? household.spot(*plant.spot) : nullptr;
        if (spot == nullptr || home::is_outdoors(spot->kind)) {
            continue;
        }
        const auto readings = recent(log, spot->id, today);
        if (readings.empty()) {
            continue;
        }
        const auto* coldest = *std::ranges::min_element(readings, {}, [](const auto* of) { return of->low; });
        if (coldest->low <= plant.lines.safe_night) {
            const bool damages = coldest->low <= plant.lines.damage_begins;
            remarks.push_back({plant.id, spot->id, damages ? RoomTrouble::AtDamage : RoomTrouble::AtSafeNight,
                               coldest->low, coldest->night,
                               damages ? plant.lines.damage_begins : plant.lines.safe_night});
        }
        const auto* hottest = *std::ranges::max_element(
            readings, {}, [](const auto* of) { return of->high.value_or(home::kColdestLogged); });
        if (hottest->high && *hottest->high >= plant.heat_limit) {
            remarks.push_back({plant.id, spot->id, RoomTrouble::AtHeatLimit, *hottest->high, hottest->night,
                               plant.heat_limit});
        }
    }
    return remarks;
}

ForecastRecord forecast_record(const home::Household& as_told, const home::NightLog& log,
                               const climate::NightModel& season)
{
    const auto outcomes = home::forecast_outcomes(as_told, log, season);
    const auto misses = home::forecast_misses(outcomes, season);
    ForecastRecord record{climate::ForecastErrors::learned(misses), {}};
    climate::ForecastErrors before; // Only what was known before a night may speak for it.
    for (std::size_t at = 0; at < outcomes.size(); ++at) {
        const auto lead = misses[at].lead;
        if (at > 0 && outcomes[at - 1].forecast->night < outcomes[at].forecast->night) {
            before = climate::ForecastErrors::learned(std::span{misses}.first(at));
        }
        const auto group = group_of(lead);
        if (group >= record.scores.size()) {
            continue;
        }
        const auto day = calendar::DayOfYear::of(outcomes[at].forecast->night);
        const climate::ForecastLow forecast{outcomes[at].forecast->low, lead};
        const climate::NightOffset thermometer{KelvinDelta::from_kelvins(0.0), outcomes[at].spread};
        const auto score = [&](const climate::NightOutlook& outlook) {
            return outlook.score(outcomes[at].low, thermometer);
        };
        auto& scores = record.scores[group];
        ++scores.nights;
        scores.forecast = scores.forecast + score({season, day, forecast});
        scores.learned = scores.learned + score({season, day, forecast, before});
        scores.season = scores.season + score({season, day});
    }
    for (auto& scores : record.scores) {
        if (scores.nights > 0) {
            scores.forecast = scores.forecast / scores.nights;
            scores.learned = scores.learned / scores.nights;
            scores.season = scores.season / scores.nights;
        }
    }
    return record;
}

} // namespace lathhouse::plan
