#pragma once

#include "app/models/photos_model.h"

#include <QUrl>

#include <atomic>
#include <memory>

namespace lathhouse::models {

/// Photos that are written out for others. Of the plant whose page is open: all of them as files, a strip of them over time, or
/// the two that lie side by side as one picture. Of the household: all of them as files. In a thread of its own, which shows how far it is and can be stopped.
class PhotoExportModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page of a plant")
    Q_PROPERTY(bool running READ running NOTIFY progressChanged)
    Q_PROPERTY(bool stopping READ stopping NOTIFY progressChanged)
    Q_PROPERTY(double share READ share NOTIFY progressChanged)
    /// "14 of 79 photographs".
    Q_PROPERTY(QString words READ words NOTIFY progressChanged)
    /// Which of the answers the error speaks of.
    Q_PROPERTY(int wrong READ wrong NOTIFY errorChanged)
    /// Whether nothing was written because a file of that name is there.
    Q_PROPERTY(bool fileIsThere READ fileIsThere NOTIFY fileIsThereChanged)

public:
    enum What { AllOfIt, Strip, Comparison };
    Q_ENUM(What)
    enum Answer { Target, Height, Columns, Count };
    Q_ENUM(Answer)

    PhotoExportModel(PlantsModel& plants, const PhotosModel& album, QObject* parent = nullptr);
    /// Of the household, with those that no plant was given yet.
    explicit PhotoExportModel(PlantsModel& plants, QObject* parent = nullptr);
    ~PhotoExportModel() override;

    bool running() const { return running_; }
    bool stopping() const { return running_ && *stop_; }
    double share() const { return total_ == 0 ? 0.0 : static_cast<double>(done_) / total_; }
    QString words() const { return tr("%1 of %2 photographs").arg(done_).arg(total_); }
    bool fileIsThere() const { return file_is_there_; }
    int wrong() const { return wrong_; }

    /// path: a folder for AllOfIt, else a picture, .jpg or .png (.jpg where nothing is said). with_position: as they are, with the
    /// place where they were taken; else without it, which the pictures are in any case. A file that is there is replaced where
    /// that is said. height of each in pixels, columns in a row, count at most: as they are typed, blank as usual; of a picture,
    /// the last two of a strip alone.
    Q_INVOKABLE void write(int what, const QString& path, bool with_position = false, bool replace = false, const QString& height = {},
                           const QString& columns = {}, const QString& count = {});
    /// Ends after the photo that is begun; those that are written stay.
    Q_INVOKABLE void stop();
    /// Takes away what was said of the last.
    Q_INVOKABLE void clear();
    /// The number that stands where an answer is left blank.
    Q_INVOKABLE static int usual(int answer);
    Q_INVOKABLE static QString pathOf(const QUrl& address) { return address.toLocalFile(); }

signals:
    void progressChanged();
    void fileIsThereChanged();

protected:
    void read() override {}

private:
    void set_there(bool there);
    void write_files(const QString& folder, bool with_position);
    /// As it is typed, blank as usual; nullopt where that is none, which is said.
    std::optional<int> whole(Answer answer, const QString& typed, int least, int most);
    void write_sheet(int what, const QString& file, const journal::SheetForm& form, int count);

    PlantsModel& plants_;
    const PhotosModel* album_; ///< Null of the household.
    std::shared_ptr<std::atomic<bool>> stop_ = std::make_shared<std::atomic<bool>>(false);
    bool running_ = false;
    bool file_is_there_ = false;
    int wrong_ = Target;
    int done_ = 0;
    int total_ = 0;
};

} // namespace lathhouse::models
