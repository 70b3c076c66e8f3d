#include "app/models/calendar_model.h"

#include "app/models/typed_path.h"
#include "app/models/word_form.h"

#include <QFileInfo>
#include <QStandardPaths>

namespace lathhouse::models {

CalendarModel::CalendarModel(CalendarDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look))
{
}

QString CalendarModel::usualFile()
{
    QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    if (folder.isEmpty() || !QFileInfo(folder).isDir()) {
        folder = QDir::homePath();
    }
    return folder + QLatin1Char('/') + tr("plants") + QStringLiteral(".ics");
}

QString CalendarModel::willMake(const QString& file)
{
    return will_make_words(file);
}

void CalendarModel::set_there(bool there)
{
    if (there != file_is_there_) {
        file_is_there_ = there;
        emit fileIsThereChanged();
    }
}

void CalendarModel::setAlarm(int hours)
{
    constexpr int kMostHours = 72;
    if (hours >= -1 && hours <= kMostHours && hours != alarm_) {
        alarm_ = hours;
        emit alarmChanged();
    }
}

void CalendarModel::write(const QString& file, bool replace)
{
    clear_error();
    say({});
    set_there(false);
    QString target = whole_path(file);
    if (working() || target.isEmpty()) {
        if (target.isEmpty()) {
            fail_with(tr("Say which file the calendar is to be."));
        }
        return;
    }
    if (QFileInfo(target).suffix().isEmpty() && !QFileInfo(target).isDir()) {
        target += QStringLiteral(".ics");
    }
    if (!replace && QFileInfo(target).isFile()) {
        fail_with(tr("%1 is there already. Replace it where it is an older calendar of yours; else take another name.").arg(target));
        set_there(true);
        return;
    }
    work<std::size_t>(
        [door = door_, target, units = unit_system_of(look_.words),
         alarm = alarm_ < 0 ? std::nullopt : std::optional{alarm_}] { return door(to_path(target), units, alarm); },
        [this, target](const Result<std::size_t>& written) {
            if (!written) {
                fail(written.error());
                return;
            }
            say(tr("Wrote %1 days and spells to %2. It names your plants and spots; where your home is stands nowhere in it. "
                   "Write it again whenever the plan changes: the same matters keep their names, so that they are moved, not doubled.")
                    .arg(static_cast<int>(*written))
                    .arg(target));
        });
}

} // namespace lathhouse::models
