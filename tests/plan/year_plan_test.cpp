#include "core/plan/year_plan.h"

#include "core/plan/stress.h"
#include "tests/plan/sample_household.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace lathhouse::plan {
namespace {

using calendar::Days;
using climate::Monthly;

constexpr Probability kOneInTen = Probability::literal(0.1);

calendar::Date january()
{
    return *calendar::make_date(2027, 1, 10);
}

/// Every night in exactly one stay, no spot over its capacity.
void expect_sound(const home::Household& home, const YearPlan& plan)
{
    ASSERT_EQ(plan.plants.size(), home.plants.size());
    std::vector<std::vector<int>> taken(kNightsOfAPlan, std::vector<int>(home.spots.size() + 10, 0));
    for (const auto& year : plan.plants) {
        auto expected = plan.from;
        for (const auto& stay : year.stays) {
            EXPECT_EQ(stay.from, expected);
            EXPECT_GE(stay.to, stay.from);
            for (auto day = stay.from; day <= stay.to; day += Days{1}) {
                ++taken[static_cast<std::size_t>(calendar::days_between(plan.from, day))]
                       [static_cast<std::size_t>(stay.spot)];
            }
            expected = stay.to + Days{1};
        }
        EXPECT_EQ(calendar::days_between(plan.from, expected), kNightsOfAPlan);
    }
    for (const auto& night : taken) {
        for (const auto& spot : home.spots) {
            EXPECT_LE(night[static_cast<std::size_t>(spot.id)], spot.capacity);
        }
    }
}

bool goes_out(const home::Household& home, const PlantYear& year)
{
    return std::ranges::any_of(
        year.stays, [&](const Stay& stay) { return home::is_outdoors(home.spot(stay.spot)->kind); });
}

TEST(YearPlan, CoversEveryNightOnceWithinCapacity)
{
    std::vector<home::Plant> plants;
    for (int id = 1; id <= 9; ++id) {
        plants.push_back(plant(id, 8.0 + id % 4, 2.0 + id % 5, -3.0 + id % 3, 4.0 + 2.0 * (id % 4)));
    }
    const auto home = household({indoors(1, 5), indoors(2, 4, 1.0, 3.0), balcony(3, 5)}, plants);
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    expect_sound(home, plan);
    EXPECT_TRUE(plan.breaches.empty());
    EXPECT_GE(plan.gap, 0.0);
    EXPECT_LT(plan.gap, 1.0);
}

TEST(YearPlan, GoesOutAndComesInWithinTheRisk)
{
    const auto home = household({indoors(1, 3), balcony(2, 3)}, {plant(1, 8.0, 3.0, -2.0)});
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    expect_sound(home, plan);
    ASSERT_TRUE(goes_out(home, plan.plants[0]));
    for (const auto& stay : plan.plants[0].stays) {
        if (stay.spot == 2) {
            ASSERT_TRUE(stay.risk_out && stay.risk_in);
            EXPECT_LE(stay.risk_out->fraction(), 0.1);
            EXPECT_LE(stay.risk_in->fraction(), 0.1);
            // The offset and its spread are in the number: the open air's chance for the same dates differs.
            const auto& season = chances.season(Celsius::from_degrees(3.0), home.spots[1].offset);
            EXPECT_DOUBLE_EQ(stay.risk_out->fraction(),
                             season.after(calendar::DayOfYear::of(stay.from)).fraction());
        }
    }
}

TEST(YearPlan, SmallerRiskMeansLaterOutAndEarlierIn)
{
    const auto spot = balcony(2, 3);
    const auto tender = plant(1, 8.0, 3.0, -2.0);
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    int out_before = 0;
    int in_before = 1000;
    for (const double risk : {0.33, 0.2, 0.1, 0.05, 0.02}) {
        const auto window = outdoor_window(tender, spot, chances, *Probability::from_fraction(risk));
        ASSERT_EQ(window.state, OutdoorWindow::State::Ordinary);
        EXPECT_GE(window.out->place(), out_before);
        EXPECT_LE(window.in->place(), in_before);
        out_before = window.out->place();
        in_before = window.in->place();
    }
}

TEST(YearPlan, LethalLineCarriesATenthOfTheRisk)
{
    const auto spot = balcony(2, 3);
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    // Damage far below any night that matters: only the lethal line can decide, and it is the stricter one.
    const auto ordinary = outdoor_window(plant(1, 8.0, 3.0, -20.0), spot, chances, kOneInTen);
    const auto strict = outdoor_window(plant(1, 8.0, 3.0, 2.9), spot, chances, kOneInTen);
    const auto tenth = outdoor_window(plant(1, 8.0, 2.9, -20.0), spot, chances, Probability::literal(0.01));
    EXPECT_GT(strict.out->place(), ordinary.out->place());
    EXPECT_EQ(strict.out, tenth.out);
    EXPECT_EQ(strict.in, tenth.in);
}

TEST(YearPlan, FrostFreePlaceLetsPlantsStayOutAllYear)
{
    const auto home = household({indoors(1, 3), balcony(2, 3)}, {plant(1, 8.0, 2.0, -2.0)});
    const auto climate = climate_of(22.0, 2.5);
    const ColdChances chances{climate.nights()};
    EXPECT_EQ(outdoor_window(home.plants[0], home.spots[1], chances, kOneInTen).state,
              OutdoorWindow::State::AllYear);
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    ASSERT_EQ(plan.plants[0].stays.size(), 1u);
    EXPECT_EQ(plan.plants[0].stays[0].spot, 2);
}

TEST(YearPlan, PlantThatMayNeverGoOutStaysIn)
{
    const auto home = household({indoors(1, 3), balcony(2, 3)}, {plant(1, 18.0, 16.0, 10.0)});
    const auto climate = climate_of(0.0, 10.0);
    const ColdChances chances{climate.nights()};
    EXPECT_EQ(outdoor_window(home.plants[0], home.spots[1], chances, kOneInTen).state,
              OutdoorWindow::State::Never);
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    EXPECT_FALSE(goes_out(home, plan.plants[0]));
    EXPECT_TRUE(plan.breaches.empty());
}

TEST(YearPlan, SouthernSummerIsTheOtherHalfOfTheYear)
{
    const auto climate = climate_of(8.0, 8.0, 1, -30.0);
    const ColdChances chances{climate.nights()};
    const auto window = outdoor_window(plant(1, 8.0, 3.0, -2.0), balcony(2, 3), chances, kOneInTen);
    ASSERT_EQ(window.state, OutdoorWindow::State::Ordinary);
    EXPECT_GE(window.out->month(), 8);
    EXPECT_LE(window.in->month(), 6);
}

TEST(YearPlan, HazardousPlantStaysOutOfReach)
{
    auto low = indoors(1, 3, 6.0, 12.0);
    low.in_reach = true;
    auto poisonous = plant(1, 15.0, 12.0, 5.0, 6.0);
    poisonous.hazardous = true;
    const auto home = household({low, indoors(2, 3, 1.0, 2.0)}, {poisonous});
    const auto climate = climate_of(0.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    for (const auto& stay : plan.plants[0].stays) {
        EXPECT_EQ(stay.spot, 2);
    }
}

TEST(YearPlan, SaysThatItBringsAPlantOutOfReachOrOutOfTheColdToday)
{
    auto low = indoors(1, 3, 6.0, 12.0);
    low.in_reach = true;
    auto poisonous = plant(1, 15.0, 12.0, 5.0, 6.0);
    poisonous.hazardous = true;
    poisonous.spot = 1;
    auto out = plant(2, 8.0, 2.0, -2.0);
    out.spot = 3; // On a balcony in January.
    const auto home = household({low, indoors(2, 3, 1.0, 2.0), balcony(3, 3)}, {poisonous, out});
    const auto climate = climate_of(0.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    EXPECT_EQ(plan.plants[0].stays.front().why.kind, ReasonKind::OutOfReach);
    EXPECT_EQ(plan.plants[1].stays.front().why.kind, ReasonKind::NightsForbid);
}

TEST(YearPlan, PinnedPlantStays)
{
    auto pinned = plant(1, 8.0, 2.0, -2.0);
    pinned.pinned_spot = 1;
    pinned.spot = 1;
    const auto home = household({indoors(1, 1), balcony(2, 3)}, {pinned});
    const auto climate = climate_of(10.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    ASSERT_EQ(plan.plants[0].stays.size(), 1u);
    EXPECT_EQ(plan.plants[0].stays[0].spot, 1);
    EXPECT_EQ(plan.plants[0].stays[0].why.kind, ReasonKind::PinnedThere);
}

TEST(YearPlan, SaysWhereNothingFits)
{
    const auto home = household({indoors(1, 1)}, {plant(1, 8.0, 2.0, -2.0), plant(2, 8.0, 2.0, -2.0)});
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    ASSERT_FALSE(plan.breaches.empty());
    EXPECT_EQ(plan.breaches[0].kind, BreachKind::OverCapacity);
}

TEST(YearPlan, NoStayButTheLastIsShorterThanAFortnight)
{
    const auto home =
        household({indoors(1, 2), indoors(2, 2, 1.0, 3.0), balcony(3, 1), balcony(4, 2, 0.0, 0.5)},
                  {plant(1, 8, 3, -1), plant(2, 6, -1, -5, 25), plant(3, 7, 2, -4, 6)});
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    expect_sound(home, plan);
    for (const auto& year : plan.plants) {
        for (std::size_t s = 1; s + 1 < year.stays.size(); ++s) {
            EXPECT_GE(calendar::days_between(year.stays[s].from, year.stays[s].to) + 1, kLeastNightsOfAStay);
        }
    }
}

TEST(YearPlan, IsTheSameTwice)
{
    const auto home =
        household({indoors(1, 2), indoors(2, 2), balcony(3, 2)},
                  {plant(1, 8, 3, -1), plant(2, 9, 4, -1), plant(3, 7, 2, -4), plant(4, 12, 8, 1)});
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto a = plan_year(home, climate, chances, january(), kOneInTen);
    const auto b = plan_year(home, climate, chances, january(), kOneInTen);
    for (std::size_t p = 0; p < a.plants.size(); ++p) {
        ASSERT_EQ(a.plants[p].stays.size(), b.plants[p].stays.size());
        for (std::size_t s = 0; s < a.plants[p].stays.size(); ++s) {
            EXPECT_EQ(a.plants[p].stays[s].from, b.plants[p].stays[s].from);
            EXPECT_EQ(a.plants[p].stays[s].spot, b.plants[p].stays[s].spot);
        }
    }
}

TEST(YearPlan, OfAnEmptyHouseholdIsEmpty)
{
    const auto climate = climate_of(5.0, 10.0);
    const ColdChances chances{climate.nights()};
    EXPECT_TRUE(plan_year(household({}, {}), climate, chances, january(), kOneInTen).plants.empty());
}

TEST(Stress, IsNothingWhereThePlantIsAtEase)
{
    const auto climate = climate_of(20.0, 2.5);
    const auto nights = climate.nights();
    auto easy = plant(1, 5.0, 0.0, -5.0, 6.0);
    EXPECT_NEAR(stress_of(easy, balcony(2, 1), climate, nights, *calendar::make_date(2027, 6, 21)), 0.0,
                0.05);
}

TEST(Stress, GrowsWithColdAndDark)
{
    const auto climate = climate_of(5.0, 10.0);
    const auto nights = climate.nights();
    const auto spring = *calendar::make_date(2027, 4, 1);
    EXPECT_GT(stress_of(plant(1, 12.0, 3.0, -2.0), balcony(2, 1), climate, nights, spring),
              stress_of(plant(1, 4.0, 3.0, -2.0), balcony(2, 1), climate, nights, spring));
    EXPECT_GT(stress_of(plant(1, 8.0, 3.0, -2.0), indoors(1, 1, 0.5, 1.0), climate, nights, spring),
              stress_of(plant(1, 8.0, 3.0, -2.0), indoors(1, 1, 5.0, 12.0), climate, nights, spring));
}

TEST(Light, LiesBetweenWinterAndSummer)
{
    const auto spot = indoors(1, 1, 2.0, 8.0);
    EXPECT_NEAR(light_at(spot, Latitude::literal(48.0), *calendar::make_date(2027, 6, 21)).moles(), 8.0,
                0.01);
    EXPECT_NEAR(light_at(spot, Latitude::literal(48.0), *calendar::make_date(2027, 12, 21)).moles(), 2.0,
                0.01);
    EXPECT_NEAR(light_at(spot, Latitude::literal(-48.0), *calendar::make_date(2027, 12, 21)).moles(), 8.0,
                0.01);
}

TEST(YearPlan, NamesWhatAPinBreaks)
{
    auto pinned = plant(1, 8.0, 2.0, -2.0);
    pinned.pinned_spot = 2;
    pinned.hazardous = true;
    auto outdoors = balcony(2, 3);
    outdoors.in_reach = true;
    const auto home = household({indoors(1, 1), outdoors}, {pinned});
    const auto climate = climate_of(0.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    for (const auto kind : {BreachKind::ColdNights, BreachKind::InReach}) {
        EXPECT_NE(std::ranges::find(plan.breaches, kind, &Breach::kind), plan.breaches.end());
    }
}

TEST(YearPlan, BringsInBeforeDamageWhereNightsAreTooCool)
{
    const auto home = household({indoors(1, 1, 6.0, 8.0), balcony(2, 3)}, {plant(1, 16.0, -4.0, -9.0)});
    const auto climate = climate_of(8.0, 10.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    EXPECT_TRUE(std::ranges::any_of(plan.plants[0].stays, [](const Stay& stay) {
        return stay.why.kind == ReasonKind::NightsTooCool && stay.why.line == Celsius::from_degrees(16.0);
    }));
}

TEST(YearPlan, BlamesNoCoolNightsWhereItIsTheLightThatBringsAPlantIn)
{
    auto porch = balcony(2, 3); // A roof that faces the noon sun: bright in winter, dim in high summer.
    porch.light_in_summer = DailyLight::from_moles(1.0);
    porch.light_in_winter = DailyLight::from_moles(20.0);
    const auto home = household({indoors(1, 1, 2.0, 20.0), porch}, {plant(1, 2.0, -3.0, -7.0)});
    const auto climate = climate_of(18.0, 3.0);
    const ColdChances chances{climate.nights()};
    const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
    const auto& stays = plan.plants[0].stays;
    const auto in = std::ranges::find_if(stays, [](const Stay& stay) { return stay.spot == 1 && stay.from != january(); });
    ASSERT_NE(in, stays.end());
    EXPECT_EQ(in->why.kind, ReasonKind::BetterLight);
    EXPECT_EQ(std::ranges::find(stays, ReasonKind::NightsTooCool, [](const Stay& stay) { return stay.why.kind; }), stays.end());
}

TEST(YearPlan, StaysInNoPlantThatStandsOutToday)
{
    auto tender = plant(1, 2.0, -3.0, -7.0, 3.0);
    tender.heat_limit = Celsius::from_degrees(15.0); // Every day outdoors is too hot for it.
    for (const std::optional<home::SpotId> stands : {std::optional<home::SpotId>{1}, std::optional<home::SpotId>{2}}) {
        tender.spot = stands;
        const auto home = household({indoors(1, 1), balcony(2, 3)}, {tender});
        const auto climate = climate_of(20.0, 3.0);
        const ColdChances chances{climate.nights()};
        const auto plan = plan_year(home, climate, chances, january(), kOneInTen);
        ASSERT_FALSE(goes_out(home, plan.plants[0]));
        EXPECT_EQ(plan.refusals.empty(), *stands == 2);
    }
}

} // namespace
} // namespace lathhouse::plan
