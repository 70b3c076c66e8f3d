#include "core/plan/pest_clock.h"

#include "core/climate/degree_days.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

double gained(const plants::PestClock& phase, Celsius upper_limit, const DayWarmth& day)
{
    return climate::degree_days(day.low, day.high, phase.base, upper_limit,
                                climate::DegreeDayMethod::SingleSine);
}

} // namespace

std::optional<calendar::Date> clock_through(std::span<const plants::PestClock* const> phases,
                                            Celsius upper_limit, calendar::Date from,
                                            const WarmthOn& warmth)
{
    auto phase = phases.begin();
    double still = phase == phases.end() ? 0.0 : (*phase)->degree_days;
    for (int day = 1; day <= kLongestClockDays; ++day) {
        const auto date = from + calendar::Days{day};
        const auto air = warmth(date);
        // What is left of a day in which a phase ends goes to the next one, by its own base.
        double share_of_day = 1.0;
        while (phase != phases.end()) {
            const double gain = gained(**phase, upper_limit, air) * share_of_day;
            if (gain < still) {
                still -= gain;
                break;
            }
            share_of_day *= gain > 0.0 ? 1.0 - still / gain : 0.0;
            ++phase;
            still = phase == phases.end() ? 0.0 : (*phase)->degree_days;
        }
        if (phase == phases.end()) {
            return date;
        }
    }
    return std::nullopt;
}

bool clock_runs(std::span<const plants::PestClock* const> phases, Celsius upper_limit,
                const DayWarmth& day)
{
    return std::ranges::any_of(phases, [&](const plants::PestClock* phase) {
        return gained(*phase, upper_limit, day) > 0.0;
    });
}

int days_between_treatments(const plants::Pest& pest, calendar::Date from, const WarmthOn& warmth)
{
    constexpr int kLeast = 3;
    const auto* crawler = pest.clock(plants::PestStage::Crawler);
    double sum = 0.0;
    int days = 0;
    while (days < pest.gap_days) {
        sum += gained(*crawler, pest.upper_limit, warmth(from + calendar::Days{days + 1}));
        // A hair of rounding must not cost a day.
        if (sum > crawler->degree_days * (1.0 + 1e-9)) {
            break;
        }
        ++days;
    }
    return std::clamp(days, std::min(kLeast, pest.gap_days), pest.gap_days);
}

} // namespace lathhouse::plan
