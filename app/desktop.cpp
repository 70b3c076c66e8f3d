#include "app/desktop.h"

#include <QEvent>
#include <QPalette>
#include <QScreen>

#include <iostream>

namespace lathhouse {

namespace {

bool has_display()
{
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

} // namespace

Desktop::Desktop(int& argc, char** argv, bool ends_by_itself)
{
    if (ends_by_itself && !has_display()) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        qputenv("QT_QUICK_BACKEND", "software");
    }
    if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR")) {
        runtime_folder_ = std::make_unique<QTemporaryDir>();
        qputenv("XDG_RUNTIME_DIR", runtime_folder_->path().toUtf8());
    }
    application_ = std::make_unique<QGuiApplication>(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("lathhouse"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Lathhouse"));
}

QSize within_screen(QSize wanted)
{
    const QScreen* screen = QGuiApplication::primaryScreen();
    return screen != nullptr ? wanted.boundedTo(screen->availableSize()) : wanted;
}

bool desktop_is_dark()
{
    const QPalette palette = QGuiApplication::palette();
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

models::AskedSettings settings_of_surroundings()
{
    models::AskedSettings asked;
    const QString theme = qEnvironmentVariable("LATHHOUSE_THEME");
    if (theme == QLatin1String("light") || theme == QLatin1String("dark") || theme == QLatin1String("contrast")) {
        asked.theme = theme;
    } else if (!theme.isEmpty()) {
        std::cerr << "lathhouse: LATHHOUSE_THEME takes light, dark or contrast, not \"" << theme.toStdString()
                  << "\"; the colours stay as they are\n";
    }
    if (qEnvironmentVariableIsSet("LATHHOUSE_TEXT")) {
        bool is_number = false;
        const int wanted = qEnvironmentVariableIntValue("LATHHOUSE_TEXT", &is_number);
        if (is_number && wanted >= models::SettingsModel::kSmallestText && wanted <= models::SettingsModel::kLargestText) {
            asked.text_percent = wanted;
        } else {
            std::cerr << "lathhouse: LATHHOUSE_TEXT takes a whole number from 85 to 200, not \""
                      << qEnvironmentVariable("LATHHOUSE_TEXT").toStdString() << "\"; the text stays as it is\n";
        }
    }
    const QString motion = qEnvironmentVariable("LATHHOUSE_MOTION");
    if (motion == QLatin1String("reduced") || motion == QLatin1String("full")) {
        asked.reduced_motion = motion == QLatin1String("reduced");
    } else if (!motion.isEmpty()) {
        std::cerr << "lathhouse: LATHHOUSE_MOTION takes full or reduced, not \"" << motion.toStdString()
                  << "\"; it is left as it is\n";
    }
    const QString touch = qEnvironmentVariable("LATHHOUSE_TOUCH");
    if (touch == QLatin1String("on") || touch == QLatin1String("off")) {
        asked.touch = touch == QLatin1String("on");
    } else if (!touch.isEmpty()) {
        std::cerr << "lathhouse: LATHHOUSE_TOUCH takes on or off, not \"" << touch.toStdString() << "\"; it is left as it is\n";
    }
    return asked;
}

DesktopWatch::DesktopWatch(models::SettingsModel& settings) : settings_(settings)
{
    settings_.set_desktop_dark(desktop_is_dark());
    QCoreApplication::instance()->installEventFilter(this);
}

bool DesktopWatch::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ApplicationPaletteChange) {
        settings_.set_desktop_dark(desktop_is_dark());
    } else if (event->type() == QEvent::TouchBegin) {
        settings_.set_touched();
    }
    return QObject::eventFilter(watched, event);
}

} // namespace lathhouse
