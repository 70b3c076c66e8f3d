#pragma once

#include "app/models/changes_model.h"
#include "app/models/household_door.h"
#include "app/models/plant_door.h"
#include "app/models/round_source.h"
#include "app/models/year_data.h"
#include "app/models/year_words.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse {

/// What the window is to show, and how.
struct WindowOptions {
    models::YearData year;
    models::YearSolver solver;
    models::YearDoor year_door; ///< The page Year follows the household by it.
    models::RoundSource round;
    models::HouseholdDoor door; ///< The other pages read and write by it.
    models::PlantDoor plants;   ///< The page Plants.
    models::TurnLast turn;      ///< Undo and redo of the whole window.
    /// Whether anyone wrote into the household since it was asked last; asked every two seconds. May be empty.
    std::function<bool()> written_elsewhere;
    models::Units units = models::Units::Metric;
    std::string page = "year";          ///< One of window_pages: what is shown first.
    int plant = 0; ///< The plant whose page is opened first, where the page is "plants"; 0: none.
    int home_section = 0;               ///< Of the page Home: 0 place, 1 spots, 2 thermometer.
    bool self_test = false;             ///< Loads every page, prints one JSON line, ends.
    std::optional<std::string> picture; ///< Saves what the page shows as a PNG file, ends.
    int width = 1280;
    int height = 800;
};

/// Names of the pages, in the order of their tabs.
const std::vector<std::string>& window_pages();

/// Opens the window and stays until it is closed; returns the exit status. Without a display, `self_test` and
/// `picture` draw into memory with software. Environment: LATHHOUSE_THEME (light, dark, contrast) replaces what
/// the desktop says; LATHHOUSE_TEXT (85 to 200, parts of a hundred) is the size of the text; with
/// LATHHOUSE_MOTION=reduced nothing moves. A value that none of these takes is named on standard error.
int run_window(int& argc, char** argv, WindowOptions options);

} // namespace lathhouse
