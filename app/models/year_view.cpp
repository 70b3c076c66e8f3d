#include "app/models/year_view.h"

#include "app/models/year_model.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

YearView::YearView(YearModel& model, int days) : model_(model), span_{0, days} {}

void YearView::show(DaySpan span)
{
    span.first = std::clamp(span.first, 0, model_.dayCount() - span.count);
    if (span.first != span_.first || span.count != span_.count) {
        span_ = span;
        emit changed();
    }
}

void YearView::follow(int day)
{
    if (!has(day)) {
        const int ahead = span_.count / 8;
        show({day < span_.first ? day - ahead : day + ahead + 1 - span_.count, span_.count});
    }
}

void YearView::zoom(int steps, int day)
{
    // Twelve months, six, three, one, and a week.
    const int all = model_.dayCount();
    const int counts[] = {all, all / 2 + 1, all / 4 + 1, 31, 7};
    const auto here = std::find(std::begin(counts), std::end(counts), span_.count) - std::begin(counts);
    const auto to = std::clamp<std::ptrdiff_t>(here + steps, 0, std::ssize(counts) - 1);
    day = std::clamp(day, span_.first, span_.first + span_.count - 1);
    const double share = static_cast<double>(day - span_.first) / span_.count;
    show({day - static_cast<int>(std::lround(share * counts[to])), counts[to]});
    if (!has(model_.cursorDay())) {
        model_.setCursorDay(day);
    }
}

void YearView::fit()
{
    span_.count = std::min(span_.count, model_.dayCount());
    span_.first = std::clamp(span_.first, 0, model_.dayCount() - span_.count);
    emit changed();
}

} // namespace lathhouse::models
