#include "core/climate/sampling_interval.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <vector>

namespace lathhouse::climate {
namespace {

/// Published elements and confidence levels for the median.
///
/// Source: "Table A.7: Confidence Intervals for the Population Median", the appendix of a textbook of
/// statistics, page 656; levels in percent, rounded there to tenths.
struct MedianRow {
    int size, lower, upper;
    double percent;
};
void PrintTo(const MedianRow& row, std::ostream* out)
{
    *out << row.size << " values: " << row.lower << " to " << row.upper;
}
class MedianInterval : public testing::TestWithParam<MedianRow> {};

TEST_P(MedianInterval, HasThePublishedElementsAndLevel)
{
    const MedianRow row = GetParam();
    // Asked for a little less than the published level, the rule has to find the published elements.
    const auto found = interval_of_quantile(row.size, Probability::literal(0.5),
                                            Probability::clamped(row.percent / 100.0 - 0.001));
    EXPECT_EQ(found.lower, row.lower);
    EXPECT_EQ(found.upper, row.upper);
    EXPECT_NEAR(found.coverage.percent(), row.percent, 0.051);
}

INSTANTIATE_TEST_SUITE_P(
    TableA7, MedianInterval,
    testing::Values(MedianRow{5, 1, 5, 93.8}, MedianRow{6, 1, 6, 96.9}, MedianRow{8, 2, 7, 93.0},
                    MedianRow{10, 2, 9, 97.9}, MedianRow{10, 3, 8, 89.1}, MedianRow{12, 3, 10, 96.1},
                    MedianRow{12, 4, 9, 85.4}, MedianRow{13, 4, 10, 90.8}, MedianRow{15, 4, 12, 96.5},
                    MedianRow{17, 5, 13, 95.1}, MedianRow{18, 6, 13, 90.4}, MedianRow{19, 6, 14, 93.6},
                    MedianRow{20, 6, 15, 95.9}, MedianRow{20, 7, 14, 88.5}),
    [](const auto& row) {
        return "Of" + std::to_string(row.param.size) + "From" + std::to_string(row.param.lower);
    });

TEST(SamplingInterval, EachSideLeavesNoMoreThanItsHalf)
{
    // 27 seasons, chance 10 percent: 0.9^27 = 0.058 already lies over 5 percent, so nothing limits it below.
    const auto tenth = interval_of_quantile(27, Probability::literal(0.1));
    EXPECT_EQ(tenth.lower, std::nullopt);
    ASSERT_TRUE(tenth.upper.has_value());
    // P(B < 5) = 0.873443 and P(B < 6) = 0.952943, B binomial with 27 draws (scipy.stats.binom 1.10).
    EXPECT_EQ(*tenth.upper, 6);
    EXPECT_NEAR(tenth.coverage.fraction(), 0.952943, 1e-6);
}

TEST(SamplingInterval, IsTheSameFromBothEnds)
{
    for (const int size : {10, 19, 27, 60}) {
        for (const double chance : {0.1, 0.3, 0.5, 0.8}) {
            const auto low = interval_of_quantile(size, Probability::clamped(chance));
            const auto high = interval_of_quantile(size, Probability::clamped(1.0 - chance));
            EXPECT_EQ(low.lower.has_value(), high.upper.has_value()) << size << " " << chance;
            if (low.lower && high.upper) {
                EXPECT_EQ(*low.lower, size + 1 - *high.upper) << size << " " << chance;
            }
            EXPECT_NEAR(low.coverage.fraction(), high.coverage.fraction(), 1e-9);
        }
    }
}

TEST(SamplingInterval, CoversAKnownQuantileAsOftenAsItSays)
{
    // 20,000 samples of 27 from a uniform distribution, whose quantile at chance p is p itself.
    constexpr int kSize = 27;
    constexpr int kSamples = 20000;
    std::mt19937_64 random{11};
    std::uniform_real_distribution<double> uniform;
    for (const double chance : {0.2, 0.5, 0.9}) {
        const auto interval = interval_of_quantile(kSize, Probability::clamped(chance));
        int covered = 0;
        for (int s = 0; s < kSamples; ++s) {
            std::vector<double> sample(kSize);
            std::ranges::generate(sample, [&] { return uniform(random); });
            std::ranges::sort(sample);
            const auto element = [&](int rank) { return sample[static_cast<std::size_t>(rank - 1)]; };
            const bool above = !interval.lower || element(*interval.lower) <= chance;
            const bool below = !interval.upper || element(*interval.upper) >= chance;
            covered += above && below;
        }
        const double share = static_cast<double>(covered) / kSamples;
        EXPECT_NEAR(share, interval.coverage.fraction(), 0.008) << chance; // Four times the sampling error.
        EXPECT_GE(interval.coverage.fraction(), 0.9 - 1e-9) << chance;
    }
}

TEST(SamplingInterval, AFewValuesSetNoLimits)
{
    const auto one = interval_of_quantile(1, Probability::literal(0.5));
    EXPECT_EQ(one.lower, std::nullopt);
    EXPECT_EQ(one.upper, std::nullopt);
    EXPECT_EQ(one.coverage.fraction(), 1.0);
}

TEST(IntervalOfQuantile, OfWhatNeverOrAlwaysHappensIsTheOutermostElement)
{
    const auto level = Probability::literal(0.9);
    const auto never = interval_of_quantile(12, Probability::literal(0.0), level);
    EXPECT_EQ(never.lower, std::nullopt);
    EXPECT_EQ(never.upper, 1);
    const auto always = interval_of_quantile(12, Probability::literal(1.0), level);
    EXPECT_EQ(always.lower, 12);
    EXPECT_EQ(always.upper, std::nullopt);
}

} // namespace
} // namespace lathhouse::climate
