#include "app/models/year_words.h"

#include "app/models/translated.h"
#include "app/words/words.h"

#include <QDate>
#include <QTime>

#include <cmath>

namespace lathhouse::models {

namespace {

constexpr QChar kThinSpace{0x202F}; // narrow no-break space
constexpr QChar kMinus{0x2212};

QString with_true_minus(QString number)
{
    return number.replace(QLatin1Char('-'), kMinus);
}

// How a date is written: letters of Qt's formats, other letters in single quotes.
QString short_form(bool day_first)
{
    return day_first ? tr("ddd d MMM") : tr("ddd MMM d");
}
QString day_form(bool day_first)
{
    return day_first ? tr("d MMM") : tr("MMM d");
}
QString long_day_form(bool day_first)
{
    return day_first ? tr("d MMMM") : tr("MMMM d");
}
QString long_form(bool day_first)
{
    return day_first ? tr("dddd d MMMM") : tr("dddd MMMM d");
}
QString long_form_with_year(bool day_first)
{
    return day_first ? tr("dddd d MMMM yyyy") : tr("dddd MMMM d, yyyy");
}
QString form_with_year(bool day_first)
{
    return day_first ? tr("d MMMM yyyy") : tr("MMMM d, yyyy");
}

QString day_length_words(int minutes)
{
    if (minutes <= 0) {
        return tr("sun does not rise");
    }
    if (minutes >= 24 * 60) {
        return tr("sun does not set");
    }
    return tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString under_one_in_a_thousand()
{
    return tr("< 1 in 1000");
}

} // namespace

QString text(const std::string& utf8)
{
    return QString::fromStdString(utf8);
}

QDate to_qdate(calendar::Date date)
{
    return {static_cast<int>(date.year()), static_cast<int>(date.month()), static_cast<int>(date.day())};
}

bool YearWords::day_first() const
{
    const QString format = locale_.dateFormat(QLocale::ShortFormat);
    return format.indexOf(QLatin1Char('d')) < format.indexOf(QLatin1Char('M'));
}

std::optional<calendar::Date> YearWords::typed_date(const QString& typed) const
{
    const QString words = typed.simplified();
    QDate date;
    for (const QString& form : {QStringLiteral("yyyy-M-d"), QStringLiteral("d.M.yyyy"), QStringLiteral("d. M. yyyy"),
                                day_first() ? QStringLiteral("d/M/yyyy") : QStringLiteral("M/d/yyyy"), QStringLiteral("d MMM yyyy"),
                                QStringLiteral("d MMMM yyyy"), QStringLiteral("d. MMMM yyyy"), form_with_year(day_first())}) {
        if (date = locale_.toDate(words, form); date.isValid()) {
            break;
        }
    }
    const auto made = date.isValid() ? calendar::make_date(date.year(), date.month(), date.day())
                                     : Result<calendar::Date>{Error{ErrorCode::Malformed, "no date"}};
    return made ? std::optional{*made} : std::nullopt;
}

QString YearWords::short_date(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), short_form(day_first()));
}
QString YearWords::day_and_month(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), day_form(day_first()));
}
QString YearWords::day_and_long_month(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), long_day_form(day_first()));
}
QString YearWords::long_date(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), long_form(day_first()));
}
QString YearWords::long_date_with_year(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), long_form_with_year(day_first()));
}
QString YearWords::date_with_year(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), form_with_year(day_first()));
}
QString YearWords::month(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), "MMM");
}

QString YearWords::weekday(calendar::Date date) const
{
    return locale_.toString(to_qdate(date), "dddd");
}

double YearWords::shown(Celsius temperature) const
{
    return fahrenheit() ? temperature.fahrenheit() : temperature.degrees();
}

QString YearWords::decimal(double number, int decimals) const
{
    const double step = std::pow(10.0, decimals);
    const double rounded = std::round(number * step) / step;
    return with_true_minus(locale_.toString(rounded == 0.0 ? 0.0 : rounded, 'f', decimals));
}

QString YearWords::bare(Celsius temperature) const
{
    return decimal(shown(temperature), fahrenheit() ? 0 : 1);
}
QString YearWords::temperature(Celsius temperature) const
{
    return bare(temperature) + kThinSpace + unit();
}
QString YearWords::difference(KelvinDelta difference) const
{
    const double shown_difference =
        fahrenheit() ? difference.fahrenheit_degrees() : difference.kelvins();
    const QString number = decimal(shown_difference, 1);
    return (shown_difference > 0.0 ? QStringLiteral("+") : QString{}) + number + kThinSpace + unit();
}
QString YearWords::unit() const
{
    return fahrenheit() ? QStringLiteral("°F") : QStringLiteral("°C");
}
QString YearWords::whole(int number) const
{
    return with_true_minus(locale_.toString(number));
}

QString YearWords::day_length(int minutes) const
{
    return day_length_words(minutes);
}

QString YearWords::clock(int minutes) const
{
    const bool halves = locale_.timeFormat(QLocale::ShortFormat).contains(QLatin1Char('a'), Qt::CaseInsensitive); // AM and PM.
    return locale_.toString(QTime{(minutes / 60) % 24, minutes % 60}, halves ? QStringLiteral("h:mm AP") : QStringLiteral("HH:mm"));
}

QString YearWords::chance(Probability chance)
{
    return text(words::chance(chance));
}

QString YearWords::chance_in_table(Probability chance)
{
    return chance.fraction() < 0.001 ? under_one_in_a_thousand() : text(words::chance(chance));
}

} // namespace lathhouse::models
