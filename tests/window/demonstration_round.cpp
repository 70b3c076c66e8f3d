#include "tests/window/demonstration_round.h"

#include "core/climate/place_climate.h"
#include "core/climate/station_table.h"
#include "core/home/demonstration.h"
#include "core/home/demonstration_story.h"

#include <algorithm>
#include <functional>
#include <vector>

namespace lathhouse::models {

Result<climate::PlaceClimate> shipped_climate_at(Position position, std::optional<Metres> elevation)
{
    // The stations outlive every climate that speaks of them.
    static const auto kTable = climate::StationTable::find().and_then(
        [](const std::filesystem::path& file) { return climate::StationTable::load(file); });
    return kTable ? climate::climate_at(*kTable, position, elevation) : Result<climate::PlaceClimate>{kTable.error()};
}

Result<plan::HouseholdFacts> demonstration_facts(calendar::Date today)
{
    const auto shown = home::demonstration({.today = today});
    if (!shown) {
        return shown.error();
    }
    const auto& place = shown->household.place;
    auto climate = shipped_climate_at(place.position, place.elevation);
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
    // It is not fed meanwhile; another plant is due for that, and for nothing that goes before it.
    const auto hungry = facts.as_told.plants[2].id;
    std::erase_if(facts.events, [&](const home::Event& event) {
        return event.plant == hungry && event.kind == home::EventKind::Fed && event.happened > today - calendar::Days{15};
    });
    const auto washed = today - calendar::Days{30};
    facts.events.push_back({hungry, home::EventKind::Leached, std::nullopt, washed, calendar::start_of_day_utc(washed), "", {}});
    return facts;
}

std::vector<home::Measurement> demonstration_measurements(calendar::Date today)
{
    const home::DemonstrationOptions options{.today = today};
    const auto shown = home::demonstration(options);
    std::vector<home::Measurement> measurements;
    if (shown) {
        for (const auto& of : home::tell_story(options, *shown).measurements) {
            if (shown->household.plant(of.plant) != nullptr) {
                measurements.push_back(of);
            }
        }
    }
    return measurements;
}

std::vector<home::DemonstrationPhoto> demonstration_pictures(calendar::Date today)
{
    const home::DemonstrationOptions options{.today = today};
    const auto shown = home::demonstration(options);
    return shown ? home::demonstration_photos(options, *shown, home::tell_story(options, *shown))
                 : std::vector<home::DemonstrationPhoto>{};
}

plan::HouseholdFacts with_harm(plan::HouseholdFacts facts, calendar::Date today)
{
    const home::DemonstrationOptions options{.today = today};
    const auto shown = home::demonstration(options);
    if (shown) {
        for (const auto& event : home::tell_story(options, *shown).events) {
            if (event.plant && shown->household.plant(*event.plant) != nullptr) {
                facts.events.push_back(event);
            }
        }
        std::ranges::stable_sort(facts.events, {}, &home::Event::happened);
    }
    return facts;
}

plan::HouseholdFacts with_cold_night(plan::HouseholdFacts facts, calendar::Date today)
{
    const auto outdoors = std::ranges::find_if(facts.as_told.spots,
                                               [](const home::Spot& spot) { return home::is_outdoors(spot.kind); });
    std::vector<home::Plant*> tender;
    for (auto& plant : facts.as_told.plants) {
        tender.push_back(&plant);
    }
    std::ranges::sort(tender, std::greater{}, [](const home::Plant* plant) { return plant->lines.damage_begins; });
    for (std::size_t place = 0; place < 3 && place < tender.size(); ++place) {
        tender[place]->spot = outdoors->id;
    }
    const auto entered = calendar::start_of_day_utc(today);
    for (int day = 1; day <= 10; ++day) {
        const bool cold = day == 1;
        facts.log.forecasts.push_back(
            {today, today + calendar::Days{day}, Celsius::from_degrees(cold ? 1.0 : 6.0 + day * 0.3),
             cold ? climate::NightWeather{climate::Sky::Clear, climate::Wind::Calm} : climate::NightWeather{},
             std::nullopt, entered});
    }
    for (int night = 12; night >= 1; --night) {
        const bool clear = night % 3 != 0;
        facts.log.readings.push_back(
            {outdoors->id, today - calendar::Days{night}, Celsius::from_degrees(7.0 + night * 0.2), std::nullopt,
             clear ? climate::NightWeather{climate::Sky::Clear, climate::Wind::Calm}
                   : climate::NightWeather{climate::Sky::Cloudy, std::nullopt},
             Celsius::from_degrees(7.0 + night * 0.2 - (clear ? 2.6 : 1.1)), entered, {}});
    }
    return facts;
}

plan::HouseholdFacts with_seeds(plan::HouseholdFacts facts, calendar::Date today)
{
    const int year = static_cast<int>(today.year());
    auto& book = facts.seeds;
    book.lots = {{1, "Tomato, red", "Solanum lycopersicum", year - 1, 85.0, 60, ""},
                 {2, "Zinnia", "Zinnia elegans", year, 70.0, 40, ""},
                 {3, "Parsley", "Petroselinum crispum", std::nullopt, std::nullopt, std::nullopt, ""},
                 {4, "Lettuce, old", "Lactuca sativa", year - 9, std::nullopt, 300, ""}};
    book.trays = {{1, 1, today - calendar::Days{40}, 20, std::nullopt, Celsius::from_degrees(21.0), ""},
                  {2, 2, today - calendar::Days{9}, 12, std::nullopt, Celsius::from_degrees(21.0), ""}};
    book.counts = {{1, today - calendar::Days{20}, 17, true}};
    return facts;
}

} // namespace lathhouse::models
