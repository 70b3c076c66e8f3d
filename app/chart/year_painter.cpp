#include "app/chart/year_painter.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QLinearGradient>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::chart {

namespace {

QString tr(const char* words)
{
    return QCoreApplication::translate("YearPainter", words);
}

QColor mixed(const QColor& a, const QColor& b, double share)
{
    const auto part = [share](double from, double to) {
        return static_cast<float>(from + (to - from) * share);
    };
    return QColor::fromRgbF(part(a.redF(), b.redF()), part(a.greenF(), b.greenF()),
                            part(a.blueF(), b.blueF()));
}

/// Dusk at 7 hours of day and less, dawn at 12, straw at 17 and more, wherever on Earth.
QColor sky_colour(const ChartInk& ink, int minutes)
{
    constexpr double kEven = 12.0 * 60.0;
    constexpr double kReach = 5.0 * 60.0;
    const double from_even = std::clamp((minutes - kEven) / kReach, -1.0, 1.0);
    return from_even < 0.0 ? mixed(ink.dawn, ink.dusk, -from_even) : mixed(ink.dawn, ink.straw, from_even);
}

} // namespace

/// Rectangles of labels already written; a label without room is dropped.
struct YearPainter::Labels {
    QPainter& painter;
    const ChartInk& ink;
    QRectF room;
    std::vector<QRectF> taken{};

    /// Writes lines one below the other with their first base line at `y`; false where there is no room.
    bool write(qreal left, qreal y, const QStringList& lines, const QFont& font, const QColor& colour,
               Qt::Alignment alignment = Qt::AlignLeft)
    {
        const QFontMetricsF metrics(font);
        qreal width = 0.0;
        for (const QString& line : lines) {
            width = std::max(width, metrics.horizontalAdvance(line));
        }
        const qreal line_height = std::round(metrics.height() * 0.92);
        if (alignment == Qt::AlignRight) {
            left -= width;
        } else if (alignment == Qt::AlignHCenter) {
            left -= width / 2.0;
        }
        const QRectF box(left, y - metrics.ascent(), width,
                         metrics.height() + line_height * static_cast<qreal>(lines.size() - 1));
        const QRectF with_margin = box.adjusted(-4, 0, 4, 0);
        if (!room.contains(with_margin) ||
            std::any_of(taken.begin(), taken.end(),
                        [&with_margin](const QRectF& other) { return other.intersects(with_margin); })) {
            return false;
        }
        taken.push_back(box);
        for (const QString& line : lines) {
            const qreal indent = alignment == Qt::AlignRight ? width - metrics.horizontalAdvance(line) : 0.0;
            write_with_halo(painter, QPointF(std::round(left + indent), std::round(y)), line, font, colour,
                            ink.sheet);
            y += line_height;
        }
        return true;
    }
};

YearPainter::YearPainter(const models::YearData& year, const models::YearWords& words, YearFrame frame)
    : year_(year), words_(words), frame_(frame)
{
    if (year_.days.empty()) {
        return;
    }
    const bool fahrenheit = words_.units() == models::Units::Us;
    coldest_ = fahrenheit ? 34.0 : 1.0;
    warmest_ = fahrenheit ? 50.0 : 10.0;
    shortest_day_ = longest_day_ = year_.days.front().day_length_minutes;
    for (std::size_t place = 0; place < year_.days.size(); ++place) {
        const models::YearDay& day = year_.days[place];
        coldest_ = std::min(coldest_, words_.shown(day.low_cold));
        warmest_ = std::max(warmest_, words_.shown(day.low_warm));
        shortest_day_ = std::min(shortest_day_, day.day_length_minutes);
        longest_day_ = std::max(longest_day_, day.day_length_minutes);
        if (place > 0 && day.date.day() == 1) {
            month_starts_.push_back(place);
        }
    }
    const double span = warmest_ - coldest_;
    warmest_ += span * 0.14; // Room for the words above the band.
    coldest_ -= span * 0.08;
}

qreal YearPainter::x(qreal day) const
{
    return frame_.plot_left +
           frame_.width() * day / static_cast<qreal>(std::max<std::size_t>(1, year_.days.size()));
}

