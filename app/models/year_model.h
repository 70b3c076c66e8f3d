#pragma once

#include "app/models/cursor_reading.h"
#include "app/models/edge_by_hand.h"
#include "app/models/night_table.h"
#include "app/models/plant_rows.h"
#include "app/models/risk_dates.h"
#include "app/models/risk_planner.h"
#include "app/models/sheet_rows.h"
#include "app/models/strip_words.h"
#include "app/models/year_begin.h"
#include "app/models/year_data.h"
#include "app/models/year_view.h"
#include "app/models/year_words.h"

#include <QObject>
#include <QThreadPool>
#include <QtQml/qqmlregistration.h>

#include <atomic>

namespace lathhouse::models {

/// The page Year: a year of nights, the plants in it, a cursor on a date, and the risk accepted.
///
/// Follows the household: what other pages or programs write is read again and planned before it is shown.
///
/// The plan is solved in a thread of its own (RiskPlanner); the dates at a risk are looked up at once.
class YearModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")

    Q_PROPERTY(QString household READ household NOTIFY householdChanged)
    Q_PROPERTY(QString place READ place NOTIFY householdChanged)
    Q_PROPERTY(bool demonstration READ demonstration NOTIFY householdChanged)
    Q_PROPERTY(QString todayLong READ todayLong CONSTANT)
    Q_PROPERTY(QString todayShort READ todayShort CONSTANT)
    Q_PROPERTY(int dayCount READ dayCount NOTIFY householdChanged)
    Q_PROPERTY(QString unit READ unit NOTIFY unitsChanged)
    Q_PROPERTY(QString stripHead READ stripHead NOTIFY unitsChanged)
    Q_PROPERTY(QString stripShortHead READ stripShortHead NOTIFY unitsChanged)
    Q_PROPERTY(QString stripLabel READ stripLabel NOTIFY unitsChanged)

    Q_PROPERTY(lathhouse::models::YearView* view READ view CONSTANT)

    Q_PROPERTY(int cursorDay READ cursorDay WRITE setCursorDay NOTIFY cursorChanged)
    Q_PROPERTY(lathhouse::models::CursorReading* cursor READ cursor CONSTANT)

    Q_PROPERTY(QList<QString> riskStops READ riskStops CONSTANT)
    Q_PROPERTY(int riskStop READ riskStop WRITE setRiskStop NOTIFY riskChanged)
    Q_PROPERTY(bool planning READ planning NOTIFY planningChanged)
    Q_PROPERTY(int currentRow READ currentRow WRITE setCurrentRow NOTIFY currentRowChanged)
    Q_PROPERTY(QString riskSpoken READ riskSpoken NOTIFY riskSpokenChanged)
    Q_PROPERTY(QString footnote READ footnote NOTIFY planChanged)
    Q_PROPERTY(QString credits READ credits NOTIFY unitsChanged)

    Q_PROPERTY(lathhouse::models::YearBegin* begin READ begin CONSTANT)
    /// What went wrong with reading or writing, a whole sentence; empty where nothing did.
    Q_PROPERTY(QString error READ error NOTIFY errorChanged)
    /// Against the plan that the grower keeps: one line on how much is otherwise, and the sentences.
    Q_PROPERTY(QString keptLine READ keptLine NOTIFY planChanged)
    Q_PROPERTY(QStringList changes READ changes NOTIFY planChanged)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY planChanged)
    Q_PROPERTY(lathhouse::models::EdgeByHand* edge READ edge CONSTANT)

    Q_PROPERTY(lathhouse::models::PlantRows* plants READ plants CONSTANT)
    Q_PROPERTY(lathhouse::models::NightTable* nights READ nights CONSTANT)
    /// Roles: name, sentence. Sowings of the year, by the day of sowing.
    Q_PROPERTY(lathhouse::models::SheetRows* sowings READ sowings CONSTANT)

