#pragma once

#include <QImage>
#include <QSize>
#include <QString>
#include <QStringList>

#include <optional>

namespace lathhouse {

/// Pictures of all that a self-test opens, so that people can look at it: NAME.png in the folder that the environment
/// names with LATHHOUSE_PICTURES; none without it.
class Album {
public:
    /// The folder is made where it is missing.
    static Album of_environment();

    bool wanted() const { return !folder_.isEmpty(); }
    /// Writes a picture unless there is one of that name. What cannot be written is told on standard error.
    void keep(const QString& name, const QImage& shown);
    QStringList names() const { return names_; }

private:
    QString folder_;
    QStringList names_;
};

/// Width and height of a window that is tested, from the environment's LATHHOUSE_SIZE ("1024x600"); nullopt where it
/// says none, or none that a window has.
std::optional<QSize> size_of_environment();

} // namespace lathhouse
