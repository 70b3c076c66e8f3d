#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/plant_habit.h"

namespace lathhouse::chart {

/// Draws a plant in its pot: flat shapes in four greens, the pot in one of four clays. It stands on the lower edge of
/// `room`, in its middle, and is as high as `room` at most. The same habit is always the same drawing.
void draw_plant(QPainter& painter, models::Habit habit, bool fruit, int clay, bool dark, const QRectF& room);

/// A plant that stands for itself until a photo is chosen; a dashed pot where a place is free.
class PlantDrawing : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT
    /// Place of the habit in models::Habit; negative: a free place.
    Q_PROPERTY(int habit READ habit WRITE setHabit NOTIFY plantChanged)
    Q_PROPERTY(bool fruit READ fruit WRITE setFruit NOTIFY plantChanged)
    Q_PROPERTY(int clay READ clay WRITE setClay NOTIFY plantChanged)

public:
    using SheetChart::SheetChart;

    int habit() const { return habit_; }
    void setHabit(int habit);
    bool fruit() const { return fruit_; }
    void setFruit(bool fruit);
    int clay() const { return clay_; }
    void setClay(int clay);

signals:
    void plantChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    int habit_ = -1;
    bool fruit_ = false;
    int clay_ = 0;
};

/// What plants stand on: a slat with the shadow of its gaps below.
class Lath : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT

public:
    using SheetChart::SheetChart;

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
};

} // namespace lathhouse::chart
