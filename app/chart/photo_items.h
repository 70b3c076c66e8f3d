#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/measure_model.h"

#include <QImage>
#include <QPointer>

namespace lathhouse::chart {

/// A photo as large as fits, in its own shape; or the surroundings of a point in it, many times as large.
class PhotoPane : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    /// A QImage.
    Q_PROPERTY(QVariant image READ image WRITE setImage NOTIFY imageChanged)
    /// Pixels of this item for one of the picture round `middle`; 0: the whole photo.
    Q_PROPERTY(double magnify READ magnify WRITE setMagnify NOTIFY imageChanged)
    Q_PROPERTY(QPointF middle READ middle WRITE setMiddle NOTIFY imageChanged)
    Q_PROPERTY(bool round READ isRound WRITE setRound NOTIFY imageChanged)
    /// Where the whole photo is drawn.
    Q_PROPERTY(QRectF place READ place NOTIFY placeChanged)

public:
    explicit PhotoPane(QQuickItem* parent = nullptr);

    QVariant image() const { return image_; }
    void setImage(const QVariant& image);
    double magnify() const { return magnify_; }
    void setMagnify(double magnify);
    QPointF middle() const { return middle_; }
    void setMiddle(QPointF middle);
    bool isRound() const { return round_; }
    void setRound(bool round);
    QRectF place() const;

    void paint(QPainter* painter) override;

signals:
    void imageChanged();
    void placeChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    QImage image_;
    QImage shown_; ///< As large as it is drawn.
    double magnify_ = 0.0;
    QPointF middle_;
    bool round_ = false;
};

/// The marks of a measurement over a photo: A to B dashed, 1 to 2 solid, the outline dotted, each with its plate.
class MeasureMarks : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::MeasureModel* measure READ measure WRITE setMeasure NOTIFY measureChanged REQUIRED)
    /// Where the photo is drawn, and its width in pixels.
    Q_PROPERTY(QRectF place READ place WRITE setPlace NOTIFY measureChanged)

public:
    using SheetChart::SheetChart;
    models::MeasureModel* measure() const { return measure_; }
    void setMeasure(models::MeasureModel* measure);
    QRectF place() const { return place_; }
    void setPlace(const QRectF& place);

signals:
    void measureChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    QPointer<models::MeasureModel> measure_;
    QRectF place_;
};

} // namespace lathhouse::chart
