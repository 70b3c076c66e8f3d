#include "app/models/year_model.h"
#include "tests/models/year_filler.h"

#include <QAccessible>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include <gtest/gtest.h>

#include <memory>

namespace lathhouse {
namespace {

QStringList& warnings()
{
    static QStringList kept;
    return kept;
}

void keep_warning(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    if (type != QtDebugMsg && type != QtInfoMsg) {
        warnings().append(message);
    }
}

/// The window with the invented household, planned, drawn and active.
class YearWindow : public testing::Test {
protected:
    void SetUp() override { open("light", 1280, 800); }

    void open(const char* scheme, int width, int height)
    {
        engine.reset();
        warnings().clear();
        model = std::make_unique<models::YearModel>(
            models::filled_year(),
            [year = models::filled_year()](Probability risk) { return models::filled_plan(year, risk); },
            models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)));
        engine = std::make_unique<QQmlApplicationEngine>();
        engine->addImportPath("qrc:/qt/qml");
        engine->setInitialProperties({{"year", QVariant::fromValue(model.get())},
                                      {"scheme", scheme},
                                      {"width", width},
                                      {"height", height}});
        engine->load(QUrl("qrc:/qt/qml/Lathhouse/Ui/Main.qml"));
        ASSERT_FALSE(engine->rootObjects().isEmpty());
        window = qobject_cast<QQuickWindow*>(engine->rootObjects().first());
        ASSERT_NE(window, nullptr);
        window->requestActivate();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window));
        ASSERT_TRUE(QTest::qWaitFor([this] { return !model->planning(); }));
        QTest::qWait(30);
    }
    void TearDown() override
    {
        EXPECT_TRUE(warnings().isEmpty()) << warnings().join('\n').toStdString();
        engine.reset();
    }
    QQuickItem* item(const char* name) const { return window->findChild<QQuickItem*>(name); }
    QPoint point_in(const char* name, double x, double y) const
    {
        return item(name)->mapToScene(QPointF(x, y)).toPoint();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(window, key, modifiers);
    }

    std::unique_ptr<models::YearModel> model;
    std::unique_ptr<QQmlApplicationEngine> engine;
    QQuickWindow* window = nullptr;
};

TEST_F(YearWindow, KeysMoveTheCursor)
{
    press(Qt::Key_Right);
    EXPECT_EQ(model->cursorDay(), 1);
    press(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(model->cursorDay(), 8);
    press(Qt::Key_Left);
    EXPECT_EQ(model->cursorDay(), 7);
    press(Qt::Key_PageDown);
    EXPECT_EQ(model->cursorDay(), 38);
    press(Qt::Key_PageUp);
    EXPECT_EQ(model->cursorDay(), 7);
    press(Qt::Key_Home);
    EXPECT_EQ(model->cursorDay(), 0);
    press(Qt::Key_Down);
    EXPECT_EQ(model->currentRow(), 1);
    press(Qt::Key_Up);
    EXPECT_EQ(model->currentRow(), 0);
}

TEST_F(YearWindow, ClickSetsTheCursorWhereItFell)
{
    QQuickItem* pointer = item("pointer");
    ASSERT_NE(pointer, nullptr);
    QTest::mouseClick(window, Qt::LeftButton, {}, point_in("pointer", pointer->width() / 2.0, 120));
    EXPECT_NEAR(model->cursorDay(), 182, 1);
    QQuickItem* bands = item("bands");
    EXPECT_NEAR(bands->property("cursorX").toDouble(), bands->width() - pointer->width() / 2.0, 2.5);
}

TEST_F(YearWindow, CursorMovesTheMarks)
{
    QQuickItem* bands = item("bands");
    const double before = bands->property("cursorX").toDouble();
    press(Qt::Key_PageDown);
    EXPECT_GT(bands->property("cursorX").toDouble(), before);
    EXPECT_FALSE(bands->property("cursorMiddleY").isNull());
}

TEST_F(YearWindow, SliderAnswersKeysAndDragging)
{
    QQuickItem* slider = item("riskSlider");
    ASSERT_NE(slider, nullptr);
    slider->forceActiveFocus();
    press(Qt::Key_Right);
    EXPECT_EQ(model->riskStop(), 3);
    press(Qt::Key_Left);
    press(Qt::Key_Left);
    EXPECT_EQ(model->riskStop(), 1);
    QTest::mousePress(window, Qt::LeftButton, {}, point_in("riskSlider", 26 + 248.0 / 4.0, 16));
    QTest::mouseMove(window, point_in("riskSlider", 150, 16));
    QTest::mouseMove(window, point_in("riskSlider", 270, 16));
    EXPECT_EQ(model->riskStop(), 4);
    QTest::mouseRelease(window, Qt::LeftButton, {}, point_in("riskSlider", 270, 16));
    EXPECT_EQ(model->riskStop(), 4);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !model->planning(); }));
}

