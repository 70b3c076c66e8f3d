#pragma once

#include "app/models/plant_door.h"
#include "app/models/plant_lists.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/written_here.h"

#include <optional>
#include <set>

namespace lathhouse::models {

/// The page Plants: the collection on shelves and as a table, filters and finding, marking, and logging what was seen
/// for one plant or several.
class PlantsModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(QString title READ title NOTIFY plantsChanged)
    /// Plants of the household, shown or not.
    Q_PROPERTY(int count READ count NOTIFY plantsChanged)
    /// Those that have a plant; roles: filter, words ("Outdoors 7").
    Q_PROPERTY(lathhouse::models::SheetRows* filters READ filters CONSTANT)
    Q_PROPERTY(lathhouse::models::PlantShelves* shelves READ shelves CONSTANT)
    Q_PROPERTY(lathhouse::models::PlantTable* table READ table CONSTANT)
    Q_PROPERTY(int filter READ filter WRITE setFilter NOTIFY shownChanged)
    Q_PROPERTY(QString find READ find WRITE setFind NOTIFY shownChanged)
    Q_PROPERTY(bool byTable READ byTable WRITE setByTable NOTIFY shownChanged)
    /// Column of the table by which it is sorted: 0 name, 1 spot, 2 state, 3 next move, 4 hazard.
    Q_PROPERTY(int sortedBy READ sortedBy NOTIFY shownChanged)
    Q_PROPERTY(bool descending READ descending NOTIFY shownChanged)
    /// Plants to a line of a shelf.
    Q_PROPERTY(int columns READ columns WRITE setColumns NOTIFY shownChanged)
    /// Plants that are shown.
    Q_PROPERTY(int shownCount READ shownCount NOTIFY shownChanged)
    /// Place of the plant that the keys act on among those shown; -1 where none is.
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY currentChanged)
    Q_PROPERTY(int markedCount READ markedCount NOTIFY markedChanged)
    /// Whom a log is for: "Weeping fig", "3 plants"; empty where there is none.
    Q_PROPERTY(QString target READ target NOTIFY targetChanged)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY saidChanged)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY saidChanged)
    /// The one plant that `said` tells as moved today, and the spot it went to, by their ids; 0 where it tells nothing of
    /// that kind. It may have been meant for another day.
    Q_PROPERTY(int movedPlant READ movedPlant NOTIFY saidChanged)
    Q_PROPERTY(int movedSpot READ movedSpot NOTIFY saidChanged)
    /// Roles: name, hand, number. The spots by the number that moves a plant there.
    Q_PROPERTY(lathhouse::models::SheetRows* spots READ spots CONSTANT)
    /// What is measured, by Measure; roles: text, unit.
    Q_PROPERTY(lathhouse::models::SheetRows* measures READ measures CONSTANT)
    /// Id of the plant whose page is open; 0: none.
    Q_PROPERTY(int opened READ opened NOTIFY openedChanged)
    Q_PROPERTY(QString note READ note NOTIFY plantsChanged)
    /// The last of those that are no longer there, the latest first; roles: plant, name, words ("died on 3 May 2026").
    Q_PROPERTY(lathhouse::models::SheetRows* gone READ gone CONSTANT)
    /// All of them.
    Q_PROPERTY(int goneCount READ goneCount NOTIFY plantsChanged)
    /// Whether a log is for a plant that is gone: it takes notes.
    Q_PROPERTY(bool targetGone READ targetGone NOTIFY targetChanged)
    /// What can be logged, in words, by What.
    Q_PROPERTY(QStringList sorts READ sorts CONSTANT)

