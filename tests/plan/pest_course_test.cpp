#include "core/plan/pest_course.h"

#include "core/home/demonstration.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;
using home::EventKind;

const Date kFind{2026, 3, 1};

home::Spot pest_spot(int id, bool apart, int walking_order, int capacity = 6)
{
    return {.id = id,
            .name = "Spot " + std::to_string(id),
            .short_name = "",
            .kind = home::SpotKind::Indoors,
            .offset = {},
            .winter = {},
            .summer = {},
            .light_in_summer = DailyLight::from_moles(5.0),
            .light_in_winter = DailyLight::from_moles(2.0),
            .capacity = capacity,
            .in_reach = false,
            .walking_order = walking_order,
            .view = {},
            .apart = apart,
            .windy = false};
}

home::Plant pest_plant(int id, std::optional<int> where)
{
    return {.id = id,
            .name = "Plant " + std::to_string(id),
            .kind = "Hoya carnosa",
            .lines = {Celsius::from_degrees(10.0), Celsius::from_degrees(5.0), Celsius::from_degrees(0.0)},
            .heat_limit = Celsius::from_degrees(35.0),
            .light_to_survive = DailyLight::from_moles(1.0),
            .light_to_thrive = DailyLight::from_moles(3.0),
            .must_dry = false,
            .hazardous = false,
            .sulks = false,
            .wants_open_air = false,
            .pot_kilograms = 1.0,
            .spot = where,
            .pinned_spot = {},
            .pot_volume = {},
            .pot_shade = home::PotShade::Unknown};
}

/// Spots 1 and 2 are ordinary, 3 is apart; plants 1 and 2 stand together, 3 stands alone.
home::Household pest_household(bool with_apart = true)
{
    auto home = home::demonstration({.today = kFind}).value().household;
    home.spots = {pest_spot(1, false, 1), pest_spot(2, false, 2), pest_spot(3, with_apart, 3, 2)};
    home.plants = {pest_plant(1, 1), pest_plant(2, 1), pest_plant(3, 2)};
    return home;
}

home::Event pest_event(EventKind kind, int day, std::optional<int> id,
                  std::map<std::string, std::string> details = {}, std::optional<int> where = {})
{
    const auto date = kFind + Days{day};
    return {.plant = id,
            .kind = kind,
            .spot = where,
            .happened = date,
            .entered = calendar::start_of_day_utc(date),
            .note = "",
            .details = std::move(details)};
}

home::Event found(int day, int id, const char* pest = "citrus mealybug", const char* amount = "few")
{
    return pest_event(EventKind::PestFound, day, id, {{"pest", pest}, {"amount", amount}});
}

SpotWarmth steady(double degrees)
{
    return [=](home::SpotId, Date) {
        return DayWarmth{Celsius::from_degrees(degrees), Celsius::from_degrees(degrees)};
    };
}

PestCoursePlan on(int day, const std::vector<home::Event>& events, double degrees = 20.0,
                  const home::Household& home = pest_household())
{
    return plan_pest_courses(home, events, steady(degrees), kFind + Days{day});
}

PestState state(const PestCoursePlan& plan, int id)
{
    return std::ranges::find(plan.plants, id, &PlantCondition::plant)->state;
}

const Course& course(const PestCoursePlan& plan, int id)
{
    const auto found_course = std::ranges::find(plan.courses, id, &Course::plant);
    EXPECT_NE(found_course, plan.courses.end()) << id;
    return *found_course;
}

bool says(const PestCoursePlan& plan, CourseRemarkKind kind)
{
    return std::ranges::find(plan.remarks, kind, &CourseRemark::kind) != plan.remarks.end();
}

TEST(PestCourse, WithoutFindsEveryPlantIsClean)
{
    const auto plan = on(0, {});
    EXPECT_EQ(plan.plants.size(), 3U);
    EXPECT_TRUE(plan.courses.empty());
    EXPECT_TRUE(plan.isolation.empty());
    EXPECT_TRUE(plan.remarks.empty());
}

