#include "app/models/first_start_model.h"
#include "app/spoken_items.h"
#include "app/told_items.h"
#include "core/climate/station_table.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace lathhouse {
namespace {

/// The first start as a person without eyes meets it: what the Tab key stops at, in which order, under which name, and
/// which of it is chosen.
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
        tell_spoken_roles();
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

/// What stands above every step, of which one is open.
std::string head(int step)
{
    std::string text = "Button: Look at the example household\n";
    const char* names[] = {"PageTab: Step 1, Place", "PageTab: Step 2, Spots", "PageTab: Step 3, Plants"};
    for (int at = 0; at < 3; ++at) {
        text += std::string{names[at]} + (at == step ? ", selected\n" : "\n");
    }
    return text;
}

TEST_F(StartSpoken, ThePlaceIsAskedInTheOrderOfReading)
{
    EXPECT_TRUE(items_that_say_nothing(*window).isEmpty());
    EXPECT_EQ(stops(), head(0) + "EditableText: Nearest town, or coordinates\n"
                               "EditableText: Latitude, \u00b0 N\n"
                               "EditableText: Longitude, \u00b0 E\n"
                               "EditableText: Height above the sea, m\n"
                               "EditableText: Time zone\n"
                               "EditableText: What you call the place\n"
                               "EditableText: Name of the household\n"
                               "Button: Leave out for now\n"
                               "Button: On to the spots");
}

TEST_F(StartSpoken, TheSpotsAreAskedInTheOrderOfReading)
{
    go_to(1);
    start->spots()->addReady(0);
    settle();
    EXPECT_TRUE(items_that_say_nothing(*window).isEmpty());
    EXPECT_EQ(stops(), head(1) + "Button: South sill\nButton: East sill\nButton: West sill\nButton: North sill\n"
                               "Button: Cool landing\nButton: Roofed balcony\nButton: Open step\n"
                               "Button: Screened porch\nButton: Glasshouse\n"
                               "Button: South sill: indoors, faces south, 5 pots.\n"
                               "EditableText: What you call it\n"
                               "RadioButton: Indoors, checked\nRadioButton: Open\nRadioButton: Roofed\n"
                               "RadioButton: Screened\nRadioButton: Glazed\n"
                               "RadioButton: north\nRadioButton: north-east\nRadioButton: east\n"
                               "RadioButton: south-east\nRadioButton: south, checked\nRadioButton: south-west\n"
                               "RadioButton: west\nRadioButton: north-west\n"
                               "EditableText: Pots that fit\n"
                               "EditableText: Winter nights, \u00b0" "C\n"
                               "EditableText: Summer nights, \u00b0" "C\n"
                               "Button: Measured at the window\n"
                               "CheckBox: A child or an animal gets at the pots there\n"
                               "CheckBox: Away from all other plants: fit for infested ones\n"
                               "CheckBox: Wind tears at leaves and tips pots there\n"
                               "Button: Take South sill off the list\n"
                               "Button: Back\nButton: Leave out for now\nButton: On to the plants");
}

TEST_F(StartSpoken, ThePlantsAreAskedInTheOrderOfReading)
{
    go_to(2);
    start->plants()->setFind("Citrus limon");
    start->plants()->pick(0);
    settle();
    EXPECT_TRUE(items_that_say_nothing(*window).isEmpty());
    EXPECT_EQ(stops(), head(2) + "EditableText: Common or botanical name\n"
                               "Button: By group and evidence\n"
                               "List: Kinds that answer to it\n"
                               "Button: A kind of your own\n"
                               "Button: Lemon, 1, at nowhere yet.\n"
                               "Button: Take Lemon off the list\n"
                               "Button: One more Lemon\n"
                               "Button: Back\nButton: Leave out for now\nButton: Open the year");
}

} // namespace
} // namespace lathhouse
