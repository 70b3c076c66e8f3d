#pragma once

#include "app/words/words.h"
#include "core/home/measurement.h"

#include <string>

namespace lathhouse::words {

/// "longest leaf", "green cover".
std::string measured(home::MeasurementKind kind);
/// "43.6 cm" or "17.17 in", "12", "12.5" (a mean of counts), "35.2 %".
std::string measured_value(home::MeasurementKind kind, double value, UnitSystem units);
/// As measured_value, with the standard error of repeats: "43.6 cm (3 readings, ± 0.10 cm)".
std::string measured_value(const home::Measurement& measurement, UnitSystem units);

} // namespace lathhouse::words
