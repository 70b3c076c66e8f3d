#include "app/mirrored_sides.h"

#include "app/told_items.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QMatrix4x4>
#include <QQuickItem>
#include <QQuickPaintedItem>
#include <QQuickWindow>

namespace lathhouse {

namespace {

/// Where the axis of the mirror lies in an item.
qreal axis_of_middle(const QQuickItem& item)
{
    return item.width() / 2.0;
}

/// A text is turned about its own words, so that they stay at the end of its room that they have been set to.
qreal axis_of_words(const QQuickItem& text)
{
    const double content = text.property("contentWidth").toDouble();
    if (content >= text.width()) {
        return axis_of_middle(text);
    }
    const bool reads_leftwards = text.property("text").toString().isRightToLeft();
    const int side = text.property("effectiveHorizontalAlignment").toInt();
    if (side == Qt::AlignLeft) {
        return content / 2.0;
    }
    return side == Qt::AlignRight && !reads_leftwards ? text.width() - content / 2.0 : axis_of_middle(text);
}

class Mirror : public QQuickTransform {
public:
    using Axis = qreal (*)(const QQuickItem&);

    /// Belongs to the item.
    Mirror(QQuickItem& item, Axis axis) : QQuickTransform(&item), item_(item), axis_(axis)
    {
        appendToItem(&item);
        connect(&item, SIGNAL(widthChanged()), this, SLOT(update()));
        if (axis == &axis_of_words) {
            // The class of a text is not public; its signals are.
            connect(&item, SIGNAL(contentSizeChanged()), this, SLOT(update()));
            connect(&item, SIGNAL(effectiveHorizontalAlignmentChanged()), this, SLOT(update()));
            connect(&item, SIGNAL(textChanged(QString)), this, SLOT(update()));
        }
    }

    void applyTo(QMatrix4x4* matrix) const override
    {
        const auto axis = static_cast<float>(axis_(item_));
        matrix->translate(axis, 0.0F);
        matrix->scale(-1.0F, 1.0F, 1.0F);
        matrix->translate(-axis, 0.0F);
    }

private:
    QQuickItem& item_;
    Axis axis_;
};

/// Has the arrow keys of a window go where they point.
class PointingKeys : public QObject {
public:
    /// Belongs to the window.
    explicit PointingKeys(QQuickWindow& window) : QObject(&window), window_(window) { window.installEventFilter(this); }

    bool eventFilter(QObject*, QEvent* event) override
    {
        const auto type = event->type();
        if (turning_ || (type != QEvent::KeyPress && type != QEvent::KeyRelease)) {
            return false;
        }
        const auto& key = static_cast<const QKeyEvent&>(*event);
        const QQuickItem* focus = window_.activeFocusItem();
        if ((key.key() != Qt::Key_Left && key.key() != Qt::Key_Right) || focus == nullptr ||
            focus->mapToScene({1.0, 0.0}).x() > focus->mapToScene({0.0, 0.0}).x()) {
            return false;
        }
        QKeyEvent turned(type, key.key() == Qt::Key_Left ? Qt::Key_Right : Qt::Key_Left, key.modifiers(), key.text(),
                         key.isAutoRepeat(), static_cast<quint16>(key.count()));
        turned.setTimestamp(key.timestamp());
        turning_ = true;
        QCoreApplication::sendEvent(&window_, &turned);
        turning_ = false;
        event->setAccepted(turned.isAccepted());
        return true;
    }

private:
    QQuickWindow& window_;
    bool turning_ = false;
};

/// A property that an item gets once it was turned.
constexpr char kSeen[] = "lathhouse_side_seen";

void turn_back(QQuickItem& item);

void turn_children_back(QQuickItem& item)
{
    for (QQuickItem* child : item.childItems()) {
        turn_back(*child);
    }
}

void turn_back(QQuickItem& item)
{
    if (item.property(kSeen).toBool()) { // It only went to another parent.
        return;
    }
    item.setProperty(kSeen, true);
    if (item.inherits("QQuickText")) {
        new Mirror(item, axis_of_words);
        return;
    }
    if (item.inherits("QQuickTextInput") || item.inherits("QQuickTextEdit") || item.inherits("QQuickImageBase") ||
        qobject_cast<QQuickPaintedItem*>(&item) != nullptr || item.property("keepsSides").toBool()) {
        new Mirror(item, axis_of_middle);
        return;
    }
    QObject::connect(&item, &QQuickItem::childrenChanged, &item, [&item] { turn_children_back(item); });
    turn_children_back(item);
}

} // namespace

void mirror_sides(QQuickWindow& window)
{
    QQuickItem& all = *window.contentItem();
    new PointingKeys(window);
    tell_mirrored_boxes(window);
    new Mirror(all, axis_of_middle);
    QObject::connect(&all, &QQuickItem::childrenChanged, &all, [&all] { turn_children_back(all); });
    turn_children_back(all);
}

} // namespace lathhouse
