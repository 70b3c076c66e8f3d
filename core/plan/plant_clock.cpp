#include "core/plan/plant_clock.h"

#include "core/home/spot_light.h"
#include "core/plan/growth_index.h"

#include <algorithm>
#include <map>
#include <utility>

namespace lathhouse::plan {
namespace {

template <class StepOn>
growth::GrowthClock clock_over(calendar::Date from, calendar::Date to, StepOn step_on)
{
    std::vector<double> steps;
    for (auto date = from; date <= std::max(from, to); date += calendar::Days{1}) {
        steps.push_back(step_on(date));
    }
    return growth::GrowthClock::of_days(from, std::move(steps));
}

} // namespace

GrowsBy grows_by_usual()
{
    return {{Celsius::from_degrees(8.0), Celsius::from_degrees(25.0), Celsius::from_degrees(35.0)},
            DailyLight::from_moles(10.0)};
}

GrowsBy grows_by(const plants::PlantKind& kind)
{
    return {growth::cardinal_temperatures(kind), kind.light_to_thrive};
}

GrowsBy grows_by(const home::Plant& plant)
{
    const auto* kind = kind_of(plant);
    auto by = kind == nullptr ? grows_by_usual() : grows_by(*kind);
    by.cardinal.maximum = std::max(plant.heat_limit, by.cardinal.optimum + KelvinDelta::from_kelvins(1.0));
    if (plant.light_to_thrive.moles() > 0.0) {
        by.good = plant.light_to_thrive;
    }
    return by;
}

double clock_step(const GrowsBy& by, const home::SpotDay& day)
{
    return growth::day_response(day.low, day.high, by.cardinal) * growth::light_response(day.light, by.good);
}

growth::GrowthClock clock_at(const GrowsBy& by, const home::SpotClimate& spots, home::SpotId spot,
                             calendar::Date from, calendar::Date to)
{
    return clock_over(from, to, [&](calendar::Date date) { return clock_step(by, spots.on(spot, date)); });
}

growth::GrowthClock clock_in_the_open(const GrowsBy& by, const climate::PlaceClimate& climate, calendar::Date from,
                                      calendar::Date to)
{
    constexpr home::SpotId kOpen = 1;
    const auto view = sky::SpotView::of(home::usual_view(home::SpotKind::Open, std::nullopt));
    home::Household household{.name = "",
                              .demonstration = false,
                              .place = {.name = "", .position = climate.position, .elevation = {}, .time_zone = ""},
                              .spots = {},
                              .plants = {}};
    household.spots.push_back({.id = kOpen,
                               .name = "",
                               .short_name = "",
                               .kind = home::SpotKind::Open,
                               .offset = {},
                               .winter = {},
                               .summer = {},
                               .light_in_summer = DailyLight::from_moles(0.0),
                               .light_in_winter = DailyLight::from_moles(0.0),
                               .capacity = 1,
                               .in_reach = false,
                               .walking_order = 1,
                               .view = *view});
    return clock_at(by, home::SpotClimate{household, climate}, kOpen, from, to);
}

std::optional<growth::GrowthClock> clock_of(const home::Plant& plant, const Whereabouts& whereabouts,
                                            const home::SpotClimate& spots, const home::NightLog& log,
                                            calendar::Date from, calendar::Date to)
{
    std::optional<home::SpotId> next;
    for (auto date = from; date <= to && !next; date += calendar::Days{1}) {
        next = whereabouts.on(date);
    }
    if (!next) {
        return std::nullopt;
    }
    std::map<std::pair<home::SpotId, calendar::Date>, const home::Reading*> readings;
    for (const auto& reading : log.readings) {
        readings[{reading.spot, reading.night}] = &reading;
    }
    const auto by = grows_by(plant);
    auto spot = *next;
    return clock_over(from, to, [&](calendar::Date date) {
        spot = whereabouts.on(date).value_or(spot);
        auto day = spots.on(spot, date);
        if (const auto read = readings.find({spot, date}); read != readings.end()) {
            day.low = read->second->low;
            day.high = std::max(read->second->high.value_or(day.high), day.low);
        }
        return clock_step(by, day);
    });
}

calendar::Date last_foreseen(const std::vector<growth::SeriesReading>& readings, calendar::Date event)
{
    constexpr int kAhead = 21;
    constexpr int kFarthest = 3660;
    int gap = 1;
    for (std::size_t at = readings.size() > 5 ? readings.size() - 5 : 1; at < readings.size(); ++at) {
        gap = std::max(gap, calendar::days_between(readings[at - 1].date, readings[at].date));
    }
    const auto last = readings.empty() ? event : std::max(readings.back().date, event);
    return last + calendar::Days{std::min(kAhead * gap, kFarthest)};
}

} // namespace lathhouse::plan
