#pragma once

#include "app/models/sheet_model.h"
#include "app/models/tonight_facts.h"
#include "app/words/words.h"

#include <filesystem>
#include <optional>

namespace lathhouse::models {

/// Writes the tasks of so many days from today into a calendar file, which replaces one that is there, and tells how many there
/// are. alarm: hours before midnight of the day at which one sounds. Errors: as reading the household and writing a file.
using CalendarDoor =
    std::function<Result<std::size_t>(const std::filesystem::path& file, words::UnitSystem units, int days, std::optional<int> alarm)>;

/// The tasks of the year for the grower's own calendar, a part of Home's section Data and backup.
class CalendarModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    Q_PROPERTY(QString usualFile READ usualFile CONSTANT)
    /// Hours before midnight of the day at which an alarm sounds, 0..72; -1: none.
    Q_PROPERTY(int alarm READ alarm WRITE setAlarm NOTIFY alarmChanged)
    /// From today, how many the file holds, as they are typed; blank: a year.
    Q_PROPERTY(QString days READ days WRITE setDays NOTIFY daysChanged)
    /// Whether nothing was written because the days are none.
    Q_PROPERTY(bool daysWrong READ daysWrong NOTIFY daysWrongChanged)
    /// Whether nothing was written because a file of that name is there.
    Q_PROPERTY(bool fileIsThere READ fileIsThere NOTIFY fileIsThereChanged)

public:
    CalendarModel(CalendarDoor door, TodayLook look, QObject* parent = nullptr);

    static QString usualFile();
    bool fileIsThere() const { return file_is_there_; }
    int alarm() const { return alarm_; }
    void setAlarm(int hours); ///< Ignored outside -1..72.
    QString days() const { return days_; }
    void setDays(const QString& typed);
    bool daysWrong() const { return days_wrong_; }

    /// A file that is there is replaced where that is said.
    Q_INVOKABLE void write(const QString& file, bool replace = false);
    /// As HomeDataModel.
    Q_INVOKABLE static QString willMake(const QString& file);

signals:
    void fileIsThereChanged();
    void alarmChanged();
    void daysChanged();
    void daysWrongChanged();

protected:
    void read() override {}

private:
    void set_there(bool there);
    void set_days_wrong(bool wrong);
    std::optional<int> whole_days() const; ///< nullopt where what is typed is none.

    CalendarDoor door_;
    TodayLook look_;
    bool file_is_there_ = false;
    int alarm_ = -1;
    QString days_;
    bool days_wrong_ = false;
};

} // namespace lathhouse::models
