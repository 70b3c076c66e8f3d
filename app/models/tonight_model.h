#pragma once

#include "app/models/household_door.h"
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
    Q_PROPERTY(QString carryHead READ carryHead NOTIFY tonightChanged)
    Q_PROPERTY(QString closest READ closest NOTIFY tonightChanged)
    Q_PROPERTY(QString why READ why NOTIFY tonightChanged)
    Q_PROPERTY(QString missing READ missing NOTIFY tonightChanged)
    Q_PROPERTY(QString chartTitle READ chartTitle NOTIFY tonightChanged)
    Q_PROPERTY(QString chartNote READ chartNote NOTIFY tonightChanged)
    Q_PROPERTY(QString line READ line NOTIFY tonightChanged) ///< All of tonight in one line.
    Q_PROPERTY(QStringList ruler READ ruler NOTIFY tonightChanged)
    Q_PROPERTY(double rulerZero READ rulerZero NOTIFY tonightChanged)
    Q_PROPERTY(QString unit READ unit NOTIFY tonightChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* plants READ plants CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* nights READ nights CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* week READ week CONSTANT)

public:
    TonightModel(HouseholdDoor door, TodayLook look, QObject* parent = nullptr);

    bool hasSpot() const { return facts_.has_spot; }
    bool hasForecast() const { return facts_.has_forecast; }
    QString low() const { return facts_.low; }
    QString where() const { return facts_.where; }
    QString spread() const { return facts_.spread; }
    QString carryHead() const { return facts_.carry_head; }
    QString closest() const { return facts_.closest; }
    QString why() const { return facts_.why; }
    QString missing() const { return facts_.missing; }
    QString chartTitle() const { return facts_.chart_title; }
    QString chartNote() const { return facts_.chart_note; }
    QString line() const;
    QStringList ruler() const { return facts_.ruler; }
    double rulerZero() const { return facts_.ruler_zero; }
    QString unit() const { return look_.words.unit(); }
    SheetRows* plants() { return &plants_; }
    SheetRows* nights() { return &nights_; }
    SheetRows* week() { return &week_; }

    const TenNights& ten() const { return facts_.ten; }
    const YearWords& words() const { return look_.words; }

    /// Keeps what was typed as tonight's forecast low. sky: 0 not said, 1 clear and calm, 2 cloud or wind.
    /// Whether it could be read as a temperature; else `error` says why.
    Q_INVOKABLE bool keepForecast(const QString& low, int sky);
    /// Keeps the nights of a file, in the forms of home::forecast_from; rows that say no day were made so many days ago.
    /// columns: "date=day,low_f=Tmin" where the file calls them otherwise, else blank. Whether there is a file to read; what is
    /// wrong with it `error` says when it was read.
    Q_INVOKABLE bool keepForecastFile(const QString& path, const QString& columns = {}, const QString& days_ago = {});
    Q_INVOKABLE static QString pathOf(const QUrl& address) { return address.toLocalFile(); }

signals:
    void tonightChanged();

protected:
    void read() override;

private:
    /// forecasts: what is to be kept. kept: what is said then, of how many.
    void keep(std::function<Result<std::vector<home::KeptForecast>>()> forecasts, std::function<QString(std::size_t)> kept);

    HouseholdDoor door_;
    TodayLook look_;
    TonightFacts facts_;
    SheetRows plants_;
    SheetRows nights_;
    SheetRows week_;
};

/// The weather that a chip stands for: 0 not said, 1 clear and calm, 2 cloud or wind.
climate::NightWeather weather_of_chip(int sky);

} // namespace lathhouse::models
