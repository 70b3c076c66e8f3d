#include "app/cli/jugs.h"

#include "app/clock.h"
#include "app/cli/household_options.h"
#include "app/cli/list.h"
#include "app/words/growing_words.h"
#include "core/journal/household_store.h"
#include "core/plan/kitchen_measures.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct JugOptions {
    std::string name;
    std::string amount;
};

Json json_of(const home::Jug& jug)
{
    return {{"name", jug.name}, {"litres", json_number(jug.volume.litres())}};
}

Result<Answer> add_jug(const Globals& globals, const JugOptions& options)
{
    const auto volume = plan::read_amount(options.amount);
    if (!volume) {
        return volume.error();
    }
    if (plan::is_measure(options.name)) {
        return Error{ErrorCode::OutOfRange,
                     "\"" + options.name + "\" is a measure already; give the jug another name"};
    }
    const auto jug = home::make_jug(options.name, *volume);
    if (!jug) {
        return jug.error();
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    if (const auto kept = store->keep_jug(*jug, now()); !kept) {
        return kept.error();
    }
    return Answer{json_of(*jug),
                  jug->name + " holds " + words::volume(jug->volume, globals.units) +
                      "; write it wherever an amount of water is asked for.\n",
                  {}};
}

Result<Answer> list_jugs(const Globals& globals)
{
    const auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    const auto jugs = store->jugs();
    if (!jugs) {
        return jugs.error();
    }
    Json rows = Json::array();
    std::vector<std::vector<std::string>> cells{{"jug", "holds"}};
    for (const auto& jug : *jugs) {
        rows.push_back(json_of(jug));
        cells.push_back({jug.name, words::volume(jug.volume, globals.units)});
    }
    return Answer{{{"jugs", rows}},
                  jugs->empty() ? "no jugs yet; add one with: lathhouse add jug 'blue can' '1.5 L'\n"
                                : table(cells),
                  {}};
}

} // namespace

void add_jug_command(Commands& commands, CLI::App& add)
{
    auto options = std::make_shared<JugOptions>();
    CLI::App& command = *add.add_subcommand("jug", "A jug or can that you measure water with");
    command.fallthrough();
    command.add_option("NAME", options->name, "What you call it")->required();
    command.add_option("AMOUNT", options->amount, "What it holds, such as '1.5 L' or '6 cup'")->required();
    commands.on_run(command, [options](const Globals& globals) { return add_jug(globals, *options); });
}

void add_jug_list(Commands& commands, CLI::App& list)
{
    CLI::App& command = *list.add_subcommand("jugs", "Jugs and cans that water is measured with");
    command.fallthrough();
    commands.on_run(command, [](const Globals& globals) { return list_jugs(globals); });
}

Result<std::vector<home::Jug>> jugs_of(const Globals& globals)
{
    if (!has_household(globals)) {
        return std::vector<home::Jug>{};
    }
    return journal::HouseholdStore::open(globals.home).and_then([](const auto& store) { return store.jugs(); });
}

} // namespace lathhouse::cli
