#pragma once

#include "app/models/shown_units.h"
#include "app/models/year_data.h"
#include "app/words/words.h"
#include "core/plan/round_parts.h"

namespace lathhouse::models {

/// Nights, Sun and chances for 365 days from `from`, or from today; the plan is left to the solver. The offsets that thermometers
/// have taught, pests that keep plants apart and the accepted plan are heeded, as in the plan of the command line.
///
/// Ladders are those of core/plan/hardening.h: going out the days of hardening before, coming in the days apart
/// after. Feeds are those of core/plan/feeding.h at the spots of the plan. Light: FAO-56 radiation of the month's
/// range. The solver says why in the units that are shown when it is asked.
///
/// A year from another date begins as the household stands today: every plant where it is, with what is known of it.
HouseholdYear household_year(const plan::HouseholdFacts& facts, calendar::Date today, const ShownUnits& units,
                             std::optional<calendar::Date> from = {});

/// The hands that the household's spots are drawn in, in its order.
std::vector<YearSpot> year_spots(const home::Household& household);

} // namespace lathhouse::models