TEST(PestCourse, AFindInfestsAndItsNeighbourIsSuspect)
{
    const auto plan = on(0, {found(0, 1)});
    EXPECT_EQ(state(plan, 1), PestState::Infested);
    EXPECT_EQ(state(plan, 2), PestState::Suspect);
    EXPECT_EQ(state(plan, 3), PestState::Clean);
    const auto& neighbour = *std::ranges::find(plan.plants, 2, &PlantCondition::plant);
    EXPECT_EQ(neighbour.reason, PestReason::SharedSpot);
    EXPECT_EQ(neighbour.caught_from, 1);
}

// The worked case: Karacaoglu & Satar 58 d and Arai 64 d at 20 C, 40 and 45 d at 25 C; the slower decides.
TEST(PestCourse, CitrusMealybugIsClearAfterTheSlowerStudysGeneration)
{
    const auto cool = on(0, {found(0, 1)}, 20.0);
    ASSERT_EQ(course(cool, 1).generations.size(), 2U);
    EXPECT_EQ(calendar::days_between(kFind, *course(cool, 1).generations[0].through), 58);
    EXPECT_NEAR(calendar::days_between(kFind, *course(cool, 1).clear_not_before), 64, 1);
    const auto warm = on(0, {found(0, 1)}, 25.0);
    EXPECT_NEAR(calendar::days_between(kFind, *course(warm, 1).generations[0].through), 40, 1);
    EXPECT_NEAR(calendar::days_between(kFind, *course(warm, 1).clear_not_before), 45, 1);
}

TEST(PestCourse, OnlyACleanLookAfterTheGenerationEndsIt)
{
    const auto before = pest_event(EventKind::Inspected, 60, 1);
    EXPECT_EQ(state(on(70, {found(0, 1), before}), 1), PestState::Infested);
    const auto after = pest_event(EventKind::Inspected, 66, 1, {{"found", "nothing"}});
    EXPECT_EQ(state(on(70, {found(0, 1), before, after}), 1), PestState::Clean);
    const auto cleared = on(70, {found(0, 1), after});
    EXPECT_EQ(std::ranges::find(cleared.plants, 1, &PlantCondition::plant)->reason,
              PestReason::DeclaredClear);
}

TEST(PestCourse, ANewFindStartsTheClockAnew)
{
    const auto again = pest_event(EventKind::Inspected, 30, 1, {{"found", "citrus mealybug"}});
    const auto plan = on(66, {found(0, 1), again, pest_event(EventKind::Inspected, 65, 1)});
    EXPECT_EQ(state(plan, 1), PestState::Infested);
    EXPECT_EQ(course(plan, 1).last_find, kFind + Days{30});
}

TEST(PestCourse, InTheColdItCannotBeDeclaredClear)
{
    const auto plan = on(0, {found(0, 1)}, 7.0);
    EXPECT_EQ(course(plan, 1).clear_not_before, std::nullopt);
    EXPECT_TRUE(course(plan, 1).clock_stands_today);
    EXPECT_NEAR(course(plan, 1).days_at_20_degrees, 64, 1);
    const auto& need = *std::ranges::find(plan.isolation, 1, &IsolationNeed::plant);
    EXPECT_EQ(need.until, std::nullopt);
    // The looks go on all the same.
    EXPECT_TRUE(std::ranges::any_of(course(plan, 1).steps,
                                    [](const CourseStep& step) { return step.act == CourseAct::Inspect; }));
}

TEST(PestCourse, ThreeTreatmentsFollowACrawlerStageApart)
{
    const auto plan = on(0, {found(0, 1)}, 25.0);
    std::vector<int> days;
    for (const auto& step : course(plan, 1).steps) {
        if (step.act == CourseAct::Treat) {
            days.push_back(calendar::days_between(kFind, step.date));
        }
    }
    EXPECT_EQ(days, (std::vector{0, 8, 16}));
}

