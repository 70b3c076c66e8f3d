#include "app/cli/commands.h"
#include "app/cli/household_options.h"
#include "app/models/household_year.h"
#include "app/window.h"
#include "core/home/demonstration.h"

#include <iostream>

namespace {

using namespace lathhouse;

/// The household to show: for a self-test always the demonstration.
Result<home::Household> household_to_show(const cli::Globals& globals, const cli::WindowRequest& request)
{
    if (request.self_test) {
        return home::demonstration({.today = globals.today}).transform([](const home::Demonstration& shown) {
            return shown.household;
        });
    }
    return cli::household_of(globals, cli::WithoutHousehold::ShowsDemonstration);
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
        if (!request.page.empty() && request.page != "year") {
            return report(
                {ErrorCode::WrongUsage, "there is no page \"" + request.page + "\"; --page takes year"});
        }
        const auto household = household_to_show(globals, request);
        if (!household) {
            return report(household.error());
        }
        const auto climate = cli::climate_of(*household);
        if (!climate) {
            return report(climate.error());
        }
        auto shown = models::household_year(*household, *climate, globals.today, globals.units);
        WindowOptions options{.year = std::move(shown.year),
                              .solver = std::move(shown.solver),
                              .units = globals.units == words::UnitSystem::UsCustomary
                                           ? models::Units::Us
                                           : models::Units::Metric,
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
