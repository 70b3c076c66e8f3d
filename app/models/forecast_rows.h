#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/year_words.h"
#include "core/plan/round_parts.h"

#include <vector>

namespace lathhouse::models {

/// How right the kept forecasts were, by how many days ahead they were made; rows: ahead, nights, error, miss, season, sentence.
/// Only what nights have told of; empty where none has.
std::vector<SheetRows::Row> forecast_rows(const plan::HouseholdFacts& facts, const YearWords& words);

} // namespace lathhouse::models
