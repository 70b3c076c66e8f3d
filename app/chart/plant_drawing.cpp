#include "app/chart/plant_drawing.h"

#include <QHash>
#include <QImage>
#include <QMutex>
#include <QPainterPath>

#include <array>
#include <cmath>
#include <cstdint>

namespace lathhouse::chart {

namespace {

using models::Habit;

constexpr qreal kPotHeight = 29.0;
constexpr qreal kRim = 5.0;
constexpr qreal kHighest = 124.0; ///< Of a plant with its pot, in the drawing's own units.
constexpr int kHabits = static_cast<int>(Habit::Seedlings) + 1;

constexpr std::array kClays{QRgb{0xFFB86A4A}, QRgb{0xFF60707C}, QRgb{0xFFA55A41}, QRgb{0xFF8B8377}};

/// Numbers that are always the same, so that a drawing is.
class Draws {
public:
    explicit Draws(std::uint32_t seed) : state_(seed * 2654435761U + 12345U) {}
    qreal between(qreal low, qreal high)
    {
        state_ = state_ * 1664525U + 1013904223U;
        return low + (high - low) * (static_cast<qreal>(state_ >> 8) / static_cast<qreal>(1U << 24));
    }

private:
    std::uint32_t state_;
};

/// The foliage above a pot whose rim's middle is the origin; y grows downwards.
class Foliage {
public:
    Foliage(QPainter& painter, Habit habit, bool fruit, bool dark)
        : painter_(painter), fruit_(fruit), draws_(static_cast<std::uint32_t>(habit) + 7U)
    {
        greens_ = dark ? std::array{QColor{0x5E8A48}, QColor{0x7DAA62}, QColor{0x4D7440}, QColor{0x9CC182}}
                       : std::array{QColor{0x4F7A38}, QColor{0x6B9650}, QColor{0x3A5A2C}, QColor{0x86A766}};
        wood_ = dark ? QColor{0xA98A66} : QColor{0x7C6246};
        grey_ = dark ? QColor{0xA9BCA0} : QColor{0x84977C};
    }

    void draw(Habit habit)
    {
        painter_.setPen(Qt::NoPen);
        switch (habit) {
        case Habit::RoundCrown:
            return round_crown();
        case Habit::Weeping:
            return weeping();
        case Habit::Blades:
            return blades();
        case Habit::SplitLeaves:
            return split_leaves();
        case Habit::ArchingOrchid:
            return arching_orchid();
        case Habit::FloweringBush:
            bush(34, 30.0, 11.0);
            return flowers();
        case Habit::HangingFlowers:
            bush(36, 32.0, 10.0);
            return hanging_flowers();
        case Habit::Trumpets:
            bush(20, 36.0, 20.0);
            return trumpets();
        case Habit::Fleshy:
            return fleshy();
        case Habit::Jointed:
            return jointed();
        case Habit::ThinGrey:
            return thin_grey();
        case Habit::Trailing:
            return trailing();
        case Habit::Seedlings:
            return seedlings();
        }
    }

private:
    const QColor& green() { return greens_[static_cast<std::size_t>(draws_.between(0.0, 3.999))]; }

    /// degrees: 0 upwards, growing to the right.
    static QPointF along(QPointF from, qreal degrees, qreal length)
    {
        const qreal radians = degrees * M_PI / 180.0;
        return from + QPointF(std::sin(radians), -std::cos(radians)) * length;
    }

    void leaf(QPointF base, qreal degrees, qreal length, qreal width, const QColor& colour)
    {
        painter_.save();
        painter_.translate(base);
        painter_.rotate(degrees);
        QPainterPath path;
        path.cubicTo(-width, -length * 0.35, -width * 0.6, -length * 0.8, 0.0, -length);
        path.cubicTo(width * 0.6, -length * 0.8, width, -length * 0.35, 0.0, 0.0);
        painter_.fillPath(path, colour);
        painter_.restore();
    }

    void twig(QPointF from, QPointF by, QPointF to, qreal width, const QColor& colour)
    {
        QPainterPath path(from);
        path.quadTo(by, to);
        painter_.strokePath(path, QPen(colour, width, Qt::SolidLine, Qt::RoundCap));
    }

