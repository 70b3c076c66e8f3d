#include "app/models/kept_settings.h"

#include <QStandardPaths>

#include <optional>

namespace lathhouse::models {

KeptSettings::KeptSettings(const QString& file)
    // Qt has no settings without a file; one of no name in a folder that is none is never written.
    : keeps_(!file.isEmpty()),
      settings_(keeps_ ? file : QStringLiteral("/dev/null/nothing is kept.ini"), QSettings::IniFormat)
{
    settings_.setAtomicSyncRequired(true);
}

QString KeptSettings::usual_file()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation);
    return folder.isEmpty() ? QString{} : folder + QStringLiteral("/lathhouse/window.ini");
}

std::optional<int> KeptSettings::number(const QString& key, int least, int most) const
{
    bool is_number = false;
    const int number = settings_.value(key).toInt(&is_number);
    return is_number && number >= least && number <= most ? std::optional{number} : std::nullopt;
}

bool KeptSettings::keep(const QString& key, const QVariant& value)
{
    settings_.setValue(key, value);
    if (!keeps_) {
        return true;
    }
    settings_.sync();
    return settings_.status() == QSettings::NoError;
}

} // namespace lathhouse::models
