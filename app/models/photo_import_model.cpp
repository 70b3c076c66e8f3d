#include "app/models/photo_import_model.h"

#include "app/clock.h"
#include "app/models/typed_path.h"
#include "app/models/typed_taken.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"

#include <QFileInfo>

#include <algorithm>
#include <utility>

namespace lathhouse::models {

PhotoImportModel::PhotoImportModel(PlantsModel& plants, QObject* parent)
    : SheetModel(parent), plants_(plants), refused_({"name", "reason"})
{
    constexpr int kEvery = 2000; // Milliseconds; a file is taken once two looks found it the same.
    pause_.setInterval(kEvery);
    pause_.setSingleShot(true);
    connect(&pause_, &QTimer::timeout, this, &PhotoImportModel::look);
}

PhotoImportModel::~PhotoImportModel()
{
    *stop_ = true; // The thread is waited for; what is begun is finished.
}

bool PhotoImportModel::addToShown(const QList<QUrl>& chosen, int shown)
{
    const int before = plants_.current();
    plants_.setCurrent(shown);
    const int plant = plants_.shownId(shown);
    if (plant == 0) {
        plants_.setCurrent(before);
        return false;
    }
    return add(chosen, plant);
}

bool PhotoImportModel::add(const QList<QUrl>& chosen, int plant)
{
    clear_error();
    if (running_) {
        fail_with(tr("Photographs are on their way in already; wait for them or stop them first."));
        return false;
    }
    if (asking()) {
        fail_with(tr("Say first when those photographs were taken, or leave them out."));
        return false;
    }
    std::vector<std::filesystem::path> files;
    for (const auto& url : chosen) {
        if (url.isLocalFile()) {
            files.emplace_back(url.toLocalFile().toStdString());
        }
    }
    if (files.empty()) {
        fail_with(tr("Only files and folders of this computer can be taken in. Save the photograph first."));
        return false;
    }
    *stop_ = false;
    running_ = true;
    done_ = 0;
    total_ = static_cast<int>(files.size());
    words_ = tr("The photographs are being counted.");
    refused_.show({});
    chosen_ = std::move(files);
    chosen_for_ = plant;
    emit progressChanged();
    work<std::size_t>([undated = plants_.door().photos.undated, files = chosen_, stop = stop_] { return undated(files, *stop); },
                      [this](const Result<std::size_t>& undated) {
                          if (undated && *undated == 0 && !*stop_) {
                              import({});
                              return;
                          }
                          running_ = false;
                          words_.clear();
                          if (!undated) {
                              fail(undated.error());
                          } else if (!*stop_) {
                              undated_ = static_cast<int>(*undated);
                          }
                          emit progressChanged();
                      });
    return true;
}

QString PhotoImportModel::askWords() const
{
    const auto ground = plants_.facts().ground;
    const auto* of = ground ? ground->household.plant(chosen_for_) : nullptr;
    const QString whom = of != nullptr ? text(of->name) : tr("the plant");
    return undated_ == 0   ? QString{}
           : undated_ == 1 ? tr("%1: 1 photograph does not say when it was taken. When was that?").arg(whom)
                           : tr("%1: %2 photographs do not say when they were taken. When was that?").arg(whom).arg(undated_);
}

QString PhotoImportModel::dateExample() const
{
    return plants_.look().words.date_with_year(plants_.look().today);
}

bool PhotoImportModel::takeIn(const QString& taken)
{
    clear_error();
    if (!asking() || running_) {
        return false;
    }
    std::optional<std::chrono::local_seconds> when;
    if (!taken.trimmed().isEmpty()) {
        const auto typed = typed_taken(taken, plants_.look());
        if (!typed.value) {
            fail_with(typed.trouble);
            return false;
        }
        when = typed.value;
    }
    undated_ = 0;
    *stop_ = false;
    running_ = true;
    words_ = tr("The photographs are being counted.");
    emit progressChanged();
    import(when);
    return true;
}

void PhotoImportModel::leaveOut()
{
    clear_error();
    undated_ = 0;
    chosen_.clear();
    emit progressChanged();
    if (folder_ && !found_.empty() && !running_) {
        take_found();
    }
}

void PhotoImportModel::import(std::optional<std::chrono::local_seconds> taken)
{
    work<journal::ImportReport>(
        [import = plants_.door().photos.import, files = std::exchange(chosen_, {}), plant = chosen_for_, taken, told = progress(),
         stop = stop_, entered = now()]() -> Result<journal::ImportReport> { return import(files, plant, taken, entered, told, *stop); },
        [this, plant = chosen_for_](Result<journal::ImportReport> report) {
            running_ = false;
            if (report) {
                tell(*report, plant);
            } else {
                words_.clear();
                fail(report.error());
            }
            emit progressChanged();
        });
}

void PhotoImportModel::count(std::size_t done, std::size_t total)
{
    done_ = static_cast<int>(done);
    total_ = static_cast<int>(total);
    words_ = tr("%1 of %2 photographs").arg(done_).arg(total_);
    emit progressChanged();
}

journal::ImportProgress PhotoImportModel::progress()
{
    return [this](std::size_t done, std::size_t total) {
        QMetaObject::invokeMethod(this, [this, done, total] { count(done, total); }, Qt::QueuedConnection);
    };
}

home::PhotoChange PhotoImportModel::added_of(const journal::ImportReport& report) const
{
    home::PhotoChange added{.kind = home::PhotoChangeKind::Added,
                            .photos = {},
                            .plant = {},
                            .name = {},
                            .taken = plants_.look().today,
                            .entered = {}};
    for (const auto& file : report.files) {
        if (file.outcome == journal::ImportOutcome::Added) {
            added.photos.push_back(file.photo->id);
        }
    }
    // The order of entry, which is that of their numbers.
    std::ranges::sort(added.photos);
    return added;
}

QString PhotoImportModel::others_shown(const journal::ImportReport& report, int plant) const
{
    std::vector<std::string> names;
    const auto ground = plants_.facts().ground;
    for (const auto& file : report.files) {
        if (!ground || file.outcome != journal::ImportOutcome::Known) {
            continue;
        }
        for (const auto other : file.photo->plants) {
            const auto* of = other != plant ? ground->household.plant(other) : nullptr;
            if (of != nullptr && std::ranges::find(names, of->name) == names.end()) {
                names.push_back(of->name);
            }
        }
    }
    return text(words::joined(names));
}

void PhotoImportModel::tell(const journal::ImportReport& report, int plant)
{
    auto added = added_of(report);
    std::vector<SheetRows::Row> refused;
    int known = 0;
    for (const auto& file : report.files) {
        known += file.outcome == journal::ImportOutcome::Known ? 1 : 0;
        if (!file.trouble.text.empty()) {
            refused.push_back({text(file.file.filename().string()), text(words::refusal(file.trouble))});
        }
    }
    const auto came = static_cast<int>(added.photos.size());
    const auto* of = plants_.facts().ground ? plants_.facts().ground->household.plant(plant) : nullptr;
    const QString whom = of != nullptr ? text(of->name) : tr("the plant");
    QString said = came == 0   ? tr("%1: no new photograph.").arg(whom)
                   : came == 1 ? tr("%1: 1 photograph came in.").arg(whom)
                               : tr("%1: %2 photographs came in.").arg(whom).arg(came);
    if (const QString others = others_shown(report, plant); known > 0 && !others.isEmpty()) {
        said += known == 1 ? tr(" 1 was known already and shows the plant now; it still shows %1 too.").arg(others)
                           : tr(" %1 were known already and show the plant now; some of them still show %2 too.").arg(known).arg(others);
    } else if (known > 0) {
        said += known == 1 ? tr(" 1 was known already and shows the plant now.")
                           : tr(" %1 were known already and show the plant now.").arg(known);
    }
    const auto not_taken = report.count(journal::ImportOutcome::Refused);
    if (not_taken > 0) {
        said += not_taken == 1 ? tr(" 1 was not taken.") : tr(" %1 were not taken.").arg(not_taken);
    }
    if (report.cancelled) {
        said += tr(" Stopped; what came in stays.");
    }
    if (report.stopped) {
        fail(*report.stopped);
    }
    words_ = said;
    refused_.show(std::move(refused));
    plants_.keep_imported(std::move(added), said);
}

bool PhotoImportModel::watch(const QString& folder)
{
    clear_error();
    const QString path = whole_path(folder);
    if (path.isEmpty() || !QFileInfo(path).isDir()) {
        fail_with(path.isEmpty() ? tr("Say which folder is to be watched.")
                                 : tr("%1 is no folder of this computer.").arg(path));
        return false;
    }
    watched_ = path;
    came_ = 0;
    watch_words_ = tr("Nothing new has come yet.");
    folder_ = std::make_shared<journal::FolderWatch>(to_path(path));
    emit watchedChanged();
    look();
    return true;
}

void PhotoImportModel::unwatch()
{
    pause_.stop();
    folder_.reset();
    found_.clear();
    watched_.clear();
    if (taking_) {
        *stop_ = true; // What is begun is finished.
    }
    emit watchedChanged();
}

void PhotoImportModel::look()
{
    if (!folder_) {
        return;
    }
    work<std::vector<std::filesystem::path>>(
        [folder = folder_] { return folder->settled(); },
        [this, folder = folder_](Result<std::vector<std::filesystem::path>> files) {
            if (folder != folder_) { // Another is watched since, or none.
                return;
            }
            if (!files) {
                unwatch();
                fail(files.error());
                return;
            }
            found_.insert(found_.end(), files->begin(), files->end());
            if (found_.empty() || running_) { // Photographs that were chosen come in first.
                pause_.start();
            } else {
                take_found();
            }
        });
}

void PhotoImportModel::take_found()
{
    *stop_ = false;
    running_ = true;
    taking_ = true;
    refused_.show({});
    count(0, found_.size());
    work<journal::ImportReport>(
        [import = plants_.door().photos.import_named, files = std::exchange(found_, {}), told = progress(), stop = stop_,
         entered = now()] { return import(files, entered, told, *stop); },
        [this](Result<journal::ImportReport> report) {
            running_ = false;
            taking_ = false;
            words_.clear();
            if (report) {
                tell_found(*report);
                if (report->cancelled) { // Who stops what comes in wants no more of it.
                    unwatch();
                }
            } else {
                unwatch();
                fail(report.error());
            }
            emit progressChanged();
            if (folder_) {
                pause_.start();
            }
        });
}

void PhotoImportModel::tell_found(const journal::ImportReport& report)
{
    auto added = added_of(report);
    std::vector<SheetRows::Row> refused;
    for (const auto& file : report.files) {
        if (!file.trouble.text.empty()) {
            const bool nameless = file.outcome == journal::ImportOutcome::Refused && file.trouble.text == kNamesNoPlant;
            refused.push_back({text(file.file.filename().string()),
                               nameless ? tr("it names no plant; begin its name with a plant’s, or put it into a folder called after one")
                                        : text(words::refusal(file.trouble))});
        }
    }
    const auto came = added.photos.size();
    came_ += came;
    watch_words_ = came_ == 1 ? tr("1 photograph has come in.")
                              : tr("%1 photographs have come in.").arg(static_cast<int>(came_));
    emit watchedChanged();
    if (report.stopped) {
        fail(*report.stopped);
    }
    refused_.show(std::move(refused));
    if (came > 0) {
        plants_.keep_imported(std::move(added), came == 1 ? tr("1 photograph came in from the folder that is watched.")
                                                          : tr("%1 photographs came in from the folder that is watched.").arg(static_cast<int>(came)));
    }
}

void PhotoImportModel::stop()
{
    *stop_ = true;
}

void PhotoImportModel::clear()
{
    clear_error();
    if (!running_) {
        words_.clear();
        refused_.show({});
        emit progressChanged();
    }
}

} // namespace lathhouse::models
