#include "app/chart/spot_light_painter.h"

#include "app/chart/hand_ink.h"
#include "app/chart/translated.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::chart {

namespace {

/// Half of what words keep clear of a point of a line.
constexpr qreal kPointClear = 4.0;
/// A plot narrower than this many widths of a letter has one label for both edges of the band.
constexpr qreal kNarrowPlot = 64.0;

double most_of_light(const models::SpotLight& light, const models::SpotLight* beside)
{
    double most = std::max(1.0, std::ranges::max(light.moles));
    if (light.days) {
        most = std::max(most, std::ranges::max(light.days->bright));
    }
    if (beside != nullptr) {
        most = std::max(most, std::ranges::max(beside->moles));
    }
    for (const auto& need : light.needs) {
        most = std::max(most, need.thrive);
    }
    return most;
}

qreal width_of_needs(const ChartInk& ink, const models::SpotLight& light, qreal room)
{
    const QFontMetricsF metrics(ink.small_strong);
    qreal width = 0.0;
    for (const auto& need : light.needs) {
        width = std::max(width, metrics.horizontalAdvance(tr("%1, thrives").arg(need.plant)) + 10.0);
    }
    return std::min(width, room * 0.3);
}

/// Height of a line of straight pieces at an x; its ends go on level.
qreal height_at(const QPolygonF& line, qreal x)
{
    const auto next = std::ranges::find_if(line, [x](const QPointF& point) { return point.x() >= x; });
    if (next == line.begin()) {
        return line.front().y();
    }
    if (next == line.end()) {
        return line.back().y();
    }
    const QPointF& last = *std::prev(next);
    return last.y() + (next->y() - last.y()) * (x - last.x()) / (next->x() - last.x());
}

/// Highest (or lowest) point of a line between two x.
qreal utmost(const QPolygonF& line, qreal from, qreal to, bool highest)
{
    qreal most = height_at(line, from);
    const auto take = [&](qreal y) { most = highest ? std::min(most, y) : std::max(most, y); };
    take(height_at(line, to));
    for (const QPointF& point : line) {
        if (point.x() >= from && point.x() <= to) {
            take(point.y());
        }
    }
    return most;
}

/// Words along a line, just above or below it, at the first of these places that is free, else anywhere along it.
ChartLabel along_line(const QString& words, const QFont& font, const QColor& colour, const QPolygonF& line, bool above,
                      std::vector<qreal> middles, const QRectF& plot, const QRectF& within)
{
    constexpr int kPlaces = 24;
    constexpr qreal kOffLine = kPointClear + 0.5;
    for (int place = 1; place < kPlaces; ++place) {
        middles.push_back(plot.left() + plot.width() * place / kPlaces);
    }
    ChartLabel label{.lines = {words}, .font = font, .colour = colour};
    measure(label);
    label.wish.room = within;
    const qreal width = label.wish.size.width();
    const qreal left_end = plot.left() + 6.0;
    const qreal right_end = std::max(left_end, plot.right() - 6.0 - width);
    for (const qreal at : middles) {
        const qreal x = std::clamp(at - width / 2.0, left_end, right_end);
        const qreal y = utmost(line, x, x + width, above);
        const qreal top = above ? y - kOffLine - label.wish.size.height() : y + kOffLine;
        label.wish.homes.emplace_back(x, top + label.wish.ascent);
    }
    return label;
}

/// Small boxes at the points of a line and between them, which words keep clear of. (One that would touch another stands
/// for nothing; the points come first.)
void block(std::vector<LabelWish>& wishes, const QPolygonF& line)
{
    const auto keep_clear = [&](QPointF at, qreal half) {
        const QRectF box(at.x() - half, at.y() - half, 2.0 * half, 2.0 * half);
        wishes.push_back({.size = box.size(), .ascent = 0.0, .room = box.adjusted(-8.0, -8.0, 8.0, 8.0), .homes = {box.topLeft()}});
    };
    for (const QPointF& point : line) {
        keep_clear(point, kPointClear);
    }
    constexpr qreal kStep = 3.0;
    for (qreal x = line.isEmpty() ? 0.0 : line.front().x(); !line.isEmpty() && x < line.back().x(); x += kStep) {
        keep_clear({x, height_at(line, x)}, 2.0);
    }
}

void place_labels(SpotLightParts& parts)
{
    std::vector<LabelWish> wishes;
    block(wishes, parts.line);
    block(wishes, parts.beside);
    for (const QPolygonF& need : parts.needs) {
        block(wishes, need);
    }
    const auto boxes = static_cast<std::ptrdiff_t>(wishes.size());
    for (const ChartLabel& label : parts.labels) {
        wishes.push_back(label.wish);
    }
    const auto places = places_at_home(wishes);
    parts.places.assign(places.begin() + boxes, places.end());
}

} // namespace

