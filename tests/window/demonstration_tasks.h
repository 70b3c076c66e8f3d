#pragma once

#include "app/models/home_model.h"
#include "app/models/plant_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace lathhouse::testing {

/// The round and the other pages of the demonstration household for tests in QML, worked out in threads as in the
/// program; all of them share one household in memory.
class DemonstrationRound : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::models::RoundModel* round READ round NOTIFY roundChanged)
    Q_PROPERTY(lathhouse::models::TonightModel* tonight READ tonight NOTIFY roundChanged)
    Q_PROPERTY(lathhouse::models::SeedsModel* seeds READ seeds NOTIFY roundChanged)
    Q_PROPERTY(lathhouse::models::HomeModel* home READ home NOTIFY roundChanged)
    Q_PROPERTY(lathhouse::models::PlantsModel* plants READ plants NOTIFY roundChanged)
    Q_PROPERTY(lathhouse::models::PlantModel* plant READ plant NOTIFY roundChanged)
    Q_PROPERTY(QString error READ error CONSTANT)

public:
    explicit DemonstrationRound(QObject* parent = nullptr);

    models::RoundModel* round() { return model_.get(); }
    models::TonightModel* tonight() { return pages_ ? &pages_->tonight : nullptr; }
    models::SeedsModel* seeds() { return pages_ ? &pages_->seeds : nullptr; }
    models::HomeModel* home() { return pages_ ? &pages_->home : nullptr; }
    models::PlantsModel* plants() { return pages_ ? &pages_->plants : nullptr; }
    models::PlantModel* plant() { return pages_ ? &pages_->plant : nullptr; }
    QString error() const { return error_; }

    /// A round as at the start; "empty" has no plants, "broken" cannot be read, "cold" has a cold night ahead,
    /// "seeds" has lots of seed, "harm" has growth to be judged, "photos" drawn photos besides.
    Q_INVOKABLE void renew(const QString& kind = {});
    Q_INVOKABLE bool isDone(int row) const;
    Q_INVOKABLE QString taskOf(int row) const;

signals:
    void roundChanged();

private:
    struct Pages {
        models::TonightModel tonight;
        models::SeedsModel seeds;
        models::HomeModel home;
        models::PlantsModel plants;
        models::PlantModel plant;
        Pages(const models::HouseholdDoor& door, const models::PlantDoor& plants_door, const models::TodayLook& look)
            : tonight(door, look), seeds(door, look), home(door, look), plants(plants_door, look), plant(plants)
        {
        }
    };
    std::unique_ptr<Pages> pages_;
    std::unique_ptr<models::RoundModel> model_;
    QString error_;
};

} // namespace lathhouse::testing