TEST(PestCourse, TreatmentsThatWereMadeAreNotAskedForAgain)
{
    const auto plan = on(9, {found(0, 1), pest_event(EventKind::Treated, 0, 1, {{"with", "soap"}}),
                             pest_event(EventKind::Treated, 8, 1, {{"with", "soap"}})},
                         25.0);
    const auto treats = std::ranges::count(course(plan, 1).steps, CourseAct::Treat, &CourseStep::act);
    EXPECT_EQ(treats, 1);
    EXPECT_EQ(course(plan, 1).treatments, 2);
}

TEST(PestCourse, WhatIsOverdueIsDueToday)
{
    const auto plan = on(3, {found(0, 1)}, 25.0);
    const auto due = due_on(plan, kFind + Days{3});
    EXPECT_TRUE(std::ranges::any_of(due, [](const CourseStep& step) {
        return step.plant == 1 && step.act == CourseAct::Treat && step.date == kFind;
    }));
    const auto later = due_on(plan, kFind + Days{11});
    EXPECT_TRUE(std::ranges::any_of(later, [](const CourseStep& step) {
        return step.plant == 1 && step.act == CourseAct::Treat;
    })) << "the next one counts from today, when the overdue one is made";
}

// Isolation: at least 14 days and two clean looks one crawler stage apart.
TEST(PestCourse, ASuspectIsReleasedAfterTwoWeeksAndTwoCleanLooks)
{
    const auto apart = pest_event(EventKind::Isolated, 0, 2, {}, 3);
    const auto first = pest_event(EventKind::Inspected, 3, 2);
    const auto soon = pest_event(EventKind::Inspected, 13, 2);
    const auto late = pest_event(EventKind::Inspected, 16, 2);
    EXPECT_EQ(state(on(20, {found(0, 1), apart, first}), 2), PestState::Suspect) << "one look";
    EXPECT_EQ(state(on(20, {found(0, 1), apart, first, soon}), 2), PestState::Suspect) << "too soon";
    EXPECT_EQ(state(on(20, {found(0, 1), apart, first, late}), 2), PestState::Clean);
    const auto close = pest_event(EventKind::Inspected, 14, 2);
    EXPECT_EQ(state(on(20, {found(0, 1), apart, close, late}), 2), PestState::Suspect)
        << "two looks within one crawler stage";
}

TEST(PestCourse, ASuspectThatStaysBesideTheInfestedOneIsNotReleased)
{
    const auto plan = on(30, {found(0, 1), pest_event(EventKind::Inspected, 3, 2),
                              pest_event(EventKind::Inspected, 16, 2), pest_event(EventKind::Inspected, 29, 2)});
    EXPECT_EQ(state(plan, 2), PestState::Suspect);
    EXPECT_EQ(course(plan, 2).last_find, kFind + Days{30});
}

TEST(PestCourse, APlantThatStoodThereAWeekBeforeTheFindIsSuspect)
{
    const std::vector events{pest_event(EventKind::Moved, -60, 3, {}, 1), pest_event(EventKind::Moved, -7, 3, {}, 2),
                             found(0, 1)};
    EXPECT_EQ(state(on(0, events), 3), PestState::Suspect);
    const std::vector long_ago{pest_event(EventKind::Moved, -60, 3, {}, 1), pest_event(EventKind::Moved, -20, 3, {}, 2),
                               found(0, 1)};
    EXPECT_EQ(state(on(0, long_ago), 3), PestState::Clean);
}

TEST(PestCourse, TheApartSpotIsOfferedToTheInfestedPlantFirst)
{
    const auto plan = on(0, {found(0, 1)});
    const auto& need = *std::ranges::find(plan.isolation, 1, &IsolationNeed::plant);
    EXPECT_FALSE(need.is_kept);
    EXPECT_EQ(need.place, 3);
    EXPECT_TRUE(need.place_is_apart);
    EXPECT_FALSE(says(plan, CourseRemarkKind::NoSpotApart));
}

