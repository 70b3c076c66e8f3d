// What the marks in a photo say: the length or the green share, how well it is known, and keeping it.
#include "app/clock.h"
#include "app/models/measure_model.h"
#include "app/models/typed_measure.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"
#include "app/words/refusal.h"
#include "core/photo/greenness.h"
#include "core/photo/leaf_colour.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

constexpr double kOddCast = 2.0; // Thrice the weakest; common practice, no source.

using home::MeasurementKind;

constexpr double kNineInTen = 1.645;  ///< Of the normal distribution.
constexpr double kRepeatability = 2.77; ///< As photo::PhotoLength::real_change.

struct GreenOfOutline {
    double green;
    double separation;
    std::optional<double> yellow;
};

struct SeenGreen {
    GreenOfOutline taken;                     ///< As the camera took it.
    std::optional<GreenOfOutline> by_grey = {}; ///< With the colours set by the patch, where one is marked.
    double cast = 0.0; ///< How far the strongest correction of a colour lies above the weakest, as a share.
};

GreenOfOutline colours_of(const photo::Picture& picture, const photo::Region& region)
{
    const auto cover = photo::green_cover(picture, region);
    return {cover.share(), cover.separation, photo::leaf_colours(picture, region).yellow_of_leaf()};
}

} // namespace

void MeasureModel::tell()
{
    value_.reset();
    yellow_.reset();
    by_grey_ = false;
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
        const bool share = home::unit_of(measured_kind()) == home::MeasurementUnit::Share;
        add(tr("Change"),
            sign + (share ? tr("%1 points").arg(plants_.look().words.decimal(100.0 * std::abs(change), 1)) : value_words(std::abs(change))),
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
        advice_ = upper_first(text(words::refusal(measured.error()))) + QLatin1Char('.');
        return;
    }
    value_ = measured->mean.metres() * 100.0;
    can_keep_ = true;
    // Two marks each on the length and on the scale; relative errors add as squares.
    const auto& last = all.back();
    const double relative = std::hypot(last.length_error / std::max(1.0, last.length.pixels()),
                                       last.scale_error / std::max(1.0, last.scale.pixels()));
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
                       "of marks set to within two pixels of the photograph, and no nearer than a pixel of the screen; arrow "
                       "keys set them finer.")
                  : tr("Another try would bring the error to %1.").arg(value_words(one / std::sqrt(repeats + 1.0)));
}

