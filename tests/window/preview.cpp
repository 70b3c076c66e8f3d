#include "app/window.h"
#include "tests/models/year_filler.h"
#include "tests/window/demonstration_round.h"
#include "tests/window/demonstration_year.h"

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <memory>
#include <string>
#include <string_view>

/// Draws a page: year_preview FILE.png [WIDTH HEIGHT [us | LATITUDE LONGITUDE | PAGE [SECTION] | plant ID]]. The year is that of
/// the invented household with invented numbers, or of the demonstration household at the place; the other pages
/// show the demonstration household with a cold night ahead and with seeds. SECTION is one of Home, from 0.
int main(int argc, char** argv)
{
    using namespace lathhouse;
    const auto is_page = [](const std::string& word) {
        return std::ranges::find(window_pages(), word) != window_pages().end();
    };
    const models::YearData year = models::filled_year();
    const auto facts = models::demonstration_facts(models::shown_today()).transform([](const auto& plain) {
        return models::with_seeds(models::with_cold_night(plain, models::shown_today()), models::shown_today());
    });
    WindowOptions options{.year = year,
                          .solver = [year](Probability risk) { return models::filled_plan(year, risk); },
                          .round = facts ? models::round_in_memory(*facts) : models::no_round(facts.error()),
                          .door = facts ? models::door_to_memory(std::make_shared<models::MemoryHousehold>(*facts))
                                        : models::no_door(facts.error()),
                          .plants = facts ? models::plants_in_memory(std::make_shared<models::MemoryHousehold>(
                                                                         models::with_harm(*facts, models::shown_today())),
                                                                     models::demonstration_measurements(
                                                                         models::shown_today()))
                                          : models::no_plants(facts.error()),
                          .picture = std::nullopt};
    if (argc > 1) {
        options.picture = argv[1];
    }
    if (argc > 3) {
        options.width = std::atoi(argv[2]);
        options.height = std::atoi(argv[3]);
    }
    if (argc == 5 && std::string_view(argv[4]) == "us") {
        options.units = models::Units::Us;
    }
    if (argc == 6 && std::string_view(argv[4]) == "plant") {
        options.page = "plants";
        options.plant = std::atoi(argv[5]);
    } else if (argc > 4 && is_page(argv[4])) {
        options.page = argv[4];
        options.home_section = argc > 5 ? std::atoi(argv[5]) : 0;
    } else if (argc > 5) {
        const auto latitude = Latitude::from_degrees(std::atof(argv[4]));
        const auto longitude = Longitude::from_degrees(std::atof(argv[5]));
        if (!latitude || !longitude) {
            std::cerr << "year_preview: that is no latitude and longitude\n";
            return 2;
        }
        const home::Hemisphere hemisphere =
            latitude->degrees() < 0.0 ? home::Hemisphere::South : home::Hemisphere::North;
        auto shown = models::demonstration_year({.today = models::shown_today(), .hemisphere = hemisphere},
                                                Position{*latitude, *longitude});
        if (!shown) {
            std::cerr << "year_preview: " << shown.error().message << '\n';
            return 1;
        }
        options.year = std::move(shown->year);
        options.solver = std::move(shown->solver);
    }
    options.keeps_settings = false;
    options.self_test = !options.picture;
    int none = 1;
    return run_window(none, argv, std::move(options));
}
