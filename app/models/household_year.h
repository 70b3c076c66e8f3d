#pragma once

#include "app/models/year_data.h"
#include "app/words/words.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"

namespace lathhouse::models {

/// What the page Year shows of a household, and how it is planned for another risk.
struct HouseholdYear {
    YearData data;
    YearSolver solver;
};

/// Computes the twelve months from `today`. The words of a stay use `units`.
/// Errors: NotFound for a time zone that the system does not know.
Result<HouseholdYear> household_year(const home::Household& household, const climate::PlaceClimate& climate,
                                     calendar::Date today, words::UnitSystem units);

} // namespace lathhouse::models
