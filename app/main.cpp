#include "app/cli/commands.h"
#include "app/cli/household_options.h"
#include "app/models/household_year.h"
#include "app/window.h"

#include <iostream>

namespace {

using namespace lathhouse;

/// Gathers what the window shows and opens it.
Result<int> open_window(int& argc, char** argv, const cli::Globals& globals, const cli::WindowRequest& request)
{
    if (!request.page.empty() && request.page != "year") {
        return Error{ErrorCode::WrongUsage, "there is no page \"" + request.page + "\"; there is: year"};
    }
    auto where = globals;
    if (request.self_test) { // The self-test is of the program, not of the grower's household.
        where.home = "";
        where.home_given = false;
    }
    const auto household = cli::household_of(where, cli::WithoutHousehold::ShowsDemonstration);
    if (!household) {
        return household.error();
    }
    const auto climate = cli::climate_of(*household);
    if (!climate) {
        return climate.error();
    }
    auto year = models::household_year(*household, *climate, globals.today, globals.units);
    if (!year) {
        return year.error();
    }
    WindowOptions options;
    options.year = std::move(year->data);
    options.solver = std::move(year->solver);
    options.units = globals.units == words::UnitSystem::Metric ? models::Units::Metric : models::Units::Us;
    options.self_test = request.self_test;
    if (request.picture) {
        options.picture = request.picture->string();
    }
    return run_window(argc, argv, std::move(options));
}

} // namespace

int main(int argc, char** argv)
{
    return cli::run(argc, argv, std::cout, std::cerr,
                    [&](const cli::Globals& globals, const cli::WindowRequest& request) {
                        const auto status = open_window(argc, argv, globals, request);
                        if (!status) {
                            std::cerr << "lathhouse: " << status.error().message << '\n';
                            return cli::exit_status(status.error());
                        }
                        return *status;
                    });
}
