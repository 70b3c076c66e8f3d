#include "app/models/free_place.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace lathhouse::models {

QString file_name(const QString& words, const QString& otherwise)
{
    QString plain;
    for (const QChar letter : words.toLower()) {
        if (letter.isLetterOrNumber()) {
            plain += letter;
        } else if (!plain.isEmpty() && !plain.endsWith(QLatin1Char('-'))) {
            plain += QLatin1Char('-');
        }
    }
    while (plain.endsWith(QLatin1Char('-'))) {
        plain.chop(1);
    }
    return plain.isEmpty() ? otherwise : plain;
}

QString documents_folder()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return folder.isEmpty() || !QFileInfo(folder).isDir() ? QDir::homePath() : folder;
}

QString free_place(const QString& name, const QString& extension)
{
    const QString whole = documents_folder() + QLatin1Char('/') + name;
    QString free = whole + extension;
    for (int number = 2; QFileInfo::exists(free) && number < 1000; ++number) {
        free = whole + QLatin1Char('-') + QString::number(number) + extension;
    }
    return free;
}

} // namespace lathhouse::models
