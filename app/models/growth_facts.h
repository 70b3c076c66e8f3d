#pragma once

#include "app/models/plant_facts.h"
#include "core/home/spot_climate.h"

#include <optional>

namespace lathhouse::models {

/// What a plant's growth is told from.
struct GrowthGround {
    const journal::PlantPage& records;
    const plan::HouseholdFacts& facts;
    const home::Household& household;
    const home::Plant& plant;
    const plan::Whereabouts& where;
    const home::SpotClimate& spots;
    const TodayLook& look;
    const PlantArchive& archive; ///< For the readings of its companions.
};

/// Fills in what the page of a plant says of its growth: the measures, the chart, the readings, the verdict. asked: the
/// measure; one is taken where none is asked for. judge: after what, and beside whom; heeded where it can be.
void tell_growth(PlantFacts& shown, const GrowthGround& ground, std::optional<home::MeasurementKind> asked,
                 const JudgeAsked& judge);

} // namespace lathhouse::models
