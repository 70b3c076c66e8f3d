#pragma once

#include "app/models/first_start_model.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

namespace lathhouse {

/// The window of the first start.
struct StartOptions {
    models::PlaceDoor door;
    std::filesystem::path folder; ///< Where the household will lie.
    calendar::Date today;
    models::ShownUnits units = models::Units::Metric; ///< Where nothing was chosen in the window before.
    int step = 0;                       ///< Shown first.
    bool self_test = false;             ///< Goes through the steps, prints one JSON line, ends.
    std::optional<std::string> picture; ///< Saves what is shown as a PNG file, ends.
    int width = 1280;
    int height = 800;
    /// Fills the forms before they are shown, for a picture.
    std::function<void(models::FirstStartModel&)> fill = {};
    /// What has no translation so far; a self-test fails by it. May be empty.
    std::function<QStringList()> untranslated = {};
};

enum class StartChoice {
    Left,    ///< The window was closed, or a picture or test is done.
    Made,    ///< The household is in its folder.
    Example, ///< The example household was asked for.
};
struct StartAnswer {
    StartChoice choice;
    int status; ///< To exit with, where there is nothing to open.
};

/// Opens the window of the first start and stays until it is answered. A Desktop must be there.
StartAnswer run_start_window(const StartOptions& options);

} // namespace lathhouse
