#include "app/clock.h"
#include "app/cli/forecast_options.h"
#include "app/cli/list.h"
#include "app/cli/open_household.h"
#include "app/cli/seed_options.h"
#include "app/words/source_words.h"
#include "app/words/sowing_words.h"
#include "core/base/parse.h"
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

Json optional_json(const auto& value)
{
    return value ? Json(*value) : Json(nullptr);
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
        const auto lot = lot_known(*book, one, globals.today);
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

Result<LotKnown> lot_known(home::SeedBook book, const home::SeedLot& lot, calendar::Date today)
{
    const auto kind = plants::SeedReference::built_in().find(lot.crop);
    if (!kind) {
        return kind.error();
    }
    auto rate = home::lot_rate(lot, book, **kind);
    auto judgement = home::judge(lot, book, **kind, today);
    return LotKnown{std::move(book), lot, *kind, rate, judgement};
}

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
    return lot_known(std::move(*book), copy, globals.today);
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
