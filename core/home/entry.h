#pragma once

#include "core/home/history.h"
#include "core/home/measurement.h"
#include "core/home/photo_change.h"
#include "core/home/thermometer.h"

#include <variant>
#include <vector>

namespace lathhouse::home {

/// Nights that were entered in one moment, as those of a thermometer's file are: more than one, in the order of entry.
struct NightsTogether {
    std::vector<Reading> readings;
};

/// One thing that was entered into the journal and can be undone.
using Entry = std::variant<Event, Measurement, Reading, PhotoChange, NightsTogether>;

} // namespace lathhouse::home
