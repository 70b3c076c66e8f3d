#include "core/home/spot_climate.h"

#include "core/calendar/day_of_year.h"
#include "core/home/demonstration.h"
#include "tests/plan/sample_household.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

const calendar::Date kWinter{2027, 1, 15};
const calendar::Date kSummer{2027, 7, 15};

/// A continental town with 2 mm of rain a day: lows -5 in January and 15 in July, highs 10 K above.
climate::PlaceClimate continental()
{
    auto place = plan::climate_of(5.0, 10.0, 7, 46.0);
    for (std::size_t m = 0; m < 12; ++m) {
        place.rain[m] = Millimetres::from_millimetres(2.0 * calendar::days_in_month_of_leap_year(static_cast<int>(m) + 1));
    }
    return place;
}

class SpotClimateTest : public testing::Test {
protected:
    Household home_ = demonstration({.today = calendar::Date{2026, 11, 25}}).value().household;
    climate::PlaceClimate place_ = continental();
};

TEST_F(SpotClimateTest, OutdoorsFollowsThePlaceWithTheSpotsOffset)
{
    const SpotClimate climate{home_, place_};
    for (const auto& spot : home_.spots) {
        if (is_outdoors(spot.kind)) {
            const auto day = climate.on(spot.id, kWinter);
            // Mid-January of the curve lies a little below the month's mean of -5.
            EXPECT_NEAR(day.low.degrees(), -5.0 + spot.offset.mean.kelvins(), 0.6);
            EXPECT_NEAR(day.high.degrees(), 5.0, 0.6);
            EXPECT_TRUE(day.outdoors);
        }
    }
}

TEST_F(SpotClimateTest, RainFallsOnOpenSpotsOnly)
{
    const SpotClimate climate{home_, place_};
    for (const auto& spot : home_.spots) {
        EXPECT_NEAR(climate.on(spot.id, kWinter).rain.millimetres(), spot.kind == SpotKind::Open ? 2.0 : 0.0, 1e-9);
    }
}

TEST_F(SpotClimateTest, ARoomIsAsToldInWinterAndFollowsAHotSummer)
{
    const SpotClimate climate{home_, place_};
    for (const auto& spot : home_.spots) {
        if (!is_outdoors(spot.kind) && spot.winter) {
            const auto winter = climate.on(spot.id, kWinter);
            EXPECT_NEAR(winter.low.degrees(), spot.winter->degrees(), 0.8) << spot.name;
            EXPECT_NEAR((winter.high - winter.low).kelvins(), 3.0, 1e-9);
            EXPECT_GE(climate.on(spot.id, kSummer).high.degrees(), 25.0 - 2.0) << spot.name;
        }
    }
}

TEST_F(SpotClimateTest, LoggedNightsCorrectTheRoomForAMonth)
{
    const auto room = std::ranges::find_if(home_.spots, [](const Spot& s) { return !is_outdoors(s.kind); });
    const auto usual = SpotClimate{home_, place_}.on(room->id, kWinter);
    NightLog log;
    log.readings.push_back({room->id, kWinter, usual.low + KelvinDelta::from_kelvins(-4.0), {}, {}, {},
                            calendar::start_of_day_utc(kWinter), ""});
    const SpotClimate climate{home_, place_, log};
    EXPECT_NEAR(climate.on(room->id, kWinter).low.degrees(), usual.low.degrees() - 4.0, 1e-9);
    EXPECT_NEAR(climate.on(room->id, kSummer).low.degrees(),
                SpotClimate(home_, place_).on(room->id, kSummer).low.degrees(), 1e-9);
}

TEST_F(SpotClimateTest, LightAndThirstAreLessIndoorsAndInWinter)
{
    const SpotClimate climate{home_, place_};
    for (const auto& spot : home_.spots) {
        const auto winter = climate.on(spot.id, kWinter);
        const auto summer = climate.on(spot.id, kSummer);
        EXPECT_GE(winter.light.moles(), 0.0);
        // A low Sun may reach deeper into a room in winter than a high one in summer.
        if (is_outdoors(spot.kind)) {
            EXPECT_LT(winter.light.moles(), summer.light.moles()) << spot.name;
        }
        EXPECT_LT(winter.water_demand.millimetres(), summer.water_demand.millimetres()) << spot.name;
        // 15.4 hours on 15 July at 45.8 N (FAO-56 table 2.7: 15.3 at 46 N).
        EXPECT_NEAR(summer.day_length_hours, 15.3, 0.15);
    }
}

TEST(RoomLow, IsTheOneFigureThatIsKnown)
{
    auto room = plan::indoors(1, 3);
    const auto day = calendar::DayOfYear::of(kWinter);
    const auto latitude = Latitude::literal(46.0);
    room.summer.reset();
    EXPECT_EQ(room_low(room, latitude, day), Celsius::from_degrees(17.0));
    room.winter.reset();
    EXPECT_EQ(room_low(room, latitude, day), std::nullopt);
    room.summer = Celsius::from_degrees(21.0);
    EXPECT_EQ(room_low(room, latitude, day), Celsius::from_degrees(21.0));
}

} // namespace
} // namespace lathhouse::home
