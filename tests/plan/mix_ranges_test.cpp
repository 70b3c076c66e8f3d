#include "core/plan/kitchen_measures.h"
#include "core/plan/mix.h"

#include <gtest/gtest.h>

#include <array>

namespace lathhouse::plan {
namespace {

TEST(UsualNitrogen, IsOneRangeForAClass)
{
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        const auto usual = usual_nitrogen(kind.feed);
        if (kind.feed == plants::FeedClass::None) {
            EXPECT_FALSE(usual);
        } else {
            ASSERT_TRUE(usual);
            EXPECT_EQ(*usual, kind.feed_nitrogen_ppm) << kind.botanical_name;
        }
    }
}

TEST(NitrogenWarning, SpeaksWhereTheClassGetsOtherwise)
{
    const auto warning = [](double ppm) { return nitrogen_warning(plants::FeedClass::Light, ppm); };
    ASSERT_TRUE(warning(150));
    EXPECT_NE(warning(150)->find("150 ppm is too strong for a light feeder, which gets 50 to 100 ppm"),
              std::string::npos)
        << *warning(150);
    EXPECT_FALSE(warning(100));
    EXPECT_FALSE(warning(50));
    EXPECT_FALSE(warning(25)) << "half is right in a dim room";
    EXPECT_TRUE(warning(24));
    EXPECT_FALSE(nitrogen_warning(plants::FeedClass::Heavy, 200));
    EXPECT_TRUE(nitrogen_warning(plants::FeedClass::None, 50));
}

// Recipes: plant oils 0.5 to 1 percent, up to 2; soaps 1 to 2 percent (rules neem_percent, soap_percent).
TEST(PercentMix, WarnsOutsideOfWhatIsUsual)
{
    const auto water = Litres::from_litres(1.0);
    const auto warnings = [&](double percent, SprayStuff stuff) {
        return percent_mix(percent, water, stuff)->warnings;
    };
    EXPECT_TRUE(warnings(0.5, SprayStuff::Oil).empty());
    EXPECT_TRUE(warnings(1.0, SprayStuff::Oil).empty());
    ASSERT_EQ(warnings(1.5, SprayStuff::Oil).size(), 1U);
    EXPECT_NE(warnings(1.5, SprayStuff::Oil).front().find("0.5 to 1 percent"), std::string::npos);
    EXPECT_EQ(warnings(0.1, SprayStuff::Oil).size(), 1U);
    EXPECT_TRUE(warnings(1.5, SprayStuff::Soap).empty());
    EXPECT_EQ(warnings(0.5, SprayStuff::Soap).size(), 1U);
    for (const auto stuff : {SprayStuff::Oil, SprayStuff::Soap, SprayStuff::Other}) {
        ASSERT_EQ(warnings(3.0, stuff).size(), 1U);
        EXPECT_NE(warnings(3.0, stuff).front().find("burns leaves"), std::string::npos);
    }
    EXPECT_TRUE(warnings(0.1, SprayStuff::Other).empty()) << "nothing is known of it";
}

const std::array<home::Jug, 2> kJugs{
    {{"blue can", Litres::from_litres(1.5)}, {"Gießkanne", Litres::from_litres(8.0)}}};

TEST(Amount, IsNotAddedUpFromTwoNumbers)
{
    EXPECT_NEAR(read_amount("1 1/2 cups")->millilitres(), 354.88, 0.01);
    EXPECT_NEAR(read_amount("0 1/2 L")->millilitres(), 500.0, 1e-9);
    // A thousand millilitres would be taken for one, and the feed for a litre would go into it.
    for (const char* text : {"1 000 ml", "1 500 ml", "1 2 cups", "1.5 1/2 L", "2 -1/2 L", "1 3/2 L", "1 L 1/2"}) {
        EXPECT_FALSE(read_amount(text)) << text;
    }
}

TEST(Amount, MayBeAJugOfTheHousehold)
{
    const auto millilitres = [](const char* text) { return read_amount(text, kJugs)->millilitres(); };
    EXPECT_NEAR(millilitres("blue can"), 1500.0, 1e-9);
    EXPECT_NEAR(millilitres("2 Blue Can"), 3000.0, 1e-9);
    EXPECT_NEAR(millilitres("1/2 Gießkanne"), 4000.0, 1e-9);
    EXPECT_NEAR(millilitres("2 L"), 2000.0, 1e-9);
    const auto other = read_amount("red can", kJugs);
    ASSERT_FALSE(other);
    EXPECT_NE(other.error().message.find("blue can"), std::string::npos) << "what there is is named";
}

TEST(UsMeasure, IsWhatAKitchenHas)
{
    EXPECT_EQ(us_measure(Litres::from_millilitres(4.93)), "1 teaspoon");
    EXPECT_EQ(us_measure(Litres::from_millilitres(30)), "2 tablespoons");
    EXPECT_EQ(us_measure(Litres::from_litres(2.4)), "10 cups");
    EXPECT_EQ(us_measure(Litres::from_litres(7.57)), "2 gallons");
    EXPECT_TRUE(is_measure("CUP"));
    EXPECT_TRUE(is_measure("Cups")) << "a jug of that name would never be asked";
    EXPECT_FALSE(is_measure("blue can"));
}

} // namespace
} // namespace lathhouse::plan
