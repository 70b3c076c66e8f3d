#include "core/plan/cold_night.h"

#include "core/home/demonstration.h"
#include "tests/plan/short_names.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

const Date kNight{2026, 10, 12};

// The trend of a frost night after FAO 2005 as an independent implementation prints it (the function getTrend
// of an R package on CRAN, its documented example): 0.95 C two hours after sunset, -5.45 C at sunrise, 15
// hours from sunset to sunrise.
TEST(NightCourse, FollowsTheFaoTrend)
{
    const auto course =
        NightCourse::through({.low = celsius(-5.45), .evening = celsius(0.95), .high = {}, .hours = {}, .night_hours = 15.0})
            .value();
    EXPECT_EQ(course.basis(), NightCourseBasis::EveningGiven);
    const double printed[][2] = {{3, -0.8250406},  {4, -1.5602865},  {5, -2.1244606},  {6, -2.6000813},
                                 {7, -3.0191115},  {8, -3.3979438},  {9, -3.7463161},  {10, -4.0705731},
                                 {11, -4.3751219}, {12, -4.6631713}, {13, -4.9371438}, {14, -5.1989211}};
    for (const auto& [hour, degrees] : printed) {
        EXPECT_NEAR(course.at(hour).degrees(), degrees, 1e-6) << hour;
    }
    EXPECT_NEAR(course.at(2.0).degrees(), 0.95, 1e-9);
}

// Parton & Logan 1981: the day's sine with a lag of 1.86 h and the decay 2.20; by hand for a day and a night
// of 12 hours between 20 and 10 C: at sunset 10 + 10 sin(pi 12 / 15.72) = 16.76.
TEST(NightCourse, FollowsPartonAndLoganBetweenHighAndLow)
{
    const auto course =
        NightCourse::through({.low = celsius(10.0), .evening = {}, .high = celsius(20.0), .hours = {}}).value();
    EXPECT_NEAR(course.at(0.0).degrees(), 16.76, 0.01);
    EXPECT_NEAR(course.at(12.0).degrees(), 10.0, 1e-9);
    EXPECT_NEAR(course.at(15.0).degrees(), 10.0 + 10.0 * std::sin(std::numbers::pi * 3.0 / 15.72), 1e-9);
    // Half way through the night the published decay leaves exp(-1.1) = 0.333 of the fall, ours less by the
    // stretch to the low itself.
    const double left = (course.at(6.0).degrees() - 10.0) / 6.76;
    EXPECT_NEAR(left, (0.3329 - 0.1108) / (1.0 - 0.1108), 0.001);
}

// Closed form: below T0 - f (T0 - low), the root curve lies for the share 1 - f^2 of its hours, and the sum of
// degrees below T0 from two hours after sunset to sunrise is 2/3 (T0 - low) (n - 2).
TEST(NightCourse, SumsAsTheClosedFormDoes)
{
    const auto course =
        NightCourse::through({.low = celsius(0.0), .evening = celsius(8.0), .high = celsius(60.0), .hours = {}, .night_hours = 14.0})
            .value();
    // A high of 60 C makes the forenoon short, so that what it adds is small and one-sided.
    const double forenoon = (24.0 - 14.0 + 3.72) / std::numbers::pi * std::asin(4.0 / 60.0);
    EXPECT_NEAR(course.hours_at_or_below(celsius(4.0)), 12.0 * 0.75 + forenoon, 0.05);
    EXPECT_GT(course.degree_hours_below(celsius(8.0)), 2.0 / 3.0 * 8.0 * 12.0 - 0.1);
    EXPECT_LT(course.degree_hours_below(celsius(8.0)), 2.0 / 3.0 * 8.0 * 12.0 + 4.0);
}

TEST(NightCourse, ColderLinesHaveFewerHours)
{
    for (const auto& readings :
         {NightReadings{.low = celsius(2.0), .evening = celsius(9.0), .high = {}, .hours = {}},
          NightReadings{.low = celsius(2.0), .evening = {}, .high = celsius(14.0), .hours = {}},
          NightReadings{.low = celsius(2.0), .evening = {}, .high = {}, .hours = {}}}) {
        const auto course = NightCourse::through(readings).value();
        double last = 100.0;
        for (double line = 9.0; line >= 1.0; line -= 1.0) {
            const double hours = course.hours_at_or_below(celsius(line));
            EXPECT_LE(hours, last) << line;
            last = hours;
        }
        EXPECT_EQ(last, 0.0);
    }
}