TEST(PestCourse, WithoutAnApartSpotItSaysSoAndOffersTheFewestContacts)
{
    const auto plan = on(0, {found(0, 1)}, 20.0, pest_household(false));
    EXPECT_TRUE(says(plan, CourseRemarkKind::NoSpotApart));
    const auto& need = *std::ranges::find(plan.isolation, 1, &IsolationNeed::plant);
    EXPECT_EQ(need.place, 3) << "nobody stands there";
    EXPECT_FALSE(need.place_is_apart);
    EXPECT_EQ(need.contacts, 0);
}

TEST(PestCourse, AmongEqualSpotsTheOneVisitedLastIsTaken)
{
    auto home = pest_household(false);
    home.spots.push_back(pest_spot(4, false, 9));
    const auto plan = on(0, {found(0, 1)}, 20.0, home);
    EXPECT_EQ(std::ranges::find(plan.isolation, 1, &IsolationNeed::plant)->place, 4);
}

TEST(PestCourse, AFullOrFrostySpotIsNotOffered)
{
    auto home = pest_household();
    home.spots[2].capacity = 0;
    const auto plan = on(0, {found(0, 1)}, 20.0, home);
    EXPECT_NE(std::ranges::find(plan.isolation, 1, &IsolationNeed::plant)->place, 3);
    EXPECT_TRUE(says(plan, CourseRemarkKind::SpotsApartFull));
    const auto frosty = plan_pest_courses(
        pest_household(), std::vector{found(0, 1)},
        [](home::SpotId where, Date) {
            const auto air = Celsius::from_degrees(where == 3 ? 2.0 : 20.0);
            return DayWarmth{air, air};
        },
        kFind);
    EXPECT_NE(std::ranges::find(frosty.isolation, 1, &IsolationNeed::plant)->place, 3);
}

TEST(PestCourse, DiscardIsAChoiceForAHeavyInfestationAlone)
{
    EXPECT_FALSE(course(on(0, {found(0, 1)}), 1).discard_is_a_choice);
    EXPECT_TRUE(course(on(0, {found(0, 1, "scale", "heavy")}), 1).discard_is_a_choice);
}

TEST(PestCourse, AnUnknownPestIsSaidAndReckonedByTheSlowClock)
{
    const auto plan = on(0, {found(0, 1, "gremlins")});
    EXPECT_EQ(state(plan, 1), PestState::Infested);
    EXPECT_TRUE(course(plan, 1).pest_is_assumed);
    EXPECT_TRUE(says(plan, CourseRemarkKind::PestNotKnown));
    EXPECT_NEAR(calendar::days_between(kFind, *course(plan, 1).clear_not_before), 64, 1);
}

TEST(PestCourse, APlantWithoutASpotIsSaidAndTheRestStands)
{
    auto home = pest_household();
    home.plants[0].spot = {};
    const auto plan = on(0, {found(0, 1), found(0, 3)}, 20.0, home);
    EXPECT_TRUE(says(plan, CourseRemarkKind::PlantWithoutSpot));
    EXPECT_EQ(state(plan, 1), PestState::Infested);
    EXPECT_EQ(state(plan, 3), PestState::Infested);
}

TEST(PestCourse, ANewPlantSetApartIsWatchedAndThenReleased)
{
    const auto apart = pest_event(EventKind::Isolated, 0, 3, {}, 3);
    EXPECT_EQ(state(on(1, {apart}), 3), PestState::Suspect);
    const std::vector looks{apart, pest_event(EventKind::Inspected, 2, 3), pest_event(EventKind::Inspected, 15, 3)};
    EXPECT_EQ(state(on(16, looks), 3), PestState::Clean);
}

