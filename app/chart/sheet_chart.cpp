#include "app/chart/sheet_chart.h"

namespace lathhouse::chart {

SheetChart::SheetChart(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void SheetChart::setTheme(QObject* theme)
{
    if (theme != theme_) {
        theme_ = theme;
        emit themeChanged();
        update();
    }
}

void SheetChart::setScheme(const QString& scheme)
{
    if (change(scheme_, scheme)) {
        emit themeChanged();
    }
}

void SheetChart::paint(QPainter* painter)
{
    if (theme_) {
        draw(*painter, ChartInk::of_theme(*theme_), QRectF(0.0, 0.0, width(), height()));
    }
}

} // namespace lathhouse::chart
