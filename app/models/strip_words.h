#pragma once

#include "app/models/year_data.h"
#include "app/models/year_words.h"

#include <QString>

namespace lathhouse::models {

/// Height of the strip on a day, 0..1.
double strip_share(const YearData& year, std::size_t day);

/// "Frost nights", "Nights to 12 °C"; `narrow` shortens.
QString strip_head(const YearData& year, const YearWords& words, bool narrow);
/// What is drawn, in a sentence's part that stands in the strip.
QString strip_note(const YearData& year, const YearWords& words, bool narrow);
/// The name of the strip's number on one date: "Frost this night".
QString strip_label(const YearData& year, const YearWords& words);
/// That number: a chance as in a table, or the month's rain.
QString strip_value(const YearData& year, const YearWords& words, std::size_t day);
/// Ends of the strip's scale.
QString strip_top(const YearData& year, const YearWords& words);
QString strip_middle(const YearData& year, const YearWords& words);

} // namespace lathhouse::models
