#include "core/plants/plant_kind.h"
#include "core/plants/seed_kind.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace lathhouse::plants {
namespace {

/// The tables' own words, in the order of the values.
template <class Value>
std::vector<std::string> words_of(int count)
{
    std::vector<std::string> words;
    for (int value = 0; value < count; ++value) {
        words.emplace_back(to_string(static_cast<Value>(value)));
    }
    return words;
}

using Words = std::vector<std::string>;

TEST(KindWords, OfPlantsAreThoseOfTheTable)
{
    EXPECT_EQ(words_of<LightClass>(4), (Words{"low", "medium", "high", "very_high"}));
    EXPECT_EQ(words_of<FeedClass>(4), (Words{"none", "light", "medium", "heavy"}));
    EXPECT_EQ(words_of<Toxicity>(5), (Words{"none", "irritant", "low", "toxic", "deadly"}));
    EXPECT_EQ(words_of<Evidence>(5), (Words{"published_number", "published_test", "published_group_figure",
                                            "published_rating", "memory"}));
}

TEST(KindWords, OfSeedsAreThoseOfTheTable)
{
    EXPECT_EQ(words_of<FrostClass>(3), (Words{"tender", "half_hardy", "hardy"}));
    EXPECT_EQ(words_of<SeedLight>(7),
              (Words{"indifferent", "light_needed", "light_helps", "dark", "dark_or_light", "cover", "light_cover"}));
    EXPECT_EQ(words_of<Photoperiod>(7), (Words{"none", "day_neutral", "short_day", "long_day", "long_day_bolts",
                                               "vernalisation", "by_cultivar"}));
    EXPECT_EQ(words_of<GerminationBasis>(4), (Words{"FSA", "NHSEED", "VAFLOWER", "MEM"}));
    EXPECT_EQ(words_of<ReadyWhat>(3), (Words{"harvest", "flower", "leaves"}));
}

TEST(KindWords, WordThatNoTableHasIsEmpty)
{
    EXPECT_EQ(to_string(static_cast<LightClass>(99)), "");
}

} // namespace
} // namespace lathhouse::plants
