#pragma once

#include <QCoreApplication>
#include <QString>

// Of use inside app/chart only.

namespace lathhouse::chart {

/// The chart's words in the language of the window.
inline QString tr(const char* words)
{
    return QCoreApplication::translate("YearPainter", words);
}

} // namespace lathhouse::chart
