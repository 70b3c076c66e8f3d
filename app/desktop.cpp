#include "app/desktop.h"

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

} // namespace lathhouse
