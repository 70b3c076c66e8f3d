#include "app/chart/year_items.h"

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

} // namespace lathhouse::chart
