#include "app/models/photos_model.h"

#include "app/clock.h"
#include "app/models/typed_taken.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"
#include "app/words/photo_words.h"
#include "app/words/place_words.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

constexpr int kShownSide = 1600; ///< Pixels of the longer side that are read for looking at.

/// What is read of a file for looking at it.
struct LookedAt {
    QImage image;
    QString camera;
};

} // namespace

PhotosModel::PhotosModel(PlantsModel& plants, QObject* parent)
    : SheetModel(parent), plants_(plants), facts_({"name", "words"}),
      changes_({"name", "before", "after", "change", "sentence"}), others_({"plant", "name"})
{
    connect(&plants_, &PlantsModel::openedChanged, this, [this] {
        set_view(Closed);
        leave();
    });
    connect(&plants_, &PlantsModel::groundChanged, this, [this] { view_ == Closed ? leave() : gather(); });
}

PhotosModel::~PhotosModel()
{
    ++*wanted_;
    ++*wanted_beside_;
}

void PhotosModel::read()
{
    gather();
}

/// All photos of a plant of ten years are many, and a page shows six of them.
void PhotosModel::leave()
{
    gathered_ = false;
    photos_.clear();
    current_ = -1;
    other_ = -1;
    emit currentChanged();
}

void PhotosModel::gather_once()
{
    if (!gathered_) {
        gather();
    }
}

void PhotosModel::gather()
{
    gathered_ = true;
    const auto ground = plants_.facts().ground;
    const int plant = plants_.opened();
    const int looked_at = plant == plant_ && photo() != nullptr ? photo()->id : 0;
    const int beside = plant == plant_ && other_ >= 0 ? at(other_).id : 0;
    photos_.clear();
    std::vector<SheetRows::Row> others;
    if (ground && plant != 0) {
        photos_ = *ground->book.archive->photos(plant);
        for (const auto& of : ground->household.plants) {
            if (of.id != plant) {
                others.push_back({of.id, text(of.name)});
            }
        }
    }
    std::ranges::sort(others, {}, [](const SheetRows::Row& row) { return row[1].toString().toCaseFolded(); });
    others_.show(std::move(others));
    plant_ = plant;
    const auto place_of = [this](int id) {
        const auto there = std::ranges::find(photos_, id, &home::Photo::id);
        return there == photos_.end() ? -1 : static_cast<int>(there - photos_.begin());
    };
    current_ = place_of(looked_at);
    if (current_ < 0) {
        current_ = count() - 1;
    }
    other_ = place_of(beside);
    if (count() == 0 && view_ != Closed) {
        set_view(Closed);
    }
    if (count() < 2 && view_ == Two) {
        set_view(One);
    }
    set_known();
    show();
}

QString PhotosModel::date_of(int place) const
{
    return place < 0 || place >= count() ? QString{} : plants_.look().words.date_with_year(at(place).date());
}

QString PhotosModel::place() const
{
    return current_ < 0 ? QString{} : tr("%1 of %2").arg(current_ + 1).arg(count());
}

bool PhotosModel::isPicture() const
{
    const auto ground = plants_.facts().ground;
    if (!ground || current_ < 0) {
        return false;
    }
    const auto chosen = ground->book.pictures.find(plant_);
    return chosen != ground->book.pictures.end() && chosen->second.id == photoId();
}

void PhotosModel::setCurrent(int current)
{
    current = count() == 0 ? -1 : std::clamp(current, 0, count() - 1);
    if (current != current_) {
        current_ = current;
        show();
    }
}

void PhotosModel::setOther(int other)
{
    other = count() == 0 ? -1 : std::clamp(other, 0, count() - 1);
    if (other != other_) {
        other_ = other;
        show();
    }
}

void PhotosModel::set_view(View view)
{
    if (view != view_) {
        view_ = view;
        emit viewChanged();
    }
}

void PhotosModel::open(int photo)
{
    clear_error();
    gather_once();
    const auto there = std::ranges::find(photos_, photo, &home::Photo::id);
    if (there != photos_.end()) {
        current_ = static_cast<int>(there - photos_.begin());
    }
    if (current_ >= 0) {
        set_view(One);
        show();
    }
}

