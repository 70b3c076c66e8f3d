#include "core/plan/emergence.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "tests/plan/short_names.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

namespace lathhouse::plan {
namespace {

Celsius degrees(double value)
{
    return Celsius::from_degrees(value);
}

CsvTable published()
{
    return CsvTable::read(std::filesystem::path{LATHHOUSE_TEST_DATA} / "plants/emergence_days.csv").value();
}

/// Every figure of the published table, at its own temperature.
TEST(Emergence, IsAsCountedByHarringtonAndMinges)
{
    const auto table = published();
    int figures = 0;
    for (std::size_t row = 0; row < table.row_count(); ++row) {
        for (std::size_t step = 0; step < 9; ++step) {
            const auto written = table.at(row, step + 1);
            const auto rate = emergence_rate(seed_kind(table.at(row, 0)), degrees(5.0 * static_cast<double>(step)));
            if (written == "none") {
                EXPECT_EQ(rate.slow, 0.0) << table.at(row, 0) << " at " << 5 * step;
            } else if (!written.empty()) {
                EXPECT_NEAR(1.0 / rate.slow, parse_number(written).value(), 1e-9) << table.at(row, 0) << " at " << 5 * step;
                EXPECT_EQ(rate.basis, EmergenceBasis::Table);
                ++figures;
            }
        }
    }
    EXPECT_EQ(figures, 135);
}

TEST(Emergence, RisesSmoothlyBetweenTheCountedTemperatures)
{
    const auto& tomato = seed_kind("tomato");
    // Half way between 14 days at 15 C and 8 days at 20 C in the rate: 2 / (1/14 + 1/8) = 10.18 days.
    EXPECT_NEAR(1.0 / emergence_rate(tomato, degrees(17.5)).slow, 2.0 / (1.0 / 14 + 1.0 / 8), 1e-9);
    double before = 0.0;
    for (double t = 5.0; t <= 25.0; t += 0.25) {
        const double now = emergence_rate(tomato, degrees(t)).slow;
        EXPECT_GE(now, before - 1e-12) << t;
        before = now;
    }
}

/// Brewster's onion figure, an independent one: 80 degree days above 2.5 C to half germination. Emergence from 13 mm
/// takes longer than germination, so the table must be slower, and not by more than twice.
TEST(Emergence, OnionIsSlowerToEmergeThanToGerminate)
{
    for (const double t : {10.0, 15.0, 20.0}) {
        const double germination = 80.0 / (t - 2.5);
        const double emergence = 1.0 / emergence_rate(seed_kind("onion"), degrees(t)).slow;
        EXPECT_GT(emergence, germination) << t;
        EXPECT_LT(emergence, 2.0 * germination) << t;
    }
}

TEST(Emergence, ThermalTimeAnswersOnlyWhereTheFitMayBeUsed)
{
    // Tomato: nothing at 5 C, 43 days at 10 C; the fit (102 degree days above 7.6 C) between.
    EXPECT_EQ(emergence_rate(seed_kind("tomato"), degrees(9.0)).basis, EmergenceBasis::ThermalTime);
    EXPECT_NEAR(emergence_rate(seed_kind("tomato"), degrees(9.0)).slow, 1.4 / 102.0, 1e-9);
    EXPECT_EQ(emergence_rate(seed_kind("tomato"), degrees(7.0)).slow, 0.0);
    // Okra's fit is weak: the table alone, in a straight line from nothing at 10 C to 27 days at 15 C.
    EXPECT_EQ(emergence_rate(seed_kind("okra"), degrees(12.5)).basis, EmergenceBasis::Table);
    EXPECT_NEAR(emergence_rate(seed_kind("okra"), degrees(12.5)).slow, 0.5 / 27.0, 1e-9);
}

/// Joly et al. (2013): half emergence after 89 degree days above 5.5 C in moist soil, about seven days in their field
/// in June.
TEST(Emergence, CalendulaFollowsItsMoistThermalTime)
{
    const auto rate = emergence_rate(seed_kind("calendula"), degrees(18.2));
    EXPECT_EQ(rate.basis, EmergenceBasis::ThermalTime);
    EXPECT_NEAR(1.0 / rate.slow, 7.0, 0.1);
}

TEST(Emergence, KindsWithoutATableHaveTheirUsualDaysInTheBestRange)
{
    const auto days = emergence_days(seed_kind("zinnia"), degrees(23.0));
    ASSERT_TRUE(days);
    EXPECT_EQ(days->from, 5);
    EXPECT_EQ(days->to, 7);
    EXPECT_EQ(days->basis, EmergenceBasis::TypicalDays);
    EXPECT_FALSE(emergence_days(seed_kind("zinnia"), degrees(12.0)));
    EXPECT_GT(emergence_days(seed_kind("zinnia"), degrees(18.0))->to, 7);
}

TEST(Emergence, RoomsAreNotKnownToTwoDegrees)
{
    const auto days = emergence_days(seed_kind("tomato"), degrees(20.0)).value();
    EXPECT_EQ(days.from, 7); // At 22 C.
    EXPECT_EQ(days.to, 10);  // At 18 C: 9.6 days.
}

/// How good the estimate of cool mixes is, measured where the truth is known: the 24 counted kinds with their tables
/// hidden and their typical days from the warm end only. Printed; the limit is what docs/methods/sowing.md says.
TEST(Emergence, EstimateForKindsWithoutATableErrsByWhatTheMethodsSay)
{
    const auto table = published();
    double sum = 0.0;
    int count = 0;
    for (std::size_t row = 0; row < table.row_count(); ++row) {
        auto hidden = seed_kind(table.at(row, 0));
        hidden.rate_at = {};
        hidden.thermal_time.reset();
        for (std::size_t step = 2; step < 6; ++step) {
            const double t = 5.0 * static_cast<double>(step);
            const auto truth = parse_number(table.at(row, step + 1));
            const auto rate = emergence_rate(hidden, degrees(t));
            if (truth && rate.slow > 0.0 && degrees(t) >= hidden.germ_least) {
                sum += std::abs(std::log(2.0 / (rate.quick + rate.slow) / *truth));
                ++count;
            }
        }
    }
    ASSERT_GT(count, 40);
    std::printf("typical days against %d counts: off by a factor of %.2f on average\n", count, std::exp(sum / count));
    EXPECT_LT(std::exp(sum / count), 2.0);
}

TEST(Emergence, HalfHaveComeByTheMiddleDayAndNoneBeforeSowing)
{
    EXPECT_NEAR(share_emerged(seed_kind("tomato"), degrees(20.0), 8), 0.5, 1e-9);
    EXPECT_EQ(share_emerged(seed_kind("tomato"), degrees(20.0), 0), 0.0);
    EXPECT_GT(share_emerged(seed_kind("tomato"), degrees(20.0), 16), 0.99);
    EXPECT_EQ(share_emerged(seed_kind("tomato"), degrees(4.0), 30), 0.0);
}

TEST(Emergence, IsNothingOutsideTheTable)
{
    for (const double mix : {-3.0, 60.0}) {
        EXPECT_EQ(emergence_rate(seed_kind("lettuce"), degrees(mix)).slow, 0.0) << mix;
        EXPECT_EQ(emergence_rate(seed_kind("lettuce"), degrees(mix)).quick, 0.0) << mix;
    }
}

} // namespace
} // namespace lathhouse::plan
