#pragma once

#include "app/models/round_model.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace lathhouse::testing {

/// The round of the demonstration household for tests in QML, worked out in a thread as in the program.
class DemonstrationRound : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::RoundModel* round READ round NOTIFY roundChanged)
    Q_PROPERTY(QString error READ error CONSTANT)

public:
    explicit DemonstrationRound(QObject* parent = nullptr);

    models::RoundModel* round() { return model_.get(); }
    QString error() const { return error_; }

    /// A round as at the start; "empty" has no plants, "broken" cannot be read.
    Q_INVOKABLE void renew(const QString& kind = {});
    Q_INVOKABLE bool isDone(int row) const;
    Q_INVOKABLE QString taskOf(int row) const;

signals:
    void roundChanged();

private:
    std::unique_ptr<models::RoundModel> model_;
    QString error_;
};

} // namespace lathhouse::testing
