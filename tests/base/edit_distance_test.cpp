#include "core/base/edit_distance.h"

#include <gtest/gtest.h>

namespace lathhouse {
namespace {

TEST(EditDistance, IsNothingBetweenEqualTexts)
{
    EXPECT_EQ(edit_distance("fuchsia", "fuchsia"), 0U);
    EXPECT_EQ(edit_distance("", ""), 0U);
}

TEST(EditDistance, CountsInsertedRemovedAndChangedLetters)
{
    EXPECT_EQ(edit_distance("", "fig"), 3U);
    EXPECT_EQ(edit_distance("kitten", "sitting"), 3U);
}

TEST(EditDistance, CountsSwappedNeighboursOnce)
{
    EXPECT_EQ(edit_distance("fushcia", "fuschia"), 1U);
}

TEST(EditDistance, IsTheSameBothWays)
{
    EXPECT_EQ(edit_distance("basil", "bay laurel"), edit_distance("bay laurel", "basil"));
}

} // namespace
} // namespace lathhouse
