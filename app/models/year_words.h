#pragma once

#include "app/models/shown_units.h"
#include "app/models/year_data.h"

#include <QLocale>
#include <QString>

#include <optional>

namespace lathhouse::models {

/// Words and numbers of the page Year in the grower's locale and units.
class YearWords {
public:
    explicit YearWords(ShownUnits units, const QLocale& locale = QLocale{})
        : units_(std::move(units)), locale_(locale)
    {
    }

    /// Of lengths, volumes and weights.
    Units units() const { return units_.measures(); }
    bool fahrenheit() const { return units_.degrees() == Units::Us; }
    const ShownUnits& shown_units() const { return units_; }
    /// "Sat 30 May"; by the locale also "Sat May 30".
    QString short_date(calendar::Date date) const;
    /// "30 May".
    QString day_and_month(calendar::Date date) const;
    /// "21 June".
    QString day_and_long_month(calendar::Date date) const;
    /// "Saturday 30 May", with the year where asked for.
    QString long_date(calendar::Date date) const;
    QString long_date_with_year(calendar::Date date) const;
    QString date_with_year(calendar::Date date) const;
    QString month(calendar::Date date) const; ///< "Jan".
    QString weekday(calendar::Date date) const; ///< "Saturday".
    /// A date as people type it: "2026-05-30", "30.5.2026", "30/5/2026" or "5/30/2026" by the locale, "30 May 2026";
    /// nullopt where it is none, or without its year in four digits.
    std::optional<calendar::Date> typed_date(const QString& typed) const;
    /// In the shown unit, true minus, without the unit: one decimal in Celsius, whole degrees in Fahrenheit.
    QString bare(Celsius temperature) const;
    /// "8.3 °C".
    QString temperature(Celsius temperature) const;
    /// "+2.1 °C".
    QString difference(KelvinDelta difference) const;
    QString unit() const; ///< "°C" or "°F".
    double shown(Celsius temperature) const;
    QString day_length(int minutes) const; ///< "16 h 59 min".
    QString clock(int minutes) const;      ///< "04:40", or "4:40 AM" where the reader’s place writes so.
    /// Number of an axis, whole, true minus.
    QString whole(int number) const;
    QString decimal(double number, int decimals) const;

    /// "1 in 10", "6 in 10", "almost sure", "under 1 in 1000".
    static QString chance(Probability chance);
    /// The same for a column of numbers: "< 1 in 1000".
    static QString chance_in_table(Probability chance);

private:
    bool day_first() const;
    ShownUnits units_;
    QLocale locale_;
};

QString text(const std::string& utf8);
QDate to_qdate(calendar::Date date);

} // namespace lathhouse::models
