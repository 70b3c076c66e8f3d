#include "app/models/typed_taken.h"

#include "app/models/translated.h"
#include "app/models/typed_time.h"

namespace lathhouse::models {

TypedTaken typed_taken(const QString& typed, const TodayLook& look)
{
    const QString words = typed.simplified();
    const qsizetype blank = words.lastIndexOf(QLatin1Char(' '));
    // "2:30 pm" has a blank of its own.
    const qsizetype before = blank > 0 ? words.lastIndexOf(QLatin1Char(' '), blank - 1) : -1;
    auto date = look.words.typed_date(words);
    std::chrono::minutes time = std::chrono::hours{12};
    for (const qsizetype cut : {blank, before}) {
        const auto behind = !date && cut > 0 ? typed_time(words.mid(cut + 1)) : std::nullopt;
        if (behind) {
            date = look.words.typed_date(words.left(cut));
            time = *behind;
        }
    }
    if (!date) {
        return {{}, look.today, tr("“%1” is no date. Write it such as %2, with the time behind it where it is known.")
                                    .arg(words, look.words.date_with_year(look.today))};
    }
    if (*date > look.today) {
        return {{}, look.today, tr("%1 is still to come.").arg(look.words.date_with_year(*date))};
    }
    return {std::chrono::local_seconds{calendar::start_of_day_utc(*date).time_since_epoch()} + time, *date, {}};
}

} // namespace lathhouse::models
