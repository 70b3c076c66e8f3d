#pragma once

#include "core/calendar/day_of_year.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"

#include <array>
#include <span>
#include <vector>

namespace lathhouse::plan {

/// Light on a level leaf at a spot through the year.
///
/// Where the spot's window, roof or wall is described, from that view and the place's own radiation, month by
/// month (home::spot_light), by a smooth course that keeps each month's mean; else between the grower's own
/// winter and summer figure by the season's cosine (light_at).
class LightYear {
public:
    DailyLight on(calendar::DayOfYear day) const;
    DailyLight mean() const;

private:
    friend std::vector<LightYear> light_of_spots(std::span<const home::Spot> spots,
                                                 const climate::PlaceClimate& climate);
    LightYear() = default;
    std::array<double, calendar::DayOfYear::kCount> moles_{}; ///< 1 January first.
};

/// One for each spot, in their order. Takes about half a millisecond for each spot with a view.
std::vector<LightYear> light_of_spots(std::span<const home::Spot> spots,
                                      const climate::PlaceClimate& climate);

} // namespace lathhouse::plan
