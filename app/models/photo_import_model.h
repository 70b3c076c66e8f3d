#pragma once

#include "app/models/plants_model.h"

#include <QTimer>
#include <QUrl>

#include <atomic>
#include <memory>

namespace lathhouse::models {

/// Photos on their way into the household: a long work in a thread of its own, which shows how far it is and can be
/// stopped; what is done stays.
class PhotoImportModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Plants")
    Q_PROPERTY(bool running READ running NOTIFY progressChanged)
    Q_PROPERTY(int done READ done NOTIFY progressChanged)
    Q_PROPERTY(int total READ total NOTIFY progressChanged)
    /// "214 of 960 photographs"; what came of the last import once it is over; empty where there was none.
    Q_PROPERTY(QString words READ words NOTIFY progressChanged)
    /// Whether it waits to be told when those were taken that do not say so themselves, and the question.
    Q_PROPERTY(bool asking READ asking NOTIFY progressChanged)
    Q_PROPERTY(QString askWords READ askWords NOTIFY progressChanged)
    /// A date as it may be typed.
    Q_PROPERTY(QString dateExample READ dateExample CONSTANT)
    /// Files that were not taken or not whole; roles: name, reason.
    Q_PROPERTY(lathhouse::models::SheetRows* refused READ refused CONSTANT)
    /// The folder that is watched, as long as it is; else empty.
    Q_PROPERTY(QString watched READ watched NOTIFY watchedChanged)
    /// What came of watching so far.
    Q_PROPERTY(QString watchWords READ watchWords NOTIFY watchedChanged)

public:
    explicit PhotoImportModel(PlantsModel& plants, QObject* parent = nullptr);
    ~PhotoImportModel() override;

    bool running() const { return running_; }
    int done() const { return done_; }
    int total() const { return total_; }
    QString words() const { return words_; }
    bool asking() const { return undated_ > 0; }
    QString askWords() const;
    QString dateExample() const;
    SheetRows* refused() { return &refused_; }
    QString watched() const { return watched_; }
    QString watchWords() const { return watch_words_; }

    /// Files and folders for the plant of that id; where some do not say when they were taken, it asks first. False where something is on its way already or nothing was given.
    Q_INVOKABLE bool add(const QList<QUrl>& chosen, int plant);
    /// The same for the plant at that place among those shown on the page.
    Q_INVOKABLE bool addToShown(const QList<QUrl>& chosen, int shown);
    /// Takes in what was asked about: when those were taken that do not say so, as it is typed; blank: by the dates of their
    /// files. False where that is no date; else `error` says why.
    Q_INVOKABLE bool takeIn(const QString& taken);
    /// None of what was asked about comes in.
    Q_INVOKABLE void leaveOut();
    /// Goes on looking into a folder and below it, and takes what is new there in, each photo for the plant that it names
    /// (PhotoDoor::import_named); false where there is no such folder. As long as the window is open, or until `unwatch`.
    Q_INVOKABLE bool watch(const QString& folder);
    Q_INVOKABLE void unwatch();
    /// How often it looks; for tests.
    void set_pause(int milliseconds) { pause_.setInterval(milliseconds); }
    /// Ends after what is begun.
    Q_INVOKABLE void stop();
    /// Takes the words of the last import away.
    Q_INVOKABLE void clear();

signals:
    void progressChanged();
    void watchedChanged();

protected:
    void read() override {}

private:
    void import(std::optional<std::chrono::local_seconds> taken);
    void tell(const journal::ImportReport& report, int plant);
    /// A look into the watched folder.
    void look();
    void take_found();
    void tell_found(const journal::ImportReport& report);
    home::PhotoChange added_of(const journal::ImportReport& report) const;
    /// Names of the plants but that one that photographs show which were known already; empty where none.
    QString others_shown(const journal::ImportReport& report, int plant) const;
    void count(std::size_t done, std::size_t total);
    journal::ImportProgress progress();

    PlantsModel& plants_;
    std::shared_ptr<std::atomic<bool>> stop_ = std::make_shared<std::atomic<bool>>(false);
    bool running_ = false;
    int done_ = 0;
    int total_ = 0;
    std::vector<std::filesystem::path> chosen_; ///< On their way in, or asked about.
    int chosen_for_ = 0;
    int undated_ = 0;                           ///< Photos that are asked about.
    QString words_;
    SheetRows refused_;
    QString watched_;
    QString watch_words_;
    bool taking_ = false; ///< What comes in is from the watched folder.
    std::size_t came_ = 0; ///< Since the watch began.
    std::shared_ptr<journal::FolderWatch> folder_;
    std::vector<std::filesystem::path> found_; ///< That wait to come in.
    QTimer pause_;
};

} // namespace lathhouse::models
