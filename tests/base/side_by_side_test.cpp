#include "core/base/side_by_side.h"

#include <gtest/gtest.h>

namespace lathhouse {
namespace {

TEST(SideBySide, EveryIndexIsWorkedOnOnce)
{
    for (const std::size_t count : {0U, 1U, 2U, 1000U}) {
        std::vector<int> times(count, 0);
        side_by_side(count, [&](std::size_t index) { ++times[index]; });
        EXPECT_EQ(times, std::vector<int>(count, 1)) << count;
    }
}

} // namespace
} // namespace lathhouse
