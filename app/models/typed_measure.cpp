#include "app/models/typed_measure.h"

#include "app/models/typed_decimal.h"
#include "app/words/us_units.h"

namespace lathhouse::models {

std::optional<double> typed_centimetres(const QString& typed, const YearWords& words)
{
    const QString trimmed = typed.trimmed();
    const bool said_inches = trimmed.endsWith(QLatin1String("in"), Qt::CaseInsensitive);
    const bool said_centimetres = trimmed.endsWith(QLatin1String("cm"), Qt::CaseInsensitive);
    const auto value = typed_decimal(trimmed, {"cm", "in"});
    return value && (said_inches || (words.units() == Units::Us && !said_centimetres))
               ? std::optional{*value * words::kCentimetresInAnInch}
               : value;
}

std::optional<double> typed_measure(const QString& typed, home::MeasurementKind kind, const YearWords& words)
{
    if (home::unit_of(kind) == home::MeasurementUnit::Centimetres) {
        return typed_centimetres(typed, words);
    }
    const auto value = typed_decimal(typed, {"%"});
    return value && home::unit_of(kind) == home::MeasurementUnit::Share ? std::optional{*value / 100.0} : value;
}

bool in_inches(home::MeasurementKind kind, const YearWords& words)
{
    return words.units() == Units::Us && home::unit_of(kind) == home::MeasurementUnit::Centimetres;
}

} // namespace lathhouse::models
