#include "core/home/jug.h"

#include <gtest/gtest.h>

#include <limits>

namespace lathhouse::home {
namespace {

TEST(Jug, HasANameAndASize)
{
    const auto jug = make_jug("  blue can ", Litres::from_litres(1.5));
    ASSERT_TRUE(jug);
    EXPECT_EQ(jug->name, "blue can");
    EXPECT_NEAR(jug->volume.litres(), 1.5, 1e-12);
    EXPECT_TRUE(make_jug("Ölkanne", Litres::from_litres(1.5)));
}

TEST(Jug, CannotBeMistakenForAnAmount)
{
    const auto litre = Litres::from_litres(1.0);
    for (const char* name : {"", "  ", "2", "can 2", "1/2", "-can"}) {
        EXPECT_FALSE(make_jug(name, litre)) << name;
    }
    EXPECT_FALSE(make_jug(std::string(41, 'a'), litre));
}

TEST(Jug, HoldsMoreThanNothing)
{
    for (const double litres : {0.0, -1.0, 1001.0, std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_FALSE(make_jug("can", Litres::from_litres(litres))) << litres;
    }
}

} // namespace
} // namespace lathhouse::home
