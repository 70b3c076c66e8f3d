#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/home_model.h"

namespace lathhouse::chart {

/// A chart of the page Home.
class HomeChart : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(lathhouse::models::HomeModel* home READ home WRITE setHome NOTIFY homeChanged REQUIRED)

public:
    using SheetChart::SheetChart;
    models::HomeModel* home() const { return home_; }
    void setHome(models::HomeModel* home);

signals:
    void homeChanged();

private:
    QPointer<models::HomeModel> home_;
};

/// The stations round the home.
class PlaceMapChart : public lathhouse::chart::HomeChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

/// Light of the chosen spot through the year, and of the one to compare it with.
class SpotLightChart : public lathhouse::chart::HomeChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

/// What was learnt of the chosen outdoor spot's offset.
class OffsetChart : public lathhouse::chart::HomeChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

} // namespace lathhouse::chart