TEST(PestCourse, AFindAtASpotMakesEveryPlantThereSuspect)
{
    const auto plan = on(0, {pest_event(EventKind::PestFound, 0, {}, {{"pest", "fungus gnat"}}, 1)});
    EXPECT_EQ(state(plan, 1), PestState::Suspect);
    EXPECT_EQ(state(plan, 2), PestState::Suspect);
    EXPECT_EQ(state(plan, 3), PestState::Clean);
}

TEST(PestCourse, AFlyingPestIsSaidToFly)
{
    EXPECT_TRUE(says(on(0, {found(0, 1, "tobacco whitefly")}), CourseRemarkKind::FliesAbout));
    EXPECT_TRUE(says(on(0, {found(0, 1, "tobacco whitefly")}), CourseRemarkKind::MustBeReported));
}

TEST(PestCourse, BeingPutBackEarlyIsNoticed)
{
    const auto plan = on(20, {found(0, 1), pest_event(EventKind::Isolated, 1, 1, {}, 3),
                              pest_event(EventKind::Released, 10, 1), pest_event(EventKind::Moved, 10, 1, {}, 1)});
    EXPECT_TRUE(course(plan, 1).released_early);
    EXPECT_EQ(state(plan, 2), PestState::Suspect);
}

TEST(PestCourse, ThePlantThatDiedStillTaintsItsNeighbour)
{
    const auto plan = on(5, {found(0, 1), pest_event(EventKind::Died, 5, 1)});
    EXPECT_EQ(plan.plants.size(), 2U);
    EXPECT_EQ(state(plan, 2), PestState::Suspect);
}

TEST(PestCourse, ACleanLookAtASpotCountsForEveryPlantThere)
{
    const auto apart = pest_event(EventKind::Isolated, 0, 3, {}, 3);
    const std::vector looks{apart, pest_event(EventKind::Inspected, 2, {}, {{"found", "nothing"}}, 3),
                            pest_event(EventKind::Inspected, 15, {}, {}, 3)};
    EXPECT_EQ(state(on(16, looks), 3), PestState::Clean);
}

TEST(PestCourse, APlantThatIsGoneFromTheHouseholdStillTaintsItsNeighbour)
{
    auto home = pest_household();
    std::erase_if(home.plants, [](const home::Plant& plant) { return plant.id == 1; });
    const auto plan = on(5, {pest_event(EventKind::Moved, -30, 1, {}, 1), found(0, 1)}, 20.0, home);
    EXPECT_EQ(plan.plants.size(), 2U);
    EXPECT_EQ(state(plan, 2), PestState::Suspect);
}

TEST(PestCourse, APlantWithTwoPestsStaysApartForTheOneThatTakesLonger)
{
    for (const auto& plan : {on(1, {found(0, 1), found(0, 1, "fungus gnat")}), on(1, {found(0, 1, "fungus gnat"), found(0, 1)})}) {
        std::optional<calendar::Date> latest;
        int courses = 0;
        for (const auto& one : plan.courses) {
            if (one.plant == 1) {
                ++courses;
                latest = std::max(latest, one.clear_not_before);
            }
        }
        EXPECT_EQ(courses, 2);
        const auto need = std::ranges::find(plan.isolation, 1, &IsolationNeed::plant);
        ASSERT_NE(need, plan.isolation.end());
        EXPECT_EQ(std::ranges::count(plan.isolation, 1, &IsolationNeed::plant), 1);
        EXPECT_EQ(need->until, latest);
    }
}

TEST(PestCourse, SaysWhereWhatWasSetApartStandsBesideACleanPlant)
{
    const auto plan = on(5, {found(0, 1), pest_event(EventKind::Isolated, 1, 2, {}, 3),
                             pest_event(EventKind::Moved, 2, 3, {}, 3)});
    EXPECT_EQ(state(plan, 2), PestState::Suspect);
    EXPECT_EQ(state(plan, 3), PestState::Clean);
    EXPECT_TRUE(says(plan, CourseRemarkKind::OnlySharedSetApart));
}

} // namespace
} // namespace lathhouse::plan
