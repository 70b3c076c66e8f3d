#include "app/chart/plant_items.h"

#include "app/chart/growth_painter.h"
#include "app/chart/night_ruler.h"
#include "app/chart/verdict_marks.h"

namespace lathhouse::chart {

void PlantChart::setPlant(models::PlantModel* plant)
{
    if (plant == plant_) {
        return;
    }
    if (plant_) {
        plant_->disconnect(this);
    }
    plant_ = plant;
    if (plant_) {
        connect(plant_, &models::PlantModel::plantChanged, this, [this] { update(); });
    }
    emit plantChanged();
    update();
}

void GrowthChart::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (plant() != nullptr && plant()->facts().chart) {
        draw_growth(painter, ink, *plant()->facts().chart, plant()->words(), plant()->today(), room);
    }
}

void NeedsRuler::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (plant() != nullptr && plant()->facts().needs) {
        draw_night_ruler(painter, ink, *plant()->facts().needs, plant()->words(), room);
    }
}

void KindRuler::setKind(models::KindModel* kind)
{
    if (kind != kind_) {
        kind_ = kind;
        if (kind != nullptr) {
            connect(kind, &models::KindModel::kindChanged, this, [this] { update(); });
        }
        update();
        emit kindChanged();
    }
}

void KindRuler::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (kind_ != nullptr && kind_->needs()) {
        draw_night_ruler(painter, ink, *kind_->needs(), kind_->words(), room);
    }
}

void VerdictRing::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (plant() != nullptr) {
        const auto& facts = plant()->facts();
        draw_verdict_ring(painter, ink, facts.verdict, facts.share, facts.share_low, facts.share_high, room);
    }
}

void VerdictScale::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (plant() != nullptr) {
        const auto& facts = plant()->facts();
        draw_verdict_scale(painter, ink, facts.share, facts.share_low, facts.share_high, room);
    }
}

} // namespace lathhouse::chart
