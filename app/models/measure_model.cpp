#include "app/models/measure_model.h"

#include "app/models/clock.h"
#include "app/models/word_form.h"
#include "app/models/typed_decimal.h"
#include "app/words/measurement_words.h"
#include "core/photo/greenness.h"
#include "core/photo/leaf_colour.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

using home::MeasurementKind;

constexpr std::array kLengths{MeasurementKind::Height, MeasurementKind::Width, MeasurementKind::LongestLeaf,
                              MeasurementKind::Stem};
/// How truly a mark is set by hand, one standard error in pixels of the picture. Common practice, no source.
constexpr double kHand = 2.0;
constexpr double kNineInTen = 1.645;  ///< Of the normal distribution.
constexpr double kRepeatability = 2.77; ///< As photo::PhotoLength::real_change.
constexpr double kCentimetresOfAnInch = 2.54;

std::optional<double> number_typed(const QString& typed)
{
    return typed_decimal(typed, {"cm", "in", "%"});
}

struct SeenGreen {
    double green;
    double separation;
    std::optional<double> yellow;
};

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
    startOver();
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
                fail(read.error().message);
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
    if ((mode == Length || mode == Green) && mode != mode_) {
        mode_ = mode;
        chosen_ = mode == Green ? corners() : 0;
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
    return mode_ == Green ? MeasurementKind::GreenCover : kLengths[static_cast<std::size_t>(kind_)];
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
    const auto typed = number_typed(known_size_);
    if (!typed) {
        return std::nullopt;
    }
    const double metres = *typed * (plants_.look().words.units() == Units::Us ? kCentimetresOfAnInch : 1.0) / 100.0;
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
    return mode_ == Green ? mark >= 0 && mark < corners()
                          : mark >= 0 && mark < 4 && points_[static_cast<std::size_t>(mark)].has_value();
}

QPointF MeasureModel::at(int mark) const
{
    if (!isSet(mark)) {
        return {};
    }
    const auto& point = mode_ == Green ? outline_[static_cast<std::size_t>(mark)] : *points_[static_cast<std::size_t>(mark)];
    return {point.x, point.y};
}

QString MeasureModel::plate(int mark) const
{
    static const std::array kPlates{"A", "B", "1", "2"};
    return mode_ == Green ? QString::number(mark + 1)
           : mark >= 0 && mark < 4 ? QLatin1String(kPlates[static_cast<std::size_t>(mark)])
                                   : QString{};
}

void MeasureModel::setChosen(int chosen)
{
    chosen = std::clamp(chosen, 0, mode_ == Green ? corners() : 3);
    if (chosen != chosen_) {
        chosen_ = chosen;
        ++marks_;
        emit marksChanged();
    }
}

QString MeasureModel::chosenWords() const
{
    if (mode_ == Green) {
        return chosen_ < corners() ? tr("corner %1 of %2").arg(chosen_ + 1).arg(corners()) : tr("next corner");
    }
    return isSet(chosen_) ? tr("point %1").arg(plate(chosen_)) : tr("point %1, not set").arg(plate(chosen_));
}

void MeasureModel::move(int mark, double x, double y)
{
    if (!photo_ || mark < 0) {
        return;
    }
    const photo::Point to{held(x, photo_->picture->width), held(y, photo_->picture->height)};
    if (mode_ == Green) {
        if (mark < corners()) {
            outline_[static_cast<std::size_t>(mark)] = to;
        } else {
            outline_.push_back(to);
            mark = corners() - 1;
        }
    } else if (mark < 4) {
        auto& point = points_[static_cast<std::size_t>(mark)];
        if (!point) {
            order_.push_back(mark);
        }
        point = to;
    } else {
        return;
    }
    chosen_ = mark;
    changed();
}

int MeasureModel::place(double x, double y, double reach)
{
    if (!photo_) {
        return -1;
    }
    const int all = mode_ == Green ? corners() : 4;
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
    if (mode_ == Green) {
        mark = corners();
    } else if (isSet(mark)) { // The next that is missing; with all set the chosen one jumps.
        for (int next = 0; next < 4; ++next) {
            if (!isSet(next)) {
                mark = next;
                break;
            }
        }
    }
    move(mark, x, y);
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
    const int last = mode_ == Green ? corners() : 3;
    if (chosen_ + by < 0 || chosen_ + by > last) {
        return false;
    }
    setChosen(chosen_ + by);
    return true;
}