    void dot(QPointF middle, qreal radius, const QColor& colour)
    {
        painter_.setBrush(colour);
        painter_.drawEllipse(middle, radius, radius);
    }

    void flower(QPointF middle, qreal radius, const QColor& petal, const QColor& heart)
    {
        for (int at = 0; at < 5; ++at) {
            dot(along(middle, 72.0 * at, radius * 0.62), radius * 0.52, petal);
        }
        dot(middle, radius * 0.3, heart);
    }

    void round_crown()
    {
        painter_.setBrush(wood_);
        painter_.drawRect(QRectF(-1.7, -46.0, 3.4, 47.0));
        const QPointF middle(0.0, -58.0);
        for (int at = 0; at < 46; ++at) {
            const qreal degrees = draws_.between(0.0, 360.0);
            const qreal away = std::sqrt(draws_.between(0.02, 1.0)) * 20.0;
            leaf(along(middle, degrees, away), degrees + draws_.between(-45.0, 45.0), draws_.between(11.0, 15.0),
                 draws_.between(4.6, 6.0), green());
        }
        if (fruit_) {
            for (const auto& at : {QPointF(-15, -50), QPointF(13, -46), QPointF(2, -63), QPointF(-6, -42), QPointF(18, -62)}) {
                dot(at, 4.6, QColor{0xE3A92B});
            }
        }
    }

    void weeping()
    {
        painter_.setBrush(wood_);
        painter_.drawRect(QRectF(-1.9, -66.0, 3.8, 67.0));
        for (const qreal reach : {-29.0, -19.0, -9.0, 8.0, 18.0, 28.0}) {
            const QPointF bend(reach, -72.0 + std::abs(reach) * 0.42);
            const qreal lowest = -18.0 - draws_.between(0.0, 10.0);
            twig({0.0, -62.0}, {reach * 0.6, -80.0}, bend, 1.5, wood_);
            twig(bend, {bend.x() + reach * 0.12, (bend.y() + lowest) / 2.0}, {bend.x() + reach * 0.1, lowest}, 1.1, wood_);
            for (qreal y = bend.y(); y < lowest; y += 6.5) {
                const QPointF at(bend.x() + reach * 0.1 * (y - bend.y()) / (lowest - bend.y()), y);
                leaf(at, 180.0 + draws_.between(22.0, 50.0), 12.5, 5.0, green());
                leaf(at, 180.0 - draws_.between(22.0, 50.0), 12.5, 5.0, green());
            }
        }
    }

    void blades()
    {
        constexpr int kBlades = 11;
        for (int pass = 0; pass < 2; ++pass) {
            for (int at = pass; at < kBlades; at += 2) {
                const qreal share = static_cast<qreal>(at) / (kBlades - 1) * 2.0 - 1.0;
                const qreal length = 66.0 - 16.0 * share * share - draws_.between(0.0, 12.0);
                leaf({share * 9.0, 2.0}, share * 27.0 + draws_.between(-3.0, 3.0), length, 5.4,
                     greens_[static_cast<std::size_t>(at % 3)]);
            }
        }
    }

