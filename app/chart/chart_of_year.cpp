#include "app/chart/chart_of_year.h"

namespace lathhouse::chart {

void ChartOfYear::setYear(models::YearModel* year)
{
    if (year == year_) {
        return;
    }
    if (year_) {
        year_->disconnect(this);
    }
    year_ = year;
    if (year_) {
        follow(*year_);
    }
    emit yearChanged();
    update();
}

} // namespace lathhouse::chart
