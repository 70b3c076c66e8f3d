#include "app/models/settings_model.h"
#include "app/models/home_model.h"
#include "app/models/year_model.h"
#include "tests/models/page_fixtures.h"
#include "tests/models/year_filler.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace lathhouse::models {
namespace {

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);

class SettingsModelTest : public testing::Test {
protected:
    QString file() const { return folder.filePath("lathhouse/window.ini"); }
    std::shared_ptr<KeptSettings> kept() const { return std::make_shared<KeptSettings>(file()); }
    void write(const char* text) const
    {
        ASSERT_TRUE(QDir(folder.path()).mkpath("lathhouse"));
        QFile of(file());
        ASSERT_TRUE(of.open(QIODevice::WriteOnly));
        of.write(text);
    }
    QTemporaryDir folder;
};

TEST_F(SettingsModelTest, WhatIsChosenIsInForceAtOnceAndAtTheNextStart)
{
    {
        ShownUnits units;
        SettingsModel model(kept(), {}, units, kBritish);
        QSignalSpy theme(&model, &SettingsModel::themeChanged);
        QSignalSpy said(&model, &SettingsModel::unitsChanged);
        EXPECT_EQ(model.scheme(), "light");
        model.setTheme(3);
        EXPECT_EQ(model.scheme(), "contrast");
        model.setTextPercent(150);
        model.setReducedMotion(true);
        model.setUnits(1);
        EXPECT_EQ(units.measures(), Units::Us);
        EXPECT_EQ(units.degrees(), Units::Metric) << "each is a choice of its own";
        EXPECT_TRUE(model.unitsExample().contains("°C")) << model.unitsExample().toStdString();
        EXPECT_TRUE(model.unitsExample().contains(" in."));
        model.setDegrees(1);
        EXPECT_EQ(theme.count(), 1);
        EXPECT_EQ(said.count(), 2);
        EXPECT_TRUE(model.trouble().isEmpty()) << model.trouble().toStdString();
        EXPECT_TRUE(model.unitsExample().contains("°F"));
    }
    ShownUnits units;
    const SettingsModel again(kept(), {}, units, kBritish);
    EXPECT_EQ(again.scheme(), "contrast");
    EXPECT_EQ(again.textPercent(), 150);
    EXPECT_TRUE(again.reducedMotion());
    EXPECT_EQ(units.measures(), Units::Us);
    EXPECT_EQ(units.degrees(), Units::Us);
}

TEST_F(SettingsModelTest, SurroundingsGoBeforeAndThePageSaysSo)
{
    SettingsModel model(kept(), {.theme = "dark", .text_percent = 200, .reduced_motion = false, .units = Units::Us},
                        ShownUnits{}, kBritish);
    model.setTheme(1);
    model.setTextPercent(85);
    model.setReducedMotion(true);
    EXPECT_EQ(model.scheme(), "dark");
    EXPECT_EQ(model.textPercent(), 200);
    EXPECT_FALSE(model.reducedMotion());
    EXPECT_EQ(model.units(), 1);
    EXPECT_TRUE(model.themeFixed().startsWith("LATHHOUSE_THEME=dark"));
    EXPECT_TRUE(model.textFixed().startsWith("LATHHOUSE_TEXT=200"));
    EXPECT_TRUE(model.motionFixed().startsWith("LATHHOUSE_MOTION=full"));
    EXPECT_TRUE(model.unitsFixed().contains("--units"));
    const SettingsModel later(kept(), {}, ShownUnits{}, kBritish);
    EXPECT_EQ(later.scheme(), "light") << "what was chosen meanwhile counts once they are gone";
    EXPECT_EQ(later.textPercent(), 85);
    EXPECT_TRUE(later.themeFixed().isEmpty());
}

