#pragma once

#include "app/models/first_start_model.h"

#include <QObject>
#include <QTemporaryDir>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace lathhouse::testing {

/// A first start for tests in QML, with the shipped tables and a folder of its own.
class StartingHousehold : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::FirstStartModel* start READ start NOTIFY startChanged)

public:
    explicit StartingHousehold(QObject* parent = nullptr);

    models::FirstStartModel* start() { return model_.get(); }

    /// Nothing is typed and nothing is written.
    Q_INVOKABLE void renew();
    /// What lies in the folder, in words ("Attic: 1 spot, 2 plants"); empty where no household does.
    Q_INVOKABLE QString written() const;

signals:
    void startChanged();

private:
    std::unique_ptr<QTemporaryDir> folder_;
    std::unique_ptr<models::FirstStartModel> model_;
};

} // namespace lathhouse::testing