public:
    /// Without a door nothing can be read again or decided by hand.
    YearModel(YearData year, YearSolver solver, YearWords words, QObject* parent = nullptr, YearDoor door = {});
    ~YearModel() override;

    const YearData& year() const { return year_; }
    /// Of the household, whichever date its year is shown from.
    calendar::Date today() const { return today_; }
    const YearWords& words() const { return words_; }
    const SolvedYear& solved() const { return solved_; }
    /// Places of the plants, as their rows stand.
    const std::vector<std::size_t>& order() const { return plants_.order(); }
    /// Stays of a plant by the latest plan; empty before the first.
    const std::vector<YearStay>& planned(std::size_t plant) const;
    /// The same, with the edge that a hand is moving where it is now.
    const std::vector<YearStay>& stays(std::size_t plant) const;
    /// Dates at the chosen risk for the outdoor spot that the plan gives the plant; empty where it stays in.
    std::vector<RiskDate> dates(std::size_t plant) const;
    Probability risk() const;

    QString household() const { return text(year_.household); }
    QString place() const { return text(year_.place); }
    bool demonstration() const { return year_.demonstration; }
    QString todayLong() const { return words_.long_date_with_year(today_); }
    QString todayShort() const { return words_.date_with_year(today_); }
    int dayCount() const { return static_cast<int>(year_.days.size()); }
    QString unit() const { return words_.unit(); }
    QString stripHead() const { return strip_head(year_, words_, false); }
    QString stripShortHead() const { return strip_head(year_, words_, true); }
    QString stripLabel() const { return strip_label(year_, words_); }

    YearView* view() { return &view_; }
    int cursorDay() const { return cursor_day_; }
    void setCursorDay(int day); ///< Kept within the days shown.
    /// Moves the cursor by whole months, to the same day of the month where it exists.
    Q_INVOKABLE void stepMonths(int months);
    CursorReading* cursor() { return &cursor_; }

    QStringList riskStops() const;
    int riskStop() const { return risk_stop_; }
    void setRiskStop(int stop); ///< Ignored outside the stops.
    bool planning() const { return planner_.planning(); }
    int currentRow() const { return current_row_; }
    void setCurrentRow(int row);
    QString riskSpoken() const;
    QString footnote() const;
    QString credits() const;

    QString error() const { return error_; }
    QString keptLine() const;
    QStringList changes() const;
    bool canKeep() const { return door_.accept && year_.from_today && !planning() && !solved_.stays.empty(); }
    YearBegin* begin() { return &begin_; }
    bool can_begin_elsewhere() const { return static_cast<bool>(door_.load_from); }
    /// Reads the household again, in a thread of its own; the old year stays until the new one is planned.
    Q_INVOKABLE void follow();
    /// Keeps the plan that is shown: later ones change it only where it pays.
    Q_INVOKABLE void keepPlan();

    EdgeByHand* edge() { return &edge_; }
    bool can_pin() const { return door_.pin && year_.from_today && !planning(); }
    /// words: what was done, for people, as an undo names it.
    void pin(std::vector<home::Pin> pins, const QString& words);
    /// Takes every pin of the row's plant back.
    Q_INVOKABLE void unpin(int row);
    /// Says everything again after another choice of units; the plan is solved again for what it says.
    void say_again();

    PlantRows* plants() { return &plants_; }
    /// Puts the rows into the order that is chosen; the chosen plant stays the same.
    void reorder();
    NightTable* nights() { return &nights_; }
    SheetRows* sowings() { return &sowing_rows_; }
    const YearSowing* sowing(int row) const;

    QString night_sentence(std::size_t day) const;
    QString plant_sentence(std::size_t plant) const;
    /// Feeds of a plant by the latest plan.
    const std::vector<int>& feeds(std::size_t plant) const;

signals:
    /// Another household, or the same one changed; every date may be another.
    void householdChanged();
    void errorChanged();
    /// Something was written into the household.
    void written();
    void cursorChanged();
    void sowingsChanged();
    void riskChanged();
    void datesChanged(); ///< Dates at the risk moved; the plan has not yet.
    void planChanged();
    void planningChanged();
    void currentRowChanged();
    void riskSpokenChanged();
    void unitsChanged();

private:
    const YearDay& at_cursor() const { return year_.days[static_cast<std::size_t>(cursor_day_)]; }
    void take(const SolvedYear& solved);
    void replace(HouseholdYear loaded, SolvedYear solved, int stop);
    void set_error(QString sentence);
    void read_sowings();
    /// Writes in the thread that reads, and reads again.
    void write(std::function<Result<void>()> job);

    YearData year_;
    YearWords words_;
    RiskPlanner planner_;
    SolvedYear solved_{};
    YearView view_;
    int cursor_day_ = 0;
    int risk_stop_ = 2;
    int current_row_ = 0;
    PlantRows plants_;
    NightTable nights_;
    CursorReading cursor_;
    std::vector<YearSowing> sowings_;
    SheetRows sowing_rows_;
    YearDoor door_;
    calendar::Date today_;
    EdgeByHand edge_;
    YearBegin begin_;
    QString error_;
    std::atomic<int> reading_ = 0; ///< Of those that began to read, the last counts.
    QThreadPool reading_pool_;
};

} // namespace lathhouse::models
