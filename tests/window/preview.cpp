#include "app/window.h"
#include "tests/models/year_filler.h"

#include <cstdlib>
#include <string>

/// Draws the page Year of the invented household: preview FILE.png [WIDTH HEIGHT [us]].
int main(int argc, char** argv)
{
    using namespace lathhouse;
    const models::YearData year = models::filled_year();
    WindowOptions options{.year = year,
                          .solver = [year](Probability risk) { return models::filled_plan(year, risk); },
                          .picture = std::nullopt};
    if (argc > 1) {
        options.picture = argv[1];
    }
    if (argc > 3) {
        options.width = std::atoi(argv[2]);
        options.height = std::atoi(argv[3]);
    }
    if (argc > 4) {
        options.units = models::Units::Us;
    }
    options.self_test = !options.picture;
    int none = 1;
    return run_window(none, argv, std::move(options));
}
