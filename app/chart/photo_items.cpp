#include "app/chart/photo_items.h"

#include <QPainterPath>

#include <cmath>

namespace lathhouse::chart {

PhotoPane::PhotoPane(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void PhotoPane::setImage(const QVariant& image)
{
    image_ = image.value<QImage>();
    shown_ = {};
    update();
    emit imageChanged();
    emit placeChanged();
}

void PhotoPane::setMagnify(double magnify)
{
    if (magnify != magnify_) {
        magnify_ = magnify;
        update();
        emit imageChanged();
    }
}

void PhotoPane::setMiddle(QPointF middle)
{
    if (middle != middle_) {
        middle_ = middle;
        update();
        emit imageChanged();
    }
}

void PhotoPane::setRound(bool round)
{
    if (round != round_) {
        round_ = round;
        update();
        emit imageChanged();
    }
}

QRectF PhotoPane::place() const
{
    if (image_.isNull() || width() <= 0.0 || height() <= 0.0) {
        return {0.0, 0.0, 0.0, 0.0};
    }
    const QSizeF size = QSizeF(image_.size()).scaled(QSizeF(width(), height()), Qt::KeepAspectRatio);
    return {std::floor((width() - size.width()) / 2.0), std::floor((height() - size.height()) / 2.0), size.width(), size.height()};
}

void PhotoPane::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickPaintedItem::geometryChange(now, before);
    if (now.size() != before.size()) {
        shown_ = {};
        emit placeChanged();
    }
}

void PhotoPane::paint(QPainter* painter)
{
    if (image_.isNull()) {
        return;
    }
    if (magnify_ <= 0.0) {
        const QRectF to = place();
        const QSize size = to.size().toSize();
        if (shown_.size() != size && !size.isEmpty()) { // Scaled once; the marks move over it.
            shown_ = image_.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        }
        painter->drawImage(to.topLeft(), shown_);
        return;
    }
    if (round_) {
        QPainterPath edge;
        edge.addEllipse(boundingRect());
        painter->setClipPath(edge);
    }
    painter->fillRect(boundingRect(), Qt::black);
    const QSizeF part(width() / magnify_, height() / magnify_);
    const QRectF from(middle_.x() - part.width() / 2.0, middle_.y() - part.height() / 2.0, part.width(), part.height());
    const QRectF there = from.intersected(QRectF(image_.rect()));
    if (!there.isEmpty()) {
        const QRectF to((there.x() - from.x()) * magnify_, (there.y() - from.y()) * magnify_, there.width() * magnify_,
                        there.height() * magnify_);
        painter->setRenderHint(QPainter::SmoothPixmapTransform, magnify_ < 3.0);
        painter->drawImage(to, image_, there);
    }
}

void MeasureMarks::setMeasure(models::MeasureModel* measure)
{
    if (measure == measure_) {
        return;
    }
    if (measure_) {
        measure_->disconnect(this);
    }
    measure_ = measure;
    if (measure_) {
        connect(measure_, &models::MeasureModel::marksChanged, this, [this] { update(); });
        connect(measure_, &models::MeasureModel::imageChanged, this, [this] { update(); });
    }
    emit measureChanged();
    update();
}

void MeasureMarks::setPlace(const QRectF& place)
{
    if (change(place_, place)) {
        emit measureChanged();
    }
}

void MeasureMarks::draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const
{
    using models::MeasureModel;
    if (measure_ == nullptr || measure_->image().isNull() || place_.isEmpty()) {
        return;
    }
    const double scale = place_.width() / measure_->image().width();
    const auto shown = [&](int mark) { return place_.topLeft() + measure_->at(mark) * scale; };
    const bool green = measure_->mode() != MeasureModel::Length;
    const int all = green ? measure_->corners() : 4;
    painter.setRenderHint(QPainter::Antialiasing);
    // White below and the colour above, so that a line is seen on any photo.
    const auto line = [&](const QPainterPath& path, const QColor& colour, Qt::PenStyle style, qreal wide) {
        painter.strokePath(path, QPen(QColor(255, 255, 255, 220), wide + 2.5, Qt::SolidLine, Qt::RoundCap));
        painter.strokePath(path, QPen(colour, wide, style, Qt::FlatCap));
    };
    const QColor blue(0x2B, 0x4A, 0x7F); // The photo's own colours do not follow the theme, so these do not.
    const QColor rust(0x9C, 0x38, 0x10);
    const QColor leaf(0x2F, 0x55, 0x1B);
    if (green) {
        QPainterPath path;
        for (int mark = 0; mark < all; ++mark) {
            mark == 0 ? path.moveTo(shown(mark)) : path.lineTo(shown(mark));
        }
        if (all > 2) {
            path.closeSubpath();
        }
        line(path, leaf, Qt::DotLine, 2.4);
    } else {
        const auto stretch = [&](int from, int to, const QColor& colour, Qt::PenStyle style) {
            if (measure_->isSet(from) && measure_->isSet(to)) {
                QPainterPath path(shown(from));
                path.lineTo(shown(to));
                line(path, colour, style, 2.4);
            }
        };
        stretch(MeasureModel::A, MeasureModel::B, blue, Qt::DashLine);
        stretch(MeasureModel::First, MeasureModel::Second, rust, Qt::SolidLine);
    }
    painter.setFont(ink.small_strong);
    const QFontMetricsF metrics(ink.small_strong);
    for (int mark = 0; mark < all; ++mark) {
        if (!measure_->isSet(mark)) {
            continue;
        }
        const QColor& colour = green ? leaf : mark < MeasureModel::First ? blue : rust;
        const QPointF at = shown(mark);
        const bool chosen = mark == measure_->chosen();
        const qreal radius = green ? 5.0 : 9.0;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(Qt::white, 5.0));
        painter.drawEllipse(at, radius, radius);
        painter.setPen(QPen(colour, chosen ? 3.0 : 2.0));
        painter.drawEllipse(at, radius, radius);
        painter.setPen(QPen(colour, 1.2));
        painter.drawLine(at - QPointF(radius - 2.0, 0.0), at + QPointF(radius - 2.0, 0.0));
        painter.drawLine(at - QPointF(0.0, radius - 2.0), at + QPointF(0.0, radius - 2.0));
        const QString plate = measure_->plate(mark);
        const QSizeF size(metrics.horizontalAdvance(plate) + 10.0, metrics.height() + 4.0);
        QRectF box(at.x() - radius - 6.0 - size.width(), at.y() - size.height() / 2.0, size.width(), size.height());
        if (box.left() < room.left()) {
            box.moveLeft(at.x() + radius + 6.0);
        }
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawRoundedRect(box, 2.0, 2.0);
        painter.setPen(Qt::white);
        painter.drawText(box, Qt::AlignCenter, plate);
    }
}

} // namespace lathhouse::chart