TEST_F(YearWindow, TableIsATwinOfTheChart)
{
    press(Qt::Key_PageDown);
    const int day = model->cursorDay();
    press(Qt::Key_T);
    QQuickItem* rows = item("tableRows");
    ASSERT_NE(rows, nullptr);
    EXPECT_EQ(rows->property("currentIndex").toInt(), day);
    EXPECT_EQ(rows->property("count").toInt(), 365);
    press(Qt::Key_Down);
    EXPECT_EQ(model->cursorDay(), day + 1);
    press(Qt::Key_T);
    EXPECT_TRUE(item("yearChart")->isVisible());
    press(Qt::Key_Right);
    EXPECT_EQ(model->cursorDay(), day + 2);
}

TEST_F(YearWindow, WheelScrollsTheRows)
{
    open("light", 1280, 560);
    QQuickItem* rows = item("plantRows");
    const QPointF where = item("pointer")->mapToScene(QPointF(100, 350));
    QWheelEvent turn(where, window->mapToGlobal(where), {}, QPoint(0, -120), Qt::NoButton, {},
                     Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(window, &turn);
    EXPECT_GT(rows->property("contentY").toDouble(), 0.0);
}

TEST_F(YearWindow, EveryWidthAndThemeLoadsWithoutAWarning)
{
    for (const char* scheme : {"light", "dark", "contrast"}) {
        for (const QSize size : {QSize(1920, 1080), QSize(800, 900), QSize(560, 700)}) {
            open(scheme, size.width(), size.height());
            EXPECT_FALSE(window->grabWindow().isNull());
            EXPECT_TRUE(warnings().isEmpty()) << warnings().join('\n').toStdString();
        }
    }
}

/// Controls that a screen reader would pass without a word.
void collect_nameless(QAccessibleInterface* at, QStringList& nameless)
{
    for (int child = 0; at != nullptr && child < at->childCount(); ++child) {
        QAccessibleInterface* next = at->child(child);
        if (next == nullptr || next->state().invisible) {
            continue;
        }
        const QAccessible::Role role = next->role();
        const bool must_speak =
            role == QAccessible::Button || role == QAccessible::Slider || role == QAccessible::Chart ||
            role == QAccessible::ListItem || role == QAccessible::Row || role == QAccessible::List ||
            role == QAccessible::Table || role == QAccessible::PageTab || role == QAccessible::StaticText;
        if (must_speak && next->text(QAccessible::Name).isEmpty()) {
            nameless.append(next->object() != nullptr ? next->object()->metaObject()->className() : "?");
        }
        collect_nameless(next, nameless);
    }
}

TEST_F(YearWindow, EverythingThatActsHasAName)
{
    QAccessible::setActive(true);
    QStringList nameless;
    QAccessibleInterface* root = QAccessible::queryAccessibleInterface(window);
    ASSERT_NE(root, nullptr);
    collect_nameless(root, nameless);
    EXPECT_TRUE(nameless.isEmpty()) << nameless.join(' ').toStdString();
    press(Qt::Key_T);
    // The table's rows are made over a few frames; a row without its words is only a fault once it stays so.
    const bool named = QTest::qWaitFor([&] {
        nameless.clear();
        collect_nameless(root, nameless);
        return nameless.isEmpty() && item("tableRows") != nullptr && item("tableRows")->isVisible();
    });
    EXPECT_TRUE(named) << nameless.join(' ').toStdString();
}

TEST_F(YearWindow, TabReachesEveryControl)
{
    QStringList reached;
    for (int step = 0; step < 8; ++step) {
        // A list hands its focus on to the row read last.
        for (QQuickItem* item = window->activeFocusItem(); item != nullptr; item = item->parentItem()) {
            reached.append(item->objectName());
        }
        press(Qt::Key_Tab);
    }
    for (const char* name : {"riskSlider", "tableButton", "bands", "plantRows"}) {
        EXPECT_TRUE(reached.contains(name)) << name << " not among " << reached.join(' ').toStdString();
    }
}

} // namespace
} // namespace lathhouse

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    qInstallMessageHandler(lathhouse::keep_warning);
    QGuiApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
