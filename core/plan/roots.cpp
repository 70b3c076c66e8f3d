#include "core/plan/roots.h"

#include "core/growth/temperature_response.h"
#include "core/plan/growing_rules.h"
#include "core/plan/growth_index.h"
#include "core/plan/whereabouts.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr double kZone = 10.0 / 1.8; // A hardiness zone is 10 F.
constexpr double kSmallPot = 5.0;    // Litres.
constexpr double kLargePot = 20.0;   // Litres.
constexpr double kFullLight = 40.0;  // Moles.
constexpr double kLargePotShare = 0.6;

/// 0 for a small pot, 1 for a large one.
double largeness(Litres volume)
{
    return std::clamp((volume.litres() - kSmallPot) / (kLargePot - kSmallPot), 0.0, 1.0);
}

/// The middle of the longest run of winter days of the year from `from` on, as if years were alike.
std::optional<Date> middle_of_winter(const RestingSeasons& seasons, Date from)
{
    if (!seasons.has_winter()) {
        return std::nullopt;
    }
    int longest = 0;
    std::optional<Date> middle;
    int run = 0;
    // Twice round, so that a winter that has begun is seen whole.
    for (int day = 0; day < 2 * kNightsOfAPlan; ++day) {
        const auto date = from + Days{day};
        run = seasons.is_winter(date) ? run + 1 : 0;
        if (run > longest && run <= kNightsOfAPlan) {
            longest = run;
            middle = date - Days{run / 2};
        }
    }
    return middle && *middle >= from + Days{kNightsOfAPlan} ? *middle - Days{kNightsOfAPlan} : middle;
}

} // namespace

Celsius root_cold_line(Celsius lethal, Litres volume)
{
    const auto* zones = GrowingRules::built_in().find("roots_zones");
    const double penalty = kZone * (*zones->high + (*zones->low - *zones->high) * largeness(volume));
    const auto borne = Celsius::from_degrees(growing_figure("roots_air"));
    return std::max(lethal, std::min(lethal + KelvinDelta::from_kelvins(penalty), borne));
}

Celsius hottest_mix(const home::SpotDay& day, home::PotShade shade, Litres volume)
{
    const double lighter = shade == home::PotShade::Dark    ? 0.0
                           : shade == home::PotShade::Light ? 1.0
                                                            : 0.5;
    const double full = growing_figure("pot_dark_excess") - lighter * growing_figure("pot_light_less");
    const double light = std::min(1.0, day.light.moles() / kFullLight);
    const double size = 1.0 + (kLargePotShare - 1.0) * largeness(volume);
    return day.high + KelvinDelta::from_kelvins(full * light * size);
}

HeatOnRoots heat_on_roots(Celsius mix)
{
    const auto above = [&](const char* rule) { return mix.degrees() >= growing_figure(rule); };
    return above("roots_injury") ? HeatOnRoots::Harms
           : above("roots_stop") ? HeatOnRoots::Stops
           : above("roots_slow") ? HeatOnRoots::Slows
                                 : HeatOnRoots::None;
}

WinterQuarters winter_quarters(const plants::PlantKind& kind, DailyLight light_to_thrive,
                               const home::SpotDay& usual)
{
    const auto cardinal = growth::cardinal_temperatures(kind);
    const bool cool = usual.mean() <= cardinal.base + (cardinal.optimum - cardinal.base) * 0.5;
    const bool dim = usual.light < light_to_thrive * 0.5;
    if (cool) {
        return dim ? WinterQuarters::CoolAndDim : WinterQuarters::CoolAndBright;
    }
    return dim ? WinterQuarters::WarmAndDim : WinterQuarters::WarmAndBright;
}

std::vector<RootsOfPlant> roots_of_year(const home::Household& household,
                                        const climate::PlaceClimate& climate, const home::SpotClimate& spots,
                                        std::span<const PlantYear> stays, Date from)
{
    const RestingSeasons seasons{climate};
    const auto winter = middle_of_winter(seasons, from);
    const auto lowest = climate.lowest_nights().mean;
    std::vector<RootsOfPlant> roots;
    for (const auto& plant : household.plants) {
        const auto planned = std::ranges::find(stays, plant.id, &PlantYear::plant);
        const Whereabouts whereabouts{plant, {},
                                      planned == stays.end() ? std::span<const Stay>{} : planned->stays, from};
        const auto size = pot_size(plant);
        RootsOfPlant of{plant.id, size, root_cold_line(plant.lines.lethal, size.volume), {}, {}, {}};
        const auto spot_on = [&](Date date) -> const home::Spot* {
            const auto id = whereabouts.on(date);
            return id ? household.spot(*id) : nullptr;
        };
        for (int day = 0; day < kNightsOfAPlan; ++day) {
            const auto date = from + Days{day};
            const auto* spot = spot_on(date);
            if (spot == nullptr || !home::is_outdoors(spot->kind)) {
                continue;
            }
            const auto mix = hottest_mix(spots.on(spot->id, date), plant.pot_shade, size.volume);
            const auto effect = heat_on_roots(mix);
            if (effect != HeatOnRoots::None && (!of.heat || mix > of.heat->mix)) {
                of.heat = RootsOfPlant::Heat{spot->id, date, mix, effect};
            }
        }
        if (winter) {
            if (const auto* spot = spot_on(*winter)) {
                const auto usual = spots.on(spot->id, *winter);
                if (const auto* kind = kind_of(plant)) {
                    of.winter = RootsOfPlant::Winter{spot->id,
                                                     *winter,
                                                     usual.mean(),
                                                     usual.light,
                                                     winter_quarters(*kind, plant.light_to_thrive, usual),
                                                     plants::rest_habit(*kind).cool};
                }
                const auto coldest = lowest + spot->offset.mean;
                if (usual.outdoors && coldest <= of.cold_line) {
                    of.cold = RootsOfPlant::Cold{spot->id, coldest};
                }
            }
        }
        roots.push_back(of);
    }
    return roots;
}

} // namespace lathhouse::plan