public:
    enum Filter { All, Outdoors, Hardening, ToLookAt, Poisonous, SetApart, Recovering, Gone };
    Q_ENUM(Filter)
    /// A plant that died or was given away is off every list; its past is kept.
    enum What {
        Watered, Fed, Measured, Noted, NewGrowth, Flowered, Repotted, Pruned, Died, GivenAway,
        LookedOver, PestFound, Treated, SetApartNow, Released, WashedThrough, ColdNight, ChemicalDamage, TakenOff,
        PlantedOut, Divided
    };
    Q_ENUM(What)

    PlantsModel(PlantDoor door, TodayLook look, QObject* parent = nullptr);

    QString title() const;
    QStringList sorts() const;
    int count() const { return facts_.living; }
    SheetRows* filters() { return &filters_; }
    PlantShelves* shelves() { return &shelves_; }
    PlantTable* table() { return &table_; }
    int filter() const { return filter_; }
    void setFilter(int filter); ///< Others than those of the enumeration are ignored.
    QString find() const { return find_; }
    void setFind(const QString& find);
    bool byTable() const { return by_table_; }
    void setByTable(bool by_table);
    int sortedBy() const { return sorted_by_; }
    bool descending() const { return descending_; }
    int columns() const { return columns_; }
    void setColumns(int columns); ///< Held within 1 and 24.
    int shownCount() const { return shown().count(); }
    int current() const { return current_; }
    void setCurrent(int current); ///< Held within those shown.
    int markedCount() const { return static_cast<int>(marked_.size()); }
    QString target() const;
    bool canUndo() const { return here_.can_undo(); }
    bool canRedo() const { return here_.can_redo(); }
    int movedPlant() const;
    int movedSpot() const;
    SheetRows* spots() { return &spots_; }
    SheetRows* measures() { return &measures_; }
    /// Plants that are marked, in the order of their entry.
    std::vector<home::PlantId> marked() const { return {marked_.begin(), marked_.end()}; }
    int opened() const { return opened_; }
    QString note() const;
    SheetRows* gone() { return &gone_; }
    int goneCount() const { return static_cast<int>(facts_.cards.size()) - facts_.living; }
    bool targetGone() const;

    /// Id of the plant at that place among those shown; 0 where there is none.
    Q_INVOKABLE int shownId(int shown) const;

    const PlantsFacts& facts() const { return facts_; }
    const TodayLook& look() const { return look_; }
    const PlantDoor& door() const { return door_; }

    /// Sorts the table by a column; the same once more turns it round.
    Q_INVOKABLE void sortBy(int column);
    /// Marks the plant at that place among those shown, or takes the mark off.
    Q_INVOKABLE void mark(int shown);
    Q_INVOKABLE void clearMarks();
    /// Opens the page of the plant at that place among those shown, or of an id.
    Q_INVOKABLE void open(int shown);
    Q_INVOKABLE void openId(int id);
    Q_INVOKABLE void close();
    /// Closes the page of a plant that is not there, and says so.
    void close_missing(int id);
    /// Writes entries of other pages and says so; they are undone here with all else.
    bool keep(PlantEntries entries, QString words);
    /// Photos came in: they can be taken back, and everything is read anew.
    void keep_imported(home::PhotoChange added, QString words);
    /// Writes for the target that something happened, today or so many days ago. number: the measured value in the shown unit, or parts of
    /// nitrogen in a million of a feed (may be blank); measure: place among the measures; note may be blank but for
    /// Noted. `error` says what is wrong with it; gives whether it was taken.
    Q_INVOKABLE bool log(int what, const QString& number, int measure, const QString& note, int days_ago = 0);
    /// Measured, with how it was done: method as home::MeasurementMethod, -1 the usual one of the measure; time of day such as 14:30
    /// and who measured may be blank; number may hold repeats with ; between.
    Q_INVOKABLE bool logMeasured(const QString& number, int measure, int method, const QString& time, const QString& by,
                                 const QString& note, int days_ago = 0);
    /// What goes with the next logMeasured, each blank where it is as usual: the zone of the clock that was read (Europe/Rome), the
    /// pot's volume in the shown unit, what the plant stood in.
    Q_INVOKABLE void measuredIn(const QString& zone, const QString& pot, const QString& mix);
    /// Litres or quarts.
    Q_INVOKABLE QString potUnit() const;
    /// The same for what concerns pests, harm and the list (LookedOver and on). detail: the pest that was found, what it
    /// was treated with, the lowest of the cold night, the product of the spray, the names of the new plants; choice: how many there are (few, many,
    /// heavy), or why it is set apart (pests, sick roots).
    Q_INVOKABLE bool logSeen(int what, const QString& detail, int choice, const QString& note, int days_ago = 0);
    /// Pests by the names of the reader.
    Q_INVOKABLE QStringList pests() const;
    /// "Thursday 14 May"; empty where that is no day the journal takes.
    Q_INVOKABLE QString dateAgo(int days) const;
    /// Moves the target to a spot today, by its place among the spots.
    Q_INVOKABLE bool moveTo(int spot);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    /// Leaves what was written to the undo of the whole window.
    void forget();

signals:
    void plantsChanged();
    void shownChanged();
    void currentChanged();
    void markedChanged();
    void targetChanged();
    void openedChanged();
    /// The ground is another one.
    void groundChanged();

protected:
    void read() override;

private:
    struct Written {
        PlantEntries entries;
        QString words;
    };
    const ShownPlants& shown() const { return by_table_ ? in_table_ : on_shelves_; }
    void take(PlantsFacts facts);
    void arrange();
    void tell_filters();
    bool passes(const PlantCard& card, int filter) const;
    const PlantCard* card_of(home::PlantId id) const;
    std::vector<home::PlantId> targets() const;
    /// Says so where a plant that is gone is among them.
    bool is_refused(const std::vector<home::PlantId>& plants);
    QString target_words(const std::vector<home::PlantId>& plants) const;
    /// The event for each of the plants; gives whether it was taken.
    bool write_event(const home::Event& event, const QString& done_today, int days_ago);
    bool write(PlantEntries entries, QString said);
    const home::Event* moved() const; ///< What `said` tells, where that is the move of one plant; else null.
    /// Names of the pieces of a division with ", " between; nullopt where they are none, which is said.
    std::optional<std::string> piece_names(const QString& typed);

    PlantDoor door_;
    TodayLook look_;
    PlantsFacts facts_;
    std::set<home::PlantId> marked_;
    ShownPlants on_shelves_;
    ShownPlants in_table_;
    int filter_ = All;
    QString find_;
    bool by_table_ = false;
    int sorted_by_ = 0;
    bool descending_ = false;
    int columns_ = 6;
    int current_ = -1;
    int opened_ = 0;
    struct MeasuredIn {
        QString zone;
        QString pot;
        QString mix;
    };
    MeasuredIn measured_in_;
    WrittenHere<Written> here_;
    SheetRows filters_;
    PlantShelves shelves_;
    PlantTable table_;
    SheetRows spots_;
    SheetRows measures_;
    SheetRows gone_;
};

} // namespace lathhouse::models
