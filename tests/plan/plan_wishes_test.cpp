#include "core/home/demonstration.h"
#include "core/plan/year_plan.h"
#include "tests/plan/sample_household.h"

#include <gtest/gtest.h>

#include <set>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

const Date kFrom{2027, 1, 10};

class Wishes : public testing::Test {
protected:
    YearPlan plan(const home::Household& home, double risk = 0.1, const PlanWishes& wishes = {}) const
    {
        return plan_year(home, place_, chances_, kFrom, Probability::clamped(risk), Effort::Full, wishes);
    }
    static home::SpotId spot_on(const YearPlan& plan, home::PlantId plant, Date evening)
    {
        for (const auto& year : plan.plants) {
            for (const auto& stay : year.stays) {
                if (year.plant == plant && stay.from <= evening && evening <= stay.to) {
                    return stay.spot;
                }
            }
        }
        return -1;
    }
    static PlanWishes accepted(const YearPlan& plan)
    {
        return {{}, to_accept(plan, calendar::start_of_day_utc(kFrom))};
    }
    /// Nights on which plants that both plans have stand elsewhere.
    static int nights_changed(const YearPlan& before, const YearPlan& after)
    {
        int nights = 0;
        for (const auto& change : changes_between(to_accept(before, calendar::start_of_day_utc(kFrom)), after)) {
            nights += change.was ? calendar::days_between(change.from, change.to) + 1 : 0;
        }
        return nights;
    }
    climate::PlaceClimate place_ = climate_of(5.0, 10.0);
    ColdChances chances_{place_.nights()};
};

TEST_F(Wishes, AnIsolatedPlantStandsApartAndNobodyCleanBesideIt)
{
    auto apart = indoors(3, 3);
    apart.apart = true;
    const auto home = household({indoors(1, 4), balcony(2, 4), apart},
                                {plant(1, 10, 4, 0), plant(2, 10, 4, 0), plant(3, 10, 4, 0, 3.0)});
    const Isolation isolation{2, kFrom, kFrom + Days{40}};
    const auto result = plan(home, 0.1, {{isolation}, {}});
    EXPECT_TRUE(result.breaches.empty());
    for (auto day = isolation.from; day <= isolation.to; day += Days{1}) {
        EXPECT_EQ(spot_on(result, 2, day), 3);
        EXPECT_NE(spot_on(result, 1, day), 3);
        EXPECT_NE(spot_on(result, 3, day), 3);
    }
    EXPECT_EQ(result.plants[1].stays.front().why.kind, ReasonKind::StandsApart);
}

TEST_F(Wishes, WithoutASpotApartThePlanSaysSoAndStands)
{
    const auto home = household({indoors(1, 4), balcony(2, 4)}, {plant(1, 10, 4, 0), plant(2, 10, 4, 0)});
    const auto result = plan(home, 0.1, {{{2, kFrom, kFrom + Days{20}}}, {}});
    ASSERT_EQ(result.breaches.size(), 1u);
    EXPECT_EQ(result.breaches[0].kind, BreachKind::NotApart);
    EXPECT_EQ(result.breaches[0].plant, 2);
    EXPECT_EQ(calendar::days_between(result.breaches[0].from, result.breaches[0].to), 20);
    EXPECT_EQ(result.plants.size(), 2u);
}

/// A room and a balcony that suits all of them better from spring on.
home::Household porch_people()
{
    auto home = household({indoors(1, 4, 2.0), balcony(2, 4), indoors(3, 4, 2.0)},
                          {plant(1, 10, 4, 0), plant(2, 10, 4, 0), plant(3, 10, 4, 0)});
    for (auto& kept : home.plants) {
        kept.wants_open_air = true;
        kept.spot = 1;
    }
    return home;
}

TEST_F(Wishes, WithoutASpotApartAPlantWithPestsIsCarriedToNobodyUntilItIsClear)
{
    const auto home = porch_people();
    const auto free = plan(home);
    ASSERT_EQ(spot_on(free, 2, Date{2027, 6, 15}), 2);
    const Date clear{2027, 7, 2};
    const auto& pest = plants::PestTable::built_in().pests().front();
    const auto result = plan(home, 0.1, {{{2, kFrom, clear - Days{1}, clear, PestState::Infested, &pest}}, {}});
    for (auto day = kFrom; day < clear + Days{14}; day += Days{1}) { // Hours outdoors before the first night come after it.
        ASSERT_NE(spot_on(result, 2, day), 2) << calendar::to_text(day);
        ASSERT_TRUE(day >= clear || spot_on(result, 2, day) == 1) << calendar::to_text(day);
    }
    EXPECT_EQ(spot_on(result, 2, Date{2027, 7, 20}), 2);
    const auto& why = result.plants[1].stays.front().why;
    EXPECT_EQ(why.kind, ReasonKind::CarriedToNobody);
    ASSERT_TRUE(why.apart);
    EXPECT_EQ(why.apart->clear, clear);
    EXPECT_EQ(why.apart->pest, &pest);
    EXPECT_EQ(result.breaches.front().kind, BreachKind::NotApart);
    EXPECT_EQ(spot_on(result, 1, Date{2027, 6, 15}), 2); // The clean ones go.
}

