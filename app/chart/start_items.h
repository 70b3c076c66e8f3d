#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/place_form.h"

namespace lathhouse::chart {

/// A picture of what the place in a form gives.
class PlaceFormChart : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(lathhouse::models::PlaceForm* form READ form WRITE setForm NOTIFY formChanged REQUIRED)

public:
    using SheetChart::SheetChart;
    models::PlaceForm* form() const { return form_; }
    void setForm(models::PlaceForm* form);

signals:
    void formChanged();

private:
    QPointer<models::PlaceForm> form_;
};

/// Its stations.
class PlaceFormMap : public lathhouse::chart::PlaceFormChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

/// Its year of nights.
class PlaceFormNights : public lathhouse::chart::PlaceFormChart {
    Q_OBJECT
    QML_ELEMENT

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

} // namespace lathhouse::chart
