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
    // The words themselves: in a window that is turned round their room may stand elsewhere.
    const double words = std::min(content, text.width());
    const int side = text.property("effectiveHorizontalAlignment").toInt();
    const double begin = side == Qt::AlignRight     ? text.width() - words
                         : side == Qt::AlignHCenter ? (text.width() - words) / 2.0
                                                    : 0.0;
    const double left = text.mapToScene(QPointF(begin, 0.0)).x();
    const double right = text.mapToScene(QPointF(begin + words, 0.0)).x();
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
