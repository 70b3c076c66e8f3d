#pragma once

#include "app/models/sheet_rows.h"
#include "core/climate/place_climate.h"

#include <vector>

namespace lathhouse::models {

/// Whose figures the program shows at that place; columns: what, who, sentence.
std::vector<SheetRows::Row> credit_rows(const climate::PlaceClimate& climate);

/// The publications behind the tables of plants, seeds and pests; columns: title, who, sentence.
std::vector<SheetRows::Row> source_rows();

} // namespace lathhouse::models