TEST(NightCourse, RefusesWhatCannotBe)
{
    const auto refused = [](NightReadings readings) { return !NightCourse::through(readings); };
    EXPECT_TRUE(refused({.low = celsius(5.0), .evening = celsius(3.0), .high = {}, .hours = {}}));
    EXPECT_TRUE(refused({.low = celsius(5.0), .evening = {}, .high = celsius(3.0), .hours = {}}));
    EXPECT_TRUE(refused({.low = celsius(-100.0), .evening = {}, .high = {}, .hours = {}}));
    EXPECT_TRUE(refused({.low = celsius(std::nan("")), .evening = {}, .high = {}, .hours = {}}));
    EXPECT_TRUE(refused({.low = celsius(5.0), .evening = {}, .high = {}, .hours = {}, .night_hours = 30.0}));
    const plants::ColdLines lines{celsius(10.0), celsius(5.0), celsius(0.0)};
    EXPECT_FALSE(exposure_of({.low = celsius(5.0), .evening = {}, .high = {}, .hours = 100.0}, lines, kNight));
}

TEST(ColdExposure, HoursGivenMakeADipLikeAParabola)
{
    const plants::ColdLines lines{celsius(10.0), celsius(6.0), celsius(0.0)};
    const auto night =
        exposure_of({.low = celsius(2.0), .evening = {}, .high = {}, .hours = 8.0}, lines, kNight).value();
    EXPECT_NEAR(night.hours_below_safe, 8.0, 1e-9);
    EXPECT_NEAR(night.degree_hours_below_safe, 8.0 * 8.0 * 2.0 / 3.0, 1e-9);
    EXPECT_NEAR(night.hours_below_damage, 8.0 * std::sqrt(0.5), 1e-9);
    EXPECT_EQ(night.hours_below_lethal, 0.0);
}

ColdPrognosis after(const char* name, double low, std::optional<double> hours = {}, int nights = 1)
{
    const auto& of = plant_kind(name);
    std::vector<ColdExposure> all;
    for (int night = 0; night < nights; ++night) {
        all.push_back(exposure_of({.low = celsius(low), .evening = {}, .high = {}, .hours = hours}, of.lines,
                                  kNight - Days{nights - 1 - night})
                          .value());
    }
    return prognosis_of(all, &of, of.lines);
}

// Univ. Florida EP101, peace lily: visible injury at 3.3 to 7.2 C, none to be seen at 10 to 11.1 C though growth
// was lost after two days and more.
TEST(ColdPrognosis, PeaceLilyAsInTheFloridaTrial)
{
    EXPECT_EQ(after("Peace lily", 3.3, 24.0).outcome, ColdOutcome::LeafDamageLikely);
    EXPECT_EQ(after("Peace lily", 10.5, 10.0).outcome, ColdOutcome::Stress);
    EXPECT_EQ(after("Peace lily", 10.5, 48.0).outcome, ColdOutcome::GrowthLost);
}

// Univ. Florida EP103: 24 hours at 12.8 C hurt 30 % of the leaves of Aglaonema 'Silver Queen'; Fooshee &
// McConnell 1987: nights of ten hours add up.
TEST(ColdPrognosis, AglaonemaAsInTheFloridaTrials)
{
    const auto& of = plant_kind("Chinese evergreen");
    // The chamber stood at 12.8 C throughout, so that the whole day lay at the line.
    const ColdExposure chamber{kNight, celsius(12.8), NightCourseBasis::HoursGiven, 24.0, 64.8, 24.0, 0.0, 0.0};
    EXPECT_EQ(prognosis_of({chamber}, &of, of.lines).outcome, ColdOutcome::LeafDamageLikely);
    EXPECT_EQ(after("Chinese evergreen", 12.0, 3.0).outcome, ColdOutcome::LeafDamagePossible);
    EXPECT_EQ(after("Chinese evergreen", 12.0, 6.0, 6).outcome, ColdOutcome::LeafDamageLikely);
}

