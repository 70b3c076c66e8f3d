#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"

namespace lathhouse::journal {
namespace {

const calendar::Date kChanged{2026, 11, 25};

class HouseholdChanges : public WithFolder {
protected:
    void SetUp() override
    {
        WithFolder::SetUp();
        ASSERT_TRUE(HouseholdStore::create(folder_ / "home", invented_.household));
    }
    HouseholdStore store() const { return HouseholdStore::open(folder_ / "home").value(); }
    static calendar::Instant now(int hour = 0)
    {
        return calendar::start_of_day_utc(kChanged) + std::chrono::hours{hour};
    }
    home::Demonstration invented_ = home::demonstration({.today = kChanged}).value();
};

TEST_F(HouseholdChanges, AddAPlantWithItsComing)
{
    auto plant = invented_.household.plants.front();
    plant.name = "A second one";
    plant.spot = 2;
    plant.pot_volume = Litres::from_litres(7.5);
    plant.pot_shade = home::PotShade::Dark;
    const auto id = store().add(plant, kChanged, now());
    ASSERT_TRUE(id) << id.error().message;
    const auto home = store().load().value();
    EXPECT_EQ(home.plant(*id)->name, "A second one");
    EXPECT_EQ(home.plant(*id)->pot_volume, plant.pot_volume);
    EXPECT_EQ(home.plant(*id)->pot_shade, home::PotShade::Dark);
    EXPECT_EQ(store().events(*id)->front().kind, home::EventKind::Moved);
}

TEST_F(HouseholdChanges, RefuseANameThatIsTaken)
{
    const auto spot = store().add(invented_.household.spots.front());
    ASSERT_FALSE(spot);
    EXPECT_EQ(spot.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(store().load()->spots.size(), invented_.household.spots.size());
    const auto id = store().add(invented_.household.plants.front(), kChanged, now());
    ASSERT_FALSE(id);
    EXPECT_EQ(id.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(store().load()->plants.size(), invented_.household.plants.size());
}

TEST_F(HouseholdChanges, AddASpot)
{
    auto spot = invented_.household.spots.front();
    spot.name = "Behind the curtain";
    spot.apart = true;
    spot.windy = true;
    const auto id = store().add(spot);
    ASSERT_TRUE(id) << id.error().message;
    EXPECT_TRUE(store().load()->spot(*id)->apart);
    EXPECT_TRUE(store().load()->spot(*id)->windy);
}

TEST_F(HouseholdChanges, TheLatestAcceptedPlanIsGivenBack)
{
    EXPECT_FALSE(store().accepted_plan().value());
    const home::AcceptedPlan first{now(), {{4, 2, kChanged, kChanged + calendar::Days{364}}}};
    const home::AcceptedPlan second{
        now(1), {{4, 2, kChanged, kChanged + calendar::Days{9}}, {4, 5, kChanged + calendar::Days{10}, kChanged + calendar::Days{364}}}};
    ASSERT_TRUE(store().accept(first));
    ASSERT_TRUE(store().accept(second));
    const auto plan = store().accepted_plan().value();
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->accepted, second.accepted);
    EXPECT_EQ(plan->stays, second.stays);
}

} // namespace
} // namespace lathhouse::journal
