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
    return YearPainter(year_->year(), year_->words(), frame_);
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
    const int count = year_->dayCount();
    const int day = static_cast<int>(std::floor((x - frame_.plot_left) / frame_.width() * count));
    return std::clamp(day, 0, count - 1);
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
    return year_ ? painter().frost_y(year_->year().days[static_cast<std::size_t>(year_->cursorDay())].frost)
                 : 0.0;
}

void YearBands::paint(QPainter* painter_to)
{
    if (year_ && theme_) {
        painter().draw_bands(*painter_to, ChartInk::of_theme(*theme_), narrow_);
    }
}

YearBar::YearBar(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
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
        connect(year_, &models::YearModel::planChanged, this, repaint);
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
    draw_month_lines(*painter, ink, year_->year(), plot.left(), plot.width(), 0, height());
    if (row_ >= 0 && static_cast<std::size_t>(row_) < year_->order().size()) {
        draw_plant_bar(*painter, ink, *year_, year_->order()[static_cast<std::size_t>(row_)], plot,
                       bar_height_);
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
    if (colour_ >= ink.spots.size() || colour_ >= ink.tints.size()) {
        return;
    }
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF box = boundingRect().adjusted(1, 1, -1, -1);
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink.tints[colour_]);
    painter->drawRoundedRect(box, 2, 2);
    painter->setBrush(pattern_brush(static_cast<models::Pattern>(colour_), ink.spots[colour_],
                                    painter->device()->devicePixelRatioF()));
    painter->setPen(QPen(ink.spots[colour_], 1.3));
    painter->drawRoundedRect(box, 2, 2);
}

} // namespace lathhouse::chart
