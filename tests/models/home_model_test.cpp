#include "app/models/home_model.h"
#include "core/climate/figures.h"
#include "core/home/learned_offset.h"
#include "core/home/light_spread.h"
#include "core/home/spot_light.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <cmath>

namespace lathhouse::models {
namespace {

class HomeModelTest : public testing::Test {
protected:
    HomeModelTest() : facts(with_cold_night(plain_facts(), kShownToday)), model(door_of(facts), british_look())
    {
        model.start();
        wait_for(model);
    }
    QString figure(const QString& label) const
    {
        auto& rows = *const_cast<HomeModel&>(model).figures();
        for (int row = 0; row < rows.rowCount(); ++row) {
            if (rows.at(row, "label").toString().startsWith(label)) {
                return rows.at(row, "value").toString();
            }
        }
        return {};
    }
    plan::HouseholdFacts facts;
    HomeModel model;
};

TEST_F(HomeModelTest, FiguresAreThoseOfTheCore)
{
    const auto lowest = facts.climate.lowest_nights();
    EXPECT_EQ(figure("Hardiness zone"), text(climate::hardiness_zone(lowest.mean)));
    EXPECT_TRUE(figure("Lowest night").startsWith(model.words().temperature(lowest.mean)));
    EXPECT_LT(lowest.tenth, lowest.ninetieth);
    EXPECT_TRUE(figure("Lowest night").contains(model.words().bare(lowest.tenth) + QStringLiteral(" to ")));
    EXPECT_TRUE(figure("Days above").startsWith(model.words().decimal(climate::heat_days(facts.climate.monthly), 0)));
}

TEST_F(HomeModelTest, MapHasTheStationsWithinItsRim)
{
    const auto& map = model.facts().map;
    ASSERT_FALSE(map.stations.empty()) << model.mapNote().toStdString();
    for (const auto& station : map.stations) {
        EXPECT_LE(std::hypot(station.at.x(), station.at.y()), 1.0 + 1e-9);
        EXPECT_GT(station.weight, 0.0);
    }
    EXPECT_GE(map.rings.size(), 3U);
    EXPECT_EQ(model.stations()->rowCount(), static_cast<int>(facts.climate.stations.size()));
}

TEST_F(HomeModelTest, LightIsThatOfTheSpot)
{
    const home::YearOfSky year(facts.climate);
    ASSERT_EQ(model.spots()->rowCount(), static_cast<int>(facts.as_told.spots.size()));
    for (int spot = 0; spot < model.spots()->rowCount(); ++spot) {
        model.setSpot(spot);
        const auto& of = facts.as_told.spots[static_cast<std::size_t>(spot)];
        const auto light = home::spot_light(of, year);
        ASSERT_NE(model.light(), nullptr);
        for (std::size_t month = 0; month < 12; ++month) {
            EXPECT_DOUBLE_EQ(model.light()->moles[month], light[month].moles());
        }
        EXPECT_EQ(model.lightPlants()->rowCount(),
                  std::ranges::count(facts.as_told.plants, std::optional{of.id}, &home::Plant::spot));
        EXPECT_EQ(model.lightMonths()->rowCount(), 12);
    }
    model.setSpot(-1);
    model.setSpot(1000);
    EXPECT_NE(model.light(), nullptr);
}

TEST_F(HomeModelTest, BandOfTheOffsetNarrowsWithTheNights)
{
    for (int spot = 0; spot < model.outdoors()->rowCount(); ++spot) {
        model.setOutdoor(spot);
        const auto* course = model.offset();
        ASSERT_NE(course, nullptr);
        ASSERT_EQ(course->steps.size(), course->nights.size() + 1);
        EXPECT_EQ(model.nights()->rowCount(), static_cast<int>(course->nights.size()));
        if (course->nights.size() > 5) {
            EXPECT_LT(course->steps.back().high - course->steps.back().low,
                      course->steps.front().high - course->steps.front().low);
            EXPECT_TRUE(model.offsetNow().endsWith(" now"));
            EXPECT_TRUE(model.offsetKinds().contains("clear, calm"));
        }
    }
}

TEST_F(HomeModelTest, LastStepIsWhatTheCoreHasLearnt)
{
    const auto season = facts.climate.nights();
    const auto& course = *model.offset();
    const auto spot = std::ranges::find(facts.as_told.spots, course.spot, &home::Spot::id);
    const auto learnt = home::offset_of(*spot, facts.log, season);
    ASSERT_GT(learnt.nights, 0);
    EXPECT_NEAR(course.steps.back().mean, learnt.usual.mean.kelvins(), 1e-9);
}

TEST_F(HomeModelTest, LoggedNightIsReadBackAndTheSameNightReplaces)
{
    const int before = model.nights()->rowCount();
    EXPECT_FALSE(model.logNight("", 0));
    EXPECT_TRUE(model.error().contains("missing"));
    EXPECT_FALSE(model.logNight("-80", 0));
    EXPECT_TRUE(model.error().contains("did you mean")) << model.error().toStdString();
    EXPECT_TRUE(model.logNight("4,8", 2));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty());
    EXPECT_EQ(model.nights()->rowCount(), before + 1);
    EXPECT_TRUE(model.said().contains("takes its place; Undo above the pages takes it back")) << model.said().toStdString();
    EXPECT_TRUE(model.logNight("4.0", 1));
    wait_for(model);
    EXPECT_EQ(model.nights()->rowCount(), before + 1);
    EXPECT_EQ(model.nights()->at(0, "sky").toString(), "clear, calm");
}

TEST_F(HomeModelTest, ANightOfSomeDaysAgoIsKeptUnderItsMorning)
{
    EXPECT_FALSE(model.logNight("4", 0, -1));
    EXPECT_TRUE(model.error().contains("how many days ago")) << model.error().toStdString();
    EXPECT_EQ(model.dateAgo(3651), "");
    EXPECT_FALSE(model.dateAgo(20).contains("2026"));
    EXPECT_TRUE(model.dateAgo(400).endsWith("2025")) << model.dateAgo(400).toStdString();
    EXPECT_TRUE(model.logNight("4,8", 2, 2));
    wait_for(model);
    EXPECT_EQ(model.error(), "");
    EXPECT_TRUE(model.said().contains("the night to Thursday 14 May")) << model.said().toStdString();
}

TEST_F(HomeModelTest, DaysOfASpotAreThoseOfTheCoreAndNoneUnderLamps)
{
    const home::YearOfSky year(facts.climate);
    int told = 0;
    for (int spot = 0; spot < model.spots()->rowCount(); ++spot) {
        model.setSpot(spot);
        const auto spread = home::light_spread(facts.as_told.spots[static_cast<std::size_t>(spot)], year);
        ASSERT_EQ(model.lightSpread(), spread.has_value());
        EXPECT_EQ(model.lightNote().contains("Bendt"), spread.has_value());
        EXPECT_EQ(model.lightLine().contains("9 days in 10"), spread.has_value());
        for (std::size_t month = 0; spread && month < 12; ++month) {
            EXPECT_DOUBLE_EQ(model.light()->days->dark[month], (*spread)[month].dark.moles());
            EXPECT_DOUBLE_EQ(model.light()->days->bright[month], (*spread)[month].bright.moles());
            const QString cell = model.lightMonths()->at(static_cast<int>(month), "days").toString();
            EXPECT_EQ(cell, model.words().decimal((*spread)[month].dark.moles(), 1) + " to " +
                                model.words().decimal((*spread)[month].bright.moles(), 1));
            EXPECT_TRUE(model.lightMonths()->at(static_cast<int>(month), "sentence").toString().contains("9 days in 10: " + cell));
        }
        told += spread ? 1 : 0;
    }
    EXPECT_GT(told, 0);
}

TEST(HomeModel, LightUnderLampsHasNoDaysAndSaysWhy)
{
    auto facts = plain_facts();
    facts.as_told.spots[0].view.reset();
    facts.as_told.spots[0].light_in_winter = facts.as_told.spots[0].light_in_summer;
    HomeModel model(door_of(facts), british_look());
    model.start();
    wait_for(model);
    model.setSpot(0);
    EXPECT_FALSE(model.lightSpread());
    EXPECT_TRUE(model.lightNote().contains("as under lamps"));
    EXPECT_EQ(model.lightMonths()->at(0, "days").toString(), "");
    EXPECT_FALSE(model.lightMonths()->at(0, "sentence").toString().contains("9 days"));
}

TEST_F(HomeModelTest, AnotherSpotIsShownBeside)
{
    ASSERT_GE(model.spots()->rowCount(), 2);
    EXPECT_EQ(model.beside(), -1);
    EXPECT_EQ(model.lightBeside(), nullptr);
    const QString alone = model.lightLine();
    model.setBeside(0); // The one that is shown.
    model.setBeside(1000);
    EXPECT_EQ(model.beside(), -1);
    model.setBeside(1);
    ASSERT_NE(model.lightBeside(), nullptr);
    EXPECT_EQ(model.besideName(), model.spots()->at(1, "name").toString());
    EXPECT_TRUE(model.lightLine().startsWith(alone));
    EXPECT_TRUE(model.lightLine().contains("Beside it " + model.besideName()));
    const QString june = model.words().decimal(model.lightBeside()->moles[5], 1);
    EXPECT_EQ(model.lightMonths()->at(5, "beside").toString(), june);
    EXPECT_TRUE(model.lightMonths()->at(5, "sentence").toString().endsWith(model.besideName() + ": " + june));
    model.reload();
    wait_for(model);
    EXPECT_EQ(model.beside(), 1) << "kept when the household is read again";
    model.setSpot(1); // Nothing is compared with itself.
    EXPECT_EQ(model.beside(), -1);
    EXPECT_EQ(model.lightMonths()->at(5, "beside").toString(), "");
}

TEST_F(HomeModelTest, ListsKeepTheRulesOfModels)
{
    QAbstractItemModelTester nights(model.nights(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester plants(model.lightPlants(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setSpot(1);
    model.setSpot(2);
    EXPECT_TRUE(model.logNight("4", 0));
    wait_for(model);
}

TEST_F(HomeModelTest, SectionStaysWithinItsThree)
{
    model.setSection(2);
    model.setSection(3);
    EXPECT_EQ(model.section(), 2);
    model.setSection(-1);
    EXPECT_EQ(model.section(), 2);
}

TEST(HomeModel, NightThatCannotBeKeptIsASentence)
{
    auto door = door_of(plain_facts());
    door.log = [](const home::Reading&) -> Result<void> {
        return Error{ErrorCode::Locked, "another program holds the household"};
    };
    HomeModel model(door, british_look());
    EXPECT_FALSE(model.logNight("4", 0)) << "nothing is known yet";
    model.start();
    wait_for(model);
    EXPECT_TRUE(model.logNight("4", 0));
    wait_for(model);
    EXPECT_TRUE(model.error().contains("another program holds the household"));
    EXPECT_TRUE(model.said().isEmpty());
}

TEST(HomeModel, UnreadableHouseholdIsASentence)
{
    HomeModel model(no_door({ErrorCode::NotFound, "the folder is gone"}), british_look());
    model.start();
    wait_for(model);
    EXPECT_EQ(model.error(), "The folder is gone.");
    EXPECT_FALSE(model.known());
}

TEST_F(HomeModelTest, NightsOfAFileAreKeptAllOrNone)
{
    const QTemporaryDir folder;
    const auto write = [&](const char* content) {
        QFile file(folder.filePath("porch.csv"));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
        return file.fileName();
    };
    const auto nights = [this] { return model.nights()->rowCount(); };
    EXPECT_FALSE(model.logFile(" "));
    EXPECT_TRUE(model.aboutFile());
    const int before = nights();
    ASSERT_TRUE(model.logFile(write("date,low_c\n2026-05-01,4.5\n2026-05-02,icy\n")));
    wait_for(model);
    EXPECT_TRUE(model.error().contains("porch.csv, line 3")) << model.error().toStdString();
    EXPECT_EQ(nights(), before);
    ASSERT_TRUE(model.logFile(write("Day;Min\n1999-05-01;4,5\n1999-05-02;3,5\n"), "date=Day,low_c=Min"));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    EXPECT_TRUE(model.said().contains("2 nights")) << model.said().toStdString();
    EXPECT_EQ(nights(), before + 2);
    ASSERT_TRUE(model.logFile(write("date,low_c\n2026-05-17,4.5\n")));
    wait_for(model);
    EXPECT_FALSE(model.error().isEmpty()) << "that night is still to come";
    ASSERT_TRUE(model.logFile(folder.filePath("porch.csv"), "date"));
    wait_for(model);
    EXPECT_FALSE(model.error().isEmpty());
    EXPECT_FALSE(model.logNight("x", 0));
    EXPECT_FALSE(model.aboutFile());
}

} // namespace
} // namespace lathhouse::models