qreal YearPainter::sky_y(std::size_t day) const
{
    // At least six hours fill the strip, so that the even days of the tropics look even.
    const double span = std::max(6.0 * 60.0, static_cast<double>(longest_day_ - shortest_day_));
    const double middle = (longest_day_ + shortest_day_) / 2.0;
    const double from_middle = (year_.days[day].day_length_minutes - middle) / span;
    return frame_.sky_top() + frame_.sky * (0.5 - 0.62 * from_middle);
}

qreal YearPainter::low_y(Celsius low) const
{
    return frame_.nights_top() + frame_.nights * (warmest_ - words_.shown(low)) / (warmest_ - coldest_);
}

qreal YearPainter::frost_y(Probability chance) const
{
    return frame_.bottom() - (frame_.frost - 2.0) * chance.fraction();
}

void YearPainter::draw_bands(QPainter& painter, const ChartInk& ink, bool narrow) const
{
    if (year_.days.empty()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    draw_sky_colours(painter, ink);
    draw_axis(painter, ink);
    draw_month_lines(painter, ink, year_, frame_.plot_left, frame_.width(), 0.0, frame_.bottom() + 200.0);
    draw_month_row(painter, ink);
    draw_night_band(painter, ink);
    draw_frost_strip(painter, ink);
    Labels labels{painter, ink,
                  QRectF(frame_.plot_left, 0, frame_.width(), frame_.bottom()).adjusted(2, 0, -2, 0)};
    draw_frost_dates(painter, ink, labels, narrow);
    draw_day_length(painter, ink, labels, narrow);
    draw_words(painter, ink, labels, narrow);
}

void YearPainter::draw_sky_colours(QPainter& painter, const ChartInk& ink) const
{
    if (!ink.sky_coloured) {
        return;
    }
    constexpr std::size_t kStops = 48;
    QLinearGradient sky(frame_.plot_left, 0, frame_.plot_right, 0);
    for (std::size_t stop = 0; stop <= kStops; ++stop) {
        const std::size_t day = std::min(year_.days.size() - 1, stop * year_.days.size() / kStops);
        sky.setColorAt(static_cast<double>(stop) / kStops,
                       sky_colour(ink, year_.days[day].day_length_minutes));
    }
    painter.fillRect(QRectF(frame_.plot_left, frame_.sky_top(), frame_.width(), frame_.sky), sky);
    // Below the strip its colour fades into the paper.
    const QRectF nights(frame_.plot_left, frame_.nights_top(), frame_.width(), frame_.nights);
    painter.fillRect(nights, sky);
    QLinearGradient paper(0, nights.top(), 0, nights.bottom());
    QColor thin = ink.sheet;
    thin.setAlphaF(0.58F);
    paper.setColorAt(0.0, thin);
    paper.setColorAt(0.85, ink.sheet);
    painter.fillRect(nights, paper);
}

void YearPainter::draw_month_row(QPainter& painter, const ChartInk& ink) const
{
    painter.setFont(ink.small_strong);
    painter.setPen(ink.ink);
    const QFontMetricsF metrics(ink.small_strong);
    std::size_t begin = 0;
    for (std::size_t month = 0; month <= month_starts_.size(); ++month) {
        const std::size_t end = month < month_starts_.size() ? month_starts_[month] : year_.days.size();
        QString name = words_.month(year_.days[begin].date);
        if (year_.days[begin].date.month() == 1 && begin > 0) {
            name += tr(" %1").arg(year_.days[begin].date.year() % 100, 2, 10, QLatin1Char('0'));
        }
        const qreal left = x(static_cast<qreal>(begin));
        const qreal right = x(static_cast<qreal>(end));
        if (metrics.horizontalAdvance(name) + 4.0 <= right - left) {
            painter.drawText(QRectF(left, 0, right - left, frame_.month_row - 2.0),
                             Qt::AlignHCenter | Qt::AlignBottom, name);
        }
        begin = end;
    }
}

void YearPainter::draw_axis(QPainter& painter, const ChartInk& ink) const
{
    const bool fahrenheit = words_.units() == models::Units::Us;
    const double pixels_per_degree = frame_.nights / (warmest_ - coldest_);
    int step = fahrenheit ? 18 : 10;
    if (!fahrenheit && pixels_per_degree * 10.0 > 60.0) {
        step = 5;
    }
    const int zero = fahrenheit ? 32 : 0;
    const qreal right = frame_.plot_left - 6.0;
    int highest = zero;
    while (highest + step <= warmest_ - (warmest_ - coldest_) * 0.03) {
        highest += step;
    }
    const QFontMetricsF metrics(ink.small);
    for (int tick = highest; tick >= coldest_; tick -= step) {
        const Celsius at = fahrenheit ? Celsius::from_fahrenheit(tick) : Celsius::from_degrees(tick);
        const qreal y = low_y(at);
        if (y > frame_.frost_top() - 10.0) { // The strip below has words of its own.
            break;
        }
        if (tick != zero) {
            painter.setPen(QPen(ink.rule, 0.9));
            painter.drawLine(QPointF(frame_.plot_left, y), QPointF(frame_.plot_right, y));
        }
        QString label = words_.whole(tick);
        if (tick == highest) {
            label += QChar(0x202F) + words_.unit();
        }
        painter.setFont(tick == zero ? ink.small_strong : ink.small);
        painter.setPen(tick == zero ? ink.ink : ink.ink2);
        painter.drawText(QRectF(0, y - 9.0, right, 18.0), Qt::AlignRight | Qt::AlignVCenter, label);
    }
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    const qreal sure = frost_y(Probability::literal(1.0));
    const qreal half = frost_y(Probability::literal(0.5));
    painter.drawText(QRectF(0, sure - 9.0, right, 18.0), Qt::AlignRight | Qt::AlignVCenter, tr("sure"));
    painter.drawText(QRectF(0, half - 9.0, right, 18.0), Qt::AlignRight | Qt::AlignVCenter, tr("1 in 2"));
    painter.setPen(QPen(ink.rule, 0.9, Qt::DotLine));
    painter.drawLine(QPointF(frame_.plot_left, half), QPointF(frame_.plot_right, half));
}

void YearPainter::draw_night_band(QPainter& painter, const ChartInk& ink) const
{
    QPolygonF warm;
    QPolygonF cold;
    QPolygonF middle;
    for (std::size_t place = 0; place < year_.days.size(); ++place) {
        const qreal at = x(static_cast<qreal>(place) + 0.5);
        warm.append({at, low_y(year_.days[place].low_warm)});
        cold.append({at, low_y(year_.days[place].low_cold)});
        middle.append({at, low_y(year_.days[place].low_middle)});
    }
    for (QPolygonF* line : {&warm, &cold, &middle}) { // The ends reach the edges of the plot.
        line->prepend({frame_.plot_left, line->first().y()});
        line->append({frame_.plot_right, line->last().y()});
    }
    QPolygonF outline = warm;
    std::for_each(cold.crbegin(), cold.crend(), [&outline](const QPointF& point) { outline.append(point); });
    QPainterPath band;
    band.addPolygon(outline);
    band.closeSubpath();

    painter.setPen(Qt::NoPen);
    QColor fill = ink.band;
    fill.setAlphaF(0.88F);
    painter.setBrush(fill);
    painter.drawPath(band);

    const qreal frost_line = low_y(Celsius::from_degrees(0.0));
    if (frost_line < frame_.frost_top()) {
        painter.save();
        painter.setClipRect(
            QRectF(frame_.plot_left, frost_line, frame_.width(), frame_.frost_top() - frost_line));
        painter.setBrush(hatch_brush(ink.cold, painter.device()->devicePixelRatioF()));
        painter.drawPath(band);
        painter.restore();
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.cold, 0.9));
    painter.drawPolyline(warm);
    painter.drawPolyline(cold);
    painter.setPen(QPen(ink.cold, 2.4));
    painter.drawPolyline(middle);
    if (frost_line < frame_.frost_top() && year_.frost.state != models::FrostMarks::State::Never) {
        painter.setPen(QPen(ink.ink, 1.5));
        painter.drawLine(QPointF(frame_.plot_left, frost_line), QPointF(frame_.plot_right, frost_line));
    }
}

