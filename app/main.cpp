#include "app/cli/commands.h"
#include "app/cli/household_facts.h"
#include "app/cli/household_options.h"
#include "app/models/household_year.h"
#include "app/models/round_source.h"
#include "app/window.h"
#include "core/home/demonstration.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace {

using namespace lathhouse;

/// The household to show, with what its round is made of.
struct Shown {
    home::Household household;
    std::vector<home::Event> history; ///< Of the demonstration; a folder's is read by the round itself.
    bool from_folder;
};

/// For a self-test, and where the caller has no household, the demonstration.
Result<Shown> household_to_show(const cli::Globals& globals, const cli::WindowRequest& request)
{
    if (request.self_test || (!cli::has_household(globals) && !globals.home_given)) {
        return home::demonstration({.today = globals.today}).transform([](const home::Demonstration& shown) {
            return Shown{shown.household, shown.history, false};
        });
    }
    return cli::household_of(globals, cli::WithoutHousehold::IsAnError)
        .transform([](const home::Household& own) {
            return Shown{own, {}, true};
        });
}

/// Where the pages read and write.
struct Doors {
    models::RoundSource round;
    models::HouseholdDoor others;
};

Doors doors_of(const cli::Globals& globals, const Shown& shown, const climate::PlaceClimate& climate)
{
    if (shown.from_folder) {
        const auto load = [globals] { return cli::household_facts(globals); };
        return {models::round_in_folder(globals.home, load), models::door_to_folder(globals.home, load)};
    }
    const auto household = std::make_shared<models::MemoryHousehold>(plan::HouseholdFacts{
        .as_told = shown.household, .log = {}, .events = shown.history, .climate = climate});
    return {models::round_in_memory(household), models::door_to_memory(household)};
}

int report(const Error& error)
{
    std::cerr << "lathhouse: " << error.message << '\n';
    return cli::exit_status(error);
}

} // namespace

int main(int argc, char** argv)
{
    const auto open_window = [argv](const cli::Globals& globals, const cli::WindowRequest& request) {
        if (!request.page.empty() && std::ranges::find(window_pages(), request.page) == window_pages().end()) {
            return report({ErrorCode::WrongUsage, "there is no page \"" + request.page +
                                                      "\"; --page takes round, year, seeds or home"});
        }
        const auto to_show = household_to_show(globals, request);
        if (!to_show) {
            return report(to_show.error());
        }
        const auto climate = cli::climate_of(to_show->household);
        if (!climate) {
            return report(climate.error());
        }
        auto doors = doors_of(globals, *to_show, *climate);
        auto shown = models::household_year(to_show->household, *climate, globals.today, globals.units);
        WindowOptions options{.year = std::move(shown.year),
                              .solver = std::move(shown.solver),
                              .round = std::move(doors.round),
                              .door = std::move(doors.others),
                              .units = globals.units == words::UnitSystem::UsCustomary
                                           ? models::Units::Us
                                           : models::Units::Metric,
                              .page = request.page.empty() ? "year" : request.page,
                              .self_test = request.self_test,
                              .picture = std::nullopt};
        if (request.picture) {
            options.picture = request.picture->string();
        }
        int none = 1; // The command line has been read; Qt gets the program's name alone.
        return run_window(none, argv, std::move(options));
    };
    return cli::run(argc, argv, std::cout, std::cerr, open_window);
}