TEST_F(Wishes, ColdForcesAPlantWithPestsInAllTheSame)
{
    auto home = porch_people();
    home.plants[1].spot = 2;
    const auto result = plan_year(home, place_, chances_, Date{2027, 9, 1}, Probability::clamped(0.1), Effort::Full,
                                  {{{2, Date{2027, 9, 1}, Date{2027, 12, 31}}}, {}});
    EXPECT_EQ(spot_on(result, 2, Date{2027, 9, 1}), 2);
    EXPECT_NE(spot_on(result, 2, Date{2027, 12, 20}), 2);
    EXPECT_TRUE(std::ranges::none_of(result.breaches, [](const Breach& of) { return of.kind == BreachKind::ColdNights; }));
}

TEST_F(Wishes, APlantWithPestsThatGoesBackToItsPlaceIsCarriedToNobody)
{
    auto home = porch_people();
    home.plants[1].spot = 2;
    const auto result = plan_year(home, place_, chances_, Date{2027, 9, 1}, Probability::clamped(0.1), Effort::Full,
                                  {{{2, Date{2027, 9, 1}, Date{2028, 8, 31}}}, {}});
    const auto& stays = result.plants[1].stays;
    ASSERT_GE(stays.size(), 3U);
    EXPECT_EQ(stays[1].why.kind, ReasonKind::NightsForbid);
    EXPECT_EQ(stays.back().spot, 2);
    EXPECT_EQ(stays.back().why.kind, ReasonKind::CarriedToNobody);
}

TEST_F(Wishes, APlantWithPestsThatHasToLeaveItsPlaceSaysThatNoSpotApartTakesIt)
{
    auto home = household({indoors(1, 4), indoors(2, 4)}, {plant(1, 10, 4, 0)});
    home.spots[0].in_reach = true;
    home.plants[0].hazardous = true;
    home.plants[0].spot = 1;
    const auto result = plan(home, 0.1, {{{1, kFrom, kFrom + Days{365}}}, {}});
    const auto& stay = result.plants[0].stays.front();
    EXPECT_EQ(stay.spot, 2);
    EXPECT_EQ(stay.why.kind, ReasonKind::NoneApart);
    EXPECT_TRUE(stay.why.apart);
}

TEST_F(Wishes, ACleanPlantSaysThatItLeavesTheSpotApartToOthers)
{
    auto home = household({indoors(1, 4), indoors(2, 4)}, {plant(1, 10, 4, 0), plant(2, 10, 4, 0)});
    home.spots[0].apart = true;
    home.plants[0].spot = 1;
    home.plants[1].spot = 2;
    const auto result = plan(home, 0.1, {{{2, kFrom, kFrom + Days{60}}}, {}});
    EXPECT_EQ(result.plants[0].stays.front().spot, 2);
    EXPECT_EQ(result.plants[0].stays.front().why.kind, ReasonKind::LeavesSpotApart);
    EXPECT_EQ(result.plants[1].stays.front().why.kind, ReasonKind::StandsApart);
}

TEST_F(Wishes, ACleanPlantSaysThatPestsKeepItFromABetterSpot)
{
    auto home = household({indoors(1, 4, 1.0, 1.0), indoors(2, 4, 14.0, 14.0), indoors(3, 4, 9.0, 9.0)},
                          {plant(1, 10, 4, 0), plant(2, 10, 4, 0)});
    home.plants[0].spot = 1;
    home.plants[1].spot = 2;
    const auto free = plan(home);
    ASSERT_EQ(free.plants[0].stays.back().spot, 2);
    EXPECT_EQ(free.plants[0].stays.back().why.kind, ReasonKind::BetterLight);
    const auto kept = plan(home, 0.1, {{{2, kFrom, kFrom + Days{365}}}, {}});
    ASSERT_EQ(kept.plants[0].stays.back().spot, 3);
    EXPECT_EQ(kept.plants[0].stays.back().why.kind, ReasonKind::KeptFromPests);
}

