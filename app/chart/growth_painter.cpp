#include "app/chart/growth_painter.h"

#include "app/chart/axis.h"
#include "app/chart/chart_label.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <optional>

namespace lathhouse::chart {

namespace {

QString tr(const char* words)
{
    return QCoreApplication::translate("lathhouse::chart", words);
}

void lozenge(QPainter& painter, QPointF middle, qreal reach, const QColor& colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF{middle + QPointF(0, -reach), middle + QPointF(reach, 0), middle + QPointF(0, reach),
                                  middle + QPointF(-reach, 0)});
}

class GrowthPainter {
    Q_DECLARE_TR_FUNCTIONS(GrowthPainter)

public:
    GrowthPainter(QPainter& painter, const ChartInk& ink, const models::GrowthChartData& chart,
                  const models::YearWords& words, calendar::Date today, QRectF room)
        : painter_(painter), ink_(ink), chart_(chart), words_(words), metrics_(ink.small),
          from_(chart.growth.readings.front().date), to_(chart.growth.readings.back().date)
    {
        const auto& readings = chart.growth.readings;
        if (chart.next_reading) {
            to_ = std::max(to_, *chart.next_reading);
        } else if (calendar::days_between(to_, today) < 60) {
            to_ = std::max(to_, today);
        }
        for (const auto& event : chart.events) {
            to_ = std::max(to_, event.date);
        }
        const int days = std::max(14, calendar::days_between(from_, to_));
        from_ -= calendar::Days{std::max(2, days / 60)};
        to_ += calendar::Days{std::max(4, days / 24)};
        double low = readings.front().value;
        double high = low;
        const auto take = [&](double value) {
            low = std::min(low, value);
            high = std::max(high, value);
        };
        for (const auto& of : readings) {
            take(of.value);
        }
        for (const auto& of : chart.growth.course) {
            take(std::clamp(of.low, low * 0.7, high * 1.4));
            take(std::clamp(of.high, low * 0.7, high * 1.4));
        }
        set_scale(shown(low), shown(high));
        const qreal left = label_width() + 10.0;
        const qreal top = 2.0 * metrics_.height() + 14.0;
        const qreal bottom = metrics_.height() + 10.0;
        plot_ = QRectF(room.left() + left, room.top() + top, room.width() - left - 8.0, room.height() - top - bottom);
        room_ = room;
    }

    void draw()
    {
        if (plot_.width() < 60.0 || plot_.height() < 40.0) {
            return;
        }
        painter_.setRenderHint(QPainter::Antialiasing);
        draw_standing();
        draw_grid();
        draw_fit();
        draw_next();
        draw_events();
        draw_moves();
        draw_readings();
        const auto places = places_at_home(wishes_of(labels_));
        for (std::size_t at = 0; at < labels_.size(); ++at) {
            if (places[at]) {
                write_label(painter_, ink_, labels_[at], *places[at]);
            }
        }
    }

private:
    double shown(double kept) const { return chart_.percent ? 100.0 * kept : chart_.factor * kept; }
    double scaled(double value) const { return chart_.logarithmic ? std::log(std::max(value, 1e-9)) : value; }

    void set_scale(double low, double high)
    {
        if (chart_.logarithmic) {
            low /= 1.06;
            high *= 1.10;
            if (high / low < 1.35) { // A plant that hardly grows still has a scale.
                const double middle = std::sqrt(low * high);
                low = middle / 1.17;
                high = middle * 1.17;
            }
            for (int power = -2; power <= 5; ++power) {
                for (const double step : {1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 7.0}) {
                    add_tick(step * std::pow(10.0, power), low, high);
                }
            }
            if (ticks_.size() < 3) { // A narrow range needs finer steps.
                ticks_.clear();
                const double step = std::pow(10.0, std::floor(std::log10((high - low) / 2.0)));
                const double fine = (high - low) / step > 12.0 ? 5.0 * step : (high - low) / step > 6.0 ? 2.0 * step : step;
                for (double tick = std::ceil(low / fine) * fine; tick <= high; tick += fine) {
                    ticks_.push_back(tick);
                }
            }
            bottom_ = std::log(low);
            top_ = std::log(high);
            return;
        }
        const double room = std::max(high - low, chart_.percent ? 4.0 : 2.0) * 0.12;
        const Axis axis(std::max(0.0, low - room), high + room, 6, chart_.counts ? 1.0 : 0.0);
        bottom_ = axis.bottom();
        top_ = axis.top();
        for (double tick = axis.bottom(); tick <= axis.top() + 1e-9; tick += axis.step()) {
            ticks_.push_back(tick);
        }
    }
    void add_tick(double tick, double low, double high)
    {
        if (tick >= low && tick <= high) {
            ticks_.push_back(tick);
        }
    }

