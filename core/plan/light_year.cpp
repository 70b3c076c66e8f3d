#include "core/plan/light_year.h"

#include "core/home/spot_light.h"
#include "core/plan/stress.h"

#include <cmath>
#include <numeric>
#include <optional>

namespace lathhouse::plan {

namespace {

/// A month's figure carried to the day by straight lines between the middles of the months.
double between_months(const climate::Monthly<DailyLight>& months, calendar::DayOfYear day)
{
    const double middle = 0.5 * calendar::days_in_month_of_leap_year(day.month());
    const bool later = day.day() - 0.5 >= middle;
    const int other = later ? day.month() % 12 + 1 : (day.month() + 10) % 12 + 1;
    const double half_other = 0.5 * calendar::days_in_month_of_leap_year(other);
    const double share = std::abs(day.day() - 0.5 - middle) / (middle + half_other);
    const auto at = [&](int month) { return months[static_cast<std::size_t>(month - 1)].moles(); };
    return (1.0 - share) * at(day.month()) + share * at(other);
}

} // namespace

DailyLight LightYear::on(calendar::DayOfYear day) const
{
    return DailyLight::from_moles(moles_[static_cast<std::size_t>(day.index())]);
}

DailyLight LightYear::mean() const
{
    return DailyLight::from_moles(std::accumulate(moles_.begin(), moles_.end(), 0.0) /
                                  static_cast<double>(moles_.size()));
}

std::vector<LightYear> light_of_spots(std::span<const home::Spot> spots, const climate::PlaceClimate& climate)
{
    std::optional<home::YearOfSky> sky; // Worked out for the first spot that needs it.
    std::vector<LightYear> years;
    for (const home::Spot& spot : spots) {
        LightYear year;
        std::optional<climate::Monthly<DailyLight>> months;
        if (spot.view) {
            if (!sky) {
                sky.emplace(climate);
            }
            months = home::spot_light(spot, *sky);
        }
        for (int place = 1; place <= calendar::DayOfYear::kCount; ++place) {
            const auto day = calendar::DayOfYear::wrapped(place);
            year.moles_[static_cast<std::size_t>(day.index())] =
                months ? between_months(*months, day)
                       : light_at(spot, climate.position.latitude, day).moles();
        }
        years.push_back(year);
    }
    return years;
}

} // namespace lathhouse::plan
