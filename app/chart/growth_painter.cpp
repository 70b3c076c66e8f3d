#include "app/chart/growth_painter.h"

#include "app/chart/axis.h"
#include "app/chart/chart_label.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>

namespace lathhouse::chart {

namespace {

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

    /// One reading alone: its date, as no months lead up to another.
    void draw_only_date()
    {
        const auto day = chart_.growth.readings.front().date;
        const QString date = words_.date_with_year(day);
        const qreal half = metrics_.horizontalAdvance(date) / 2.0 + 2.0;
        const qreal middle = std::max(plot_.left() + half, std::min(x(day), plot_.right() - half));
        painter_.setPen(QPen(ink_.edge, 1.0));
        painter_.drawLine(QPointF(x(day), plot_.bottom()), QPointF(x(day), plot_.bottom() + 4.0));
        painter_.setPen(ink_.ink2);
        painter_.drawText(QRectF(middle - half, plot_.bottom() + 5.0, 2.0 * half, metrics_.height()), Qt::AlignHCenter | Qt::AlignTop, date);
    }

    void draw_months()
    {
        if (chart_.growth.readings.size() == 1) {
            draw_only_date();
            return;
        }
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
        std::ranges::stable_partition(homes, [&](QPointF home) { // An event's line strikes no words while they fit beside it.
            return std::ranges::none_of(chart_.events, [&](const auto& happened) {
                const qreal line = x(happened.date);
                return home.x() - 3.0 < line && line < home.x() + width + 3.0;
            });
        });
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
                ChartLabel made = label({words}, font, judged ? ink_.ink : ink_.ink2,
                                        {{at + 11.0, base}, {at - 11.0 - width, base}});
                stand_clear(made, at);
                labels_.push_back(std::move(made));
            }
        }
        std::ranges::move(later_, std::back_inserter(labels_));
        later_.clear();
    }

    /// The words of an event stand where the line of no other crosses them; where each of their places is crossed, they
    /// stand on paper.
    void stand_clear(ChartLabel& label, qreal own) const
    {
        const auto crossed = [&](QPointF home) {
            const QRectF box = label.wish.box(home).adjusted(-3.0, 0.0, 3.0, 0.0);
            return !room_.contains(box) || std::ranges::any_of(chart_.events, [&](const auto& other) {
                const qreal at = x(other.date);
                return std::abs(at - own) > 0.5 && at > box.left() && at < box.right();
            });
        };
        auto& homes = label.wish.homes;
        const auto clear = std::stable_partition(homes.begin(), homes.end(), [&](QPointF home) { return !crossed(home); });
        label.ground = clear == homes.begin();
        if (!label.ground) {
            homes.erase(clear, homes.end());
        }
    }

    void draw_moves()
    {
        for (const auto& move : chart_.moves) {
            const qreal at = x(move.date);
            painter_.setPen(QPen(ink_.ink, 1.6));
            painter_.drawLine(QPointF(at, plot_.bottom() - 7.0), QPointF(at, plot_.bottom()));
            const qreal width = metrics_.horizontalAdvance(move.words);
            ChartLabel made = label({move.words}, ink_.small, ink_.ink2,
                                    {{at - width - 4.0, plot_.bottom() - 5.0}, {at + 5.0, plot_.bottom() - 5.0}});
            stand_clear(made, at);
            labels_.push_back(std::move(made));
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
        constexpr int kNear = 300;
        const auto next = *chart_.next_reading;
        const bool near = calendar::days_between(chart_.growth.readings.back().date, next) < kNear;
        const QString words = tr("next reading, %1").arg(near ? words_.day_and_month(next) : words_.date_with_year(next));
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

} // namespace lathhouse::chart
