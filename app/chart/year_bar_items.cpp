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
    : QQuickPaintedItem(parent), move_(new QVariantAnimation(this)), mark_(new QTimer(this))
{
    constexpr int kMove = 200;
    constexpr int kMark = 2000;
    setAntialiasing(true);
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
    if (!year_ || row_ < 0 || static_cast<std::size_t>(row_) >= year_->order().size()) {
        return nullptr;
    }
    return &year_->stays(year_->order()[static_cast<std::size_t>(row_)]);
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
    const bool by_hand = year_->edgeRow() == row_;
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

void YearBar::setYear(models::YearModel* year)
{
    if (year == year_) {
        return;
    }
    if (year_) {
        year_->disconnect(this);
    }
    year_ = year;
    if (year_) {
        const auto repaint = [this] { update(); };
        connect(year_, &models::YearModel::datesChanged, this, repaint);
        connect(year_, &models::YearModel::planChanged, this, &YearBar::follow_plan);
        connect(year_, &models::YearModel::edgeChanged, this, &YearBar::follow_hand);
        connect(year_, &models::YearModel::viewChanged, this, repaint);
        connect(year_, &models::YearModel::planningChanged, this, repaint);
    }
    emit yearChanged();
    update();
}

void YearBar::setTheme(QObject* theme)
{
    if (theme != theme_) {
        theme_ = theme;
        emit themeChanged();
        update();
    }
}

void YearBar::setScheme(const QString& scheme)
{
    if (scheme != scheme_) {
        scheme_ = scheme;
        emit schemeChanged();
        update();
    }
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

void YearBar::paint(QPainter* painter)
{
    if (!year_ || !theme_) {
        return;
    }
    const ChartInk ink = ChartInk::of_theme(*theme_);
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF plot(margin(), 0, width() - margin(), height());
    draw_month_lines(*painter, ink, year_->year(), year_->view(), plot.left(), plot.width(), 0, height());
    if (const auto* stays = planned()) {
        const std::size_t plant = year_->order()[static_cast<std::size_t>(row_)];
        draw_plant_bar(*painter, ink,
                       {year_->year(), year_->view(), shown_.empty() ? *stays : shown_, year_->dates(plant),
                        year_->planning()},
                       plot, bar_height_);
        draw_feeds(*painter, ink, year_->feeds(plant), year_->view(), plot, bar_height_);
        if (marked()) {
            const qreal top = bar_top(plot, bar_height_);
            painter->setBrush(Qt::NoBrush);
            painter->setPen(QPen(ink.ink, 2.0, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            painter->drawRect(QRectF(plot.left() + 1.0, top - 1.0, plot.width() - 2.0, bar_height_ + 2.0));
        }
    }
}

void YearSowingBar::setYear(models::YearModel* year)
{
    if (year == year_) {
        return;
    }
    if (year_) {
        year_->disconnect(this);
    }
    year_ = year;
    if (year_) {
        const auto repaint = [this] { update(); };
        connect(year_, &models::YearModel::sowingsChanged, this, repaint);
        connect(year_, &models::YearModel::viewChanged, this, repaint);
    }
    emit yearChanged();
    update();
}

void YearSowingBar::setRow(int row)
{
    if (change(row_, row)) {
        emit rowChanged();
    }
}

void YearSowingBar::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (!year_) {
        return;
    }
    draw_month_lines(painter, ink, year_->year(), year_->view(), room.left(), room.width(), 0, room.height());
    if (const auto* sowing = year_->sowing(row_)) {
        draw_sowing(painter, ink, *sowing, year_->view(), room);
    }
}

} // namespace lathhouse::chart
