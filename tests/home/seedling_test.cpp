#include "core/home/seedling.h"

#include "core/home/lineage.h"
#include "core/home/seed_lot.h"
#include "core/plants/plant_kind.h"

#include <gtest/gtest.h>

#include <set>

namespace lathhouse::home {
namespace {

const plants::SeedKind& seed(const char* name)
{
    return *plants::SeedReference::built_in().find(name).value();
}

TEST(Seedlings, OfEveryKindHaveLinesInTheirOrderAndStandNowhere)
{
    int known = 0;
    for (const auto& kind : plants::SeedReference::built_in().kinds()) {
        const auto plant = make_seedling(kind, "Young");
        known += plants::PlantReference::built_in().find(kind.botanical_name) ? 1 : 0;
        EXPECT_EQ(plant.name, "Young");
        EXPECT_LE(plant.lines.lethal, plant.lines.damage_begins) << kind.name();
        EXPECT_LE(plant.lines.damage_begins, plant.lines.safe_night) << kind.name();
        EXPECT_GE(plant.lines.damage_begins, kind.damaging_night()) << kind.name(); // Never bolder than the kind's own line.
        EXPECT_LE(plant.light_to_survive, plant.light_to_thrive) << kind.name();
        EXPECT_TRUE(plant.wants_open_air);
        EXPECT_EQ(plant.pot_kilograms, 1.0);
        EXPECT_FALSE(plant.spot);
        EXPECT_FALSE(plant.pinned_spot);
    }
    EXPECT_GT(known, 0); // Both ways to figures are gone.
    EXPECT_LT(known, static_cast<int>(plants::SeedReference::built_in().kinds().size()));
}

TEST(Seedlings, OfATrayThatIsNotThereAreNone)
{
    const auto none = seedlings_of(SeedBook{}, 7, 3);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::NotFound);
}

TEST(Seedlings, OfNightshadesAreHazardousAndOfSaladsAreNot)
{
    EXPECT_TRUE(make_seedling(seed("Tomato"), "Tomato").hazardous);
    EXPECT_TRUE(make_seedling(seed("Eggplant"), "Eggplant").hazardous);
    EXPECT_FALSE(make_seedling(seed("Lettuce"), "Lettuce").hazardous);
}

TEST(Seedlings, OfUnknownPlantsDieBelowTheirOwnLineHardyOnesFartherBelow)
{
    int unknown = 0;
    for (const auto& kind : plants::SeedReference::built_in().kinds()) {
        if (plants::PlantReference::built_in().find(kind.botanical_name)) {
            continue;
        }
        ++unknown;
        const auto plant = make_seedling(kind, "x");
        EXPECT_EQ(plant.kind, kind.botanical_name);
        EXPECT_EQ(plant.lines.safe_night, kind.safe_night) << kind.name();
        EXPECT_NEAR((plant.lines.damage_begins - plant.lines.lethal).kelvins(), kind.frost == plants::FrostClass::Hardy ? 4.0 : 2.0,
                    1e-9)
            << kind.name();
    }
    EXPECT_GT(unknown, 0);
}

TEST(Seedlings, AreYoungUntilTheirCropsWeeksIndoorsAreOver)
{
    SeedBook book;
    book.lots = {{1, "Hot ones", "Capsicum annuum", {}, {}, {}, ""}, {2, "Roots", "Daucus carota", {}, {}, {}, ""}};
    book.trays = {{1, 1, calendar::Date{2027, 2, 9}, 12, {}, {}, ""}, {2, 2, calendar::Date{2027, 2, 9}, 12, {}, {}, ""}};
    book.potted = {{1, {7}}, {2, {8}}};
    Household household{.name = "Test",
                        .demonstration = false,
                        .place = {"Here", {Latitude::literal(48.0), Longitude::literal(20.0)}, std::nullopt, "UTC"},
                        .spots = {},
                        .plants = {}};
    for (const PlantId id : {6, 7, 8}) {
        auto plant = make_seedling(seed("Pepper"), "x");
        plant.id = id;
        household.plants.push_back(plant);
    }
    const auto young = with_young_plants(household, book);
    EXPECT_FALSE(young.plants[0].young_until); // Not out of a tray.
    EXPECT_EQ(young.plants[1].young_until, (calendar::Date{2027, 2, 9} + calendar::Days{49})); // Six to eight weeks.
    const auto old = *young.plants[1].young_until;
    EXPECT_FALSE(is_young(young.plants[0], old - calendar::Days{1}, false));
    EXPECT_TRUE(is_young(young.plants[1], old - calendar::Days{1}, true));
    EXPECT_FALSE(is_young(young.plants[1], old, true));
    EXPECT_TRUE(is_young(young.plants[1], old + calendar::Days{59}, false));
    EXPECT_FALSE(is_young(young.plants[1], old + calendar::Days{60}, false));
    ASSERT_FALSE(seed("Carrot").weeks_indoors);
    EXPECT_FALSE(young.plants[2].young_until);
}

TEST(GoneWords, AreEachTheirOwn)
{
    std::set<std::string_view> words;
    for (const auto how : {GoneHow::Died, GoneHow::GivenAway, GoneHow::Removed, GoneHow::Undone}) {
        words.insert(to_string(how));
    }
    EXPECT_EQ(words, (std::set<std::string_view>{"died", "given_away", "removed", "undone"}));
}

TEST(LotStateWords, AreEachTheirOwn)
{
    std::set<std::string_view> words;
    for (const auto state : {LotState::Good, LotState::Doubtful, LotState::PastUse, LotState::Empty}) {
        words.insert(to_string(state));
    }
    EXPECT_EQ(words, (std::set<std::string_view>{"good", "doubtful", "past_use", "empty"}));
}

} // namespace
} // namespace lathhouse::home
