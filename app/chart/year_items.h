#pragma once

#include "app/chart/year_painter.h"
#include "app/models/year_model.h"

#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace lathhouse::chart {

/// The bands of the year. Knows where the cursor's marks belong, but draws none of them.
class YearBands : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::YearModel* year READ year WRITE setYear NOTIFY yearChanged REQUIRED)
    Q_PROPERTY(QObject* theme READ theme WRITE setTheme NOTIFY themeChanged REQUIRED)
    /// Anything that changes when the theme's colours or sizes do.
    Q_PROPERTY(QString scheme READ scheme WRITE setScheme NOTIFY schemeChanged)
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

    models::YearModel* year() const { return year_; }
    void setYear(models::YearModel* year);
    QObject* theme() const { return theme_; }
    void setTheme(QObject* theme);
    QString scheme() const { return scheme_; }
    void setScheme(const QString& scheme);
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

    void paint(QPainter* painter) override;

signals:
    void yearChanged();
    void themeChanged();
    void schemeChanged();
    void frameChanged();
    void marksChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    void set(qreal& part, qreal value);

    QPointer<models::YearModel> year_;
    QPointer<QObject> theme_;
    QString scheme_;
    YearFrame frame_;
    bool narrow_ = false;
};

} // namespace lathhouse::chart
