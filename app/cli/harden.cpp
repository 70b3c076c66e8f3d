#include "app/cli/all_commands.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/place_climate_options.h"
#include "app/words/ladder_words.h"
#include "core/journal/household_store.h"
#include "core/plan/hardening_done.h"

#include <cmath>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct HardenOptions {
    std::string plant;
    double risk_percent = 10.0;
    FileOptions forecast;
};

Json json_of(const plan::Ladder& ladder)
{
    Json items = Json::array();
    for (const auto& item : ladder.items) {
        items.push_back({{"date", calendar::to_text(item.date)},
                         {"until", calendar::to_text(item.until)},
                         {"hours", item.hours > 0 ? Json(item.hours) : Json(nullptr)},
                         {"what", words::ladder_item(item)}});
    }
    Json paused = Json::array();
    for (const auto date : ladder.paused) {
        paused.push_back(calendar::to_text(date));
    }
    return {{"plant", ladder.plant},
            {"from", ladder.from},
            {"to", ladder.to},
            {"direction", ladder.direction == plan::Direction::Out ? "out" : "in"},
            {"planned", calendar::to_text(ladder.planned)},
            {"reached", calendar::to_text(ladder.reached)},
            {"light_factor", json_number(std::exp2(ladder.doublings))},
            {"nights_colder_c", json_number(ladder.colder.kelvins())},
            {"steps", items},
            {"paused", paused}};
}

Result<Answer> harden(const Globals& globals, const HardenOptions& options)
{
    const auto risk = Probability::from_percent(options.risk_percent);
    if (!risk || options.risk_percent < 0.1 || options.risk_percent > 50.0) {
        return Error{ErrorCode::OutOfRange, "--risk must lie within 0.1 and 50 percent"};
    }
    const auto household = household_of(globals, WithoutHousehold::IsAnError);
    const auto home = household_with_log(globals);
    if (!household || !home) {
        return household ? home.error() : household.error();
    }
    const auto asked_for = plant_asked(*household, options.plant);
    if (!asked_for) {
        return asked_for.error();
    }
    const home::Plant* only = *asked_for;
    auto log = home->log;
    if (!options.forecast.file.empty()) {
        const auto forecasts = forecast_of(options.forecast, globals.today);
        if (!forecasts) {
            return forecasts.error();
        }
        log.forecasts.insert(log.forecasts.end(), forecasts->begin(), forecasts->end());
    }
    const auto climate = climate_of(*household);
    if (!climate) {
        return climate.error();
    }
    const auto wishes = wishes_of(globals);
    if (!wishes) {
        return wishes.error();
    }
    const plan::ColdChances chances{climate::PlaceNights::of(*climate)};
    const auto plan =
        plan::plan_year(*household, *climate, chances, globals.today, *risk, plan::Effort::Fast, *wishes);
    const home::SpotClimate spots{*household, *climate, log};
    Json json = Json::array();
    std::ostringstream text;
    const auto events = journal::HouseholdStore::open(globals.home).and_then([](const auto& store) { return store.events(); });
    if (!events) {
        return events.error();
    }
    for (const auto& ladder :
         plan::with_days_hardened(plan::ladders_of(*household, spots, plan, globals.today), *events, globals.today)) {
        if (only != nullptr && ladder.plant != only->id) {
            continue;
        }
        const auto held = plan::held_up_from(ladder, *household->plant(ladder.plant),
                                             *household->spot(ladder.to), spots, log, globals.today);
        json.push_back(json_of(held));
        text << words::ladder_head(held, *household, globals.units) << '\n';
        for (const auto& item : held.items) {
            const bool day = item.date == item.until;
            text << "  " << words::padded(words::day(item.date) + (day ? "" : " to " + words::day(item.until)), 18)
                 << "  " << words::ladder_item(item) << '\n';
        }
        for (const auto& note : words::ladder_notes(held, *household, globals.units)) {
            text << "  - " << note << '\n';
        }
        text << '\n';
    }
    if (json.empty()) {
        text << "No plant goes out or comes in within the year's plan" << (only != nullptr ? " of that plant" : "") << ".\n";
    } else {
        text << "7 to 14 days out, a week of shade, inspection, soak, 14 days apart and 4 to 8 weeks of stepping "
                "down in: extension advice; how they grow with the step of light and cold is common practice, "
                "without a source. Watch the plant: leaves that bleach or hang want a step back.\n"
             << sources_in_words(*climate, globals.units);
    }
    return Answer{{{"ladders", json}}, std::move(text).str(), texts(climate->warnings)};
}

} // namespace

void add_harden(Commands& commands)
{
    auto options = std::make_shared<HardenOptions>();
    CLI::App& command = commands.add("harden", "The days before a plant stays out, and those around its coming in",
                                     "lathhouse harden --plant Lemon");
    command.add_option("--plant", options->plant, "One plant, by id or name")->type_name("ID");
    command.add_option("--risk", options->risk_percent, "As for moves (default 10)")->type_name("PERCENT");
    command
        .add_option("--forecast", options->forecast.file,
                    "Forecast lows, in the forms that tonight reads: cold days hold the steps up")
        ->type_name("FILE");
    add_columns_option(command, options->forecast, "date=day,low_f=Tmin");
    commands.on_run(command, [options](const Globals& globals) { return harden(globals, *options); });
}

} // namespace lathhouse::cli