void YearPainter::draw_frost_strip(QPainter& painter, const ChartInk& ink) const
{
    QPolygonF line;
    line.append({frame_.plot_left, frost_y(year_.days.front().frost)});
    for (std::size_t place = 0; place < year_.days.size(); ++place) {
        line.append({x(static_cast<qreal>(place) + 0.5), frost_y(year_.days[place].frost)});
    }
    line.append({frame_.plot_right, frost_y(year_.days.back().frost)});
    QPolygonF area = line;
    area.append({frame_.plot_right, frame_.bottom()});
    area.append({frame_.plot_left, frame_.bottom()});
    painter.setPen(Qt::NoPen);
    painter.setBrush(hatch_brush(ink.cold, painter.device()->devicePixelRatioF()));
    painter.drawPolygon(area);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.cold, 1.2));
    painter.drawPolyline(line);
    painter.drawLine(QPointF(frame_.plot_right, line.last().y()),
                     QPointF(frame_.plot_right, frame_.bottom()));
    painter.setPen(QPen(ink.edge, 1.0));
    painter.drawLine(QPointF(frame_.plot_left, frame_.bottom() - 0.5),
                     QPointF(frame_.plot_right, frame_.bottom() - 0.5));
}

void YearPainter::draw_day_length(QPainter& painter, const ChartInk& ink, Labels& labels, bool narrow) const
{
    QPolygonF line;
    for (std::size_t place = 0; place < year_.days.size(); ++place) {
        line.append({x(static_cast<qreal>(place) + 0.5), sky_y(place)});
    }
    // Whole minutes are the same for some days around a solstice; the middle one is meant.
    const auto middle_of_days_with = [this](int minutes) {
        const auto has = [minutes](const models::YearDay& day) { return day.day_length_minutes == minutes; };
        const auto first = std::find_if(year_.days.begin(), year_.days.end(), has);
        const auto end = std::find_if_not(first, year_.days.end(), has);
        return static_cast<std::size_t>((first - year_.days.begin() + end - year_.days.begin() - 1) / 2);
    };
    const std::size_t longest = middle_of_days_with(longest_day_);
    const std::size_t shortest = middle_of_days_with(shortest_day_);
    line.prepend({frame_.plot_left, line.first().y()});
    line.append({frame_.plot_right, line.last().y()});
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.ink, 1.0));
    painter.drawPolyline(line);

    const auto label = [&](std::size_t day, bool below) {
        const models::YearDay& extreme = year_.days[day];
        const QPointF dot(x(static_cast<qreal>(day) + 0.5), sky_y(day));
        painter.setBrush(ink.ink);
        painter.setPen(Qt::NoPen);
        painter.drawEllipse(dot, 2.4, 2.4);
        const QString date =
            narrow ? words_.day_and_month(extreme.date) : words_.day_and_long_month(extreme.date);
        const QString words = extreme.day_length_minutes <= 0 || extreme.day_length_minutes >= 24 * 60
                                  ? words_.day_length(extreme.day_length_minutes)
                                  : tr("%1 on %2").arg(words_.day_length(extreme.day_length_minutes), date);
        const QFontMetricsF metrics(ink.small);
        const qreal y =
            below ? std::min(dot.y() + 6.0 + metrics.ascent(), frame_.nights_top() - 3.0)
                  : std::max(dot.y() - 8.0 - metrics.descent(), frame_.sky_top() + metrics.ascent());
        painter.setFont(ink.small);
        const qreal width = metrics.horizontalAdvance(words);
        const qreal left =
            std::clamp(dot.x() - width / 2.0, frame_.plot_left + 6.0, frame_.plot_right - width - 6.0);
        // Straight onto the sky, whose colours carry ink; a halo would blot them.
        const QRectF box(left, y - metrics.ascent(), width, metrics.height());
        if (std::none_of(labels.taken.begin(), labels.taken.end(),
                         [&box](const QRectF& other) { return other.intersects(box); })) {
            labels.taken.push_back(box);
            painter.setPen(ink.ink);
            painter.drawText(QPointF(std::round(left), std::round(y)), words);
        }
    };
    if (longest_day_ - shortest_day_ >= 10) {
        label(longest, true);
        label(shortest, false);
    } else {
        label(longest, true);
    }
}

