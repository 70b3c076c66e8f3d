#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/list.h"
#include "app/cli/open_household.h"
#include "app/cli/seed_options.h"
#include "app/words/source_words.h"
#include "app/words/sowing_words.h"
#include "core/base/parse.h"
#include "core/home/seedling.h"
#include "core/journal/household_store.h"
#include "core/plan/tray_progress.h"

#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

constexpr Probability kLevel = Probability::literal(0.9);

std::string whole_percent(double fraction)
{
    return words::number(100.0 * fraction, 0) + " %";
}

/// A lot whose crop the reference no longer knows is still shown, by that name.
Result<LotKnown> known(home::SeedBook book, const home::SeedLot& lot, calendar::Date today)
{
    const auto kind = plants::SeedReference::built_in().find(lot.crop);
    if (!kind) {
        return kind.error();
    }
    auto rate = home::lot_rate(lot, book, **kind);
    auto judgement = home::judge(lot, book, **kind, today);
    return LotKnown{std::move(book), lot, *kind, rate, judgement};
}

Json optional_json(const auto& value)
{
    return value ? Json(*value) : Json(nullptr);
}

Json lot_json(const LotKnown& lot)
{
    return {{"id", lot.lot.id},
            {"name", lot.lot.name},
            {"crop", lot.kind->name()},
            {"botanical_name", lot.kind->botanical_name},
            {"packed_year", optional_json(lot.lot.packed_year)},
            {"stated_percent", lot.lot.stated_percent ? json_number(*lot.lot.stated_percent) : Json(nullptr)},
            {"seeds", optional_json(lot.lot.seeds)},
            {"seeds_left", optional_json(lot.book.seeds_left(lot.lot.id))},
            {"germination", json_number(lot.rate.rate.mean())},
            {"interval",
             {json_number(lot.judgement.interval.low.fraction()), json_number(lot.judgement.interval.high.fraction())}},
            {"level", json_number(kLevel.fraction())},
            {"counted", {{"sown", lot.rate.sown}, {"emerged", lot.rate.emerged}, {"waiting", lot.rate.waiting}}},
            {"state", home::to_string(lot.judgement.state)},
            {"note", lot.lot.note}};
}

struct LotOptions {
    std::string crop;
    std::string name;
    std::optional<int> packed;
    std::optional<double> germination;
    std::optional<int> seeds;
    std::string note;
};