TEST_F(Wishes, WhatTheSpotApartDoesNotHoldStaysWhereItIs)
{
    auto home = porch_people();
    home.spots[2].apart = true;
    home.spots[2].capacity = 1;
    const Date to{2027, 7, 1};
    const auto result = plan(home, 0.1, {{{1, kFrom, to}, {2, kFrom, to}}, {}});
    for (auto day = kFrom; day <= to; day += Days{1}) {
        const std::set<home::SpotId> both{spot_on(result, 1, day), spot_on(result, 2, day)};
        ASSERT_EQ(both, (std::set<home::SpotId>{1, 3})) << calendar::to_text(day);
    }
}

TEST_F(Wishes, NoCleanPlantIsCarriedToAPlantWithPests)
{
    auto home = porch_people();
    home.spots.push_back(balcony(4, 4));
    home.spots.back().windy = true; // The poorer of the two but for the pests.
    home.plants[1].spot = 2;
    const auto result = plan_year(home, place_, chances_, Date{2027, 6, 20}, Probability::clamped(0.1), Effort::Full,
                                  {{{2, Date{2027, 6, 20}, Date{2027, 9, 1}}}, {}});
    EXPECT_EQ(spot_on(result, 2, Date{2027, 8, 1}), 2);
    EXPECT_EQ(spot_on(result, 1, Date{2027, 8, 1}), 4);
    EXPECT_EQ(spot_on(result, 3, Date{2027, 8, 1}), 4);
}

TEST_F(Wishes, ACourseThatIsOverOrOfNobodyChangesNothing)
{
    const auto home = home::demonstration({.today = kFrom, .plants = 20, .spots = 8}).value().household;
    const auto before = plan(home);
    const auto after = plan(home, 0.1, {{{home.plants[0].id, kFrom - Days{60}, kFrom - Days{20}}, {9999, kFrom, kFrom + Days{90}}}, {}});
    EXPECT_EQ(nights_changed(before, after), 0);
    EXPECT_EQ(before.gap, after.gap);
}

TEST_F(Wishes, WhenItIsClearCannotBeSaidItStaysInWithThatReason)
{
    const auto result = plan(porch_people(), 0.1, {{{2, kFrom, kFrom + Days{365}}}, {}});
    const auto kept = std::ranges::find(result.refusals, 2, &Refusal::plant);
    ASSERT_NE(kept, result.refusals.end());
    EXPECT_EQ(kept->kind, RefusalKind::KeptApart);
}

TEST_F(Wishes, APlantFromATrayStandsInTheWarmUntilItIsOldEnough)
{
    // A dim room at 18 degrees, and a bright one whose nights are at 7 in winter.
    auto home = household({indoors(1, 1, 4.0, 4.0), indoors(2, 4, 12.0, 20.0)}, {plant(1, 13, 5, -1)});
    home.spots[1].winter = Celsius::from_degrees(7.0);
    home.plants[0].spot = 1;
    ASSERT_EQ(spot_on(plan(home), 1, kFrom + Days{20}), 2); // Grown up it goes to the light.
    home.plants[0].young_until = kFrom + Days{49};
    const auto young = plan(home);
    for (int day = 0; day < 49; ++day) {
        ASSERT_EQ(spot_on(young, 1, kFrom + Days{day}), 1) << day;
    }
    EXPECT_EQ(spot_on(young, 1, kFrom + Days{120}), 2);
    home.spots[0].capacity = 0; // Where no spot is warm the plan stands all the same.
    home.plants[0].spot = 2;
    EXPECT_EQ(spot_on(plan(home), 1, kFrom + Days{20}), 2);
}

TEST_F(Wishes, APlantThatWasHarmedIsNotHardenedBeforeItHasRested)
{
    const auto home = porch_people();
    const auto from = Date{2027, 5, 25};
    const auto made = [&](const PlanWishes& wishes) {
        return plan_year(home, place_, chances_, from, Probability::clamped(0.1), Effort::Full, wishes);
    };
    ASSERT_EQ(spot_on(made({}), 1, Date{2027, 6, 15}), 2);
    const Rest rest{1, Date{2027, 6, 20}, RestWhy::Sprayed, Date{2027, 5, 24}};
    const auto held = made({.isolated = {}, .accepted = {}, .resting = {rest}});
    for (auto day = from; day < rest.until + Days{14}; day += Days{1}) {
        ASSERT_NE(spot_on(held, 1, day), 2) << calendar::to_text(day);
    }
    EXPECT_EQ(spot_on(held, 1, Date{2027, 7, 10}), 2);
    EXPECT_EQ(held.plants[0].stays.front().why.kind, ReasonKind::Rests);
    ASSERT_TRUE(held.plants[0].stays.front().why.rest);
    EXPECT_EQ(held.plants[0].stays.front().why.rest->until, rest.until);
    EXPECT_EQ(spot_on(held, 2, Date{2027, 6, 15}), 2);
}

