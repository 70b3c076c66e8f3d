#pragma once

#include "app/chart/chart_of_year.h"
#include "app/chart/year_painter.h"

namespace lathhouse::chart {

/// The bands of the year. Knows where the cursor's marks belong, but draws none of them.
class YearBands : public lathhouse::chart::ChartOfYear {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal plotLeft READ plotLeft WRITE setPlotLeft NOTIFY frameChanged)
    Q_PROPERTY(qreal monthRow READ monthRow WRITE setMonthRow NOTIFY frameChanged)
    Q_PROPERTY(qreal skyHeight READ skyHeight WRITE setSkyHeight NOTIFY frameChanged)
    Q_PROPERTY(qreal nightsHeight READ nightsHeight WRITE setNightsHeight NOTIFY frameChanged)
    Q_PROPERTY(qreal frostHeight READ frostHeight WRITE setFrostHeight NOTIFY frameChanged)
    Q_PROPERTY(bool narrow READ narrow WRITE setNarrow NOTIFY frameChanged)
    Q_PROPERTY(qreal cursorX READ cursorX NOTIFY marksChanged)
    Q_PROPERTY(qreal cursorSkyY READ cursorSkyY NOTIFY marksChanged)
    Q_PROPERTY(qreal cursorMiddleY READ cursorMiddleY NOTIFY marksChanged)
    Q_PROPERTY(qreal cursorColdY READ cursorColdY NOTIFY marksChanged)
    Q_PROPERTY(qreal cursorWarmY READ cursorWarmY NOTIFY marksChanged)
    Q_PROPERTY(qreal cursorFrostY READ cursorFrostY NOTIFY marksChanged)

public:
    explicit YearBands(QQuickItem* parent = nullptr);

    qreal plotLeft() const { return frame_.plot_left; }
    void setPlotLeft(qreal left) { set(frame_.plot_left, left); }
    qreal monthRow() const { return frame_.month_row; }
    void setMonthRow(qreal height) { set(frame_.month_row, height); }
    qreal skyHeight() const { return frame_.sky; }
    void setSkyHeight(qreal height) { set(frame_.sky, height); }
    qreal nightsHeight() const { return frame_.nights; }
    void setNightsHeight(qreal height) { set(frame_.nights, height); }
    qreal frostHeight() const { return frame_.frost; }
    void setFrostHeight(qreal height) { set(frame_.frost, height); }
    bool narrow() const { return narrow_; }
    void setNarrow(bool narrow);

    qreal cursorX() const;
    qreal cursorSkyY() const;
    qreal cursorMiddleY() const;
    qreal cursorColdY() const;
    qreal cursorWarmY() const;
    qreal cursorFrostY() const;
    /// The day below a pixel of this item, within the year.
    Q_INVOKABLE int dayAt(qreal x) const;
    /// Middle of a day in pixels of this item.
    Q_INVOKABLE qreal xOf(int day) const;
    /// What lays the year out now; `year` is there.
    YearPainter painter() const;

signals:
    void frameChanged();
    void marksChanged();

protected:
    void follow(models::YearModel& year) override;
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    void set(qreal& part, qreal value);

    YearFrame frame_;
    bool narrow_ = false;
};

} // namespace lathhouse::chart
