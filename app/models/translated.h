#pragma once

#include <QCoreApplication>
#include <QString>

namespace lathhouse::models {

/// `words` of this room in the window's language, for what is no QObject and so has no `tr` of its own; in English as it
/// stands where the language has none.
inline QString tr(const char* words)
{
    return QCoreApplication::translate("lathhouse::models", words);
}

} // namespace lathhouse::models
