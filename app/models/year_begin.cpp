#include "app/models/year_begin.h"

#include "app/models/year_model.h"

#include <utility>

namespace lathhouse::models {

YearBegin::YearBegin(YearModel& model) : model_(model)
{
    connect(&model_, &YearModel::householdChanged, this, &YearBegin::yearChanged);
}

QString YearBegin::title() const
{
    return elsewhere() ? tr("The year from %1").arg(model_.words().date_with_year(model_.year().today)) : tr("The year from today");
}

bool YearBegin::elsewhere() const
{
    return !model_.year().from_today;
}

bool YearBegin::canChange() const
{
    return model_.can_begin_elsewhere();
}

QString YearBegin::example() const
{
    // Before anything is sown or carried.
    return model_.words().date_with_year(calendar::Date(static_cast<unsigned short>(model_.today().year() + 1), 3, 1));
}

void YearBegin::forgive()
{
    if (!trouble_.isEmpty()) {
        trouble_.clear();
        emit troubleChanged();
    }
}

bool YearBegin::refuse(QString why)
{
    trouble_ = std::move(why);
    emit troubleChanged();
    return false;
}

bool YearBegin::show(const QString& typed)
{
    forgive();
    std::optional<calendar::Date> from;
    if (!typed.trimmed().isEmpty()) {
        from = model_.words().typed_date(typed);
        if (!from) {
            return refuse(tr("“%1” is no date. Write it such as %2.").arg(typed.trimmed(), example()));
        }
        constexpr int kFarthestBack = 366;
        constexpr int kFarthestAhead = 5 * 366;
        const int ahead = calendar::days_between(model_.today(), *from);
        if (ahead < -kFarthestBack || ahead > kFarthestAhead) {
            return refuse(tr("A year can begin up to a year ago, or within the next five years."));
        }
    }
    if (!canChange()) {
        return false;
    }
    model_.edge()->leave();
    date_ = from == model_.today() ? std::nullopt : from;
    model_.follow();
    return true;
}

} // namespace lathhouse::models