    QString tick_words(double tick) const
    {
        const int decimals = tick == std::floor(tick) ? 0 : tick * 10.0 == std::floor(tick * 10.0 + 0.5) ? 1 : 2;
        return words_.decimal(tick, decimals);
    }
    QString unit() const { return chart_.percent ? QStringLiteral("%") : chart_.unit; }
    qreal label_width() const
    {
        qreal width = 0.0;
        for (const double tick : ticks_) {
            width = std::max(width, metrics_.horizontalAdvance(tick_words(tick)));
        }
        return width + (unit().isEmpty() ? 0.0 : metrics_.horizontalAdvance(QLatin1Char(' ') + unit()));
    }

    qreal x(calendar::Date date) const
    {
        return plot_.left() + plot_.width() * calendar::days_between(from_, date) /
                                  std::max(1, calendar::days_between(from_, to_));
    }
    qreal y(double kept) const { return y_shown(shown(kept)); }
    qreal y_shown(double value) const
    {
        return plot_.bottom() - plot_.height() * (scaled(value) - bottom_) / (top_ - bottom_);
    }

    void draw_grid()
    {
        painter_.setFont(ink_.small);
        qreal lowest_label = plot_.bottom() + metrics_.height();
        for (const double tick : ticks_) {
            const qreal at = y_shown(tick);
            painter_.setPen(QPen(ink_.rule, 0.9));
            painter_.drawLine(QPointF(plot_.left(), at), QPointF(plot_.right(), at));
            if (lowest_label - at < metrics_.height() * 0.9) { // Ticks of a logarithm crowd at its top.
                continue;
            }
            lowest_label = at;
            painter_.setPen(ink_.ink2);
            const QString words = tick == ticks_.back() && !unit().isEmpty() ? tick_words(tick) + QLatin1Char(' ') + unit()
                                                                             : tick_words(tick);
            painter_.drawText(QRectF(room_.left(), at - metrics_.height() / 2.0, plot_.left() - room_.left() - 8.0,
                                     metrics_.height()),
                              Qt::AlignRight | Qt::AlignVCenter, words);
        }
        painter_.setPen(QPen(ink_.edge, 1.0));
        painter_.drawLine(plot_.bottomLeft(), plot_.bottomRight());
        draw_months();
    }

    void draw_months()
    {
        const double month_width = plot_.width() * 30.4 / std::max(1, calendar::days_between(from_, to_));
        const qreal room = metrics_.horizontalAdvance(QStringLiteral("Mmm 00")) + 8.0;
        int every = 1;
        for (const int of : {1, 2, 3, 6, 12}) {
            every = of;
            if (month_width * of >= room) {
                break;
            }
        }
        calendar::Date first{from_.year(), from_.month(), 1};
        while (first <= to_) {
            const calendar::Date next = first + boost::gregorian::months(1);
            if (first >= from_) {
                painter_.setPen(QPen(ink_.edge, 1.0));
                painter_.drawLine(QPointF(x(first), plot_.bottom()), QPointF(x(first), plot_.bottom() + 4.0));
            }
            const int month = static_cast<int>(first.month());
            const qreal middle = std::clamp((x(first) + x(next)) / 2.0, plot_.left(), plot_.right());
            const bool whole = x(next) - std::max(x(first), plot_.left()) > room * 0.6 || every > 1;
            if ((month - 1) % every == 0 && whole && x(first) > plot_.left() - month_width * 0.4 && x(next) < plot_.right() + month_width * 0.4) {
                QString name = words_.month(first);
                if (month == 1) {
                    name += QStringLiteral(" %1").arg(static_cast<int>(first.year()) % 100, 2, 10, QLatin1Char('0'));
                }
                painter_.setPen(ink_.ink2);
                painter_.drawText(QRectF(middle - room, plot_.bottom() + 5.0, 2.0 * room, metrics_.height()),
                                  Qt::AlignHCenter | Qt::AlignTop, name);
            }
            first = next;
        }
    }

