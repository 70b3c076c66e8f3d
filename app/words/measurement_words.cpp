#include "app/words/measurement_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "app/words/us_units.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::words {

std::string measured(home::MeasurementKind kind)
{
    std::string text{home::to_string(kind)};
    std::ranges::replace(text, '_', ' ');
    return table_text(text);
}

std::string measured_value(home::MeasurementKind kind, double value, UnitSystem units)
{
    switch (home::unit_of(kind)) {
    case home::MeasurementUnit::Centimetres: {
        const bool metric = !units.us_measures();
        const double shown = metric ? value : value / kCentimetresInAnInch;
        return number(shown, metric ? (shown < 10.0 ? 2 : 1) : 2) + (metric ? " cm" : " in");
    }
    case home::MeasurementUnit::Count:
        return number(value, value == std::floor(value) ? 0 : 1);
    case home::MeasurementUnit::Share:
        break;
    }
    return number(100.0 * value, 1) + " %";
}

std::string measured_value(const home::Measurement& measurement, UnitSystem units)
{
    const auto text = measured_value(measurement.kind, measurement.value(), units);
    if (const auto error = measurement.standard_error()) {
        return phrase("%1 (%2 readings, ± %3)", text, std::to_string(measurement.repeats.size()),
                      measured_value(measurement.kind, *error, units));
    }
    return text;
}

} // namespace lathhouse::words
