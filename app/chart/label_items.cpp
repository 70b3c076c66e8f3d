#include "app/chart/label_items.h"

#include <cmath>

namespace lathhouse::chart {

namespace {

constexpr qreal kRoomForHalo = 3.0;

} // namespace

LabelItem::LabelItem(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void LabelItem::show(const ChartLabel& label, const ChartInk& ink)
{
    label_ = label;
    ink_ = ink;
    setSize({std::ceil(label_.wish.size.width()) + 2.0 * kRoomForHalo,
             std::ceil(label_.wish.size.height()) + 2.0 * kRoomForHalo});
    emit wordsChanged();
    update();
}

void LabelItem::put(QPointF at)
{
    setPosition({std::round(at.x() - kRoomForHalo), std::round(at.y() - label_.wish.ascent - kRoomForHalo)});
}

void LabelItem::paint(QPainter* painter)
{
    write_label(*painter, ink_, label_, {kRoomForHalo, kRoomForHalo + label_.wish.ascent});
}

YearLabels::YearLabels(QQuickItem* parent) : QQuickItem(parent) {}

void YearLabels::setBands(YearBands* bands)
{
    if (bands == bands_) {
        return;
    }
    if (bands_) {
        bands_->disconnect(this);
    }
    bands_ = bands;
    if (bands_) {
        const auto words_change = [this] {
            words_are_old_ = true;
            polish();
        };
        connect(bands_, &YearBands::yearChanged, this, words_change);
        connect(bands_, &YearBands::themeChanged, this, words_change);
        connect(bands_, &YearBands::frameChanged, this, words_change);
        connect(bands_, &YearBands::widthChanged, this, words_change);
        connect(bands_, &YearBands::marksChanged, this, [this] { polish(); });
    }
    words_are_old_ = true;
    emit bandsChanged();
    polish();
}

void YearLabels::updatePolish()
{
    if (!bands_ || bands_->year() == nullptr || bands_->theme() == nullptr) {
        return;
    }
    if (words_are_old_) {
        write_anew();
    }
    step_aside();
}

void YearLabels::write_anew()
{
    const ChartInk ink = ChartInk::of_theme(*bands_->theme());
    painter_ = std::make_unique<YearPainter>(bands_->painter());
    const std::vector<ChartLabel> labels = painter_->labels(ink, bands_->narrow());
    wishes_ = wishes_of(labels);
    at_home_ = places_at_home(wishes_);
    while (items_.size() > labels.size()) {
        delete items_.back();
        items_.pop_back();
    }
    while (items_.size() < labels.size()) {
        items_.push_back(new LabelItem(this));
    }
    for (std::size_t label = 0; label < labels.size(); ++label) {
        items_[label]->show(labels[label], ink);
    }
    words_are_old_ = false;
}

void YearLabels::step_aside()
{
    const std::vector<LabelPlace> places = places_beside(wishes_, at_home_, bands_->cursorX());
    for (std::size_t label = 0; label < items_.size(); ++label) {
        items_[label]->setVisible(places[label].has_value());
        if (places[label]) {
            items_[label]->put(*places[label]);
        }
    }
}

} // namespace lathhouse::chart
