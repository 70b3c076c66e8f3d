#include "core/plan/sowing.h"

#include "tests/plan/invented_climate.h"
#include "tests/plan/short_names.h"

#include <gtest/gtest.h>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

SowingPlan plan_at(const InventedClimate& invented, const char* crop, Date today = Date{2027, 1, 10},
                   SowingWishes wishes = {})
{
    const auto place = place_of(invented);
    const SowingClimate climate{place, today};
    return plan_sowing(seed_kind(crop), place, climate, wishes);
}

TEST(Sowing, GoesThroughItsDatesInOrder)
{
    for (const char* crop : {"tomato", "zinnia", "pepper", "petunia", "cabbage"}) {
        const auto plan = plan_at(kInland, crop);
        ASSERT_TRUE(plan.season) << crop;
        const auto& season = *plan.season;
        ASSERT_TRUE(season.sow_indoors && season.plant_out && season.ready && season.emerge_indoors) << crop;
        EXPECT_GE(season.sow_indoors->from, (Date{2027, 1, 10})) << crop;
        EXPECT_LT(season.sow_indoors->from, season.emerge_indoors->dates.from) << crop;
        EXPECT_LT(season.emerge_indoors->dates.to, season.plant_out->from) << crop;
        EXPECT_EQ(*season.hardening_from, season.plant_out->from - Days{kHardeningDays}) << crop;
        EXPECT_LT(season.plant_out->from, season.ready->from) << crop;
        EXPECT_EQ(season.first_out(), season.sow_outdoors ? std::min(season.sow_outdoors->from, season.plant_out->from)
                                                          : season.plant_out->from)
            << crop;
        EXPECT_LE(season.ready->from, season.ready->to) << crop;
        EXPECT_LE(season.sow_indoors->from, *season.last_useful) << crop;
    }
}

TEST(Sowing, CountsBackTheWeeksIndoorsOfTheRow)
{
    const auto season = *plan_at(kInland, "tomato").season; // Five to seven weeks: six.
    EXPECT_EQ(season.plant_out->from - season.sow_indoors->from, Days{42});
}

/// The night line at the risk, looked up in the model itself: what the plan promises must hold and must not have
/// held a day earlier for the reason that it names.
TEST(Sowing, PlantsOutWhenNightsSoilAndRiskAllow)
{
    const auto place = place_of(kInland);
    const auto nights = climate::PlaceNights::of(place);
    for (const char* crop : {"tomato", "basil", "lettuce", "zinnia", "petunia"}) {
        const auto& of = seed_kind(crop);
        const auto plan = plan_at(kInland, crop);
        ASSERT_TRUE(plan.season) << crop;
        const auto out = plan.season->plant_out->from;
        const auto day = calendar::DayOfYear::of(out);
        EXPECT_LE(nights.season(of.damaging_night()).after(day).fraction(), 0.1) << crop;
        // The first night out ends on the next morning.
        EXPECT_GT(nights.model().mean_low(calendar::DayOfYear::of(out + Days{1})), of.safe_night) << crop;
        EXPECT_GT(plan.season->usual_low, of.safe_night) << crop;
        if (of.soil_least) {
            EXPECT_GE(plan.season->soil, *of.soil_least) << crop;
        }
        EXPECT_FALSE(plan.season->begins_by.contains(SowingLimit::Today)) << crop;
        EXPECT_FALSE(plan.season->begins_by.empty()) << crop;
    }
}

TEST(Sowing, BasilGoesOutLaterThanTomatoAndLettuceLongBefore)
{
    const auto out = [](const char* crop) { return plan_at(kInland, crop).season->plant_out->from; };
    EXPECT_GT(out("basil"), out("tomato") + Days{5});
    EXPECT_LT(out("lettuce") + Days{20}, out("tomato"));
    EXPECT_LT(out("kale"), out("lettuce"));
}

TEST(Sowing, LessRiskIsLater)
{
    const auto out = [](double risk) {
        SowingWishes wishes;
        wishes.risk = Probability::clamped(risk);
        return plan_at(kInland, "zinnia", Date{2027, 1, 10}, wishes).season->plant_out->from;
    };
    EXPECT_GE(out(0.02), out(0.1));
    EXPECT_GE(out(0.1), out(0.4));
    EXPECT_GT(out(0.01), out(0.4));
}

TEST(Sowing, IsHalfAYearOffInTheSouth)
{
    const auto plan = plan_at(kSouth, "tomato", Date{2027, 6, 10});
    ASSERT_TRUE(plan.season);
    const int month = int{plan.season->plant_out->from.month()};
    EXPECT_TRUE(month >= 8 && month <= 11) << month;
    EXPECT_GE(plan.season->sow_indoors->from, (Date{2027, 6, 10}));
}