void YearPainter::draw_frost_dates(QPainter& painter, const ChartInk& ink, Labels& labels, bool narrow) const
{
    const models::FrostMarks& frost = year_.frost;
    const qreal zero = low_y(Celsius::from_degrees(0.0));
    if (frost.state != models::FrostMarks::State::Ordinary) {
        QString words;
        switch (frost.state) {
        case models::FrostMarks::State::Never:
            words = tr("no frost at this place");
            break;
        case models::FrostMarks::State::AlwaysPossible:
            words = tr("frost in every month, no safe window");
            break;
        default:
            words = tr("chance per night, no season here");
            break;
        }
        labels.write((frame_.plot_left + frame_.plot_right) / 2.0, frame_.frost_top() - 10.0, {words},
                     ink.small, ink.ink, Qt::AlignHCenter);
        return;
    }
    const auto date = [this](std::size_t day) { return words_.day_and_month(year_.days[day].date); };
    const auto draw = [&](std::optional<std::size_t> half, std::optional<std::size_t> tenth, bool last) {
        if (!tenth && !half) {
            return;
        }
        const qreal tenth_x = x(static_cast<qreal>(tenth.value_or(half.value_or(0))) + 0.5);
        const qreal half_x = x(static_cast<qreal>(half.value_or(tenth.value_or(0))) + 0.5);
        if (half && tenth && (last ? *half <= *tenth : *tenth <= *half)) {
            painter.setPen(QPen(ink.ink, 5.0, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(QPointF(half_x, zero), QPointF(tenth_x, zero));
            painter.setPen(QPen(ink.ink, 1.6));
            painter.drawLine(QPointF(half_x, zero - 7.0), QPointF(half_x, zero + 7.0));
        }
        QStringList lines;
        if (last) {
            if (half) {
                lines.append(
                    (narrow ? tr("last frost: half by %1,") : tr("last frost: half the springs by %1,"))
                        .arg(date(*half)));
            }
            if (tenth) {
                lines.append((half ? (narrow ? tr("1 in 10 after %1") : tr("1 spring in 10 after %1"))
                                   : tr("last frost: 1 year in 10 after %1"))
                                 .arg(date(*tenth)));
            }
        } else {
            if (half) {
                lines.append(
                    (narrow ? tr("first frost: half by %1,") : tr("first frost: half the autumns by %1,"))
                        .arg(date(*half)));
            }
            if (tenth) {
                lines.append((half ? (narrow ? tr("1 in 10 by %1") : tr("1 autumn in 10 by %1"))
                                   : tr("first frost: 1 year in 10 by %1"))
                                 .arg(date(*tenth)));
            }
        }
        const QFontMetricsF metrics(ink.small);
        const qreal first_row = std::min(zero + 24.0, frame_.frost_top() - 50.0);
        // Last beside its date on the warm side; first one row lower, so that the two never meet.
        const qreal y = last ? first_row : first_row + 2.2 * metrics.height();
        bool written = last ? labels.write(tenth_x + 9.0 + 16.0, y, lines, ink.small, ink.ink)
                            : labels.write(tenth_x - 9.0, y, lines, ink.small, ink.ink, Qt::AlignRight);
        if (!written) {
            written = last ? labels.write(half_x - 9.0, y, lines, ink.small, ink.ink, Qt::AlignRight)
                           : labels.write(half_x + 9.0, y, lines, ink.small, ink.ink);
        }
        if (written) {
            painter.setPen(QPen(ink.ink2, 1.0));
            painter.drawLine(QPointF(tenth_x, zero + 3.0), QPointF(tenth_x, y + 8.0));
        }
    };
    draw(frost.last_half, frost.last_tenth, true);
    draw(frost.first_half, frost.first_tenth, false);
}

void YearPainter::draw_words(QPainter& painter, const ChartInk& ink, Labels& labels, bool narrow) const
{
    (void)painter;
    std::size_t warmest = 0;
    std::size_t coldest = 0;
    std::size_t least_frost = 0;
    for (std::size_t place = 0; place < year_.days.size(); ++place) {
        const models::YearDay& day = year_.days[place];
        if (day.low_middle > year_.days[warmest].low_middle) {
            warmest = place;
        }
        if (day.low_middle < year_.days[coldest].low_middle) {
            coldest = place;
        }
        if (day.frost < year_.days[least_frost].frost) {
            least_frost = place;
        }
    }
    const qreal warm_x = x(static_cast<qreal>(warmest));
    // The middle line is named on the slope into the cold, where it stands alone.
    const QFontMetricsF metrics(ink.small_strong);
    const auto slope = [&](qreal share) {
        const auto day =
            static_cast<qreal>(warmest) + share * (static_cast<qreal>(coldest) - static_cast<qreal>(warmest));
        return static_cast<std::size_t>(std::clamp(day, 0.0, static_cast<qreal>(year_.days.size() - 1)));
    };
    for (const qreal share : {0.82, 0.7, 0.9}) {
        const std::size_t day = slope(share);
        if (labels.write(x(static_cast<qreal>(day)),
                         low_y(year_.days[day].low_middle) + metrics.ascent() / 2.0 - 1.0,
                         {tr("middle night low")}, ink.small_strong, ink.ink, Qt::AlignHCenter)) {
            break;
        }
    }
    if (year_.frost.state != models::FrostMarks::State::Never) {
        const qreal zero = low_y(Celsius::from_degrees(0.0));
        for (const qreal share : {1.0, 0.9, 1.1}) {
            if (labels.write(x(static_cast<qreal>(slope(share))), zero - 5.0, {tr("frost line")},
                             ink.small_strong, ink.ink, Qt::AlignHCenter)) {
                break;
            }
        }
    }
    if (narrow) {
        labels.write(warm_x, low_y(year_.days[warmest].low_cold) + 13.0, {tr("9 nights in 10 within")},
                     ink.small, ink.ink2, Qt::AlignHCenter);
    } else {
        labels.write(warm_x, low_y(year_.days[warmest].low_warm) - 5.0, {tr("1 night in 20 is warmer")},
                     ink.small, ink.ink2, Qt::AlignHCenter);
        labels.write(warm_x, low_y(year_.days[warmest].low_cold) + 13.0, {tr("1 night in 20 is colder")},
                     ink.small, ink.ink2, Qt::AlignHCenter);
    }
    labels.write(x(static_cast<qreal>(least_frost)), frame_.bottom() - 10.0,
                 {narrow ? tr("chance of a frost night") : tr("chance that a night has frost, open air")},
                 ink.small, ink.ink2, Qt::AlignHCenter) ||
        labels.write((frame_.plot_left + frame_.plot_right) / 2.0, frame_.bottom() - 10.0,
                     {tr("chance of a frost night")}, ink.small, ink.ink2, Qt::AlignHCenter);
}

void draw_month_lines(QPainter& painter, const ChartInk& ink, const models::YearData& year, qreal left,
                      qreal width, qreal top, qreal bottom)
{
    const auto count = static_cast<qreal>(std::max<std::size_t>(1, year.days.size()));
    painter.setPen(QPen(ink.rule, 0.9));
    for (std::size_t place = 1; place < year.days.size(); ++place) {
        if (year.days[place].date.day() == 1) {
            const qreal at = std::round(left + width * static_cast<qreal>(place) / count) + 0.5;
            painter.drawLine(QPointF(at, top), QPointF(at, bottom));
        }
    }
    painter.setPen(QPen(ink.ink, 2.0, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(left, top), QPointF(left, bottom));
}

namespace {

/// The steps of a ladder: the new spot grows from below, left to right.
QPolygonF ladder_steps(const QRectF& box, int steps)
{
    QPolygonF line;
    for (int step = 0; step < steps; ++step) {
        const qreal y = box.bottom() - box.height() * (step + 1) / (steps + 1);
        line.append({box.left() + box.width() * step / steps, y});
        line.append({box.left() + box.width() * (step + 1) / steps, y});
    }
    return line;
}

void fill_spot(QPainter& painter, const ChartInk& ink, const models::YearSpot& spot, const QPainterPath& area)
{
    const auto colour = static_cast<qsizetype>(spot.colour);
    painter.fillPath(area, ink.tints[colour]);
    const QBrush pattern = pattern_brush(static_cast<models::Pattern>(spot.colour), ink.spots[colour],
                                         painter.device()->devicePixelRatioF());
    if (pattern.style() != Qt::NoBrush) {
        painter.fillPath(area, pattern);
    }
}

} // namespace

void draw_plant_bar(QPainter& painter, const ChartInk& ink, const models::YearModel& model, std::size_t plant,
                    QRectF row, qreal bar_height)
{
    const models::YearData& year = model.year();
    const auto count = static_cast<qreal>(std::max<std::size_t>(1, year.days.size()));
    const auto x = [&row, count](qreal day) { return row.left() + row.width() * day / count; };
    const qreal top = std::round(row.top() + (row.height() - bar_height) / 2.0 + 3.0) + 0.5;
    const bool old = model.planning();
    painter.setRenderHint(QPainter::Antialiasing);
    if (ink.spots.size() < 8 || ink.tints.size() < 8) {
        return;
    }

    const auto& stays = model.stays(plant);
    for (std::size_t place = 0; place < stays.size(); ++place) {
        const models::YearStay& stay = stays[place];
        const models::YearSpot& spot = year.spots[stay.spot];
        const auto colour = static_cast<qsizetype>(spot.colour);
        const QColor full = ink.spots[colour];
        const bool own_ladder_inside = stay.ladder_days > 0 && !spot.outdoors && place > 0;
        const qreal begin = x(own_ladder_inside ? stay.first + stay.ladder_days : stay.first);
        const bool next_ladder_inside = place + 1 < stays.size() && stays[place + 1].ladder_days > 0 &&
                                        year.spots[stays[place + 1].spot].outdoors;
        const qreal end =
            x(next_ladder_inside ? stay.last + 1 - stays[place + 1].ladder_days : stay.last + 1);
        const QRectF box(begin, top, std::max(1.0, end - begin), bar_height);
        QPainterPath area;
        area.addRect(box);
        fill_spot(painter, ink, spot, area);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(full, 1.3, old ? Qt::DashLine : Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.drawRect(box);
        painter.fillRect(QRectF(box.left() - 1.0, box.top() - 0.65, 3.0, box.height() + 1.3), full);

        if (stay.ladder_days > 0 && place > 0) {
            const models::YearSpot& before = year.spots[stays[place - 1].spot];
            const qreal from = x(spot.outdoors ? stay.first - stay.ladder_days : stay.first);
            const QRectF ladder(from, top, box.left() - from, bar_height);
            const QPolygonF steps =
                ladder_steps(ladder, spot.outdoors ? models::kStepsOut : models::kStepsIn);
            QPainterPath old_light;
            old_light.addRect(ladder);
            fill_spot(painter, ink, before, old_light);
            QPolygonF below = steps;
            below.append(ladder.bottomRight());
            below.append(ladder.bottomLeft());
            QPainterPath new_light;
            new_light.addPolygon(below);
            new_light.closeSubpath();
            fill_spot(painter, ink, spot, new_light);
            const QColor old_full = ink.spots[static_cast<qsizetype>(before.colour)];
            painter.setPen(QPen(old_full, 1.3, old ? Qt::DashLine : Qt::SolidLine));
            painter.drawLine(ladder.topLeft(), ladder.topRight());
            painter.setPen(QPen(full, 1.3, old ? Qt::DashLine : Qt::SolidLine));
            painter.drawLine(ladder.bottomLeft(), ladder.bottomRight());
            painter.setPen(QPen(full, 2.0, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
            painter.drawPolyline(steps);
        }

        const QString name = models::text(spot.short_name);
        const QFontMetricsF metrics(ink.small_strong);
        const qreal name_width = metrics.horizontalAdvance(name);
        if (box.width() >= name_width + 16.0) {
            const QRectF plate(std::round(box.left() + 7.0), box.top() + 1.0, name_width + 8.0,
                               bar_height - 2.0);
            painter.fillRect(plate, ink.tints[colour]);
            painter.setFont(ink.small_strong);
            painter.setPen(ink.ink);
            painter.drawText(
                QPointF(plate.left() + 4.0, std::round(plate.center().y() + metrics.capHeight() / 2.0 - 0.5)),
                name);
        }
    }
    painter.setBrush(Qt::NoBrush);
    for (const models::RiskDate& date : model.dates(plant)) {
        const qreal fifth = x(static_cast<qreal>(date.at_fifth));
        const qreal twentieth = x(static_cast<qreal>(date.at_twentieth));
        const qreal chosen = x(static_cast<qreal>(date.chosen));
        const qreal y = top - 3.5;
        painter.setPen(QPen(ink.ink, 1.0));
        painter.drawLine(QPointF(fifth, y), QPointF(twentieth, y));
        painter.drawLine(QPointF(fifth, y - 2.5), QPointF(fifth, y + 2.5));
        painter.drawLine(QPointF(twentieth, y - 2.5), QPointF(twentieth, y + 2.5));
        painter.setPen(QPen(ink.ink, 2.4, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(chosen, y - 2.5), QPointF(chosen, y + 2.5));
    }
}

} // namespace lathhouse::chart
