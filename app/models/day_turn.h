#pragma once

#include "app/models/tonight_facts.h"

#include <QDate>
#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace lathhouse::models {

/// Whether the day of the pages is over: a window may stand open for days. Once it is, one press begins the new day in a
/// window in this one's place.
class DayTurn : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    /// "It is Sunday 17 May now; these pages are of Saturday 16 May."; empty while the day is the same.
    Q_PROPERTY(QString words READ words NOTIFY turned)
    /// Why the new day could not be begun, a sentence; empty where nothing was asked or nothing failed.
    Q_PROPERTY(QString error READ error NOTIFY turned)

public:
    /// Pages of another day than the clock's at the start were asked for, and stay. begin: makes a window of the day that
    /// is, and says whether it could; this one then closes.
    DayTurn(TodayLook look, std::function<bool()> begin, std::function<QDate()> clock = &QDate::currentDate,
            QObject* parent = nullptr);

    QString words() const { return words_; }
    QString error() const { return error_; }
    void look(); ///< At the clock; once a minute by itself.
    Q_INVOKABLE void begin();

signals:
    void turned();
    void begun(); ///< This window is over.

private:
    TodayLook look_;
    std::function<bool()> begin_;
    std::function<QDate()> clock_;
    QTimer minute_;
    QString words_;
    QString error_;
};

} // namespace lathhouse::models
