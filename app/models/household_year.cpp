#include "app/models/household_year.h"

#include "app/words/credits.h"
#include "app/words/plan_words.h"
#include "core/calendar/time_zone.h"
#include "core/plan/year_plan.h"
#include "core/sky/radiation.h"
#include "core/sky/sun.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>

namespace lathhouse::models {
namespace {

using calendar::DayOfYear;
using calendar::Days;

constexpr std::size_t kDays = plan::kNightsOfAPlan;
constexpr auto kFrostLine = Celsius::from_degrees(0.0);
constexpr auto kOneInTwenty = Probability::literal(0.05);

std::optional<int> minutes_of_day(const calendar::TimeZone& zone, const std::optional<calendar::Instant>& instant)
{
    if (!instant) {
        return std::nullopt;
    }
    const auto local = zone.local(*instant);
    const auto since_midnight = local - std::chrono::floor<std::chrono::days>(local);
    return static_cast<int>(std::lround(static_cast<double>(since_midnight.count()) / 60.0)) % 1440;
}

/// Daily light in the open from the month's temperature range (FAO-56 eq. 50).
DailyLight light_in_the_open(const climate::PlaceClimate& climate, calendar::Date date)
{
    const auto month = static_cast<std::size_t>(DayOfYear::of(date).month() - 1);
    const auto beyond = sky::extraterrestrial_radiation(climate.position.latitude, calendar::ordinal_of_year(date));
    return sky::daily_light(sky::radiation_from_temperature_range(beyond, climate.monthly.low[month],
                                                                  climate.monthly.high[month], sky::Setting::Inland,
                                                                  climate.elevation));
}

std::vector<YearDay> days_of(const climate::PlaceClimate& climate, const climate::NightModel& nights,
                             const climate::SeasonChances& frost, const calendar::TimeZone& zone,
                             calendar::Date today)
{
    const sky::SolarEphemeris ephemeris{today - Days{2}, today + Days{static_cast<int>(kDays) + 2}};
    std::vector<YearDay> days;
    days.reserve(kDays);
    for (std::size_t i = 0; i < kDays; ++i) {
        const auto date = today + Days{static_cast<int>(i)};
        const auto day = DayOfYear::of(date);
        const auto sun = sky::sun_day(ephemeris, climate.position, date);
        days.push_back({.date = date,
                        .low_cold = nights.quantile(day, kOneInTwenty),
                        .low_middle = nights.quantile(day, Probability::literal(0.5)),
                        .low_warm = nights.quantile(day, kOneInTwenty.complement()),
                        .frost = nights.chance_on(day, kFrostLine),
                        .frost_after = frost.after(day),
                        .day_length_minutes = static_cast<int>(std::lround(sun.day_length_seconds / 60.0)),
                        .sunrise_minutes = minutes_of_day(zone, sun.rise),
                        .sunset_minutes = minutes_of_day(zone, sun.set),
                        .light = light_in_the_open(climate, date)});
    }
    return days;
}

FrostMarks frost_marks(const climate::NightModel& nights, calendar::Date today)
{
    const auto dates = nights.dates(kFrostLine);
    FrostMarks marks;
    switch (dates.state) {
    case climate::ThresholdState::Ordinary: marks.state = FrostMarks::State::Ordinary; break;
    case climate::ThresholdState::Never: marks.state = FrostMarks::State::Never; break;
    case climate::ThresholdState::NoWindow: marks.state = FrostMarks::State::AlwaysPossible; break;
    case climate::ThresholdState::NoSeason: marks.state = FrostMarks::State::NoSeason; break;
    }
    const auto place = [&](const climate::EndDates& end, double percent) -> std::optional<std::size_t> {
        const auto found = end.dates.find(percent);
        if (marks.state != FrostMarks::State::Ordinary || found == end.dates.end() || !found->second) {
            return std::nullopt;
        }
        const auto index = calendar::days_between(today, found->second->next_on_or_after(today));
        return index < static_cast<int>(kDays) ? std::optional{static_cast<std::size_t>(index)} : std::nullopt;
    };
    marks.last_half = place(dates.last, 50.0);
    marks.last_tenth = place(dates.last, 10.0);
    marks.first_tenth = place(dates.first, 10.0);
    marks.first_half = place(dates.first, 50.0);
    return marks;
}

/// Curves of the plants at the outdoor spots, one for each line and offset that occurs.
class Curves {
public:
    Curves(const plan::ColdChances& chances, calendar::Date today) : chances_(chances), today_(today) {}

