#include "app/text_fit.h"

#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>

namespace lathhouse {

namespace {

constexpr double kRounding = 1.5; // Pixels: widths of texts are rounded up, rooms down.

bool fits(const QQuickItem& text, double window_width)
{
    const double content = text.property("contentWidth").toDouble();
    const bool wraps = text.property("wrapMode").toInt() != 0; // Text.NoWrap
    if (text.property("truncated").toBool() || (!wraps && content > text.width() + kRounding)) {
        return false;
    }
    const double left = text.mapToScene(QPointF(0.0, 0.0)).x();
    const double right = text.mapToScene(QPointF(text.width(), 0.0)).x();
    return std::min(left, right) > -kRounding && std::max(left, right) < window_width + kRounding;
}

void collect(const QQuickItem& item, double window_width, QStringList& found)
{
    if (!item.isVisible() || item.opacity() == 0.0) {
        return;
    }
    if (item.inherits("QQuickText") && item.objectName() != QLatin1String("plantName") && !fits(item, window_width)) {
        found.append(item.property("text").toString());
    }
    for (const QQuickItem* child : item.childItems()) {
        collect(*child, window_width, found);
    }
}

} // namespace

QStringList texts_that_do_not_fit(const QQuickWindow& window)
{
    QStringList found;
    collect(*window.contentItem(), window.width(), found);
    return found;
}

} // namespace lathhouse
