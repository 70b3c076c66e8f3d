#pragma once

#include "app/chart/chart_ink.h"
#include "app/chart/chart_label.h"
#include "app/models/year_data.h"
#include "app/models/year_words.h"

#include <QCoreApplication>
#include <QRectF>

#include <array>
#include <functional>
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
    qreal lines_below = 200.0; ///< So far month lines run on below the bands.
    models::DaySpan view = {}; ///< The days between the plot's edges; none: the whole year.

    qreal sky_top() const { return month_row; }
    qreal nights_top() const { return sky_top() + sky; }
    qreal frost_top() const { return nights_top() + nights; }
    qreal bottom() const { return frost_top() + frost; }
    qreal width() const { return plot_right - plot_left; }
};

/// Lays the year out and draws it with QPainter, for the window as for paper. Knows nothing of cursors.
class YearPainter {
    Q_DECLARE_TR_FUNCTIONS(YearPainter)

public:
    YearPainter(const models::YearData& year, const models::YearWords& words, YearFrame frame);

    const YearFrame& frame() const { return frame_; }
    qreal x(qreal day) const; ///< Outside the plot for days out of view.
    bool in_view(std::size_t day) const;
    qreal sky_y(std::size_t day) const;
    qreal low_y(Celsius low) const;
    qreal share_y(qreal share) const; ///< Within the strip.
    qreal strip_y(std::size_t day) const;

    /// All bands without their words; `narrow` shortens the words that stay.
    void draw_ground(QPainter& painter, const ChartInk& ink, bool narrow) const;
    /// The words, the most telling first.
    std::vector<ChartLabel> labels(const ChartInk& ink, bool narrow) const;
    /// Both, the words at home; for paper.
    void draw_bands(QPainter& painter, const ChartInk& ink, bool narrow) const;

private:
    void draw_sky_colours(QPainter& painter, const ChartInk& ink) const;
    void draw_month_row(QPainter& painter, const ChartInk& ink) const;
    void draw_axis(QPainter& painter, const ChartInk& ink) const;
    void draw_night_band(QPainter& painter, const ChartInk& ink) const;
    void draw_strip(QPainter& painter, const ChartInk& ink) const;
    void draw_day_length(QPainter& painter, const ChartInk& ink) const;
    void draw_frost_dates(QPainter& painter, const ChartInk& ink, bool narrow) const;

    QRectF room_of_labels() const;
    bool is_below_the_band(const QRectF& box) const;
    void add_frost_dates(std::vector<ChartLabel>& labels, const ChartInk& ink, bool narrow) const;
    void add_day_lengths(std::vector<ChartLabel>& labels, const ChartInk& ink, bool narrow) const;
    void add_words(std::vector<ChartLabel>& labels, const ChartInk& ink, bool narrow) const;

    std::array<std::size_t, 2> longest_and_shortest() const;
    /// Near the equator the days are even; then one length is said.
    bool has_seasons_of_light() const { return longest_day_ - shortest_day_ >= 10; }
    bool draws_frost_line() const;

    const models::YearData& year_;
    const models::YearWords& words_;
    YearFrame frame_;
    std::vector<std::size_t> month_starts_; ///< Days (places) on which a month begins, the first day shown excepted.
    double coldest_ = 0.0; ///< Ends of the temperature scale in the shown unit.
    double warmest_ = 1.0;
    int shortest_day_ = 0; ///< Minutes.
    int longest_day_ = 0;
};

/// What stands over a month, also the first one: its name, over January with the year where that fits; empty where nothing fits.
QString month_head(const models::YearWords& words, calendar::Date date, qreal room,
                   const std::function<qreal(const QString&)>& width);

/// Thin lines at the starts of months and the heavy one of today, from `top` to `bottom`, as far as in view.
void draw_month_lines(QPainter& painter, const ChartInk& ink, const models::YearData& year,
                      models::DaySpan view, qreal left, qreal width, qreal top, qreal bottom);

} // namespace lathhouse::chart
