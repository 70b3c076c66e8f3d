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

} // namespace
} // namespace lathhouse::models
