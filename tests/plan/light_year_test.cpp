#include "core/plan/light_year.h"

#include "core/climate/station_rows.h"
#include "core/home/demonstration.h"
#include "core/home/spot_light.h"
#include "core/plan/stress.h"
#include "core/plan/year_plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <set>

namespace lathhouse::plan {
namespace {

const calendar::Date kJanuary{2027, 1, 10};

const std::vector<climate::Station>& shipped()
{
    static const auto stations =
        climate::read_station_rows(std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data/stations.csv")
            .value();
    return stations;
}

climate::PlaceClimate climate_at(const home::Household& household)
{
    return climate::climate_among(std::span{shipped()}, household.place.position, household.place.elevation)
        .value();
}

home::Household shown(home::Hemisphere hemisphere)
{
    home::DemonstrationOptions options{.today = kJanuary};
    options.hemisphere = hemisphere;
    return home::demonstration(options).value().household;
}

calendar::DayOfYear middle_of(int month)
{
    return calendar::DayOfYear::from_month_day(month, 15).value();
}

class BothHemispheres : public testing::TestWithParam<home::Hemisphere> {};

TEST_P(BothHemispheres, ViewsOfTheDemonstrationAgreeWithTheGrowersTwoFigures)
{
    // Nobody measures a sill to better than a third.
    const auto household = shown(GetParam());
    const auto light = light_of_spots(household.spots, climate_at(household));
    const bool north = GetParam() == home::Hemisphere::North;
    for (std::size_t s = 0; s < household.spots.size(); ++s) {
        const auto& spot = household.spots[s];
        const double in_summer = light[s].on(middle_of(north ? 6 : 12)).moles();
        const double in_winter = light[s].on(middle_of(north ? 12 : 6)).moles();
        EXPECT_NEAR(in_summer / spot.light_in_summer.moles(), 1.0, 0.34) << spot.name;
        EXPECT_NEAR(in_winter / spot.light_in_winter.moles(), 1.0, 0.34) << spot.name;
    }
}

TEST_P(BothHemispheres, ASpotWithAViewHasItsMonths)
{
    const auto household = shown(GetParam());
    const auto climate = climate_at(household);
    const auto light = light_of_spots(household.spots, climate);
    const home::YearOfSky sky{climate};
    for (std::size_t s = 0; s < household.spots.size(); ++s) {
        const auto months = home::spot_light(household.spots[s], sky);
        std::array<double, 12> sums{};
        for (int place = 1; place <= calendar::DayOfYear::kCount; ++place) {
            const auto day = calendar::DayOfYear::wrapped(place);
            sums[static_cast<std::size_t>(day.month() - 1)] += light[s].on(day).moles();
        }
        for (int month = 1; month <= 12; ++month) {
            const auto m = static_cast<std::size_t>(month - 1);
            EXPECT_NEAR(sums[m] / calendar::days_in_month_of_leap_year(month), months[m].moles(), 0.01)
                << household.spots[s].name << ' ' << month;
        }
    }
}

TEST_P(BothHemispheres, ThePlanTakesTheViewAndNotTheFigures)
{
    // Wrong figures beside a view change nothing; a boarded window does.
    auto household = shown(GetParam());
    const auto climate = climate_at(household);
    const auto& plant = household.plants.front();
    auto sill = household.spots.front();
    const auto nights = climate.nights();
    const double before = stress_of(plant, sill, climate, nights, kJanuary);
    sill.light_in_summer = DailyLight::from_moles(0.1);
    sill.light_in_winter = DailyLight::from_moles(0.1);
    EXPECT_EQ(stress_of(plant, sill, climate, nights, kJanuary), before);
    const auto zone_before = zone_of(sill, light_of_spots(std::span{&sill, 1}, climate).front());
    auto boarded = sill.view->figures();
    boarded.passes = 0.05;
    sill.view = sky::SpotView::of(boarded).value();
    EXPECT_GT(stress_of(plant, sill, climate, nights, kJanuary), before);
    EXPECT_LT(zone_of(sill, light_of_spots(std::span{&sill, 1}, climate).front()).light, zone_before.light);
}

INSTANTIATE_TEST_SUITE_P(LightYear, BothHemispheres,
                         testing::Values(home::Hemisphere::North, home::Hemisphere::South),
                         [](const auto& row) {
                             return row.param == home::Hemisphere::North ? "North" : "South";
                         });

TEST(LightYear, OfASpotWithoutAViewLiesBetweenTheGrowersFigures)
{
    auto household = shown(home::Hemisphere::North);
    auto& spot = household.spots.front();
    spot.view.reset();
    const auto climate = climate_at(household);
    const auto light = light_of_spots(std::span{&spot, 1}, climate).front();
    for (int place = 1; place <= calendar::DayOfYear::kCount; place += 9) {
        const auto day = calendar::DayOfYear::wrapped(place);
        EXPECT_EQ(light.on(day).moles(), light_at(spot, climate.position.latitude, day).moles());
    }
    EXPECT_NEAR(light.mean().moles(), 0.5 * (spot.light_in_summer + spot.light_in_winter).moles(), 0.01);
}

TEST(DemonstrationsYear, IsOneThatAGrowerWouldBelieve)
{
    const auto household = shown(home::Hemisphere::North);
    const auto climate = climate_at(household);
    const ColdChances chances{climate::PlaceNights::of(climate)};
    const auto plan =
        plan_year(household, climate, chances, kJanuary, Probability::literal(0.1), Effort::Fast);
    const auto id_of = [&](const char* name) {
        return std::ranges::find(household.spots, name, &home::Spot::name)->id;
    };
    const std::set<home::SpotId> bright_in_winter{id_of("South sill"), id_of("Cool landing")};
    const auto spots_of = [&](const char* name) {
        const auto plant = std::ranges::find(household.plants, name, &home::Plant::name);
        std::set<home::SpotId> spots;
        std::set<home::SpotId> in_january;
        const auto year = std::ranges::find(plan.plants, plant->id, &PlantYear::plant);
        for (const auto& stay : year->stays) {
            spots.insert(stay.spot);
            if (stay.from <= calendar::Date(2027, 1, 31)) {
                in_january.insert(stay.spot);
            }
        }
        return std::pair{spots, in_january};
    };
    // Sun lovers winter in the two bright windows and go out in summer.
    for (const char* name : {"Olive", "Lemon", "Bougainvillea", "Rosemary"}) {
        const auto [spots, in_january] = spots_of(name);
        for (const auto spot : in_january) {
            EXPECT_TRUE(bright_in_winter.contains(spot)) << name;
        }
        EXPECT_TRUE(spots.contains(id_of("Roofed balcony")) || spots.contains(id_of("Balcony rail"))) << name;
    }
    // Plants of the shade never stand in the sunniest window nor on the rail.
    for (const char* name : {"Peace lily", "Moth orchid"}) {
        const auto [spots, in_january] = spots_of(name);
        EXPECT_FALSE(spots.contains(id_of("South sill"))) << name;
        EXPECT_FALSE(spots.contains(id_of("Balcony rail"))) << name;
    }
}

} // namespace
} // namespace lathhouse::plan
