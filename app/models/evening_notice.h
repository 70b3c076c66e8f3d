#pragma once

#include "app/models/kept_settings.h"

#include <QDateTime>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>

namespace lathhouse::models {

/// Who shows a notice outside the window. Answers come in the thread of the call, at once or later, and not at all once
/// the service is gone.
class NoticeService {
public:
    enum class State {
        NoBus,     ///< No desktop is reached.
        NoService, ///< It has nothing that shows notices.
        There,
    };

    NoticeService() = default;
    NoticeService(const NoticeService&) = delete;
    NoticeService& operator=(const NoticeService&) = delete;
    virtual ~NoticeService() = default;

    virtual void look(std::function<void(State)> answer) = 0;
    /// The answer is empty where it was taken, else what the desktop said against it.
    virtual void show(const QString& title, const QString& words, std::function<void(const QString&)> answer) = 0;
};

/// The one notice of an evening on which a plant must come in. Off until it is wanted, never twice in an evening, also
/// over several windows of one person; silent where nothing must come in.
class EveningNotice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the settings")
    Q_PROPERTY(bool wanted READ wanted WRITE setWanted NOTIFY wantedChanged)
    /// Why nothing comes of it here, a sentence; empty where something does, or where nobody looked yet.
    Q_PROPERTY(QString standing READ standing NOTIFY standingChanged)

public:
    /// The hour from which on it may come: before dark, also in winter at the latitudes where pots are carried.
    static constexpr int kFromHour = 16;

    /// today: the day that the pages are of; on another one nothing is known of tonight.
    EveningNotice(std::shared_ptr<KeptSettings> kept, std::unique_ptr<NoticeService> service, QDate today,
                  std::function<QDateTime()> clock = &QDateTime::currentDateTime, QObject* parent = nullptr);

    bool wanted() const { return wanted_; }
    void setWanted(bool wanted);
    QString standing() const;

    /// Asks the desktop whether there is someone to show it.
    Q_INVOKABLE void look();
    /// What is to be said of tonight as it is known now; without a title, nothing.
    void know(const QString& title, const QString& words);
    /// Shows it where it is due; asked again from time to time.
    void remind();

signals:
    void wantedChanged();
    void standingChanged();

private:
    void stand(const QString& trouble);

    std::shared_ptr<KeptSettings> kept_;
    std::unique_ptr<NoticeService> service_;
    QDate today_;
    std::function<QDateTime()> clock_;
    bool wanted_;
    bool said_ = false;
    QString title_;
    QString words_;
    QString trouble_;
    NoticeService::State state_ = NoticeService::State::There;
};

} // namespace lathhouse::models
