#pragma once

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
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

/// What else writing the file would make: the folder that it is to lie in, where that is not there; else empty.
inline QString will_make_words(const QString& typed)
{
    const QString whole = whole_path(typed);
    const QString folder = whole.isEmpty() ? QString{} : QFileInfo(whole).path();
    return folder.isEmpty() || QFileInfo::exists(folder)
               ? QString{}
               : QCoreApplication::translate("lathhouse::models",
                                             "The folder %1 is not there yet; it is made when the file is written.")
                     .arg(folder);
}

inline std::filesystem::path to_path(const QString& words)
{
    return std::filesystem::path{words.toStdString()};
}

} // namespace lathhouse::models
