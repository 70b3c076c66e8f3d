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

void SheetChart::itemChange(ItemChange change, const ItemChangeData& value)
{
    QQuickPaintedItem::itemChange(change, value);
    if (change == ItemVisibleHasChanged && value.boolValue) {
        setFlag(ItemHasContents);
        update();
    } else if (change == ItemVisibleHasChanged) {
        update(); // What has no contents is let go only where something of it is due.
        setFlag(ItemHasContents, false);
    }
}

void SheetChart::paint(QPainter* painter)
{
    if (theme_) {
        draw(*painter, ChartInk::of_theme(*theme_), QRectF(0.0, 0.0, width(), height()));
    }
}

} // namespace lathhouse::chart
