#pragma once

#include "app/words/words.h"
#include "core/plan/hardening.h"

#include <string>
#include <vector>

namespace lathhouse::words {

/// From that weight on a pot is carried by two (common practice, no source).
inline constexpr double kHeavyKilograms = 15.0;

/// What is done, without its date: "out for 3 hours in full shade".
std::string ladder_item(const plan::LadderItem& item);
/// The same of a day's step, short: "4 hours, morning sun", "where it shall stand" without more shade; empty where it is none.
std::string ladder_step(const plan::LadderItem& item);
/// One line on the whole way: "Lemon goes out to Roofed balcony: 9 days, the light doubles 1.4 times, nights 8 K
/// colder".
std::string ladder_head(const plan::Ladder& ladder, const home::Household& household, UnitSystem units);
/// What to mind on that way, with the cautions that belong to it.
std::vector<std::string> ladder_notes(const plan::Ladder& ladder, const home::Household& household,
                                      UnitSystem units);

} // namespace lathhouse::words
