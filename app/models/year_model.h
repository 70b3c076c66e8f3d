#pragma once

#include "app/models/night_table.h"
#include "app/models/plant_rows.h"
#include "app/models/readout_rows.h"
#include "app/models/strip_words.h"
#include "app/models/year_data.h"
#include "app/models/year_words.h"

#include <QObject>
#include <QThreadPool>
#include <QtQml/qqmlregistration.h>

class QTimer;

namespace lathhouse::models {

/// The page Year: a year of nights, the plants in it, a cursor on a date, and the risk accepted.
///
/// The plan is solved in a thread of its own; the dates at a risk are looked up at once. While nothing is asked
/// for, the plans at the other risks are solved as well, so that the slider finds them ready.
class YearModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")

    Q_PROPERTY(QString household READ household CONSTANT)
    Q_PROPERTY(QString place READ place CONSTANT)
    Q_PROPERTY(bool demonstration READ demonstration CONSTANT)
    Q_PROPERTY(QString todayLong READ todayLong CONSTANT)
    Q_PROPERTY(QString todayShort READ todayShort CONSTANT)
    Q_PROPERTY(int dayCount READ dayCount CONSTANT)
    Q_PROPERTY(QString unit READ unit NOTIFY unitsChanged)
    Q_PROPERTY(QString stripHead READ stripHead NOTIFY unitsChanged)
    Q_PROPERTY(QString stripShortHead READ stripShortHead NOTIFY unitsChanged)
    Q_PROPERTY(QString stripLabel READ stripLabel NOTIFY unitsChanged)

    Q_PROPERTY(int viewFirst READ viewFirst NOTIFY viewChanged)
    Q_PROPERTY(int viewDays READ viewDays NOTIFY viewChanged)

    Q_PROPERTY(int cursorDay READ cursorDay WRITE setCursorDay NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorShort READ cursorShort NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorLong READ cursorLong NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorSentence READ cursorSentence NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorDayLength READ cursorDayLength NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorLow READ cursorLow NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorSpread READ cursorSpread NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorFrostAfter READ cursorFrostAfter NOTIFY cursorChanged)
    Q_PROPERTY(QString cursorShelteredAfter READ cursorShelteredAfter NOTIFY cursorChanged)
    Q_PROPERTY(QString harmHeading READ harmHeading NOTIFY cursorChanged)
    Q_PROPERTY(QString outdoorsWords READ outdoorsWords NOTIFY countsChanged)
    Q_PROPERTY(QString hardeningWords READ hardeningWords NOTIFY countsChanged)

    Q_PROPERTY(QList<QString> riskStops READ riskStops CONSTANT)
    Q_PROPERTY(int riskStop READ riskStop WRITE setRiskStop NOTIFY riskChanged)
    Q_PROPERTY(bool planning READ planning NOTIFY planningChanged)
    Q_PROPERTY(int currentRow READ currentRow WRITE setCurrentRow NOTIFY currentRowChanged)
    Q_PROPERTY(QString riskSpoken READ riskSpoken NOTIFY riskSpokenChanged)
    Q_PROPERTY(QString plantsLine READ plantsLine NOTIFY planChanged)
    Q_PROPERTY(QString plantsShortLine READ plantsShortLine NOTIFY planChanged)
    Q_PROPERTY(QString footnote READ footnote NOTIFY planChanged)
    Q_PROPERTY(QString credits READ credits NOTIFY unitsChanged)

    Q_PROPERTY(lathhouse::models::PlantRows* plants READ plants CONSTANT)
    Q_PROPERTY(lathhouse::models::NightTable* nights READ nights CONSTANT)
    Q_PROPERTY(lathhouse::models::ReadoutRows* readout READ readout CONSTANT)

public:
    YearModel(YearData year, YearSolver solver, YearWords words, QObject* parent = nullptr);
    ~YearModel() override;

    const YearData& year() const { return year_; }
    const YearWords& words() const { return words_; }
    const std::vector<std::size_t>& order() const { return order_; }
    /// Stays of a plant by the latest plan; empty before the first.
    const std::vector<YearStay>& stays(std::size_t plant) const;
    /// Dates at the chosen risk for the outdoor spot that the plan gives the plant; empty where it stays in.
    std::vector<RiskDate> dates(std::size_t plant) const;
    Probability risk() const;

