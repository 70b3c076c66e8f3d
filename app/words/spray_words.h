#pragma once

#include "app/words/words.h"
#include "core/plan/spray_gate.h"

#include <string>

namespace lathhouse::words {

/// What a finding means, one sentence.
std::string spray_finding(const plan::SprayFinding& finding, UnitSystem units);
/// The question that a check asks.
std::string spray_question(plan::SprayCheck check);
/// Two limits that sources give, one sentence.
std::string spray_conflict(const plan::SprayConflict& conflict, UnitSystem units);
/// "Wait: questions are open."
std::string spray_verdict(const plan::SprayDecision& decision);
/// How to go about it once nothing speaks against it.
std::string spray_go();

} // namespace lathhouse::words
