#pragma once

#include "app/chart/chart_of_year.h"

#include <vector>

class QTimer;
class QVariantAnimation;

namespace lathhouse::chart {

/// The bar of one plant, with the month lines behind it. Where a new plan gives it another shape it moves there,
/// or, where movement is not wanted, is marked for a while.
class YearBar : public lathhouse::chart::ChartOfYear {
    Q_OBJECT
    QML_ELEMENT
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

    int row() const { return row_; }
    void setRow(int row); ///< Negative: month lines only.
    qreal barHeight() const { return bar_height_; }
    void setBarHeight(qreal height);
    int moveTime() const;
    void setMoveTime(int milliseconds);
    bool moving() const;
    bool marked() const;
    qreal margin() const { return 1.0; }

signals:
    void rowChanged();
    void barHeightChanged();
    void moveTimeChanged();
    void movingChanged();

protected:
    void follow(models::YearModel& year) override;
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    /// The stays of the row's plant by the plan; nullptr where the row has none.
    const std::vector<models::YearStay>* planned() const;
    void follow_plan();
    void follow_hand();

    int row_ = -1;
    qreal bar_height_ = 15.0;
    std::vector<models::YearStay> from_;
    std::vector<models::YearStay> shown_; ///< Empty: as planned.
    bool by_hand_ = false; ///< An edge of it is being moved.
    QVariantAnimation* move_;
    QTimer* mark_;
};

/// The season of one sowing, over the same days as the bars of the plants.
class YearSowingBar : public lathhouse::chart::ChartOfYear {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int row READ row WRITE setRow NOTIFY rowChanged)

public:
    using ChartOfYear::ChartOfYear;

    int row() const { return row_; }
    void setRow(int row);

signals:
    void rowChanged();

protected:
    void follow(models::YearModel& year) override;
    void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const override;

private:
    int row_ = -1;
};

} // namespace lathhouse::chart
