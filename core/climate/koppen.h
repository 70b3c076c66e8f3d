#pragma once

#include "core/climate/monthly_figures.h"
#include "core/units/length.h"

#include <string>

namespace lathhouse::climate {

/// Class of Koppen and Geiger by monthly means: "Af", "BWh", "Cfb", "Dfd", "ET" and so on.
///
/// Source: Peel, Finlayson, McMahon, Hydrol. Earth Syst. Sci. 11 (2007) 1633-1644, table 1: the limit between
/// C and D is 0 C in the coldest month; summer is the warmer of October-March and April-September; B goes
/// before the others. Where a dry summer and a dry winter are both met the half-year with less rain is the
/// dry one.
std::string koppen_class(const Monthly<Celsius>& mean, const Monthly<Millimetres>& rain);

/// Monthly means as climate tables have them: (low + high) / 2.
Monthly<Celsius> mean_temperatures(const MonthlyFigures& figures);

} // namespace lathhouse::climate
