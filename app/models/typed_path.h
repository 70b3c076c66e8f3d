#pragma once

#include <QDir>
#include <QString>
#include <QUrl>

#include <filesystem>

namespace lathhouse::models {

/// What a person typed as a path, or a program handed over as an address: from the own folder where it is no whole one;
/// empty where nothing was typed.
inline QString whole_path(QString typed)
{
    typed = typed.trimmed();
    if (typed.startsWith(QLatin1String("file://"))) {
        typed = QUrl(typed).toLocalFile();
    }
    if (typed == QLatin1String("~") || typed.startsWith(QLatin1String("~/"))) {
        typed.replace(0, 1, QDir::homePath());
    }
    return typed.isEmpty() ? typed : QDir::cleanPath(QDir(QDir::homePath()).absoluteFilePath(typed));
}

inline std::filesystem::path to_path(const QString& words)
{
    return std::filesystem::path{words.toStdString()};
}

} // namespace lathhouse::models
