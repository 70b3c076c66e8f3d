#include "core/climate/frost_dates.h"

#include "core/climate/sampling_interval.h"

#include <cmath>

namespace lathhouse::climate {

namespace {

enum class End { Last, First };

int element_of(End end, double percent, int seasons)
{
    return end == End::Last ? element_of_last(percent, seasons) : element_of_first(percent, seasons);
}

void add_intervals(EndDates& ends, End end)
{
    if (!ends.years || *ends.years < 1) {
        return;
    }
    for (const auto& [percent, day] : ends.dates) {
        const auto fraction = Probability::clamped(percent / 100.0);
        const RankInterval ranks =
            interval_of_quantile(*ends.years, end == End::Last ? fraction.complement() : fraction);
        DateInterval interval{std::nullopt, std::nullopt, ranks.coverage};
        // The known elements nearest to the limits, from outside.
        int nearest_lower = 0;
        int nearest_upper = *ends.years + 1;
        for (const auto& [other, known] : ends.dates) {
            const int element = element_of(end, other, *ends.years);
            if (ranks.lower && element <= *ranks.lower && element > nearest_lower) {
                nearest_lower = element;
                interval.from = known;
            }
            if (ranks.upper && element >= *ranks.upper && element < nearest_upper) {
                nearest_upper = element;
                interval.to = known;
            }
        }
        ends.intervals.insert_or_assign(percent, interval);
    }
}

} // namespace

std::vector<double> standard_percents()
{
    return {10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0};
}

int element_of_last(double percent, int seasons)
{
    // 0.3 x 10 must not be rounded to the other side of 3.
    return seasons - static_cast<int>(std::floor(percent * seasons / 100.0 + 1e-9));
}

int element_of_first(double percent, int seasons)
{
    return static_cast<int>(std::ceil(percent * seasons / 100.0 - 1e-9));
}

void add_intervals(ThresholdDates& dates)
{
    add_intervals(dates.last, End::Last);
    add_intervals(dates.first, End::First);
}

} // namespace lathhouse::climate
