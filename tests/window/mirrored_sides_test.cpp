#include "app/mirrored_sides.h"
#include "app/told_items.h"

#include <QAccessible>
#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include <gtest/gtest.h>

#include <memory>

namespace lathhouse {
namespace {

/// A window of 200 pixels with what the test puts into it, turned round.
class MirroredSides : public testing::Test {
protected:
    MirroredSides()
    {
        tell_spoken_roles();
        QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    }
    ~MirroredSides() override { QGuiApplication::setLayoutDirection(Qt::LeftToRight); }
    QQuickItem* open(const char* items)
    {
        return item_of(QByteArray(items));
    }
    QQuickItem* item_of(const QByteArray& items)
    {
        QQmlComponent component(&engine);
        component.setData("import QtQuick\nimport QtQuick.Window\nimport QtQuick.Templates as T\n"
                          "Window { visible: true; width: 200; height: 100\n" + items + "}", {});
        window.reset(qobject_cast<QQuickWindow*>(component.create()));
        EXPECT_NE(window, nullptr) << component.errorString().toStdString();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(window.get())); // Then what stands in it has its size.
        mirror_sides(*window);
        window->requestActivate();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
        return window->findChild<QQuickItem*>("looked");
    }
    /// Where its own left and right edges stand in the window.
    static double left(const QQuickItem& item) { return item.mapToScene({0.0, 0.0}).x(); }
    static double right(const QQuickItem& item) { return item.mapToScene({item.width(), 0.0}).x(); }

