#include "core/plan/stress.h"

#include "core/calendar/day_of_year.h"
#include "core/home/spot_climate.h"
#include "core/plan/year_plan.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lathhouse::plan {
namespace {

constexpr double kWindStress = 0.2;
constexpr double kLeastMoles = 0.05;   // Keeps the logarithms finite in a dark spot.

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

/// Share of a normal distribution below zero.
double share_below_zero(double mean, double spread)
{
    return 0.5 * std::erfc(mean / (spread * std::numbers::sqrt2));
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

double light_stress(const StressOfYear::Needs& plant, double moles)
{
    const double light = std::max(kLeastMoles, moles);
    const double need = std::max(kLeastMoles, plant.moles_to_thrive);
    const double least = std::max(kLeastMoles, plant.moles_to_survive);
    const auto beyond = [](double ratio) { return ratio > 1.0 ? std::log(ratio) : 0.0; };
    return 1.1 * beyond(need / light) + 1.1 * beyond(least / light) + 0.9 * beyond(light / (8.0 * need));
}

} // namespace

DailyLight light_at(const home::Spot& spot, Latitude latitude, calendar::DayOfYear day)
{
    const double summer = home::summer_share(latitude, day);
    return spot.light_in_summer * summer + spot.light_in_winter * (1.0 - summer);
}

DailyLight light_at(const home::Spot& spot, Latitude latitude, calendar::Date date)
{
    return light_at(spot, latitude, calendar::DayOfYear::of(date));
}

StressOfYear::Air StressOfYear::air_of(const home::Spot& spot, const climate::PlaceClimate& climate,
                                       const climate::NightModel& nights, const LightYear& light,
                                       calendar::Date evening)
{
    const auto latitude = climate.position.latitude;
    const auto morning = calendar::DayOfYear::of(evening + calendar::Days{1});
    Air air{.moles = light.on(calendar::DayOfYear::of(evening)).moles(),
            .low = std::nullopt,
            .low_spread = 1.0,
            .high = 0.0,
            .high_spread = 0.0,
            .rain_share = 0.0,
            .warmth_outdoors = nights.mean_low(morning).degrees(),
            .open_air_spread = nights.spread(morning).kelvins(),
            .outdoors = home::is_outdoors(spot.kind),
            .windy = spot.windy};
    if (!air.outdoors) {
        if (const auto low = home::room_low(spot, latitude, calendar::DayOfYear::of(evening))) {
            air.low = low->degrees();
        }
        return air;
    }
    air.low = air.warmth_outdoors + spot.offset.mean.kelvins();
    air.low_spread = std::hypot(air.open_air_spread, spot.offset.spread.kelvins());
    const auto month = static_cast<std::size_t>(calendar::DayOfYear::of(evening).month() - 1);
    air.high = daily(climate.monthly.high, evening);
    air.high_spread = climate.monthly.mean_spread ? (*climate.monthly.mean_spread)[month].kelvins() : 3.5;
    if (spot.kind == home::SpotKind::Open && climate.rain[month]) {
        air.rain_share = std::min(1.0, climate.rain[month]->millimetres() / 8.0 / 30.0);
    }
    return air;
}

StressOfYear::Needs StressOfYear::needs_of(const home::Plant& plant)
{
    return {plant.lines.safe_night.degrees(),
            plant.heat_limit.degrees(),
            plant.light_to_thrive.moles(),
            plant.light_to_survive.moles(),
            plant.must_dry,
            plant.wants_open_air};
}

/// What one plant's limits say of the air of a night: alike at many spots, and worked out once for those that are
/// asked one after another.
class StressOfYear::Limits {
public:
    double cold(double mean, double spread) { return cold_.of(expected_excess, mean, spread); }
    double heat(double mean, double spread) { return heat_.of(expected_excess, mean, spread); }
    double mild(double mean, double spread) { return mild_.of(share_below_zero, mean, spread); }

private:
    class Kept {
    public:
        double of(double (*function)(double, double), double mean, double spread)
        {
            if (mean != mean_ || spread != spread_) {
                mean_ = mean;
                spread_ = spread;
                answer_ = function(mean, spread);
            }
            return answer_;
        }

    private:
        double mean_ = std::numeric_limits<double>::quiet_NaN(); // Equal to nothing.
        double spread_ = 0.0;
        double answer_ = 0.0;
    };
    Kept cold_;
    Kept heat_;
    Kept mild_;
};

double StressOfYear::stress(const Needs& plant, const Air& air, Limits& limits)
{
    const double safe = plant.safe_night;
    double stress = light_stress(plant, air.moles);
    if (air.low) {
        stress += 0.12 * limits.cold(safe - *air.low, air.low_spread);
    }
    if (!air.outdoors) {
        return plant.wants_open_air
                   ? stress + 0.25 * limits.mild(safe - air.warmth_outdoors, air.open_air_spread)
                   : stress;
    }
    stress += 0.1 * limits.heat(air.high - plant.heat_limit, air.high_spread);
    stress += air.windy ? kWindStress : 0.0;
    return plant.must_dry ? stress + 0.35 * air.rain_share : stress;
}

StressOfYear::StressOfYear(const home::Household& household, const climate::PlaceClimate& climate,
                           const climate::NightModel& nights, std::span<const LightYear> light,
                           calendar::Date from)
    : household_(&household), nights_(kNightsOfAPlan)
{
    air_.reserve(household.spots.size() * nights_);
    for (std::size_t spot = 0; spot < household.spots.size(); ++spot) {
        for (std::size_t night = 0; night < nights_; ++night) {
            air_.push_back(air_of(household.spots[spot], climate, nights, light[spot],
                                  from + calendar::Days{static_cast<int>(night)}));
        }
    }
}

std::vector<float> StressOfYear::of_year(std::size_t plant, std::span<const std::size_t> spots) const
{
    const Needs needs = needs_of(household_->plants[plant]);
    Limits limits;
    std::vector<float> felt;
    felt.reserve(nights_ * spots.size());
    for (std::size_t night = 0; night < nights_; ++night) {
        for (const std::size_t spot : spots) {
            felt.push_back(static_cast<float>(stress(needs, air_[spot * nights_ + night], limits)));
        }
    }
    return felt;
}

double stress_of(const home::Plant& plant, const home::Spot& spot, const climate::PlaceClimate& climate,
                 const climate::NightModel& nights, calendar::Date evening)
{
    const auto light = light_of_spots(std::span{&spot, 1}, climate);
    StressOfYear::Limits limits;
    return StressOfYear::stress(StressOfYear::needs_of(plant),
                                StressOfYear::air_of(spot, climate, nights, light.front(), evening), limits);
}

MoveZone zone_of(const home::Spot& spot, const LightYear& light)
{
    return {home::is_outdoors(spot.kind),
            static_cast<int>(std::lround(std::log2(std::max(kLeastMoles, light.mean().moles()))))};
}

double step_between(MoveZone from, MoveZone to)
{
    const double doublings = to.light - from.light;
    return (from.outdoors != to.outdoors ? 1.5 : 0.0) +
           (doublings > 0.0 ? 1.2 * doublings : -0.6 * doublings);
}

double trouble_of_carrying(const home::Plant& plant)
{
    return (6.0 + 0.1 * plant.pot_kilograms) * (plant.sulks ? 3.0 : 1.0);
}

} // namespace lathhouse::plan
