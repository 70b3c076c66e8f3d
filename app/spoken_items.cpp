#include "app/spoken_items.h"

#include <QAccessible>
#include <QMetaEnum>
#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>
#include <iterator>

namespace lathhouse {

namespace {

constexpr QAccessible::Role kActing[] = {
    QAccessible::Button,   QAccessible::CheckBox, QAccessible::RadioButton, QAccessible::Slider, QAccessible::SpinBox,
    QAccessible::ComboBox, QAccessible::PageTab,  QAccessible::ListItem,    QAccessible::Link,   QAccessible::EditableText,
    QAccessible::MenuItem, QAccessible::Row,      QAccessible::Chart,       QAccessible::Table};

bool acts(QAccessible::Role role)
{
    return std::ranges::find(kActing, role) != std::end(kActing);
}

/// The item by its objectName, else by its class, with where it stands.
QString named(const QQuickItem& item)
{
    QString name = item.objectName().isEmpty() ? QString::fromLatin1(item.metaObject()->className()) : item.objectName();
    for (const QQuickItem* above = item.parentItem(); above != nullptr; above = above->parentItem()) {
        if (!above->objectName().isEmpty()) {
            return name + QStringLiteral(" in ") + above->objectName();
        }
    }
    return name;
}

/// What it says of itself beside its name.
QString state_words(const QAccessibleInterface& spoken)
{
    const QAccessible::State state = spoken.state();
    const QAccessible::Role role = spoken.role();
    const bool ticks = role == QAccessible::CheckBox || role == QAccessible::RadioButton;
    return (ticks && !state.checkable ? QStringLiteral(", not checkable") : QString{}) +
           (state.checked ? QStringLiteral(", checked") : QString{}) + (state.selected ? QStringLiteral(", selected") : QString{});
}

constexpr QAccessible::Role kMet[] = {QAccessible::Button,  QAccessible::CheckBox, QAccessible::RadioButton, QAccessible::Slider,
                                      QAccessible::PageTab, QAccessible::Link,     QAccessible::EditableText};

void add_small(QQuickItem& item, double least, QStringList& small)
{
    if (!item.isVisible()) {
        return;
    }
    const QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&item);
    if (spoken != nullptr && item.isEnabled() && std::ranges::find(kMet, spoken->role()) != std::end(kMet) &&
        (item.width() < least || item.height() < least)) {
        small.append(QStringLiteral("%1 \"%2\", %3 x %4")
                         .arg(named(item), spoken->text(QAccessible::Name)).arg(item.width()).arg(item.height()));
    }
    for (QQuickItem* child : item.childItems()) {
        add_small(*child, least, small);
    }
}

void add_items(QQuickItem& item, QStringList& silent)
{
    if (!item.isVisible()) {
        return;
    }
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&item);
    const QAccessible::Role role = spoken == nullptr ? QAccessible::NoRole : spoken->role();
    const bool stops = item.isEnabled() && item.activeFocusOnTab();
    if (stops && role == QAccessible::NoRole) {
        silent.append(QStringLiteral("no role: ") + named(item));
    } else if ((stops || acts(role)) && spoken->text(QAccessible::Name).trimmed().isEmpty()) {
        silent.append(QStringLiteral("no name: ") + named(item));
    }
    for (QQuickItem* child : item.childItems()) {
        add_items(*child, silent);
    }
}

} // namespace

QStringList items_that_say_nothing(QQuickWindow& window)
{
    QAccessible::setActive(true);
    QStringList silent;
    add_items(*window.contentItem(), silent);
    return silent;
}

QStringList items_too_small(QQuickWindow& window, double least)
{
    QAccessible::setActive(true);
    QStringList small;
    add_small(*window.contentItem(), least, small);
    return small;
}

QStringList stops_in_order(QQuickWindow& window)
{
    QAccessible::setActive(true);
    QStringList stops;
    QList<const QQuickItem*> met;
    const auto roles = QMetaEnum::fromType<QAccessible::Role>();
    for (QQuickItem* item = window.contentItem()->nextItemInFocusChain(true); item != nullptr && !met.contains(item);
         item = item->nextItemInFocusChain(true)) {
        met.append(item);
        if (item == window.contentItem() || !item->activeFocusOnTab() || !item->isVisible() || !item->isEnabled()) {
            continue;
        }
        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(item);
        const QAccessible::Role role = spoken == nullptr ? QAccessible::NoRole : spoken->role();
        stops.append(QStringLiteral("%1: %2%3").arg(QLatin1String(roles.valueToKey(role)),
                                                    spoken == nullptr ? QString{} : spoken->text(QAccessible::Name),
                                                    spoken == nullptr ? QString{} : state_words(*spoken)));
    }
    return stops;
}

} // namespace lathhouse
