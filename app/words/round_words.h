#pragma once

#include "app/words/words.h"
#include "core/plan/round.h"

#include <string>
#include <vector>

namespace lathhouse::words {

/// What to do, in a few words: "feed, 100 ppm nitrogen".
std::string task(const plan::Task& task, const home::Household& household, UnitSystem units);
/// Why it is due now; empty where the task says it.
std::string task_why(const plan::Task& task, const home::Household& household, UnitSystem units);
/// The cautions that belong to it: of the plant's kind where it is handled, of the pot's weight, of what is used.
std::vector<std::string> task_cautions(const plan::Task& task, const home::Household& household);
/// "clean plants", "suspect plants", "infested plants".
std::string round_class(plan::PestState state);

} // namespace lathhouse::words
