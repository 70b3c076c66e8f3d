#include "app/models/calendar_model.h"

#include "app/models/free_place.h"
#include "app/models/typed_decimal.h"
#include "app/models/typed_path.h"
#include "app/models/word_form.h"
#include "app/words/calendar_words.h"

#include <QFileInfo>

#include <cmath>

namespace lathhouse::models {

CalendarModel::CalendarModel(CalendarDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look))
{
}

QString CalendarModel::usualFile()
{
    return documents_folder() + QLatin1Char('/') + tr("plants") + QStringLiteral(".ics");
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

void CalendarModel::setDays(const QString& typed)
{
    if (typed != days_) {
        days_ = typed;
        set_days_wrong(false);
        emit daysChanged();
    }
}

void CalendarModel::set_days_wrong(bool wrong)
{
    if (wrong != days_wrong_) {
        days_wrong_ = wrong;
        emit daysWrongChanged();
    }
}

std::optional<int> CalendarModel::whole_days() const
{
    if (days_.trimmed().isEmpty()) {
        return words::kUsualCalendarDays;
    }
    const auto days = typed_decimal(days_);
    if (!days || !(*days >= 1.0 && *days <= words::kMostCalendarDays) || std::floor(*days) < *days) {
        return std::nullopt;
    }
    return static_cast<int>(*days);
}

void CalendarModel::write(const QString& file, bool replace)
{
    clear_error();
    say({});
    set_there(false);
    set_days_wrong(false);
    QString target = whole_path(file);
    if (working() || target.isEmpty()) {
        if (target.isEmpty()) {
            fail_with(tr("Say which file the calendar is to be."));
        }
        return;
    }
    const auto days = whole_days();
    if (!days) {
        fail_with(tr("Write how many days from today the calendar is to hold, 1 to %1.").arg(words::kMostCalendarDays));
        set_days_wrong(true);
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
        [door = door_, target, units = unit_system_of(look_.words), days = *days,
         alarm = alarm_ < 0 ? std::nullopt : std::optional{alarm_}] { return door(to_path(target), units, days, alarm); },
        [this, target](const Result<std::size_t>& written) {
            if (!written) {
                fail(written.error());
                return;
            }
            say(tr("Wrote %1 events to %2. It names your plants and spots; where your home is stands nowhere in it. "
                   "Write it again whenever the plan changes: the same matters keep their names, so that they are moved, not doubled.")
                    .arg(static_cast<int>(*written))
                    .arg(target));
        });
}

} // namespace lathhouse::models
