#include "app/cli/entry_text.h"
#include "app/cli/household_options.h"
#include "app/cli/log_measurement.h"
#include "app/cli/open_household.h"
#include "app/words/measurement_words.h"
#include "core/home/seed_lot.h"

#include <algorithm>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct ShowPlantOptions {
    std::string plant;
    std::size_t count = 40;
};

/// All that the journal has of one plant.
struct PlantPast {
    home::Household household; ///< With plants that are gone.
    home::Plant plant;
    std::optional<home::GonePlant> gone;
    std::vector<home::Descent> descents; ///< Of every plant.
    home::Stays stays;
    std::vector<home::Event> events;
    std::vector<home::Measurement> measurements;
    home::SeedBook seeds;
};

Result<PlantPast> past_of(const Globals& globals, const std::string& name)
{
    const auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto household = with_gone_plants(*store);
    if (!household) {
        return household.error();
    }
    const auto found = plant_called(*household, name);
    if (!found) {
        return found.error();
    }
    PlantPast past{.household = *household,
                   .plant = **found,
                   .gone = {},
                   .descents = {},
                   .stays = {},
                   .events = {},
                   .measurements = {},
                   .seeds = {}};
    auto gone = store->gone_plants();
    auto descents = store->descents();
    auto stays = store->stays(past.plant.id);
    auto events = store->events(past.plant.id);
    auto measurements = store->measurements(past.plant.id);
    auto seeds = store->seeds();
    if (!gone) {
        return gone.error();
    }
    if (!descents) {
        return descents.error();
    }
    if (!stays) {
        return stays.error();
    }
    if (!events) {
        return events.error();
    }
    if (!measurements) {
        return measurements.error();
    }
    if (!seeds) {
        return seeds.error();
    }
    for (const auto& one : *gone) {
        if (one.plant.id == past.plant.id) {
            past.gone = one;
        }
    }
    past.descents = std::move(descents).value();
    past.stays = std::move(stays).value();
    past.events = std::move(events).value();
    past.measurements = std::move(measurements).value();
    past.seeds = std::move(seeds).value();
    return past;
}

std::string spot_name(const home::Household& household, home::SpotId id)
{
    const auto* spot = household.spot(id);
    return spot != nullptr ? spot->name : "spot " + std::to_string(id);
}

Json json_of(const PlantPast& past)
{
    Json descent{{"parent", nullptr}, {"tray", nullptr}, {"lot", nullptr}, {"pieces", Json::array()}};
    for (const auto& one : past.descents) {
        if (one.plant == past.plant.id) {
            descent["parent"] = one.parent ? Json(*one.parent) : Json(nullptr);
            descent["tray"] = one.tray ? Json(*one.tray) : Json(nullptr);
            const auto* tray = one.tray ? past.seeds.tray(*one.tray) : nullptr;
            descent["lot"] = tray != nullptr ? Json(tray->lot) : Json(nullptr);
        }
        if (one.parent == past.plant.id) {
            descent["pieces"].push_back(one.plant);
        }
    }
    Json actual = Json::array();
    for (const auto& stay : past.stays.actual) {
        actual.push_back({{"spot", stay.spot},
                          {"from", calendar::to_text(stay.from)},
                          {"to", stay.to ? Json(calendar::to_text(*stay.to)) : Json(nullptr)}});
    }
    Json planned = Json::array();
    for (const auto& stay : past.stays.planned) {
        planned.push_back({{"spot", stay.spot},
                           {"from", calendar::to_text(stay.from)},
                           {"to", calendar::to_text(stay.to)},
                           {"accepted", calendar::to_text(stay.accepted)}});
    }
    Json events = Json::array();
    for (const auto& event : past.events) {
        events.push_back(entry_json(event));
    }
    Json measurements = Json::array();
    for (const auto& measurement : past.measurements) {
        measurements.push_back(entry_json(measurement));
    }
    Json gone = nullptr;
    if (past.gone) {
        gone = {{"how", home::to_string(past.gone->how)}, {"on", calendar::to_text(past.gone->on)}};
    }
    return {{"id", past.plant.id},
            {"name", past.plant.name},
            {"kind", past.plant.kind},
            {"spot", past.plant.spot && !past.gone ? Json(*past.plant.spot) : Json(nullptr)},
            {"pot_l", past.plant.pot_volume ? json_number(past.plant.pot_volume->litres()) : Json(nullptr)},
            {"gone", gone},
            {"descent", descent},
            {"stays", {{"actual", actual}, {"planned", planned}}},
            {"measurements", measurements},
            {"events", events}};
}

