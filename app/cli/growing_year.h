#pragma once

#include "app/cli/commands.h"
#include "core/home/history.h"
#include "core/home/spot_climate.h"
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

/// The plant of that id, or of that name without case. Errors: NotFound.
Result<const home::Plant*> plant_called(const home::Household& household, const std::string& id_or_name);

/// [{"key","title","publisher","year"}] of rules of growing_rules.csv.
Json sources_json(std::span<const std::string_view> rules);

Json json_date(const std::optional<calendar::Date>& date); ///< "YYYY-MM-DD" or null.

} // namespace lathhouse::cli