Result<Answer> add_lot(const Globals& globals, const LotOptions& options)
{
    const auto kind = plants::SeedReference::built_in().find(options.crop);
    if (!kind) {
        return kind.error();
    }
    home::SeedLot lot{0,
                      options.name,
                      (*kind)->botanical_name,
                      options.packed,
                      options.germination,
                      options.seeds,
                      options.note};
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    if (lot.name.empty()) {
        lot.name = (*kind)->name();
        if (lot.packed_year) {
            lot.name += " " + std::to_string(*lot.packed_year);
        }
    }
    const auto id = store->add_lot(lot, globals.today, now());
    if (!id) {
        return id.error();
    }
    return Answer{{{"id", *id}, {"name", lot.name}, {"crop", (*kind)->name()}},
                  "Added the lot " + lot.name + " (" + (*kind)->botanical_name + ") as number " + std::to_string(*id) +
                      ".\n",
                  {}};
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
    if (!options.spot.empty()) {
        const auto household = store->load();
        if (!household) {
            return household.error();
        }
        const auto spot = spot_called(*household, options.spot);
        if (!spot) {
            return spot.error();
        }
        tray.spot = (*spot)->id;
    }
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
    const auto lot = known(*book, *book->lot(lot_id), globals.today);
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
    const auto date = date_of(options.date, globals.today);
    if (!date) {
        return date.error();
    }
    if (*date > globals.today) {
        return Error{ErrorCode::OutOfRange, "--date " + options.date + " is after today; log it when it is done"};
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
    const auto kind = plants::SeedReference::built_in().find(book->lot(tray->lot)->crop);
    if (!kind) {
        return kind.error();
    }
    std::optional<home::SpotId> stands = tray->spot;
    if (!options.spot.empty()) {
        const auto household = store->load();
        if (!household) {
            return household.error();
        }
        const auto spot = spot_called(*household, options.spot);
        if (!spot) {
            return spot.error();
        }
        stands = (*spot)->id;
    }
    std::vector<home::Plant> plants;
    const auto before = static_cast<int>(book->potted_from(tray->id));
    const auto stem = options.name.empty() ? (*kind)->name() + " " + std::to_string(tray->id) : options.name;
    for (int i = 1; i <= options.plants; ++i) {
        const bool alone = options.plants == 1 && !options.name.empty();
        plants.push_back(
            home::make_seedling(**kind, alone ? stem : stem + "-" + std::to_string(before + i)));
        plants.back().spot = stands;
    }
    const auto ids = store->pot_up(tray->id, plants, *date, now());
    if (!ids) {
        return ids.error();
    }
    Json list = Json::array();
    std::string names;
    for (std::size_t i = 0; i < ids->size(); ++i) {
        list.push_back({{"id", (*ids)[i]}, {"name", plants[i].name}});
        names += (i == 0 ? "" : ", ") + plants[i].name;
    }
    return Answer{{{"tray", tray->id}, {"plants", list}},
                  "Potted from tray " + std::to_string(tray->id) + ": " + names + ".\n",
                  {}};
}

Result<Answer> list_lots(const Globals& globals)
{
    const auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto book = store->seeds();
    if (!book) {
        return book.error();
    }
    Json lots = Json::array();
    std::vector<std::vector<std::string>> rows{{"id", "lot", "crop", "packed", "left", "germinates", "state"}};
    std::vector<std::string> warnings;
    for (const auto& one : book->lots) {
        const auto lot = known(*book, one, globals.today);
        if (!lot) {
            warnings.push_back(one.name + ": " + lot.error().message);
            continue;
        }
        lots.push_back(lot_json(*lot));
        const auto left = book->seeds_left(one.id);
        std::string state{home::to_string(lot->judgement.state)};
        if (lot->judgement.state == home::LotState::PastUse) {
            state = "past use";
        }
        rows.push_back({std::to_string(one.id), one.name, lot->kind->name(),
                        one.packed_year ? std::to_string(*one.packed_year) : "", left ? std::to_string(*left) : "",
                        whole_percent(lot->rate.rate.mean()), state});
    }
    return Answer{{{"lots", lots}},
                  rows.size() > 1 ? table(rows)
                                  : std::string{"No lots yet; add one with: lathhouse add lot --crop tomato\n"},
                  warnings};
}

Result<Answer> show_lot(const Globals& globals, const std::string& id_or_name)
{
    const auto lot = lot_known(globals, id_or_name);
    if (!lot) {
        return lot.error();
    }
    auto json = lot_json(*lot);
    std::ostringstream text;
    text << lot->lot.name << ": " << lot->kind->name() << " (" << lot->kind->botanical_name << ")\n"
         << "Germinates at " << rate_in_words(*lot) << ".\n";
    for (const auto& note : lot_notes(*lot, std::nullopt)) {
        text << note << '\n';
    }
    Json trays = Json::array();
    std::vector<std::vector<std::string>> rows{{"tray", "sown", "seeds", "comes up", "counted", "expected", "potted"}};
    const plan::SowingWishes usual;
    for (const auto* tray : lot->book.trays_of(lot->lot.id)) {
        const auto progress =
            plan::progress_of(*tray, lot->book, *lot->kind, lot->rate.rate, usual.room, globals.today);
        const auto potted = lot->book.potted_from(tray->id);
        Json counts = Json::array();
        for (const auto& count : lot->book.counts_of(tray->id)) {
            counts.push_back(
                {{"date", calendar::to_text(count.on)}, {"emerged", count.emerged}, {"last", count.last}});
        }
        trays.push_back(
            {{"id", tray->id},
             {"sown", calendar::to_text(tray->sown)},
             {"seeds", tray->seeds},
             {"spot", optional_json(tray->spot)},
             {"mix_c", tray->mix ? json_number(tray->mix->degrees()) : Json(nullptr)},
             {"emerge", progress.expected_on ? Json{{"from", calendar::to_text(progress.expected_on->from)},
                                                    {"to", calendar::to_text(progress.expected_on->to)}}
                                             : Json(nullptr)},
             {"expected_by_now", json_number(progress.expected_by_now)},
             {"counts", counts},
             {"over", progress.over},
             {"behind", progress.behind},
             {"plants", potted}});
        rows.push_back(
            {std::to_string(tray->id), words::full_day(tray->sown), std::to_string(tray->seeds),
             progress.expected_on ? words::day(progress.expected_on->from) + " to " + words::day(progress.expected_on->to)
                                  : "too cold or hot",
             progress.counted ? std::to_string(progress.counted->emerged) + " on " + words::day(progress.counted->on) : "",
             words::number(progress.expected_by_count.value_or(progress.expected_by_now), 0) +
                 (progress.behind ? ", behind" : ""),
             potted > 0 ? std::to_string(potted) : ""});
    }
    json["trays"] = trays;
    if (rows.size() > 1) {
        text << table(rows);
    }
    Json sources = Json::array();
    for (const auto key : split(lot->kind->sources, ';')) {
        sources.push_back(std::string{key});
    }
    json["sources"] = sources;
    text << words::sources_line(words::source_keys(lot->kind->sources));
    return Answer{json, std::move(text).str(), {}};
}

} // namespace

