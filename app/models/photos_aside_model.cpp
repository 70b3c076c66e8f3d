#include "app/models/photos_aside_model.h"

#include "app/clock.h"
#include "app/models/word_form.h"

#include <QUrl>

#include <algorithm>

namespace lathhouse::models {

struct PhotosAsideModel::Facts {
    struct One {
        home::Photo photo;
        bool out;
        SheetRows::Row row;
    };
    std::vector<One> shown; ///< Newest first.
    std::vector<std::pair<home::PlantId, std::string>> plants;
    std::size_t all = 0;
};

namespace {

/// What it shows, as far as that is known.
QString aside_words(const home::Photo& photo, bool out, const PhotosAside& aside)
{
    QStringList names;
    for (const auto plant : photo.plants) {
        const auto there = std::ranges::find(aside.plants, plant, &std::pair<home::PlantId, std::string>::first);
        const auto gone = aside.gone.find(plant);
        names.append(there != aside.plants.end() ? text(there->second)
                     : gone != aside.gone.end()  ? PhotosAsideModel::tr("%1, which is gone").arg(text(gone->second))
                                                 : PhotosAsideModel::tr("a plant that is gone"));
    }
    if (names.isEmpty()) {
        return out ? PhotosAsideModel::tr("out of the lists; shows no plant") : PhotosAsideModel::tr("shows no plant");
    }
    const QString shows = names.join(QStringLiteral("; "));
    return out ? PhotosAsideModel::tr("out of the lists; shows %1").arg(shows) : PhotosAsideModel::tr("shows %1").arg(shows);
}

} // namespace

PhotosAsideModel::PhotosAsideModel(PlantDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)), rows_({"source", "name", "words", "out", "sentence"})
{
}

void PhotosAsideModel::look()
{
    if (known()) {
        follow();
    } else {
        start();
    }
}

void PhotosAsideModel::read()
{
    work<Facts>(
        [door = door_, words = look_.words]() -> Result<Facts> {
            auto aside = door.photos.aside();
            if (!aside) {
                return aside.error();
            }
            Facts facts;
            for (const auto* group : {&aside->withdrawn, &aside->of_no_plant}) {
                for (const auto& photo : *group) {
                    facts.shown.push_back({photo, group == &aside->withdrawn, {}});
                }
            }
            facts.plants = aside->plants;
            facts.all = facts.shown.size();
            std::ranges::stable_sort(facts.shown, [](const auto& a, const auto& b) { return a.photo.taken > b.photo.taken; });
            facts.shown.erase(facts.shown.begin() + static_cast<std::ptrdiff_t>(std::min(facts.shown.size(), kMostShown)), facts.shown.end());
            for (auto& one : facts.shown) {
                const auto file = door.thumbnail(one.photo);
                const QString name = tr("%1, %2").arg(text(one.photo.original_name), words.date_with_year(one.photo.date()));
                const QString said = aside_words(one.photo, one.out, *aside);
                one.row = {file ? QUrl::fromLocalFile(text(file->string())) : QUrl{}, name, said, one.out, tr("%1: %2.").arg(name, said)};
            }
            return facts;
        },
        [this](Result<Facts> made) {
            if (!made) {
                fail(made.error());
                return;
            }
            std::vector<SheetRows::Row> rows;
            photos_.clear();
            out_.clear();
            for (auto& one : made->shown) {
                photos_.push_back(std::move(one.photo));
                out_.push_back(one.out);
                rows.push_back(std::move(one.row));
            }
            std::ranges::sort(made->plants, {}, [](const auto& plant) { return text(plant.second).toCaseFolded(); });
            plants_ = std::move(made->plants);
            all_ = made->all;
            rows_.show(std::move(rows));
            set_known();
            emit asideChanged();
        });
}

QString PhotosAsideModel::line() const
{
    if (!known()) {
        return {};
    }
    if (all_ == 0) {
        return tr("None: every photograph is in the lists and shows a plant that is there.");
    }
    return all_ > photos_.size() ? tr("The newest %1 of %2.").arg(photos_.size()).arg(all_) : QString{};
}

QStringList PhotosAsideModel::plants() const
{
    QStringList names;
    for (const auto& [id, name] : plants_) {
        names.append(text(name));
    }
    return names;
}

const home::Photo* PhotosAsideModel::photo(int row, bool out) const
{
    const auto at = static_cast<std::size_t>(row);
    return row >= 0 && at < photos_.size() && out_[at] == out ? &photos_[at] : nullptr;
}

QString PhotosAsideModel::called(const home::Photo& photo) const
{
    return tr("The photograph %1 of %2").arg(text(photo.original_name), look_.words.date_with_year(photo.date()));
}

void PhotosAsideModel::change(const home::Photo& photo, home::PhotoChangeKind kind, std::optional<home::PlantId> plant, QString said)
{
    clear_error();
    say({});
    PlantEntries entries;
    entries.photos = home::PhotoChange{.kind = kind, .photos = {photo.id}, .plant = plant, .name = photo.original_name, .taken = photo.date(), .entered = now()};
    work<void>([record = door_.record, entries] { return record(entries); },
               [this, said = std::move(said)](const Result<void>& done) {
                   if (!done) {
                       fail(done.error());
                       return;
                   }
                   say(said);
                   emit written();
                   read();
               });
}

void PhotosAsideModel::bringBack(int row)
{
    if (const auto* of = photo(row, true)) {
        change(*of, home::PhotoChangeKind::BroughtBack, {}, tr("%1 is back in the lists. Undo above the pages takes that back.").arg(called(*of)));
    }
}

void PhotosAsideModel::withdraw(int row)
{
    if (const auto* of = photo(row, false)) {
        change(*of, home::PhotoChangeKind::Withdrawn, {}, tr("%1 is out of the lists; its file stays.").arg(called(*of)));
    }
}

void PhotosAsideModel::giveTo(int row, int plant)
{
    const auto* of = photo(row, false);
    if (of != nullptr && plant >= 0 && static_cast<std::size_t>(plant) < plants_.size()) {
        const auto& [id, name] = plants_[static_cast<std::size_t>(plant)];
        change(*of, home::PhotoChangeKind::Assigned, id, tr("%1 shows %2.").arg(called(*of), text(name)));
    }
}

} // namespace lathhouse::models
