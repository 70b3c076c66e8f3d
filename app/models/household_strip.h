#pragma once

#include "app/models/year_data.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"

namespace lathhouse::models {

/// What the strip of the year is to show: frost, or where the place has none what decides in its stead.
///
/// The first of these that reaches 1 in 20 on some day of the year: a night in the open at the damage line of
/// the household's tenderest plant; a day above 30 C; else the rain of the months, where it is known. The
/// order and the 1 in 20 are the project's own choice, no source.
/// year: its days and frost marks are there.
YearStrip strip_of(const YearData& year, const home::Household& household,
                   const climate::PlaceClimate& climate, const climate::NightModel& nights);

} // namespace lathhouse::models
