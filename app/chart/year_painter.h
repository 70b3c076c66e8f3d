#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/year_data.h"
#include "app/models/year_model.h"

#include <QRectF>

#include <vector>

namespace lathhouse::chart {

/// Where the bands of the year stand, in the item's own pixels.
struct YearFrame {
    qreal plot_left = 0.0;
    qreal plot_right = 0.0;
    qreal month_row = 20.0; ///< Heights, from the top.
    qreal sky = 42.0;
    qreal nights = 160.0;
    qreal frost = 36.0;

    qreal sky_top() const { return month_row; }
    qreal nights_top() const { return sky_top() + sky; }
    qreal frost_top() const { return nights_top() + nights; }
    qreal bottom() const { return frost_top() + frost; }
    qreal width() const { return plot_right - plot_left; }
};

/// Lays the year out and draws it with QPainter, for the window as for paper. Knows nothing of cursors.
class YearPainter {
public:
    YearPainter(const models::YearData& year, const models::YearWords& words, YearFrame frame);

    const YearFrame& frame() const { return frame_; }
    qreal x(qreal day) const;
    qreal sky_y(std::size_t day) const;
    qreal low_y(Celsius low) const;
    qreal frost_y(Probability chance) const;
    /// Days (places) on which a month begins, the first day shown excepted.
    const std::vector<std::size_t>& month_starts() const { return month_starts_; }

    /// All bands; `narrow` shortens the words.
    void draw_bands(QPainter& painter, const ChartInk& ink, bool narrow) const;

private:
    struct Labels;
    void draw_sky_colours(QPainter& painter, const ChartInk& ink) const;
    void draw_month_row(QPainter& painter, const ChartInk& ink) const;
    void draw_axis(QPainter& painter, const ChartInk& ink) const;
    void draw_night_band(QPainter& painter, const ChartInk& ink) const;
    void draw_frost_strip(QPainter& painter, const ChartInk& ink) const;
    void draw_day_length(QPainter& painter, const ChartInk& ink, Labels& labels, bool narrow) const;
    void draw_frost_dates(QPainter& painter, const ChartInk& ink, Labels& labels, bool narrow) const;
    void draw_words(QPainter& painter, const ChartInk& ink, Labels& labels, bool narrow) const;

    const models::YearData& year_;
    const models::YearWords& words_;
    YearFrame frame_;
    std::vector<std::size_t> month_starts_;
    double coldest_ = 0.0; ///< Ends of the temperature scale in the shown unit.
    double warmest_ = 1.0;
    int shortest_day_ = 0; ///< Minutes.
    int longest_day_ = 0;
};

/// Draws one plant's year as a bar of stays within `row`, x by the same days.
void draw_plant_bar(QPainter& painter, const ChartInk& ink, const models::YearModel& year, std::size_t plant,
                    QRectF row, qreal bar_height);

/// Thin lines at the starts of months and the heavy one of today, from `top` to `bottom`.
void draw_month_lines(QPainter& painter, const ChartInk& ink, const models::YearData& year, qreal left,
                      qreal width, qreal top, qreal bottom);

} // namespace lathhouse::chart
