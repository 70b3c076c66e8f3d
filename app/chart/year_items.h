#pragma once

#include "app/chart/sheet_chart.h"
#include "app/chart/year_painter.h"
#include "app/models/year_model.h"

#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

class QTimer;
class QVariantAnimation;

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

/// The bar of one plant, with the month lines behind it. Where a new plan gives it another shape it moves there,
/// or, where movement is not wanted, is marked for a while.
class YearBar : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::YearModel* year READ year WRITE setYear NOTIFY yearChanged REQUIRED)
    Q_PROPERTY(QObject* theme READ theme WRITE setTheme NOTIFY themeChanged REQUIRED)
    Q_PROPERTY(QString scheme READ scheme WRITE setScheme NOTIFY schemeChanged)
    Q_PROPERTY(int row READ row WRITE setRow NOTIFY rowChanged)
    Q_PROPERTY(qreal barHeight READ barHeight WRITE setBarHeight NOTIFY barHeightChanged)
    /// Milliseconds that the bar takes to its new place; 0: it does not move but is outlined for two seconds.
    Q_PROPERTY(int moveTime READ moveTime WRITE setMoveTime NOTIFY moveTimeChanged)
    Q_PROPERTY(bool moving READ moving NOTIFY movingChanged)
    Q_PROPERTY(bool marked READ marked NOTIFY movingChanged)
    /// Pixels left of the plot that belong to the item, for the heavy edge of today.
    Q_PROPERTY(qreal margin READ margin CONSTANT)

public:
    explicit YearBar(QQuickItem* parent = nullptr);

    models::YearModel* year() const { return year_; }
    void setYear(models::YearModel* year);
    QObject* theme() const { return theme_; }
    void setTheme(QObject* theme);
    QString scheme() const { return scheme_; }
    void setScheme(const QString& scheme);
    int row() const { return row_; }
    void setRow(int row); ///< Negative: month lines only.
    qreal barHeight() const { return bar_height_; }
    void setBarHeight(qreal height);
    int moveTime() const;
    void setMoveTime(int milliseconds);
    bool moving() const;
    bool marked() const;
    qreal margin() const { return 1.0; }

    void paint(QPainter* painter) override;

signals:
    void yearChanged();
    void themeChanged();
    void schemeChanged();
    void rowChanged();
    void barHeightChanged();
    void moveTimeChanged();
    void movingChanged();

private:
    /// The stays of the row's plant by the plan; nullptr where the row has none.
    const std::vector<models::YearStay>* planned() const;
    void follow_plan();
    void follow_hand();

    QPointer<models::YearModel> year_;
    QPointer<QObject> theme_;
    QString scheme_;
    int row_ = -1;
    qreal bar_height_ = 15.0;
    std::vector<models::YearStay> from_;
    std::vector<models::YearStay> shown_; ///< Empty: as planned.
    bool by_hand_ = false; ///< An edge of it is being moved.
    QVariantAnimation* move_;
    QTimer* mark_;
};

/// The season of one sowing, over the same days as the bars of the plants.
class YearSowingBar : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::YearModel* year READ year WRITE setYear NOTIFY yearChanged REQUIRED)
    Q_PROPERTY(int row READ row WRITE setRow NOTIFY rowChanged)

public:
    using SheetChart::SheetChart;

    models::YearModel* year() const { return year_; }
    void setYear(models::YearModel* year);
    int row() const { return row_; }
    void setRow(int row);

signals:
    void yearChanged();
    void rowChanged();

protected:
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    QPointer<models::YearModel> year_;
    int row_ = -1;
};

/// A small plate in the hand of a spot.
class SpotSwatch : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QObject* theme READ theme WRITE setTheme NOTIFY changed REQUIRED)
    Q_PROPERTY(QString scheme READ scheme WRITE setScheme NOTIFY changed)
    Q_PROPERTY(int colour READ colour WRITE setColour NOTIFY changed)

public:
    explicit SpotSwatch(QQuickItem* parent = nullptr);

    QObject* theme() const { return theme_; }
    void setTheme(QObject* theme);
    QString scheme() const { return scheme_; }
    void setScheme(const QString& scheme);
    int colour() const { return colour_; }
    /// Negative: nothing is drawn; from kSpotColours on: turned.
    void setColour(int colour);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QPointer<QObject> theme_;
    QString scheme_;
    int colour_ = -1;
};

} // namespace lathhouse::chart
