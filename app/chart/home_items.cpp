#include "app/chart/home_items.h"

#include "app/chart/home_painters.h"
#include "app/chart/spot_light_painter.h"

namespace lathhouse::chart {

void HomeChart::setHome(models::HomeModel* home)
{
    if (home == home_) {
        return;
    }
    if (home_) {
        home_->disconnect(this);
    }
    home_ = home;
    if (home_) {
        const auto repaint = [this] { update(); };
        connect(home_, &models::HomeModel::homeChanged, this, repaint);
        connect(home_, &models::HomeModel::spotChanged, this, repaint);
        connect(home_, &models::HomeModel::outdoorChanged, this, repaint);
    }
    emit homeChanged();
    update();
}

void PlaceMapChart::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (home() != nullptr) {
        draw_place_map(painter, ink, home()->facts().map, room);
    }
}

void SpotLightChart::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (home() != nullptr && home()->light() != nullptr) {
        draw_spot_light(painter, ink, *home()->light(), home()->lightBeside(), home()->words(), room);
    }
}

void OffsetChart::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (home() != nullptr && home()->offset() != nullptr) {
        draw_offset_course(painter, ink, *home()->offset(), home()->words(), room);
    }
}

} // namespace lathhouse::chart
