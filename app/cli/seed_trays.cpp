// What is logged of trays: sown, counted, potted.
#include "app/clock.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/open_household.h"
#include "app/cli/seed_options.h"
#include "app/potting.h"
#include "core/journal/household_store.h"
#include "core/plan/tray_progress.h"

#include <memory>

namespace lathhouse::cli {
namespace {

/// The spot that was named, of the household in the store, which is read only where one was.
Result<std::optional<home::SpotId>> spot_among(const journal::HouseholdStore& store, const std::string& asked)
{
    if (asked.empty()) {
        return std::optional<home::SpotId>{};
    }
    const auto household = store.load();
    if (!household) {
        return household.error();
    }
    return spot_asked(*household, asked);
}

struct SownOptions {
    std::string lot;
    int seeds = 0;
    std::string date;
    std::string spot;
    std::optional<double> mix;
    std::string note;
};

Result<Answer> log_sown(const Globals& globals, const SownOptions& options)
{
    const auto lot = lot_known(globals, options.lot);
    if (!lot) {
        return lot.error();
    }
    const auto date = date_of(options.date, globals.today);
    if (!date) {
        return date.error();
    }
    home::Tray tray{0, lot->lot.id, *date, options.seeds, {}, {}, options.note};
    if (options.mix) {
        tray.mix = Celsius::from_degrees(*options.mix);
    }
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto spot = spot_among(*store, options.spot);
    if (!spot) {
        return spot.error();
    }
    tray.spot = *spot;
    const auto id = store->record(tray, globals.today, now());
    if (!id) {
        return id.error();
    }
    tray.id = *id;
    const plan::SowingWishes usual;
    const auto progress =
        plan::progress_of(tray, lot->book, *lot->kind, lot->rate.rate, usual.room, globals.today);
    Json expected = nullptr;
    std::string text = "Sown " + std::to_string(tray.seeds) + " seeds of " + lot->lot.name + " as tray " +
                       std::to_string(*id) + ".\n";
    std::vector<std::string> warnings;
    if (progress.expected_on) {
        expected = {{"from", calendar::to_text(progress.expected_on->from)},
                    {"to", calendar::to_text(progress.expected_on->to)}};
        text += "At " + words::temperature(progress.mix, globals.units) + " it comes up from " +
                words::full_day(progress.expected_on->from) + " to " + words::full_day(progress.expected_on->to) +
                "; about " + words::number(tray.seeds * lot->rate.rate.mean(), 0) + " seedlings to expect.\n";
    } else {
        warnings.push_back(lot->kind->name() + " does not germinate at " +
                           words::temperature(progress.mix, globals.units) + "; it wants " +
                           words::temperature(lot->kind->germ_best_low, globals.units) + " to " +
                           words::temperature(lot->kind->germ_best_high, globals.units));
    }
    return Answer{{{"tray", *id}, {"lot", lot->lot.id}, {"emerge", expected}}, text, warnings};
}

struct CountOptions {
    int tray = 0;
    int emerged = 0;
    std::string date;
    bool last = false;
};

Result<Answer> log_count(const Globals& globals, const CountOptions& options)
{
    const auto date = date_of(options.date, globals.today);
    if (!date) {
        return date.error();
    }
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto id =
        store->record(home::TrayCount{options.tray, *date, options.emerged, options.last}, globals.today, now());
    if (!id) {
        return id.error();
    }
    auto book = store->seeds();
    if (!book) {
        return book.error();
    }
    const auto lot_id = book->tray(options.tray)->lot;
    const auto lot = lot_known(*book, *book->lot(lot_id), globals.today);
    if (!lot) {
        return lot.error();
    }
    const auto* tray = lot->book.tray(options.tray);
    const auto progress = plan::progress_of(*tray, lot->book, *lot->kind, lot->rate.rate,
                                            plan::SowingWishes{}.room, globals.today);
    std::string text = std::to_string(options.emerged) + " of " + std::to_string(tray->seeds) + " up in tray " +
                       std::to_string(tray->id) + "; about " +
                       words::number(progress.expected_by_count.value_or(0.0), 0) + " were to be expected by then.\n";
    text += progress.over ? "The counting is over: " + lot->lot.name + " now germinates at " + rate_in_words(*lot) + ".\n"
                          : std::string{"More may come; the lot's share is left as it was until the counting is over "
                                        "(--last, or twice its usual days).\n"};
    if (progress.behind) {
        text += "That is fewer than 19 of 20 such trays would show by then.\n";
    }
    for (const auto& note : lot_notes(*lot, std::nullopt)) {
        text += note + "\n";
    }
    return Answer{{{"tray", tray->id},
                   {"emerged", options.emerged},
                   {"expected", json_number(progress.expected_by_count.value_or(0.0))},
                   {"over", progress.over},
                   {"behind", progress.behind},
                   {"lot", lot_json(*lot)}},
                  text,
                  {}};
}

struct PottedOptions {
    int tray = 0;
    int plants = 1;
    std::string name;
    std::string spot;
    std::string date;
};

Result<Answer> log_potted(const Globals& globals, const PottedOptions& options)
{
    if (options.plants < 1 || options.plants > 1000) {
        return Error{ErrorCode::OutOfRange, "--plants must lie within 1 and 1000"};
    }
    const auto date = past_date_of("--date", options.date, globals.today, "log it when it is done");
    if (!date) {
        return date.error();
    }
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto book = store->seeds();
    if (!book) {
        return book.error();
    }
    const auto* tray = book->tray(options.tray);
    if (tray == nullptr) {
        return Error{ErrorCode::NotFound, "there is no such tray; `lathhouse show lot` shows a lot's trays"};
    }
    const auto spot = spot_among(*store, options.spot);
    if (!spot) {
        return spot.error();
    }
    const auto plants = potted_plants(
        *book, {.tray = tray->id, .plants = options.plants, .on = *date, .name = options.name, .spot = *spot});
    if (!plants) {
        return plants.error();
    }
    const auto ids = store->pot_up(tray->id, *plants, *date, now());
    if (!ids) {
        return ids.error();
    }
    Json list = Json::array();
    std::string names;
    for (std::size_t i = 0; i < ids->size(); ++i) {
        list.push_back({{"id", (*ids)[i]}, {"name", (*plants)[i].name}});
        names += (i == 0 ? "" : ", ") + (*plants)[i].name;
    }
    return Answer{{{"tray", tray->id}, {"plants", list}},
                  "Potted from tray " + std::to_string(tray->id) + ": " + names + ".\n",
                  {}};
}

} // namespace

void add_seed_logs(Commands& commands, CLI::App& group)
{
    auto sown = std::make_shared<SownOptions>();
    CLI::App& sow = *group.add_subcommand("sown", "A tray that was sown from a lot");
    sow.fallthrough();
    sow.add_option("--lot", sown->lot, "By id or name")->required()->type_name("ID");
    sow.add_option("--seeds", sown->seeds, "Seeds sown")->required()->type_name("N");
    sow.add_option("--date", sown->date, "Default: today")->type_name("YYYY-MM-DD");
    sow.add_option("--spot", sown->spot, "Where the tray stands, by id or name");
    sow.add_option("--mix", sown->mix, "Temperature of the mix, where you know it")->type_name("C");
    sow.add_option("--note", sown->note, "Anything else worth keeping");
    commands.on_run(sow, [sown](const Globals& globals) { return log_sown(globals, *sown); });

    auto counted = std::make_shared<CountOptions>();
    CLI::App& count = *group.add_subcommand("count", "Seedlings that have come up in a tray so far");
    count.fallthrough();
    count.add_option("--tray", counted->tray, "Number of the tray")->required()->type_name("ID");
    count.add_option("--emerged", counted->emerged, "All that came up so far, those since lost too")
        ->required()
        ->type_name("N");
    count.add_option("--date", counted->date, "Default: today")->type_name("YYYY-MM-DD");
    count.add_flag("--last", counted->last, "No more are waited for");
    commands.on_run(count, [counted](const Globals& globals) { return log_count(globals, *counted); });

    auto potted = std::make_shared<PottedOptions>();
    CLI::App& pot = *group.add_subcommand("potted", "Seedlings of a tray that became plants in pots");
    pot.fallthrough();
    pot.add_option("--tray", potted->tray, "Number of the tray")->required()->type_name("ID");
    pot.add_option("--plants", potted->plants, "How many (default 1)")->type_name("N");
    pot.add_option("--name", potted->name, "Their name; several are numbered (default: crop and tray)");
    pot.add_option("--spot", potted->spot, "Where they stand, by id or name (default: the tray's)");
    pot.add_option("--date", potted->date, "Default: today")->type_name("YYYY-MM-DD");
    commands.on_run(pot, [potted](const Globals& globals) { return log_potted(globals, *potted); });
}

} // namespace lathhouse::cli
