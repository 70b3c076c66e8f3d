#include "app/chart/year_bar_items.h"

#include "app/chart/plant_bars.h"
#include "app/chart/year_painter.h"
#include "app/models/moving_stays.h"

#include <QPainter>
#include <QTimer>
#include <QVariantAnimation>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

YearBar::YearBar(QQuickItem* parent)
    : ChartOfYear(parent), move_(new QVariantAnimation(this)), mark_(new QTimer(this))
{
    constexpr int kMove = 200;
    constexpr int kMark = 2000;
    move_->setStartValue(0.0);
    move_->setEndValue(1.0);
    move_->setDuration(kMove);
    move_->setEasingCurve(QEasingCurve::OutCubic);
    connect(move_, &QVariantAnimation::valueChanged, this, [this](const QVariant& share) {
        const auto* to = planned();
        if (to != nullptr && moving()) {
            shown_ = models::stays_between(from_, *to, share.toDouble());
            update();
        }
    });
    connect(move_, &QVariantAnimation::finished, this, [this] {
        const auto* to = planned();
        shown_ = to != nullptr ? *to : std::vector<models::YearStay>{};
        update();
        emit movingChanged();
    });
    mark_->setSingleShot(true);
    mark_->setInterval(kMark);
    connect(mark_, &QTimer::timeout, this, [this] {
        update();
        emit movingChanged();
    });
}

const std::vector<models::YearStay>* YearBar::planned() const
{
    if (year() == nullptr || row_ < 0 || static_cast<std::size_t>(row_) >= year()->order().size()) {
        return nullptr;
    }
    return &year()->stays(year()->order()[static_cast<std::size_t>(row_)]);
}

void YearBar::follow_plan()
{
    const auto* to = planned();
    if (to == nullptr) {
        return;
    }
    if (shown_.empty() || models::looks_the_same(shown_, *to)) {
        move_->stop();
        shown_ = *to;
    } else if (move_->duration() > 0) {
        from_ = shown_;
        move_->stop();
        move_->start();
        emit movingChanged();
    } else {
        shown_ = *to;
        mark_->start();
        emit movingChanged();
    }
    update();
}

void YearBar::follow_hand()
{
    const bool by_hand = year()->edge()->row() == row_;
    if (const auto* stays = planned(); stays != nullptr && (by_hand || by_hand_)) {
        move_->stop();
        shown_ = *stays;
        update();
    }
    by_hand_ = by_hand;
}

int YearBar::moveTime() const
{
    return move_->duration();
}
bool YearBar::moving() const
{
    return move_->state() == QAbstractAnimation::Running;
}
bool YearBar::marked() const
{
    return mark_->isActive();
}

void YearBar::setMoveTime(int milliseconds)
{
    if (milliseconds != move_->duration()) {
        move_->setDuration(std::max(0, milliseconds));
        emit moveTimeChanged();
    }
}

void YearBar::follow(models::YearModel& year)
{
    const auto repaint = [this] { update(); };
    connect(&year, &models::YearModel::datesChanged, this, repaint);
    connect(&year, &models::YearModel::planChanged, this, &YearBar::follow_plan);
    connect(year.edge(), &models::EdgeByHand::changed, this, &YearBar::follow_hand);
    connect(year.view(), &models::YearView::changed, this, repaint);
    connect(&year, &models::YearModel::planningChanged, this, repaint);
}

void YearBar::setRow(int row)
{
    if (row != row_) {
        row_ = row;
        move_->stop();
        mark_->stop();
        shown_ = planned() != nullptr ? *planned() : std::vector<models::YearStay>{};
        emit rowChanged();
        update();
    }
}

void YearBar::setBarHeight(qreal height)
{
    if (!qFuzzyCompare(height, bar_height_)) {
        bar_height_ = height;
        emit barHeightChanged();
        update();
    }
}

void YearBar::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (year() == nullptr) {
        return;
    }
    const QRectF plot = room.adjusted(margin(), 0, 0, 0);
    draw_month_lines(painter, ink, year()->year(), year()->view()->span(), plot.left(), plot.width(), 0, height());
    if (const auto* stays = planned()) {
        const std::size_t plant = year()->order()[static_cast<std::size_t>(row_)];
        draw_plant_bar(painter, ink,
                       {year()->year(), year()->view()->span(), shown_.empty() ? *stays : shown_, year()->dates(plant),
                        year()->planning()},
                       plot, bar_height_);
        draw_feeds(painter, ink, year()->feeds(plant), year()->view()->span(), plot, bar_height_);
        if (marked()) {
            const qreal top = bar_top(plot, bar_height_);
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(ink.ink, 2.0, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            painter.drawRect(QRectF(plot.left() + 1.0, top - 1.0, plot.width() - 2.0, bar_height_ + 2.0));
        }
    }
}

void YearSowingBar::follow(models::YearModel& year)
{
    const auto repaint = [this] { update(); };
    connect(&year, &models::YearModel::sowingsChanged, this, repaint);
    connect(year.view(), &models::YearView::changed, this, repaint);
}

void YearSowingBar::setRow(int row)
{
    if (change(row_, row)) {
        emit rowChanged();
    }
}

void YearSowingBar::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (year() == nullptr) {
        return;
    }
    draw_month_lines(painter, ink, year()->year(), year()->view()->span(), room.left(), room.width(), 0, room.height());
    if (const auto* sowing = year()->sowing(row_)) {
        draw_sowing(painter, ink, *sowing, year()->view()->span(), room);
    }
}

} // namespace lathhouse::chart
