#include "tests/window/demonstration_year.h"

#include "core/climate/place_climate.h"
#include "core/climate/station_table.h"

namespace lathhouse::models {

namespace {

/// The shipped stations; they outlive every climate that speaks of them.
const Result<climate::StationTable>& stations()
{
    static const auto kTable = climate::StationTable::find().and_then(
        [](const std::filesystem::path& file) { return climate::StationTable::load(file); });
    return kTable;
}

} // namespace

calendar::Date shown_today()
{
    return calendar::Date{kShownYear, 3, 14};
}

Result<plan::HouseholdFacts> facts_of_demonstration(const home::DemonstrationOptions& options,
                                                 std::optional<Position> elsewhere)
{
    auto shown = home::demonstration(options);
    if (!shown) {
        return shown.error();
    }
    home::Household household = std::move(shown->household);
    if (elsewhere) {
        household.place = {"another place", *elsewhere, std::nullopt, "UTC"};
    }
    const auto& table = stations();
    if (!table) {
        return table.error();
    }
    const auto climate =
        climate::climate_at(*table, household.place.position, household.place.elevation);
    if (!climate) {
        return climate.error();
    }
    return plan::HouseholdFacts{.as_told = std::move(household), .log = {}, .events = {}, .climate = *climate};
}

Result<HouseholdYear> demonstration_year(const home::DemonstrationOptions& options,
                                         std::optional<Position> elsewhere, Units units)
{
    return facts_of_demonstration(options, elsewhere).transform([&](const plan::HouseholdFacts& facts) {
        return household_year(facts, options.today, units);
    });
}

} // namespace lathhouse::models
