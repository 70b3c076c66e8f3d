#include "core/growth/event_window.h"

#include "core/growth/recovery_model.h"

#include <algorithm>
#include <optional>

namespace lathhouse::growth {
namespace {

/// Readings after `from`, up to and with `to`.
std::size_t between(std::span<const SeriesReading> readings, calendar::Date from, calendar::Date to)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(readings, [&](const auto& of) { return of.date > from && of.date <= to; }));
}

} // namespace

EventWindow window_of(std::span<const SeriesReading> readings, calendar::Date event,
                      std::span<const DatedEvent> others)
{
    EventWindow window;
    std::optional<DatedEvent> start;
    std::optional<DatedEvent> end;
    for (const auto& other : others) {
        if (other.date < event && between(readings, other.date, event) >= kLeastBefore) {
            if (!start || other.date > start->date) {
                start = other;
            }
        } else if (other.date > event && between(readings, event, other.date) >= kLeastAfter) {
            if (!end || other.date < end->date) {
                end = other;
            }
        } else if (readings.empty() || (other.date >= readings.front().date && other.date < readings.back().date) ||
                   other.date == event) {
            window.also.push_back(other); // One before the first or after the last reading shows in none.
        }
    }
    for (const auto& reading : readings) {
        if ((!start || reading.date > start->date) && (!end || reading.date <= end->date)) {
            window.readings.push_back(reading);
        }
    }
    for (auto& bound : {start, end}) {
        if (bound && window.readings.size() < readings.size()) {
            const bool is_start = bound->date < event;
            if (is_start ? readings.front().date <= bound->date : readings.back().date > bound->date) {
                window.cut.push_back(*bound);
            }
        }
    }
    return window;
}

} // namespace lathhouse::growth
