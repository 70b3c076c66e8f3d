#pragma once

#include "app/models/mend_model.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace lathhouse::testing {

/// The demonstration household in memory, to be changed by tests in QML.
class MendedHousehold : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::MendModel* mend READ mend NOTIFY mendChanged)

public:
    explicit MendedHousehold(QObject* parent = nullptr);

    models::MendModel* mend() { return model_.get(); }

    /// As at the start.
    Q_INVOKABLE void renew();
    /// Takes back what was written last.
    Q_INVOKABLE bool undo();
    Q_INVOKABLE int plants() const;
    Q_INVOKABLE QString nameOfSpot(int spot) const;
    Q_INVOKABLE QString nameOfPlant(int id) const;

signals:
    void mendChanged();

private:
    std::shared_ptr<models::MemoryHousehold> household_;
    std::unique_ptr<models::MendModel> model_;
};

} // namespace lathhouse::testing
