#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/kind_model.h"
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

/// The same of a kind that nobody keeps yet.
class KindRuler : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::KindModel* kind READ kind WRITE setKind NOTIFY kindChanged REQUIRED)

public:
    using SheetChart::SheetChart;
    models::KindModel* kind() const { return kind_; }
    void setKind(models::KindModel* kind);

signals:
    void kindChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    QPointer<models::KindModel> kind_;
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