TEST_F(SettingsModelTest, DesktopIsFollowedWhileItIsChosen)
{
    SettingsModel model(kept(), {}, ShownUnits{}, kBritish);
    QSignalSpy theme(&model, &SettingsModel::themeChanged);
    model.set_desktop_dark(true);
    EXPECT_EQ(model.scheme(), "dark");
    EXPECT_EQ(theme.count(), 1);
    model.set_desktop_dark(true);
    EXPECT_EQ(theme.count(), 1);
    model.setTheme(1);
    model.set_desktop_dark(false);
    model.set_desktop_dark(true);
    EXPECT_EQ(model.scheme(), "light");
    model.setTheme(0);
    EXPECT_EQ(model.scheme(), "dark");
}

TEST_F(SettingsModelTest, FingersAreServedFromTheFirstTouchOnUnlessChosenOtherwise)
{
    {
        SettingsModel model(kept(), {}, ShownUnits{}, kBritish);
        QSignalSpy changed(&model, &SettingsModel::touchChanged);
        EXPECT_FALSE(model.touch());
        model.set_touched();
        model.set_touched();
        EXPECT_TRUE(model.touch());
        EXPECT_EQ(changed.count(), 1);
        model.setTouchFrom(2);
        EXPECT_FALSE(model.touch());
        model.setTouchFrom(3);
        EXPECT_EQ(model.touchFrom(), 2);
    }
    SettingsModel again(kept(), {}, ShownUnits{}, kBritish);
    EXPECT_EQ(again.touchFrom(), 2);
    again.set_touched();
    EXPECT_FALSE(again.touch());
    again.setTouchFrom(1);
    const SettingsModel always(kept(), {}, ShownUnits{}, kBritish);
    EXPECT_TRUE(always.touch());
    AskedSettings off;
    off.touch = false;
    const SettingsModel asked(kept(), off, ShownUnits{}, kBritish);
    EXPECT_FALSE(asked.touch());
    EXPECT_TRUE(asked.touchFixed().startsWith("LATHHOUSE_TOUCH=off"));
    write("[General]\ntouch=sometimes\n");
    const SettingsModel damaged(kept(), {}, ShownUnits{}, kBritish);
    EXPECT_EQ(damaged.touchFrom(), 0);
}

TEST_F(SettingsModelTest, UnitsOfTheRegionHoldUntilOthersAreChosen)
{
    EXPECT_EQ(usual_units(QLocale(QLocale::English, QLocale::UnitedStates)), Units::Us);
    EXPECT_EQ(usual_units(kBritish), Units::Metric) << "degrees and metres of a British grower";
    EXPECT_EQ(usual_units(QLocale(QLocale::German, QLocale::Austria)), Units::Metric);
    {
        const ShownUnits units{Units::Us};
        SettingsModel model(kept(), {}, units, kBritish);
        EXPECT_EQ(model.degrees(), 1);
        EXPECT_EQ(model.units(), 1);
        model.setDegrees(0);
    }
    const ShownUnits elsewhere;
    const SettingsModel again(kept(), {}, elsewhere, kBritish);
    EXPECT_EQ(again.degrees(), 0);
    EXPECT_EQ(again.units(), 1) << "what was in force when one was chosen is kept with it";
}

TEST_F(SettingsModelTest, FileOfTheTimeOfOneChoiceSetsBoth)
{
    write("[General]\nunits=us\n");
    const ShownUnits units;
    const SettingsModel model(kept(), {}, units, kBritish);
    EXPECT_EQ(model.degrees(), 1);
    EXPECT_EQ(model.units(), 1);
}

TEST_F(SettingsModelTest, DamagedFileIsTakenAsNotThere)
{
    write("[General]\ntheme=purple\ntext_percent=9000\nreduced_motion=perhaps\nunits=cubits\ndegrees=kelvin\n");
    ShownUnits units;
    SettingsModel model(kept(), {}, units, kBritish);
    EXPECT_EQ(model.theme(), 0);
    EXPECT_EQ(model.textPercent(), 100);
    EXPECT_FALSE(model.reducedMotion());
    EXPECT_EQ(units.measures(), Units::Metric);
    write("\x01\x02no settings at all\xff\n[[[");
    const SettingsModel other(kept(), {}, units, kBritish);
    EXPECT_EQ(other.textPercent(), 100);
}

