#pragma once

#include "app/models/settings_model.h"

#include <QGuiApplication>
#include <QSize>
#include <QTemporaryDir>

#include <memory>

namespace lathhouse {

/// The program's one connection to the desktop; windows are opened while it lives.
class Desktop {
public:
    /// ends_by_itself: a picture or a test, which draws into memory where there is no display.
    Desktop(int& argc, char** argv, bool ends_by_itself);

private:
    std::unique_ptr<QTemporaryDir> runtime_folder_;
    std::unique_ptr<QGuiApplication> application_;
};

/// Whether the desktop is dark, by its palette.
bool desktop_is_dark();

/// The size of a new window, or as much of it as the screen has free.
QSize within_screen(QSize wanted);

/// Tells the settings when the desktop goes from light to dark or back, and of the first finger on a window, while it lives.
class DesktopWatch : public QObject {
public:
    explicit DesktopWatch(models::SettingsModel& settings);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    models::SettingsModel& settings_;
};

/// What LATHHOUSE_THEME, LATHHOUSE_TEXT, LATHHOUSE_MOTION and LATHHOUSE_TOUCH ask for; a value that none of these takes is named on
/// standard error.
models::AskedSettings settings_of_surroundings();

} // namespace lathhouse