TEST(ColdPrognosis, GrowsWorseAsTheNightGrowsColder)
{
    auto last = ColdOutcome::Nothing;
    for (double low = 16.0; low >= -6.0; low -= 0.5) {
        const auto outcome = after("Golden pothos", low).outcome;
        EXPECT_GE(outcome, last) << low;
        last = outcome;
    }
    EXPECT_EQ(last, ColdOutcome::DeathLikely);
    EXPECT_EQ(after("Golden pothos", 16.0).outcome, ColdOutcome::Nothing);
    EXPECT_TRUE(after("Golden pothos", 16.0).steps.empty());
}

TEST(ColdPrognosis, NightsFurtherBackThanAFortnightDoNotCount)
{
    const auto& of = plant_kind("Peace lily");
    const NightReadings readings{.low = celsius(5.0), .evening = {}, .high = {}, .hours = 6.0};
    const auto old = exposure_of(readings, of.lines, kNight - Days{20}).value();
    const auto now = exposure_of(readings, of.lines, kNight).value();
    EXPECT_EQ(prognosis_of({old, now}, &of, of.lines).nights.size(), 1U);
}

TEST(ColdPrognosis, LooksFallOnDays3And7And14)
{
    const auto prognosis = after("Peace lily", 4.0);
    std::vector<int> days;
    for (const auto& step : prognosis.steps) {
        if (step.act == ColdAct::Look) {
            days.push_back(calendar::days_between(kNight, step.date));
        }
    }
    EXPECT_EQ(days, (std::vector{3, 7, 14}));
}

TEST(ColdPrognosis, SaysWhereTheLinesAreAGuess)
{
    const auto doubts = [](const ColdPrognosis& prognosis, ColdDoubt doubt) {
        return std::ranges::find(prognosis.doubts, doubt) != prognosis.doubts.end();
    };
    int without_figure = 0;
    for (const auto& of : plants::PlantReference::built_in().kinds()) {
        const auto night = exposure_of({.low = of.lines.damage_begins, .evening = {}, .high = {}, .hours = 5.0},
                                       of.lines, kNight)
                               .value();
        const auto prognosis = prognosis_of({night}, &of, of.lines);
        EXPECT_EQ(doubts(prognosis, ColdDoubt::NoPublishedTemperature),
                  of.cold_evidence == plants::Evidence::Memory)
            << of.botanical_name;
        without_figure += doubts(prognosis, ColdDoubt::NoPublishedTemperature) ? 1 : 0;
    }
    EXPECT_GT(without_figure, 0);
    EXPECT_TRUE(doubts(after("Peace lily", 4.0), ColdDoubt::CourseAssumed));
    EXPECT_FALSE(doubts(after("Peace lily", 4.0, 5.0), ColdDoubt::CourseAssumed));
    EXPECT_TRUE(doubts(after("Peace lily", 4.0, 5.0, 2), ColdDoubt::SeveralNights));
}

TEST(ColdCourses, ReadTheJournalAndEndTheHoldWithNewGrowth)
{
    auto household = home::demonstration({.today = kNight}).value().household;
    auto& plant = household.plants.front();
    plant.lines = {celsius(10.0), celsius(5.0), celsius(0.0)};
    const auto event = [&](home::EventKind what, int day, std::map<std::string, std::string> details) {
        const auto date = kNight + Days{day};
        return home::Event{.plant = plant.id,
                           .kind = what,
                           .spot = {},
                           .happened = date,
                           .entered = calendar::start_of_day_utc(date),
                           .note = "",
                           .details = std::move(details)};
    };
    std::vector events{event(home::EventKind::ColdNight, 0, {{"low_c", "2"}, {"hours", "9"}}),
                       event(home::EventKind::ColdNight, 1, {{"low_c", "cold"}})};
    const auto courses = cold_courses(household, events, kNight + Days{2});
    ASSERT_EQ(courses.size(), 1U);
    EXPECT_TRUE(courses.front().prognosis.feed_held);
    EXPECT_NE(std::ranges::find(courses.front().prognosis.steps, kNight + Days{7}, &ColdStep::date),
              courses.front().prognosis.steps.end());
    events.push_back(event(home::EventKind::NewGrowth, 20, {}));
    const auto grown = cold_courses(household, events, kNight + Days{21});
    ASSERT_EQ(grown.size(), 1U);
    EXPECT_FALSE(grown.front().prognosis.feed_held);
    EXPECT_TRUE(cold_courses(household, events, kNight + Days{100}).empty());
}