TEST_F(SettingsModelTest, ValuesOutsideAreRefused)
{
    SettingsModel model(kept(), {}, ShownUnits{}, kBritish);
    model.setTheme(4);
    model.setTheme(-1);
    model.setUnits(2);
    model.setTextPercent(1000);
    EXPECT_EQ(model.theme(), 0);
    EXPECT_EQ(model.units(), 0);
    EXPECT_EQ(model.textPercent(), 200);
}

TEST_F(SettingsModelTest, WhatCannotBeKeptHoldsForTheWindowAndSaysSo)
{
    SettingsModel model(std::make_shared<KeptSettings>("/proc/nowhere/window.ini"), {}, ShownUnits{}, kBritish);
    model.setTheme(2);
    EXPECT_EQ(model.scheme(), "dark");
    EXPECT_TRUE(model.trouble().contains("/proc/nowhere/window.ini")) << model.trouble().toStdString();
}

TEST_F(SettingsModelTest, DatesAndWeeksAreOfTheRegion)
{
    const SettingsModel british(kept(), {}, ShownUnits{}, kBritish);
    EXPECT_TRUE(british.dates().contains("Sat 30 May")) << british.dates().toStdString();
    EXPECT_TRUE(british.dates().contains("weeks from Monday"));
    const SettingsModel american(kept(), {}, ShownUnits{}, QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_TRUE(american.dates().contains("Sat May 30"));
    EXPECT_TRUE(american.dates().contains("weeks from Sunday"));
}

TEST_F(SettingsModelTest, EveryTemperatureOfHomeChangesWithTheUnits)
{
    ShownUnits units;
    SettingsModel settings(kept(), {}, units, kBritish);
    HomeModel home(door_of(with_cold_night(plain_facts(), kShownToday)), {kShownToday, YearWords(units, kBritish), {}});
    QObject::connect(&settings, &SettingsModel::unitsChanged, &home, &SheetModel::follow);
    home.start();
    wait_for(home);
    const auto said = [&home] {
        QString all = home.base() + home.offsetNow() + home.offsetRange() + home.offsetKinds() + home.unit();
        for (auto* rows : {home.figures(), home.nights(), home.stations()}) {
            for (int row = 0; row < rows->rowCount(); ++row) {
                all += rows->at(row, "sentence").toString();
            }
        }
        return all;
    };
    EXPECT_TRUE(said().contains("°C"));
    EXPECT_FALSE(said().contains("°F"));
    settings.setUnits(1);
    wait_for(home);
    EXPECT_TRUE(said().contains("°C"));
    EXPECT_FALSE(said().contains("°F")) << said().toStdString();
    EXPECT_FALSE(said().contains(" km")) << said().toStdString();
    settings.setDegrees(1);
    wait_for(home);
    EXPECT_TRUE(said().contains("°F"));
    EXPECT_FALSE(said().contains("°C")) << said().toStdString();
    EXPECT_FALSE(said().contains(" km")) << said().toStdString();
}

TEST_F(SettingsModelTest, YearSaysEverythingAgain)
{
    const ShownUnits units;
    YearModel year(filled_year(), [of = filled_year()](Probability risk) { return filled_plan(of, risk); },
                   YearWords(units, kBritish));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !year.planning(); }, 30'000));
    EXPECT_TRUE(year.cursor()->low().endsWith("°C"));
    QSignalSpy cursor(year.cursor(), &CursorReading::changed);
    QSignalSpy plan(&year, &YearModel::planChanged);
    units.show(Units::Us);
    year.say_again();
    EXPECT_EQ(cursor.count(), 1);
    EXPECT_TRUE(year.cursor()->low().endsWith("°F"));
    EXPECT_TRUE(year.cursor()->lines()->data(year.cursor()->lines()->index(0), ReadoutRows::ValueRole).toString().endsWith("°F"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !year.planning(); }, 30'000));
    EXPECT_GE(plan.count(), 1);
}

} // namespace
} // namespace lathhouse::models
