#include "core/journal/household_store.h"
#include "tests/models/start_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <algorithm>

namespace lathhouse::models {
namespace {

int row_with(SheetRows& rows, const QString& role, const QString& value)
{
    for (int row = 0; row < rows.count(); ++row) {
        if (rows.at(row, role).toString() == value) {
            return row;
        }
    }
    return -1;
}

class FirstStartModelTest : public testing::Test {
protected:
    FirstStartModelTest()
        : model(shipped_door(), folder.path(), british_words(), kStartToday), made(&model, &FirstStartModel::made)
    {
        model.start();
        wait_until_still(*model.place());
    }
    void type_place()
    {
        model.place()->setFind(QStringLiteral("48.2, 16.4"));
        wait_until_still(*model.place());
    }
    void pick(const QString& name)
    {
        model.plants()->setFind(name);
        ASSERT_GT(model.plants()->found()->count(), 0);
        model.plants()->pick(0);
    }
    home::Household written()
    {
        const auto store = journal::HouseholdStore::open(folder.path());
        EXPECT_TRUE(store);
        return store->load().value();
    }
    FreshFolder folder;
    FirstStartModel model;
    QSignalSpy made;
};

TEST_F(FirstStartModelTest, APorchFacesTheNoonSunOfItsHemisphere)
{
    constexpr int kNorth = 0;
    constexpr int kSouth = 4;
    constexpr int kCoolLanding = 4, kRoofed = 5, kScreened = 7;
    type_place();
    model.spots()->addReady(kRoofed);
    EXPECT_EQ(model.spots()->facing(), kSouth);
    model.place()->setFind(QStringLiteral("-30.03, -51.23"));
    wait_until_still(*model.place());
    for (const int row : {kCoolLanding, kRoofed, kScreened}) {
        model.spots()->addReady(row);
        EXPECT_EQ(model.spots()->facing(), kNorth) << row;
    }
    model.spots()->addReady(0);
    EXPECT_EQ(model.spots()->facing(), kSouth) << "a south sill is one everywhere";
}

TEST_F(FirstStartModelTest, SaysWhatIsLeftOutOnlyWhereItIs)
{
    const QString before = model.leaveWords();
    type_place();
    EXPECT_NE(model.leaveWords(), before);
    EXPECT_EQ(model.leaveWords(), "");
    ASSERT_TRUE(model.next());
    EXPECT_TRUE(model.leaveWords().contains("stand nowhere"));
    model.spots()->addReady(0);
    EXPECT_FALSE(model.leaveWords().contains("stand nowhere")) << model.leaveWords().toStdString();
}

TEST_F(FirstStartModelTest, ThreeStepsMakeAHousehold)
{
    type_place();
    model.setHomeName(QStringLiteral("Attic"));
    ASSERT_TRUE(model.next());
    model.spots()->addReady(0);
    model.spots()->addReady(5);
    ASSERT_TRUE(model.next());
    pick(QStringLiteral("Citrus limon"));
    pick(QStringLiteral("Ocimum basilicum"));
    model.plants()->more(1);
    model.plants()->standAt(1, 1);
    ASSERT_TRUE(model.next());
    wait_until_still(model);
    EXPECT_EQ(model.error(), QString{});
    EXPECT_EQ(made.count(), 1);
    const auto home = written();
    EXPECT_EQ(home.name, "Attic");
    EXPECT_FALSE(home.demonstration);
    EXPECT_NEAR(home.place.position.latitude.degrees(), 48.2, 1e-9);
    ASSERT_EQ(home.spots.size(), 2U);
    EXPECT_TRUE(home.spots[0].view.has_value());
    ASSERT_EQ(home.plants.size(), 3U);
    EXPECT_EQ(home.plants[0].kind, "Citrus limon");
    EXPECT_EQ(home.plants[0].spot, home.spots[0].id);
    EXPECT_EQ(home.plants[2].spot, home.spots[1].id);
    EXPECT_NE(home.plants[1].name, home.plants[2].name);
    // The journal knows since when they stand there.
    const auto events = journal::HouseholdStore::open(folder.path())->events().value();
    EXPECT_EQ(std::ranges::count(events, home::EventKind::Moved, &home::Event::kind), 3);
}

TEST_F(FirstStartModelTest, NothingIsWrittenBeforeTheEnd)
{
    type_place();
    model.next();
    model.spots()->addReady(0);
    model.next();
    pick(QStringLiteral("lemon"));
    EXPECT_FALSE(std::filesystem::exists(folder.path()));
}

TEST_F(FirstStartModelTest, BackKeepsAllThatWasTyped)
{
    type_place();
    model.next();
    model.spots()->addReady(2);
    model.spots()->setName(QStringLiteral("Kitchen"));
    model.back();
    EXPECT_EQ(model.step(), 0);
    EXPECT_TRUE(model.place()->placed());
    model.next();
    EXPECT_EQ(model.spots()->name(), QStringLiteral("Kitchen"));
}

TEST_F(FirstStartModelTest, SpotsAndPlantsCanBeLeftOut)
{
    type_place();
    model.next();
    model.spots()->addReady(0); // Typed, and left out all the same.
    model.leaveOut();
    pick(QStringLiteral("lemon"));
    ASSERT_TRUE(model.next());
    wait_until_still(model);
    ASSERT_EQ(made.count(), 1) << model.error().toStdString();
    EXPECT_TRUE(written().spots.empty());
    ASSERT_EQ(written().plants.size(), 1U);
    EXPECT_FALSE(written().plants.front().spot);
}

TEST_F(FirstStartModelTest, APlaceThatIsMissingIsAskedFor)
{
    EXPECT_FALSE(model.next());
    EXPECT_EQ(model.step(), 0);
    EXPECT_FALSE(model.place()->positionTrouble().isEmpty());
}

TEST_F(FirstStartModelTest, ALeftOutPlaceIsGuessedByTheClockOrAskedFor)
{
    model.leaveOut();
    if (model.place()->guess().isEmpty()) {
        EXPECT_EQ(model.step(), 0);
        EXPECT_FALSE(model.error().isEmpty());
        return;
    }
    EXPECT_EQ(model.step(), 1);
    model.leaveOut();
    model.leaveOut();
    wait_until_still(model);
    ASSERT_EQ(made.count(), 1) << model.error().toStdString();
    EXPECT_NE(written().place.name.find("guessed"), std::string::npos);
}

TEST_F(FirstStartModelTest, ASpotThatIsWrongHoldsTheStep)
{
    type_place();
    model.next();
    model.spots()->addReady(0);
    model.spots()->setPots(QStringLiteral("many"));
    EXPECT_FALSE(model.next());
    EXPECT_EQ(model.step(), 1);
    EXPECT_FALSE(model.spots()->potsTrouble().isEmpty());
    model.spots()->setPots(QStringLiteral("3"));
    model.spots()->addReady(0);
    model.spots()->setName(QStringLiteral("south SILL"));
    EXPECT_FALSE(model.next());
    EXPECT_TRUE(model.spots()->nameTrouble().contains(QStringLiteral("already")));
}

TEST_F(FirstStartModelTest, AFolderThatCannotBeMadeIsSaidAndNothingIsLost)
{
    FirstStartModel blocked(shipped_door(), "/proc/lathhouse", british_words(), kStartToday);
    blocked.start();
    blocked.place()->setFind(QStringLiteral("48.2, 16.4"));
    wait_until_still(*blocked.place());
    blocked.next();
    blocked.next();
    blocked.next();
    wait_until_still(blocked);
    EXPECT_TRUE(blocked.error().contains(QStringLiteral("cannot be written"))) << blocked.error().toStdString();
    EXPECT_TRUE(blocked.place()->placed());
}

TEST_F(FirstStartModelTest, PoisonousPlantsAreNotPutInReach)
{
    type_place();
    model.next();
    model.spots()->addReady(0);
    model.spots()->setInReach(true);
    model.spots()->addReady(1);
    pick(QStringLiteral("Nerium oleander"));
    EXPECT_EQ(model.plants()->picked()->at(0, QStringLiteral("where")).toString(), QStringLiteral("East sill"));
    model.plants()->standAt(0, 0);
    EXPECT_TRUE(model.plants()->picked()->at(0, QStringLiteral("trouble")).toString().startsWith(QStringLiteral("Poisonous")));
}

TEST_F(FirstStartModelTest, PlantsAreFoundByAnyOfTheirNames)
{
    auto& plants = *model.plants();
    QAbstractItemModelTester found(plants.found(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester picked(plants.picked(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    plants.setFind(QStringLiteral("ficus benj"));
    ASSERT_EQ(plants.found()->count(), 1);
    plants.setFind(QStringLiteral("FIG"));
    EXPECT_GE(row_with(*plants.found(), QStringLiteral("detail"), QStringLiteral("Ficus benjamina")), 0);
    plants.setFind(QStringLiteral("zzzz"));
    EXPECT_TRUE(plants.foundWords().contains(QStringLiteral("kind of your own")));
    plants.setFind({});
    plants.pick(0);
    plants.pick(0);
    EXPECT_EQ(plants.total(), 2);
    plants.fewer(0);
    plants.fewer(0);
    EXPECT_EQ(plants.total(), 0);
}

TEST_F(FirstStartModelTest, AKindOfOnesOwnHasItsLines)
{
    type_place();
    model.next();
    model.next();
    auto& plants = *model.plants();
    plants.setProperty("ownName", QStringLiteral("Grandmother's cactus"));
    EXPECT_FALSE(plants.addOwn());
    EXPECT_EQ(plants.ownTroubleField(), 1);
    plants.setProperty("ownSafe", QStringLiteral("5,5"));
    plants.setProperty("ownDamage", QStringLiteral("8"));
    EXPECT_FALSE(plants.addOwn());
    EXPECT_EQ(plants.ownTroubleField(), 2);
    plants.setProperty("ownDamage", QStringLiteral("\u22121"));
    plants.setProperty("ownLethal", QStringLiteral("3"));
    EXPECT_FALSE(plants.addOwn());
    EXPECT_EQ(plants.ownTroubleField(), 3);
    plants.setProperty("ownLethal", QStringLiteral("-4"));
    plants.setProperty("ownPoisonous", true);
    ASSERT_TRUE(plants.addOwn());
    model.next();
    wait_until_still(model);
    ASSERT_EQ(made.count(), 1) << model.error().toStdString();
    const auto plant = written().plants.at(0);
    EXPECT_EQ(plant.kind, "Grandmother's cactus");
    EXPECT_EQ(plant.lines.safe_night, Celsius::from_degrees(5.5));
    EXPECT_EQ(plant.lines.damage_begins, Celsius::from_degrees(-1.0));
    EXPECT_EQ(plant.lines.lethal, Celsius::from_degrees(-4.0));
    EXPECT_TRUE(plant.hazardous);
}

} // namespace
} // namespace lathhouse::models
