#include "app/chart/start_items.h"

#include "app/chart/home_painters.h"
#include "app/chart/start_painters.h"

namespace lathhouse::chart {

void PlaceFormChart::setForm(models::PlaceForm* form)
{
    if (form == form_) {
        return;
    }
    if (form_) {
        form_->disconnect(this);
    }
    form_ = form;
    if (form_) {
        connect(form_, &models::PlaceForm::givenChanged, this, [this] { update(); });
    }
    emit formChanged();
    update();
}

void PlaceFormMap::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (form() != nullptr && form()->hasGiven()) {
        draw_place_map(painter, ink, form()->given().map, room);
    }
}

void PlaceFormNights::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (form() != nullptr && form()->hasGiven()) {
        draw_place_nights(painter, ink, form()->given().nights, form()->words(), room);
    }
}

} // namespace lathhouse::chart