SpotLightParts spot_light_parts(const ChartInk& ink, const models::SpotLight& light, const models::SpotLight* beside,
                                const models::YearWords& words, QRectF room)
{
    const QFontMetricsF metrics(ink.small_strong);
    const Axis axis(0.0, most_of_light(light, beside), 5);
    const qreal left = axis.label_width(ink, words, false);
    const qreal right = width_of_needs(ink, light, room.width());
    SpotLightParts parts{.axis = axis,
                         .plot = {room.left() + left, room.top() + metrics.height(), room.width() - left - right,
                                  room.height() - 2.0 * metrics.height() - 6.0},
                         .line = {},
                         .dark = {},
                         .bright = {},
                         .beside = {},
                         .needs = {},
                         .labels = {},
                         .places = {}};
    const QRectF& plot = parts.plot;
    const auto points = [&](const std::array<double, 12>& moles) {
        QPolygonF line;
        for (std::size_t month = 0; month < moles.size(); ++month) {
            line.append({plot.left() + plot.width() / 12.0 * (static_cast<qreal>(month) + 0.5), axis.y(plot, moles[month])});
        }
        return line;
    };
    parts.line = points(light.moles);
    if (light.days) {
        parts.dark = points(light.days->dark);
        parts.bright = points(light.days->bright);
    }
    if (beside != nullptr) {
        parts.beside = points(beside->moles);
    }
    for (const auto& need : light.needs) {
        const qreal y = axis.y(plot, need.thrive);
        parts.needs.push_back({{plot.left(), y}, {plot.right(), y}});
    }

    const QRectF within(plot.left() + 1.0, room.top(), plot.width() - 2.0, plot.bottom() - room.top());
    const QPolygonF& top = parts.bright.isEmpty() ? parts.line : parts.bright;
    const qreal peak = std::ranges::min_element(top, {}, &QPointF::y)->x();
    const qreal middle = plot.center().x();
    const std::vector<qreal> near_peak{peak, middle, plot.left() + plot.width() * 0.3, plot.left() + plot.width() * 0.7};
    parts.labels.push_back(along_line(light.name, ink.small_strong, ink.ink, top, true, near_peak, plot, within));
    if (beside != nullptr) { // At the line's end, else at its beginning, else along it.
        const std::vector<qreal> ends{plot.right(), plot.left(), plot.left() + plot.width() * 0.75,
                                      plot.left() + plot.width() * 0.25, middle};
        ChartLabel name = along_line(beside->name, ink.small_strong, ink.ink, parts.beside, true, ends, plot, within);
        const ChartLabel under = along_line(beside->name, ink.small_strong, ink.ink, parts.beside, false, ends, plot, within);
        std::vector<QPointF> homes;
        for (std::size_t end = 0; end < name.wish.homes.size(); ++end) {
            homes.push_back(name.wish.homes[end]);
            homes.push_back(under.wish.homes[end]);
        }
        name.wish.homes = std::move(homes);
        parts.labels.push_back(std::move(name));
    }
    if (!parts.bright.isEmpty()) {
        const std::vector<qreal> sides{plot.left() + plot.width() * 0.25, plot.left() + plot.width() * 0.8, middle,
                                       plot.left() + plot.width() * 0.1, plot.right()};
        if (plot.width() < kNarrowPlot * metrics.averageCharWidth()) {
            parts.labels.push_back(along_line(tr("9 days in 10 within"), ink.small, ink.ink, parts.bright, true, sides, plot, within));
        } else {
            parts.labels.push_back(along_line(tr("1 day in 20 is brighter"), ink.small, ink.ink, parts.bright, true, sides, plot, within));
            parts.labels.push_back(along_line(tr("1 day in 20 is darker"), ink.small, ink.ink, parts.dark, false,
                                              {peak, middle, sides[0], sides[1]}, plot, within));
        }
        parts.labels.push_back(along_line(tr("mean of the month"), ink.small, ink.ink, parts.line, true,
                                          {peak, middle, sides[1], sides[0]}, plot, within));
    }
    place_labels(parts);
    return parts;
}

