#include "core/climate/chain_by_night.h"

#include "core/climate/normal.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace lathhouse::climate {
namespace {

BarrierPaths level(std::size_t nights, float barrier)
{
    BarrierPaths paths{nights, 1};
    for (std::size_t night = 0; night < nights; ++night) {
        paths.at(night, 0) = barrier;
    }
    return paths;
}

/// Two normal values with a correlation, both above a: Simpson's rule over the first.
double both_above(double a, double correlation)
{
    constexpr int kSteps = 4000;
    const double h = 9.0 / kSteps;
    double sum = 0.0;
    for (int i = 0; i <= kSteps; ++i) {
        const double x = a + h * i;
        const double factor = i == 0 || i == kSteps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
        sum += factor * normal_density(x) *
               normal_below((correlation * x - a) / std::sqrt(1.0 - correlation * correlation));
    }
    return sum * h / 3.0;
}

TEST(ChainByNight, IsTheCommonChainWhereAllNightsAreAlike)
{
    const BarrierPaths paths = level(90, -1.7F);
    const std::vector<double> alike(90, 0.74);
    const BarrierPaths by_night = none_so_far(paths, alike);
    const BarrierPaths common = none_so_far(paths, 0.74);
    for (std::size_t night = 0; night < 90; ++night) {
        EXPECT_EQ(by_night.at(night, 0), common.at(night, 0)) << night;
    }
}

TEST(ChainByNight, JoinsTwoNightsByThePersistenceOfTheSecond)
{
    for (const double persistence : {0.60, 0.68, 0.77, 0.86}) {
        const std::vector<double> of_nights{0.86, persistence}; // That of the first night joins nothing.
        EXPECT_NEAR(none_so_far(level(2, -1.2F), of_nights).at(1, 0), both_above(-1.2, persistence), 6e-4)
            << persistence;
    }
}

TEST(ChainByNight, AgreesWithSimulatedNights)
{
    constexpr std::size_t kNights = 40;
    constexpr int kRuns = 40000;
    BarrierPaths paths{kNights, 1};
    std::vector<double> persistence(kNights);
    for (std::size_t night = 0; night < kNights; ++night) {
        const double across = static_cast<double>(night) / kNights;
        paths.at(night, 0) = static_cast<float>(-3.0 + 2.0 * across);
        persistence[night] = 0.84 - 0.2 * across;
    }
    std::mt19937_64 random{20251126};
    std::normal_distribution<double> normal;
    int without = 0;
    for (int run = 0; run < kRuns; ++run) {
        double z = 0.0;
        bool cold = false;
        for (std::size_t night = 0; night < kNights; ++night) {
            const double r = std::round(100.0 * persistence[night]) / 100.0;
            z = night == 0 ? normal(random) : r * z + std::sqrt(1.0 - r * r) * normal(random);
            cold = cold || z <= static_cast<double>(paths.at(night, 0));
        }
        without += cold ? 0 : 1;
    }
    const double share = static_cast<double>(without) / kRuns;
    EXPECT_NEAR(none_so_far(paths, persistence).at(kNights - 1, 0), share,
                0.0015 + 3.0 * 0.5 / std::sqrt(kRuns));
}

TEST(ChainByNight, IsTheSameBackwardsInTime)
{
    BarrierPaths paths{30, 1};
    std::vector<double> joins(30);
    for (std::size_t night = 0; night < 30; ++night) {
        paths.at(night, 0) = static_cast<float>(-2.5 + 0.04 * static_cast<double>(night));
        joins[night] = 0.83 - 0.005 * static_cast<double>(night);
    }
    // What joins night k to the one before it joins, backwards, the one before it to night k.
    std::vector<double> backwards(30, 0.70);
    for (std::size_t night = 1; night < 30; ++night) {
        backwards[night] = joins[30 - night];
    }
    EXPECT_NEAR(none_so_far(paths, joins).at(29, 0), none_so_far(paths.reversed(), backwards).at(29, 0),
                2e-4);
}

} // namespace
} // namespace lathhouse::climate
