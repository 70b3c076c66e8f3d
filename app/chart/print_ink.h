#pragma once

#include "app/chart/chart_ink.h"

namespace lathhouse::chart {

/// Black, three greys and patterns on white, for paper; sizes in parts of a page whose long edge on A4 is 1280.
/// Needs a QGuiApplication for the fonts.
ChartInk print_ink();

/// The families of the window, or what stands in for them where they are not installed.
QString text_family();
QString title_family();
/// A font whose letters keep their true widths, so that what is measured is what is printed.
QFont print_font(const QString& family, int size, int weight = QFont::Normal);

} // namespace lathhouse::chart
