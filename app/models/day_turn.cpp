#include "app/models/day_turn.h"

#include "app/models/year_words.h"

#include <utility>

namespace lathhouse::models {

DayTurn::DayTurn(TodayLook look, std::function<bool()> begin, std::function<QDate()> clock, QObject* parent)
    : QObject(parent), look_(std::move(look)), begin_(std::move(begin)), clock_(std::move(clock))
{
    if (clock_() == to_qdate(look_.today)) {
        QObject::connect(&minute_, &QTimer::timeout, this, &DayTurn::look);
        minute_.start(60'000);
    }
}

void DayTurn::look()
{
    const QDate now = clock_();
    const QDate then = to_qdate(look_.today);
    if (now <= then) { // A clock that was set back does not count.
        return;
    }
    const auto day = calendar::make_date(now.year(), now.month(), now.day());
    const QString words = day ? tr("It is %1 now; these pages are of %2.")
                                    .arg(look_.words.long_date(*day), look_.words.long_date(look_.today))
                              : QString{};
    if (words != words_) {
        words_ = words;
        emit turned();
    }
}

void DayTurn::begin()
{
    if (begin_()) {
        emit begun();
        return;
    }
    error_ = tr("The new day could not be begun here. Close this window and start the program again.");
    emit turned();
}

} // namespace lathhouse::models
