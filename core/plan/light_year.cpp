#include "core/plan/light_year.h"

#include "core/climate/month_curve.h"
#include "core/home/spot_light.h"
#include "core/plan/stress.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace lathhouse::plan {

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
        std::optional<climate::DailyCurve> curve;
        if (spot.view) {
            if (!sky) {
                sky.emplace(climate);
            }
            climate::Monthly<double> months{};
            std::ranges::transform(home::spot_light(spot, *sky), months.begin(), &DailyLight::moles);
            curve = climate::curve_through_months(months);
        }
        for (int place = 1; place <= calendar::DayOfYear::kCount; ++place) {
            const auto day = calendar::DayOfYear::wrapped(place);
            const auto at = static_cast<std::size_t>(day.index());
            year.moles_[at] =
                curve ? std::max(0.0, (*curve)[at]) : light_at(spot, climate.position.latitude, day).moles();
        }
        years.push_back(year);
    }
    return years;
}

} // namespace lathhouse::plan