void MeasureModel::takeBack()
{
    if (mode_ == Green) {
        if (!outline_.empty()) {
            outline_.pop_back();
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
        outline_.clear();
    }
    chosen_ = 0;
    changed();
}

void MeasureModel::startOver()
{
    clear_error();
    tries_.clear();
    points_ = {};
    order_.clear();
    outline_.clear();
    chosen_ = 0;
    changed();
}

std::optional<MeasureModel::Reading> MeasureModel::running() const
{
    if (!std::ranges::all_of(points_, [](const auto& point) { return point.has_value(); })) {
        return std::nullopt;
    }
    return Reading{{*points_[First], *points_[Second]}, {*points_[A], *points_[B]}};
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

void MeasureModel::tell()
{
    value_.reset();
    yellow_.reset();
    result_.clear();
    range_.clear();
    advice_.clear();
    can_keep_ = false;
    if (mode_ == Length) {
        tell_length();
    } else {
        tell_green();
    }
    emit resultChanged();
}

QString MeasureModel::value_words(double value) const
{
    return text(words::measured_value(measured_kind(), value, unit_system_of(plants_.look().words)));
}

std::optional<home::Measurement> MeasureModel::last_reading() const
{
    const auto ground = plants_.facts().ground;
    std::optional<home::Measurement> last;
    if (ground && entry_) {
        const auto series = ground->book.archive->measurements(plants_.opened(), measured_kind());
        for (const auto& of : *series) {
            if (of.measured <= entry_->date() && of.photo != entry_->sha256 &&
                (!last || of.measured >= last->measured)) {
                last = of;
            }
        }
    }
    return last;
}

void MeasureModel::tell_change(double value, std::optional<double> real)
{
    std::vector<SheetRows::Row> rows;
    for (int row = 0; row < rows_.count(); ++row) {
        rows.push_back({rows_.at(row, QStringLiteral("name")), rows_.at(row, QStringLiteral("value")),
                        rows_.at(row, QStringLiteral("note")), rows_.at(row, QStringLiteral("sentence"))});
    }
    const auto add = [&rows](const QString& name, const QString& shown, const QString& note) {
        rows.push_back({name, shown, note,
                        note.isEmpty() ? tr("%1: %2").arg(name, shown) : tr("%1: %2, %3").arg(name, shown, note)});
    };
    if (const auto last = last_reading()) {
        add(tr("Last reading, %1").arg(plants_.look().words.date_with_year(last->measured)), value_words(last->value()), {});
        const double change = value - last->value();
        const QString sign = change < 0.0 ? QStringLiteral("−") : QStringLiteral("+");
        const bool is_real = real && std::abs(change) > *real;
        add(tr("Change"), sign + value_words(std::abs(change)),
            !real     ? QString{}
            : is_real ? tr("real: above %1").arg(value_words(*real))
                      : tr("real above %1").arg(value_words(*real)));
    }
    rows_.show(std::move(rows));
}

void MeasureModel::tell_length()
{
    rows_.show({});
    const auto metres = known_metres();
    const auto all = readings();
    if (!metres || all.empty()) {
        advice_ = tr("Set A and B on something of known size, then 1 and 2 on the plant.");
        return;
    }
    std::vector<photo::Stretch> lengths;
    std::vector<photo::Scale> scales;
    for (const auto& reading : all) {
        lengths.push_back(reading.length);
        scales.push_back({reading.scale, Metres::from_metres(*metres)});
    }
    const auto measured = photo::length_of(lengths, scales);
    if (!measured) {
        advice_ = upper_first(text(measured.error().message)) + QLatin1Char('.');
        return;
    }
    value_ = measured->mean.metres() * 100.0;
    can_keep_ = true;
    // Two marks each on the length and on the scale; relative errors add as squares.
    const auto& last = all.back();
    const double relative = kHand * std::sqrt(2.0) *
                            std::hypot(1.0 / std::max(1.0, last.length.pixels()), 1.0 / std::max(1.0, last.scale.pixels()));
    const double by_hand = *value_ * relative;
    const auto repeats = static_cast<double>(all.size());
    const double one = measured->one_reading ? std::max(by_hand, measured->one_reading->metres() * 100.0) : by_hand;
    const double error = one / std::sqrt(repeats);
    result_ = value_words(*value_);
    range_ = tr("as the camera sees it; 9 in 10: %1 to %2")
                 .arg(value_words(std::max(0.0, *value_ - kNineInTen * error)), value_words(*value_ + kNineInTen * error));
    std::vector<SheetRows::Row> rows;
    if (all.size() > 1) {
        for (std::size_t at = 0; at < all.size(); ++at) {
            const QString shown = value_words(measured->readings[at].metres() * 100.0);
            const QString name = tr("Try %1").arg(at + 1);
            rows.push_back({name, shown, QString{}, tr("%1: %2").arg(name, shown)});
        }
        const QString name = tr("Mean of %1").arg(all.size());
        const QString error_words = tr("± %1").arg(value_words(error));
        rows.push_back({name, result_, error_words, tr("%1: %2, %3").arg(name, result_, error_words)});
    }
    rows_.show(std::move(rows));
    tell_change(*value_, kRepeatability * one);
    advice_ = all.size() == 1
                  ? tr("A second try shows how far the marks can be trusted: set all four points again. The error here is that "
                       "of marks set to within two pixels.")
                  : tr("Another try would bring the error to %1.").arg(value_words(one / std::sqrt(repeats + 1.0)));
}

void MeasureModel::tell_green()
{
    rows_.show({});
    if (!photo_ || corners() < 3) {
        advice_ = tr("Set corners round the leaves, three at least; keep clear of pot and soil.");
        return;
    }
    const int number = ++green_asked_;
    work<SeenGreen>(
        [picture = photo_->picture, outline = outline_]() -> Result<SeenGreen> {
            const auto region = photo::Region::outline(outline, picture->width, picture->height);
            if (!region) {
                return region.error();
            }
            const auto cover = photo::green_cover(*picture, *region);
            return SeenGreen{cover.share(), cover.separation, photo::leaf_colours(*picture, *region).yellow_of_leaf()};
        },
        [this, number](const Result<SeenGreen>& seen) {
            if (number != green_asked_ || mode_ != Green || corners() < 3) {
                return;
            }
            rows_.show({});
            if (!seen) {
                advice_ = upper_first(text(seen.error().message)) + QLatin1Char('.');
            } else {
                value_ = seen->green;
                yellow_ = seen->yellow;
                can_keep_ = true;
                result_ = tr("%1 green").arg(value_words(seen->green));
                range_ = seen->yellow ? tr("of the outline; of the leaves %1 yellow or brown")
                                            .arg(text(words::measured_value(MeasurementKind::YellowShare, *seen->yellow,
                                                                            unit_system_of(plants_.look().words))))
                                      : tr("of the outline");
                tell_change(*value_, {});
                advice_ = seen->separation >= photo::kPoorSeparation
                              ? tr("The same outline, light and place of the camera each time make it comparable.")
                              : tr("Green and the rest hardly part here, so this share means little. A plain ground behind the "
                                   "plant helps.");
            }
            emit resultChanged();
        });
}

bool MeasureModel::keep(const QString& typed)
{
    clear_error();
    if (!entry_) {
        return false;
    }
    const auto kind = measured_kind();
    std::vector<double> repeats;
    if (!typed.trimmed().isEmpty()) {
        const auto value = number_typed(typed);
        if (!value) {
            fail_with(tr("“%1” is no number. Write it such as 27.3.").arg(typed.trimmed()));
            return false;
        }
        repeats.push_back(kind == MeasurementKind::GreenCover                     ? *value / 100.0
                          : plants_.look().words.units() == Units::Us ? *value * kCentimetresOfAnInch
                                                                      : *value);
    } else if (mode_ == Length && value_) {
        const double metres = *known_metres();
        for (const auto& reading : readings()) {
            repeats.push_back(100.0 * metres * reading.length.pixels() / reading.scale.pixels());
        }
    } else if (value_) {
        repeats.push_back(*value_);
    } else {
        fail_with(mode_ == Green ? tr("Draw the outline first, or type the share.")
                                 : tr("Set the four points first, or type the length."));
        return false;
    }
    home::Measurement made{.plant = plants_.opened(),
                           .kind = kind,
                           .measured = entry_->date(),
                           .repeats = std::move(repeats),
                           .method = home::MeasurementMethod::Photo,
                           .entered = now(),
                           .photo = entry_->sha256};
    if (const auto ground = plants_.facts().ground) {
        if (const auto* plant = ground->household.plant(made.plant)) {
            made.pot = plant->pot_volume;
        }
    }
    PlantEntries entries;
    entries.measurements.push_back(made);
    if (mode_ == Green && typed.trimmed().isEmpty() && yellow_) {
        made.kind = MeasurementKind::YellowShare;
        made.repeats = {*yellow_};
        entries.measurements.push_back(made);
    }
    for (const auto& of : entries.measurements) {
        if (const auto sound = home::check(of); !sound) {
            fail(sound.error().message);
            return false;
        }
    }
    const QString said = tr("%1: %2 %3 in the photograph of %4.")
                             .arg(plants_.target(), text(words::measured(kind)), value_words(entries.measurements.front().value()),
                                  plants_.look().words.date_with_year(entry_->date()));
    return plants_.keep(std::move(entries), said);
}

} // namespace lathhouse::models