    ChartLabel label(const QStringList& lines, const QFont& font, const QColor& colour, std::vector<QPointF> homes) const
    {
        ChartLabel made{.lines = lines, .font = font, .colour = colour};
        measure(made);
        made.wish.room = room_;
        made.wish.homes = std::move(homes);
        return made;
    }

    void draw_standing()
    {
        const auto& course = chart_.growth.course;
        QRectF widest;
        for (std::size_t at = 0; at + 1 < course.size();) {
            if (!course[at].clock_stands) {
                ++at;
                continue;
            }
            std::size_t end = at;
            while (end + 1 < course.size() && course[end].clock_stands) {
                ++end;
            }
            const QRectF still(QPointF(x(course[at].date), plot_.top()), QPointF(x(course[end].date), plot_.bottom()));
            QPainterPath area;
            area.addRect(still);
            fill_hatch(painter_, ink_, ink_.ink2, area);
            if (still.width() > widest.width()) {
                widest = still;
            }
            at = end;
        }
        const QStringList lines{tr("growth clock"), tr("stands still")};
        const qreal width = metrics_.horizontalAdvance(lines[1]) + 8.0;
        if (widest.width() > width) {
            const qreal left = widest.center().x() - width / 2.0 + 4.0;
            std::vector<QPointF> homes;
            for (const qreal share : {0.78, 0.62, 0.9, 0.2}) {
                homes.push_back({left, plot_.top() + plot_.height() * share});
            }
            labels_.push_back(label(lines, ink_.small, ink_.ink2, std::move(homes)));
        }
    }