    std::size_t of(Celsius line, climate::NightOffset offset)
    {
        const auto key = std::make_tuple(line.degrees(), offset.mean.kelvins(), offset.spread.kelvins());
        const auto [known, added] = places_.emplace(key, curves_.size());
        if (added) {
            const auto& season = chances_.season(line, offset);
            HarmCurve curve;
            for (std::size_t i = 0; i < kDays; ++i) {
                const auto day = DayOfYear::of(today_ + Days{static_cast<int>(i)});
                curve.after.push_back(season.after(day).fraction());
                curve.before.push_back(season.on_or_before(day).fraction());
            }
            curves_.push_back(std::move(curve));
        }
        return known->second;
    }
    std::vector<HarmCurve> take() { return std::move(curves_); }

private:
    const plan::ColdChances& chances_;
    calendar::Date today_;
    std::map<std::tuple<double, double, double>, std::size_t> places_;
    std::vector<HarmCurve> curves_;
};

std::string hazard_of(const home::Plant& plant)
{
    if (!plant.hazardous) {
        return {};
    }
    const auto kind = plants::PlantReference::built_in().find(plant.kind);
    return kind && !(*kind)->hazards.empty() ? (*kind)->hazards : "can hurt children or animals";
}

SolvedYear solved(const plan::YearPlan& plan, const home::Household& household, calendar::Date today,
                  words::UnitSystem units)
{
    SolvedYear year{{}, plan.gap};
    for (const auto& plant : plan.plants) {
        std::vector<YearStay> stays;
        for (const auto& stay : plant.stays) {
            const auto spot = std::ranges::find(household.spots, stay.spot, &home::Spot::id);
            stays.push_back({.spot = static_cast<std::size_t>(spot - household.spots.begin()),
                             .first = calendar::days_between(today, stay.from),
                             .last = calendar::days_between(today, stay.to),
                             .ladder_days = 0,
                             .why = words::why(stay.why, units),
                             .risk_out = stay.risk_out,
                             .risk_in = stay.risk_in});
        }
        year.stays.push_back(std::move(stays));
    }
    return year;
}

} // namespace

Result<HouseholdYear> household_year(const home::Household& household, const climate::PlaceClimate& climate,
                                     calendar::Date today, words::UnitSystem units)
{
    const auto zone = calendar::TimeZone::named(household.place.time_zone);
    if (!zone) {
        return zone.error();
    }
    // The solver outlives this call and keeps its own copies; one call at a time uses the cache.
    const auto chances = std::make_shared<const plan::ColdChances>(climate.nights());
    const auto& nights = chances->nights();
    const auto& frost = chances->season(kFrostLine, {});

    YearData data{.household = household.name,
                  .place = household.place.name,
                  .demonstration = household.demonstration,
                  .today = today,
                  .turn = nights.turn().last_day(),
                  .days = days_of(climate, nights, frost, *zone, today),
                  .frost = frost_marks(nights, today),
                  .spots = {},
                  .plants = {},
                  .curves = {},
                  .sheltered = {},
                  .stations = climate.stations.size(),
                  .nearest_kilometres = 0.0,
                  .farthest_kilometres = 0.0,
                  .base_period = {},
                  .expected_error_days = climate.expected_error_days,
                  .credits = {words::credits(climate)},
                  .warnings = climate.warnings};
    if (!climate.stations.empty()) {
        const auto [nearest, farthest] =
            std::ranges::minmax(climate.stations, {}, &climate::StationInUse::distance);
        data.nearest_kilometres = nearest.distance.kilometres();
        data.farthest_kilometres = farthest.distance.kilometres();
        const auto& base = climate.stations.front().station->base;
        data.base_period = std::to_string(base.first_year) + "\u2013" + std::to_string(base.last_year);
    }

    constexpr std::size_t kSpotColours = 8;
    // Colours by what the spot is where that leaves each its own; look: slats are roofed, posts open.
    std::vector<bool> taken(kSpotColours, false);
    const auto colour_for = [&](home::SpotKind kind, std::size_t index) {
        const std::size_t roofed = 3;
        const std::size_t open = 4;
        std::size_t wanted = kind == home::SpotKind::Indoors ? 0 : kind == home::SpotKind::Open ? open : roofed;
        for (std::size_t step = 0; step < kSpotColours; ++step, wanted = (wanted + 1) % kSpotColours) {
            const bool outdoor_hand = wanted == roofed || wanted == open;
            if (!taken[wanted] && (outdoor_hand == home::is_outdoors(kind) || step >= kSpotColours - 2)) {
                taken[wanted] = true;
                return wanted;
            }
        }
        return index % kSpotColours;
    };
    for (std::size_t i = 0; i < household.spots.size(); ++i) {
        const auto& spot = household.spots[i];
        const bool outdoors = home::is_outdoors(spot.kind);
        data.spots.push_back({spot.name, spot.short_name.empty() ? spot.name : spot.short_name, outdoors,
                              outdoors ? std::optional{spot.offset.mean} : std::nullopt, colour_for(spot.kind, i)});
    }
    Curves curves{*chances, today};
    for (const auto& plant : household.plants) {
        YearPlant shown{plant.name, hazard_of(plant), plant.lines.damage_begins, {}};
        for (const auto& spot : household.spots) {
            shown.curves.push_back(home::is_outdoors(spot.kind)
                                       ? std::optional{curves.of(plant.lines.damage_begins, spot.offset)}
                                       : std::nullopt);
        }
        data.plants.push_back(std::move(shown));
    }
    data.curves = curves.take();

    const auto porch = std::ranges::max_element(household.spots, {}, [](const home::Spot& spot) {
        return home::is_outdoors(spot.kind) ? spot.capacity : -1;
    });
    if (porch != household.spots.end() && home::is_outdoors(porch->kind)) {
        ShelteredNights sheltered{static_cast<std::size_t>(porch - household.spots.begin()), {}, {}};
        const auto& season = chances->season(kFrostLine, porch->offset);
        for (const auto& day : data.days) {
            sheltered.low_middle.push_back(day.low_middle + porch->offset.mean);
            sheltered.frost_after.push_back(season.after(DayOfYear::of(day.date)));
        }
        data.sheltered = std::move(sheltered);
    }

    const auto solver = [household, climate, chances, today, units](Probability risk) {
        return solved(plan::plan_year(household, climate, *chances, today, risk), household, today, units);
    };
    return HouseholdYear{std::move(data), solver};
}

} // namespace lathhouse::models
