#pragma once

#include "core/home/history.h"
#include "core/home/measurement.h"
#include "core/home/photo_change.h"
#include "core/home/thermometer.h"

#include <variant>

namespace lathhouse::home {

/// One thing that was entered into the journal and can be undone.
using Entry = std::variant<Event, Measurement, Reading, PhotoChange>;

} // namespace lathhouse::home
