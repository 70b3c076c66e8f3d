#pragma once

#include "core/plan/round_parts.h"

#include <filesystem>
#include <functional>

namespace lathhouse::models {

/// Reads the household in a folder once for all who ask, and again after anyone wrote into it: pages read in threads of their own, all
/// of them after a change, and those that come while it is read wait for it. What happened is shared by the answers.
///
/// read: reads it; may be called from any thread, by one at a time. Errors are read's, and are not kept.
std::function<Result<plan::HouseholdFacts>()> kept_facts(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> read);

} // namespace lathhouse::models
