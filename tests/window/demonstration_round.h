#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/climate/place_climate.h"
#include "core/home/demonstration_photos.h"
#include "core/home/measurement.h"
#include "core/plan/round_parts.h"

#include <optional>
#include <vector>

namespace lathhouse::models {

/// What the round of the demonstration household is made of, with mealybugs found on one plant six days
/// before `today`, so that all three classes of plants are there.
Result<plan::HouseholdFacts> demonstration_facts(calendar::Date today);

/// The shipped table's climate of a place.
Result<climate::PlaceClimate> shipped_climate_at(Position position, std::optional<Metres> elevation);

/// What was measured of its plants.
std::vector<home::Measurement> demonstration_measurements(calendar::Date today);
/// Drawn pictures of its plants.
std::vector<home::DemonstrationPhoto> demonstration_pictures(calendar::Date today);
/// The same with weed-killer that drifted over two plants, so that there is growth to be judged.
plan::HouseholdFacts with_harm(plan::HouseholdFacts facts, calendar::Date today);

/// The same with a forecast of ten nights, tonight clear, calm and cold, with a thermometer log of the outdoor
/// spot, and with the three plants that mind cold most standing there.
plan::HouseholdFacts with_cold_night(plan::HouseholdFacts facts, calendar::Date today);
/// The same with four lots of seed: one counted, one with a tray that is waited for, one of a packet, one old.
plan::HouseholdFacts with_seeds(plan::HouseholdFacts facts, calendar::Date today);

} // namespace lathhouse::models
