#include "app/window_look.h"

#include "app/spoken_items.h"
#include "app/text_fit.h"

#include <QImage>
#include <QQuickWindow>

#include <nlohmann/json.hpp>

#include <iostream>

namespace lathhouse {

void WindowLook::look(QQuickWindow& window, const QString& name)
{
    const QImage shown = window.grabWindow(); // What is open is drawn in whole before it is looked at, and left.
    album.keep(name, shown);
    for (const QString& text : texts_that_do_not_fit(window)) {
        if (!cut.contains(text)) {
            cut.append(text);
        }
    }
    for (const QString& item : items_that_say_nothing(window)) {
        if (!nameless.contains(item)) {
            nameless.append(item);
        }
    }
}

bool save_picture(QQuickWindow& window, const std::string& file)
{
    const QImage shown = window.grabWindow();
    if (!shown.isNull() && shown.save(QString::fromStdString(file), "PNG")) {
        return true;
    }
    std::cerr << "lathhouse: the picture could not be written to " << file
              << "; check that its folder exists and can be written\n";
    return false;
}

nlohmann::json json_lines(const QStringList& lines)
{
    auto all = nlohmann::json::array();
    for (const QString& line : lines) {
        all.push_back(line.toStdString());
    }
    return all;
}

} // namespace lathhouse
