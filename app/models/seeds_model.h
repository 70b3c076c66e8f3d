#pragma once

#include "app/models/household_door.h"
#include "app/models/risk_stops.h"
#include "app/models/seed_facts.h"
#include "app/models/sheet_model.h"
#include "app/models/written_here.h"

#include <map>

namespace lathhouse::models {

/// The page Seeds: lots by the date of sowing, the sowing sheet of the chosen lot or crop, trays to be counted. (Its
/// base is named in full for the type description of the QML module.)
class SeedsModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(lathhouse::models::SheetRows* lots READ lots CONSTANT)
    /// Place of the chosen lot in the list; -1 where a crop is chosen.
    Q_PROPERTY(int currentRow READ currentRow WRITE setCurrentRow NOTIFY seedsChanged)
    Q_PROPERTY(bool byName READ byName WRITE setByName NOTIFY seedsChanged)
    Q_PROPERTY(bool hasSheet READ hasSheet NOTIFY sheetChanged)
    Q_PROPERTY(QString name READ name NOTIFY sheetChanged)
    Q_PROPERTY(QString botanical READ botanical NOTIFY sheetChanged)
    Q_PROPERTY(QString amount READ amount NOTIFY sheetChanged)
    Q_PROPERTY(QString sure READ sure NOTIFY sheetChanged)
    Q_PROPERTY(bool hasBar READ hasBar NOTIFY sheetChanged)
    Q_PROPERTY(QString barWords READ barWords NOTIFY sheetChanged)
    Q_PROPERTY(QStringList notes READ notes NOTIFY sheetChanged)
    Q_PROPERTY(QString sources READ sources NOTIFY sheetChanged)
    Q_PROPERTY(int plants READ plants WRITE setPlants NOTIFY plantsChanged)
    /// Where trays stand, in the shown unit; empty: as usual, 20 °C.
    Q_PROPERTY(QString room READ room NOTIFY roomChanged)
    Q_PROPERTY(QString unit READ unit NOTIFY seedsChanged)
    /// The accepted risk of a night that damages what was planted out, as a place among `riskStops`; it moves every date of
    /// the page and its sheet. It is of this page alone and begins at 1 in 10: seeds are sown by it for a whole year, and
    /// the slider of the year is there for looking.
    Q_PROPERTY(int riskStop READ riskStop WRITE setRiskStop NOTIFY riskChanged)
    Q_PROPERTY(QStringList riskStops READ riskStops CONSTANT)
    /// Where a tray may stand; roles: name, hand.
    Q_PROPERTY(lathhouse::models::SheetRows* spots READ spots CONSTANT)
    /// The crop that is looked at without a lot; empty where a lot is chosen.
    Q_PROPERTY(QString crop READ crop NOTIFY sheetChanged)
    /// Crops that can be sown in the next so many days; roles: crop, name, how, dates, ready, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* sowings READ sowings CONSTANT)
    /// Of how many days they are told; 0: they are not asked for, or a lot or a crop was chosen since.
    Q_PROPERTY(int sowingDays READ sowingDays WRITE setSowingDays NOTIFY sowingDaysChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* dates READ dates CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* trays READ trays CONSTANT)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY saidChanged)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY saidChanged)
    Q_PROPERTY(bool keeps READ keeps CONSTANT)
    /// How many days ago what is sown or counted next was; outside 0..kLongestDaysAgo nothing is written.
    Q_PROPERTY(int daysAgo READ daysAgo WRITE setDaysAgo NOTIFY daysAgoChanged)
    /// That day in words; empty for today, and where it is none.
    Q_PROPERTY(QString dayAgo READ dayAgo NOTIFY daysAgoChanged)

