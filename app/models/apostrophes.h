#pragma once

#include <QString>

namespace lathhouse::models {

/// A name or a note of the core's tables, which are written with the straight marks of a keyboard, as it is printed:
/// "Angel’s trumpet", "‘Silver Queen’ is the most tender".
inline QString printed_apostrophes(QString words)
{
    for (qsizetype at = 0; at < words.size(); ++at) {
        if (words[at] == QLatin1Char('\'')) {
            words[at] = at == 0 || words[at - 1].isSpace() || words[at - 1] == QLatin1Char('(') ? QChar(0x2018) : QChar(0x2019);
        }
    }
    return words;
}

/// As the tables have them: what somebody typed is looked up so, and what is kept of their names, so that it is found at the
/// command line too.
inline QString plain_apostrophes(QString words)
{
    return words.replace(QChar(0x2018), QLatin1Char('\'')).replace(QChar(0x2019), QLatin1Char('\''));
}

} // namespace lathhouse::models
