#pragma once

#include "core/calendar/date.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"

#include <vector>

namespace lathhouse::plan {

/// Light at a spot on a date: between its winter and its summer figure by the season's cosine (shortest day
/// to longest day of the hemisphere). Common practice, no source; the light model of the sky room replaces it
/// for spots that have their window described.
DailyLight light_at(const home::Spot& spot, Latitude latitude, calendar::Date date);

/// Usual night low of a room on a date, by the same cosine; nullopt where the household does not say.
std::optional<Celsius> room_low(const home::Spot& spot, Latitude latitude, calendar::Date date);

/// Discomfort of one night and the day before it, without unit: about 1 is a night that a plant should not
/// have for long, 0 is at ease. Sum of
/// - cold: 0.12 for each degree by which the night is expected to fall short of the plant's safe night;
/// - heat: 0.1 for each degree by which the day is expected to exceed its heat limit (outdoors);
/// - light: 1.1 ln(need / light) where there is too little, doubled below what the plant survives on,
///   0.9 ln(light / (8 x need)) where there is too much;
/// - rain: 0.35 x the share of wet days where the spot is open and the plant must dry.
/// Weights: those of the moves study's instances; common practice, no source. The number of wet days is taken
/// as the month's rain over 8 mm, at most all days (rule of thumb).
double stress_of(const home::Plant& plant, const home::Spot& spot, const climate::PlaceClimate& climate,
                 const climate::NightModel& nights, calendar::Date evening);

/// Trouble of carrying a plant from one spot to another on a date, in the same unit: 6 for any pot and 0.1 a
/// kilogram, three times that for plants that sulk; 1.5 more through the door, and the step in light: 1.2 a
/// doubling upwards, 0.6 downwards.
double move_cost(const home::Plant& plant, const home::Spot& from, const home::Spot& to, Latitude latitude,
                 calendar::Date date);

} // namespace lathhouse::plan
