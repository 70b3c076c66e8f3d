#pragma once

#include "app/words/words.h"
#include "core/plan/chemical_damage.h"
#include "core/plan/cold_night.h"

#include <set>
#include <string>
#include <string_view>

namespace lathhouse::words {

/// What a mode is, with its half-life and what sources disagree on; several lines.
std::string damage_mode(const plan::DamageMode& mode);
/// "fits well: hormone weed-killers (2,4-D, dicamba); seen: ...; the time fits".
std::string mode_fit(const plan::ModeFit& fit, const plan::DamageTable& table);
std::string damage_step(plan::DamageAct act);
/// The care lines of a topic for these cases, by list, each list under its head.
std::string care_lines(std::string_view topic, const std::set<std::string>& cases);
/// What to expect after cold, one sentence that says how sure it is.
std::string cold_outcome(plan::ColdOutcome outcome);
std::string cold_doubt(plan::ColdDoubt doubt);
std::string cold_step(plan::ColdAct act);

} // namespace lathhouse::words
