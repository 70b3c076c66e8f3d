#include "tests/window/demonstration_round.h"

#include "core/climate/place_climate.h"
#include "core/climate/station_table.h"
#include "core/home/demonstration.h"

namespace lathhouse::models {

Result<plan::HouseholdFacts> demonstration_facts(calendar::Date today)
{
    // The stations outlive every climate that speaks of them.
    static const auto kTable = climate::StationTable::find().and_then(
        [](const std::filesystem::path& file) { return climate::StationTable::load(file); });
    if (!kTable) {
        return kTable.error();
    }
    const auto shown = home::demonstration({.today = today});
    if (!shown) {
        return shown.error();
    }
    const auto& place = shown->household.place;
    auto climate = climate::climate_at(*kTable, place.position, place.elevation);
    if (!climate) {
        return climate.error();
    }
    plan::HouseholdFacts facts{.as_told = shown->household,
                               .log = {},
                               .events = shown->history,
                               .climate = std::move(climate).value()};
    const auto found = today - calendar::Days{6};
    facts.events.push_back({facts.as_told.plants[1].id,
                            home::EventKind::PestFound,
                            std::nullopt,
                            found,
                            calendar::start_of_day_utc(found),
                            "",
                            {{"pest", "mealybug"}}});
    return facts;
}

} // namespace lathhouse::models
