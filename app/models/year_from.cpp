// The year of the page Year from another date, to look at.
#include "app/models/year_model.h"

#include <utility>

namespace lathhouse::models {

QString YearModel::title() const
{
    return year_.from_today ? tr("The year from today") : tr("The year from %1").arg(words_.date_with_year(year_.today));
}

QString YearModel::fromExample() const
{
    return words_.date_with_year(calendar::Date(static_cast<unsigned short>(today_.year() + 1), 3, 1)); // Before anything is sown or carried.
}

void YearModel::forgiveFrom()
{
    if (!from_trouble_.isEmpty()) {
        from_trouble_.clear();
        emit fromTroubleChanged();
    }
}

bool YearModel::showFrom(const QString& typed)
{
    forgiveFrom();
    const auto refuse = [this](QString why) {
        from_trouble_ = std::move(why);
        emit fromTroubleChanged();
        return false;
    };
    std::optional<calendar::Date> from;
    if (!typed.trimmed().isEmpty()) {
        from = words_.typed_date(typed);
        if (!from) {
            return refuse(tr("“%1” is no date. Write it such as %2.").arg(typed.trimmed(), fromExample()));
        }
        constexpr int kFarthestBack = 366;
        constexpr int kFarthestAhead = 5 * 366;
        const int ahead = calendar::days_between(today_, *from);
        if (ahead < -kFarthestBack || ahead > kFarthestAhead) {
            return refuse(tr("A year can begin up to a year ago, or within the next five years."));
        }
    }
    if (!door_.load_from) {
        return false;
    }
    edge_.leave();
    from_ = from == today_ ? std::nullopt : from;
    follow();
    return true;
}

} // namespace lathhouse::models
