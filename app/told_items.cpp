#include "app/told_items.h"

#include <QAccessible>
#include <QAccessibleObject>
#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickWindow>

namespace lathhouse {

namespace {

/// A property that a window gets whose boxes are told so.
constexpr char kMirrored[] = "lathhouse_mirrored_boxes";

/// The property of an item that says its role.
constexpr char kSpokenRole[] = "spokenRole";

/// What Qt tells of an item, but for its role where the item itself says it, and for where it lies in a mirror.
class ToldItem : public QAccessibleObject {
public:
    ToldItem(QQuickItem& item, QAccessibleInterface& told) : QAccessibleObject(&item), told_(told) {}

    bool isValid() const override { return QAccessibleObject::isValid(); }
    QRect rect() const override
    {
        const QQuickItem* of = item();
        if (!in_mirror(of) || told_.rect().isEmpty()) {
            return told_.rect();
        }
        // An item without a size of its own has one for Qt all the same.
        const QSizeF size = of->width() > 0.0 && of->height() > 0.0 ? of->size() : QSizeF(told_.rect().size());
        const QRect drawn = of->mapRectToScene(QRectF(QPointF(0.0, 0.0), size)).toRect();
        return {of->window()->mapToGlobal(drawn.topLeft()), drawn.size()};
    }
    QAccessible::State state() const override
    {
        QAccessible::State state = told_.state();
        if (const QQuickItem* of = item(); in_mirror(of)) {
            state.offscreen = !of->window()->geometry().intersects(rect());
        }
        return state;
    }
    QAccessibleInterface* childAt(int x, int y) const override
    {
        const QQuickItem* of = item();
        if (!in_mirror(of)) {
            return told_.childAt(x, y);
        }
        if (of->clip() && !rect().contains(x, y)) {
            return nullptr;
        }
        for (int at = childCount() - 1; at >= 0; --at) { // The last lies on top.
            QAccessibleInterface* next = child(at);
            if (next == nullptr || next->state().invisible) {
                continue;
            }
            if (QAccessibleInterface* within = next->childAt(x, y)) {
                return within;
            }
            if (next->rect().contains(x, y)) {
                return next;
            }
        }
        return nullptr;
    }

    QWindow* window() const override { return told_.window(); }
    QList<QPair<QAccessibleInterface*, QAccessible::Relation>> relations(QAccessible::Relation match) const override
    {
        return told_.relations(match);
    }
    QAccessibleInterface* focusChild() const override { return told_.focusChild(); }
    QAccessibleInterface* parent() const override { return told_.parent(); }
    QAccessibleInterface* child(int index) const override { return told_.child(index); }
    int childCount() const override { return told_.childCount(); }
    int indexOfChild(const QAccessibleInterface* of) const override { return told_.indexOfChild(of); }
    QString text(QAccessible::Text of) const override { return told_.text(of); }
    void setText(QAccessible::Text of, const QString& text) override { told_.setText(of, text); }
    QAccessible::Role role() const override
    {
        const QVariant said = object() == nullptr ? QVariant{} : object()->property(kSpokenRole);
        return said.isValid() ? static_cast<QAccessible::Role>(said.toInt()) : told_.role();
    }
    QColor foregroundColor() const override { return told_.foregroundColor(); }
    QColor backgroundColor() const override { return told_.backgroundColor(); }
    void* interface_cast(QAccessible::InterfaceType type) override { return told_.interface_cast(type); }

    static bool in_mirror(const QQuickItem* item)
    {
        return item != nullptr && item->window() != nullptr && item->window()->property(kMirrored).toBool();
    }

private:
    const QQuickItem* item() const { return static_cast<const QQuickItem*>(object()); }

    QAccessibleInterface& told_;
};

QAccessibleInterface* told_item(const QString&, QObject* object)
{
    static bool asking_qt = false;
    auto* item = asking_qt ? nullptr : qobject_cast<QQuickItem*>(object);
    // Qt asks once for each item, and may do so before its window is mirrored.
    const bool may_be_mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    if (item == nullptr || (!may_be_mirrored && !ToldItem::in_mirror(item) && !item->property(kSpokenRole).isValid())) {
        return nullptr;
    }
    asking_qt = true;
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(item);
    asking_qt = false;
    if (told == nullptr) {
        return nullptr;
    }
    // Qt's stays as long as the item: it was remembered first, so its end is heard of first.
    QObject::connect(item, &QObject::destroyed, [id = QAccessible::uniqueId(told)] { QAccessible::deleteAccessibleInterface(id); });
    return new ToldItem(*item, *told);
}

} // namespace

void tell_spoken_roles()
{
    static bool told = false;
    if (!told) {
        QAccessible::installFactory(told_item);
        told = true;
    }
}

void tell_mirrored_boxes(QQuickWindow& window)
{
    window.setProperty(kMirrored, true);
    tell_spoken_roles();
}

} // namespace lathhouse
