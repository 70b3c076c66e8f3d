#include "core/home/demonstration.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace lathhouse::home {
namespace {

const calendar::Date kToday{2026, 11, 25};

struct DemonstrationCase {
    const char* name;
    DemonstrationOptions options;
};
void PrintTo(const DemonstrationCase& row, std::ostream* out)
{
    *out << row.name;
}

class EveryDemonstration : public testing::TestWithParam<DemonstrationCase> {};

TEST_P(EveryDemonstration, HasNamesOnlyOnce)
{
    const auto made = demonstration(GetParam().options).value();
    std::set<std::string> names;
    for (const auto& plant : made.household.plants) {
        EXPECT_TRUE(names.insert(plant.name).second) << plant.name;
    }
    for (const auto& spot : made.household.spots) {
        EXPECT_TRUE(names.insert(spot.name).second) << spot.name;
    }
}

TEST_P(EveryDemonstration, PutsNoMoreInASpotThanFits)
{
    const auto made = demonstration(GetParam().options).value();
    std::map<SpotId, int> standing;
    for (const auto& plant : made.household.plants) {
        ASSERT_TRUE(plant.spot);
        ++standing[*plant.spot];
    }
    for (const auto& [id, count] : standing) {
        ASSERT_NE(made.household.spot(id), nullptr);
        EXPECT_LE(count, made.household.spot(id)->capacity) << made.household.spot(id)->name;
    }
}

TEST_P(EveryDemonstration, KeepsHazardsOutOfReach)
{
    const auto made = demonstration(GetParam().options).value();
    for (const auto& plant : made.household.plants) {
        EXPECT_FALSE(plant.hazardous && made.household.spot(*plant.spot)->in_reach) << plant.name;
    }
}

TEST_P(EveryDemonstration, FitsTheWinterIndoors)
{
    const auto made = demonstration(GetParam().options).value();
    int room = 0;
    for (const auto& spot : made.household.spots) {
        room += spot.kind == SpotKind::Indoors ? spot.capacity : 0;
    }
    EXPECT_GE(room, static_cast<int>(made.household.plants.size()));
}

TEST_P(EveryDemonstration, StandsWhereTheHistoryEnds)
{
    const auto made = demonstration(GetParam().options).value();
    std::map<PlantId, SpotId> last;
    for (const auto& event : made.history) {
        if (event.kind == EventKind::Moved) {
            last[event.plant.value()] = event.spot.value();
        }
    }
    for (const auto& plant : made.household.plants) {
        EXPECT_EQ(last.at(plant.id), plant.spot) << plant.name;
    }
}

TEST_P(EveryDemonstration, HasItsHistoryInOrderAndBeforeToday)
{
    const auto options = GetParam().options;
    const auto made = demonstration(options).value();
    EXPECT_TRUE(std::ranges::is_sorted(made.history, {}, &Event::happened));
    EXPECT_LE(made.history.back().happened, options.today);
    for (const auto& event : made.history) {
        ASSERT_NE(made.household.plant(event.plant.value()), nullptr);
        EXPECT_EQ(event.spot.has_value(), event.kind == EventKind::Moved);
    }
}

TEST_P(EveryDemonstration, IsTheSameEachTime)
{
    const auto one = demonstration(GetParam().options).value();
    const auto other = demonstration(GetParam().options).value();
    EXPECT_EQ(one.history, other.history);
    ASSERT_EQ(one.household.plants.size(), other.household.plants.size());
    for (std::size_t index = 0; index < one.household.plants.size(); ++index) {
        EXPECT_EQ(one.household.plants[index].name, other.household.plants[index].name);
        EXPECT_EQ(one.household.plants[index].spot, other.household.plants[index].spot);
    }
}

INSTANTIATE_TEST_SUITE_P(
    All, EveryDemonstration,
    testing::Values(DemonstrationCase{"North", {.today = kToday}},
                    DemonstrationCase{"NorthInSummer", {.today = calendar::Date{2026, 7, 1}}},
                    DemonstrationCase{"NorthOnALeapDay", {.today = calendar::Date{2028, 2, 29}}},
                    DemonstrationCase{"South", {.today = kToday, .hemisphere = Hemisphere::South}},
                    DemonstrationCase{"SouthInWinter",
                                      {.today = calendar::Date{2026, 7, 1}, .hemisphere = Hemisphere::South}},
                    DemonstrationCase{"WithoutHistory", {.today = kToday, .years = 0}},
                    DemonstrationCase{"SixtyPlants", {.today = kToday, .plants = 60, .spots = 20}},
                    DemonstrationCase{"OnePlantTwoSpots", {.today = kToday, .plants = 1, .spots = 2}},
                    DemonstrationCase{"ThousandPlants",
                                      {.today = kToday, .plants = 1000, .spots = 100, .years = 1}}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(Demonstration, HasFourteenPlantsAndSixSpots)
{
    const auto made = demonstration({.today = kToday}).value().household;
    EXPECT_EQ(made.plants.size(), 14U);
    EXPECT_EQ(made.spots.size(), 6U);
    EXPECT_TRUE(made.demonstration);
}

TEST(Demonstration, HasAPlantOfEachDifficulty)
{
    const auto plants = demonstration({.today = kToday}).value().household.plants;
    EXPECT_TRUE(std::ranges::any_of(plants, &Plant::sulks));
    EXPECT_TRUE(std::ranges::any_of(plants, &Plant::hazardous));
    EXPECT_TRUE(std::ranges::any_of(plants, &Plant::must_dry));
    EXPECT_TRUE(
        std::ranges::any_of(plants, [](const Plant& plant) { return plant.pinned_spot.has_value(); }));
}

TEST(Demonstration, MovesTenderPlantsOutAndInEachYear)
{
    const auto made = demonstration({.today = kToday}).value();
    const auto moves = std::ranges::count_if(
        made.history, [](const Event& event) { return event.plant == 5 && event.kind == EventKind::Moved; });
    EXPECT_EQ(moves, 5); // The beginning, and out and in twice.
}

TEST(Demonstration, LiesInTheNamedHemisphere)
{
    EXPECT_GT(demonstration({.today = kToday}).value().household.place.position.latitude.degrees(), 0.0);
    EXPECT_LT(demonstration({.today = kToday, .hemisphere = Hemisphere::South})
                  .value()
                  .household.place.position.latitude.degrees(),
              0.0);
}

TEST(Demonstration, DiffersByItsSeed)
{
    const auto one = demonstration({.today = kToday, .plants = 60, .spots = 20, .seed = 1}).value();
    const auto other = demonstration({.today = kToday, .plants = 60, .spots = 20, .seed = 2}).value();
    EXPECT_NE(one.history, other.history);
}

TEST(Demonstration, DrawsTheSameOnEveryMachine)
{
    // A snapshot of our own output: it guards the mappings from random numbers, nothing else.
    const auto made = demonstration({.today = kToday, .plants = 60, .spots = 20, .seed = 1}).value();
    EXPECT_EQ(made.household.plants.front().name, "Corn plant");
    EXPECT_EQ(made.history.size(), 9036U);
}

struct RefusedCase {
    const char* name;
    DemonstrationOptions options;
};
void PrintTo(const RefusedCase& row, std::ostream* out)
{
    *out << row.name;
}
class RefusedDemonstration : public testing::TestWithParam<RefusedCase> {};

TEST_P(RefusedDemonstration, SaysWhatItMayHave)
{
    const auto made = demonstration(GetParam().options);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::OutOfRange);
    EXPECT_TRUE(made.error().message.starts_with("a demonstration "));
}

INSTANTIATE_TEST_SUITE_P(Edges, RefusedDemonstration,
                         testing::Values(RefusedCase{"NoPlants", {.today = kToday, .plants = 0}},
                                         RefusedCase{"TooManyPlants", {.today = kToday, .plants = 5001}},
                                         RefusedCase{"OneSpot", {.today = kToday, .spots = 1}},
                                         RefusedCase{"NegativeYears", {.today = kToday, .years = -1}},
                                         RefusedCase{"LongAgo", {.today = calendar::Date{1910, 1, 1}}}),
                         [](const auto& row) { return std::string{row.param.name}; });

} // namespace
} // namespace lathhouse::home