public:
    static constexpr int kMostPlants = 999;

    SeedsModel(HouseholdDoor door, TodayLook look, QObject* parent = nullptr);

    SheetRows* lots() { return &lots_; }
    QString crop() const;
    int currentRow() const;
    void setCurrentRow(int row); ///< Held within the list.
    bool byName() const { return facts_.choice.by_name; }
    void setByName(bool by_name);
    bool hasSheet() const { return facts_.sheet.has_value(); }
    QString name() const { return facts_.sheet ? facts_.sheet->name : QString{}; }
    QString botanical() const { return facts_.sheet ? facts_.sheet->botanical : QString{}; }
    QString amount() const { return facts_.sheet ? facts_.sheet->amount : QString{}; }
    QString sure() const { return facts_.sheet ? facts_.sheet->sure : QString{}; }
    bool hasBar() const { return facts_.sheet && facts_.sheet->bar; }
    QString barWords() const { return facts_.sheet ? facts_.sheet->bar_words : QString{}; }
    QStringList notes() const { return facts_.sheet ? facts_.sheet->notes : QStringList{}; }
    QString sources() const { return facts_.sheet ? facts_.sheet->sources : QString{}; }
    int plants() const { return facts_.choice.plants; }
    void setPlants(int plants); ///< Held within 1 and kMostPlants.
    QString room() const;
    QString unit() const { return look_.words.unit(); }
    int riskStop() const { return risk_stop_; }
    void setRiskStop(int stop); ///< Ignored outside the stops.
    static QStringList riskStops() { return risk_stops(); }
    Probability risk() const { return facts_.choice.risk; }
    SheetRows* sowings() { return &sowings_; }
    int sowingDays() const { return sowing_days_; }
    void setSowingDays(int days); ///< Held within 0 and a year.
    SheetRows* spots() { return &spots_; }
    SheetRows* dates() { return &dates_; }
    SheetRows* trays() { return &trays_; }
    bool canUndo() const { return here_.can_undo(); }
    bool canRedo() const { return here_.can_redo(); }
    bool keeps() const { return door_.keeps; }
    int daysAgo() const { return days_ago_; }
    void setDaysAgo(int days);
    QString dayAgo() const;

    const SowingSheet* sheet() const { return facts_.sheet ? &*facts_.sheet : nullptr; }
    const YearWords& words() const { return look_.words; }

    /// Chooses the lot of that name once it is read.
    Q_INVOKABLE void chooseLot(const QString& name);
    /// Shows the sheet of a crop of the tables; `error` names near ones where there is none.
    Q_INVOKABLE void chooseCrop(const QString& name);
    /// Where trays stand: a temperature as it is typed, blank for the usual one. Gives whether it was taken; else `error` says what is
    /// wrong with it.
    Q_INVOKABLE bool standAt(const QString& typed);
    /// One seedling more or fewer had come up in a tray by today, or by that day ago.
    Q_INVOKABLE void count(int tray_row, int more);
    /// No more are waited for in a tray, or they are again.
    Q_INVOKABLE void setLast(int tray_row, bool last);
    /// So many seeds of the chosen lot went into a tray today, or that day ago; false where that is no number or none of it
    /// can be. spot: its place among `spots`, -1 where it is not said; mix: how warm the mix is, as it is typed; both may be
    /// left out, the note too.
    Q_INVOKABLE bool sow(const QString& seeds, int spot = -1, const QString& mix = {}, const QString& note = {});
    /// So many seedlings of a tray became plants today, or that day ago; false where that cannot be. name: of one plant its
    /// name, of several the part before the number, blank for crop and tray; spot: as for `sow`, -1 for the tray's own.
    Q_INVOKABLE bool pot(int tray_row, const QString& plants, const QString& name = {}, int spot = -1);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    /// Leaves what was written to the undo of the whole window.
    void forget();

signals:
    void seedsChanged();
    void sheetChanged();
    void plantsChanged();
    void daysAgoChanged();
    void roomChanged();
    void riskChanged();
    void sowingDaysChanged();

protected:
    void read() override;

private:
    void take(SeedFacts facts);
    void choose_wanted();
    void show_sheet();
    void choose();
    void show_sowings();
    void write(const home::TrayCount& count, int tray_row);
    /// A spot by its place among `spots`.
    std::optional<home::SpotId> spot_at(int place) const;
    QString count_words(const home::TrayCount& count) const;
    /// The day that is meant; else `error` says what to write.
    std::optional<calendar::Date> day_meant();
    /// The count of a tray as of that day, to count on from.
    home::TrayCount counted_by(int tray_row, calendar::Date on) const;

    HouseholdDoor door_;
    TodayLook look_;
    SeedFacts facts_;
    WrittenHere<home::TrayCount> here_;
    int days_ago_ = 0;
    int choices_ = 0; ///< Sheets asked for; only the last one is shown.
    int writes_ = 0;  ///< Counts written.
    std::vector<home::TrayCount> awaiting_; ///< Counts that were written since what is shown was read.
    QString wanted_lot_; ///< To be chosen once it is read.
    SheetRows lots_;
    SheetRows dates_;
    SheetRows trays_;
    SheetRows sowings_;
    SheetRows spots_;
    int sowing_days_ = 0;
    int risk_stop_ = kUsualStop;
};

} // namespace lathhouse::models
