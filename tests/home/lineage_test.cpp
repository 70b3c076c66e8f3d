#include "core/home/lineage.h"

#include "core/home/new_plant.h"

#include <gtest/gtest.h>

#include <array>

namespace lathhouse::home {
namespace {

Plant some_parent()
{
    auto parent = make_plant(4, *plants::PlantReference::built_in().find("snake plant").value()).value();
    parent.spot = 2;
    parent.pinned_spot = 2;
    return parent;
}

TEST(Pieces, StandWhereTheirParentStandsAndArePinnedNowhere)
{
    const std::array<std::string, 2> names{"Small one", "Other one"};
    const auto pieces = pieces_of(some_parent(), names);
    ASSERT_TRUE(pieces);
    ASSERT_EQ(pieces->size(), 2U);
    EXPECT_EQ(pieces->at(0).name, "Small one");
    EXPECT_EQ(pieces->at(1).name, "Other one");
    for (const auto& piece : *pieces) {
        EXPECT_EQ(piece.spot, some_parent().spot);
        EXPECT_FALSE(piece.pinned_spot);
    }
}

TEST(Pieces, WithoutANameAreRefused)
{
    const std::array<std::string, 2> names{"Small one", "  "};
    const auto refused = pieces_of(some_parent(), names);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::WrongUsage);
}

TEST(Pieces, AreReadFromTheWordsOfTheirDivision)
{
    EXPECT_EQ(pieces_in("Small one, Other one"), (std::vector<std::string>{"Small one", "Other one"}));
    EXPECT_EQ(pieces_in(" , ,alone,"), (std::vector<std::string>{"alone"}));
    EXPECT_TRUE(pieces_in("").empty());
}

} // namespace
} // namespace lathhouse::home