TEST(ColdCourses, TakeTheLengthAndTheSwingOfTheSpotsUsualNight)
{
    // The longer the night and the narrower the swing, the longer it is cold.
    auto household = home::demonstration({.today = kNight}).value().household;
    auto& plant = household.plants.front();
    plant.lines = {celsius(10.0), celsius(5.0), celsius(0.0)};
    const std::vector events{home::Event{.plant = plant.id,
                                         .kind = home::EventKind::ColdNight,
                                         .spot = {},
                                         .happened = kNight,
                                         .entered = calendar::start_of_day_utc(kNight),
                                         .note = "",
                                         .details = {{"low_c", "2"}}}};
    const auto hours_with = [&](double hours, double swing) {
        const auto courses = cold_courses(household, events, kNight + Days{1}, [&](home::SpotId, Date) {
            return std::optional{std::pair{hours, KelvinDelta::from_kelvins(swing)}};
        });
        EXPECT_EQ(courses.front().prognosis.nights.front().basis, NightCourseBasis::UsualSwing);
        return courses.front().prognosis.hours_below_damage;
    };
    EXPECT_NEAR(hours_with(12.0, 8.0), cold_courses(household, events, kNight + Days{1}).front().prognosis.hours_below_damage,
                1e-9);
    EXPECT_GT(hours_with(15.0, 8.0), hours_with(12.0, 8.0) + 0.5);
    EXPECT_GT(hours_with(12.0, 5.0), hours_with(12.0, 8.0) + 0.5);
}

// A night that was no colder than the line it is held against: all of its hours count, by as much as it lay below.
TEST(ColdExposure, OfADipWithoutDepthCountsAllItsHours)
{
    const plants::ColdLines lines{celsius(5.0), celsius(5.0), celsius(0.0)};
    const auto at_the_line =
        exposure_of({.low = celsius(5.0), .evening = {}, .high = {}, .hours = 6.0}, lines, kNight).value();
    EXPECT_DOUBLE_EQ(at_the_line.hours_below_safe, 6.0);
    EXPECT_DOUBLE_EQ(at_the_line.degree_hours_below_safe, 0.0);
    EXPECT_DOUBLE_EQ(at_the_line.hours_below_lethal, 0.0);
}

TEST(ColdCourses, AskForTheNightOfTheSpotWhereThePlantStoodThen)
{
    auto household = home::demonstration({.today = kNight}).value().household;
    auto& plant = household.plants.front();
    plant.lines = {celsius(10.0), celsius(5.0), celsius(0.0)};
    plant.spot = 1;
    const auto event = [&](home::EventKind what, int day, std::optional<home::SpotId> spot,
                           std::map<std::string, std::string> details) {
        return home::Event{.plant = plant.id,
                           .kind = what,
                           .spot = spot,
                           .happened = kNight + Days{day},
                           .entered = calendar::start_of_day_utc(kNight + Days{day}),
                           .note = "",
                           .details = std::move(details)};
    };
    const std::vector events{event(home::EventKind::Moved, -9, 3, {}), event(home::EventKind::Moved, -2, 2, {}),
                             event(home::EventKind::Moved, 1, 1, {}),
                             event(home::EventKind::ColdNight, 0, {}, {{"low_c", "2"}, {"evening_c", "11"}})};
    std::vector<home::SpotId> asked;
    const auto courses = cold_courses(household, events, kNight + Days{1}, [&](home::SpotId spot, Date) {
        asked.push_back(spot);
        return std::optional<std::pair<double, KelvinDelta>>{};
    });
    EXPECT_EQ(asked, std::vector{2});
    ASSERT_EQ(courses.size(), 1U);
    EXPECT_EQ(courses.front().prognosis.nights.front().basis, NightCourseBasis::EveningGiven);
    const auto& sources = courses.front().prognosis.sources;
    EXPECT_NE(std::ranges::find(sources, "FAO10"), sources.end());
}

