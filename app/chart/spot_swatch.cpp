#include "app/chart/spot_swatch.h"

#include "app/chart/chart_ink.h"

#include <QPainter>

namespace lathhouse::chart {

SpotSwatch::SpotSwatch(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void SpotSwatch::setTheme(QObject* theme)
{
    theme_ = theme;
    emit changed();
    update();
}

void SpotSwatch::setScheme(const QString& scheme)
{
    scheme_ = scheme;
    emit changed();
    update();
}

void SpotSwatch::setColour(int colour)
{
    if (colour != colour_) {
        colour_ = colour;
        emit changed();
        update();
    }
}

void SpotSwatch::paint(QPainter* painter)
{
    if (!theme_ || colour_ < 0) {
        return;
    }
    const ChartInk ink = ChartInk::of_theme(*theme_);
    const bool turned = colour_ >= models::kSpotColours;
    const int colour = colour_ % models::kSpotColours;
    if (colour >= ink.spots.size() || colour >= ink.tints.size()) {
        return;
    }
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF box = boundingRect().adjusted(1, 1, -1, -1);
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink.tints[colour]);
    painter->drawRoundedRect(box, 2, 2);
    const auto pattern = static_cast<models::Pattern>(colour);
    painter->setBrush(
        pattern_brush(pattern, ink.spots[colour], painter->device()->devicePixelRatioF(), turned));
    painter->setPen(QPen(ink.spots[colour], 1.3));
    painter->drawRoundedRect(box, 2, 2);
    if (turned && pattern == models::Pattern::Plain) {
        painter->drawRoundedRect(box.adjusted(2.5, 2.5, -2.5, -2.5), 1, 1);
    }
}

} // namespace lathhouse::chart
