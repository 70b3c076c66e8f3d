#include "core/climate/season_turn.h"

#include <algorithm>

namespace lathhouse::climate {

SeasonTurn SeasonTurn::of_lows(const Monthly<Celsius>& mean_low)
{
    const double december_to_february =
        mean_low[11].degrees() + mean_low[0].degrees() + mean_low[1].degrees();
    const double june_to_august = mean_low[5].degrees() + mean_low[6].degrees() + mean_low[7].degrees();
    constexpr int kEndOfJanuary = 31;
    constexpr int kEndOfJuly = 213;
    return SeasonTurn{
        calendar::DayOfYear::wrapped(december_to_february > june_to_august ? kEndOfJanuary : kEndOfJuly)};
}

bool has_no_season(const Monthly<Celsius>& mean_low)
{
    const auto [lowest, highest] = std::ranges::minmax(mean_low);
    return highest - lowest < KelvinDelta::from_kelvins(2.0);
}

} // namespace lathhouse::climate
