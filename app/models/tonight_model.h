#pragma once

#include "app/models/household_door.h"
#include "app/models/risk_stops.h"
#include "app/models/sheet_model.h"
#include "app/models/tonight_facts.h"

#include <QUrl>

#include <functional>
#include <vector>

namespace lathhouse::models {

/// The right side of Round: tonight, the ten nights, the week. (Its base is named in full for the type description of the
/// QML module.)
class TonightModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(bool hasSpot READ hasSpot NOTIFY tonightChanged)
    Q_PROPERTY(bool hasForecast READ hasForecast NOTIFY tonightChanged)
    Q_PROPERTY(QString low READ low NOTIFY tonightChanged)
    Q_PROPERTY(QString where READ where NOTIFY tonightChanged)
    Q_PROPERTY(QString spread READ spread NOTIFY tonightChanged)
    /// How many plants must come in, whether that is ticked or not.
    Q_PROPERTY(int carries READ carries NOTIFY tonightChanged)
    Q_PROPERTY(QString carryHead READ carryHead NOTIFY tonightChanged)
    Q_PROPERTY(QString closest READ closest NOTIFY tonightChanged)
    Q_PROPERTY(QString why READ why NOTIFY tonightChanged)
    Q_PROPERTY(QString missing READ missing NOTIFY tonightChanged)
    Q_PROPERTY(QString chartTitle READ chartTitle NOTIFY tonightChanged)
    Q_PROPERTY(QString chartNote READ chartNote NOTIFY tonightChanged)
    Q_PROPERTY(QString line READ line NOTIFY tonightChanged) ///< All of tonight in one line.
    Q_PROPERTY(QStringList ruler READ ruler NOTIFY tonightChanged)
    Q_PROPERTY(double rulerZero READ rulerZero NOTIFY tonightChanged)
    Q_PROPERTY(QString spotsLine READ spotsLine NOTIFY tonightChanged)  ///< Tonight's low at each spot, to be read aloud.
    Q_PROPERTY(QString unit READ unit NOTIFY tonightChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* plants READ plants CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* nights READ nights CONSTANT)
    /// Tasks of the days to come.
    Q_PROPERTY(lathhouse::models::SheetRows* week READ week CONSTANT)
    /// How many days those are, and the sheet of the round: a week, up to 60 days.
    Q_PROPERTY(int days READ days WRITE setDays NOTIFY daysChanged)
    /// The chance of a damaging night with which a plant may stay out, as a place among `riskStops`. It is of this page alone
    /// and begins at 1 in 10 each time: the slider of the year is there for looking, and a look at 1 in 3 there must not
    /// leave a plant out tonight.
    Q_PROPERTY(int riskStop READ riskStop WRITE setRiskStop NOTIFY riskChanged)
    Q_PROPERTY(QStringList riskStops READ riskStops CONSTANT)

public:
    TonightModel(HouseholdDoor door, TodayLook look, QObject* parent = nullptr);

    bool hasSpot() const { return facts_.has_spot; }
    bool hasForecast() const { return facts_.has_forecast; }
    QString low() const { return facts_.low; }
    QString where() const { return facts_.where; }
    QString spread() const { return facts_.spread; }
    int carries() const { return facts_.carries; }
    QString carryHead() const { return facts_.carry_head; }
    QString closest() const { return facts_.closest; }
    QString why() const { return facts_.why; }
    QString missing() const { return facts_.missing; }
    QString chartTitle() const { return facts_.chart_title; }
    QString chartNote() const { return facts_.chart_note; }
    QString line() const;
    QStringList ruler() const { return facts_.ruler; }
    double rulerZero() const { return facts_.ruler_zero; }
    QString spotsLine() const { return facts_.spots_line; }
    QString unit() const { return look_.words.unit(); }
    SheetRows* plants() { return &plants_; }
    SheetRows* nights() { return &nights_; }
    SheetRows* week() { return &week_; }
    int days() const { return choice_.days; }
    void setDays(int days); ///< Held within 7 and 60.
    int riskStop() const { return risk_stop_; }
    void setRiskStop(int stop); ///< Ignored outside the stops.
    static QStringList riskStops() { return risk_stops(); }

    const TenNights& ten() const { return facts_.ten; }
    const std::vector<RulerTick>& ruler_ticks() const { return facts_.ticks; }
    const std::vector<SpotNight>& spots() const { return facts_.spots; }
    const YearWords& words() const { return look_.words; }

    /// Keeps what was typed as tonight's forecast low. sky: 0 not said, 1 clear, 2 cloudy; wind: 0 not said, 1 calm, 2 windy;
    /// dew point: as it is typed, blank where none is told. Whether they could be read; else `error` says why.
    Q_INVOKABLE bool keepForecast(const QString& low, int sky = 0, int wind = 0, const QString& dew_point = {});
    /// Keeps the nights of a file, in the forms of home::forecast_from; rows that say no day were made so many days ago.
    /// columns: "date=day,low_f=Tmin" where the file calls them otherwise, else blank. Whether there is a file to read; what is
    /// wrong with it `error` says when it was read.
    Q_INVOKABLE bool keepForecastFile(const QString& path, const QString& columns = {}, const QString& days_ago = {});
    Q_INVOKABLE static QString pathOf(const QUrl& address) { return address.toLocalFile(); }

signals:
    void tonightChanged();
    void daysChanged();
    void riskChanged();

protected:
    void read() override;

private:
    /// forecasts: what is to be kept. kept: what is said then, of how many.
    void keep(std::function<Result<std::vector<home::KeptForecast>>()> forecasts, std::function<QString(std::size_t)> kept);

    HouseholdDoor door_;
    TodayLook look_;
    TonightFacts facts_;
    TonightChoice choice_;
    int risk_stop_ = kUsualStop;
    SheetRows plants_;
    SheetRows nights_;
    SheetRows week_;
};

/// The weather that a chip stands for: 0 not said, 1 clear and calm, 2 cloud or wind.
climate::NightWeather weather_of_chip(int sky);

} // namespace lathhouse::models
