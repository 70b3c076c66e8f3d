#pragma once

#include "app/models/year_words.h"

#include <QString>

namespace lathhouse::models {

/// What somebody typed as a temperature.
struct TypedTemperature {
    std::optional<Celsius> value;
    QString trouble; ///< Why it is none, a whole sentence; empty where it is one.
    QString instead = {}; ///< What was likely meant, as one would type it; empty where nobody knows.
};

/// A number that can hardly be meant.
struct Slip {
    QString trouble; ///< Why, a whole sentence; empty where it is none.
    QString instead = {}; ///< As in TypedTemperature.
};

/// Takes a decimal point or comma, a plain or true minus, and the unit behind the number; without a unit it is in
/// the shown one. Nothing is taken that no night ever had.
TypedTemperature typed_temperature(const QString& typed, const YearWords& words);

/// Whether a night's low is taken for a slip of the pen at a place where such a night usually has that low. Source: home::is_slip_of_low.
Slip slip_of_low(Celsius low, Celsius usual, const YearWords& words);

/// Any temperature, written in the same ways; nullopt where it is no number.
std::optional<Celsius> typed_degrees(const QString& typed, const YearWords& words);

/// A temperature that a plant bears or not, written in the same ways; nullopt where it is no number, or lies outside -60
/// to 60 °C, where no plant in a pot is kept.
std::optional<Celsius> typed_plant_line(const QString& typed, const YearWords& words);

} // namespace lathhouse::models
