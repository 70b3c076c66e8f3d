#include "core/home/demonstration.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/home/shelter.h"

#include <gtest/gtest.h>

#include <array>

namespace lathhouse::home {
namespace {

constexpr std::array kSpotKinds{SpotKind::Indoors, SpotKind::Open, SpotKind::Roofed, SpotKind::Screened,
                                SpotKind::Glazed};

TEST(SpotKindWords, ReadBackAsTheSameKind)
{
    for (const auto kind : kSpotKinds) {
        EXPECT_EQ(spot_kind_of(to_string(kind)), kind);
    }
}

TEST(SpotKindWords, AreNothingElse)
{
    EXPECT_FALSE(spot_kind_of("Open"));
    EXPECT_FALSE(spot_kind_of(""));
}

TEST(EventKindWords, ReadBackAsTheSameKind)
{
    EXPECT_EQ(every_event_kind().size(), static_cast<std::size_t>(EventKind::TaskSkipped) + 1);
    for (const auto kind : every_event_kind()) {
        EXPECT_EQ(event_kind_of(to_string(kind)), kind);
    }
    EXPECT_FALSE(event_kind_of("eaten"));
}

TEST(Household, FindsSpotsAndPlantsById)
{
    const auto made = demonstration({.today = calendar::Date{2026, 11, 25}}).value().household;
    ASSERT_NE(made.spot(3), nullptr);
    EXPECT_EQ(made.spot(3)->short_name, "Landing");
    EXPECT_EQ(made.spot(99), nullptr);
    ASSERT_NE(made.plant(2), nullptr);
    EXPECT_EQ(made.plant(2)->name, "Angel's trumpet");
    EXPECT_EQ(made.plant(0), nullptr);
}

TEST(Household, FindsSpotsAndPlantsByIdOrName)
{
    const auto made = demonstration({.today = calendar::Date{2026, 11, 25}}).value().household;
    const auto& plant = made.plants.back();
    EXPECT_EQ(made.plant_called(std::to_string(plant.id)), &plant);
    EXPECT_EQ(made.plant_called(" " + plant.name + " "), &plant);
    EXPECT_EQ(made.spot_called("3"), made.spot(3));
    EXPECT_EQ(made.spot_called("COOL LANDING"), made.spot(3));
    EXPECT_EQ(made.plant_called("999"), nullptr);
    EXPECT_EQ(made.spot_called(""), nullptr);
    auto blanks = made;
    blanks.spots.front().name += " ";
    EXPECT_EQ(blanks.spot_called(made.spots.front().name), &blanks.spots.front());
    EXPECT_EQ(blanks.spot_called(blanks.spots.front().name), &blanks.spots.front());
}

TEST(PotShadeWords, ReadBackAsTheSame)
{
    for (const auto shade : {PotShade::Unknown, PotShade::Light, PotShade::Dark}) {
        EXPECT_EQ(pot_shade_of(to_string(shade)), shade);
    }
    EXPECT_FALSE(pot_shade_of("grey"));
}

TEST(PriorOffset, IsUnknownEverywhereOutdoors)
{
    for (const auto kind : kSpotKinds) {
        EXPECT_EQ(prior_offset(kind).spread.kelvins() > 0.0, is_outdoors(kind)) << to_string(kind);
    }
}

TEST(PriorOffset, GrowsWithTheShelter)
{
    EXPECT_LT(prior_offset(SpotKind::Open).mean, prior_offset(SpotKind::Screened).mean);
    EXPECT_LT(prior_offset(SpotKind::Screened).mean, prior_offset(SpotKind::Roofed).mean);
    EXPECT_LT(prior_offset(SpotKind::Roofed).mean, prior_offset(SpotKind::Glazed).mean);
}

} // namespace
} // namespace lathhouse::home
