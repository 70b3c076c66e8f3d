#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/tonight_model.h"

namespace lathhouse::chart {

/// A chart of a TonightModel.
class TonightChart : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(lathhouse::models::TonightModel* tonight READ tonight WRITE setTonight NOTIFY tonightChanged REQUIRED)

public:
    using SheetChart::SheetChart;
    models::TonightModel* tonight() const { return tonight_; }
    void setTonight(models::TonightModel* tonight);

signals:
    void tonightChanged();

private:
    QPointer<models::TonightModel> tonight_;
};

/// The ten nights.
class TenNightsChart : public lathhouse::chart::TonightChart {
    Q_OBJECT
    QML_ELEMENT

public:
    using TonightChart::TonightChart;

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

/// Tonight's lows at each spot, over the ruler that the rows below share.
class NightCurves : public lathhouse::chart::TonightChart {
    Q_OBJECT
    QML_ELEMENT
    /// Where that ruler lies in the item; the words may stand beside it.
    Q_PROPERTY(qreal rulerX MEMBER ruler_x_ NOTIFY rulerChanged)
    Q_PROPERTY(qreal rulerWidth MEMBER ruler_width_ NOTIFY rulerChanged)

public:
    explicit NightCurves(QQuickItem* parent = nullptr);

signals:
    void rulerChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    qreal ruler_x_ = 0.0;
    qreal ruler_width_ = 100.0;
};

/// Tonight's range for one plant and its damage line on a ruler; what of the range harms is striped. All places
/// are shares of the width.
class NightRuler : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal lowAt MEMBER low_at_ NOTIFY placesChanged)
    Q_PROPERTY(qreal middleAt MEMBER middle_at_ NOTIFY placesChanged)
    Q_PROPERTY(qreal highAt MEMBER high_at_ NOTIFY placesChanged)
    Q_PROPERTY(qreal lineAt MEMBER line_at_ NOTIFY placesChanged)
    Q_PROPERTY(qreal zeroAt MEMBER zero_at_ NOTIFY placesChanged) ///< Of freezing; negative: not on the ruler.
    Q_PROPERTY(int spotColour MEMBER spot_colour_ NOTIFY placesChanged)

public:
    explicit NightRuler(QQuickItem* parent = nullptr);

signals:
    void placesChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    qreal low_at_ = 0.0;
    qreal middle_at_ = 0.5;
    qreal high_at_ = 1.0;
    qreal line_at_ = 0.0;
    qreal zero_at_ = -1.0;
    int spot_colour_ = -1;
};

} // namespace lathhouse::chart