TEST(Sowing, TheNextSeasonFollowsTheLastUsefulDate)
{
    const auto first = *plan_at(kInland, "tomato").season;
    const auto late = plan_at(kInland, "tomato", *first.last_useful + Days{1});
    ASSERT_TRUE(late.season);
    EXPECT_EQ(int{late.season->plant_out->from.year()}, 2028);
    // Within the season it goes on from today.
    const auto within = *plan_at(kInland, "tomato", first.sow_indoors->from + Days{10}).season;
    EXPECT_EQ(within.sow_indoors->from, first.sow_indoors->from + Days{10});
    const auto outdoors = *plan_at(kInland, "tomato", first.sow_outdoors->from + Days{10}).season;
    EXPECT_EQ(outdoors.sow_outdoors->from, first.sow_outdoors->from + Days{10});
    EXPECT_TRUE(outdoors.begins_by.contains(SowingLimit::Today));
}

TEST(Sowing, TheLastUsefulDateStillGetsThereBeforeTheFrost)
{
    const auto& radish = seed_kind("radish");
    const auto first = *plan_at(kInland, "radish").season;
    const auto plan = plan_at(kInland, "radish", *first.last_useful);
    ASSERT_TRUE(plan.season);
    EXPECT_EQ(plan.season->sow_outdoors->from, *first.last_useful);
    const auto ready = calendar::DayOfYear::of(plan.season->ready_outdoors->from);
    EXPECT_LE(climate::PlaceNights::of(place_of(kInland)).season(radish.damaging_night()).on_or_before(ready).fraction(), 0.1);
    EXPECT_FALSE(first.ends_by.empty());
}

TEST(Sowing, CoolDaysCountOnlyInPart)
{
    // 25 to 30 days at the best: in cool April longer, from June on about that.
    const auto cool = *plan_at(kInland, "radish").season;
    EXPECT_GT(cool.ready_outdoors->from - cool.sow_outdoors->from, Days{30});
    const auto warm = *plan_at(kInland, "radish", Date{2027, 6, 1}).season;
    EXPECT_EQ(warm.ready_outdoors->from - warm.sow_outdoors->from, Days{25});
    EXPECT_EQ(warm.ready_outdoors->to - warm.sow_outdoors->from, Days{30});
}

TEST(Sowing, HeatIsTheLimitWhereThereIsNoWinter)
{
    const auto plan = plan_at(kDesert, "spinach", Date{2027, 6, 1});
    ASSERT_TRUE(plan.season);
    const int month = int{plan.season->sow_outdoors->from.month()};
    EXPECT_TRUE(month >= 9 && month <= 11) << month;
    EXPECT_TRUE(plan.season->ends_by.contains(SowingLimit::Heat));
}

TEST(Sowing, KeepsOutOfTheMonsoon)
{
    const auto plan = plan_at(kMonsoon, "zinnia", Date{2027, 5, 1});
    ASSERT_TRUE(plan.season);
    EXPECT_FALSE(plan.season->needs_roof);
    const int month = int{plan.season->sow_outdoors->from.month()};
    EXPECT_TRUE(month >= 9 && month <= 11) << month;
    EXPECT_TRUE(plan.season->begins_by.contains(SowingLimit::Rain));
    EXPECT_TRUE(plan.season->ends_by.contains(SowingLimit::Rain) || plan.season->ends_by.contains(SowingLimit::Heat));
}

TEST(Sowing, WhereItAlwaysPoursARoofIsTheAnswer)
{
    auto wet = kMonsoon;
    wet.swing = 1.5;
    wet.mean_low = 20.0;
    wet.rain_mm.fill(400.0);
    const auto plan = plan_at(wet, "zinnia");
    ASSERT_TRUE(plan.season);
    EXPECT_TRUE(plan.season->needs_roof);
}

TEST(Sowing, AnyDayWillDoWhereNothingChanges)
{
    const auto plan = plan_at(kHighTropics, "lettuce");
    ASSERT_TRUE(plan.season);
    EXPECT_FALSE(plan.season->last_useful);
    EXPECT_TRUE(plan.season->ends_by.empty());
    EXPECT_EQ(plan.season->sow_outdoors->from, (Date{2027, 1, 10}));
}

TEST(Sowing, NoDateSaysWhyAndWhatWouldHelp)
{
    const auto plan = plan_at(kNorth, "pumpkin");
    ASSERT_FALSE(plan.season);
    ASSERT_TRUE(plan.no_date);
    EXPECT_FALSE(plan.no_date->ways.empty());
    EXPECT_LT(plan.no_date->mildest_usual_low, seed_kind("pumpkin").safe_night);
    EXPECT_EQ(plan.no_date->reason, SowingLimit::CoolNights);
    // Hardy kinds do grow there.
    EXPECT_TRUE(plan_at(kNorth, "kale").season || plan_at(kNorth, "spinach").season);
}

