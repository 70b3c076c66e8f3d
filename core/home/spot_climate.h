#pragma once

#include "core/calendar/date.h"
#include "core/calendar/day_of_year.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"
#include "core/home/thermometer.h"

#include <optional>
#include <utility>
#include <vector>

namespace lathhouse::home {

/// Where the season stands between the shortest day (0) and the longest (1), by a cosine.
double summer_share(Latitude latitude, calendar::DayOfYear day);
/// Usual night low of a room, between its winter and its summer figure by that share; nullopt where the household
/// does not say.
std::optional<Celsius> room_low(const Spot& spot, Latitude latitude, calendar::DayOfYear day);

/// What a usual day of a date is like at a spot.
struct SpotDay {
    Celsius low;
    Celsius high;
    DailyLight light;        ///< On a level leaf.
    double day_length_hours; ///< Outdoors; lamps are not counted.
    Millimetres rain;        ///< That falls into the pots; 0 under any roof and indoors.
    /// Reference evapotranspiration of the open air, brought down to the spot's share of the open light.
    Millimetres water_demand;
    bool outdoors;

    /// Half the sum of low and high.
    Celsius mean() const { return low + (high - low) * 0.5; }
};

/// The usual year at every spot of a household: what plants feel there, day by day.
///
/// Outdoors: the place's mean low with the spot's offset, its mean high, its rain where the spot is open.
/// Indoors: the room's night low between its winter and its summer figure by the light's cosine, or 17 C where
/// the household says nothing, the day 3 K warmer; never cooler than the night outdoors, nor
/// more than 2 K cooler than the day, since rooms follow the summer (common practice, no source). Nights that were
/// logged indoors take the place of the room's figures within 30 days of them (mean difference to the usual).
/// Light: spot_light. Water: Hargreaves (FAO-56 eq. 52), by the spot's share of the open light, at least 0.25
/// of it and indoors 0.5 at most, since still air dries slowly (common practice, no source).
class SpotClimate {
public:
    SpotClimate(const Household& household, const climate::PlaceClimate& climate, const NightLog& log = {});

    /// Precondition: the spot is one of the household's.
    SpotDay on(SpotId spot, calendar::Date date) const;

private:
    struct OfSpot {
        SpotId id;
        SpotKind kind;
        std::vector<SpotDay> days; ///< 366, by place in the leap year.
        std::vector<std::pair<calendar::Date, double>> logged; ///< Difference of low to the usual, by date.
    };
    std::vector<OfSpot> spots_;
};

} // namespace lathhouse::home
