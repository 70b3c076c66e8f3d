#pragma once

#include "app/models/year_words.h"
#include "core/home/measurement.h"

#include <QString>

#include <optional>

namespace lathhouse::models {

/// A length as it is typed, with its unit behind it or in the one shown; nullopt where it is no number.
std::optional<double> typed_centimetres(const QString& typed, const YearWords& words);

/// What was measured, as it is typed: in the unit in which it is kept. nullopt where it is no number.
std::optional<double> typed_measure(const QString& typed, home::MeasurementKind kind, const YearWords& words);

/// Whether the window shows it in inches.
bool in_inches(home::MeasurementKind kind, const YearWords& words);

} // namespace lathhouse::models
