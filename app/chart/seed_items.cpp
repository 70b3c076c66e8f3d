#include "app/chart/seed_items.h"

#include "app/chart/chart_label.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

namespace {

constexpr int kUnderLamps = 5; ///< Place of the hands among the theme's spots.
constexpr int kInTheOpen = 4;
constexpr int kSteps = 5;

/// Lays the bar out and draws it.
class SowingBarPainter {
    Q_DECLARE_TR_FUNCTIONS(SowingBarPainter)

public:
    SowingBarPainter(QPainter& painter, const ChartInk& ink, const models::SowingBar& bar,
                     const models::YearWords& words, QRectF room)
        : painter_(painter), ink_(ink), bar_(bar), words_(words), room_(room), metrics_(ink.small),
          strip_(room.left(), room.top() + 3.0 * metrics_.height() + 12.0, room.width(), std::max(18.0, metrics_.height()))
    {
    }

    void draw()
    {
        painter_.setRenderHint(QPainter::Antialiasing);
        draw_months();
        const qreal end = x(bar_.ready ? bar_.ready->to : bar_.out ? bar_.out->to : bar_.to);
        if (bar_.indoors && bar_.out) {
            draw_part(x(bar_.sow->from), x(bar_.out->from), kUnderLamps, tr("indoors"));
            draw_part(x(bar_.out->from), end, kInTheOpen, tr("outdoors"));
            draw_ladder();
        } else if (bar_.indoors) {
            draw_part(x(bar_.sow->from), end, kUnderLamps, tr("indoors"));
        } else {
            draw_part(x(bar_.sow->from), end, kInTheOpen, tr("outdoors"));
        }
        draw_marks();
    }

private:
    qreal x(calendar::Date date) const
    {
        const double days = std::max(1, calendar::days_between(bar_.from, bar_.to));
        return strip_.left() + strip_.width() * calendar::days_between(bar_.from, date) / days;
    }

    void draw_months()
    {
        painter_.setFont(ink_.small_strong);
        calendar::Date first{bar_.from.year(), bar_.from.month(), 1};
        while (first <= bar_.to) {
            const calendar::Date next = first + boost::gregorian::months(1);
            const qreal left = std::max(strip_.left(), x(first));
            const qreal right = std::min(strip_.right(), x(next));
            if (first > bar_.from) {
                painter_.setPen(QPen(ink_.rule, 0.9));
                painter_.drawLine(QPointF(left, room_.top() + metrics_.height() + 4.0), QPointF(left, strip_.bottom() + 8.0));
            }
            const QString name = words_.month(first);
            if (right - left > metrics_.horizontalAdvance(name) + 6.0) {
                painter_.setPen(ink_.ink2);
                painter_.drawText(QRectF(left, room_.top(), right - left, metrics_.height()), Qt::AlignCenter, name);
            }
            first = next;
        }
    }

