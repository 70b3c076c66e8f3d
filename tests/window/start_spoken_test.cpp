#include "app/models/first_start_model.h"
#include "app/spoken_items.h"
#include "core/climate/station_table.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace lathhouse {
namespace {

/// The first start as a person without eyes meets it: what the Tab key stops at, in which order, under which name.
class StartSpoken : public testing::Test {
protected:
    void SetUp() override
    {
        static const auto kTowns = geodesy::TownTable::find().and_then([](const auto& file) { return geodesy::TownTable::load(file); });
        static const auto kStations = climate::StationTable::find().and_then(
            [](const auto& file) { return climate::StationTable::load(file); });
        ASSERT_TRUE(kTowns && kStations);
        start = std::make_unique<models::FirstStartModel>(
            models::PlaceDoor{[]() -> Result<const geodesy::TownTable*> { return &*kTowns; },
                              [](Position position, std::optional<Metres> height) {
                                  return climate::climate_at(*kStations, position, height);
                              }},
            std::filesystem::path{folder.path().toStdString()} / "household",
            models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)),
            calendar::Date{2026, 3, 14});
        engine.addImportPath("qrc:/qt/qml");
        engine.setInitialProperties({{"start", QVariant::fromValue(start.get())}, {"scheme", "light"}});
        engine.load(QUrl("qrc:/qt/qml/Lathhouse/Ui/StartWindow.qml"));
        ASSERT_FALSE(engine.rootObjects().isEmpty());
        window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        ASSERT_NE(window, nullptr);
        settle();
    }
    void settle()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !start->working() && !start->place()->working() && start->place()->known(); }, 60'000));
        window->grabWindow();
    }
    void go_to(int step)
    {
        start->setStep(step);
        settle();
    }
    std::string stops() const { return stops_in_order(*window).join('\n').toStdString(); }

    QTemporaryDir folder;
    std::unique_ptr<models::FirstStartModel> start;
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;
};

TEST_F(StartSpoken, ThePlaceIsAskedInTheOrderOfReading)
{
    EXPECT_TRUE(items_that_say_nothing(*window).isEmpty());
    EXPECT_EQ(stops(), "");
}

TEST_F(StartSpoken, TheSpotsAreAskedInTheOrderOfReading)
{
    go_to(1);
    start->spots()->addReady(0);
    settle();
    EXPECT_TRUE(items_that_say_nothing(*window).isEmpty());
    EXPECT_EQ(stops(), "");
}

TEST_F(StartSpoken, ThePlantsAreAskedInTheOrderOfReading)
{
    go_to(2);
    start->plants()->setFind("Citrus limon");
    start->plants()->pick(0);
    settle();
    EXPECT_TRUE(items_that_say_nothing(*window).isEmpty());
    EXPECT_EQ(stops(), "");
}

} // namespace
} // namespace lathhouse
