#include "app/chart/year_painter.h"

#include "app/models/strip_words.h"

#include <QFontMetricsF>
#include <QLinearGradient>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::chart {

namespace {

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

YearPainter::YearPainter(const models::YearData& year, const models::YearWords& words, YearFrame frame)
    : year_(year), words_(words), frame_(frame)
{
    if (frame_.view.count <= 0) {
        frame_.view = {0, static_cast<int>(std::max<std::size_t>(1, year_.days.size()))};
    }
    if (year_.days.empty()) {
        return;
    }
    const bool fahrenheit = words_.fahrenheit();
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
    return frame_.plot_left + frame_.width() * (day - frame_.view.first) / frame_.view.count;
}

bool YearPainter::in_view(std::size_t day) const
{
    const auto place = static_cast<int>(day);
    return place >= frame_.view.first && place < frame_.view.first + frame_.view.count;
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

qreal YearPainter::share_y(qreal share) const
{
    return frame_.bottom() - (frame_.frost - 2.0) * share;
}

qreal YearPainter::strip_y(std::size_t day) const
{
    return share_y(models::strip_share(year_, day));
}

bool YearPainter::draws_frost_line() const
{
    return year_.strip.kind == models::YearStrip::Kind::FrostNights &&
           year_.frost.state != models::FrostMarks::State::Never &&
           low_y(Celsius::from_degrees(0.0)) < frame_.frost_top();
}

void YearPainter::draw_ground(QPainter& painter, const ChartInk& ink, bool narrow) const
{
    if (year_.days.empty()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    draw_sky_colours(painter, ink);
    draw_axis(painter, ink);
    draw_month_lines(painter, ink, year_, frame_.view, frame_.plot_left, frame_.width(), 0.0,
                     frame_.bottom() + frame_.lines_below);
    draw_month_row(painter, ink);
    painter.save();
    painter.setClipRect(QRectF(frame_.plot_left - 1.0, 0.0, frame_.width() + 2.0, frame_.bottom() + 1.0));
    draw_night_band(painter, ink);
    draw_strip(painter, ink);
    draw_frost_dates(painter, ink, narrow);
    draw_day_length(painter, ink);
    painter.restore();
}

void YearPainter::draw_bands(QPainter& painter, const ChartInk& ink, bool narrow) const
{
    draw_ground(painter, ink, narrow);
    const std::vector<ChartLabel> written = labels(ink, narrow);
    const std::vector<LabelPlace> places = places_at_home(wishes_of(written));
    for (std::size_t label = 0; label < written.size(); ++label) {
        if (places[label]) {
            write_label(painter, ink, written[label], *places[label]);
        }
    }
}

void YearPainter::draw_sky_colours(QPainter& painter, const ChartInk& ink) const
{
    if (!ink.sky_coloured) {
        return;
    }
    constexpr std::size_t kStops = 48;
    QLinearGradient sky(frame_.plot_left, 0, frame_.plot_right, 0);
    for (std::size_t stop = 0; stop <= kStops; ++stop) {
        const std::size_t day = std::min(
            year_.days.size() - 1, static_cast<std::size_t>(frame_.view.first) +
                                       stop * static_cast<std::size_t>(frame_.view.count) / kStops);
        sky.setColorAt(static_cast<double>(stop) / kStops,
                       sky_colour(ink, year_.days[day].day_length_minutes));
    }
    painter.fillRect(QRectF(frame_.plot_left, frame_.sky_top(), frame_.width(), frame_.sky), sky);
    if (ink.paper) {
        return;
    }
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
        const qreal left = std::max(x(static_cast<qreal>(begin)), frame_.plot_left);
        const qreal right = std::min(x(static_cast<qreal>(end)), frame_.plot_right);
        const QString head = month_head(words_, year_.days[begin].date, right - left - 4.0,
                                        [&metrics](const QString& of) { return metrics.horizontalAdvance(of); });
        if (!head.isEmpty()) {
            painter.drawText(QRectF(left, 0, right - left, frame_.month_row - 2.0),
                             Qt::AlignHCenter | Qt::AlignBottom, head);
        }
        begin = end;
    }
}

void YearPainter::draw_axis(QPainter& painter, const ChartInk& ink) const
{
    const bool fahrenheit = words_.fahrenheit();
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
    const auto tick_box = [right, height = metrics.height()](qreal y) {
        return QRectF(0, y - height / 2.0, right, height);
    };
    for (int tick = highest; tick >= coldest_; tick -= step) {
        const Celsius at = fahrenheit ? Celsius::from_fahrenheit(tick) : Celsius::from_degrees(tick);
        const qreal y = low_y(at);
        if (y > frame_.frost_top() + 1.0 - metrics.height() * 0.6) { // The strip below has words of its own.
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
        painter.drawText(tick_box(y), Qt::AlignRight | Qt::AlignVCenter, label);
    }
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    const qreal sure = share_y(1.0);
    const qreal half = share_y(0.5);
    painter.drawText(tick_box(sure), Qt::AlignRight | Qt::AlignVCenter, models::strip_top(year_, words_));
    if (half - sure > metrics.height() * 0.8) {
        painter.drawText(tick_box(half), Qt::AlignRight | Qt::AlignVCenter,
                         models::strip_middle(year_, words_));
    }
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
        line->prepend({x(0.0), line->first().y()});
        line->append({x(static_cast<qreal>(year_.days.size())), line->last().y()});
    }
    QPolygonF outline = warm;
    std::for_each(cold.crbegin(), cold.crend(), [&outline](const QPointF& point) { outline.append(point); });
    QPainterPath band;
    band.addPolygon(outline);
    band.closeSubpath();

    painter.setPen(Qt::NoPen);
    QColor fill = ink.band;
    fill.setAlphaF(ink.paper ? 1.0F : 0.88F);
    painter.setBrush(fill);
    painter.drawPath(band);

    const qreal frost_line = low_y(Celsius::from_degrees(0.0));
    if (frost_line < frame_.frost_top()) {
        painter.save();
        painter.setClipRect(
            QRectF(frame_.plot_left, frost_line, frame_.width(), frame_.frost_top() - frost_line),
            Qt::IntersectClip);
        fill_hatch(painter, ink, ink.cold, band);
        painter.restore();
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.cold, 0.9));
    painter.drawPolyline(warm);
    painter.drawPolyline(cold);
    painter.setPen(QPen(ink.cold, 2.4));
    painter.drawPolyline(middle);
    if (draws_frost_line()) {
        painter.setPen(QPen(ink.ink, 1.5));
        painter.drawLine(QPointF(frame_.plot_left, frost_line), QPointF(frame_.plot_right, frost_line));
    }
}

void YearPainter::draw_strip(QPainter& painter, const ChartInk& ink) const
{
    const bool cold = year_.strip.kind == models::YearStrip::Kind::FrostNights ||
                      year_.strip.kind == models::YearStrip::Kind::TenderNights;
    const QColor& colour = year_.strip.kind == models::YearStrip::Kind::HotDays ? ink.warm
                           : cold                                               ? ink.cold
                                                                                : ink.ink2;
    QPolygonF line;
    const qreal end = x(static_cast<qreal>(year_.days.size()));
    line.append({x(0.0), strip_y(0)});
    for (std::size_t place = 0; place < year_.days.size(); ++place) {
        line.append({x(static_cast<qreal>(place) + 0.5), strip_y(place)});
    }
    line.append({end, strip_y(year_.days.size() - 1)});
    QPolygonF area = line;
    area.append({end, frame_.bottom()});
    area.append({x(0.0), frame_.bottom()});
    QPainterPath below;
    below.addPolygon(area);
    below.closeSubpath();
    fill_hatch(painter, ink, colour, below);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, 1.2));
    painter.drawPolyline(line);
    painter.drawLine(QPointF(end, line.last().y()), QPointF(end, frame_.bottom()));
    painter.setPen(QPen(ink.edge, 1.0));
    painter.drawLine(QPointF(frame_.plot_left, frame_.bottom() - 0.5),
                     QPointF(frame_.plot_right, frame_.bottom() - 0.5));
}

