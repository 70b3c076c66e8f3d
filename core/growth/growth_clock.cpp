#include "core/growth/growth_clock.h"

#include "core/growth/student_fit.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>

namespace lathhouse::growth {
namespace {

constexpr double kLeastSlope = 0.005;   // A week, of the companions' line.
constexpr double kLeastAtEvent = 0.003; // A week.
constexpr double kUsualBend = 0.05;     // Of the slope, a week.
constexpr double kSlowest = 0.05;       // Of the slope at the event.

} // namespace

GrowthClock GrowthClock::calendar()
{
    return {};
}

GrowthClock GrowthClock::of_days(calendar::Date from, std::vector<double> steps)
{
    assert(!steps.empty());
    GrowthClock clock;
    clock.from_ = from;
    double sum = 0.0;
    for (auto& step : steps) {
        assert(step >= 0.0);
        sum += step;
        step = sum;
    }
    clock.sums_ = std::move(steps);
    return clock;
}

double GrowthClock::at(calendar::Date date) const
{
    const int day = calendar::days_between(from_, date);
    const int count = static_cast<int>(sums_.size());
    if (day < 0) {
        return day * sums_.front() + sums_.front();
    }
    if (day >= count) {
        const double last = count > 1 ? sums_.back() - sums_[sums_.size() - 2] : sums_.back();
        return sums_.back() + (day - count + 1) * last;
    }
    return sums_[static_cast<std::size_t>(day)];
}

double GrowthClock::days_between(calendar::Date from, calendar::Date to) const
{
    return is_calendar() ? calendar::days_between(from, to) : at(to) - at(from);
}

std::optional<SparedClock> SparedClock::of(SeriesKind kind,
                                           std::span<const std::vector<SeriesReading>> companions,
                                           calendar::Date event, const GrowthClock& base)
{
    struct OfDate {
        double sum = 0.0;
        double ratio = 0.0;
        int count = 0;
    };
    std::map<calendar::Date, OfDate> dates;
    for (const auto& companion : companions) {
        // Companions differ in size; each about its own mean, so that one without a reading makes no step.
        double mean = 0.0;
        for (const auto& reading : companion) {
            mean += transformed(kind, reading.value) / static_cast<double>(companion.size());
        }
        for (const auto& reading : companion) {
            auto& of = dates[reading.date];
            of.sum += transformed(kind, reading.value) - mean;
            of.ratio += spread_ratio(kind, reading.value);
            ++of.count;
        }
    }
    if (dates.size() < kLeastOfSpared) {
        return std::nullopt;
    }
    std::vector<FitRow> rows;
    for (const auto& [date, of] : dates) {
        const double weeks = base.days_between(event, date) / kDaysOfWeek;
        rows.push_back({weeks, {1.0, weeks}, of.sum / of.count, of.ratio / of.count});
    }
    if (!(rows.back().weeks > rows.front().weeks)) {
        return std::nullopt;
    }
    const double usual = usual_spread(kind) / std::sqrt(static_cast<double>(companions.size()));
    const Prior nothing;
    const auto line = student_fit(rows, std::vector{nothing, nothing}, usual);
    const double slope = std::max(line.parameters[1], kLeastSlope);
    for (auto& row : rows) {
        row.x[2] = row.weeks * row.weeks;
    }
    const double bend = kUsualBend * slope;
    const auto parabola = student_fit(rows, std::vector{nothing, nothing, Prior{0.0, 1.0 / (bend * bend)}}, usual);
    SparedClock clock;
    clock.slope_ = std::max(parabola.parameters[1], kLeastAtEvent);
    clock.bend_ = parabola.parameters[2];
    return clock;
}

double SparedClock::weeks_of(double base_weeks) const
{
    // The slope relative to that at the event is 1 + steepening x t down to kSlowest, which it reaches at `edge`.
    const double steepening = 2.0 * bend_ / slope_;
    const auto bent = [&](double t) { return t + steepening * t * t / 2.0; };
    if (1.0 + steepening * base_weeks >= kSlowest) {
        return bent(base_weeks);
    }
    const double edge = (kSlowest - 1.0) / steepening;
    return bent(edge) + kSlowest * (base_weeks - edge);
}

} // namespace lathhouse::growth