void PhotosModel::openTwo()
{
    clear_error();
    gather_once();
    if (view_ == Closed) {
        current_ = count() - 1;
    }
    if (count() < 2) {
        fail_with(tr("Two photographs of the plant are needed to lay them side by side."));
        return;
    }
    if (other_ < 0 || other_ == current_) {
        other_ = current_ == 0 ? count() - 1 : 0;
    }
    set_view(Two);
    show();
}

void PhotosModel::openMeasuring()
{
    clear_error();
    gather_once();
    if (current_ >= 0) {
        set_view(Measuring);
    }
}

void PhotosModel::close()
{
    clear_error();
    set_view(view_ == Measuring ? One : Closed);
    if (view_ == Closed) { // Nothing large is held for nothing.
        image_ = {};
        other_image_ = {};
        emit imageChanged();
    } else {
        show();
    }
}

void PhotosModel::show()
{
    std::vector<SheetRows::Row> rows;
    if (const auto* shown = photo()) {
        const QString from = shown->taken_from == home::TakenFrom::Exif       ? tr("by the camera’s clock")
                             : shown->taken_from == home::TakenFrom::FileTime ? tr("by the file’s time; the camera wrote none")
                                                                              : tr("set by hand");
        rows.push_back({tr("Taken"), tr("%1, %2").arg(text(words::photo_time(shown->taken)), from)});
        QString size = tr("%1 x %2 pixels").arg(shown->width).arg(shown->height);
        if (shown->bytes > 0) { // Those that are drawn when looked at have none yet.
            size = tr("%1, %2 MB").arg(size, plants_.look().words.decimal(static_cast<double>(shown->bytes) / 1e6, 2));
        }
        rows.push_back({tr("Size"), size});
        rows.push_back({tr("File"), text(shown->original_name)});
        rows.push_back({tr("Position"),
                        shown->position ? tr("%1. Kept here; photos that are written out leave it out unless you say otherwise.").arg(text(words::position(*shown->position)))
                                        : tr("The camera wrote none.")});
        QStringList names;
        if (const auto ground = plants_.facts().ground) {
            for (const auto id : shown->plants) {
                if (const auto* plant = ground->household.plant(id)) {
                    names.append(text(plant->name));
                }
            }
        }
        rows.push_back({tr("Shows"), names.join(QStringLiteral(", "))});
    }
    facts_.show(std::move(rows));
    tell_changes();
    emit currentChanged();
    if (view_ == One || view_ == Two) {
        load(current_, false);
    }
    if (view_ == Two) {
        load(other_, true);
    }
}

void PhotosModel::load(int place, bool beside)
{
    if (place < 0) {
        return;
    }
    const auto wanted = beside ? wanted_beside_ : wanted_;
    const int number = ++*wanted;
    work<LookedAt>(
        [wanted, number, photo = at(place), file = plants_.door().photos.file]() -> Result<LookedAt> {
            if (*wanted != number) { // Walked on meanwhile.
                return LookedAt{};
            }
            const auto path = file(photo);
            if (!path) {
                return path.error();
            }
            auto read = read_for_window(*path, photo.original_name, kShownSide);
            if (!read) {
                return read.error();
            }
            return LookedAt{std::move(read->image), text(read->facts.exif.camera)};
        },
        [this, wanted, number, beside](Result<LookedAt> read) {
            if (*wanted != number || view_ == Closed) {
                return;
            }
            if (!read) {
                (beside ? other_image_ : image_) = {};
                fail(read.error());
            } else {
                (beside ? other_image_ : image_) = std::move(read->image);
                if (!beside && !read->camera.isEmpty()) {
                    std::vector<SheetRows::Row> rows;
                    for (int row = 0; row < facts_.count(); ++row) {
                        if (facts_.at(row, QStringLiteral("name")) != tr("Camera")) {
                            rows.push_back({facts_.at(row, QStringLiteral("name")), facts_.at(row, QStringLiteral("words"))});
                        }
                    }
                    rows.insert(rows.begin() + 1, {tr("Camera"), read->camera});
                    facts_.show(std::move(rows));
                }
            }
            emit imageChanged();
        });
}