    /// A broad leaf with cuts from its edge towards the rib.
    void cut_leaf(QPointF base, qreal degrees, qreal length, const QColor& colour)
    {
        painter_.save();
        painter_.translate(base);
        painter_.rotate(degrees);
        const auto width = [length](qreal share) {
            return length * 0.52 * std::pow(std::sin(M_PI * std::min(1.0, 0.12 + share * 0.88)), 0.75);
        };
        QPolygonF outline{{0.0, length * 0.08}};
        for (const qreal side : {-1.0, 1.0}) {
            for (int at = 0; at <= 8; ++at) {
                const int step = side < 0.0 ? at : 8 - at;
                const qreal share = step / 8.0;
                const bool cut = step == 3 || step == 5;
                outline << QPointF(side * width(share) * (cut ? 0.45 : 1.0), -length * share);
            }
        }
        QPainterPath path;
        path.addPolygon(outline);
        path.closeSubpath();
        painter_.setRenderHint(QPainter::Antialiasing);
        painter_.strokePath(path, QPen(colour, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter_.fillPath(path, colour);
        painter_.restore();
    }

    void split_leaves()
    {
        const std::array degrees{-68.0, 66.0, -40.0, 42.0, -14.0, 16.0};
        const std::array reaches{36.0, 37.0, 44.0, 43.0, 46.0, 40.0};
        for (std::size_t at = 0; at < degrees.size(); ++at) {
            const QPointF tip = along({0.0, 0.0}, degrees[at] * 0.82, reaches[at]);
            twig({degrees[at] * 0.06, 1.0}, {tip.x() * 0.25, tip.y() * 0.75}, tip, 2.0, greens_[1]);
            cut_leaf(tip, degrees[at] * 1.25, 26.0, greens_[at % 3 == 1 ? 2 : at % 3]);
        }
    }

    void arching_orchid()
    {
        const QColor petal{0xDDA3CC};
        const QColor heart{0x9A3F86};
        twig({2.0, 0.0}, {-2.0, -62.0}, {24.0, -74.0}, 1.8, greens_[1]);
        twig({24.0, -74.0}, {36.0, -80.0}, {43.0, -70.0}, 1.4, greens_[1]);
        for (const qreal degrees : {-74.0, 72.0, -42.0, 46.0}) {
            leaf({0.0, 2.0}, degrees, 31.0, 8.0, greens_[std::abs(degrees) > 60.0 ? 0 : 2]);
        }
        for (const auto& at : {QPointF(8, -66), QPointF(17, -72), QPointF(26, -76), QPointF(35, -75), QPointF(42, -69)}) {
            flower(at, 7.4, petal, heart);
        }
    }

    void bush(int leaves, qreal reach, qreal length)
    {
        for (const qreal degrees : {-46.0, -24.0, -4.0, 20.0, 44.0}) {
            twig({degrees * 0.08, 1.0}, along({0.0, 0.0}, degrees * 0.6, reach * 0.5), along({0.0, 0.0}, degrees, reach * 1.1),
                 1.7, wood_);
        }
        for (int at = 0; at < leaves; ++at) {
            const qreal degrees = draws_.between(-78.0, 78.0);
            const qreal away = reach * std::sqrt(draws_.between(0.12, 1.0)) * (1.25 - std::abs(degrees) / 200.0);
            leaf(along({0.0, -4.0}, degrees, away), degrees * 0.9 + draws_.between(-50.0, 50.0),
                 length * draws_.between(0.85, 1.2), length * 0.42, green());
        }
    }

    void flowers()
    {
        for (const auto& at : {QPointF(-24, -26), QPointF(-7, -42), QPointF(14, -38), QPointF(27, -20), QPointF(3, -22)}) {
            flower(at, 7.2, QColor{0xC2452F}, QColor{0xF1C75B});
        }
    }

    void hanging_flowers()
    {
        for (const auto& at : {QPointF(-29, -18), QPointF(-16, -30), QPointF(-4, -17), QPointF(11, -28), QPointF(22, -15),
                               QPointF(31, -24)}) {
            twig(at, at + QPointF(0, 3), at + QPointF(0, 5), 1.0, greens_[2]);
            leaf(at + QPointF(0, 14), 0.0, 11.0, 4.4, QColor{0xB5216B});
            leaf(at + QPointF(0, 18), 0.0, 8.0, 3.0, QColor{0x5C2F84});
        }
    }

    void trumpets()
    {
        for (const auto& at : {QPointF(-20, -26), QPointF(7, -32), QPointF(27, -18)}) {
            QPainterPath path(at);
            path.cubicTo(at + QPointF(-3, 10), at + QPointF(-3, 16), at + QPointF(-8, 22));
            path.quadTo(at + QPointF(0, 26), at + QPointF(8, 22));
            path.cubicTo(at + QPointF(3, 16), at + QPointF(3, 10), at);
            painter_.fillPath(path, QColor{0xF0D98C});
            painter_.strokePath(path, QPen(QColor{0xB99A3C}, 0.8));
        }
    }

    void fleshy()
    {
        const std::array greys{QColor{0x5D8562}, QColor{0x7FA27F}, QColor{0x4A6E51}};
        for (const qreal degrees : {-44.0, -14.0, 16.0, 46.0}) {
            twig({degrees * 0.05, 1.0}, along({0.0, 0.0}, degrees * 0.5, 14.0), along({0.0, 0.0}, degrees, 27.0), 3.4, wood_);
        }
        for (int at = 0; at < 24; ++at) {
            const qreal degrees = draws_.between(-70.0, 70.0);
            const QPointF middle = along({0.0, -5.0}, degrees, draws_.between(15.0, 31.0));
            painter_.save();
            painter_.translate(middle);
            painter_.rotate(degrees + draws_.between(-40.0, 40.0));
            painter_.setBrush(greys[static_cast<std::size_t>(at) % greys.size()]);
            painter_.drawEllipse(QPointF(), 4.6, 6.6);
            painter_.restore();
        }
    }

    void jointed()
    {
        for (const qreal degrees : {-78.0, -52.0, -26.0, 0.0, 27.0, 53.0, 80.0}) {
            QPointF at(degrees * 0.06, 0.0);
            qreal turn = degrees * 0.7;
            for (int joint = 0; joint < 3; ++joint) {
                leaf(at, turn, 17.0, 6.6, greens_[static_cast<std::size_t>(joint % 2)]);
                at = along(at, turn, 14.0);
                turn += degrees * 0.28;
            }
            flower(along(at, turn, 4.0), 4.4, QColor{0xC23A7C}, QColor{0xF3D9E4});
        }
    }

    void thin_grey()
    {
        painter_.setBrush(wood_);
        for (const qreal degrees : {-34.0, -17.0, 0.0, 18.0, 35.0}) {
            const QPointF tip = along({0.0, 0.0}, degrees, 62.0 - std::abs(degrees) * 0.5);
            const QPointF by = along({0.0, 0.0}, degrees * 0.4, 34.0);
            twig({degrees * 0.05, 1.0}, by, tip, 1.3, wood_);
            for (int at = 3; at <= 12; ++at) {
                const qreal share = at / 12.0;
                const QPointF here = by * (2.0 * share * (1.0 - share)) + tip * (share * share);
                for (const qreal side : {-1.0, 1.0}) {
                    leaf(here, degrees + side * draws_.between(35.0, 62.0), 11.0, 1.9,
                         at % 3 == 0 ? greens_[1] : grey_);
                }
            }
        }
    }

    void trailing()
    {
        for (int at = 0; at < 16; ++at) {
            const qreal degrees = draws_.between(-82.0, 82.0);
            leaf(along({0.0, 1.0}, degrees, draws_.between(4.0, 16.0)), degrees, draws_.between(12.0, 17.0), 6.6, green());
        }
        for (const qreal side : {-1.0, 1.0}) {
            for (const qreal reach : {26.0, 38.0}) {
                const QPointF end(side * reach, reach > 30.0 ? 12.0 : 22.0);
                const QPointF by(side * (reach + 4.0), -26.0);
                twig({0.0, 0.0}, by, end, 1.4, greens_[1]);
                for (int at = 2; at <= 7; ++at) {
                    const qreal share = at / 7.0;
                    const QPointF here = by * (2.0 * share * (1.0 - share)) + end * (share * share);
                    leaf(here, side * draws_.between(100.0, 170.0), 11.0, 5.6, green());
                }
            }
        }
    }

    void seedlings()
    {
        for (const qreal x : {-12.0, -6.5, 0.0, 6.0, 12.0}) {
            const qreal height = draws_.between(12.0, 22.0);
            const QPointF top(x * 1.25, -height);
            twig({x * 0.8, 1.0}, {x, -height * 0.5}, top, 1.3, greens_[1]);
            leaf(top, -62.0, 9.5, 4.0, greens_[0]);
            leaf(top, 62.0, 9.5, 4.0, greens_[1]);
            leaf(top, draws_.between(-14.0, 14.0), 7.0, 3.0, greens_[3]);
        }
    }

    QPainter& painter_;
    bool fruit_;
    Draws draws_;
    std::array<QColor, 4> greens_;
    QColor wood_;
    QColor grey_;
};

/// Body and rim of a pot whose rim's middle is the origin.
QPainterPath pot_path()
{
    QPainterPath path;
    path.addPolygon(QPolygonF{{-15.0, kRim}, {15.0, kRim}, {11.5, kPotHeight}, {-11.5, kPotHeight}});
    path.closeSubpath();
    return path;
}

void draw_pot(QPainter& painter, const QColor& clay)
{
    painter.setPen(Qt::NoPen);
    painter.fillPath(pot_path(), clay);
    painter.fillRect(QRectF(-17.0, 0.0, 34.0, kRim), clay.darker(116));
}

QTransform standing_in(const QRectF& room)
{
    const qreal scale = std::min(room.height() / kHighest, room.width() / 100.0);
    return QTransform{}.translate(room.center().x(), room.bottom()).scale(scale, scale).translate(0.0, -kPotHeight);
}

} // namespace

void draw_plant(QPainter& painter, Habit habit, bool fruit, int clay, bool dark, const QRectF& room)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setTransform(standing_in(room), true);
    const QColor pot = QColor::fromRgb(kClays[static_cast<std::size_t>(clay) % kClays.size()]);
    const bool over_the_rim = habit == Habit::Trailing;
    if (over_the_rim) {
        draw_pot(painter, pot);
    }
    Foliage(painter, habit, fruit, dark).draw(habit);
    if (!over_the_rim) {
        draw_pot(painter, pot);
    }
    painter.restore();
}

void PlantDrawing::setHabit(int habit)
{
    habit = habit < kHabits ? habit : -1;
    if (change(habit_, habit)) {
        emit plantChanged();
    }
}

void PlantDrawing::setFruit(bool fruit)
{
    if (change(fruit_, fruit)) {
        emit plantChanged();
    }
}

void PlantDrawing::setClay(int clay)
{
    if (change(clay_, clay)) {
        emit plantChanged();
    }
}

void PlantDrawing::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    if (habit_ < 0) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setTransform(standing_in(room), true);
        QPen pen(ink.edge, 1.3);
        pen.setDashPattern({3.0, 2.2});
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(pot_path());
        painter.drawRect(QRectF(-17.0, 0.5, 34.0, kRim));
        return;
    }
    // Thousands of plants have few habits: each is drawn once for its size and scheme.
    static QMutex guard;
    static QHash<QString, QImage> kept;
    constexpr qsizetype kMostKept = 400;
    const qreal ratio = painter.device()->devicePixelRatioF();
    const bool dark = ink.sheet.lightness() < 128;
    const QString key = QStringLiteral("%1/%2/%3/%4/%5x%6@%7")
                            .arg(habit_)
                            .arg(fruit_)
                            .arg(clay_ % static_cast<int>(kClays.size()))
                            .arg(dark)
                            .arg(room.width())
                            .arg(room.height())
                            .arg(ratio);
    const QMutexLocker lock(&guard);
    auto image = kept.find(key);
    if (image == kept.end()) {
        if (kept.size() >= kMostKept) {
            kept.clear();
        }
        QImage made((room.size() * ratio).toSize(), QImage::Format_ARGB32_Premultiplied);
        made.setDevicePixelRatio(ratio);
        made.fill(Qt::transparent);
        QPainter into(&made);
        draw_plant(into, static_cast<Habit>(habit_), fruit_, clay_, dark, QRectF({}, room.size()));
        into.end();
        image = kept.insert(key, made);
    }
    painter.drawImage(room.topLeft(), *image);
}

void Lath::draw(QPainter& painter, const ChartInk&, const QRectF& room) const
{
    const QColor colour = theme()->property("lath").value<QColor>();
    const qreal slat = std::round(room.height() * 0.62);
    painter.fillRect(QRectF(room.left(), room.top(), room.width(), slat), colour);
    const qreal gap = room.height() * 0.8;
    for (qreal x = room.left() + gap; x < room.right() - gap; x += 3.0 * gap) {
        painter.fillRect(QRectF(x, room.top() + slat, 2.0 * gap, room.height() - slat), colour);
    }
}

} // namespace lathhouse::chart
