#include "core/home/spot_climate.h"

#include "core/calendar/day_of_year.h"
#include "core/climate/figures.h"
#include "core/climate/month_curve.h"
#include "core/home/spot_light.h"
#include "core/sky/evapotranspiration.h"
#include "core/sky/radiation.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace lathhouse::home {
namespace {

constexpr auto kUsualRoom = Celsius::from_degrees(17.0); // Night low of a room that nobody has described.
constexpr double kDayOverNight = 3.0;  // Of a room, kelvins.
constexpr double kDaysOfALog = 30.0;   // A logged night speaks for the room that long.
constexpr int kNorthernSolstice = 173; // 21 June.

template <class T, class Number>
climate::DailyCurve curve_of(const climate::Monthly<T>& months, Number number)
{
    climate::Monthly<double> values{};
    std::ranges::transform(months, values.begin(), number);
    return climate::curve_through_months(values);
}

} // namespace

double summer_share(Latitude latitude, calendar::DayOfYear day)
{
    const int peak = latitude.degrees() >= 0.0 ? kNorthernSolstice : kNorthernSolstice + 183;
    return 0.5 * (1.0 + std::cos(2.0 * std::numbers::pi * (day.place() - peak) / 366.0));
}

std::optional<Celsius> room_low(const Spot& spot, Latitude latitude, calendar::DayOfYear day)
{
    if (!spot.winter || !spot.summer) {
        return spot.winter ? spot.winter : spot.summer;
    }
    return *spot.winter + (*spot.summer - *spot.winter) * summer_share(latitude, day);
}

SpotClimate::SpotClimate(const Household& household, const climate::PlaceClimate& climate,
                         const NightLog& log)
{
    const auto latitude = climate.position.latitude;
    const auto celsius = [](Celsius value) { return value.degrees(); };
    const auto low = curve_of(climate.monthly.low, celsius);
    const auto high = curve_of(climate.monthly.high, celsius);
    const YearOfSky sky{climate};
    const auto open = curve_of(climate::months_of_light(climate.monthly, climate.position, climate.elevation),
                               [](const climate::MonthOfLight& month) { return month.daily_light.moles(); });
    const auto& months = climate::month_of_places();
    for (const auto& spot : household.spots) {
        const bool outdoors = is_outdoors(spot.kind);
        const auto light =
            curve_of(spot_light(spot, sky), [](DailyLight of) { return of.moles(); });
        std::vector<SpotDay> days;
        days.reserve(366);
        for (int place = 1; place <= 366; ++place) {
            const auto at = static_cast<std::size_t>(place - 1);
            const int ordinal = std::min(place, 365);
            const auto month = static_cast<std::size_t>(months[at]);
            const double moles = std::max(0.0, light[at]);
            const double share = open[at] > 0.0 ? std::clamp(moles / open[at], 0.25, 1.0) : 0.25;
            const auto demand = sky::hargreaves_evapotranspiration(
                Celsius::from_degrees(low[at]), Celsius::from_degrees(std::max(high[at], low[at])),
                sky::extraterrestrial_radiation(latitude, ordinal));
            double night = low[at] + spot.offset.mean.kelvins();
            double day = std::max(high[at], night);
            auto rain = Millimetres::from_millimetres(0.0);
            if (!outdoors) {
                night = room_low(spot, latitude, calendar::DayOfYear::wrapped(place)).value_or(kUsualRoom).degrees();
                night = std::max(night, low[at]);
                day = std::max(night + kDayOverNight, high[at] - 2.0);
            } else if (spot.kind == SpotKind::Open && climate.rain[month]) {
                rain = *climate.rain[month] /
                       static_cast<double>(calendar::days_in_month_of_leap_year(static_cast<int>(month) + 1));
            }
            days.push_back({.low = Celsius::from_degrees(night),
                            .high = Celsius::from_degrees(day),
                            .light = DailyLight::from_moles(moles),
                            .day_length_hours = sky::daylight_hours(latitude, ordinal),
                            .rain = rain,
                            .water_demand = demand * (outdoors ? share : std::min(share, 0.5)),
                            .outdoors = outdoors});
        }
        std::vector<std::pair<calendar::Date, double>> logged;
        if (!outdoors) {
            for (const auto& reading : log.readings) {
                if (reading.spot == spot.id) {
                    const auto at = static_cast<std::size_t>(calendar::DayOfYear::of(reading.night).place() - 1);
                    logged.emplace_back(reading.night, (reading.low - days[at].low).kelvins());
                }
            }
        }
        spots_.push_back({spot.id, spot.kind, std::move(days), std::move(logged)});
    }
}

SpotDay SpotClimate::on(SpotId spot, calendar::Date date) const
{
    const auto of = std::ranges::find(spots_, spot, &OfSpot::id);
    assert(of != spots_.end());
    auto day = of->days[static_cast<std::size_t>(calendar::DayOfYear::of(date).place() - 1)];
    double sum = 0.0;
    int count = 0;
    for (const auto& [night, difference] : of->logged) {
        if (std::abs(calendar::days_between(night, date)) <= kDaysOfALog) {
            sum += difference;
            ++count;
        }
    }
    if (count > 0) {
        const auto shift = KelvinDelta::from_kelvins(sum / count);
        day.low = day.low + shift;
        day.high = day.high + shift;
    }
    return day;
}

} // namespace lathhouse::home