void MeasureModel::tell_green()
{
    rows_.show({});
    const int number = ++green_asked_;
    if (mode_ == Grey && grey_.size() < 3) {
        advice_ = tr("Set corners round something that is grey in truth and stands in the plant’s light, such as the patch of the "
                     "card; three at least. The colours of the whole photograph are set by it.");
        return;
    }
    if (!photo_ || outline_.size() < 3) {
        advice_ = mode_ == Grey ? tr("The patch is set. Under Green share, set corners round the leaves next.")
                                : tr("Set corners round the leaves, three at least; keep clear of pot and soil.");
        return;
    }
    work<SeenGreen>(
        [picture = photo_->picture, outline = outline_, grey = grey_]() -> Result<SeenGreen> {
            const auto region = photo::Region::outline(outline, picture->width, picture->height);
            if (!region) {
                return region.error();
            }
            SeenGreen seen{.taken = colours_of(*picture, *region)};
            if (grey.size() < 3) {
                return seen;
            }
            const auto balance = photo::Region::outline(grey, picture->width, picture->height).and_then([&](const photo::Region& patch) {
                return photo::WhiteBalance::from_grey(*picture, patch);
            });
            if (!balance) {
                return balance.error();
            }
            seen.by_grey = colours_of(balance->applied(*picture), *region);
            seen.cast = balance->strength() - 1.0;
            return seen;
        },
        [this, number](const Result<SeenGreen>& seen) {
            if (number != green_asked_ || mode_ == Length || outline_.size() < 3) {
                return;
            }
            rows_.show({});
            if (!seen) {
                advice_ = upper_first(text(words::refusal(seen.error()))) + QLatin1Char('.');
                emit resultChanged();
                return;
            }
            const auto& counts = seen->by_grey.value_or(seen->taken);
            const auto yellow_words = [this](const GreenOfOutline& of) {
                return of.yellow ? tr("of the leaves %1 yellow or brown")
                                       .arg(text(words::measured_value(MeasurementKind::YellowShare, *of.yellow,
                                                                       unit_system_of(plants_.look().words))))
                                 : QString{};
            };
            const QString of_leaves = yellow_words(counts);
            value_ = counts.green;
            yellow_ = counts.yellow;
            by_grey_ = seen->by_grey.has_value();
            can_keep_ = true;
            result_ = tr("%1 green").arg(value_words(counts.green));
            range_ = of_leaves.isEmpty() ? tr("of the outline") : tr("of the outline; %1").arg(of_leaves);
            if (by_grey_) {
                range_ = tr("%1; colours set by the grey patch").arg(range_);
                const QString name = tr("As the camera took it");
                const QString shown = value_words(seen->taken.green);
                const QString note = yellow_words(seen->taken);
                rows_.show({{name, shown, note, note.isEmpty() ? tr("%1: %2").arg(name, shown) : tr("%1: %2, %3").arg(name, shown, note)}});
            }
            tell_change(*value_, {});
            advice_ = counts.separation < photo::kPoorSeparation
                          ? tr("Green and the rest hardly part here, so this share means little. A plain ground behind the "
                               "plant helps.")
                      : by_grey_ && seen->cast > kOddCast
                          ? tr("The patch’s strongest colour came out %1 % above its weakest, more than the lamps of a room and a camera "
                               "that allows for them leave. If it is not grey in truth, mark another: its own colour was taken out.")
                                .arg(plants_.look().words.decimal(100.0 * seen->cast, 0))
                      : by_grey_ ? tr("In this light the patch’s strongest colour came out %1 % above its weakest, and that is taken out. "
                                      "Keep the patch in every photograph that is to be compared.")
                                       .arg(plants_.look().words.decimal(100.0 * seen->cast, 0))
                                 : tr("The same outline, light and place of the camera each time make it comparable. Where the light "
                                      "changes, mark a grey patch.");
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
        const auto value = typed_measure(typed, kind, plants_.look().words);
        if (!value) {
            fail_with(tr("“%1” is no number. Write it such as 27.3.").arg(typed.trimmed()));
            return false;
        }
        repeats.push_back(*value);
    } else if (mode_ == Length && value_) {
        const double metres = *known_metres();
        for (const auto& reading : readings()) {
            repeats.push_back(100.0 * metres * reading.length.pixels() / reading.scale.pixels());
        }
    } else if (value_) {
        repeats.push_back(*value_);
    } else {
        fail_with(mode_ != Length ? tr("Draw the outline first, or type the share.")
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
    if (by_grey_ && typed.trimmed().isEmpty()) {
        made.note = tr("colours set by the grey patch").toStdString();
    }
    PlantEntries entries;
    entries.measurements.push_back(made);
    if (mode_ != Length && typed.trimmed().isEmpty() && yellow_) {
        made.kind = MeasurementKind::YellowShare;
        made.repeats = {*yellow_};
        entries.measurements.push_back(made);
    }
    for (const auto& of : entries.measurements) {
        if (const auto sound = home::check(of); !sound) {
            fail(sound.error());
            return false;
        }
    }
    const QString said = tr("%1: %2 %3 in the photograph of %4.")
                             .arg(plants_.target(), text(words::measured(kind)), value_words(entries.measurements.front().value()),
                                  plants_.look().words.date_with_year(entry_->date()));
    return plants_.keep(std::move(entries), said);
}

} // namespace lathhouse::models
