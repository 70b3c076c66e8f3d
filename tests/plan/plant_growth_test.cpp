#include "core/plan/plant_growth.h"

#include "core/growth/temperature_response.h"
#include "core/plan/plant_clock.h"
#include "tests/plan/growing_sample.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::plan {
namespace {

using namespace sample;
using home::EventKind;
using home::MeasurementKind;

const calendar::Date kBegin = date(2027, 4, 1);
const calendar::Date kDayOfReading = date(2027, 8, 1);

/// A plant on a bright sill with a height read every week, 1.5 % a day until it was hurt and `after` of it since.
class MeasuredPlant : public testing::Test {
protected:
    home::Household household_ = potted_household("Ficus benjamina", 48.0, kSill);
    climate::PlaceClimate place_ = place(48.0, 8.0, 10.0);
    home::SpotClimate spots_{household_, place_};
    home::NightLog log_;
    std::vector<home::Event> events_;
    std::vector<home::Measurement> measurements_;

    home::Plant& plant() { return household_.plants.front(); }
    Whereabouts whereabouts() { return {plant(), events_, {}, kDayOfReading}; }
    void grow(double after, int weeks = 16, MeasurementKind kind = MeasurementKind::Height)
    {
        double log_height = std::log(30.0);
        for (int week = 0; week < weeks; ++week) {
            measurements_.push_back({.plant = 1,
                                     .kind = kind,
                                     .measured = kBegin + calendar::Days{7 * week},
                                     .repeats = {std::exp(log_height) * 1.001, std::exp(log_height) * 0.999},
                                     .method = home::MeasurementMethod::Ruler,
                                     .entered = calendar::start_of_day_utc(kBegin)});
            log_height += 7 * 0.015 * (week < 7 ? 1.0 : after);
        }
    }
    PlantGrowth growth(MeasurementKind kind = MeasurementKind::Height, const GrowthWish& wish = {})
    {
        return growth_of(plant(), kind, measurements_, events_, whereabouts(), spots_, log_, wish);
    }
};

TEST_F(MeasuredPlant, ThatStandsStillAfterAColdNightIsDeclining)
{
    grow(-0.2);
    events_ = {event(EventKind::ColdNight, kBegin + calendar::Days{50})};
    const auto shown = growth();
    EXPECT_EQ(shown.readings.size(), 16U);
    ASSERT_TRUE(shown.event);
    EXPECT_EQ(shown.event->what, "cold night");
    EXPECT_TRUE(shown.by_plant_clock);
    EXPECT_TRUE(shown.error_by_repeats);
    EXPECT_GT(shown.standard_error.value_or(0.0), 0.0);
    ASSERT_TRUE(shown.recovery);
    EXPECT_EQ(shown.recovery->judgement.verdict, growth::Verdict::Declining);
    EXPECT_FALSE(shown.course.empty());
}

TEST_F(MeasuredPlant, ThatGrowsOnHadNoSetback)
{
    grow(1.0);
    events_ = {event(EventKind::Repotted, kBegin + calendar::Days{50})};
    const auto shown = growth();
    ASSERT_TRUE(shown.recovery);
    EXPECT_NE(shown.recovery->judgement.verdict, growth::Verdict::Declining);
    EXPECT_NEAR(shown.recovery->share_regained.value_or(0.0), 1.0, 0.3);
}

TEST_F(MeasuredPlant, HarmIsJudgedBeforeCareAndMoves)
{
    grow(1.0);
    events_ = {event(EventKind::PestFound, kBegin + calendar::Days{40}), event(EventKind::Repotted, kBegin + calendar::Days{60}),
               event(EventKind::Watered, kBegin + calendar::Days{61})};
    auto shown = growth();
    EXPECT_EQ(shown.event->what, "pest found");
    EXPECT_EQ(shown.events.size(), 2U); // Water does not show in growth.
    // Too early for the harm to be judged: the care is.
    events_.front().happened = kBegin + calendar::Days{2};
    shown = growth();
    EXPECT_EQ(shown.event->what, "repotted");
    // With one reading before it, better than none.
    events_.pop_back();
    events_.pop_back();
    shown = growth();
    EXPECT_EQ(shown.event->what, "pest found");
    EXPECT_EQ(shown.recovery->judgement.verdict, growth::Verdict::TooEarly);
    // After the last reading nothing can show.
    events_.front().happened = kDayOfReading + calendar::Days{30};
    EXPECT_FALSE(growth().event);
    EXPECT_FALSE(growth().recovery);
}

TEST_F(MeasuredPlant, IsJudgedAfterTheEventThatIsAskedFor)
{
    grow(1.0);
    events_ = {event(EventKind::Repotted, kBegin + calendar::Days{40}), event(EventKind::Repotted, kBegin + calendar::Days{75})};
    EXPECT_EQ(growth().event->date, kBegin + calendar::Days{75});
    const auto earlier = growth(MeasurementKind::Height, {.event = kBegin + calendar::Days{40}, .spared = {}});
    EXPECT_EQ(earlier.event->date, kBegin + calendar::Days{40});
    EXPECT_EQ(earlier.event->what, "repotted");
    ASSERT_TRUE(earlier.recovery);
    EXPECT_LT(earlier.recovery->readings_after, 6U) << "the later one ends what is judged";
    // A day that the journal has nothing of is the grower's own reason to ask.
    const auto own = growth(MeasurementKind::Height, {.event = kBegin + calendar::Days{30}, .spared = {}});
    EXPECT_EQ(own.event->what, "");
    EXPECT_TRUE(own.recovery);
}

TEST_F(MeasuredPlant, BesideOneThatWasSparedIsJudgedByItsClock)
{
    grow(0.3);
    events_ = {event(EventKind::ChemicalDamage, kBegin + calendar::Days{49})};
    const auto alone = growth();
    EXPECT_FALSE(alone.by_spared);
    // The companion slowed down as much: it was the season.
    const auto companion = growth::readings_of(measured_of(measurements_, 1, MeasurementKind::Height));
    const auto beside = growth(MeasurementKind::Height, {.event = {}, .spared = {companion}});
    EXPECT_TRUE(beside.by_spared);
    ASSERT_TRUE(alone.recovery && beside.recovery);
    EXPECT_LT(alone.recovery->share_regained.value_or(1.0), 0.6);
    EXPECT_GT(beside.recovery->share_regained.value_or(0.0), 0.8);
    ASSERT_FALSE(beside.course.empty());
    // Too few readings make no clock, and are no error.
    EXPECT_FALSE(growth(MeasurementKind::Height, {.event = {}, .spared = {{companion.front()}}}).by_spared);
    EXPECT_FALSE(growth(MeasurementKind::Height, {.event = {}, .spared = {{}}}).by_spared);
}

TEST_F(MeasuredPlant, WithoutASpotGoesByTheCalendar)
{
    grow(1.0);
    plant().spot = std::nullopt;
    events_ = {event(EventKind::Pruned, kBegin + calendar::Days{50})};
    const auto shown = growth();
    EXPECT_FALSE(shown.by_plant_clock);
    EXPECT_TRUE(shown.recovery);
}

TEST_F(MeasuredPlant, FlowersAreReadingsAndNoSeries)
{
    grow(1.0, 4, MeasurementKind::Flowers);
    events_ = {event(EventKind::Pruned, kBegin + calendar::Days{10})};
    const auto shown = growth(MeasurementKind::Flowers);
    EXPECT_EQ(shown.readings.size(), 4U);
    EXPECT_EQ(shown.events.size(), 1U);
    EXPECT_FALSE(shown.event);
    EXPECT_TRUE(growth(MeasurementKind::Width).readings.empty());
}

TEST_F(MeasuredPlant, AHeightOfNoughtIsPassedOver)
{
    grow(1.0, 5);
    measurements_.back().repeats = {0.0};
    EXPECT_EQ(growth().readings.size(), 4U);
}

TEST_F(MeasuredPlant, MeasuresComeByHowOftenTheyWereTaken)
{
    grow(1.0, 3, MeasurementKind::Leaves);
    grow(1.0, 5);
    measurements_.push_back(measurements_.front());
    measurements_.back().plant = 2;
    measurements_.back().kind = MeasurementKind::Stem;
    EXPECT_EQ(measures_of(measurements_, 1), (std::vector{MeasurementKind::Height, MeasurementKind::Leaves}));
    EXPECT_TRUE(measures_of(measurements_, 3).empty());
}

TEST_F(MeasuredPlant, OtherEventsButMovesStandInTheWay)
{
    const growth::DatedEvent judged{date(2027, 5, 1), "cold night"};
    const std::vector<growth::DatedEvent> all{{date(2027, 4, 20), "moved"}, judged, {date(2027, 5, 9), "pruned"}};
    EXPECT_EQ(in_the_way_of(judged, all), (std::vector<growth::DatedEvent>{{date(2027, 5, 9), "pruned"}}));
}

TEST(SeriesKinds, AreThoseOfGrowingThings)
{
    using growth::SeriesKind;
    for (const auto measure : {MeasurementKind::Height, MeasurementKind::Width, MeasurementKind::LongestLeaf, MeasurementKind::Stem}) {
        EXPECT_EQ(series_kind_of(measure), SeriesKind::Size);
    }
    EXPECT_EQ(series_kind_of(MeasurementKind::Leaves), SeriesKind::Count);
    EXPECT_EQ(series_kind_of(MeasurementKind::GreenCover), SeriesKind::Share);
    EXPECT_EQ(series_kind_of(MeasurementKind::YellowShare), SeriesKind::Yellow);
    EXPECT_FALSE(series_kind_of(MeasurementKind::NewLeaves));
    EXPECT_FALSE(series_kind_of(MeasurementKind::Flowers));
}

TEST_F(MeasuredPlant, ItsClockIsThatOfTheSpotsWhereItStood)
{
    const auto by = grows_by(plant());
    const auto from = kBegin;
    const auto to = kBegin + calendar::Days{60};
    events_ = {moved(kBegin + calendar::Days{10}, kSill), moved(kBegin + calendar::Days{30}, kDim)};
    const auto clock = clock_of(plant(), whereabouts(), spots_, log_, from, to);
    ASSERT_TRUE(clock);
    const auto sill = clock_at(by, spots_, kSill, from, to);
    const auto dim = clock_at(by, spots_, kDim, from, to);
    const auto on = [](int day) { return kBegin + calendar::Days{day}; };
    // Before its first known spot it counts as there.
    EXPECT_NEAR(clock->days_between(on(0), on(29)), sill.days_between(on(0), on(29)), 1e-9);
    EXPECT_NEAR(clock->days_between(on(30), on(60)), dim.days_between(on(30), on(60)), 1e-9);
    EXPECT_LT(dim.days_between(on(30), on(60)), sill.days_between(on(30), on(60))); // Light counts.
    // A night that was read there is taken for what it was.
    log_.readings.push_back({kSill, on(20), celsius(-3.0), celsius(2.0), {}, {}, calendar::start_of_day_utc(kBegin), ""});
    const auto read = clock_of(plant(), whereabouts(), spots_, log_, from, to);
    EXPECT_NEAR(read->days_between(on(19), on(20)), 0.0, 1e-9);
    plant().spot = std::nullopt;
    events_.clear();
    EXPECT_FALSE(clock_of(plant(), whereabouts(), spots_, log_, from, to));
}

TEST(GrowsBy, IsTheKindsWithThePlantsOwnLimits)
{
    auto household = potted_household("Ficus benjamina", 48.0);
    auto& plant = household.plants.front();
    const auto by_kind = grows_by(plant_kind("Ficus benjamina"));
    plant.light_to_thrive = DailyLight::from_moles(33.0);
    plant.heat_limit = celsius(44.0);
    EXPECT_EQ(grows_by(plant).cardinal.base, by_kind.cardinal.base);
    EXPECT_EQ(grows_by(plant).good.moles(), 33.0);
    EXPECT_EQ(grows_by(plant).cardinal.maximum, celsius(44.0));
    plant.heat_limit = celsius(-5.0); // Never below what it grows best at.
    EXPECT_GT(grows_by(plant).cardinal.maximum, grows_by(plant).cardinal.optimum);
    plant.kind = "My own thing";
    plant.light_to_thrive = DailyLight::from_moles(0.0);
    EXPECT_EQ(grows_by(plant).cardinal.base, grows_by_usual().cardinal.base);
    EXPECT_EQ(grows_by(plant).good.moles(), grows_by_usual().good.moles());
}

TEST(ClockInTheOpen, RunsInSummerAndStandsInWinter)
{
    const auto clock = clock_in_the_open(grows_by_usual(), place(48.0, 2.0, 10.0), date(2027, 1, 1), date(2027, 12, 31));
    EXPECT_GT(clock.days_between(date(2027, 7, 1), date(2027, 7, 31)), 5.0);
    EXPECT_LT(clock.days_between(date(2027, 1, 1), date(2027, 1, 31)), 0.5);
}

TEST(LastForeseen, ReachesTwentyOneGapsAheadAndTenYearsAtMost)
{
    std::vector<growth::SeriesReading> readings;
    EXPECT_EQ(last_foreseen(readings, kBegin), kBegin + calendar::Days{21});
    for (const int day : {0, 7, 17, 24}) {
        readings.push_back({kBegin + calendar::Days{day}, 1.0});
    }
    EXPECT_EQ(last_foreseen(readings, kBegin), kBegin + calendar::Days{24 + 210});
    EXPECT_EQ(last_foreseen(readings, kDayOfReading), kDayOfReading + calendar::Days{210});
    readings.push_back({kBegin + calendar::Days{1000}, 1.0});
    EXPECT_EQ(last_foreseen(readings, kBegin), kBegin + calendar::Days{1000 + 3660});
}

} // namespace
} // namespace lathhouse::plan
