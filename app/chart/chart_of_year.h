#pragma once

#include "app/chart/sheet_chart.h"
#include "app/models/year_model.h"

namespace lathhouse::chart {

/// A chart of the year's days, or of a part of them.
class ChartOfYear : public lathhouse::chart::SheetChart {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(lathhouse::models::YearModel* year READ year WRITE setYear NOTIFY yearChanged REQUIRED)

public:
    using SheetChart::SheetChart;

    models::YearModel* year() const { return year_; }
    void setYear(models::YearModel* year);

signals:
    void yearChanged();

protected:
    /// Connects what the chart has to follow of a year that is new to it; what it followed before is cut off by then.
    virtual void follow(models::YearModel& year) = 0;

private:
    QPointer<models::YearModel> year_;
};

} // namespace lathhouse::chart
