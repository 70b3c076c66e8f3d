#include "core/home/light_spread.h"

#include "core/sky/daily_clearness.h"
#include "core/sky/radiation.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::home {
namespace {

constexpr std::array<int, 12> kDaysBeforeMonth{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
constexpr std::array<int, 3> kDaysThatStand{5, 15, 25};
constexpr std::size_t kCloudsOfDay = 20;
using DaysOfMonth = std::array<double, kDaysThatStand.size() * kCloudsOfDay>;

/// Light on the level leaf of a day so clear.
///
/// What a spot gets is a sum of the sky's part and the Sun's, each in proportion; a day that is all sky shows
/// the one, the rest of the mean day so clear the other.
class LightOfClouds {
public:
    LightOfClouds(const sky::SpotOptics& optics, Latitude latitude, int ordinal)
        : optics_(optics), latitude_(latitude), ordinal_(ordinal),
          above_(sky::extraterrestrial_radiation(latitude, ordinal)),
          sunset_(sky::fao56_sun(latitude, ordinal).sunset_hour_angle)
    {
        constexpr double kAllSky = 1e-6; // So dull that no Sun is left.
        const sky::MeanDay dull{latitude_, ordinal_, kAllSky * above_};
        const double level = dull.global().megajoules();
        of_sky_ = level > 0.0 ? optics_.on(dull).level.megajoules() / level : 0.0;
    }

    double moles(double clearness) const
    {
        const sky::MeanDay day{latitude_, ordinal_, clearness * above_};
        const double global = day.global().megajoules();
        const double from_sky = day.diffuse().megajoules();
        if (!(global > from_sky)) {
            return sky::daily_light(DailyRadiation::from_megajoules(of_sky_ * global)).moles();
        }
        const double of_sun = (optics_.on(day).level.megajoules() - of_sky_ * from_sky) / (global - from_sky);
        const double share = sky::diffuse_share_of_day(clearness, sunset_);
        return sky::daily_light(
                   DailyRadiation::from_megajoules(global * (share * of_sky_ + (1.0 - share) * of_sun)))
            .moles();
    }

private:
    const sky::SpotOptics& optics_;
    Latitude latitude_;
    int ordinal_;
    DailyRadiation above_;
    Angle sunset_;
    double of_sky_ = 0.0; ///< Light at the leaf for light 1 on the level, all of it from the sky.
};

/// Between the middles of the days in order. share: 0..1.
double of_order(const DaysOfMonth& days, double share)
{
    const double last = static_cast<double>(days.size() - 1);
    const double place = std::clamp(share * static_cast<double>(days.size()) - 0.5, 0.0, last);
    const double below = std::floor(place);
    const auto at = static_cast<std::size_t>(below);
    return std::lerp(days[at], days[std::min(at + 1, days.size() - 1)], place - below);
}

DaysAtSpot alike(DailyLight light)
{
    return {light, light, light};
}

} // namespace

climate::Monthly<DaysAtSpot> days_at(const sky::SpotView& view, const YearOfSky& year)
{
    const sky::SpotOptics optics{view};
    const auto mean = months_at(view, year);
    auto months = climate::in_every_month(alike(DailyLight::from_moles(0.0)));
    for (std::size_t m = 0; m < months.size(); ++m) {
        DaysOfMonth days{};
        double sum = 0.0;
        for (std::size_t day = 0; day < kDaysThatStand.size(); ++day) {
            const int ordinal = kDaysBeforeMonth[m] + kDaysThatStand[day];
            const double above = sky::extraterrestrial_radiation(year.latitude(), ordinal).megajoules();
            const double global = year.months()[m].days[day].global().megajoules();
            const sky::DailyClearness clouds{above > 0.0 ? global / above : 0.0};
            const LightOfClouds light{optics, year.latitude(), ordinal};
            for (std::size_t cloud = 0; cloud < kCloudsOfDay; ++cloud) {
                const auto share = Probability::clamped((static_cast<double>(cloud) + 0.5) / kCloudsOfDay);
                const double moles = light.moles(clouds.at(share));
                days[day * kCloudsOfDay + cloud] = moles;
                sum += moles / static_cast<double>(days.size());
            }
        }
        std::ranges::sort(days);
        const double scale = sum > 0.0 ? mean[m].level.moles() / sum : 0.0;
        const auto light = [&](double share) {
            return DailyLight::from_moles(scale * of_order(days, share));
        };
        months[m] = {light(0.05), light(0.5), light(0.95)};
    }
    return months;
}

std::optional<climate::Monthly<DaysAtSpot>> light_spread(const Spot& spot, const YearOfSky& year)
{
    if (spot.view) {
        return days_at(*spot.view, year);
    }
    if (!(spot.light_in_summer > spot.light_in_winter)) {
        return std::nullopt;
    }
    const auto view = sky::SpotView::of({.shelter = sky::Shelter::OpenSky});
    const auto open = months_at(*view, year);
    const auto days = days_at(*view, year);
    const auto mean = spot_light(spot, year);
    auto months = climate::in_every_month(alike(DailyLight::from_moles(0.0)));
    for (std::size_t m = 0; m < months.size(); ++m) {
        const double level = open[m].level.moles();
        const auto as_in_the_open = [&](DailyLight light) { return mean[m] * (light.moles() / level); };
        months[m] = level > 0.0 ? DaysAtSpot{as_in_the_open(days[m].dark), as_in_the_open(days[m].middle),
                                             as_in_the_open(days[m].bright)}
                                : alike(mean[m]);
    }
    return months;
}

} // namespace lathhouse::home