TEST(Sowing, ShortSummersAskForGlassOrBiggerPlants)
{
    auto brief = kInland;
    brief.mean_low = 2.5;
    const auto plan = plan_at(brief, "pepper");
    ASSERT_TRUE(plan.no_date);
    const auto has = [&](WayKind way) {
        return std::ranges::any_of(plan.no_date->ways, [&](const Way& one) { return one.kind == way; });
    };
    EXPECT_TRUE(has(WayKind::UnderGlass) || has(WayKind::GlassAndBigger));
    for (const auto& way : plan.no_date->ways) {
        if (way.season) {
            EXPECT_TRUE(way.season->ready || way.season->ready_outdoors);
        }
    }
}

TEST(Sowing, TooHotAllYearIsSaid)
{
    auto furnace = kMonsoon;
    furnace.mean_low = 27.0;
    furnace.swing = 1.5;
    furnace.rain_mm.fill(20.0);
    const auto plan = plan_at(furnace, "spinach");
    ASSERT_TRUE(plan.no_date);
    EXPECT_EQ(plan.no_date->reason, SowingLimit::Heat);
}

TEST(Sowing, SuccessionsSpaceTheHarvests)
{
    const auto season = *plan_at(kInland, "radish").season;
    ASSERT_GT(season.successions.size(), 5U);
    EXPECT_EQ(season.successions.front().sow, season.sow_outdoors->from);
    for (std::size_t i = 1; i < season.successions.size(); ++i) {
        EXPECT_GE(season.successions[i].ready - season.successions[i - 1].ready, Days{10});
        EXPECT_GT(season.successions[i].sow, season.successions[i - 1].sow);
    }
    EXPECT_TRUE(plan_at(kInland, "tomato").season->successions.empty());
}

TEST(Sowing, SeedsComeFromTheLawfulLeastOrTheOwnCounts)
{
    SowingWishes wishes;
    wishes.plants = 12;
    EXPECT_EQ(plan_at(kInland, "tomato", Date{2027, 1, 10}, wishes).seeds, 20); // 75 %: printed tables.
    wishes.rate = home::GerminationRate::before_counting(Probability::literal(0.75), 8.0).after(40, 10);
    EXPECT_GT(*plan_at(kInland, "tomato", Date{2027, 1, 10}, wishes).seeds, 30);
}

TEST(Sowing, AColdRoomAsksForAWarmMix)
{
    SowingWishes wishes;
    wishes.room = Celsius::from_degrees(8.0);
    const auto emerge = *plan_at(kInland, "pepper", Date{2027, 1, 10}, wishes).season->emerge_indoors;
    EXPECT_TRUE(emerge.warmed);
    EXPECT_EQ(emerge.mix, seed_kind("pepper").germ_best_low);
}

/// Every kind in every climate: an answer of one form or the other, never half of one.
TEST(Sowing, EveryKindHasAnAnswerEverywhere)
{
    for (const auto& invented : {kInland, kSouth, kNorth, kMonsoon, kDesert, kHighTropics}) {
        const auto place = place_of(invented);
        const SowingClimate climate{place, Date{2027, 2, 28}};
        for (const auto& seed : plants::SeedReference::built_in().kinds()) {
            const auto plan = plan_sowing(seed, place, climate, {});
            ASSERT_NE(plan.season.has_value(), plan.no_date.has_value()) << seed.name();
            ASSERT_TRUE(plan.seeds) << seed.name();
            if (plan.season) {
                EXPECT_TRUE(plan.season->sow_indoors || plan.season->sow_outdoors) << seed.name();
                EXPECT_TRUE(seed.weeks_indoors || !plan.season->sow_indoors) << seed.name();
                EXPECT_TRUE(seed.soil_warm || !plan.season->sow_outdoors) << seed.name();
                EXPECT_TRUE(plan.season->sow_outdoors.has_value() == plan.season->emerge_outdoors.has_value())
                    << seed.name();
            } else {
                EXPECT_FALSE(plan.no_date->ways.empty()) << seed.name();
            }
        }
    }
}

TEST(SowingClimate, WithoutSeasonsHoldsNightsOnlyWhereTheyStayAwayFromTheLine)
{
    const auto place = place_of({.mean_low = 9.0, .swing = 0.3, .latitude = 2.0});
    const SowingClimate climate{place, Date{2027, 1, 10}};
    const auto risk = Probability::literal(0.1);
    EXPECT_TRUE(climate.nights_hold(0, 120, Celsius::from_degrees(-9.0), risk));
    EXPECT_FALSE(climate.nights_hold(0, 120, Celsius::from_degrees(3.0), risk));
}

} // namespace
} // namespace lathhouse::plan
