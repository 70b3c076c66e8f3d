#pragma once

#include "app/models/changes_model.h"
#include "app/models/home_record_model.h"
#include "app/models/calendar_model.h"
#include "app/models/household_door.h"
#include "app/models/jug_door.h"
#include "app/models/mend_door.h"
#include "app/models/people_door.h"
#include "app/models/plant_door.h"
#include "app/models/round_source.h"
#include "app/models/year_data.h"
#include "app/models/year_words.h"

#include <QStringList>

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

class QQmlApplicationEngine;
class QQmlComponent;
class QQuickWindow;

namespace lathhouse {

struct WindowModels;

/// What draws a window, with its first part compiled: some hundredths of a second for which the household need not be known yet.
class WindowEngine {
public:
    /// After the desktop, on its thread.
    WindowEngine();
    ~WindowEngine();
    WindowEngine(const WindowEngine&) = delete;
    WindowEngine& operator=(const WindowEngine&) = delete;
    QQmlApplicationEngine& engine() { return *engine_; }
    /// Makes what was compiled.
    void load();

private:
    std::unique_ptr<QQmlApplicationEngine> engine_;
    std::unique_ptr<QQmlComponent> compiled_; ///< Kept, so that it is not compiled again.
};

/// What the window is to show, and how.
struct WindowOptions {
    models::YearData year;
    models::YearSolver solver;
    models::YearDoor year_door; ///< The page Year follows the household by it.
    models::RoundSource round;
    models::HouseholdDoor door; ///< The other pages read and write by it.
    models::PlantDoor plants;   ///< The page Plants.
    models::MendDoor mend;      ///< Changes of the household itself.
    models::TurnLast turn;      ///< Undo and redo of the whole window.
    /// Whether anyone wrote into the household since it was asked last; asked every two seconds. May be empty.
    std::function<bool()> written_elsewhere = {};
    models::CalendarDoor calendar = {}; ///< Writes the tasks of the year; empty: none can be written.
    models::PeopleDoor people = {}; ///< Children and animals; without a `load` that section is not there.
    models::RecordDoor record = {}; ///< The household's own record; without a `load` that section is not there.
    models::JugDoor jugs = {}; ///< The household's cans and spoons; empty: none is kept.
    models::ShownUnits units = models::Units::Metric; ///< Shared with what solves the year.
    bool units_given = false; ///< Asked for at the start, so that what was chosen before does not count.
    std::optional<std::filesystem::path> folder = {}; ///< The household's; nullopt where it lies in memory.
    std::optional<std::string> language = {}; ///< Asked for at the start; one of models::kWindowLanguages, or models::kMirror.
    std::function<QStringList()> untranslated = {}; ///< What has no translation so far; a self-test fails by it. May be empty.
    /// When the window was asked for: the first frame is timed from there.
    std::chrono::steady_clock::time_point opened = std::chrono::steady_clock::now();
    bool keeps_settings = true; ///< Reads and keeps what the person chose; never in a self-test.
    std::string page = "year";          ///< One of window_pages: what is shown first.
    int plant = 0; ///< The plant whose page is opened first, where the page is "plants"; 0: none.
    int home_section = 0;               ///< Of the page Home: a place in home_sections().
    bool self_test = false;             ///< Loads every page, prints one JSON line, ends.
    std::optional<std::string> picture = {}; ///< Saves what the page shows as a PNG file, ends.
    int width = 1280;
    int height = 800;
    std::unique_ptr<WindowEngine> engine = {}; ///< Made by the window where there is none.
    /// Called once the window is made, for who goes through it and measures; ends before it does. May be empty.
    std::function<void(QQuickWindow&, const WindowModels&)> made = {};
};

/// Names of the pages, in the order of their tabs.
const std::vector<std::string>& window_pages();

/// Names of the sections of Home, in their order.
const std::vector<std::string>& home_sections();

/// Opens the window and stays until it is closed; returns the exit status. Without a display, `self_test` and
/// `picture` draw into memory with software. Environment: LATHHOUSE_THEME (light, dark, contrast) replaces what
/// the desktop says; LATHHOUSE_TEXT (85 to 200, parts of a hundred) is the size of the text; with
/// LATHHOUSE_MOTION=reduced nothing moves, with
/// LATHHOUSE_TOUCH=on what is pressed is large enough for fingers. They go before what was chosen in Home's settings. A value that none of
/// these takes is named on standard error.
int run_window(int& argc, char** argv, WindowOptions options);

} // namespace lathhouse
