#include "app/desktop.h"
#include "app/start_window.h"
#include "app/window.h"
#include "core/climate/station_table.h"
#include "tests/models/year_filler.h"
#include "tests/window/demonstration_round.h"
#include "tests/window/demonstration_year.h"

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <memory>
#include <string>
#include <string_view>

namespace {

using namespace lathhouse;

/// The first start half typed, at one of its steps, as `year_preview FILE.png WIDTH HEIGHT start STEP` draws it.
int draw_start(int& argc, char** argv)
{
    const auto towns = geodesy::TownTable::find().and_then([](const auto& file) { return geodesy::TownTable::load(file); });
    const auto stations = climate::StationTable::find().and_then(
        [](const auto& file) { return climate::StationTable::load(file); });
    if (!towns || !stations) {
        std::cerr << "year_preview: " << (towns ? stations.error() : towns.error()).message << '\n';
        return 1;
    }
    const StartOptions options{
        .door = {[&]() -> Result<const geodesy::TownTable*> { return &*towns; },
                 [&](Position position, std::optional<Metres> height) { return climate::climate_at(*stations, position, height); }},
        .folder = "/home/you/.local/share/lathhouse",
        .today = models::shown_today(),
        .step = argc > 5 ? std::atoi(argv[5]) - 1 : 0,
        .picture = argv[1],
        .width = std::atoi(argv[2]),
        .height = std::atoi(argv[3]),
        .fill =
            [](models::FirstStartModel& start) {
                start.place()->setFind(QStringLiteral("48.2, 20.8"));
                for (const int ready : {0, 1, 4, 5}) {
                    start.spots()->addReady(ready);
                }
                start.spots()->setCurrent(1);
                start.spots()->setInReach(true);
                for (const char* name : {"Citrus limon", "Ficus benjamina", "Nerium oleander", "Ocimum basilicum"}) {
                    start.plants()->setFind(QString::fromLatin1(name));
                    start.plants()->pick(0);
                }
                start.plants()->more(3);
                start.plants()->setFind(QStringLiteral("lav"));
            }};
    Desktop desktop(argc, argv, true);
    return run_start_window(options).status;
}

} // namespace

/// Draws a page: year_preview FILE.png [WIDTH HEIGHT [us | LATITUDE LONGITUDE | PAGE [SECTION] | plant ID]]. The year is that of
/// the invented household with invented numbers, or of the demonstration household at the place; the other pages
/// show the demonstration household with a cold night ahead and with seeds. SECTION is one of Home, from 0.
int main(int argc, char** argv)
{
    if (argc > 4 && std::string_view(argv[4]) == "start") {
        return draw_start(argc, argv);
    }
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
                          .mend = facts ? models::mend_in_memory(std::make_shared<models::MemoryHousehold>(*facts), {})
                                        : models::MendDoor{},
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
