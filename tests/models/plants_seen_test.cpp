#include "app/models/plants_model.h"
#include "tests/models/page_fixtures.h"

namespace lathhouse::models {
namespace {

/// What is logged of pests and harm, for the first plant of the shelves.
class PlantsSeenTest : public testing::Test {
protected:
    PlantsSeenTest()
        : household(std::make_shared<MemoryHousehold>(plain_facts())), model(plants_in_memory(household), british_look())
    {
        model.start();
        wait_for(model);
        model.setCurrent(0);
    }
    home::Event logged(int what, const QString& detail = {}, int choice = 0, int days_ago = 0)
    {
        EXPECT_TRUE(model.logSeen(what, detail, choice, {}, days_ago)) << model.error().toStdString();
        wait_for(model);
        return household->facts().events.back();
    }
    std::shared_ptr<MemoryHousehold> household;
    PlantsModel model;
};

TEST_F(PlantsSeenTest, APestByItsNameInTheListComesIntoTheCourse)
{
    ASSERT_GT(model.pests().size(), 5);
    const auto found = logged(PlantsModel::PestFound, model.pests().first(), 1, 3);
    EXPECT_EQ(found.kind, home::EventKind::PestFound);
    EXPECT_EQ(found.detail("pest"), "Citrus mealybug");
    EXPECT_EQ(found.detail("amount"), "many");
    EXPECT_EQ(found.happened, kShownToday - calendar::Days{3});
    EXPECT_TRUE(model.said().contains("Wednesday 13 May")) << model.said().toStdString();
    EXPECT_EQ(logged(PlantsModel::PestFound, "grey things").detail("pest"), "grey things") << "unknown ones are kept as written";
    EXPECT_FALSE(model.logSeen(PlantsModel::PestFound, " ", 0, {}));
    EXPECT_TRUE(model.error().contains("which pest"));
}

TEST_F(PlantsSeenTest, HarmCarriesWhatTheCoursesAskFor)
{
    const auto cold = logged(PlantsModel::ColdNight, QString::fromUtf8("−1,5 °C"));
    EXPECT_EQ(cold.kind, home::EventKind::ColdNight);
    EXPECT_EQ(cold.detail("low_c"), "-1.5");
    EXPECT_EQ(logged(PlantsModel::ColdNight).detail("low_c"), "") << "nobody may have read it";
    EXPECT_FALSE(model.logSeen(PlantsModel::ColdNight, "icy", 0, {}));
    EXPECT_EQ(logged(PlantsModel::ChemicalDamage, "dicamba").detail("product"), "dicamba");
    EXPECT_EQ(logged(PlantsModel::SetApartNow, {}, 1).detail("why"), "roots");
    EXPECT_EQ(logged(PlantsModel::SetApartNow).detail("why"), "pests");
    EXPECT_EQ(logged(PlantsModel::Released).kind, home::EventKind::Released);
    EXPECT_EQ(logged(PlantsModel::LookedOver).detail("found"), "nothing");
    EXPECT_EQ(logged(PlantsModel::Treated, "soap").detail("with"), "soap");
    EXPECT_EQ(logged(PlantsModel::WashedThrough).kind, home::EventKind::Leached);
    model.undo();
    wait_for(model);
    EXPECT_EQ(household->facts().events.back().kind, home::EventKind::Treated);
}

TEST_F(PlantsSeenTest, DaysAgoAreHeededAndRefusedWhereTheyAreNone)
{
    EXPECT_EQ(model.dateAgo(1), "Friday 15 May");
    EXPECT_FALSE(model.log(PlantsModel::Watered, {}, 0, {}, -1));
    EXPECT_TRUE(model.error().contains("days ago"));
    EXPECT_FALSE(model.logSeen(PlantsModel::Treated, {}, 0, {}, 99'999));
    EXPECT_TRUE(model.log(PlantsModel::Watered, {}, 0, {}, 1));
    wait_for(model);
    EXPECT_EQ(household->facts().events.back().happened, kShownToday - calendar::Days{1});
    EXPECT_TRUE(model.said().contains("Friday 15 May"));
    EXPECT_FALSE(model.logSeen(PlantsModel::Watered, {}, 0, {})) << "that is logged otherwise";
}

TEST_F(PlantsSeenTest, APlantTakenOffTheListIsGoneUntilItIsTakenBack)
{
    const int all = model.count();
    logged(PlantsModel::TakenOff);
    EXPECT_EQ(model.count(), all - 1);
    model.undo();
    wait_for(model);
    EXPECT_EQ(model.count(), all);
}

TEST_F(PlantsSeenTest, ADividedPlantStaysAndTheNewOnesStandBesideIt)
{
    const int all = model.count();
    const auto parent = *household->facts().as_told.plant(model.shownId(0));
    EXPECT_FALSE(model.logSeen(PlantsModel::Divided, " , ", 0, {}));
    EXPECT_TRUE(model.error().contains("name"));
    EXPECT_FALSE(model.logSeen(PlantsModel::Divided, QString::fromStdString(parent.name), 0, {}));
    EXPECT_TRUE(model.error().contains("already"));
    EXPECT_FALSE(model.logSeen(PlantsModel::Divided, "Left half, left half", 0, {}));
    EXPECT_EQ(model.count(), all);
    const auto divided = logged(PlantsModel::Divided, "Left half; Right half", 0, 2);
    EXPECT_EQ(divided.kind, home::EventKind::Divided);
    EXPECT_EQ(divided.detail("into"), "Left half, Right half");
    EXPECT_EQ(divided.happened, kShownToday - calendar::Days{2});
    EXPECT_EQ(model.count(), all + 2);
    const auto facts = household->facts();
    const auto* left = facts.as_told.plant_called("Left half");
    ASSERT_NE(left, nullptr);
    EXPECT_EQ(left->spot, parent.spot);
    EXPECT_EQ(left->kind, parent.kind);
    EXPECT_FALSE(left->pinned_spot);
    ASSERT_EQ(model.facts().ground->book.descents.size(), 2U);
    EXPECT_EQ(model.facts().ground->book.descents.front().parent, parent.id);
    model.undo();
    wait_for(model);
    EXPECT_EQ(model.count(), all);
    model.mark(0);
    model.mark(1);
    EXPECT_FALSE(model.logSeen(PlantsModel::Divided, "Third", 0, {})) << "one at a time";
}

TEST_F(PlantsSeenTest, PlantedOutIsKeptForEachThatIsMarked)
{
    EXPECT_EQ(logged(PlantsModel::PlantedOut).kind, home::EventKind::PlantedOut);
    EXPECT_TRUE(model.said().contains("planted out")) << model.said().toStdString();
}

} // namespace
} // namespace lathhouse::models
