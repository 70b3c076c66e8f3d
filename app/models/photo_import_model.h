#pragma once

#include "app/models/plants_model.h"

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
    /// Files that were not taken or not whole; roles: name, reason.
    Q_PROPERTY(lathhouse::models::SheetRows* refused READ refused CONSTANT)

public:
    explicit PhotoImportModel(PlantsModel& plants, QObject* parent = nullptr);
    ~PhotoImportModel() override;

    bool running() const { return running_; }
    int done() const { return done_; }
    int total() const { return total_; }
    QString words() const { return words_; }
    SheetRows* refused() { return &refused_; }

    /// Files and folders for the plant of that id; false where something is on its way already or nothing was given.
    Q_INVOKABLE bool add(const QList<QUrl>& chosen, int plant);
    /// The same for the plant at that place among those shown on the page.
    Q_INVOKABLE bool addToShown(const QList<QUrl>& chosen, int shown);
    /// Ends after what is begun.
    Q_INVOKABLE void stop();
    /// Takes the words of the last import away.
    Q_INVOKABLE void clear();

signals:
    void progressChanged();

protected:
    void read() override {}

private:
    void tell(const journal::ImportReport& report, int plant);

    PlantsModel& plants_;
    std::shared_ptr<std::atomic<bool>> stop_ = std::make_shared<std::atomic<bool>>(false);
    bool running_ = false;
    int done_ = 0;
    int total_ = 0;
    QString words_;
    SheetRows refused_;
};

} // namespace lathhouse::models
