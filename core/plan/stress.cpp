#include "core/plan/stress.h"

#include "core/calendar/day_of_year.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::plan {
namespace {

constexpr int kNorthernSolstice = 173; // 21 June.
constexpr double kLeastMoles = 0.05;   // Keeps the logarithms finite in a dark spot.

/// 1 on the longest day of the hemisphere, 0 on the shortest.
double summer_share(Latitude latitude, calendar::Date date)
{
    const int peak = latitude.degrees() >= 0.0 ? kNorthernSolstice : kNorthernSolstice + 183;
    const double angle = 2.0 * std::numbers::pi * (calendar::DayOfYear::of(date).place() - peak) / 366.0;
    return 0.5 * (1.0 + std::cos(angle));
}

/// Mean of max(0, x) for a normal x: the expected shortfall of a limit.
double expected_excess(double mean, double spread)
{
    if (spread <= 0.0) {
        return std::max(0.0, mean);
    }
    const double u = mean / spread;
    const double density = std::exp(-0.5 * u * u) / std::sqrt(2.0 * std::numbers::pi);
    const double below = 0.5 * std::erfc(-u / std::numbers::sqrt2);
    return mean * below + spread * density;
}

/// A month's figure carried to the day by straight lines between the middles of the months.
double daily(const climate::Monthly<Celsius>& months, calendar::Date date)
{
    const auto day = calendar::DayOfYear::of(date);
    const double middle = 0.5 * calendar::days_in_month_of_leap_year(day.month());
    const bool later = day.day() - 0.5 >= middle;
    const int other = later ? day.month() % 12 + 1 : (day.month() + 10) % 12 + 1;
    const double half_other = 0.5 * calendar::days_in_month_of_leap_year(other);
    const double share = std::fabs(day.day() - 0.5 - middle) / (middle + half_other);
    const auto at = [&](int month) { return months[static_cast<std::size_t>(month - 1)].degrees(); };
    return (1.0 - share) * at(day.month()) + share * at(other);
}

double light_stress(const home::Plant& plant, double moles)
{
    const double light = std::max(kLeastMoles, moles);
    const double need = std::max(kLeastMoles, plant.light_to_thrive.moles());
    const double least = std::max(kLeastMoles, plant.light_to_survive.moles());
    return 1.1 * std::max(0.0, std::log(need / light)) + 1.1 * std::max(0.0, std::log(least / light)) +
           0.9 * std::max(0.0, std::log(light / (8.0 * need)));
}

} // namespace

DailyLight light_at(const home::Spot& spot, Latitude latitude, calendar::Date date)
{
    const double summer = summer_share(latitude, date);
    return spot.light_in_summer * summer + spot.light_in_winter * (1.0 - summer);
}

std::optional<Celsius> room_low(const home::Spot& spot, Latitude latitude, calendar::Date date)
{
    if (!spot.winter || !spot.summer) {
        return spot.winter ? spot.winter : spot.summer;
    }
    return *spot.winter + (*spot.summer - *spot.winter) * summer_share(latitude, date);
}

double stress_of(const home::Plant& plant, const home::Spot& spot, const climate::PlaceClimate& climate,
                 const climate::NightModel& nights, calendar::Date evening)
{
    const auto latitude = climate.position.latitude;
    double stress = light_stress(plant, light_at(spot, latitude, evening).moles());
    const double safe = plant.lines.safe_night.degrees();
    if (!home::is_outdoors(spot.kind)) {
        if (const auto low = room_low(spot, latitude, evening)) {
            stress += 0.12 * expected_excess(safe - low->degrees(), 1.0);
        }
        return stress;
    }
    const auto morning = calendar::DayOfYear::of(evening + calendar::Days{1});
    const double spread = std::hypot(nights.spread(morning).kelvins(), spot.offset.spread.kelvins());
    const double low = (nights.mean_low(morning) + spot.offset.mean).degrees();
    stress += 0.12 * expected_excess(safe - low, spread);

    const auto month = static_cast<std::size_t>(calendar::DayOfYear::of(evening).month() - 1);
    const double day_spread =
        climate.monthly.mean_spread ? (*climate.monthly.mean_spread)[month].kelvins() : 3.5;
    stress +=
        0.1 * expected_excess(daily(climate.monthly.high, evening) - plant.heat_limit.degrees(), day_spread);

    if (spot.kind == home::SpotKind::Open && plant.must_dry && climate.rain[month]) {
        stress += 0.35 * std::min(1.0, climate.rain[month]->millimetres() / 8.0 / 30.0);
    }
    return stress;
}

double move_cost(const home::Plant& plant, const home::Spot& from, const home::Spot& to, Latitude latitude,
                 calendar::Date date)
{
    const double trouble = (6.0 + 0.1 * plant.pot_kilograms) * (plant.sulks ? 3.0 : 1.0);
    const double door = home::is_outdoors(from.kind) != home::is_outdoors(to.kind) ? 1.5 : 0.0;
    const double before = std::max(kLeastMoles, light_at(from, latitude, date).moles());
    const double after = std::max(kLeastMoles, light_at(to, latitude, date).moles());
    const double doublings = std::log2(after / before);
    return trouble + door + (doublings > 0.0 ? 1.2 * doublings : -0.6 * doublings);
}

} // namespace lathhouse::plan
