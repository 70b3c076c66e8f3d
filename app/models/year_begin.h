#pragma once

#include "core/calendar/date.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace lathhouse::models {

class YearModel;

/// The date from which the page's year runs: today, or another one that is looked at; of that nothing is kept or pinned.
class YearBegin : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")
    /// "The year from today", or from the date that was asked for.
    Q_PROPERTY(QString title READ title NOTIFY yearChanged)
    Q_PROPERTY(bool elsewhere READ elsewhere NOTIFY yearChanged)
    /// Whether another date can be asked for.
    Q_PROPERTY(bool canChange READ canChange CONSTANT)
    /// A date as it may be typed, and what is wrong with the one that was.
    Q_PROPERTY(QString example READ example CONSTANT)
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)

public:
    explicit YearBegin(YearModel& model);

    QString title() const;
    bool elsewhere() const;
    bool canChange() const;
    QString example() const;
    QString trouble() const { return trouble_; }
    /// Shows the year from a date as it is typed; blank: from today. False where that is none; then `trouble` says why.
    Q_INVOKABLE bool show(const QString& typed);
    Q_INVOKABLE void forgive();

    /// The date that was asked for; nullopt where it is today.
    const std::optional<calendar::Date>& date() const { return date_; }

signals:
    void yearChanged();
    void troubleChanged();

private:
    bool refuse(QString why);

    YearModel& model_;
    std::optional<calendar::Date> date_;
    QString trouble_;
};

} // namespace lathhouse::models
