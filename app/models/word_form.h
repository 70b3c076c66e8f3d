#pragma once

#include "app/models/year_words.h"
#include "app/words/words.h"

#include <QString>

namespace lathhouse::models {

/// A phrase as the beginning of a sentence or as a label.
inline QString upper_first(QString words)
{
    if (!words.isEmpty()) {
        words[0] = words[0].toUpper();
    }
    return words;
}

/// A date that no line breaks in two.
inline QString unbroken(QString date)
{
    return date.replace(QLatin1Char(' '), QChar::Nbsp);
}

/// The units that the window shows, as the words know them.
inline words::UnitSystem unit_system_of(const ShownUnits& units)
{
    return {units.degrees() == Units::Us ? words::Degrees::Fahrenheit : words::Degrees::Celsius,
            units.measures() == Units::Us ? words::Measures::UsCustomary : words::Measures::Metric};
}
inline words::UnitSystem unit_system_of(const YearWords& words)
{
    return unit_system_of(words.shown_units());
}

} // namespace lathhouse::models
