#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/seeds_model.h"

namespace lathhouse::chart {

/// Share of a lot's seeds that come up, as a dot on a line from none to all with the interval that holds 9 in 10;
/// a filled dot rests on the grower's own counts.
class GerminationLine : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal mean MEMBER mean_ NOTIFY sharesChanged)
    Q_PROPERTY(qreal low MEMBER low_ NOTIFY sharesChanged)
    Q_PROPERTY(qreal high MEMBER high_ NOTIFY sharesChanged)
    Q_PROPERTY(bool counted MEMBER counted_ NOTIFY sharesChanged)

public:
    explicit GerminationLine(QQuickItem* parent = nullptr);

signals:
    void sharesChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    qreal mean_ = 0.0;
    qreal low_ = 0.0;
    qreal high_ = 0.0;
    bool counted_ = false;
};

/// The year of the chosen sowing as one bar: ring sow, bracket comes up, ladder plant out, slash first ripe.
class SowingBarChart : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::SeedsModel* seeds READ seeds WRITE setSeeds NOTIFY seedsChanged REQUIRED)

public:
    using SheetChart::SheetChart;
    models::SeedsModel* seeds() const { return seeds_; }
    void setSeeds(models::SeedsModel* seeds);

signals:
    void seedsChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    QPointer<models::SeedsModel> seeds_;
};

} // namespace lathhouse::chart
