#include "app/models/free_place.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace lathhouse::models {

QString file_name(const QString& words)
{
    QString name;
    for (const QChar letter : words) {
        name += letter.isLetterOrNumber() ? letter.toLower() : QLatin1Char('-');
    }
    while (name.contains(QLatin1String("--"))) {
        name.replace(QLatin1String("--"), QLatin1String("-"));
    }
    while (name.endsWith(QLatin1Char('-'))) {
        name.chop(1);
    }
    return name.isEmpty() ? QStringLiteral("household") : name;
}

QString free_place(const QString& name, const QString& extension)
{
    QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    if (folder.isEmpty() || !QFileInfo(folder).isDir()) {
        folder = QDir::homePath();
    }
    const QString whole = folder + QLatin1Char('/') + name;
    QString free = whole + extension;
    for (int number = 2; QFileInfo::exists(free) && number < 1000; ++number) {
        free = whole + QLatin1Char('-') + QString::number(number) + extension;
    }
    return free;
}

} // namespace lathhouse::models