std::array<std::size_t, 2> YearPainter::longest_and_shortest() const
{
    // Whole minutes are the same for some days around a solstice; the middle one is meant.
    const auto middle_of_days_with = [this](int minutes) {
        const auto has = [minutes](const models::YearDay& day) { return day.day_length_minutes == minutes; };
        const auto first = std::find_if(year_.days.begin(), year_.days.end(), has);
        const auto end = std::find_if_not(first, year_.days.end(), has);
        return static_cast<std::size_t>((first - year_.days.begin() + end - year_.days.begin() - 1) / 2);
    };
    return {middle_of_days_with(longest_day_), middle_of_days_with(shortest_day_)};
}

void YearPainter::draw_day_length(QPainter& painter, const ChartInk& ink) const
{
    QPolygonF line;
    for (std::size_t place = 0; place < year_.days.size(); ++place) {
        line.append({x(static_cast<qreal>(place) + 0.5), sky_y(place)});
    }
    line.prepend({x(0.0), line.first().y()});
    line.append({x(static_cast<qreal>(year_.days.size())), line.last().y()});
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.ink, 1.0));
    painter.drawPolyline(line);
    painter.setBrush(ink.ink);
    painter.setPen(Qt::NoPen);
    const auto [longest, shortest] = longest_and_shortest();
    painter.drawEllipse(QPointF(x(static_cast<qreal>(longest) + 0.5), sky_y(longest)), 2.4, 2.4);
    if (has_seasons_of_light()) {
        painter.drawEllipse(QPointF(x(static_cast<qreal>(shortest) + 0.5), sky_y(shortest)), 2.4, 2.4);
    }
}

