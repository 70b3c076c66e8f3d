#include "app/spoken_items.h"

#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>

#include <gtest/gtest.h>

#include <memory>

namespace lathhouse {
namespace {

QStringList said_of(const char* items)
{
    QQmlEngine engine;
    QQmlComponent component(&engine);
    component.setData(QByteArray("import QtQuick\nimport QtQuick.Window\nWindow { visible: true; width: 90; height: 90\n") + items + "}", {});
    const std::unique_ptr<QObject> window(component.create());
    EXPECT_NE(window, nullptr) << component.errorString().toStdString();
    return items_that_say_nothing(*qobject_cast<QQuickWindow*>(window.get()));
}

TEST(SpokenItems, AStopOfTheKeyboardWithoutARoleIsFound)
{
    EXPECT_EQ(said_of("Item { objectName: \"stop\"; activeFocusOnTab: true }"), QStringList{"no role: stop"});
}

TEST(SpokenItems, AButtonWithoutANameIsFoundAlsoInside)
{
    EXPECT_EQ(said_of("Item { objectName: \"box\"; Item { objectName: \"press\"; Accessible.role: Accessible.Button } }"),
              QStringList{"no name: press in box"});
    EXPECT_EQ(said_of("Item { objectName: \"press\"; Accessible.role: Accessible.Button; Accessible.name: \"  \" }").size(), 1);
}

TEST(SpokenItems, WhatIsNamedOrNotThereIsInOrder)
{
    EXPECT_TRUE(said_of("Item { activeFocusOnTab: true; Accessible.role: Accessible.Slider; Accessible.name: \"Risk\" }").isEmpty());
    EXPECT_TRUE(said_of("Item { visible: false; Item { activeFocusOnTab: true } }").isEmpty());
    EXPECT_TRUE(said_of("Item { Text { text: \"words\" } }").isEmpty());
}

} // namespace
} // namespace lathhouse
