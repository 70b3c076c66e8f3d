#include "core/plan/watering_habit.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
namespace {

constexpr std::size_t kLatest = 12;
constexpr double kSpreadOfInterval = 0.35;
constexpr double kSpreadOfPlants = 0.5;
constexpr double kFarthest = 5.0;

} // namespace

WateringHabit learn_habit(std::span<const double> ratios)
{
    const auto latest = ratios.last(std::min(ratios.size(), kLatest));
    double sum = 0.0;
    int count = 0;
    for (const double ratio : latest) {
        if (ratio > 0.0 && std::isfinite(ratio)) {
            sum += std::clamp(std::log(ratio), -std::log(kFarthest), std::log(kFarthest));
            ++count;
        }
    }
    const double prior = (kSpreadOfInterval / kSpreadOfPlants) * (kSpreadOfInterval / kSpreadOfPlants);
    return {count, std::exp(sum / (count + prior)), kSpreadOfInterval / std::sqrt(count + prior)};
}

} // namespace lathhouse::plan
