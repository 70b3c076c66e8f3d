#pragma once

#include "app/models/year_data.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace lathhouse::models {

class YearModel;

/// The days that the chart of the year shows: the year, half of it, a quarter, a month or a week, always with the cursor
/// in it.
class YearView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")
    Q_PROPERTY(int first READ first NOTIFY changed)
    Q_PROPERTY(int days READ days NOTIFY changed)

public:
    /// Shows `days` from the first one on.
    YearView(YearModel& model, int days);

    int first() const { return span_.first; }
    int days() const { return span_.count; }
    DaySpan span() const { return span_; }

    /// Shows less (steps > 0) or more of the year; `day` stays where it is as far as the year's ends allow.
    Q_INVOKABLE void zoom(int steps, int day);
    bool has(int day) const { return day >= span_.first && day < span_.first + span_.count; }
    /// Brings a day into sight, and a little of what lies ahead with it.
    void follow(int day);
    /// Stays within another year.
    void fit();

signals:
    void changed();

private:
    void show(DaySpan span);

    YearModel& model_;
    DaySpan span_;
};

} // namespace lathhouse::models