/// What was measured nearest to each of the two photos, in the photo itself or within four days of it.
void PhotosModel::tell_changes()
{
    constexpr int kNear = 4;
    std::vector<SheetRows::Row> rows;
    changes_note_.clear();
    const auto ground = plants_.facts().ground;
    if (view_ == Two && ground && current_ >= 0 && other_ >= 0) {
        const auto* before = &at(std::min(current_, other_));
        const auto* after = &at(std::max(current_, other_));
        const auto units = unit_system_of(plants_.look().words);
        const auto measured = ground->book.archive->measurements(plant_);
        const auto reading = [&](home::MeasurementKind kind, const home::Photo& photo) {
            const home::Measurement* best = nullptr;
            int best_days = kNear + 1;
            for (const auto& of : *measured) {
                if (of.kind != kind) {
                    continue;
                }
                const int days = of.photo == photo.sha256 ? -1 : std::abs(calendar::days_between(of.measured, photo.date()));
                if (days < best_days) {
                    best = &of;
                    best_days = days;
                }
            }
            return best;
        };
        for (const auto kind : home::every_measurement_kind()) {
            const auto* first = reading(kind, *before);
            const auto* last = reading(kind, *after);
            if (first == nullptr || last == nullptr || first == last) {
                continue;
            }
            const double change = last->value() - first->value();
            const QString sign = change < 0.0 ? QStringLiteral("−") : QStringLiteral("+");
            const QString name = upper_first(text(words::measured(kind)));
            const QString from = text(words::measured_value(kind, first->value(), units));
            const QString to = text(words::measured_value(kind, last->value(), units));
            const QString by = sign + text(words::measured_value(kind, std::abs(change), units));
            rows.push_back({name, from, to, by, tr("%1: %2, then %3, %4").arg(name, from, to, by)});
        }
        const int days = calendar::days_between(before->date(), after->date());
        changes_note_ = rows.empty() ? tr("%1 days apart. Nothing was measured near both dates; measure in each of the two.").arg(days)
                                     : tr("%1 days apart; measured within %2 days of each photograph.").arg(days).arg(kNear);
    }
    changes_.show(std::move(rows));
}

void PhotosModel::change(home::PhotoChangeKind kind, home::PlantId plant, const QString& words,
                         std::optional<std::chrono::local_seconds> taken)
{
    clear_error();
    const auto* of = photo();
    if (of == nullptr) {
        return;
    }
    home::PhotoChange made{.kind = kind,
                           .photos = {},
                           .plant = kind == home::PhotoChangeKind::Dated ? std::nullopt : std::optional{plant},
                           .name = of->original_name,
                           .taken = of->date(),
                           .entered = now()};
    if (kind != home::PhotoChangeKind::DrawingChosen) {
        made.photos.push_back(of->id);
    }
    plants_.keep({.events = {}, .measurements = {}, .photos = std::move(made), .taken = taken}, words);
}

void PhotosModel::choosePicture()
{
    change(home::PhotoChangeKind::Chosen, plant_, tr("The photograph of %1 stands for %2.").arg(date(), plants_.target()));
}

void PhotosModel::chooseDrawing()
{
    change(home::PhotoChangeKind::DrawingChosen, plant_, tr("%1 is drawn on its shelf again.").arg(plants_.target()));
}

void PhotosModel::takeOff()
{
    change(home::PhotoChangeKind::TakenOff, plant_,
           tr("The photograph of %1 does not show %2 any more; it stays among the photographs.").arg(date(), plants_.target()));
}

void PhotosModel::assignTo(int plant)
{
    const auto ground = plants_.facts().ground;
    const auto* of = ground ? ground->household.plant(plant) : nullptr;
    if (of == nullptr) {
        fail_with(tr("There is no plant with the number %1 (any more).").arg(plant));
        return;
    }
    change(home::PhotoChangeKind::Assigned, plant, tr("The photograph of %1 shows %2 too.").arg(date(), text(of->name)));
}

bool PhotosModel::dateAs(const QString& typed)
{
    clear_error();
    const auto& look = plants_.look();
    const auto taken = typed_taken(typed, look);
    if (!taken.value) {
        fail_with(taken.trouble);
        return false;
    }
    if (photo() == nullptr) {
        return false;
    }
    change(home::PhotoChangeKind::Dated, plant_, tr("The photograph %1 was taken on %2.").arg(text(photo()->original_name), look.words.date_with_year(taken.date)),
           taken.value);
    return true;
}

} // namespace lathhouse::models
