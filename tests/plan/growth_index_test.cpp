#include "core/plan/growth_index.h"

#include "tests/plan/growing_sample.h"
#include "tests/plan/short_names.h"

#include <gtest/gtest.h>

namespace lathhouse::plan {
namespace {

using namespace sample;

home::SpotDay room(double mean, double moles, double hours)
{
    return {Celsius::from_degrees(mean - 1.5), Celsius::from_degrees(mean + 1.5), DailyLight::from_moles(moles),
            hours, Millimetres::from_millimetres(0), Millimetres::from_millimetres(1), false};
}

double index_of(const char* name, const home::SpotDay& day, calendar::Date on, double latitude = 48.0,
                std::optional<Lamps> lamps = {})
{
    const auto& of = plant_kind(name);
    const RestingSeasons seasons{place(latitude, 6.0, 10.0)};
    return growth_on(of, of.light_to_thrive, of.heat_limit, day, on, seasons, lamps).index();
}

TEST(GrowthIndex, IsAShareOfTheBest)
{
    for (const auto& of : plants::PlantReference::built_in().kinds()) {
        const RestingSeasons seasons{place(48.0, 6.0, 10.0)};
        for (const double mean : {-5.0, 5.0, 15.0, 22.0, 30.0, 45.0}) {
            const auto grown = growth_on(of, of.light_to_thrive, of.heat_limit, room(mean, 5.0, 12.0),
                                         date(2027, 6, 1), seasons);
            EXPECT_GE(grown.index(), 0.0) << of.botanical_name;
            EXPECT_LE(grown.index(), 1.0) << of.botanical_name;
        }
    }
}

TEST(GrowthIndex, RisesWithLightAndTemperatureUpToTheBest)
{
    const auto on = date(2027, 6, 1);
    EXPECT_LT(index_of("Ficus benjamina", room(17, 5, 16), on), index_of("Ficus benjamina", room(24, 5, 16), on));
    EXPECT_LT(index_of("Ficus benjamina", room(24, 1, 16), on), index_of("Ficus benjamina", room(24, 5, 16), on));
    EXPECT_GT(index_of("Ficus benjamina", room(24, 5, 16), on), index_of("Ficus benjamina", room(34, 5, 16), on));
    EXPECT_EQ(index_of("Ficus benjamina", room(5, 5, 16), on), 0.0);
}

TEST(GrowthIndex, FallsWithTheDaysForKindsThatSlow)
{
    const auto on = date(2027, 6, 1);
    const double nine = index_of("Ficus benjamina", room(22, 5, 9), on);
    const double twelve = index_of("Ficus benjamina", room(22, 5, 12), on);
    EXPECT_NEAR(nine, 0.4 * twelve, 1e-9);
    EXPECT_NEAR(index_of("Solanum lycopersicum", room(22, 5, 9), on),
                index_of("Solanum lycopersicum", room(22, 5, 12), on), 1e-12)
        << "an annual has no rest";
}

TEST(GrowthIndex, CountsLampsIndoorsAlone)
{
    const Lamps lamps{14.0, PhotonFlux::from_micromoles(100.0)};
    const auto on = date(2027, 1, 5);
    EXPECT_GT(index_of("Ficus benjamina", room(22, 0.5, 9), on, 48.0, lamps),
              index_of("Ficus benjamina", room(22, 0.5, 9), on));
    auto outside = room(22, 0.5, 9);
    outside.outdoors = true;
    EXPECT_EQ(index_of("Ficus benjamina", outside, on, 48.0, lamps), index_of("Ficus benjamina", outside, on));
    // 100 umol through 14 hours are 5.04 mol.
    const auto& ficus = plant_kind("Ficus benjamina");
    const RestingSeasons seasons{place(48.0, 6.0, 10.0)};
    const auto grown =
        growth_on(ficus, ficus.light_to_thrive, ficus.heat_limit, room(22, 0.5, 9), on, seasons, lamps);
    EXPECT_NEAR(grown.moles.moles(), 5.54, 1e-9);
}

// cos w = -tan(latitude) tan(declination): days of 11 hours at 48 degrees have a declination of -6.7 degrees, which the Sun
// has about 5 March and 10 October.
TEST(RestingSeasons, AreThePlacesOwn)
{
    const RestingSeasons north{place(48.0, 6.0, 10.0)};
    EXPECT_TRUE(north.is_winter(date(2027, 1, 10)));
    EXPECT_TRUE(north.is_winter(date(2027, 2, 28)));
    EXPECT_FALSE(north.is_winter(date(2027, 3, 10)));
    EXPECT_TRUE(north.is_hot(date(2027, 7, 15)));
    const RestingSeasons south{place(-48.0, 6.0, 10.0)};
    EXPECT_TRUE(south.is_winter(date(2027, 7, 10)));
    EXPECT_TRUE(south.is_hot(date(2027, 1, 15)));
}

TEST(RestingSeasons, GoByTheCoolestMonthsWhereNoDayIsShort)
{
    const RestingSeasons tropic{place(12.0, 18.0, 5.0)};
    EXPECT_TRUE(tropic.has_winter());
    EXPECT_TRUE(tropic.is_winter(date(2027, 1, 10)));
    EXPECT_FALSE(tropic.is_winter(date(2027, 6, 10)));
    const RestingSeasons equator{place(0.0, 22.0, 0.5)};
    EXPECT_FALSE(equator.has_winter());
    EXPECT_FALSE(equator.is_hot(date(2027, 7, 10)));
}

TEST(GrowthIndex, StandsStillInARest)
{
    EXPECT_EQ(index_of("Caladium bicolor", room(24, 6, 9), date(2027, 1, 5)), 0.0);
    EXPECT_GT(index_of("Caladium bicolor", room(24, 6, 16), date(2027, 7, 5)), 0.3);
    EXPECT_EQ(index_of("Zantedeschia aethiopica", room(20, 6, 16), date(2027, 7, 5)), 0.0);
}

} // namespace
} // namespace lathhouse::plan
