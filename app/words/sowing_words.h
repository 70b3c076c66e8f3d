#pragma once

#include "app/words/words.h"
#include "core/plan/sowing.h"

#include <string>
#include <vector>

namespace lathhouse::words {

/// Why a season begins when it does, a whole sentence; figures of its first day outdoors.
std::string sowing_begins(const plan::SowingPlan& plan, UnitSystem units);
/// Why it ends, a whole sentence.
std::string sowing_ends(const plan::SowingPlan& plan, UnitSystem units);
/// "No date exists here: ..." with the reason and its figures, one or two sentences.
std::string no_sowing_date(const plan::SowingPlan& plan, UnitSystem units);
/// What would help, with its dates.
std::string way_out(const plan::Way& way);
/// Depth, light, soaking, spacing: one line.
std::string how_to_sow(const plants::SeedKind& kind, UnitSystem units);
/// What to bear in mind: day length, slow sorts, roof, warmed mix, what the emergence rests on.
std::vector<std::string> sowing_notes(const plan::SowingPlan& plan, UnitSystem units);
/// "at least 75 % (7 CFR 201.31)".
std::string germination_basis(const plants::SeedKind& kind);
/// "damaging_night", "cold_soil" ...
std::string_view to_string(plan::SowingLimit limit);
std::string_view to_string(plan::WayKind way);
std::string_view to_string(plan::EmergenceBasis basis);

} // namespace lathhouse::words
