#pragma once

#include "app/models/shown_units.h"
#include "app/models/year_data.h"
#include "app/words/words.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"

namespace lathhouse::models {

/// A household's year as the page shows it, with what solves its plan.
struct HouseholdYear {
    YearData year;
    YearSolver solver;
};

/// Nights, Sun and chances for 365 days from `today`; the plan is left to the solver.
///
/// Ladders are those of core/plan/hardening.h: going out the days of hardening before, coming in the days apart
/// after. Light: FAO-56 radiation of the month's range.
HouseholdYear household_year(home::Household household, const climate::PlaceClimate& climate,
                             calendar::Date today, words::UnitSystem units);
/// The same; the solver says why in the units that are shown when it is asked.
HouseholdYear household_year(home::Household household, const climate::PlaceClimate& climate,
                             calendar::Date today, const ShownUnits& units);

} // namespace lathhouse::models