    void draw_part(qreal left, qreal right, int hand, const QString& name)
    {
        if (right - left < 2.0 || ink_.spots.size() <= hand) {
            return;
        }
        const QRectF box(left, strip_.top(), right - left, strip_.height());
        const auto pattern = static_cast<models::Pattern>(hand);
        painter_.fillRect(box, ink_.tints[hand]);
        painter_.fillRect(box, pattern_brush(pattern, ink_.spots[hand], painter_.device()->devicePixelRatioF()));
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(QPen(ink_.spots[hand], 1.3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter_.drawRect(box);
        const qreal width = metrics_.horizontalAdvance(name) + 10.0;
        if (width + 24.0 < box.width()) {
            painter_.setFont(ink_.small);
            const QRectF plate(box.center().x() - width / 2.0, box.top() + 1.0, width, box.height() - 2.0);
            painter_.fillRect(plate, ink_.tints[hand]);
            painter_.setPen(ink_.ink);
            painter_.drawText(plate, Qt::AlignCenter, name);
        }
    }

    /// The open air grows from below into the bar, step by step.
    void draw_ladder()
    {
        if (!bar_.harden || *bar_.harden >= bar_.out->from || ink_.spots.size() <= kUnderLamps) {
            return;
        }
        const qreal left = x(*bar_.harden);
        const qreal width = (x(bar_.out->from) - left) / kSteps;
        const qreal rise = strip_.height() / (kSteps + 1);
        QPolygonF line{{left, strip_.bottom()}};
        for (int step = 0; step < kSteps; ++step) {
            const qreal y = strip_.bottom() - rise * (step + 1);
            painter_.fillRect(QRectF(left + width * step, y, width, strip_.bottom() - y), ink_.tints[kInTheOpen]);
            line << QPointF(left + width * step, y) << QPointF(left + width * (step + 1), y);
        }
        painter_.setPen(QPen(ink_.spots[kInTheOpen], 2.0));
        painter_.drawPolyline(line);
    }

    void bracket(const plan::DateSpan& span, const QColor& colour)
    {
        const qreal y = strip_.top() - 7.0;
        const qreal left = x(span.from);
        const qreal right = std::max(left + 2.0, x(span.to));
        painter_.setPen(QPen(colour, 1.8));
        painter_.drawLine(QPointF(left, y), QPointF(right, y));
        for (const qreal end : {left, right}) {
            painter_.drawLine(QPointF(end, y - 3.5), QPointF(end, y + 3.5));
        }
    }

    void name(const QString& words, qreal at, bool above)
    {
        ChartLabel label{.lines = {words}, .font = ink_.small_strong, .colour = ink_.ink};
        measure(label);
        const qreal width = label.wish.size.width();
        const qreal left = std::clamp(at - width / 2.0, strip_.left(), std::max(strip_.left(), strip_.right() - width));
        const qreal upper = strip_.top() - 14.0 - metrics_.descent();
        const qreal lower = strip_.bottom() + 9.0 + metrics_.ascent();
        label.wish.room = room_;
        label.wish.homes = {{left, above ? upper : lower}};
        if (above) { // A second row where the first is taken.
            label.wish.homes.push_back({left, upper - metrics_.height()});
            label.wish.homes.push_back({std::clamp(at, strip_.left(), std::max(strip_.left(), strip_.right() - width)), upper});
        }
        labels_.push_back(std::move(label));
    }

    void draw_marks()
    {
        painter_.setBrush(ink_.sheet);
        const QPointF ring(x(bar_.sow->from), strip_.center().y());
        painter_.setPen(QPen(ink_.ink, 2.0));
        painter_.drawEllipse(ring, 5.5, 5.5);
        name(tr("sow"), ring.x(), true);
        if (bar_.out) {
            name(tr("plant out"), x(bar_.out->from), true);
        }
        if (bar_.ready) {
            bracket(*bar_.ready, ink_.ink);
            const qreal at = x(bar_.ready->from);
            painter_.setPen(QPen(ink_.ink, 2.4));
            painter_.drawLine(QPointF(at - 3.0, strip_.bottom()), QPointF(at + 4.0, strip_.top()));
            name(bar_.ready_word, (at + x(bar_.ready->to)) / 2.0, true);
        }
        if (bar_.up) {
            bracket(*bar_.up, ink_.leaf);
            name(tr("up"), (x(bar_.up->from) + x(bar_.up->to)) / 2.0, true);
        }
        if (bar_.last_useful) {
            const qreal at = x(*bar_.last_useful);
            painter_.setPen(QPen(ink_.ink, 1.6));
            painter_.drawLine(QPointF(at, strip_.bottom() + 1.0), QPointF(at, strip_.bottom() + 8.0));
            name(tr("last useful sowing"), at, false);
        }
        const auto places = places_at_home(wishes_of(labels_));
        for (std::size_t label = 0; label < labels_.size(); ++label) {
            if (places[label]) {
                write_label(painter_, ink_, labels_[label], *places[label]);
            }
        }
    }

    QPainter& painter_;
    const ChartInk& ink_;
    const models::SowingBar& bar_;
    const models::YearWords& words_;
    QRectF room_;
    QFontMetricsF metrics_;
    QRectF strip_;
    std::vector<ChartLabel> labels_;
};

} // namespace

GerminationLine::GerminationLine(QQuickItem* parent) : SheetChart(parent)
{
    connect(this, &GerminationLine::sharesChanged, this, [this] { update(); });
}

void GerminationLine::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (mean_ < 0.0) {
        return; // Nothing is known of the crop.
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const qreal y = room.center().y();
    const auto x = [&](qreal share) { return room.left() + 6.0 + (room.width() - 12.0) * share; };
    painter.setPen(QPen(ink.edge, 1.0));
    painter.drawLine(QPointF(x(0.0), y), QPointF(x(1.0), y));
    for (const qreal tick : {0.0, 0.5, 1.0}) {
        painter.drawLine(QPointF(x(tick), y - 3.5), QPointF(x(tick), y + 3.5));
    }
    QColor range = ink.leaf;
    range.setAlphaF(0.5F);
    painter.fillRect(QRectF(QPointF(x(low_), y - 3.5), QPointF(x(high_), y + 3.5)), range);
    painter.setPen(QPen(ink.leaf, 2.0));
    painter.setBrush(counted_ ? ink.leaf : ink.sheet);
    painter.drawEllipse(QPointF(x(mean_), y), 5.0, 5.0);
}

void SowingBarChart::setSeeds(models::SeedsModel* seeds)
{
    if (seeds == seeds_) {
        return;
    }
    if (seeds_) {
        seeds_->disconnect(this);
    }
    seeds_ = seeds;
    if (seeds_) {
        connect(seeds_, &models::SeedsModel::sheetChanged, this, [this] { update(); });
    }
    emit seedsChanged();
    update();
}

void SowingBarChart::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (seeds_ && seeds_->sheet() != nullptr && seeds_->sheet()->bar) {
        SowingBarPainter(painter, ink, *seeds_->sheet()->bar, seeds_->words(), room).draw();
    }
}

} // namespace lathhouse::chart
