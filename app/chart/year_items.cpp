#include "app/chart/year_items.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

YearBands::YearBands(QQuickItem* parent) : ChartOfYear(parent)
{
    connect(this, &YearBands::yearChanged, this, &YearBands::marksChanged);
}

void YearBands::follow(models::YearModel& year)
{
    const auto laid_out_anew = [this] {
        emit frameChanged();
        emit marksChanged();
        update();
    };
    connect(&year, &models::YearModel::cursorChanged, this, &YearBands::marksChanged);
    connect(&year, &models::YearModel::unitsChanged, this, laid_out_anew);
    connect(year.view(), &models::YearView::changed, this, laid_out_anew);
    connect(&year, &models::YearModel::householdChanged, this, [this] { update(); });
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
    frame.view = year()->view()->span();
    return YearPainter(year()->year(), year()->words(), frame);
}

qreal YearBands::xOf(int day) const
{
    return year() != nullptr ? painter().x(day + 0.5) : 0.0;
}

int YearBands::dayAt(qreal x) const
{
    if (year() == nullptr || frame_.width() <= 0.0) {
        return 0;
    }
    const models::DaySpan view = year()->view()->span();
    const int day =
        view.first + static_cast<int>(std::floor((x - frame_.plot_left) / frame_.width() * view.count));
    return std::clamp(day, view.first, view.first + view.count - 1);
}

qreal YearBands::cursorX() const
{
    return year() != nullptr ? xOf(year()->cursorDay()) : 0.0;
}
qreal YearBands::cursorSkyY() const
{
    return year() != nullptr ? painter().sky_y(static_cast<std::size_t>(year()->cursorDay())) : 0.0;
}
qreal YearBands::cursorMiddleY() const
{
    return year() != nullptr
               ? painter().low_y(year()->year().days[static_cast<std::size_t>(year()->cursorDay())].low_middle)
               : 0.0;
}
qreal YearBands::cursorColdY() const
{
    return year() != nullptr ? painter().low_y(year()->year().days[static_cast<std::size_t>(year()->cursorDay())].low_cold)
                 : 0.0;
}
qreal YearBands::cursorWarmY() const
{
    return year() != nullptr ? painter().low_y(year()->year().days[static_cast<std::size_t>(year()->cursorDay())].low_warm)
                 : 0.0;
}
qreal YearBands::cursorFrostY() const
{
    return year() != nullptr ? painter().strip_y(static_cast<std::size_t>(year()->cursorDay())) : 0.0;
}

void YearBands::draw(QPainter& painter_to, const ChartInk& ink, const QRectF& /*room*/) const
{
    if (year() != nullptr) {
        painter().draw_ground(painter_to, ink, narrow_);
    }
}

} // namespace lathhouse::chart
