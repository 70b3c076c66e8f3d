#include "app/models/free_place.h"

#include <gtest/gtest.h>

namespace lathhouse::models {
namespace {

TEST(FileName, IsOfLettersAndDigitsWithADashBetween)
{
    EXPECT_EQ(file_name("Sven’s  balcony (west) 2", "household"), QStringLiteral("sven-s-balcony-west-2"));
    EXPECT_EQ(file_name("Große Terrasse", "household"), QStringLiteral("große-terrasse"));
}

TEST(FileName, NeverBeginsLikeAnOption)
{
    EXPECT_EQ(file_name("(Balcony)", "household"), QStringLiteral("balcony"));
    EXPECT_EQ(file_name("--", "household"), QStringLiteral("household"));
    EXPECT_EQ(file_name("", "plant"), QStringLiteral("plant"));
}

} // namespace
} // namespace lathhouse::models
