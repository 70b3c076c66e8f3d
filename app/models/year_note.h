#pragma once

#include "app/models/year_data.h"
#include "app/models/year_words.h"

#include <QString>

namespace lathhouse::models {

/// What the year rests on: stations, base period, error of dates, offset, gap of the plan, warnings.
QString year_note(const YearData& year, const SolvedYear& solved, const YearWords& words);

} // namespace lathhouse::models
