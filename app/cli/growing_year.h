#pragma once

#include "app/cli/commands.h"
#include "core/home/event_list.h"
#include "core/home/spot_climate.h"
#include "core/plan/cautions.h"
#include "core/plan/growing_rules.h"
#include "core/plan/year_plan.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::cli {

/// What the commands on a year of growing need of a household.
struct GrowingYear {
    home::Household household; ///< Spots with what their thermometers taught.
    home::EventList events;
    climate::PlaceClimate climate;
    home::SpotClimate spots;
    plan::YearPlan plan; ///< From today.
    std::optional<home::PlantId> only; ///< The plant that was asked for; none: all.

    bool is_asked(home::PlantId plant) const { return !only || *only == plant; }
};
/// plant: by id or name; blank: all. Errors: as household_of, climate_of and plant_asked.
Result<GrowingYear> growing_year(const Globals& globals, const std::string& plant);

/// The cautions of these topics, for people and for scripts.
std::vector<std::string> caution_texts(std::span<const plan::CautionTopic> topics);
/// A line each: "Take care: ...".
std::string cautions_in_words(std::span<const plan::CautionTopic> topics);

} // namespace lathhouse::cli
