#include "app/mirrored_sides.h"
#include "app/models/changes_model.h"
#include "app/models/day_turn.h"
#include "app/models/home_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"
#include "app/told_items.h"
#include "tests/models/year_filler.h"
#include "tests/window/demonstration_round.h"

#include <QAccessible>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
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
    // Qt's own animation timer says that it was stopped already where the machine is slow.
    if (type != QtDebugMsg && type != QtInfoMsg && !message.startsWith(QLatin1String("QUnifiedTimer"))) {
        warnings().append(message);
    }
}

/// The window with the invented household, planned, drawn and active: what tests in QML cannot say.
class YearWindow : public testing::Test {
protected:
    void SetUp() override { open("light", 1280, 800); }

    void open(const char* scheme, int width, int height, int text_percent = 100)
    {
        engine.reset();
        warnings().clear();
        model = std::make_unique<models::YearModel>(
            models::filled_year(),
            [year = models::filled_year()](Probability risk) { return models::filled_plan(year, risk); },
            models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)));
        static const auto kFacts = models::demonstration_facts(calendar::Date{2026, 5, 16});
        ASSERT_TRUE(kFacts) << kFacts.error().message;
        const models::TodayLook look{
            calendar::Date{2026, 5, 16},
            models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)),
            {{"South sill", 0}, {"Roofed balcony", 3}}};
        const auto household = std::make_shared<models::MemoryHousehold>(
            models::with_seeds(models::with_cold_night(*kFacts, look.today), look.today));
        const auto door = models::door_to_memory(household);
        round = std::make_unique<models::RoundModel>(models::round_in_memory(household),
                                                     models::TodayLook{look.today, look.words, look.hands});
        tonight = std::make_unique<models::TonightModel>(door, look);
        plants = std::make_unique<models::PlantsModel>(models::plants_in_memory(household), look);
        plant = std::make_unique<models::PlantModel>(*plants);
        seeds = std::make_unique<models::SeedsModel>(door, look);
        home = std::make_unique<models::HomeModel>(door, look);
        changes = std::make_unique<models::ChangesModel>(models::turn_in_memory(household));
        tell_spoken_roles();
        engine = std::make_unique<QQmlApplicationEngine>();
        engine->addImportPath("qrc:/qt/qml");
        engine->setInitialProperties({{"year", QVariant::fromValue(model.get())},
                                      {"round", QVariant::fromValue(round.get())},
                                      {"tonight", QVariant::fromValue(tonight.get())},
                                      {"plants", QVariant::fromValue(plants.get())},
                                      {"plant", QVariant::fromValue(plant.get())},
                                      {"seeds", QVariant::fromValue(seeds.get())},
                                      {"home", QVariant::fromValue(home.get())},
                                      {"changes", QVariant::fromValue(changes.get())},
                                      {"scheme", scheme},
                                      {"textPercent", text_percent},
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
    /// Whether a page is still being compiled.
    static bool is_being_made(const QQuickItem& item)
    {
        return item.property("waiting").toBool() ||
               std::ranges::any_of(item.childItems(), [](const QQuickItem* child) { return is_being_made(*child); });
    }
    void press_place(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(window, key, with);
        ASSERT_TRUE(QTest::qWaitFor([this] { return !is_being_made(*window->contentItem()); }));
    }
    bool is_working() const
    {
        return round->working() || tonight->working() || plants->working() || seeds->working() || home->working();
    }
    void go_to_round()
    {
        press_place(Qt::Key_1);
        ASSERT_TRUE(QTest::qWaitFor(
            [this] { return !round->working() && round->rowCount() > 0 && !tonight->working(); }, 30'000));
        QTest::qWait(30);
    }
    void go_to(Qt::Key key, models::SheetModel& page)
    {
        press_place(key);
        ASSERT_TRUE(QTest::qWaitFor([&page] { return page.known() && !page.working(); }, 30'000));
        QTest::qWait(30);
    }
    /// By what stands in what: items of a Repeater are nobody's QObject children.
    static QQuickItem* item_in(QQuickItem* parent, const char* name)
    {
        for (QQuickItem* child : parent->childItems()) {
            if (child->objectName() == QLatin1String(name)) {
                return child;
            }
            if (QQuickItem* found = item_in(child, name)) {
                return found;
            }
        }
        return nullptr;
    }
    QQuickItem* item(const char* name) const { return item_in(window->contentItem(), name); }

    std::unique_ptr<models::YearModel> model;
    std::unique_ptr<models::RoundModel> round;
    std::unique_ptr<models::TonightModel> tonight;
    std::unique_ptr<models::PlantsModel> plants;
    std::unique_ptr<models::PlantModel> plant;
    std::unique_ptr<models::SeedsModel> seeds;
    std::unique_ptr<models::HomeModel> home;
    std::unique_ptr<models::ChangesModel> changes;
    std::unique_ptr<QQmlApplicationEngine> engine;
    QQuickWindow* window = nullptr;
};

TEST_F(YearWindow, EveryWidthThemeAndTextSizeLoadsWithoutAWarning)
{
    for (const char* scheme : {"light", "dark", "contrast"}) {
        for (const QSize size : {QSize(1920, 1080), QSize(800, 900), QSize(560, 700), QSize(520, 480)}) {
            for (const int text_percent : {85, 100, 200}) {
                open(scheme, size.width(), size.height(), text_percent);
                EXPECT_FALSE(window->grabWindow().isNull());
                if (text_percent != 85) {
                    go_to_round();
                    EXPECT_FALSE(window->grabWindow().isNull());
                    go_to(Qt::Key_4, *seeds);
                    EXPECT_FALSE(window->grabWindow().isNull());
                    go_to(Qt::Key_5, *home);
                    for (int section = 0; section < 3; ++section) {
                        home->setSection(section);
                        EXPECT_FALSE(window->grabWindow().isNull());
                    }
                }
                EXPECT_TRUE(warnings().isEmpty()) << warnings().join('\n').toStdString();
            }
        }
    }
}

TEST_F(YearWindow, RowsStayInSightAtEveryTextSize)
{
    for (const int text_percent : {100, 150, 200}) {
        open("light", 1280, 800, text_percent);
        EXPECT_GE(item("plantRows")->height(), 2.0 * 25.6 * text_percent / 100.0) << text_percent;
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
        const bool must_speak = role == QAccessible::Button || role == QAccessible::Slider ||
                                role == QAccessible::Chart || role == QAccessible::ListItem ||
                                role == QAccessible::Row || role == QAccessible::List ||
                                role == QAccessible::Table || role == QAccessible::CheckBox ||
                                role == QAccessible::PageTab || role == QAccessible::StaticText;
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
    QTest::keyClick(window, Qt::Key_T);
    // The table's rows are made over a few frames; a row without its words is only a fault once it stays so.
    const bool named = QTest::qWaitFor([&] {
        nameless.clear();
        collect_nameless(root, nameless);
        return nameless.isEmpty() && item("tableRows") != nullptr && item("tableRows")->isVisible();
    });
    EXPECT_TRUE(named) << nameless.join(' ').toStdString();
}

/// What a screen reader is told of an item; the role is Client where Qt has nothing to say.
QAccessibleInterface* told_of(QQuickItem* item)
{
    return QAccessible::queryAccessibleInterface(item);
}

TEST_F(YearWindow, WhatIsPressedSaysWhetherItIsTickedChosenOrMoved)
{
    QAccessible::setActive(true);
    EXPECT_EQ(told_of(item("riskSlider"))->role(), QAccessible::Slider);
    ASSERT_NE(told_of(item("riskSlider"))->valueInterface(), nullptr);
    EXPECT_EQ(told_of(item("riskSlider"))->valueInterface()->currentValue().toInt(), item("riskSlider")->property("stop").toInt());
    EXPECT_EQ(told_of(item("yearTab"))->role(), QAccessible::PageTab);
    EXPECT_TRUE(told_of(item("yearTab"))->state().selected);
    go_to_round();
    QAccessibleInterface* table = told_of(item("tableChip"));
    EXPECT_EQ(table->role(), QAccessible::CheckBox);
    EXPECT_TRUE(table->state().checkable);
    EXPECT_FALSE(table->state().checked);
    table->actionInterface()->doAction(QAccessibleActionInterface::toggleAction());
    EXPECT_TRUE(table->state().checked);
    EXPECT_TRUE(item("tableChip")->property("on").toBool());
    go_to(Qt::Key_4, *seeds);
    EXPECT_EQ(told_of(item("byDateChip"))->role(), QAccessible::RadioButton);
    EXPECT_TRUE(told_of(item("byDateChip"))->state().checked);
    EXPECT_FALSE(told_of(item("byNameChip"))->state().checked);
    seeds->setProperty("byName", true);
    EXPECT_FALSE(told_of(item("byDateChip"))->state().checked);
    EXPECT_TRUE(told_of(item("byNameChip"))->state().checked);
    go_to(Qt::Key_5, *home);
    EXPECT_EQ(told_of(item("section0"))->role(), QAccessible::PageTab);
    EXPECT_TRUE(told_of(item("section0"))->state().selected);
}

/// Boxes that do not lie where their item is drawn.
void collect_misplaced(QAccessibleInterface* at, QStringList& misplaced, int& seen)
{
    for (int child = 0; at != nullptr && child < at->childCount(); ++child) {
        QAccessibleInterface* next = at->child(child);
        const auto* of = next == nullptr ? nullptr : qobject_cast<QQuickItem*>(next->object());
        if (of == nullptr || next->state().invisible) {
            continue;
        }
        if (of->width() > 0.0 && of->height() > 0.0) {
            ++seen;
            const QRect drawn = of->mapRectToScene(QRectF(0.0, 0.0, of->width(), of->height())).toRect();
            if (next->rect() != QRect(of->window()->mapToGlobal(drawn.topLeft()), drawn.size())) {
                misplaced.append(next->text(QAccessible::Name));
            }
        }
        collect_misplaced(next, misplaced, seen);
    }
}

TEST_F(YearWindow, MirroredItHasItsBoxesWhereItIsDrawnAndItsKeysGoWhereTheyPoint)
{
    QAccessible::setActive(true);
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    open("light", 1280, 800);
    mirror_sides(*window);
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    QStringList misplaced;
    int seen = 0;
    collect_misplaced(QAccessible::queryAccessibleInterface(window), misplaced, seen);
    EXPECT_TRUE(misplaced.isEmpty()) << misplaced.join('\n').toStdString();
    EXPECT_GT(seen, 30);
    QQuickItem* slider = item("riskSlider");
    slider->forceActiveFocus();
    const int before = slider->property("stop").toInt();
    QTest::keyClick(window, Qt::Key_Left);
    EXPECT_EQ(slider->property("stop").toInt(), before + 1);
    item("bands")->forceActiveFocus(); // Time runs from left to right all the same.
    const int day = model->property("cursorDay").toInt();
    QTest::keyClick(window, Qt::Key_Right);
    EXPECT_EQ(model->property("cursorDay").toInt(), day + 1);
}

TEST_F(YearWindow, EverythingOfSeedsAndHomeHasAName)
{
    QAccessible::setActive(true);
    QAccessibleInterface* root = QAccessible::queryAccessibleInterface(window);
    ASSERT_NE(root, nullptr);
    go_to(Qt::Key_4, *seeds);
    QStringList nameless;
    collect_nameless(root, nameless);
    EXPECT_TRUE(nameless.isEmpty()) << "seeds: " << nameless.join(' ').toStdString();
    go_to(Qt::Key_5, *home);
    for (int section = 0; section < 3; ++section) {
        home->setSection(section);
        for (int form = 0; form < 2; ++form) { // As charts and as tables.
            nameless.clear();
            collect_nameless(root, nameless);
            EXPECT_TRUE(nameless.isEmpty()) << section << ": " << nameless.join(' ').toStdString();
            QTest::keyClick(window, Qt::Key_T);
            QTest::qWait(10);
        }
    }
}

TEST_F(YearWindow, ColdNightIsInTheTitleAndInTheTab)
{
    EXPECT_TRUE(window->title().startsWith("Lathhouse"));
    go_to_round();
    ASSERT_GT(round->carriesLeft(), 0);
    EXPECT_TRUE(window->title().startsWith("Carry ")) << window->title().toStdString();
    ASSERT_NE(item("roundBadge"), nullptr);
    EXPECT_TRUE(item("roundBadge")->isVisible());
    round->tickCarries();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !round->working(); }, 30'000));
    EXPECT_TRUE(window->title().startsWith("Lathhouse"));
    EXPECT_FALSE(item("roundBadge")->isVisible());
}

TEST_F(YearWindow, EnterOnARowOpensThePlantAndControlLLogsForIt)
{
    go_to(Qt::Key_3, *plants);
    press_place(Qt::Key_2);
    QTest::qWait(30);
    item("plantRows")->forceActiveFocus();
    const int of_row = model->plants()->idAt(model->currentRow());
    ASSERT_NE(of_row, 0);
    QTest::keyClick(window, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !plants->working() && !plant->working(); }, 30'000));
    EXPECT_EQ(plants->opened(), of_row);
    EXPECT_EQ(window->property("page").toString(), "plants");
    EXPECT_TRUE(item("plantPage")->isVisible());
    press_place(Qt::Key_2);
    EXPECT_EQ(window->property("page").toString(), "year");
    EXPECT_TRUE(item("plantRows")->hasActiveFocus()) << "where one was";
    QTest::keyClick(window, Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(window->property("page").toString(), "plants");
    EXPECT_TRUE(item("logPanel")->isVisible());
}

TEST_F(YearWindow, ControlLLogsForAPlantThoughThePageOfPlantsWasNeverRead)
{
    item("plantRows")->forceActiveFocus();
    model->setCurrentRow(2);
    const int of_row = model->plants()->idAt(2);
    ASSERT_NE(of_row, 0);
    ASSERT_FALSE(plants->known());
    QTest::keyClick(window, Qt::Key_L, Qt::ControlModifier);
    ASSERT_TRUE(QTest::qWaitFor([this] { return plants->known() && !plants->working() && !plant->working(); }, 30'000));
    EXPECT_EQ(plants->opened(), of_row);
    ASSERT_TRUE(QTest::qWaitFor([this] { return item("logPanel")->isVisible(); }));
    EXPECT_TRUE(item("logPanel")->property("activeFocus").toBool());
}

TEST_F(YearWindow, EveryPlaceHandsTheKeysToSomethingThatIsSeenAndF6GoesOn)
{
    struct Place {
        Qt::Key key;
        const char* page;
    };
    for (const auto& [key, page] : {Place{Qt::Key_1, "roundPage"}, Place{Qt::Key_2, "yearPage"}, Place{Qt::Key_3, "plantsPage"},
                                    Place{Qt::Key_4, "seedsPage"}, Place{Qt::Key_5, "homePage"}}) {
        press_place(key, Qt::AltModifier);
        ASSERT_TRUE(QTest::qWaitFor([&] {
            return !round->working() && !tonight->working() && !plants->working() && !seeds->working() && !home->working() &&
                   item(page) != nullptr;
        }, 30'000));
        QTest::qWait(30);
        QQuickItem* first = window->activeFocusItem();
        ASSERT_NE(first, nullptr) << page;
        EXPECT_TRUE(first->isVisible()) << page;
        EXPECT_TRUE(item(page)->isAncestorOf(first)) << page << ": " << first->objectName().toStdString();
        QTest::keyClick(window, Qt::Key_F6);
        EXPECT_NE(window->activeFocusItem(), first) << page;
        EXPECT_TRUE(window->activeFocusItem()->isVisible()) << page;
        EXPECT_TRUE(item(page)->isAncestorOf(window->activeFocusItem())) << page;
    }
}

TEST_F(YearWindow, ThatTheDayIsOverStandsBelowThePageWithTheWayOn)
{
    QDate now(2026, 5, 16);
    int begun = 0;
    models::DayTurn day({calendar::Date{2026, 5, 16}, models::YearWords(models::Units::Metric), {}},
                        [&begun] { return ++begun > 0; }, [&now] { return now; });
    window->setProperty("day", QVariant::fromValue(&day));
    EXPECT_FALSE(item("dayBar")->isVisible());
    const double height = item("yearPage")->height();
    now = QDate(2026, 5, 17);
    day.look();
    QTest::qWait(30);
    ASSERT_TRUE(item("dayBar")->isVisible());
    EXPECT_LT(item("yearPage")->height(), height) << "the page keeps clear of it";
    const QQuickItem* button = item("dayButton");
    QTest::mouseClick(window, Qt::LeftButton, {}, button->mapToScene(QPointF(button->width() / 2.0, button->height() / 2.0)).toPoint());
    EXPECT_EQ(begun, 1);
    window->setProperty("day", QVariant::fromValue(static_cast<models::DayTurn*>(nullptr)));
}

TEST_F(YearWindow, EverythingOfTheRoundHasAName)
{
    QAccessible::setActive(true);
    go_to_round();
    QStringList nameless;
    QAccessibleInterface* root = QAccessible::queryAccessibleInterface(window);
    ASSERT_NE(root, nullptr);
    const bool named = QTest::qWaitFor([&] {
        nameless.clear();
        collect_nameless(root, nameless);
        return nameless.isEmpty();
    });
    EXPECT_TRUE(named) << nameless.join(' ').toStdString();
}

/// What a Repeater made has no parent among the objects, only among the items.
QQuickItem* item_below(QQuickItem* at, const QString& name)
{
    for (QQuickItem* child : at->childItems()) {
        if (child->objectName() == name) {
            return child;
        }
        if (QQuickItem* found = item_below(child, name)) {
            return found;
        }
    }
    return nullptr;
}

TEST_F(YearWindow, OneKeyAndOneClickReachEachPlace)
{
    EXPECT_TRUE(item("yearPage")->isVisible());
    EXPECT_EQ(round->rowCount(), 0) << "not read before it is asked for";
    go_to_round();
    EXPECT_TRUE(item("roundPage")->isVisible());
    EXPECT_FALSE(item("yearPage")->isVisible());
    EXPECT_TRUE(item("roundPage")->hasActiveFocus());
    press_place(Qt::Key_2);
    EXPECT_TRUE(item("yearPage")->isVisible());
    QTest::keyClick(window, Qt::Key_Right);
    EXPECT_EQ(model->cursorDay(), 1);
    const auto click = [this](const char* name) {
        const QQuickItem* tab = item_below(window->contentItem(), name);
        ASSERT_NE(tab, nullptr) << name;
        const QPointF middle = tab->mapToScene({tab->width() / 2.0, tab->height() / 2.0});
        QTest::mouseClick(window, Qt::LeftButton, {}, middle.toPoint());
    };
    click("roundTab");
    EXPECT_TRUE(item("roundPage")->isVisible());
    click("yearTab");
    EXPECT_FALSE(item("roundPage")->isVisible());
}

TEST_F(YearWindow, ALotOfTheYearIsSownInSeeds)
{
    ASSERT_TRUE(QMetaObject::invokeMethod(item("yearPage"), "lotAsked", Q_ARG(QString, QStringLiteral("Zinnia")), Q_ARG(QString, QStringLiteral("sow"))));
    EXPECT_EQ(window->property("page").toString(), "seeds");
    ASSERT_TRUE(QTest::qWaitFor([this] { return seeds->known() && !seeds->working() && seeds->name() == "Zinnia"; }, 30'000));
    ASSERT_NE(item("sownField"), nullptr);
    EXPECT_TRUE(QTest::qWaitFor([this] { return item("sownField")->hasActiveFocus(); }, 5'000));
}

TEST_F(YearWindow, TheYearHearsOfTodaysCarriesWithoutTheRoundBeingOpened)
{
    ASSERT_FALSE(round->known());
    EXPECT_TRUE(QTest::qWaitFor([this] { return round->known() && round->carriesLeft() > 0; }, 30'000));
    EXPECT_EQ(window->property("page").toString(), "year");
    EXPECT_TRUE(item("roundBadge")->isVisible());
}

/// The ring of what has the keys; null where it has none, or another sign.
const QQuickItem* ring_in(const QQuickItem& item)
{
    if (item.isVisible() && QByteArray{item.metaObject()->className()}.startsWith("FocusRing")) {
        return &item;
    }
    for (const QQuickItem* child : item.childItems()) {
        if (const QQuickItem* ring = ring_in(*child)) {
            return ring;
        }
    }
    return nullptr;
}

/// Whether something that clips cuts it off at a side.
bool is_cut_off(const QQuickItem& ring)
{
    for (const QQuickItem* above = ring.parentItem(); above != nullptr; above = above->parentItem()) {
        const QRectF there = ring.mapRectToItem(above, QRectF(0, 0, ring.width(), ring.height()));
        if (above->clip() && (there.left() < -0.5 || there.right() > above->width() + 0.5)) {
            return true;
        }
    }
    return false;
}

TEST_F(YearWindow, NoRingOfTheKeyboardIsCutOff)
{
    for (const int width : {1280, 520}) {
        open("light", width, 800);
        int rings = 0;
        for (const Qt::Key place : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5}) {
            press_place(place);
            ASSERT_TRUE(QTest::qWaitFor([this] { return !is_working(); }, 30'000));
            QTest::qWait(30);
            for (int step = 0; step < 60; ++step) {
                QTest::keyClick(window, Qt::Key_Tab);
                const QQuickItem* at = window->activeFocusItem();
                const QQuickItem* ring = at != nullptr ? ring_in(*at) : nullptr;
                if (ring != nullptr) {
                    ++rings;
                    EXPECT_FALSE(is_cut_off(*ring)) << "place " << place - Qt::Key_0 << ", " << width << " wide: " << at->objectName().toStdString()
                                                    << " " << at->metaObject()->className();
                }
            }
        }
        EXPECT_GT(rings, 60);
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
