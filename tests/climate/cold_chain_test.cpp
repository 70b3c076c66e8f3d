#include "core/climate/cold_chain.h"

#include "core/climate/normal.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <random>
#include <vector>

namespace lathhouse::climate {
namespace {

/// A winter's worth of barriers: a wave that is far below the chain in summer.
BarrierPaths wave(std::size_t nights, std::size_t cases)
{
    BarrierPaths paths{nights, cases};
    for (std::size_t k = 0; k < nights; ++k) {
        for (std::size_t c = 0; c < cases; ++c) {
            const double angle = 6.283185307 * static_cast<double>(k) / static_cast<double>(nights);
            paths.at(k, c) = static_cast<float>(-3.9 - 2.6 * std::cos(angle) + 0.1 * static_cast<double>(c));
        }
    }
    return paths;
}

TEST(ColdChain, OneNightIsTheNormalDistribution)
{
    BarrierPaths paths{1, 3};
    paths.at(0, 0) = -1.0F;
    paths.at(0, 1) = 0.013F;
    paths.at(0, 2) = 2.0F;
    const BarrierPaths none = none_so_far(paths);
    // Within a state of width 0.1 the mass is cut evenly: off by at most width^2 / 8 x steepest slope 0.24.
    EXPECT_NEAR(none.at(0, 0), normal_below(1.0), 3.1e-4);
    EXPECT_NEAR(none.at(0, 1), normal_below(-0.013), 3.1e-4);
    EXPECT_NEAR(none.at(0, 2), normal_below(-2.0), 3.1e-4);
}

/// P(X > a, Y > a) of two normals with correlation 0.7, by Simpson's rule over X.
double two_nights_above(double a)
{
    constexpr int kSteps = 20000;
    const double h = (a + 9.0 - a) / kSteps;
    double sum = 0.0;
    for (int i = 0; i <= kSteps; ++i) {
        const double x = a + h * i;
        const double factor = i == 0 || i == kSteps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
        sum += factor * normal_density(x) * normal_below((0.7 * x - a) / std::sqrt(0.51));
    }
    return sum * h / 3.0;
}

TEST(ColdChain, TwoNightsAreTheBivariateNormal)
{
    for (const double a : {-2.0, -1.03, -0.4, 0.77}) {
        BarrierPaths paths{2, 1};
        paths.at(0, 0) = static_cast<float>(a);
        paths.at(1, 0) = static_cast<float>(a);
        EXPECT_NEAR(none_so_far(paths).at(1, 0), two_nights_above(a), 6e-4) << "barrier " << a;
    }
}

TEST(ColdChain, AgreesWithSimulatedSeasons)
{
    constexpr std::size_t kNights = 366;
    constexpr int kSeasons = 20000;
    const BarrierPaths paths = wave(kNights, 3);
    const BarrierPaths none = none_so_far(paths);
    std::mt19937_64 random{20240229};
    std::normal_distribution<double> normal;
    std::vector<std::array<int, 3>> without(kNights, {0, 0, 0});
    for (int season = 0; season < kSeasons; ++season) {
        double z = normal(random);
        std::array<bool, 3> cold{};
        for (std::size_t k = 0; k < kNights; ++k) {
            z = k == 0 ? z : 0.7 * z + std::sqrt(0.51) * normal(random);
            for (std::size_t c = 0; c < 3; ++c) {
                cold[c] = cold[c] || z <= static_cast<double>(paths.at(k, c));
                without[k][c] += cold[c] ? 0 : 1;
            }
        }
    }
    for (std::size_t k = 0; k < kNights; ++k) {
        for (std::size_t c = 0; c < 3; ++c) {
            const double share = static_cast<double>(without[k][c]) / kSeasons;
            const double error = std::sqrt(std::max(share * (1.0 - share), 1e-4) / kSeasons);
            // Four standard errors of the simulation and the grid's own 0.0015.
            EXPECT_NEAR(none.at(k, c), share, 4.0 * error + 0.0015) << "night " << k << " case " << c;
        }
    }
}

/// The same recursion in double precision on a grid as fine as asked, without any short cut.
std::vector<double> plain_recursion(const BarrierPaths& paths, double step)
{
    const auto centre_of_mass = [step](double middle) {
        const double low = middle - step / 2;
        const double high = middle + step / 2;
        return (normal_density(low) - normal_density(high)) / (normal_below(high) - normal_below(low));
    };
    const double spread = std::sqrt(0.51);
    const auto states = static_cast<std::size_t>(std::lround(11.0 / step)) + 1;
    const auto middle = [step](std::size_t i) { return -5.5 + step * static_cast<double>(i); };
    std::vector<double> now(states);
    std::vector<std::vector<double>> table(states, std::vector<double>(states));
    for (std::size_t i = 0; i < states; ++i) {
        now[i] = normal_below(middle(i) + step / 2) - normal_below(middle(i) - step / 2);
        const double from = 0.7 * centre_of_mass(middle(i));
        for (std::size_t j = 0; j < states; ++j) {
            table[i][j] = normal_below((middle(j) + step / 2 - from) / spread) -
                          normal_below((middle(j) - step / 2 - from) / spread);
        }
    }
    std::vector<double> result;
    for (std::size_t k = 0; k < paths.nights(); ++k) {
        if (k > 0) {
            std::vector<double> next(states, 0.0);
            for (std::size_t i = 0; i < states; ++i) {
                if (now[i] < 1e-15) {
                    continue;
                }
                for (std::size_t j = 0; j < states; ++j) {
                    next[j] += now[i] * table[i][j];
                }
            }
            now = next;
        }
        double sum = 0.0;
        for (std::size_t i = 0; i < states; ++i) {
            now[i] *=
                std::clamp((middle(i) + step / 2 - static_cast<double>(paths.at(k, 0))) / step, 0.0, 1.0);
            sum += now[i];
        }
        result.push_back(sum);
    }
    return result;
}

TEST(ColdChain, ShortCutsChangeNothing)
{
    const BarrierPaths paths = wave(366, 1);
    const BarrierPaths none = none_so_far(paths);
    const std::vector<double> plain = plain_recursion(paths, 0.1);
    for (std::size_t k = 0; k < 366; ++k) {
        EXPECT_NEAR(none.at(k, 0), plain[k], 2e-5) << "night " << k;
    }
}

TEST(ColdChain, AFinerGridChangesLittle)
{
    const BarrierPaths paths = wave(366, 1);
    const BarrierPaths none = none_so_far(paths);
    const std::vector<double> fine = plain_recursion(paths, 0.025);
    double worst = 0.0;
    for (std::size_t k = 0; k < 366; ++k) {
        worst = std::max(worst, std::abs(static_cast<double>(none.at(k, 0)) - fine[k]));
    }
    std::printf("worst difference to a grid of 0.025: %.5f\n", worst);
    EXPECT_LE(worst, 0.0015);
}

TEST(ColdChain, CasesDoNotTouchOneAnother)
{
    const BarrierPaths many = wave(366, 15);
    const BarrierPaths together = none_so_far(many);
    for (std::size_t c = 0; c < 15; ++c) {
        BarrierPaths alone{366, 1};
        for (std::size_t k = 0; k < 366; ++k) {
            alone.at(k, 0) = many.at(k, c);
        }
        const BarrierPaths single = none_so_far(alone);
        for (std::size_t k = 0; k < 366; k += 5) {
            EXPECT_NEAR(together.at(k, c), single.at(k, 0), 1e-5) << "case " << c << " night " << k;
        }
    }
}

TEST(ColdChain, NeverColdIsCertainlyNone)
{
    const BarrierPaths none = none_so_far(BarrierPaths{30, 2});
    EXPECT_EQ(none.at(29, 0), 1.0F);
    EXPECT_EQ(none.at(0, 1), 1.0F);
}

TEST(ColdChain, AlwaysColdIsNeverNone)
{
    BarrierPaths paths{10, 1};
    for (std::size_t k = 0; k < 10; ++k) {
        paths.at(k, 0) = 50.0F;
    }
    EXPECT_EQ(none_so_far(paths).at(0, 0), 0.0F);
    EXPECT_EQ(none_so_far(paths).at(9, 0), 0.0F);
}

TEST(ColdChain, BackwardsGivesTheSameWhole)
{
    const BarrierPaths paths = wave(366, 4);
    for (std::size_t c = 0; c < 4; ++c) {
        EXPECT_NEAR(none_so_far(paths).at(365, c), none_so_far(paths.reversed()).at(365, c), 2e-4);
    }
}

TEST(ColdChain, MorePersistenceMeansFewerSeparateChances)
{
    BarrierPaths paths{60, 1};
    for (std::size_t night = 0; night < 60; ++night) {
        paths.at(night, 0) = -1.5F;
    }
    float before = 0.0F;
    for (double persistence = kLeastPersistence; persistence <= kMostPersistence + 1e-9;
         persistence += 0.02) {
        const float none = none_so_far(paths, persistence).at(59, 0);
        EXPECT_GT(none, before) << persistence;
        before = none;
    }
    // Of two nights the chance is that of two normal values with that correlation. Independent sum: the
    // second night's chance over the first night's values.
    double both_above = 0.0;
    constexpr double kPersistence = 0.76;
    for (double z = -1.5 + 0.0005; z < 8.0; z += 0.001) {
        const double second = (-1.5 - kPersistence * z) / std::sqrt(1.0 - kPersistence * kPersistence);
        both_above += 0.001 * std::exp(-0.5 * z * z) / std::sqrt(2.0 * 3.14159265358979) * 0.5 *
                      std::erfc(second / std::sqrt(2.0));
    }
    EXPECT_NEAR(none_so_far(paths, kPersistence).at(1, 0), both_above, 6e-4);
}

} // namespace
} // namespace lathhouse::climate
