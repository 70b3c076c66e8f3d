#pragma once

#include "core/growth/series.h"

#include <span>
#include <string>
#include <vector>

namespace lathhouse::growth {

/// Something that happened to the plant and may show in its growth.
struct DatedEvent {
    calendar::Date date;
    std::string what; ///< A word of the caller's: "repotted" ...
    friend bool operator==(const DatedEvent&, const DatedEvent&) = default;
};

/// What of a series speaks for one event, and what else happened too close to tell apart.
struct EventWindow {
    std::vector<SeriesReading> readings;
    /// Other events between which and this one there are too few readings: none of them can be judged by itself.
    std::vector<DatedEvent> also;
    /// Other events beyond which the readings were left out, since they belong to those.
    std::vector<DatedEvent> cut;
};

/// An earlier event with at least 3 readings between, or a later one with at least 4, ends what is looked at; any
/// other stands too close.
/// others: without the event itself; those of its date count as too close.
EventWindow window_of(std::span<const SeriesReading> readings, calendar::Date event,
                      std::span<const DatedEvent> others);

} // namespace lathhouse::growth