class ToldColdNights : public testing::Test {
protected:
    ToldColdNights()
    {
        plant_.lines = {celsius(10.0), celsius(5.0), celsius(0.0)};
        plant_.spot = 1;
    }
    void tell(home::EventKind what, int day, std::optional<home::PlantId> plant, std::optional<home::SpotId> spot,
              std::map<std::string, std::string> details)
    {
        events_.push_back({.plant = plant,
                           .kind = what,
                           .spot = spot,
                           .happened = kNight + Days{day},
                           .entered = calendar::start_of_day_utc(kNight + Days{day}),
                           .note = "",
                           .details = std::move(details)});
    }
    /// What is known of that plant; nullopt without a cold night.
    std::optional<ColdPrognosis> prognosis() const
    {
        const auto courses = cold_courses(household_, events_, kNight + Days{20});
        const auto found = std::ranges::find(courses, plant_.id, &ColdCourse::plant);
        return found == courses.end() ? std::nullopt : std::optional{found->prognosis};
    }
    home::Household household_ = home::demonstration({.today = kNight}).value().household;
    home::Plant& plant_ = household_.plants.front();
    std::vector<home::Event> events_;
};

TEST_F(ToldColdNights, OneNightToldOfThePlantAndOfItsSpotIsOneNight)
{
    tell(home::EventKind::ColdNight, 0, {}, 1, {{"low_c", "4"}, {"hours", "9"}});
    EXPECT_NEAR(prognosis()->hours_below_safe, 9.0, 1e-9);
    tell(home::EventKind::ColdNight, 0, {}, 1, {{"low_c", "3"}, {"hours", "8"}});
    EXPECT_NEAR(prognosis()->hours_below_safe, 8.0, 1e-9) << "of one spot the colder low counts";
    tell(home::EventKind::ColdNight, 0, plant_.id, {}, {{"low_c", "4.5"}, {"hours", "7"}});
    ASSERT_EQ(prognosis()->nights.size(), 1U);
    EXPECT_NEAR(prognosis()->hours_below_safe, 7.0, 1e-9) << "what was read at the plant comes before its spot's";
    tell(home::EventKind::ColdNight, 0, plant_.id, {}, {{"low_c", "6"}, {"hours", "5"}});
    EXPECT_NEAR(prognosis()->hours_below_safe, 5.0, 1e-9) << "told anew";
    tell(home::EventKind::ColdNight, 1, plant_.id, {}, {{"low_c", "6"}, {"hours", "5"}});
    EXPECT_NEAR(prognosis()->hours_below_safe, 10.0, 1e-9) << "two nights add up";
}

TEST_F(ToldColdNights, OneOfTheWholeHouseholdCountsForWhatStoodOutdoors)
{
    const auto spot_of = [&](bool outdoors) {
        return std::ranges::find(household_.spots, outdoors, [](const home::Spot& of) {
                   return home::is_outdoors(of.kind);
               })->id;
    };
    tell(home::EventKind::ColdNight, 0, {}, {}, {{"low_c", "2"}});
    plant_.spot = spot_of(true);
    EXPECT_TRUE(prognosis());
    plant_.spot = spot_of(false);
    EXPECT_FALSE(prognosis());
}

TEST_F(ToldColdNights, OneWithoutALowIsLookedAtWhereThatIsAsked)
{
    const auto course = [&](WithoutLow without_low) {
        const auto courses = cold_courses(household_, events_, kNight + Days{3}, {}, without_low);
        const auto found = std::ranges::find(courses, plant_.id, &ColdCourse::plant);
        return found == courses.end() ? std::nullopt : std::optional{found->prognosis};
    };
    tell(home::EventKind::ColdNight, 0, plant_.id, {}, {});
    EXPECT_FALSE(course(WithoutLow::LeftOut));
    ASSERT_TRUE(course(WithoutLow::TakenAsHurt));
    EXPECT_EQ(course(WithoutLow::TakenAsHurt)->outcome, ColdOutcome::LeafDamagePossible);
    EXPECT_EQ(course(WithoutLow::TakenAsHurt)->steps.front().date, kNight + Days{3});
    events_.insert(events_.begin(), events_.front());
    events_.front().details = {{"low_c", "1"}, {"hours", "11"}};
    EXPECT_EQ(course(WithoutLow::TakenAsHurt)->outcome, ColdOutcome::LeafDamageLikely) << "a low that was read counts";
}

TEST_F(ToldColdNights, ThoseOfASpotCountOnlyForWhatIsKnownToHaveStoodThere)
{
    tell(home::EventKind::ColdNight, 0, {}, 1, {{"low_c", "2"}});
    EXPECT_TRUE(prognosis()) << "it was never moved";
    tell(home::EventKind::Moved, 3, plant_.id, 1, {});
    EXPECT_FALSE(prognosis()) << "it was carried there three days later";
}

} // namespace
} // namespace lathhouse::plan
