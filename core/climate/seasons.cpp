#include "core/climate/seasons.h"

#include "core/climate/koppen.h"

#include <algorithm>

namespace lathhouse::climate {
namespace {

double three_months(const Monthly<Celsius>& mean, std::size_t from)
{
    return mean[from].degrees() + mean[(from + 1) % 12].degrees() + mean[(from + 2) % 12].degrees();
}

std::optional<Monthly<Millimetres>> known_rain(const Monthly<std::optional<Millimetres>>& rain)
{
    if (!std::ranges::all_of(rain, [](const auto& month) { return month.has_value(); })) {
        return std::nullopt;
    }
    return Monthly<Millimetres>{*rain[0], *rain[1], *rain[2], *rain[3], *rain[4],  *rain[5],
                                *rain[6], *rain[7], *rain[8], *rain[9], *rain[10], *rain[11]};
}

RainSeasons rain_seasons(const Seasons& seasons)
{
    if (!seasons.koppen) {
        return RainSeasons::Unknown;
    }
    const std::string& name = *seasons.koppen;
    const bool any_dry = std::ranges::count(seasons.dry, true) > 0;
    if (name[0] == 'B') {
        return RainSeasons::DryAllYear;
    }
    if (name[0] == 'A' || seasons.temperature == TemperatureSeasons::None) {
        return any_dry ? RainSeasons::WetAndDry : RainSeasons::RainAllYear;
    }
    return name[1] == 's'   ? RainSeasons::DrySummer
           : name[1] == 'w' ? RainSeasons::DryWinter
                            : RainSeasons::RainAllYear;
}

} // namespace

Seasons seasons_of(const MonthlyFigures& figures, const Monthly<std::optional<Millimetres>>& rain)
{
    constexpr double kIsothermal = 5.0;
    constexpr double kTropical = 18.0;
    constexpr double kDryMonth = 60.0;
    const auto mean = mean_temperatures(figures);
    const auto coldest = std::ranges::min(mean);
    const auto warmest = std::ranges::max(mean);
    Seasons seasons{.temperature = (warmest - coldest).kelvins() < kIsothermal ? TemperatureSeasons::None
                                   : coldest.degrees() >= kTropical ? TemperatureSeasons::CoolSeason
                                                                    : TemperatureSeasons::Winter,
                    .swing = warmest - coldest,
                    .rain = RainSeasons::Unknown,
                    .coldest_from = 0,
                    .warmest_from = 0,
                    .dry = {},
                    .koppen = std::nullopt};
    for (std::size_t from = 1; from < 12; ++from) {
        const double sum = three_months(mean, from);
        seasons.coldest_from = sum < three_months(mean, seasons.coldest_from) ? from : seasons.coldest_from;
        seasons.warmest_from = sum > three_months(mean, seasons.warmest_from) ? from : seasons.warmest_from;
    }
    if (const auto fall = known_rain(rain)) {
        std::ranges::transform(*fall, seasons.dry.begin(),
                               [](Millimetres month) { return month.millimetres() < kDryMonth; });
        seasons.koppen = koppen_class(mean, *fall);
    }
    seasons.rain = rain_seasons(seasons);
    return seasons;
}

} // namespace lathhouse::climate
