#pragma once

#include "app/cli/commands.h"
#include "core/home/history.h"
#include "core/home/spot_climate.h"
#include "core/plan/cautions.h"
#include "core/plan/growing_rules.h"
#include "core/plan/year_plan.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::cli {

/// What the commands on a year of growing need of a household.
struct GrowingYear {
    home::Household household; ///< Spots with what their thermometers taught.
    std::vector<home::Event> events;
    climate::PlaceClimate climate;
    home::SpotClimate spots;
    plan::YearPlan plan; ///< From today.
};
/// Errors: as household_of and climate_of.
Result<GrowingYear> growing_year(const Globals& globals);

/// [{"key","title","publisher","year"}] of rules of growing_rules.csv.
Json sources_json(std::span<const std::string_view> rules);

/// The cautions of these topics, for people and for scripts.
std::vector<std::string> caution_texts(std::span<const plan::CautionTopic> topics);
/// A line each: "Take care: ...".
std::string cautions_in_words(std::span<const plan::CautionTopic> topics);

} // namespace lathhouse::cli
