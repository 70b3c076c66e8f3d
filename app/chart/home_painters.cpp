#include "app/chart/home_painters.h"

#include "app/chart/axis.h"
#include "app/chart/chart_label.h"
#include "app/chart/hand_ink.h"
#include "app/chart/translated.h"

#include <QDate>
#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

namespace {

/// Words beside a mark: right of it, else left of it, else below or above.
ChartLabel beside(const QStringList& lines, const QFont& font, const QColor& colour, QPointF at, qreal away,
                  const QRectF& room)
{
    ChartLabel label{.lines = lines, .font = font, .colour = colour};
    measure(label);
    const QSizeF size = label.wish.size;
    const qreal top = label.wish.ascent - size.height() / 2.0;
    label.wish.room = room;
    label.wish.homes = {{at.x() + away, at.y() + top},
                        {at.x() - away - size.width(), at.y() + top},
                        {at.x() - size.width() / 2.0, at.y() + away + label.wish.ascent},
                        {at.x() - size.width() / 2.0, at.y() - away - size.height() + label.wish.ascent}};
    return label;
}

} // namespace

namespace {

/// Where a map stands in its room.
struct MapFrame {
    MapFrame(const ChartInk& ink, QRectF room)
        : rim(QFontMetricsF(ink.small).height() + 4.0),
          radius(std::floor(std::min(room.width(), room.height()) / 2.0 - rim)),
          middle(std::round(room.center().x()), std::round(room.center().y()))
    {
    }
    QPointF at(QPointF share) const { return middle + share * radius; }
    /// A letter of the four winds, by its direction.
    QRectF wind(QPointF towards) const
    {
        const QPointF where = middle + towards * (radius + rim / 2.0);
        return {where.x() - 20.0, where.y() - rim / 2.0, 40.0, rim};
    }

    qreal rim;
    qreal radius;
    QPointF middle;
};

constexpr qreal kLeastRadius = 20.0;
constexpr QPointF kNorth{0.0, -1.0};
constexpr QPointF kSouth{0.0, 1.0};
constexpr QPointF kWest{-1.0, 0.0};
constexpr QPointF kEast{1.0, 0.0};

qreal triangle_size(double weight)
{
    return 4.5 + 9.0 * std::sqrt(std::clamp(weight, 0.0, 1.0));
}

} // namespace

MapLabels place_map_labels(const ChartInk& ink, const models::PlaceMap& map, QRectF room)
{
    const MapFrame frame(ink, room);
    MapLabels all;
    if (frame.radius < kLeastRadius) {
        return all;
    }
    const QFontMetricsF metrics(ink.small);
    const QRectF within = room.adjusted(1.0, 1.0, -1.0, -1.0);
    all.marks.push_back(QRectF(frame.middle.x() - 10.0, frame.middle.y() - 15.0, 20.0, 21.0));
    for (const QPointF wind : {kNorth, kSouth, kWest, kEast}) {
        const QRectF whole = frame.wind(wind);
        all.marks.push_back(QRectF(whole.center().x() - 8.0, whole.top(), 16.0, whole.height()));
    }
    all.labels.push_back(beside({tr("home")}, ink.small_strong, ink.ink, frame.middle, 14.0, within));
    for (const auto& station : map.stations) {
        const QPointF point = frame.at(station.at);
        const qreal size = triangle_size(station.weight);
        all.marks.push_back(QRectF(point.x() - size * 0.95, point.y() - size, size * 1.9, size * 1.75));
        all.labels.push_back(beside({station.name, station.away}, ink.small, ink.ink, point, size + 4.0, within));
    }
    for (const auto& ring : map.rings) {
        all.labels.push_back(beside({ring.words}, ink.small, ink.ink2,
                                    frame.middle + QPointF(0.0, frame.radius * ring.share), -metrics.height() / 2.0, within));
        auto& homes = all.labels.back().wish.homes;
        std::swap(homes[0], homes[2]);
        homes.resize(1);
    }
    QFont slanted = ink.small;
    slanted.setItalic(true);
    for (const auto& town : map.towns) {
        all.labels.push_back(beside({town.name}, slanted, ink.ink2, frame.at(town.at), 6.0, within));
    }
    std::vector<LabelWish> wishes;
    wishes.reserve(all.marks.size() + all.labels.size());
    for (const QRectF& mark : all.marks) { // They stand already; words keep clear of them.
        wishes.push_back({.size = mark.size(), .ascent = 0.0, .room = mark.adjusted(-8.0, -8.0, 8.0, 8.0), .homes = {mark.topLeft()}});
    }
    for (const ChartLabel& label : all.labels) {
        wishes.push_back(label.wish);
    }
    const auto places = places_at_home(wishes);
    all.places.assign(places.begin() + std::ssize(all.marks), places.end());
    return all;
}

