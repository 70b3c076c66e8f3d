#include "core/plan/growth_index.h"

#include "core/calendar/day_of_year.h"
#include "core/climate/month_curve.h"
#include "core/climate/seasons.h"
#include "core/growth/temperature_response.h"
#include "core/plan/growing_rules.h"
#include "core/sky/radiation.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

constexpr double kShortDay = 9.0;      // Hours.
constexpr double kLongDay = 12.0;      // Hours.
constexpr double kLeftOfSeason = 0.4;  // On short days.
constexpr std::size_t kSeasonMonths = 3;

bool within_months(std::size_t month, std::size_t first)
{
    return (month + 12 - first) % 12 < kSeasonMonths;
}

} // namespace

RestingSeasons::RestingSeasons(const climate::PlaceClimate& climate)
{
    const auto seasons = climate::seasons_of(climate.monthly, climate.rain);
    const bool alike = seasons.temperature == climate::TemperatureSeasons::None;
    const double shortest = growing_figure("feed_day_length");
    const auto& months = climate::month_of_places();
    bool any_short = false;
    for (std::size_t at = 0; at < winter_.size(); ++at) {
        const int ordinal = std::min(static_cast<int>(at) + 1, 365);
        winter_[at] = sky::daylight_hours(climate.position.latitude, ordinal) < shortest;
        any_short = any_short || winter_[at];
        hot_[at] = !alike && within_months(static_cast<std::size_t>(months[at]), seasons.warmest_from);
    }
    if (!any_short && !alike) {
        for (std::size_t at = 0; at < winter_.size(); ++at) {
            winter_[at] = within_months(static_cast<std::size_t>(months[at]), seasons.coldest_from);
        }
    }
    has_winter_ = any_short || !alike;
}

bool RestingSeasons::is_winter(calendar::Date date) const
{
    return winter_[static_cast<std::size_t>(calendar::DayOfYear::of(date).index())];
}

bool RestingSeasons::is_hot(calendar::Date date) const
{
    return hot_[static_cast<std::size_t>(calendar::DayOfYear::of(date).index())];
}

GrowthDay growth_on(const plants::PlantKind& kind, DailyLight light_to_thrive, Celsius heat_limit,
                    const home::SpotDay& day, calendar::Date date, const RestingSeasons& seasons,
                    std::optional<Lamps> lamps)
{
    auto cardinal = growth::cardinal_temperatures(kind);
    cardinal.maximum = std::max(heat_limit, cardinal.optimum + KelvinDelta::from_kelvins(1.0));
    const bool lit = lamps && !day.outdoors;
    const auto moles = lit ? day.light + daily_light_of(lamps->flux, lamps->hours) : day.light;
    const double hours = lit ? std::max(day.day_length_hours, lamps->hours) : day.day_length_hours;
    const auto habit = plants::rest_habit(kind);

    GrowthDay grown{.temperature = growth::day_response(day.low, day.high, cardinal),
                    .light = growth::light_response(moles, light_to_thrive),
                    .season = 1.0,
                    .rest = RestReason::None,
                    .too_warm = day.mean() > cardinal.optimum,
                    .moles = moles};
    if (habit.winter == plants::WinterHabit::Slows) {
        const double share = std::clamp((hours - kShortDay) / (kLongDay - kShortDay), 0.0, 1.0);
        grown.season = kLeftOfSeason + (1.0 - kLeftOfSeason) * share;
    } else if (habit.winter == plants::WinterHabit::Rests && seasons.is_winter(date)) {
        grown.rest = RestReason::Winter;
    }
    if (habit.summer_rest && seasons.is_hot(date)) {
        grown.rest = RestReason::HotSeason;
    }
    return grown;
}

const plants::PlantKind* kind_of(const home::Plant& plant)
{
    const auto found = plants::PlantReference::built_in().find(plant.kind);
    return found ? *found : nullptr;
}

} // namespace lathhouse::plan
