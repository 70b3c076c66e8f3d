#include "app/models/measure_model.h"

#include "app/models/typed_measure.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

using home::MeasurementKind;

constexpr std::array kLengths{MeasurementKind::Height, MeasurementKind::Width, MeasurementKind::LongestLeaf,
                              MeasurementKind::Stem};

} // namespace

MeasureModel::MeasureModel(PlantsModel& plants, PhotosModel& photos, QObject* parent)
    : SheetModel(parent), plants_(plants), photos_(photos), kinds_({"text"}), rows_({"name", "value", "note", "sentence"})
{
    std::vector<SheetRows::Row> rows;
    for (const auto kind : kLengths) {
        rows.push_back({upper_first(text(words::measured(kind)))});
    }
    kinds_.show(std::move(rows));
    connect(&photos_, &PhotosModel::viewChanged, this, [this] {
        if (photos_.view() == PhotosModel::Measuring) {
            reload();
        } else if (photo_) {
            photo_.reset();
            ++asked_;
            emit imageChanged();
        }
    });
    connect(&plants_, &PlantsModel::groundChanged, this, [this] { tell(); });
}

QString MeasureModel::unit() const
{
    return plants_.look().words.units() == Units::Us ? tr("in") : tr("cm");
}

QString MeasureModel::about() const
{
    return entry_ ? tr("%1, %2").arg(plants_.target(), plants_.look().words.date_with_year(entry_->date())) : QString{};
}

void MeasureModel::read()
{
    const auto* photo = photos_.photo();
    if (photo == nullptr) {
        return;
    }
    photo_.reset();
    entry_ = *photo;
    tries_.clear();
    outline_.clear();
    grey_.clear();
    start_over();
    const int number = ++asked_;
    work<ReadPhoto>(
        [photo = *photo, file = plants_.door().photos.file]() -> Result<ReadPhoto> {
            const auto path = file(photo);
            return path ? read_for_window(*path, photo.original_name) : Result<ReadPhoto>{path.error()};
        },
        [this, number](Result<ReadPhoto> read) {
            if (number != asked_ || photos_.view() != PhotosModel::Measuring) {
                return;
            }
            if (!read) {
                fail(read.error());
                return;
            }
            photo_ = std::move(*read);
            set_known();
            emit imageChanged();
            changed();
        });
}

void MeasureModel::setMode(int mode)
{
    if (mode >= Length && mode <= Grey && mode != mode_) {
        mode_ = mode;
        chosen_ = mode == Length ? 0 : corners();
        changed();
    }
}

void MeasureModel::setKind(int kind)
{
    if (kind >= 0 && kind < static_cast<int>(kLengths.size()) && kind != kind_) {
        kind_ = kind;
        changed();
    }
}

MeasurementKind MeasureModel::measured_kind() const
{
    return mode_ != Length ? MeasurementKind::GreenCover : kLengths[static_cast<std::size_t>(kind_)];
}

void MeasureModel::setKnownSize(const QString& size)
{
    if (size != known_size_) {
        known_size_ = size;
        changed();
    }
}

std::optional<double> MeasureModel::known_metres() const
{
    const auto typed = typed_centimetres(known_size_, plants_.look().words);
    if (!typed) {
        return std::nullopt;
    }
    const double metres = *typed / 100.0;
    return metres >= 0.001 && metres <= 10.0 ? std::optional{metres} : std::nullopt;
}

bool MeasureModel::knownWrong() const
{
    return !known_size_.trimmed().isEmpty() && !known_metres();
}

double MeasureModel::held(double value, int side) const
{
    return std::clamp(value, 0.0, static_cast<double>(side));
}

bool MeasureModel::isSet(int mark) const
{
    return mode_ != Length ? mark >= 0 && mark < corners()
                          : mark >= 0 && mark < 4 && points_[static_cast<std::size_t>(mark)].has_value();
}

QPointF MeasureModel::at(int mark) const
{
    if (!isSet(mark)) {
        return {};
    }
    const auto& point = mode_ != Length ? outline()[static_cast<std::size_t>(mark)] : *points_[static_cast<std::size_t>(mark)];
    return {point.x, point.y};
}

QString MeasureModel::plate(int mark) const
{
    static const std::array kPlates{"A", "B", "1", "2"};
    return mode_ != Length ? QString::number(mark + 1)
           : mark >= 0 && mark < 4 ? QLatin1String(kPlates[static_cast<std::size_t>(mark)])
                                   : QString{};
}

void MeasureModel::setChosen(int chosen)
{
    chosen = std::clamp(chosen, 0, mode_ != Length ? corners() : 3);
    if (chosen != chosen_) {
        chosen_ = chosen;
        ++marks_;
        emit marksChanged();
    }
}