    QString household() const { return text(year_.household); }
    QString place() const { return text(year_.place); }
    bool demonstration() const { return year_.demonstration; }
    QString todayLong() const { return words_.long_date_with_year(year_.today); }
    QString todayShort() const { return words_.date_with_year(year_.today); }
    int dayCount() const { return static_cast<int>(year_.days.size()); }
    QString unit() const { return words_.unit(); }
    QString stripHead() const { return strip_head(year_, words_, false); }
    QString stripShortHead() const { return strip_head(year_, words_, true); }
    QString stripLabel() const { return strip_label(year_, words_); }

    /// The days that the chart shows: the year, half of it or a quarter, always with the cursor in it.
    int viewFirst() const { return view_.first; }
    int viewDays() const { return view_.count; }
    DaySpan view() const { return view_; }
    /// Shows less (steps > 0) or more of the year; `day` stays where it is as far as the year's ends allow.
    Q_INVOKABLE void zoom(int steps, int day);

    int cursorDay() const { return cursor_day_; }
    void setCursorDay(int day); ///< Kept within the days shown.
    /// Moves the cursor by whole months, to the same day of the month where it exists.
    Q_INVOKABLE void stepMonths(int months);
    QString cursorShort() const { return words_.short_date(at_cursor().date); }
    QString cursorLong() const;
    QString cursorSentence() const { return night_sentence(static_cast<std::size_t>(cursor_day_)); }
    QString cursorDayLength() const;
    QString cursorLow() const { return words_.temperature(at_cursor().low_middle); }
    QString cursorSpread() const;
    QString cursorFrostAfter() const { return YearWords::chance(at_cursor().frost_after); }
    QString cursorShelteredAfter() const;
    QString harmHeading() const;
    QString outdoorsWords() const;
    QString hardeningWords() const;

    QStringList riskStops() const;
    int riskStop() const { return risk_stop_; }
    void setRiskStop(int stop); ///< Ignored outside the stops.
    bool planning() const { return planning_; }
    int currentRow() const { return current_row_; }
    void setCurrentRow(int row);
    QString riskSpoken() const;
    QString plantsLine() const;
    QString plantsShortLine() const; ///< Where the other has no room.
    QString footnote() const;
    QString credits() const;

    /// Says everything again after another choice of units; the plan is solved again for what it says.
    void say_again();

    PlantRows* plants() { return &plants_; }
    NightTable* nights() { return &nights_; }
    ReadoutRows* readout() { return &readout_; }

    QString night_sentence(std::size_t day) const;
    QString plant_sentence(std::size_t plant) const;
    /// Colour of the spot, kSpotColours more where its pattern is turned; -1 before the first plan.
    int colour_at_cursor(std::size_t plant) const;
    QString words_at_cursor(std::size_t plant) const;
    bool outdoors_at_cursor(std::size_t plant) const;

signals:
    void viewChanged();
    void cursorChanged();
    void countsChanged();
    void riskChanged();
    void datesChanged(); ///< Dates at the risk moved; the plan has not yet.
    void planChanged();
    void planningChanged();
    void currentRowChanged();
    void riskSpokenChanged();
    void unitsChanged();

private:
    const YearDay& at_cursor() const { return year_.days[static_cast<std::size_t>(cursor_day_)]; }
    const YearStay* stay_at(std::size_t plant, int day) const;
    /// 1-based step of a ladder on that day with the number of steps; nullopt on other days.
    std::optional<std::pair<int, int>> step_at(std::size_t plant, int day) const;
    bool in_first_half_of_season(std::size_t day) const;
    void show_days(DaySpan view);
    void fill_readout();
    void solve();
    void start_solving(int stop);
    void keep(SolvedYear solved, int stop, int said);
    void take(SolvedYear solved);
    void look_ahead();

    YearData year_;
    YearSolver solver_;
    YearWords words_;
    SolvedYear solved_{};
    std::vector<std::optional<SolvedYear>> known_; ///< For each stop of the risk.
    std::vector<std::size_t> order_;
    DaySpan view_;
    int cursor_day_ = 0;
    int risk_stop_ = 2;
    int current_row_ = 0;
    bool planning_ = false;
    int said_again_ = 0; ///< Plans solved before the last time are in other words.
    PlantRows plants_;
    NightTable nights_;
    ReadoutRows readout_;
    QTimer* idle_;
    QThreadPool pool_;
};

/// Hands that the theme has for spots.
constexpr int kSpotColours = 8;
/// Steps out of the light of one spot into that of another.
constexpr int kStepsOut = 5;
constexpr int kStepsIn = 4;

} // namespace lathhouse::models
