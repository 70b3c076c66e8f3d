#pragma once

#include "app/models/household_door.h"
#include "app/models/journal_rows.h"
#include "app/models/plant_door.h"
#include "app/models/sheet_model.h"
#include "app/models/tonight_facts.h"

#include <filesystem>
#include <memory>
#include <optional>

namespace lathhouse::models {

/// The section Journal of Home: all that happened in the household and all that was measured, newest first, to be looked
/// through by words; and what happened at a spot or in the whole household, without a plant, to be logged. What was taken back is
/// not among it. Only reading takes long where there is much of it, and is done in a thread.
class HomeJournalModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    /// Roles: date, who, what, plant (0: of none alone), sentence.
    Q_PROPERTY(lathhouse::models::JournalRows* rows READ rows CONSTANT)
    /// Words that each of the rows has, in any order and whatever their case; empty: all of them.
    Q_PROPERTY(QString find READ find WRITE setFind NOTIFY journalChanged)
    /// How many there are, and how many have the words.
    Q_PROPERTY(QString line READ line NOTIFY journalChanged)
    /// Names of the spots, to log at.
    Q_PROPERTY(QStringList spots READ spots NOTIFY spotsChanged)
    /// The same with the whole household behind them.
    Q_PROPERTY(QStringList places READ places NOTIFY spotsChanged)
    /// The Answer that the error speaks of.
    Q_PROPERTY(int wrong READ wrong NOTIFY errorChanged)

public:
    enum Answer { Nothing, Detail, Words, Days };
    Q_ENUM(Answer)

    /// folder: of the household; nullopt where it lies in memory, as the door gives it.
    HomeJournalModel(PlantDoor door, std::optional<std::filesystem::path> folder, TodayLook look, QObject* parent = nullptr);

    JournalRows* rows() { return &rows_; }
    QString find() const { return find_; }
    void setFind(const QString& words);
    QString line() const;
    QStringList spots() const { return spots_; }
    QStringList places() const;
    int wrong() const { return wrong_; }

    /// Reads what is shown, again where it was read before.
    Q_INVOKABLE void look();
    /// What can be logged at one of the places, in words: less of the whole household than of a spot.
    Q_INVOKABLE QStringList sorts(int place) const;
    /// What is asked beside one of them ("Which pest"), and what is to be heeded; each may be empty.
    Q_INVOKABLE QString asked(int place, int sort) const;
    Q_INVOKABLE QString heed(int place, int sort) const;
    /// Whether its note must have words.
    Q_INVOKABLE bool isNote(int place, int sort) const;
    /// Names to choose from for what is asked; empty where none are known.
    Q_INVOKABLE QStringList choices(int place, int sort) const;
    /// Logs at a place what happened so many days ago, with what was asked and a note. Whether it could be read; else `error`
    /// says why.
    Q_INVOKABLE bool log(int place, int sort, const QString& detail, const QString& note, const QString& days_ago);

signals:
    void journalChanged();
    void spotsChanged();

protected:
    void read() override;

private:
    struct Facts;
    void show();
    std::optional<home::EventKind> kind_of(int place, int sort) const;

    PlantDoor door_;
    std::optional<std::filesystem::path> folder_;
    TodayLook look_;
    QString find_;
    std::shared_ptr<const JournalLines> all_; ///< Newest first; never null.
    QStringList spots_;
    std::vector<home::SpotId> ids_; ///< Of the spots.
    int wrong_ = Nothing;
    JournalRows rows_;
};

} // namespace lathhouse::models
