#pragma once

#include "app/album.h"

#include <QString>
#include <QStringList>

#include <nlohmann/json_fwd.hpp>

#include <string>

class QQuickWindow;

namespace lathhouse {

/// What a self-test sees of a window, each time it looks.
struct WindowLook {
    Album album;
    QStringList cut;      ///< Texts without room.
    QStringList over = {}; ///< Texts one over the other.
    QStringList nameless = {}; ///< Items without a name or role.
    QStringList small = {}; ///< What is pressed and too small for the pointer, or for a finger where fingers are in use.

    /// Adds what is shown now; its picture goes into the album by that name.
    void look(QQuickWindow& window, const QString& name);
};

/// Writes what the window shows as PNG; where that cannot be, says why on standard error and gives false.
bool save_picture(QQuickWindow& window, const std::string& file);

/// A list of texts, as a self-test's answer has it.
nlohmann::json json_lines(const QStringList& lines);

} // namespace lathhouse
