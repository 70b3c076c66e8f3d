#include "app/models/photo_import_model.h"

#include "app/models/clock.h"

#include <algorithm>

namespace lathhouse::models {

PhotoImportModel::PhotoImportModel(PlantsModel& plants, QObject* parent)
    : SheetModel(parent), plants_(plants), refused_({"name", "reason"})
{
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
    emit progressChanged();
    const auto progress = [this](std::size_t done, std::size_t total) {
        QMetaObject::invokeMethod(
            this,
            [this, done, total] {
                done_ = static_cast<int>(done);
                total_ = static_cast<int>(total);
                words_ = tr("%1 of %2 photographs").arg(done_).arg(total_);
                emit progressChanged();
            },
            Qt::QueuedConnection);
    };
    work<journal::ImportReport>(
        [import = plants_.door().photos.import, files, plant, progress, stop = stop_,
         entered = now()]() -> Result<journal::ImportReport> { return import(files, plant, entered, progress, *stop); },
        [this, plant](Result<journal::ImportReport> report) {
            running_ = false;
            if (report) {
                tell(*report, plant);
            } else {
                words_.clear();
                fail(report.error().message);
            }
            emit progressChanged();
        });
    return true;
}

void PhotoImportModel::tell(const journal::ImportReport& report, int plant)
{
    home::PhotoChange added{.kind = home::PhotoChangeKind::Added,
                            .photos = {},
                            .plant = {},
                            .name = {},
                            .taken = plants_.look().today,
                            .entered = {}};
    std::vector<SheetRows::Row> refused;
    int known = 0;
    for (const auto& file : report.files) {
        if (file.outcome == journal::ImportOutcome::Added) {
            added.photos.push_back(file.photo->id);
        }
        known += file.outcome == journal::ImportOutcome::Known ? 1 : 0;
        if (!file.trouble.empty()) {
            refused.push_back({text(file.file.filename().string()), text(file.trouble)});
        }
    }
    // The order of entry, which is that of their numbers.
    std::ranges::sort(added.photos);
    const auto came = static_cast<int>(added.photos.size());
    const auto* of = plants_.facts().ground ? plants_.facts().ground->household.plant(plant) : nullptr;
    const QString whom = of != nullptr ? text(of->name) : tr("the plant");
    QString said = came == 0   ? tr("%1: no new photograph.").arg(whom)
                   : came == 1 ? tr("%1: 1 photograph came in.").arg(whom)
                               : tr("%1: %2 photographs came in.").arg(whom).arg(came);
    if (known > 0) {
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
        fail(report.stopped->message);
    }
    words_ = said;
    refused_.show(std::move(refused));
    plants_.keep_imported(std::move(added), said);
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
