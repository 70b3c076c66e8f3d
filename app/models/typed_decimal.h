#pragma once

#include "app/models/year_words.h"

#include <QString>

#include <initializer_list>
#include <optional>

namespace lathhouse::models {

/// A number as people type it: decimal point or comma in every language, a plain or true minus; nullopt where it is
/// none. Every number that is typed into the window is read here.
///
/// units: what may stand behind it, without case, in UTF-8; "µmol" is met by the micro sign and by the Greek letter, which are
/// one without case.
std::optional<double> typed_decimal(const QString& typed, std::initializer_list<const char*> units = {});

/// A number for a field, as typed_decimal reads it: in the grower's locale, but without marks between thousands, which
/// would be read as a decimal point.
QString decimal_to_type(const YearWords& words, double number, int decimals);

} // namespace lathhouse::models
