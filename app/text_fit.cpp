#include "app/text_fit.h"

#include <QColor>
#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>
#include <iterator>
#include <vector>

namespace lathhouse {

namespace {

constexpr double kRounding = 1.5; // Pixels: widths of texts are rounded up, rooms down.

/// Where the words themselves stand in the window: their room may be wider, and stand elsewhere in one that is turned round.
QRectF words_of(const QQuickItem& text)
{
    const double content = text.property("contentWidth").toDouble();
    const double high = text.property("contentHeight").toDouble();
    const double words = std::min(content, text.width());
    const int side = text.property("effectiveHorizontalAlignment").toInt();
    const int rest = text.property("verticalAlignment").toInt();
    const double begin = side == Qt::AlignRight     ? text.width() - words
                         : side == Qt::AlignHCenter ? (text.width() - words) / 2.0
                                                    : 0.0;
    const double top = rest == Qt::AlignBottom    ? text.height() - high
                       : rest == Qt::AlignVCenter ? (text.height() - high) / 2.0
                                                  : 0.0;
    return text.mapRectToScene(QRectF(begin, top, words, high));
}

bool fits(const QQuickItem& text, double window_width)
{
    const double content = text.property("contentWidth").toDouble();
    const bool wraps = text.property("wrapMode").toInt() != 0; // Text.NoWrap
    if (text.property("truncated").toBool() || (!wraps && content > text.width() + kRounding)) {
        return false;
    }
    const QRectF words = words_of(text);
    return window_width < 0.0 || (words.left() > -kRounding && words.right() < window_width + kRounding);
}

/// Words that are seen, and what lies under them.
struct Seen {
    QString words;
    QRectF where;
    const QQuickItem* ground; ///< The nearest item below that hides what lies behind it.
};

bool hides(const QQuickItem& item)
{
    return item.inherits("QQuickRectangle") && item.property("color").value<QColor>().alpha() == 255;
}

void collect_seen(const QQuickItem& item, QRectF part, const QQuickItem* ground, std::vector<Seen>& found)
{
    if (!item.isVisible() || item.opacity() == 0.0) {
        return;
    }
    if (item.clip()) {
        part &= item.mapRectToScene(QRectF(0.0, 0.0, item.width(), item.height()));
    }
    if (hides(item)) {
        ground = &item;
    }
    if (item.inherits("QQuickText")) {
        if (const QRectF where = words_of(item) & part; !where.isEmpty()) {
            found.push_back({item.property("text").toString(), where, ground});
        }
    }
    for (const QQuickItem* child : item.childItems()) {
        collect_seen(*child, part, ground, found);
    }
}

/// Whether what stands in it comes into sight from the sides, as photographs of a strip do.
bool scrolls_sideways(const QQuickItem& item)
{
    return item.clip() && item.inherits("QQuickFlickable") && item.property("contentWidth").toDouble() > item.width() + kRounding;
}

/// window_width: negative where no edge of the window counts.
void collect(const QQuickItem& item, double window_width, QStringList& found)
{
    if (!item.isVisible() || item.opacity() == 0.0) {
        return;
    }
    if (item.inherits("QQuickText") && !item.property("mayBeCut").toBool() && !fits(item, window_width)) {
        found.append(item.property("text").toString());
    }
    const double within = scrolls_sideways(item) ? -1.0 : window_width;
    for (const QQuickItem* child : item.childItems()) {
        collect(*child, within, found);
    }
}

} // namespace

QStringList texts_that_do_not_fit(const QQuickWindow& window)
{
    QStringList found;
    collect(*window.contentItem(), window.width(), found);
    return found;
}

QStringList texts_over_each_other(const QQuickWindow& window)
{
    std::vector<Seen> seen;
    collect_seen(*window.contentItem(), QRectF(QPointF(0.0, 0.0), window.size()), nullptr, seen);
    QStringList found;
    for (auto one = seen.begin(); one != seen.end(); ++one) {
        for (auto other = std::next(one); other != seen.end(); ++other) {
            const QRectF both = one->where & other->where;
            // Lines of text have some room above and below their letters.
            if (one->ground == other->ground && both.width() > 3.0 &&
                both.height() > 0.4 * std::min(one->where.height(), other->where.height())) {
                found.append(one->words + QStringLiteral(" / ") + other->words);
            }
        }
    }
    return found;
}

} // namespace lathhouse
