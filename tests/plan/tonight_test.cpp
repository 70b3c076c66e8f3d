#include "core/plan/tonight.h"

#include "core/home/demonstration.h"
#include "tests/climate/sample_figures.h"
#include "tests/plan/short_names.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace lathhouse::plan {
namespace {

const calendar::Date kTonight{2026, 7, 20};

const climate::NightModel& inland()
{
    static const auto model =
        climate::NightModel::from_monthly(climate::inland_figures(), Latitude::literal(48.2));
    return model;
}

/// The demonstration in July: its tender plants are outdoors.
home::Household summer_household()
{
    return home::demonstration({.today = kTonight}).value().household;
}

home::KeptForecast forecast(int issued, int night, double low)
{
    return {.issued = kTonight + calendar::Days{issued},
            .night = kTonight + calendar::Days{night},
            .low = celsius(low),
            .weather = {},
            .dew_point = {},
            .entered = calendar::start_of_day_utc(kTonight)};
}

home::Reading reading(home::SpotId spot, int night, double low, std::optional<double> high = {})
{
    return {.spot = spot,
            .night = kTonight + calendar::Days{night},
            .low = celsius(low),
            .high = high ? std::optional{celsius(*high)} : std::nullopt,
            .weather = {},
            .station_low = {},
            .entered = calendar::start_of_day_utc(kTonight),
            .note = ""};
}

NightAhead ahead(double low, climate::NightWeather weather = {})
{
    return {kTonight + calendar::Days{1}, climate::ForecastLow{celsius(low), 1}, weather, {}};
}

const PlantNight& of(const NightPlan& plan, home::PlantId id)
{
    return *std::ranges::find(plan.plants, id, &PlantNight::plant);
}

TEST(NightsOfForecast, AreTheNextTenByTheLatestIssue)
{
    const std::vector<home::KeptForecast> forecasts{
        forecast(-3, 1, 9.0), forecast(0, 1, 7.0),  forecast(-1, 1, 8.0), forecast(0, 0, 5.0),
        forecast(0, 10, 6.0), forecast(0, 11, 4.0), forecast(1, 2, 3.0)};
    const auto nights = nights_of_forecast(forecasts, kTonight);
    ASSERT_EQ(nights.size(), 2U);
    EXPECT_EQ(nights[0].night, kTonight + calendar::Days{1});
    EXPECT_EQ(nights[0].forecast->low, celsius(7.0));
    EXPECT_EQ(nights[0].forecast->lead, 1);
    EXPECT_EQ(nights[1].forecast->lead, 10);
}

TEST(NightsOfForecast, AnOlderForecastHasTheLongerLead)
{
    const std::vector<home::KeptForecast> forecasts{forecast(-3, 1, 9.0)};
    EXPECT_EQ(nights_of_forecast(forecasts, kTonight).at(0).forecast->lead, 4);
}

TEST(PlanNights, CarriesInAboveTheRiskOnly)
{
    for (const double low : {16.0, 10.0, 6.0, 2.0, -3.0}) {
        const std::vector<NightAhead> nights{ahead(low)};
        const auto plans = plan_nights(summer_household(), {}, inland(), nights, kTonight, Probability::literal(0.1));
        ASSERT_EQ(plans.size(), 1U);
        EXPECT_FALSE(plans[0].plants.empty());
        for (const auto& plant : plans[0].plants) {
            EXPECT_EQ(plant.carry_in, plant.damage.fraction() > 0.1 || plant.lethal.fraction() > 0.01);
            EXPECT_LE(plant.lethal, plant.damage);
        }
    }
}

TEST(PlanNights, AtTenDaysAheadIsTheSeasonAtTheSpot)
{
    const NightAhead far{kTonight + calendar::Days{10}, climate::ForecastLow{celsius(-9.0), 10}, {}, {}};
    const NightAhead none{kTonight + calendar::Days{10}, {}, {}, {}};
    const std::vector<NightAhead> nights{far, none};
    const auto plans = plan_nights(summer_household(), {}, inland(), nights, kTonight, Probability::literal(0.1));
    for (std::size_t at = 0; at < plans[0].plants.size(); ++at) {
        EXPECT_EQ(plans[0].plants[at].damage, plans[1].plants[at].damage);
    }
}

TEST(PlanNights, WithoutAForecastHasTheChancesOfThePlace)
{
    const auto season = inland();
    const climate::PlaceNights place{season};
    const std::vector<NightAhead> nights{{kTonight + calendar::Days{1}, {}, {}, {}}};
    const auto home = summer_household();
    const auto plans = plan_nights(home, {}, season, nights, kTonight, Probability::literal(0.1), &place);
    const auto coming = coming_nights(home, {}, season, place, kTonight, Probability::literal(0.1));
    ASSERT_FALSE(coming.empty());
    for (const auto& of_night : coming) {
        const auto& plant = *home.plant(of_night.plant.plant);
        const auto offset = home::offset_of(*home.spot(of_night.plant.spot), {}, season).of_night(climate::NightKind::Unknown);
        const auto chance = place.chance_on(calendar::DayOfYear::of(kTonight + calendar::Days{1}), plant.lines.damage_begins, offset);
        EXPECT_FALSE(of_night.by_forecast);
        EXPECT_EQ(of_night.plant.damage, chance);
        EXPECT_EQ(of(plans.front(), plant.id).damage, chance);
    }
}

TEST(PlanNights, ShelterTellsOnClearCalmNights)
{
    const std::vector<NightAhead> nights{ahead(5.0, {climate::Sky::Clear, climate::Wind::Calm}),
                                         ahead(5.0, {climate::Sky::Cloudy, climate::Wind::Windy})};
    const auto plans = plan_nights(summer_household(), {}, inland(), nights, kTonight, Probability::literal(0.1));
    EXPECT_LT(of(plans[0], 1).damage, of(plans[1], 1).damage); // Under the roof.
}

TEST(PlanNights, ReadingsOfTheSpotCount)
{
    home::NightLog log;
    for (int ago = 20; ago >= 1; --ago) {
        log.forecasts.push_back(forecast(-ago - 1, -ago, 12.0));
        log.readings.push_back(reading(5, -ago, 16.0)); // A balcony far milder than its kind.
    }
    const std::vector<NightAhead> nights{ahead(4.0)};
    const auto risk = Probability::literal(0.1);
    const auto with = plan_nights(summer_household(), log, inland(), nights, kTonight, risk);
    const auto without = plan_nights(summer_household(), {}, inland(), nights, kTonight, risk);
    EXPECT_LT(of(with[0], 1).damage.fraction(), 0.7 * of(without[0], 1).damage.fraction());
}

TEST(PlanNights, AnswersForRoomsWithLoggedLowsAlone)
{
    const std::vector<NightAhead> nights{ahead(12.0)};
    const auto risk = Probability::literal(0.1);
    const auto silent = plan_nights(summer_household(), {}, inland(), nights, kTonight, risk);
    EXPECT_EQ(std::ranges::count(silent[0].plants, 4, &PlantNight::spot), 0);
    home::NightLog log;
    log.readings = {reading(4, -2, 6.0), reading(4, -1, 5.0), reading(4, 0, 5.5)};
    const auto plans = plan_nights(summer_household(), log, inland(), nights, kTonight, risk);
    EXPECT_EQ(of(plans[0], 12).reason, NightReason::RoomTooCold); // Peace lily.
    EXPECT_FALSE(of(plans[0], 12).carry_in);
    log.readings = {reading(4, -2, 19.0), reading(4, -1, 19.5), reading(4, 0, 19.0)};
    const auto warm = plan_nights(summer_household(), log, inland(), nights, kTonight, risk);
    EXPECT_EQ(of(warm[0], 12).reason, NightReason::RoomHolds);
}

TEST(PlanNights, FrostOnLeavesIsOfTheOpenAlone)
{
    const auto frost = [](double low, climate::NightWeather weather, home::PlantId plant) {
        const std::vector<NightAhead> nights{ahead(low, weather)};
        const auto plans = plan_nights(summer_household(), {}, inland(), nights, kTonight, Probability::literal(0.1));
        return of(plans[0], plant).leaf_frost;
    };
    const climate::NightWeather clear_calm{climate::Sky::Clear, climate::Wind::Calm};
    constexpr home::PlantId kOnTheRail = 3;
    constexpr home::PlantId kUnderTheRoof = 1;
    EXPECT_EQ(frost(-1.0, clear_calm, kOnTheRail), LeafFrost::Likely);
    EXPECT_EQ(frost(-1.0, {}, kOnTheRail), LeafFrost::IfClearAndCalm);
    EXPECT_EQ(frost(-1.0, {climate::Sky::Clear, climate::Wind::Windy}, kOnTheRail), LeafFrost::None);
    EXPECT_EQ(frost(9.0, clear_calm, kOnTheRail), LeafFrost::None);
    EXPECT_EQ(frost(-1.0, clear_calm, kUnderTheRoof), LeafFrost::None);
}

TEST(RoomRemarks, HoldLowsAndHighsAgainstTheLines)
{
    home::NightLog log;
    EXPECT_TRUE(room_remarks(summer_household(), log, kTonight).empty());
    log.readings = {reading(4, -40, -5.0), reading(4, -2, 9.0, 50.0), reading(4, -1, 19.0, 24.0)};
    const auto remarks = room_remarks(summer_household(), log, kTonight);
    const auto about = [&](RoomTrouble trouble) {
        return std::ranges::find_if(remarks, [trouble](const RoomRemark& remark) {
            return remark.plant == 12 && remark.trouble == trouble;
        });
    };
    ASSERT_NE(about(RoomTrouble::AtHeatLimit), remarks.end());
    EXPECT_EQ(about(RoomTrouble::AtHeatLimit)->logged, celsius(50.0));
    const bool low =
        about(RoomTrouble::AtDamage) != remarks.end() || about(RoomTrouble::AtSafeNight) != remarks.end();
    EXPECT_TRUE(low);
    for (const auto& remark : remarks) {
        EXPECT_NE(remark.logged, celsius(-5.0)); // Six weeks ago.
    }
}

// Forecasts drawn from the model's own errors: their scores must be better than the season's and the learned
// error near the true one.
TEST(ForecastRecord, ScoresAndLearns)
{
    std::mt19937 random{11};
    std::normal_distribution<double> standard{0.0, 1.0};
    home::NightLog log;
    for (int ago = 120; ago >= 1; --ago) {
        const auto day = calendar::DayOfYear::of(kTonight - calendar::Days{ago});
        const double mean = inland().mean_low(day).degrees();
        const double low = mean + inland().spread(day).kelvins() * standard(random);
        const double said = low + 1.0 * standard(random);
        log.forecasts.push_back(forecast(-ago - 1, -ago, said));
        log.readings.push_back(reading(5, -ago, low + 1.5 + 0.7 * standard(random)));
    }
    const auto record = forecast_record(summer_household(), log, inland());
    EXPECT_EQ(record.scores[0].nights, 120);
    EXPECT_EQ(record.scores[1].nights, 0);
    EXPECT_LT(record.errors.groups()[0].factor, 0.85); // 1.0 K and the thermometer's part, of 1.9 K and it.
    EXPECT_LT(record.scores[0].learned, record.scores[0].forecast);
    EXPECT_LT(record.scores[0].forecast, record.scores[0].season);
}

} // namespace
} // namespace lathhouse::plan
