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

/// A sentence whose full stop is not doubled where its last part ends with a point of its own, as short dates of some
/// languages do ("3. Sept.").
inline QString closed(QString sentence)
{
    for (qsizetype at = sentence.indexOf(QLatin1String("..")); at >= 0; at = sentence.indexOf(QLatin1String(".."), at + 1)) {
        const bool of_a_word = at > 0 && sentence[at - 1].isLetter();
        if (of_a_word && (at + 2 == sentence.size() || sentence[at + 2].isSpace())) {
            sentence.remove(at, 1);
        }
    }
    return sentence;
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
