#include "app/models/photo_export_model.h"

#include "app/models/typed_path.h"
#include "app/words/refusal.h"
#include "core/home/photo_spread.h"

#include <QFileInfo>

namespace lathhouse::models {

PhotoExportModel::PhotoExportModel(PlantsModel& plants, const PhotosModel& album, QObject* parent)
    : SheetModel(parent), plants_(plants), album_(&album)
{
}

PhotoExportModel::PhotoExportModel(PlantsModel& plants, QObject* parent) : SheetModel(parent), plants_(plants), album_(nullptr) {}

PhotoExportModel::~PhotoExportModel()
{
    *stop_ = true; // The thread is waited for; the photo that is begun is finished.
}

void PhotoExportModel::set_there(bool there)
{
    if (there != file_is_there_) {
        file_is_there_ = there;
        emit fileIsThereChanged();
    }
}

void PhotoExportModel::clear()
{
    clear_error();
    say({});
    set_there(false);
}

void PhotoExportModel::stop()
{
    *stop_ = true;
    emit progressChanged();
}

int PhotoExportModel::usual(int answer)
{
    return answer == Height ? journal::SheetForm{}.height : answer == Columns ? journal::SheetForm{}.columns : journal::kUsualOnASheet;
}

std::optional<int> PhotoExportModel::whole(Answer answer, const QString& typed, int least, int most)
{
    if (typed.trimmed().isEmpty()) {
        return usual(answer);
    }
    bool is_number = false;
    const int number = typed.trimmed().toInt(&is_number);
    if (is_number && number >= least && number <= most) {
        return number;
    }
    wrong_ = answer;
    fail_with((answer == Height    ? tr("Write how high each photograph is to be, %1 to %2 pixels, or leave it blank.")
               : answer == Columns ? tr("Write how many stand in a row, %1 to %2, or leave it blank.")
                                   : tr("Write how many it takes at most, %1 to %2, or leave it blank."))
                  .arg(least)
                  .arg(most));
    return std::nullopt;
}

void PhotoExportModel::write(int what, const QString& path, bool with_position, bool replace, const QString& height,
                             const QString& columns, const QString& count)
{
    if (running_ || working() || (what != AllOfIt && album_ == nullptr)) {
        return;
    }
    clear();
    wrong_ = Target;
    journal::SheetForm form;
    std::optional<int> most = 2;
    if (what == Strip) {
        most = whole(Count, count, 1, journal::kMostOnASheet);
        const auto in_a_row = most ? whole(Columns, columns, 1, journal::kMostOnASheet) : std::nullopt;
        if (!in_a_row) {
            return;
        }
        form.columns = *in_a_row;
    }
    if (what != AllOfIt) {
        const auto high = whole(Height, height, journal::kLeastSheetHeight, journal::kMostSheetHeight);
        if (!high) {
            return;
        }
        form.height = *high;
    }
    QString target = whole_path(path);
    if (target.isEmpty()) {
        fail_with(what == AllOfIt ? tr("Say into which folder.") : tr("Say which picture is to be written."));
        return;
    }
    if (what == AllOfIt) {
        write_files(target, with_position);
        return;
    }
    if (QFileInfo(target).suffix().isEmpty() && !QFileInfo(target).isDir()) {
        target += QStringLiteral(".jpg");
    }
    if (!replace && QFileInfo(target).isFile()) {
        fail_with(tr("%1 is there already. Replace it, or take another name.").arg(target));
        set_there(true);
        return;
    }
    write_sheet(what, target, form, *most);
}

void PhotoExportModel::write_files(const QString& folder, bool with_position)
{
    *stop_ = false;
    running_ = true;
    done_ = 0;
    total_ = album_ != nullptr ? album_->count() : 0;
    emit progressChanged();
    const journal::ImportProgress told = [this](std::size_t done, std::size_t total) {
        QMetaObject::invokeMethod(
            this,
            [this, done, total] {
                done_ = static_cast<int>(done);
                total_ = static_cast<int>(total);
                emit progressChanged();
            },
            Qt::QueuedConnection);
    };
    work<journal::PhotoExport>(
        [out = plants_.door().photos.write_out, plant = album_ != nullptr ? std::optional{plants_.opened()} : std::nullopt, target = to_path(folder), told, stop = stop_,
         position = with_position ? journal::PhotoPosition::Stays : journal::PhotoPosition::IsTakenOut] {
            return out(plant, target, position, told, *stop);
        },
        [this, folder, with_position](const Result<journal::PhotoExport>& report) {
            running_ = false;
            emit progressChanged();
            if (!report) {
                fail(report.error());
                return;
            }
            const auto count = static_cast<int>(report->files.size());
            QString said = count == 1 ? tr("Wrote 1 photograph to %1.").arg(folder) : tr("Wrote %1 photographs to %2.").arg(count).arg(folder);
            said += QLatin1Char(' ') + (with_position ? tr("They are as they were taken: some may say where that was.")
                                                      : tr("Where they were taken has been taken out; the pictures are untouched."));
            if (report->cancelled) {
                said += QLatin1Char(' ') + tr("Stopped before the end.");
            }
            say(said);
            if (!report->refused.empty()) {
                fail(words::refusal(report->refused.front()));
            }
        });
}

void PhotoExportModel::write_sheet(int what, const QString& file, const journal::SheetForm& form, int count)
{
    std::vector<home::Photo> photos;
    if (what == Comparison) {
        if (album_->photo() != nullptr && album_->photo_beside() != nullptr) {
            photos = {*album_->photo(), *album_->photo_beside()};
        }
    } else if (const auto ground = plants_.facts().ground) {
        const auto all = ground->book.archive->photos(plants_.opened());
        for (const auto place : home::spread_places(all->size(), static_cast<std::size_t>(count))) {
            photos.push_back((*all)[place]);
        }
    }
    if (photos.empty()) {
        fail_with(tr("There is no photograph to write."));
        return;
    }
    work<std::size_t>(
        [photos = std::move(photos), file_of = plants_.door().photos.file, target = to_path(file), form] {
            return journal::write_photo_sheet(photos, file_of, target, form).transform([](const auto& shown) { return shown.size(); });
        },
        [this, file](const Result<std::size_t>& shown) {
            if (!shown) {
                fail(shown.error());
                return;
            }
            say(tr("Wrote %1 photographs beside each other to %2; nothing in it says where they were taken.")
                    .arg(static_cast<int>(*shown))
                    .arg(file));
        });
}

} // namespace lathhouse::models
