#include "app/chart/year_items.h"

#include "app/models/moving_stays.h"

#include <QTimer>
#include <QVariantAnimation>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

YearBands::YearBands(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void YearBands::setYear(models::YearModel* year)
{
    if (year == year_) {
        return;
    }
    if (year_) {
        year_->disconnect(this);
    }
    year_ = year;
    if (year_) {
        connect(year_, &models::YearModel::cursorChanged, this, &YearBands::marksChanged);
        connect(year_, &models::YearModel::unitsChanged, this, [this] {
            emit frameChanged();
            emit marksChanged();
            update();
        });
        connect(year_, &models::YearModel::viewChanged, this, [this] {
            emit frameChanged();
            emit marksChanged();
            update();
        });
        connect(year_, &models::YearModel::householdChanged, this, [this] { update(); });
    }
    emit yearChanged();
    emit marksChanged();
    update();
}

void YearBands::setTheme(QObject* theme)
{
    if (theme != theme_) {
        theme_ = theme;
        emit themeChanged();
        update();
    }
}

void YearBands::setScheme(const QString& scheme)
{
    if (scheme != scheme_) {
        scheme_ = scheme;
        emit schemeChanged();
        update();
    }
}

void YearBands::setNarrow(bool narrow)
{
    if (narrow != narrow_) {
        narrow_ = narrow;
        emit frameChanged();
        update();
    }
}

void YearBands::set(qreal& part, qreal value)
{
    if (!qFuzzyCompare(part + 1.0, value + 1.0)) {
        part = value;
        emit frameChanged();
        emit marksChanged();
        update();
    }
}

void YearBands::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickPaintedItem::geometryChange(now, before);
    frame_.plot_right = now.width();
    emit marksChanged();
}

YearPainter YearBands::painter() const
{
    YearFrame frame = frame_;
    frame.view = year_->view();
    return YearPainter(year_->year(), year_->words(), frame);
}

qreal YearBands::xOf(int day) const
{
    return year_ ? painter().x(day + 0.5) : 0.0;
}

int YearBands::dayAt(qreal x) const
{
    if (!year_ || frame_.width() <= 0.0) {
        return 0;
    }
    const models::DaySpan view = year_->view();
    const int day =
        view.first + static_cast<int>(std::floor((x - frame_.plot_left) / frame_.width() * view.count));
    return std::clamp(day, view.first, view.first + view.count - 1);
}

qreal YearBands::cursorX() const
{
    return year_ ? xOf(year_->cursorDay()) : 0.0;
}
qreal YearBands::cursorSkyY() const
{
    return year_ ? painter().sky_y(static_cast<std::size_t>(year_->cursorDay())) : 0.0;
}
qreal YearBands::cursorMiddleY() const
{
    return year_
               ? painter().low_y(year_->year().days[static_cast<std::size_t>(year_->cursorDay())].low_middle)
               : 0.0;
}
qreal YearBands::cursorColdY() const
{
    return year_ ? painter().low_y(year_->year().days[static_cast<std::size_t>(year_->cursorDay())].low_cold)
                 : 0.0;
}
qreal YearBands::cursorWarmY() const
{
    return year_ ? painter().low_y(year_->year().days[static_cast<std::size_t>(year_->cursorDay())].low_warm)
                 : 0.0;
}
qreal YearBands::cursorFrostY() const
{
    return year_ ? painter().strip_y(static_cast<std::size_t>(year_->cursorDay())) : 0.0;
}

void YearBands::paint(QPainter* painter_to)
{
    if (year_ && theme_) {
        painter().draw_ground(*painter_to, ChartInk::of_theme(*theme_), narrow_);
    }
}

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

SpotSwatch::SpotSwatch(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void SpotSwatch::setTheme(QObject* theme)
{
    theme_ = theme;
    emit changed();
    update();
}

void SpotSwatch::setScheme(const QString& scheme)
{
    scheme_ = scheme;
    emit changed();
    update();
}

void SpotSwatch::setColour(int colour)
{
    if (colour != colour_) {
        colour_ = colour;
        emit changed();
        update();
    }
}

void SpotSwatch::paint(QPainter* painter)
{
    if (!theme_ || colour_ < 0) {
        return;
    }
    const ChartInk ink = ChartInk::of_theme(*theme_);
    const bool turned = colour_ >= models::kSpotColours;
    const int colour = colour_ % models::kSpotColours;
    if (colour >= ink.spots.size() || colour >= ink.tints.size()) {
        return;
    }
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF box = boundingRect().adjusted(1, 1, -1, -1);
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink.tints[colour]);
    painter->drawRoundedRect(box, 2, 2);
    const auto pattern = static_cast<models::Pattern>(colour);
    painter->setBrush(
        pattern_brush(pattern, ink.spots[colour], painter->device()->devicePixelRatioF(), turned));
    painter->setPen(QPen(ink.spots[colour], 1.3));
    painter->drawRoundedRect(box, 2, 2);
    if (turned && pattern == models::Pattern::Plain) {
        painter->drawRoundedRect(box.adjusted(2.5, 2.5, -2.5, -2.5), 1, 1);
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
