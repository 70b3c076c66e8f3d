#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/plant_model.h"

namespace lathhouse::chart {

/// A chart of the page of one plant.
class PlantChart : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(lathhouse::models::PlantModel* plant READ plant WRITE setPlant NOTIFY plantChanged REQUIRED)

public:
    using SheetChart::SheetChart;
    models::PlantModel* plant() const { return plant_; }
    void setPlant(models::PlantModel* plant);

signals:
    void plantChanged();

private:
    QPointer<models::PlantModel> plant_;
};

/// Readings, fit and events.
class GrowthChart : public lathhouse::chart::PlantChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

/// Lethal, harm, stress, at ease.
class NeedsRuler : public lathhouse::chart::PlantChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

class VerdictRing : public lathhouse::chart::PlantChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

class VerdictScale : public lathhouse::chart::PlantChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

} // namespace lathhouse::chart