    QQmlEngine engine;
    std::unique_ptr<QQuickWindow> window;
};

TEST_F(MirroredSides, WhatStoodAtTheLeftStandsAtTheRight)
{
    const auto* item = open("Item { objectName: \"looked\"; x: 10; width: 30; height: 20 }");
    EXPECT_NEAR(left(*item), 190.0, 0.01);
    EXPECT_NEAR(right(*item), 160.0, 0.01);
}

TEST_F(MirroredSides, WordsAreReadAsEverAndStandAtTheOtherEndOfTheirRoom)
{
    const auto* text = open("Text { objectName: \"looked\"; x: 10; width: 150; text: \"ABC\" }");
    EXPECT_LT(left(*text), right(*text));
    EXPECT_NEAR(text->mapToScene({text->property("contentWidth").toDouble(), 0.0}).x(), 190.0, 0.01);
}

TEST_F(MirroredSides, NumbersOfTheRightStandAtTheLeft)
{
    const auto* text = open("Text { objectName: \"looked\"; x: 10; width: 150; text: \"12.5\"; horizontalAlignment: Text.AlignRight }");
    EXPECT_NEAR(text->mapToScene({text->width() - text->property("contentWidth").toDouble(), 0.0}).x(), 40.0, 0.01);
}

TEST_F(MirroredSides, WordsThatChangeKeepTheirEnd)
{
    auto* text = open("Text { objectName: \"looked\"; x: 10; width: 150; text: \"ABC\" }");
    text->setProperty("text", "A far longer text");
    EXPECT_NEAR(text->mapToScene({text->property("contentWidth").toDouble(), 0.0}).x(), 190.0, 0.01);
}

TEST_F(MirroredSides, AChartKeepsItsSidesWithAllThatStandsInIt)
{
    auto* chart = open("Item { objectName: \"looked\"; x: 10; width: 100; height: 50; property bool keepsSides: true\n"
                       "Text { x: 5; text: \"Jan\" } }");
    EXPECT_NEAR(left(*chart), 90.0, 0.01);
    EXPECT_NEAR(right(*chart), 190.0, 0.01);
    EXPECT_NEAR(left(*chart->childItems().constFirst()), 95.0, 0.01);
}

TEST_F(MirroredSides, WhatComesLaterIsTurnedToo)
{
    auto* place = open("Item { objectName: \"looked\"; width: 200; height: 50 }");
    QQmlComponent component(&engine);
    component.setData("import QtQuick\nItem { Text { x: 20; text: \"later\" } }", {});
    const std::unique_ptr<QQuickItem> later(qobject_cast<QQuickItem*>(component.create()));
    later->setParentItem(place);
    const auto* text = later->childItems().constFirst();
    EXPECT_LT(left(*text), right(*text));
    EXPECT_NEAR(right(*text), 180.0, 0.01);
}

TEST_F(MirroredSides, APressMeetsWhatIsSeenThere)
{
    const auto* pad = open("MouseArea { objectName: \"looked\"; property int presses: 0; x: 10; y: 10; width: 30; height: 20; onClicked: presses++ }");
    QTest::mouseClick(window.get(), Qt::LeftButton, {}, QPoint(175, 20));
    QTest::mouseClick(window.get(), Qt::LeftButton, {}, QPoint(25, 20));
    EXPECT_EQ(pad->property("presses").toInt(), 1);
}

/// A slider with the keys.
constexpr char kSlider[] = "T.Slider { objectName: \"looked\"; width: 100; height: 20; focus: true; from: 0; to: 4; stepSize: 1; value: 2\n"
                           "Component.onCompleted: forceActiveFocus() }";

TEST_F(MirroredSides, TheLeftArrowMovesAHandleToTheLeftWhichIsMoreThere)
{
    auto* slider = open(kSlider);
    QTest::keyClick(window.get(), Qt::Key_Left);
    EXPECT_EQ(slider->property("value").toInt(), 3);
    QTest::keyClick(window.get(), Qt::Key_Right);
    QTest::keyClick(window.get(), Qt::Key_Right);
    EXPECT_EQ(slider->property("value").toInt(), 1);
}

TEST_F(MirroredSides, TheLeftArrowStaysAsItIsInAFieldAndInWhatKeptItsSides)
{
    auto* field = open("TextInput { objectName: \"looked\"; width: 100; text: \"abc\"; Component.onCompleted: { forceActiveFocus(); cursorPosition = 2 } }");
    QTest::keyClick(window.get(), Qt::Key_Left);
    EXPECT_EQ(field->property("cursorPosition").toInt(), 1);
    auto* slider = item_of(QByteArray("Item { property bool keepsSides: true\n") + kSlider + "}");
    QTest::keyClick(window.get(), Qt::Key_Left);
    EXPECT_EQ(slider->property("value").toInt(), 1);
}

TEST_F(MirroredSides, ABoxIsToldWhereTheItemIsDrawn)
{
    QAccessible::setActive(true);
    const auto* item = open("Item { objectName: \"looked\"; x: 10; y: 5; width: 30; height: 20; Accessible.role: Accessible.Button; Accessible.name: \"Press\"\n"
                            "Item { x: 20; width: 10; height: 20; Accessible.role: Accessible.CheckBox; Accessible.name: \"Tick\" } }");
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(item));
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->rect(), QRect(window->mapToGlobal(QPoint(160, 5)), QSize(30, 20)));
    EXPECT_EQ(told->role(), QAccessible::Button);
    EXPECT_EQ(told->text(QAccessible::Name), QStringLiteral("Press"));
    ASSERT_EQ(told->childCount(), 1);
    QAccessibleInterface* tick = told->child(0);
    EXPECT_EQ(tick->rect(), QRect(window->mapToGlobal(QPoint(160, 5)), QSize(10, 20)));
    QAccessibleInterface* all = QAccessible::queryAccessibleInterface(window.get());
    const QPoint over_tick = window->mapToGlobal(QPoint(165, 10));
    const QPoint beside = window->mapToGlobal(QPoint(185, 10));
    EXPECT_EQ(all->childAt(over_tick.x(), over_tick.y()), tick);
    EXPECT_EQ(all->childAt(beside.x(), beside.y()), told);
    EXPECT_FALSE(told->state().offscreen);
}

} // namespace
} // namespace lathhouse