void YearPainter::draw_frost_dates(QPainter& painter, const ChartInk& ink, bool narrow) const
{
    const models::FrostMarks& frost = year_.frost;
    if (frost.state != models::FrostMarks::State::Ordinary) {
        return;
    }
    const qreal zero = low_y(Celsius::from_degrees(0.0));
    const std::vector<ChartLabel> written = labels(ink, narrow);
    const std::vector<LabelPlace> places = places_at_home(wishes_of(written));
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
        const auto words = last ? ChartLabel::Part::LastFrost : ChartLabel::Part::FirstFrost;
        for (std::size_t label = 0; label < written.size(); ++label) {
            if (written[label].part == words && places[label]) {
                painter.setPen(QPen(ink.ink2, 1.0));
                const qreal end = places[label]->y() + (places[label]->y() > zero ? 8.0 : -4.0);
                painter.drawLine(QPointF(tenth_x, zero + 3.0), QPointF(tenth_x, end));
            }
        }
    };
    draw(frost.last_half, frost.last_tenth, true);
    draw(frost.first_half, frost.first_tenth, false);
}

void draw_month_lines(QPainter& painter, const ChartInk& ink, const models::YearData& year,
                      models::DaySpan view, qreal left, qreal width, qreal top, qreal bottom)
{
    painter.setPen(QPen(ink.rule, 0.9));
    const int end = std::min(view.first + view.count, static_cast<int>(year.days.size()));
    for (int place = view.first + 1; place < end; ++place) {
        if (year.days[static_cast<std::size_t>(place)].date.day() == 1) {
            const qreal at = std::round(left + width * (place - view.first) / view.count) + 0.5;
            painter.drawLine(QPointF(at, top), QPointF(at, bottom));
        }
    }
    // The edge is heavy where it is today's.
    painter.setPen(view.first == 0 && year.from_today ? QPen(ink.ink, 2.0, Qt::SolidLine, Qt::FlatCap)
                                   : QPen(ink.edge, 1.0, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(left, top), QPointF(left, bottom));
}

QString month_head(const models::YearWords& words, calendar::Date date, qreal room,
                   const std::function<qreal(const QString&)>& width)
{
    const QString name = words.month(date);
    if (date.month() == 1) {
        const QString with_year = name + YearPainter::tr(" %1").arg(date.year() % 100, 2, 10, QLatin1Char('0'));
        if (width(with_year) <= room) {
            return with_year;
        }
    }
    return width(name) <= room ? name : QString{};
}

} // namespace lathhouse::chart