void draw_place_map(QPainter& painter, const ChartInk& ink, const models::PlaceMap& map, QRectF room)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const MapFrame frame(ink, room);
    const QPointF middle = frame.middle;
    const qreal radius = frame.radius;
    if (radius < kLeastRadius) {
        return;
    }
    painter.setPen(QPen(ink.edge, 1.5));
    painter.setBrush(ink.well);
    painter.drawEllipse(middle, radius, radius);

    QPainterPath disc;
    disc.addEllipse(middle, radius, radius);
    painter.save();
    painter.setClipPath(disc);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.cold, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const auto& line : map.coast) {
        QPolygonF points;
        for (const QPointF& point : line) {
            points.append(frame.at(point));
        }
        painter.drawPolyline(points);
    }
    painter.restore();

    painter.setBrush(Qt::NoBrush);
    for (const auto& ring : map.rings) {
        painter.setPen(QPen(ink.edge, 1.0, Qt::DotLine));
        painter.drawEllipse(middle, radius * ring.share, radius * ring.share);
    }
    for (const auto& station : map.stations) {
        QColor line = ink.ink2;
        line.setAlphaF(0.55F);
        painter.setPen(QPen(line, 0.6 + 6.0 * station.weight, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(middle, frame.at(station.at));
    }
    for (const auto& station : map.stations) {
        const QPointF point = frame.at(station.at);
        const qreal size = triangle_size(station.weight);
        painter.setPen(QPen(ink.ink, 1.6, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.setBrush(ink.sheet);
        painter.drawPolygon(QPolygonF{point + QPointF(0.0, -size), point + QPointF(size * 0.95, size * 0.75),
                                      point + QPointF(-size * 0.95, size * 0.75)});
    }
    // The home: a square under a roof.
    painter.setPen(QPen(ink.action, 2.6, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF{middle + QPointF(-10.0, -5.0), middle + QPointF(0.0, -14.0), middle + QPointF(10.0, -5.0)});
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink.action);
    painter.drawRect(QRectF(middle.x() - 6.0, middle.y() - 6.0, 12.0, 12.0));
    painter.setBrush(ink.ink2);
    for (const auto& town : map.towns) {
        const QPointF point = frame.at(town.at);
        painter.drawRect(QRectF(point.x() - 2.0, point.y() - 2.0, 4.0, 4.0));
    }
    const auto words = place_map_labels(ink, map, room);
    for (std::size_t label = 0; label < words.labels.size(); ++label) {
        if (words.places[label]) {
            write_label(painter, ink, words.labels[label], *words.places[label]);
        }
    }
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    painter.drawText(frame.wind(kNorth), Qt::AlignCenter, tr("N"));
    painter.drawText(frame.wind(kSouth), Qt::AlignCenter, tr("S"));
    painter.drawText(frame.wind(kWest), Qt::AlignCenter, tr("W"));
    painter.drawText(frame.wind(kEast), Qt::AlignCenter, tr("E"));
}

void draw_offset_course(QPainter& painter, const ChartInk& ink, const models::OffsetCourse& course,
                        const models::YearWords& words, QRectF room)
{
    if (course.steps.empty()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    double least = 0.0;
    double most = 0.0;
    for (const auto& step : course.steps) {
        least = std::min(least, step.low);
        most = std::max(most, step.high);
    }
    for (const auto& night : course.nights) {
        least = std::min(least, night.difference);
        most = std::max(most, night.difference);
    }
    const Axis axis(least, most, 7);
    const QFontMetricsF metrics(ink.small_strong);
    const qreal left = axis.label_width(ink, words, true);
    const QRectF plot(room.left() + left, room.top() + metrics.height(), room.width() - left - 8.0,
                      room.height() - 2.0 * metrics.height() - 6.0);
    // With few nights the band keeps to the left, so that there is room for those to come.
    const auto count = static_cast<int>(course.nights.size());
    const qreal step = plot.width() / std::max(10, count);
    const auto x = [&](int night) { return plot.left() + step * night; };

    QPolygonF band;
    QPolygonF middle;
    for (int night = 0; night <= count; ++night) {
        const auto& known = course.steps[static_cast<std::size_t>(night)];
        band.append({x(night), axis.y(plot, known.high)});
        middle.append({x(night), axis.y(plot, known.mean)});
    }
    for (int night = count; night >= 0; --night) {
        band.append({x(night), axis.y(plot, course.steps[static_cast<std::size_t>(night)].low)});
    }
    if (count == 0) { // The guess alone, as wide as the plot and dotted at its end.
        const auto& known = course.steps.front();
        band = QPolygonF{{plot.left(), axis.y(plot, known.high)}, {plot.right(), axis.y(plot, known.high)},
                         {plot.right(), axis.y(plot, known.low)}, {plot.left(), axis.y(plot, known.low)}};
        middle = QPolygonF{{plot.left(), axis.y(plot, known.mean)}, {plot.right(), axis.y(plot, known.mean)}};
    }
    const QColor hand = hand_colour(ink, course.hand);
    painter.setPen(QPen(hand, 0.9));
    painter.setBrush(hand_tint(ink, course.hand));
    painter.drawPolygon(band);
    axis.draw(painter, ink, plot, words, true);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(hand, 2.6, count == 0 ? Qt::DotLine : Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(middle);
    for (int night = 1; night <= count; ++night) {
        const auto& of = course.nights[static_cast<std::size_t>(night - 1)];
        const QPointF at(x(night), axis.y(plot, of.difference));
        painter.setPen(QPen(ink.ink, 1.6));
        painter.setBrush(of.kind == climate::NightKind::Other ? ink.ink : ink.sheet);
        if (of.kind == climate::NightKind::Unknown) {
            painter.drawRect(QRectF(at.x() - 3.5, at.y() - 3.5, 7.0, 7.0));
        } else {
            painter.drawEllipse(at, 4.0, 4.0);
        }
    }
    painter.setFont(ink.small);
    painter.setPen(ink.ink2);
    const auto foot = [&](int night, const QString& name) {
        painter.drawText(QRectF(x(night) - 60.0, plot.bottom() + 5.0, 120.0, metrics.height()), Qt::AlignHCenter, name);
    };
    if (count > 0) {
        foot(1, count > 12 ? words.whole(1) : tr("night 1"));
        for (int night = 5; night <= count; night += count > 60 ? 20 : 5) {
            foot(night, words.whole(night));
        }
    }
    write_with_halo(painter, {plot.left() + 6.0, plot.top() + metrics.ascent() + 2.0},
                    count == 0 ? tr("a guess: no night is logged yet") : tr("left: the guess before any log"), ink.small,
                    ink.ink2, ink.sheet);
}

} // namespace lathhouse::chart
