#include "app/window_look.h"

#include "app/spoken_items.h"
#include "app/text_fit.h"

#include <QImage>
#include <QQuickWindow>

#include <nlohmann/json.hpp>

#include <iostream>

namespace lathhouse {

namespace {

// 44 is the target size of the Web Content Accessibility Guidelines 2.2, criterion 2.5.5 (level AAA), 24 that of 2.5.8 (AA).
constexpr double kLeastForFingers = 44.0;
constexpr double kLeastForPointer = 24.0;

void add_new(QStringList& all, const QStringList& seen)
{
    for (const QString& one : seen) {
        if (!all.contains(one)) {
            all.append(one);
        }
    }
}

} // namespace

void WindowLook::look(QQuickWindow& window, const QString& name)
{
    const QImage shown = window.grabWindow(); // What is open is drawn in whole before it is looked at, and left.
    album.keep(name, shown);
    add_new(cut, texts_that_do_not_fit(window));
    QStringList together = texts_over_each_other(window);
    for (int tries = 0; tries < 3 && !together.isEmpty(); ++tries) { // Rows of a list move only when the next picture is drawn.
        static_cast<void>(window.grabWindow());
        together = texts_over_each_other(window);
    }
    add_new(over, together);
    add_new(nameless, items_that_say_nothing(window));
    add_new(small, items_too_small(window, window.property("touch").toBool() ? kLeastForFingers : kLeastForPointer));
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