TEST_F(Wishes, ADatedPinHoldsOnItsNights)
{
    auto home = household({indoors(1, 4), balcony(2, 4), indoors(3, 1)}, {plant(1, 10, 4, 0), plant(2, 10, 4, 0)});
    home.pins = {{1, 3, Date{2027, 7, 1}, Date{2027, 7, 31}}};
    const auto result = plan(home);
    EXPECT_TRUE(result.breaches.empty());
    for (auto day = home.pins[0].from; day <= home.pins[0].to; day += Days{1}) {
        EXPECT_EQ(spot_on(result, 1, day), 3);
    }
    EXPECT_NE(spot_on(result, 1, Date{2027, 6, 1}), 3);
}

TEST_F(Wishes, PinsThatDisagreeAreNamedAndTheLaterOneHolds)
{
    auto home = household({indoors(1, 4), indoors(2, 4)}, {plant(1, 10, 4, 0)});
    home.pins = {{1, 1, Date{2027, 3, 1}, Date{2027, 3, 31}}, {1, 2, Date{2027, 3, 20}, Date{2027, 4, 30}}};
    const auto result = plan(home);
    EXPECT_EQ(spot_on(result, 1, Date{2027, 3, 10}), 1);
    EXPECT_EQ(spot_on(result, 1, Date{2027, 3, 25}), 2);
    ASSERT_EQ(result.breaches.size(), 1u);
    EXPECT_EQ(result.breaches[0].kind, BreachKind::PinsDisagree);
    EXPECT_EQ(result.breaches[0].from, (Date{2027, 3, 20}));
}

TEST_F(Wishes, TheSamePlanStandsWhereNothingChanged)
{
    const auto home = home::demonstration({.today = kFrom, .plants = 20, .spots = 8}).value().household;
    const auto before = plan(home);
    const auto after = plan(home, 0.1, accepted(before));
    // What the solver still finds beyond the accepted plan must save more than kPriceOfChange a night.
    EXPECT_LE(nights_changed(before, after), 365 * 20 / 100);
}

TEST_F(Wishes, ASmallChangeOfRiskOrOneMorePlantDoesNotReshuffleTheRest)
{
    auto home = home::demonstration({.today = kFrom, .plants = 20, .spots = 8}).value().household;
    const auto before = plan(home);
    const auto riskier = plan(home, 0.11, accepted(before));
    auto newcomer = home.plants.front();
    newcomer.id = 1000;
    newcomer.name = "Newcomer";
    newcomer.spot = std::nullopt;
    home.plants.push_back(newcomer);
    const auto fuller = plan(home, 0.1, accepted(before));
    const auto fuller_cold = plan(home, 0.1);
    const int nights = 365 * 20;
    // At most a night in twenty, and far fewer than without the accepted plan's weight.
    EXPECT_LE(nights_changed(before, riskier), nights / 20);
    EXPECT_LE(nights_changed(before, fuller), nights / 20);
    EXPECT_LE(nights_changed(before, fuller), nights_changed(before, fuller_cold));
    RecordProperty("nights_changed_by_risk", nights_changed(before, riskier));
    RecordProperty("nights_changed_by_plant", nights_changed(before, fuller));
    RecordProperty("nights_changed_by_plant_without", nights_changed(before, fuller_cold));
    const auto changes = changes_between(to_accept(before, calendar::start_of_day_utc(kFrom)), fuller);
    EXPECT_TRUE(std::ranges::any_of(changes, [](const PlanChange& c) { return c.plant == 1000 && !c.was; }));
}

TEST_F(Wishes, EveryPlantThatStaysInHasItsReason)
{
    auto poisonous = plant(1, 10, 4, 0);
    poisonous.hazardous = true;
    auto pinned = plant(2, 10, 4, 0);
    pinned.pinned_spot = 1;
    const auto tropical = plant(3, 24, 22, 15);
    auto porch = balcony(2, 4);
    porch.in_reach = true;
    const auto result = plan(household({indoors(1, 9), porch}, {poisonous, pinned, tropical}));
    ASSERT_EQ(result.refusals.size(), 3u);
    EXPECT_EQ(result.refusals[0].kind, RefusalKind::OnlyInReach);
    EXPECT_EQ(result.refusals[1].kind, RefusalKind::PinnedIndoors);
    EXPECT_EQ(result.refusals[2].kind, RefusalKind::NightsForbid);
    EXPECT_TRUE(result.refusals[2].line);
}

TEST_F(Wishes, AWindySpotIsThePoorerOfTwo)
{
    auto windy = balcony(2, 4);
    windy.windy = true;
    const auto result = plan(household({indoors(1, 4), windy, balcony(3, 4)}, {plant(1, 8, 3, -2)}));
    EXPECT_EQ(spot_on(result, 1, Date{2027, 7, 15}), 3);
}

} // namespace
} // namespace lathhouse::plan