void draw_spot_light(QPainter& painter, const ChartInk& ink, const models::SpotLight& light,
                     const models::SpotLight* beside, const models::YearWords& words, QRectF room)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const SpotLightParts parts = spot_light_parts(ink, light, beside, words, room);
    const QRectF& plot = parts.plot;
    const QColor hand = hand_colour(ink, light.hand);
    ChartInk on_band = ink; // A halo is of the ground that the words stand on.
    on_band.sheet = hand_tint(ink, light.hand);
    QPolygonF band = parts.bright;
    if (!parts.bright.isEmpty()) {
        for (qsizetype month = parts.dark.size(); month-- > 0;) {
            band.append(parts.dark[month]);
        }
        painter.setPen(QPen(hand, 0.9));
        painter.setBrush(hand_tint(ink, light.hand));
        painter.drawPolygon(band);
    }
    parts.axis.draw(painter, ink, plot, words, false);

    std::vector<SideLabel> labels;
    for (std::size_t need = 0; need < light.needs.size(); ++need) {
        painter.setPen(QPen(ink.leaf, 1.2));
        painter.drawPolyline(parts.needs[need]);
        labels.push_back({tr("%1, thrives").arg(light.needs[need].plant), ink.leaf, parts.needs[need].front().y()});
    }
    draw_side_labels(painter, ink, labels, plot.right() + 8.0, room.right() - plot.right() - 8.0, room.top(), room.bottom());

    painter.setBrush(Qt::NoBrush);
    if (beside != nullptr) {
        QPen dashed(hand_colour(ink, beside->hand), 2.2, Qt::CustomDashLine, Qt::FlatCap, Qt::RoundJoin);
        dashed.setDashPattern({6.0, 3.0});
        painter.setPen(dashed);
        painter.drawPolyline(parts.beside);
    }
    painter.setPen(QPen(hand, 2.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(parts.line);
    painter.setBrush(ink.sheet);
    painter.setPen(QPen(hand, 1.8));
    for (const QPointF& point : parts.line) {
        painter.drawEllipse(point, 3.4, 3.4);
    }
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    const QFontMetricsF metrics(ink.small_strong);
    const qreal step = plot.width() / 12.0;
    for (int month = 0; month < 12; ++month) {
        const QString name = words.month(calendar::Date{2001, static_cast<unsigned short>(month + 1), 15});
        if (step >= metrics.horizontalAdvance(name) + 2.0 || month % 2 == 0) {
            painter.drawText(QRectF(parts.line[month].x() - 30.0, plot.bottom() + 5.0, 60.0, metrics.height()), Qt::AlignHCenter, name);
        }
    }
    for (std::size_t label = 0; label < parts.labels.size(); ++label) {
        if (parts.places[label]) {
            const QRectF box = parts.labels[label].wish.box(*parts.places[label]);
            const auto covered = [&](QPointF corner) { return band.containsPoint(corner, Qt::OddEvenFill); };
            const bool inside = covered(box.topLeft()) && covered(box.topRight()) && covered(box.bottomLeft()) && covered(box.bottomRight());
            write_label(painter, inside ? on_band : ink, parts.labels[label], *parts.places[label]);
        }
    }
}

} // namespace lathhouse::chart
