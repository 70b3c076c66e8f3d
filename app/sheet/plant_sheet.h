#pragma once

#include "app/models/plant_facts.h"
#include "app/sheet/paper.h"

namespace lathhouse::sheet {

/// What a plant is, needs and went through: facts, photos over time, its growth with events and verdict, hazards,
/// sources, and what was written down, newest first.
Pages plant_sheet(const models::PlantFacts& facts, const QString& household, const models::TodayLook& look, Paper paper);

} // namespace lathhouse::sheet
