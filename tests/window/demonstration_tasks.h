#pragma once

#include "app/models/ask_model.h"
#include "app/models/calendar_model.h"
#include "app/models/dose_model.h"
#include "app/models/home_data_model.h"
#include "app/models/home_model.h"
#include "app/models/plant_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/settings_model.h"
#include "app/models/tonight_model.h"

#include <QObject>
#include <QTemporaryDir>
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
    /// What the round asks of a dose is asked of it.
    Q_PROPERTY(lathhouse::models::DoseModel* dose READ dose NOTIFY roundChanged)
    /// What is asked of a plant by hand, from its page and from the round.
    Q_PROPERTY(lathhouse::models::AskModel* ask READ ask NOTIFY roundChanged)
    Q_PROPERTY(QString error READ error CONSTANT)
    /// A folder for what a test writes; of "folder" the household lies in it.
    Q_PROPERTY(QString folder READ folder NOTIFY roundChanged)

public:
    explicit DemonstrationRound(QObject* parent = nullptr);

    models::RoundModel* round() { return model_.get(); }
    models::TonightModel* tonight() { return pages_ ? &pages_->tonight : nullptr; }
    models::SeedsModel* seeds() { return pages_ ? &pages_->seeds : nullptr; }
    models::HomeModel* home() { return pages_ ? &pages_->home : nullptr; }
    models::PlantsModel* plants() { return pages_ ? &pages_->plants : nullptr; }
    models::PlantModel* plant() { return pages_ ? &pages_->plant : nullptr; }
    models::AskModel* ask() { return pages_ ? &pages_->ask : nullptr; }
    models::DoseModel* dose() { return pages_ ? &pages_->dose : nullptr; }
    QString error() const { return error_; }
    QString folder() const { return folder_ ? folder_->path() : QString{}; }
    Q_INVOKABLE bool exists(const QString& name) const;
    /// What stands in a file of the folder; empty where there is none.
    Q_INVOKABLE QString contents(const QString& name) const;
    /// Writes a table of daily lows and highs of fifteen years into the folder; its path.
    Q_INVOKABLE QString writeRecord(const QString& name, bool fahrenheit) const;

    /// A round as at the start; "empty" has no plants, "broken" cannot be read, "cold" has a cold night ahead,
    /// "seeds" has lots of seed, "harm" has growth to be judged, "photos" drawn photos besides,
    /// "undated" has two photos on their way in that do not say when they were taken,
    /// "folder" keeps the same household in a folder of its own, "folder photos" with three photos.
    Q_INVOKABLE void renew(const QString& kind = {});
    /// The folder that a second window was asked for last.
    Q_INVOKABLE QString opened() const { return opened_; }
    Q_INVOKABLE bool isDone(int row) const;
    Q_INVOKABLE QString taskOf(int row) const;

signals:
    void roundChanged();

private:
    struct Pages {
        models::SettingsModel settings;
        models::HomeDataModel keeping;
        models::HomeRecordModel record;
        models::HomePeopleModel people;
        models::CalendarModel calendar;
        models::TonightModel tonight;
        models::SeedsModel seeds;
        models::PlantsModel plants;
        models::PhotoExportModel leaving;
        models::HomeJournalModel journal;
        models::PhotosAsideModel aside;
        models::HomeModel home;
        models::PlantModel plant;
        models::DoseModel dose;
        models::AskModel ask;
        Pages(const models::HouseholdDoor& door, const models::PlantDoor& plants_door, const models::TodayLook& look,
              const models::ShownUnits& units, const std::optional<std::filesystem::path>& folder,
              const std::shared_ptr<models::KeptSettings>& kept, models::RecordDoor record_door,
              models::PeopleDoor people_door)
            : settings(kept, {}, units, QLocale(QLocale::English, QLocale::UnitedKingdom)),
              keeping(door.load, folder, look, kept), record(std::move(record_door), look),
              people(std::move(people_door), look), calendar(calendar_door(), look), tonight(door, look), seeds(door, look), plants(plants_door, look), leaving(plants),
              journal(plants_door, {}, look), aside(plants_door, look), home(door, look), plant(plants),
              dose(models::jugs_in_memory(), kept, look.words), ask(plants)
        {
            home.join({.keeping = &keeping, .record = &record, .people = &people, .settings = &settings, .calendar = &calendar, .leaving = &leaving, .journal = &journal, .aside = &aside});
            QObject::connect(&settings, &models::SettingsModel::unitsChanged, &home, &models::SheetModel::follow);
            QObject::connect(&settings, &models::SettingsModel::unitsChanged, &tonight, &models::SheetModel::follow);
            QObject::connect(&settings, &models::SettingsModel::unitsChanged, &record, &models::SheetModel::follow);
            QObject::connect(&journal, &models::SheetModel::written, &home, &models::SheetModel::follow);
            QObject::connect(&aside, &models::SheetModel::written, &plants, &models::SheetModel::follow);
            QObject::connect(&plants, &models::SheetModel::written, &aside, &models::SheetModel::follow);
            QObject::connect(&people, &models::SheetModel::written, &home, &models::SheetModel::follow);
            QObject::connect(&record, &models::SheetModel::written, &home, &models::SheetModel::follow);
        }
    };
    /// Its file says how many days were asked for, and the alarm.
    static models::CalendarDoor calendar_door();
    std::unique_ptr<Pages> pages_;
    std::unique_ptr<models::RoundModel> model_;
    QString opened_;
    QString error_;
    std::unique_ptr<QTemporaryDir> folder_;
};

} // namespace lathhouse::testing
