#pragma once

#include "app/models/year_data.h"

namespace lathhouse::models {

/// An invented year of an invented household with a roofed balcony, for tests of what is shown.
YearData filled_year(calendar::Date today = calendar::Date{2026, 3, 14});
/// An invented plan for it, whose dates follow the risk.
SolvedYear filled_plan(const YearData& year, Probability risk);

} // namespace lathhouse::models
