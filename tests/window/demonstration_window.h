#pragma once

#include "app/models/year_model.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace lathhouse::testing {

/// The demonstration household for tests in QML: its year, planned in a thread as in the program.
class DemonstrationYear : public QObject {
    Q_OBJECT
    QML_ELEMENT
    /// "north", "south" (the demonstration's own places) "equator" (a place that has no frost) or "bare" (no plant).
    Q_PROPERTY(QString where READ where WRITE setWhere NOTIFY yearChanged)
    Q_PROPERTY(lathhouse::models::YearModel* year READ year NOTIFY yearChanged)
    /// Why there is no year; empty where there is one.
    Q_PROPERTY(QString error READ error NOTIFY yearChanged)

public:
    explicit DemonstrationYear(QObject* parent = nullptr);

    QString where() const { return where_; }
    void setWhere(const QString& where);
    models::YearModel* year() { return model_.get(); }
    QString error() const { return error_; }

    /// A year as at the start: cursor on today, risk 1 in 10.
    Q_INVOKABLE void renew();
    /// Day of the first stay outdoors of the plant in that row by the plan; -1 where it stays in.
    Q_INVOKABLE int goesOut(int row) const;
    /// Day on which the plant in that row may go out at the risk now chosen; -1 where there is none.
    Q_INVOKABLE int mayGoOut(int row) const;

signals:
    void yearChanged();

private:
    QString where_ = QStringLiteral("north");
    std::unique_ptr<models::YearModel> model_;
    QString error_;
};

} // namespace lathhouse::testing
