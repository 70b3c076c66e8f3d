#include "core/home/spot_light.h"

#include "core/climate/figures.h"
#include "core/sky/radiation.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::home {
namespace {

constexpr std::array<int, 12> kDaysBefore{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
constexpr std::array<int, 3> kDaysOfMonth{5, 15, 25};

YearOfSky::Month month_of(Latitude latitude, std::size_t month, DailyRadiation mean)
{
    const auto ordinal = [&](std::size_t day) { return kDaysBefore[month] + kDaysOfMonth[day]; };
    double above = 0.0;
    double possible = 0.0;
    for (std::size_t day = 0; day < kDaysOfMonth.size(); ++day) {
        above += sky::extraterrestrial_radiation(latitude, ordinal(day)).megajoules() / 3.0;
        possible += sky::daylight_hours(latitude, ordinal(day)) / 3.0;
    }
    // The month's clearness holds for each of its days.
    const double clearness = above > 0.0 ? mean.megajoules() / above : 0.0;
    const auto day_of = [&](std::size_t day) {
        return sky::MeanDay{latitude, ordinal(day),
                            clearness * sky::extraterrestrial_radiation(latitude, ordinal(day))};
    };
    const double shining = possible > 0.0 ? std::clamp((clearness - 0.25) / 0.5, 0.0, 1.0) : 0.0;
    return {{day_of(0), day_of(1), day_of(2)}, shining};
}

} // namespace

YearOfSky::YearOfSky(const climate::PlaceClimate& climate)
    : YearOfSky(climate.position.latitude,
                climate::months_of_radiation(climate.monthly, climate.position.latitude, climate.elevation))
{
}

YearOfSky::YearOfSky(Latitude latitude, const climate::Monthly<DailyRadiation>& radiation)
    : latitude_(latitude), months_{
                               month_of(latitude, 0, radiation[0]),   month_of(latitude, 1, radiation[1]),
                               month_of(latitude, 2, radiation[2]),   month_of(latitude, 3, radiation[3]),
                               month_of(latitude, 4, radiation[4]),   month_of(latitude, 5, radiation[5]),
                               month_of(latitude, 6, radiation[6]),   month_of(latitude, 7, radiation[7]),
                               month_of(latitude, 8, radiation[8]),   month_of(latitude, 9, radiation[9]),
                               month_of(latitude, 10, radiation[10]), month_of(latitude, 11, radiation[11])}
{
}

climate::Monthly<MonthAtSpot> months_at(const sky::SpotView& view, const YearOfSky& year)
{
    const sky::SpotOptics optics{view};
    auto months = climate::in_every_month(
        MonthAtSpot{DailyLight::from_moles(0.0), DailyLight::from_moles(0.0), 0.0, 0.0});
    for (std::size_t m = 0; m < months.size(); ++m) {
        for (const auto& day : year.months()[m].days) {
            const auto light = optics.on(day);
            months[m].level = months[m].level + sky::daily_light(light.level) / 3.0;
            months[m].facing = months[m].facing + sky::daily_light(light.facing) / 3.0;
            months[m].direct_sun_hours += light.sun_hours / 3.0;
        }
        months[m].likely_sun_hours = months[m].direct_sun_hours * year.months()[m].shining;
    }
    return months;
}

sky::SpotFigures usual_view(SpotKind kind, std::optional<Angle> facing)
{
    sky::SpotFigures view;
    view.facing = facing.value_or(view.facing);
    switch (kind) {
    case SpotKind::Indoors:
        view.panes = 2;
        view.passes = 0.9;
        break;
    case SpotKind::Open:
        view.shelter = sky::Shelter::OpenSky;
        view.behind = Angle::from_degrees(facing ? 60.0 : 0.0);
        break;
    case SpotKind::Roofed:
    case SpotKind::Screened:
        view.width = Metres::from_metres(4.0);
        view.height = Metres::from_metres(2.2);
        view.sill = Metres::from_metres(-0.3);
        view.distance = Metres::from_metres(0.6);
        view.passes = kind == SpotKind::Screened ? 0.7 : 1.0;
        break;
    case SpotKind::Glazed:
        view.shelter = sky::Shelter::OpenSky;
        view.panes = 1;
        view.passes = 0.85;
        break;
    }
    return view;
}

climate::Monthly<DailyLight> spot_light(const Spot& spot, const YearOfSky& year)
{
    auto months = climate::in_every_month(spot.light_in_winter);
    if (spot.view) {
        const auto seen = months_at(*spot.view, year);
        std::ranges::transform(seen, months.begin(), &MonthAtSpot::level);
        return months;
    }
    constexpr int kNorthernSolstice = 172; // 21 June.
    const int longest = year.latitude().degrees() >= 0.0 ? kNorthernSolstice : kNorthernSolstice + 183;
    for (std::size_t m = 0; m < months.size(); ++m) {
        const double angle = 2.0 * std::numbers::pi * (kDaysBefore[m] + 15 - longest) / 365.0;
        const double summer = 0.5 * (1.0 + std::cos(angle));
        months[m] = spot.light_in_summer * summer + spot.light_in_winter * (1.0 - summer);
    }
    return months;
}

} // namespace lathhouse::home