    void draw_fit()
    {
        const auto& course = chart_.growth.course;
        if (course.size() < 2) {
            return;
        }
        painter_.save();
        painter_.setClipRect(plot_.adjusted(0, -1, 0, 1));
        // The event parts the fit: it may have been a step.
        const auto event = chart_.growth.event ? chart_.growth.event->date : course.front().date;
        for (const bool after : {false, true}) {
            QPolygonF upper;
            QPolygonF lower;
            QPolygonF middle;
            for (const auto& day : course) {
                if ((day.date > event) == after) {
                    upper << QPointF(x(day.date), y(day.high));
                    lower << QPointF(x(day.date), y(day.low));
                    middle << QPointF(x(day.date), y(day.middle));
                }
            }
            if (middle.size() < 2) {
                continue;
            }
            QPolygonF band = upper;
            for (auto at = lower.crbegin(); at != lower.crend(); ++at) {
                band << *at;
            }
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(ink_.leaf_wash);
            painter_.drawPolygon(band);
            painter_.setPen(QPen(ink_.leaf, 0.9));
            painter_.drawPolyline(upper);
            painter_.drawPolyline(lower);
            painter_.setPen(QPen(ink_.leaf, 2.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            painter_.drawPolyline(middle);
        }
        QPolygonF undisturbed;
        for (const auto& day : course) {
            if (day.undisturbed) {
                undisturbed << QPointF(x(day.date), y(*day.undisturbed));
            }
        }
        QPen dotted(ink_.ink2, 1.6, Qt::CustomDashLine, Qt::RoundCap);
        dotted.setDashPattern({0.1, 3.0});
        painter_.setPen(dotted);
        painter_.drawPolyline(undisturbed);
        painter_.restore();
        std::vector<QPointF> homes;
        const QString words = tr("had nothing happened");
        const qreal width = metrics_.horizontalAdvance(words);
        for (const double share : {0.9, 0.7, 0.5, 0.35, 0.2}) {
            if (undisturbed.isEmpty()) {
                break;
            }
            const QPointF at = undisturbed[static_cast<qsizetype>(static_cast<double>(undisturbed.size() - 1) * share)];
            if (plot_.contains(at)) { // On the side away from the fit.
                const auto& day = *std::ranges::min_element(course, {}, [&](const growth::FittedDay& of) {
                    return std::abs(x(of.date) - at.x());
                });
                const bool below = day.undisturbed && *day.undisturbed < day.middle;
                const qreal base = below ? at.y() + metrics_.height() + 6.0 : at.y() - 9.0;
                homes.push_back({below ? at.x() - width / 2.0 : at.x() - width - 6.0, base});
                homes.push_back({at.x() + 10.0, base});
            }
        }
        if (!homes.empty()) {
            later_.push_back(label({words}, ink_.small, ink_.ink2, std::move(homes)));
        }
    }

    void draw_events()
    {
        for (const bool judged : {true, false}) {
            for (const auto& event : chart_.events) {
                const bool is_judged = chart_.growth.event && event.date == chart_.growth.event->date;
                if (is_judged != judged) {
                    continue;
                }
                const qreal at = x(event.date);
                const qreal top = room_.top() + metrics_.height() * (judged ? 0.5 : 1.5) + 4.0;
                painter_.setPen(QPen(ink_.caution, judged ? 2.0 : 1.1));
                painter_.drawLine(QPointF(at, top), QPointF(at, plot_.bottom()));
                lozenge(painter_, {at, top}, judged ? 6.0 : 4.5, ink_.caution);
                const QString words = tr("%1, %2").arg(event.words, words_.date_with_year(event.date));
                const auto font = judged ? ink_.small_strong : ink_.small;
                const qreal width = QFontMetricsF(font).horizontalAdvance(words);
                const qreal base = top + metrics_.ascent() / 2.0 - 1.0;
                labels_.push_back(label({words}, font, judged ? ink_.ink : ink_.ink2,
                                        {{at + 11.0, base}, {at - 11.0 - width, base}}));
            }
        }
        std::ranges::move(later_, std::back_inserter(labels_));
        later_.clear();
    }

    void draw_moves()
    {
        for (const auto& move : chart_.moves) {
            const qreal at = x(move.date);
            painter_.setPen(QPen(ink_.ink, 1.6));
            painter_.drawLine(QPointF(at, plot_.bottom() - 7.0), QPointF(at, plot_.bottom()));
            const qreal width = metrics_.horizontalAdvance(move.words);
            labels_.push_back(label({move.words}, ink_.small, ink_.ink2,
                                    {{at - width - 4.0, plot_.bottom() - 5.0}, {at + 5.0, plot_.bottom() - 5.0}}));
        }
    }

    void draw_next()
    {
        if (!chart_.next_reading) {
            return;
        }
        const auto& course = chart_.growth.course;
        const double value = course.empty() ? chart_.growth.readings.back().value : course.back().middle;
        const QPointF at(x(*chart_.next_reading), y(value));
        QPen dashed(ink_.action, 1.6);
        dashed.setDashPattern({2.0, 1.6});
        painter_.setPen(dashed);
        painter_.setBrush(ink_.sheet);
        painter_.drawEllipse(at, 5.0, 5.0);
        painter_.setPen(QPen(ink_.action, 1.4));
        for (const qreal side : {-1.0, 1.0}) {
            painter_.drawLine(at + QPointF(0, side * 6.0), at + QPointF(0, side * 16.0));
        }
        const QString words = tr("next reading, %1").arg(words_.day_and_month(*chart_.next_reading));
        const qreal width = QFontMetricsF(ink_.small_strong).horizontalAdvance(words);
        const qreal left = std::min(at.x() - width / 2.0, room_.right() - width - 12.0);
        labels_.push_back(label({words}, ink_.small_strong, ink_.action,
                                {{left, at.y() - 22.0}, {left, at.y() + 22.0 + metrics_.ascent()}}));
    }

    void draw_readings()
    {
        const auto& growth = chart_.growth;
        const bool dense = static_cast<double>(growth.readings.size()) * 8.0 > plot_.width();
        for (const auto& reading : growth.readings) {
            const QPointF at(x(reading.date), y(reading.value));
            if (growth.standard_error && chart_.logarithmic) {
                const double error = std::exp(*growth.standard_error / std::sqrt(static_cast<double>(reading.repeats)));
                painter_.setPen(QPen(ink_.ink, 1.1));
                painter_.drawLine(QPointF(at.x(), y(reading.value * error)), QPointF(at.x(), y(reading.value / error)));
            }
            painter_.setPen(QPen(ink_.ink, dense ? 1.3 : 1.8));
            painter_.setBrush(ink_.sheet);
            const qreal radius = dense ? 2.6 : 3.8;
            painter_.drawEllipse(at, radius, radius);
        }
    }

    QPainter& painter_;
    const ChartInk& ink_;
    const models::GrowthChartData& chart_;
    const models::YearWords& words_;
    QFontMetricsF metrics_;
    calendar::Date from_;
    calendar::Date to_;
    double bottom_ = 0.0;
    double top_ = 1.0;
    std::vector<double> ticks_;
    QRectF room_;
    QRectF plot_;
    std::vector<ChartLabel> labels_;
    std::vector<ChartLabel> later_;
};

} // namespace

void draw_growth(QPainter& painter, const ChartInk& ink, const models::GrowthChartData& chart,
                 const models::YearWords& words, calendar::Date today, QRectF room)
{
    if (!chart.growth.readings.empty()) {
        GrowthPainter(painter, ink, chart, words, today, room).draw();
    }
}

void draw_night_ruler(QPainter& painter, const ChartInk& ink, const models::NightNeeds& needs,
                      const models::YearWords& words, QRectF room)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(ink.small);
    // Room for the zone words above the bar, for the figures below it, and for the spot's night below those.
    const qreal top = room.top() + metrics.height() + 4.0;
    const QRectF bar(room.left() + 4.0, top, room.width() - 8.0, std::max(12.0, metrics.height() * 0.8));
    double least = needs.lethal.degrees() - 6.0;
    double most = needs.heat.degrees() + 4.0;
    if (needs.here) {
        least = std::min(least, needs.here->degrees() - 2.0);
        most = std::max(most, needs.here->degrees() + 2.0);
    }
    const auto x = [&](double degrees) { return bar.left() + bar.width() * (degrees - least) / (most - least); };
    const auto mixed = [&](const QColor& colour, double share) {
        return QColor::fromRgbF(static_cast<float>(colour.redF() * share + ink.sheet.redF() * (1.0 - share)),
                                static_cast<float>(colour.greenF() * share + ink.sheet.greenF() * (1.0 - share)),
                                static_cast<float>(colour.blueF() * share + ink.sheet.blueF() * (1.0 - share)));
    };
    struct Zone {
        double from, to;
        QColor colour;
        QString words;
    };
    const double lethal = needs.lethal.degrees();
    const double damage = needs.damage.degrees();
    const double safe = needs.safe.degrees();
    const double heat = needs.heat.degrees();
    const Zone zones[] = {{least, lethal, ink.caution, tr("lethal")},
                          {lethal, damage, mixed(ink.caution, 0.5), tr("harm")},
                          {damage, safe, mixed(ink.caution, 0.17), tr("stress")},
                          {safe, heat, ink.leaf_wash, tr("at ease")},
                          {heat, most, mixed(ink.warm, 0.3), QString{}}};
    painter.setFont(ink.small);
    qreal words_end = room.left();
    for (const auto& zone : zones) {
        const QRectF box(QPointF(x(zone.from), bar.top()), QPointF(x(zone.to), bar.bottom()));
        painter.fillRect(box, zone.colour);
        const qreal width = metrics.horizontalAdvance(zone.words);
        qreal left = std::max(box.center().x() - width / 2.0, words_end);
        if (!zone.words.isEmpty() && left + width <= std::max(box.right() + 30.0, box.center().x() + width)) {
            painter.setPen(ink.ink2);
            painter.drawText(QPointF(left, bar.top() - 4.0 - metrics.descent()), zone.words);
            words_end = left + width + 6.0;
        }
    }
    painter.setPen(QPen(ink.edge, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    painter.setFont(ink.small_strong);
    const QFontMetricsF strong(ink.small_strong);
    qreal end = room.left() - 4.0;
    const std::array lines{needs.lethal, needs.damage, needs.safe, needs.heat};
    for (std::size_t at = 0; at < lines.size(); ++at) {
        const qreal here = x(lines[at].degrees());
        painter.setPen(QPen(ink.ink, 1.6));
        painter.drawLine(QPointF(here, bar.top() - 3.0), QPointF(here, bar.bottom() + 3.0));
        const QString figure = words.whole(static_cast<int>(std::lround(words.shown(lines[at])))) + (at + 1 == lines.size() ? QChar(0x202F) + words.unit() : QString{});
        const qreal width = strong.horizontalAdvance(figure);
        const qreal left = std::min(here - width / 2.0, room.right() - width);
        if (left > end + 4.0) {
            painter.setPen(ink.ink);
            painter.drawText(QPointF(left, bar.bottom() + 5.0 + strong.ascent()), figure);
            end = left + width;
        }
    }
    if (needs.here) {
        const qreal here = x(needs.here->degrees());
        const qreal base = bar.bottom() + 5.0 + strong.height();
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink.cold);
        painter.drawPolygon(QPolygonF{{here, base + 1.0}, {here + 5.0, base + 9.0}, {here - 5.0, base + 9.0}});
        painter.setPen(QPen(ink.cold, 1.4));
        painter.drawLine(QPointF(here, bar.top()), QPointF(here, bar.bottom()));
        QString figure = tr("its spot tonight, about %1").arg(words.temperature(*needs.here));
        if (metrics.horizontalAdvance(figure) + 9.0 > std::max(room.right() - here, here - room.left())) {
            figure = tr("tonight about %1").arg(words.temperature(*needs.here)); // Else it would lie over its mark.
        }
        const qreal width = metrics.horizontalAdvance(figure);
        const qreal left = here + 9.0 + width <= room.right() ? here + 9.0 : here - 9.0 - width;
        painter.setFont(ink.small);
        painter.setPen(ink.ink);
        painter.drawText(QPointF(std::max(left, room.left()), base + metrics.ascent()), figure);
    }
}

void draw_verdict_ring(QPainter& painter, const ChartInk& ink, int verdict, double share, double low, double high,
                       QRectF room)
{
    if (verdict < 0) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const auto kind = static_cast<growth::Verdict>(verdict);
    const qreal side = std::min(room.width(), room.height());
    const qreal thick = side * 0.11;
    const QRectF ring = QRectF(room.center().x() - side / 2.0, room.center().y() - side / 2.0, side, side)
                            .adjusted(thick, thick, -thick, -thick);
    const auto arc = [&](double from, double to, const QPen& pen) {
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawArc(ring, static_cast<int>(std::lround((90.0 - 360.0 * from) * 16.0)),
                        static_cast<int>(std::lround(-360.0 * (to - from) * 16.0)));
    };
    const QPen pale(ink.edge, thick * 0.5, Qt::SolidLine, Qt::FlatCap);
    const QPen full(ink.leaf, thick, Qt::SolidLine, Qt::FlatCap);
    QPen dotted(ink.leaf, thick * 0.7, Qt::CustomDashLine, Qt::RoundCap);
    dotted.setDashPattern({0.1, 1.5});
    const auto within = [](double value) { return std::clamp(value, 0.0, 1.0); };
    const QPointF middle = ring.center();
    const qreal unit = side / 40.0;
    const QPen stroke(ink.ink, unit * 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    switch (kind) {
    case growth::Verdict::NoSetback:
        arc(0.0, 1.0, full);
        painter.setPen(stroke);
        painter.drawLine(middle - QPointF(6, 0) * unit, middle + QPointF(6, 0) * unit);
        break;
    case growth::Verdict::Recovered:
        arc(0.0, 1.0, full);
        painter.setPen(stroke);
        painter.drawPolyline(QPolygonF{middle + QPointF(-6, 0) * unit, middle + QPointF(-1.5, 4.5) * unit,
                                       middle + QPointF(6.5, -5) * unit});
        break;
    case growth::Verdict::Recovering:
        arc(0.0, 1.0, pale);
        arc(std::isnan(low) ? 0.0 : within(low), std::isnan(high) ? 1.0 : within(high), dotted);
        arc(0.0, std::isnan(share) ? 0.0 : within(share), full);
        painter.setPen(stroke);
        painter.drawLine(middle + QPointF(0, 6) * unit, middle + QPointF(0, -6) * unit);
        painter.drawPolyline(QPolygonF{middle + QPointF(-4.5, -1.5) * unit, middle + QPointF(0, -6.5) * unit,
                                       middle + QPointF(4.5, -1.5) * unit});
        break;
    case growth::Verdict::Holding:
        arc(0.0, 1.0, pale);
        painter.setPen(stroke);
        for (const qreal y : {-2.6, 2.6}) {
            painter.drawLine(middle + QPointF(-5.5, y) * unit, middle + QPointF(5.5, y) * unit);
        }
        break;
    case growth::Verdict::Declining:
        arc(0.0, 1.0, pale);
        arc(0.5, 1.0, QPen(ink.caution, thick, Qt::SolidLine, Qt::FlatCap));
        painter.setPen(QPen(ink.caution, unit * 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawLine(middle + QPointF(0, -6) * unit, middle + QPointF(0, 6) * unit);
        painter.drawPolyline(QPolygonF{middle + QPointF(-4.5, 1.5) * unit, middle + QPointF(0, 6.5) * unit,
                                       middle + QPointF(4.5, 1.5) * unit});
        break;
    case growth::Verdict::TooEarly:
        dotted.setColor(ink.ink2);
        arc(0.0, 1.0, dotted);
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink.ink);
        for (const qreal x : {-6.0, 0.0, 6.0}) {
            painter.drawEllipse(middle + QPointF(x, 0) * unit, 1.8 * unit, 1.8 * unit);
        }
        break;
    }
}

void draw_verdict_scale(QPainter& painter, const ChartInk& ink, double share, double low, double high, QRectF room)
{
    constexpr double kLittle = 0.2;
    constexpr double kNearlyAll = 0.8;
    constexpr double kEnd = 1.3;
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(ink.small);
    const qreal left = room.left() + metrics.horizontalAdvance(tr("none")) / 2.0;
    const QRectF bar(left, room.top() + metrics.height() + 3.0, room.right() - left - 4.0, 11.0);
    const auto x = [&](double of) { return bar.left() + bar.width() * std::clamp(of, 0.0, kEnd) / kEnd; };
    painter.fillRect(QRectF(QPointF(x(0.0), bar.top()), QPointF(x(kLittle), bar.bottom())), ink.well);
    painter.fillRect(QRectF(QPointF(x(kLittle), bar.top()), QPointF(x(kNearlyAll), bar.bottom())), ink.leaf_wash);
    QColor deep = ink.leaf;
    deep.setAlphaF(0.45F);
    painter.fillRect(QRectF(QPointF(x(kNearlyAll), bar.top()), QPointF(x(kEnd), bar.bottom())), deep);
    painter.setPen(QPen(ink.rule, 0.9)); // High contrast has no washes.
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    const auto centred = [&](double at, qreal base, const QString& words) {
        const qreal width = metrics.horizontalAdvance(words);
        painter.drawText(QPointF(std::clamp(x(at) - width / 2.0, room.left(), room.right() - width), base), words);
    };
    const qreal above = room.top() + metrics.ascent();
    centred((kLittle + kNearlyAll) / 2.0, above, tr("recovering"));
    centred((kNearlyAll + kEnd) / 2.0, above, tr("recovered"));
    const qreal below = bar.bottom() + 4.0 + metrics.ascent();
    centred(0.0, below, tr("none"));
    centred(kLittle, below, QStringLiteral("0.2").replace(QLatin1Char('.'), QLocale().decimalPoint()));
    centred(kNearlyAll, below, QStringLiteral("0.8").replace(QLatin1Char('.'), QLocale().decimalPoint()));
    centred(1.0 + 0.1, below, tr("as before"));
    painter.setPen(QPen(ink.edge, 1.0));
    for (const double tick : {0.0, kLittle, kNearlyAll, 1.0}) {
        painter.drawLine(QPointF(x(tick), bar.top() - 2.0), QPointF(x(tick), bar.bottom() + 2.0));
    }
    if (std::isnan(share)) {
        return;
    }
    const qreal y = bar.center().y();
    painter.setPen(QPen(ink.ink, 2.0));
    const qreal from = std::isnan(low) ? bar.left() : x(low);
    const qreal to = std::isnan(high) ? bar.right() : x(high);
    painter.drawLine(QPointF(from, y), QPointF(to, y));
    for (const qreal end : {from, to}) {
        painter.drawLine(QPointF(end, y - 5.0), QPointF(end, y + 5.0));
    }
    painter.setBrush(ink.sheet);
    painter.drawEllipse(QPointF(x(share), y), 5.0, 5.0);
}

} // namespace lathhouse::chart