QString MeasureModel::chosenWords() const
{
    if (mode_ != Length) {
        return chosen_ < corners() ? tr("corner %1 of %2").arg(chosen_ + 1).arg(corners()) : tr("next corner");
    }
    return isSet(chosen_) ? tr("point %1").arg(plate(chosen_)) : tr("point %1, not set").arg(plate(chosen_));
}

void MeasureModel::move(int mark, double x, double y, double step)
{
    if (!photo_ || mark < 0) {
        return;
    }
    const photo::Point to{held(x, photo_->picture->width), held(y, photo_->picture->height)};
    if (mode_ != Length) {
        if (mark < corners()) {
            outline()[static_cast<std::size_t>(mark)] = to;
        } else {
            outline().push_back(to);
            mark = corners() - 1;
        }
    } else if (mark < 4) {
        auto& point = points_[static_cast<std::size_t>(mark)];
        if (!point) {
            order_.push_back(mark);
        }
        point = to;
        steps_[static_cast<std::size_t>(mark)] = std::max(1.0, step);
    } else {
        return;
    }
    chosen_ = mark;
    changed();
}

int MeasureModel::place(double x, double y, double reach, double step)
{
    if (!photo_) {
        return -1;
    }
    const int all = mode_ != Length ? corners() : 4;
    int nearest = -1;
    double best = reach;
    for (int mark = 0; mark < all; ++mark) {
        if (isSet(mark)) {
            const QPointF there = at(mark);
            const double away = std::hypot(there.x() - x, there.y() - y);
            if (away <= best) {
                best = away;
                nearest = mark;
            }
        }
    }
    if (nearest >= 0) {
        setChosen(nearest);
        return nearest;
    }
    int mark = chosen_;
    if (mode_ != Length) {
        mark = corners();
    } else if (isSet(mark)) { // The next that is missing; with all set the chosen one jumps.
        for (int next = 0; next < 4; ++next) {
            if (!isSet(next)) {
                mark = next;
                break;
            }
        }
    }
    move(mark, x, y, step);
    return mark;
}

void MeasureModel::nudge(double dx, double dy)
{
    if (!photo_) {
        return;
    }
    if (isSet(chosen_)) {
        const QPointF from = at(chosen_);
        move(chosen_, from.x() + dx, from.y() + dy);
    } else {
        move(chosen_, photo_->picture->width / 2.0 + dx, photo_->picture->height / 2.0 + dy);
    }
}

bool MeasureModel::step(int by)
{
    const int last = mode_ != Length ? corners() : 3;
    if (chosen_ + by < 0 || chosen_ + by > last) {
        return false;
    }
    setChosen(chosen_ + by);
    return true;
}

void MeasureModel::takeBack()
{
    if (mode_ != Length) {
        if (!outline().empty()) {
            outline().pop_back();
            chosen_ = corners();
            changed();
        }
    } else if (!order_.empty()) {
        chosen_ = order_.back();
        order_.pop_back();
        points_[static_cast<std::size_t>(chosen_)].reset();
        changed();
    }
}

void MeasureModel::tryAgain()
{
    clear_error();
    if (mode_ == Length) {
        const auto reading = running();
        if (!reading) {
            fail_with(tr("Set A, B, 1 and 2 first, and say how long A to B is."));
            return;
        }
        tries_.push_back(*reading);
        points_ = {};
        order_.clear();
    } else {
        outline().clear();
    }
    chosen_ = 0;
    changed();
}

void MeasureModel::start_over()
{
    clear_error();
    tries_.clear();
    points_ = {};
    order_.clear();
    outline_.clear();
    grey_.clear();
    chosen_ = 0;
    changed();
}

std::optional<MeasureModel::Reading> MeasureModel::running() const
{
    if (!std::ranges::all_of(points_, [](const auto& point) { return point.has_value(); })) {
        return std::nullopt;
    }
    const auto error = [this](Mark one, Mark other) { return std::hypot(error_of(one), error_of(other)); };
    return Reading{{*points_[First], *points_[Second]}, {*points_[A], *points_[B]}, error(First, Second), error(A, B)};
}

double MeasureModel::error_of(Mark mark) const
{
    constexpr double kHand = 2.0;
    return std::max(kHand, steps_[static_cast<std::size_t>(mark)]);
}

std::vector<MeasureModel::Reading> MeasureModel::readings() const
{
    auto all = tries_;
    if (const auto now = running()) {
        all.push_back(*now);
    }
    return all;
}

void MeasureModel::changed()
{
    ++marks_;
    emit marksChanged();
    tell();
}

} // namespace lathhouse::models
