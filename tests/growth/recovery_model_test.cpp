#include "core/growth/recovery.h"

#include <gtest/gtest.h>

namespace lathhouse::growth {
namespace {

constexpr std::array kBefore{20.0, 20.9, 21.4, 22.8, 23.5, 24.7};
constexpr std::array kAfter{20.1, 20.0, 20.3, 20.2, 21.3, 22.2, 23.6, 24.4};

/// Weekly readings, the last before half a week before the event.
std::vector<ClockReading> readings(std::size_t after)
{
    std::vector<ClockReading> list;
    for (std::size_t at = 0; at < kBefore.size(); ++at) {
        list.push_back({static_cast<double>(at) - 5.5, kBefore[at]});
    }
    for (std::size_t at = 0; at < after; ++at) {
        list.push_back({static_cast<double>(at) + 0.5, kAfter[at]});
    }
    return list;
}

RecoveryModel model(std::size_t after)
{
    return *RecoveryModel::of(SeriesKind::Size, readings(after));
}

/// Figures of the study of the procedure, computed there by two programs in two languages.
struct Row {
    std::size_t after;
    double above_nought, above_little, above_nearly_all, weight, low, high;
    Verdict verdict;
};
void PrintTo(const Row& row, std::ostream* out)
{
    *out << row.after << " after";
}

class WorkedSeries : public testing::TestWithParam<Row> {};

TEST_P(WorkedSeries, HasTheFiguresOfTheStudy)
{
    const auto& row = GetParam();
    const auto now = model(row.after);
    EXPECT_NEAR(now.rate_scale(), 0.04221, 5e-6);
    EXPECT_NEAR(now.chance_regained_above(0.0), row.above_nought, 1e-3);
    EXPECT_NEAR(1.0 - now.chance_worsening(), row.above_nought, 1e-3);
    EXPECT_NEAR(now.chance_regained_above(0.2), row.above_little, 1e-3);
    EXPECT_NEAR(now.chance_regained_above(0.8), row.above_nearly_all, 1e-3);
    EXPECT_NEAR(now.weight_without_change(), row.weight, 1e-3);
    EXPECT_NEAR(*now.regained_at(0.95), row.low, 6e-3);
    EXPECT_NEAR(*now.regained_at(0.05), row.high, 6e-3);
    EXPECT_EQ(judge(SeriesKind::Size, now, RecoveryModel::of(SeriesKind::Size, readings(row.after - 1))).verdict,
              row.verdict);
}

INSTANTIATE_TEST_SUITE_P(
    Looks, WorkedSeries,
    testing::Values(Row{4, 0.741, 0.153, 0.000, 1.0, -0.13, 0.29, Verdict::TooEarly},
                    Row{6, 1.000, 0.992, 0.027, 0.609, 0.30, 0.75, Verdict::TooEarly},
                    Row{7, 1.000, 1.000, 0.469, 0.288, 0.48, 1.13, Verdict::Recovering},
                    Row{8, 1.000, 1.000, 0.955, 0.029, 0.81, 1.33, Verdict::Recovered}),
    [](const auto& row) { return "After" + std::to_string(row.param.after); });

} // namespace
} // namespace lathhouse::growth