Result<LotKnown> lot_known(const Globals& globals, const std::string& id_or_name)
{
    const auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    auto book = store->seeds();
    if (!book) {
        return book.error();
    }
    const auto* lot = book->lot_called(id_or_name);
    if (lot == nullptr) {
        return Error{ErrorCode::NotFound,
                     "there is no lot \"" + id_or_name + "\"; `lathhouse list lots` shows their ids"};
    }
    const home::SeedLot copy = *lot;
    return known(std::move(*book), copy, globals.today);
}

std::string rate_in_words(const LotKnown& lot)
{
    std::string text = whole_percent(lot.rate.rate.mean()) + " (";
    text += lot.lot.stated_percent ? "label " + words::number(*lot.lot.stated_percent, 0) + " %"
                                   : "no label, so " + words::germination_basis(*lot.kind);
    if (lot.rate.sown > 0) {
        text += ", " + std::to_string(lot.rate.emerged) + " of " + std::to_string(lot.rate.sown) + " counted";
    }
    return text + "; 9 in 10 sure of " + whole_percent(lot.judgement.interval.low.fraction()) + " to " +
           whole_percent(lot.judgement.interval.high.fraction()) + ")";
}

std::vector<std::string> lot_notes(const LotKnown& lot, std::optional<int> needed)
{
    std::vector<std::string> notes;
    switch (lot.judgement.state) {
    case home::LotState::PastUse:
        notes.push_back("The lot is past use: even the upper end of what it can be lies below the " +
                        words::germination_basis(*lot.kind) + ". Sow the rest thickly for what it gives, or buy new.");
        break;
    case home::LotState::Doubtful:
        notes.push_back("The lot is " + std::to_string(lot.judgement.age_years.value_or(0)) +
                        " years old; such seed usually keeps " + std::to_string(lot.kind->keeps_years) +
                        " (common practice, no source). Count ten in a damp cloth first.");
        break;
    case home::LotState::Empty:
        notes.push_back("Nothing is left of the lot.");
        break;
    case home::LotState::Good:
        break;
    }
    const auto left = lot.book.seeds_left(lot.lot.id);
    if (left && needed && *left < *needed && *left > 0) {
        notes.push_back("The lot has " + std::to_string(*left) + " seeds left, fewer than the " + std::to_string(*needed) +
                        " that are needed.");
    }
    return notes;
}

void add_seed_adders(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<LotOptions>();
    CLI::App& command = *group.add_subcommand("lot", "A packet of seed");
    command.fallthrough();
    command.add_option("--crop", options->crop, "Common or botanical name")->required()->type_name("NAME");
    command.add_option("--name", options->name, "Your own word for the packet (default: crop and year)");
    command.add_option("--packed", options->packed, "Year on the packet")->type_name("YYYY");
    command.add_option("--germination", options->germination, "Stated on the label, percent")->type_name("PERCENT");
    command.add_option("--seeds", options->seeds, "Seeds in the packet, where you know it")->type_name("N");
    command.add_option("--note", options->note, "Anything else worth keeping");
    commands.on_run(command, [options](const Globals& globals) { return add_lot(globals, *options); });
}

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

void add_seed_lists(Commands& commands, CLI::App& group)
{
    CLI::App& lots = *group.add_subcommand("lots", "Lots of seed, what is left and how they germinate");
    lots.fallthrough();
    commands.on_run(lots, [](const Globals& globals) { return list_lots(globals); });
}

void add_seed_shows(Commands& commands, CLI::App& group)
{
    auto lot = std::make_shared<std::string>();
    CLI::App& command = *group.add_subcommand("lot", "One lot: its trays and counts");
    command.fallthrough();
    command.add_option("lot", *lot, "By id or name")->required()->type_name("ID");
    commands.on_run(command, [lot](const Globals& globals) { return show_lot(globals, *lot); });
}

} // namespace lathhouse::cli
