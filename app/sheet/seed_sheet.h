#pragma once

#include "app/models/seed_facts.h"
#include "app/sheet/paper.h"

#include <optional>
#include <vector>

namespace lathhouse::sheet {

struct SeedSheetFacts {
    QString household;
    models::SeedFacts list;                                 ///< The lots, by date of sowing.
    std::vector<std::optional<models::SowingSheet>> sheets; ///< Of each; none where its crop is in no table.
};

/// The lots with their germination, and for each when to sow it and why, and its trays with room for coming counts.
Pages seed_sheet(const SeedSheetFacts& facts, const models::TodayLook& look, Paper paper);

} // namespace lathhouse::sheet