void write_descent(std::ostream& text, const PlantPast& past)
{
    const auto name_of = [&](home::PlantId id) {
        const auto* plant = past.household.plant(id);
        return plant != nullptr ? plant->name : "plant " + std::to_string(id);
    };
    std::string pieces;
    for (const auto& one : past.descents) {
        if (one.plant == past.plant.id && one.parent) {
            text << "Divided from " << name_of(*one.parent) << ".\n";
        }
        if (one.plant == past.plant.id && one.tray) {
            const auto* tray = past.seeds.tray(*one.tray);
            const auto* lot = tray != nullptr ? past.seeds.lot(tray->lot) : nullptr;
            text << "Potted on from tray " << *one.tray
                 << (lot != nullptr ? ", sown " + calendar::to_text(tray->sown) + " from " + lot->name : "") << ".\n";
        }
        if (one.parent == past.plant.id) {
            pieces += (pieces.empty() ? "" : ", ") + name_of(one.plant);
        }
    }
    if (!pieces.empty()) {
        text << "Divided into " << pieces << ".\n";
    }
}

void write_stays(std::ostream& text, const PlantPast& past)
{
    if (!past.stays.actual.empty()) {
        text << "\nWhere it stood\n";
    }
    for (const auto& stay : past.stays.actual) {
        text << "  " << calendar::to_text(stay.from) << " to "
             << (stay.to ? calendar::to_text(*stay.to) : std::string{"now       "}) << "  "
             << spot_name(past.household, stay.spot) << '\n';
    }
    if (past.stays.planned.empty()) {
        return;
    }
    // Each accepted plan is whole; the latest is the one that holds.
    const auto accepted = past.stays.planned.back().accepted;
    text << "\nPlanned (accepted " << calendar::to_text(accepted).substr(0, 10) << ")\n";
    for (const auto& stay : past.stays.planned) {
        if (stay.accepted == accepted) {
            text << "  " << calendar::to_text(stay.from) << " to " << calendar::to_text(stay.to) << "  "
                 << spot_name(past.household, stay.spot) << '\n';
        }
    }
}

Result<Answer> show_plant(const Globals& globals, const ShowPlantOptions& options)
{
    const auto past = past_of(globals, options.plant);
    if (!past) {
        return past.error();
    }
    std::ostringstream text;
    text << past->plant.name << " (plant " << past->plant.id << "), " << past->plant.kind << '\n';
    if (past->gone) {
        auto how = std::string{home::to_string(past->gone->how)};
        std::ranges::replace(how, '_', ' ');
        text << "Gone: " << how << " on " << calendar::to_text(past->gone->on) << ".\n";
    } else {
        text << "Stands at "
             << (past->plant.spot ? spot_name(past->household, *past->plant.spot) : std::string{"no known spot"})
             << ".\n";
    }
    write_descent(text, *past);
    write_stays(text, *past);

    // By date; what was entered first of a day comes first, events before measurements.
    std::vector<std::pair<calendar::Date, std::string>> lines;
    for (const auto& event : past->events) {
        lines.emplace_back(event.happened, sentence_of(event, past->household));
    }
    for (const auto& measurement : past->measurements) {
        lines.emplace_back(measurement.measured, sentence_of(measurement, past->household, globals.units));
    }
    std::ranges::stable_sort(lines, {}, [](const auto& line) { return line.first; });
    const auto first = lines.size() - std::min(lines.size(), options.count);
    text << "\nWhat happened\n";
    if (first > 0) {
        text << "  " << first << " earlier entries; --count " << lines.size() << " shows all.\n";
    }
    for (auto at = first; at < lines.size(); ++at) {
        text << "  " << lines[at].second << '\n';
    }
    return Answer{json_of(*past), std::move(text).str(), {}};
}

} // namespace

void add_plant_show(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<ShowPlantOptions>();
    CLI::App& command = *group.add_subcommand("plant", "A plant's whole history: events, measurements, stays, descent");
    command.footer("Example:\n  lathhouse show plant Lemon");
    command.fallthrough();
    command.add_option("plant", options->plant, "Plant by id or name, also one that is gone")
        ->required()
        ->type_name("ID");
    command.add_option("--count", options->count, "The last so many entries as text (default 40)")
        ->check(CLI::Range(1, 1000000));
    commands.on_run(command, [options](const Globals& globals) { return show_plant(globals, *options); });
}

} // namespace lathhouse::cli
