#include "app/models/place_months_model.h"

#include "app/models/typed_decimal.h"
#include "app/models/typed_measure.h"
#include "app/models/word_form.h"
#include "app/words/growing_words.h"
#include "app/words/phrase.h"
#include "app/words/season_words.h"
#include "app/words/us_units.h"

#include <array>
#include <cmath>
#include <numeric>

namespace lathhouse::models {

namespace {

/// The figures of the months with those of the stations, as one answer.
struct MonthsAnswer {
    climate::MonthlyFigures monthly;
    climate::Monthly<std::optional<Millimetres>> rain;
    climate::PlaceMonths months;
    double pot_centimetres;
};

class MonthsWords {
    Q_DECLARE_TR_FUNCTIONS(PlaceMonths)

public:
    MonthsWords(const MonthsAnswer& answer, const TodayLook& look)
        : answer_(answer), months_(answer.months), look_(look), words_(look.words), units_(unit_system_of(look.words))
    {
    }

    std::vector<SheetRows::Row> air() const
    {
        return rows([this](std::size_t m, const QString& name) -> SheetRows::Row {
            const auto& monthly = answer_.monthly;
            const QString low = words_.temperature(monthly.low[m]);
            const QString high = words_.temperature(monthly.high[m]);
            const QString coldest = monthly.lowest[m] ? words_.temperature(*monthly.lowest[m]) : none();
            const QString frost = monthly.frost_days[m] ? words_.decimal(*monthly.frost_days[m], 1) : none();
            const QString warmth = words_.decimal(months_.degree_days[m], 0);
            return {name, low, high, coldest, frost, warmth,
                    tr("%1: nights %2 and days %3 on average, coldest night of all the years %4, days with frost %5, degree days %6")
                        .arg(name, low, high, coldest, frost, warmth)};
        });
    }

    std::vector<SheetRows::Row> sky() const
    {
        return rows([this](std::size_t m, const QString& name) -> SheetRows::Row {
            const auto& light = months_.light[m];
            constexpr double kSecondsAMinute = 60.0;
            const QString rain = answer_.rain[m] ? text(words::rain(*answer_.rain[m], units_)) : none();
            const QString day = words_.day_length(static_cast<int>(std::lround(light.day_length_seconds / kSecondsAMinute)));
            const QString moles = words_.decimal(light.daily_light.moles(), 1);
            const QString water = text(words::rain(light.reference_evapotranspiration, units_));
            return {name, rain, day, moles, water,
                    tr("%1: rain %2, day length %3, %4 moles of light a day, a lawn drinks %5").arg(name, rain, day, moles, water)};
        });
    }

    std::vector<SheetRows::Row> ground() const
    {
        return rows([this](std::size_t m, const QString& name) -> SheetRows::Row {
            const QString shallow = words_.temperature(months_.soil_at_5[m].mean);
            const QString deep = words_.temperature(months_.soil_at_10[m].mean);
            const QString low = words_.temperature(months_.pot[m].low);
            const QString high = words_.temperature(months_.pot[m].high);
            const QString drinks = water(months_.pot_water[m]);
            return {name, shallow, deep, low, high, drinks,
                    tr("%1: soil %2 near the top and %3 deeper, in a pot %4 to %5, which drinks %6 a day")
                        .arg(name, shallow, deep, low, high, drinks)};
        });
    }

    QString year() const
    {
        QStringList said;
        for (const auto& season : months_.seasons) {
            const QString line = words_.temperature(season.above);
            said.append(season.from && season.to ? tr("The mean of the day lies above %1 from %2 to %3, %4 days.")
                                                       .arg(line, day(*season.from), day(*season.to), words_.decimal(season.days, 0))
                        : season.days > 0.0      ? tr("The mean of the day lies above %1 all year.").arg(line)
                                                 : tr("The mean of the day never lies above %1.").arg(line));
        }
        const double warmth = std::accumulate(months_.degree_days.begin(), months_.degree_days.end(), 0.0);
        said.append(tr("Degree days above %1, counted in °C: %2 a year.").arg(words_.temperature(climate::kDegreeDayBase), words_.decimal(warmth, 0)));
        if (months_.rain) {
            said.append(tr("Rain: %1 a year.").arg(text(words::rain(*months_.rain, units_))));
        }
        return said.join(QLatin1Char(' '));
    }

    QString of_pot() const
    {
        const bool inches = words_.units() == Units::Us;
        const QString width = words_.decimal(inches ? answer_.pot_centimetres / words::kCentimetresInAnInch : answer_.pot_centimetres, 0);
        return tr("A pot or crown of %1 %2, well watered, in the open and in the shade. A dark pot in full sun gets much hotter and can burn roots "
                  "and hands.")
            .arg(width, inches ? tr("in") : tr("cm"));
    }

private:
    static QString none() { return QStringLiteral("–"); }
    QString day(calendar::DayOfYear day) const { return words_.day_and_month(day.next_on_or_after(look_.today)); }
    /// Water of a day: hundredths of a litre, or the nearest measure of a US kitchen.
    QString water(double litres) const
    {
        return units_.us_measures() ? text(words::volume(Litres::from_litres(litres), units_)) : tr("%1 L").arg(words_.decimal(litres, 2));
    }
    template <class Row>
    std::vector<SheetRows::Row> rows(Row row) const
    {
        std::vector<SheetRows::Row> rows;
        for (std::size_t m = 0; m < 12; ++m) {
            rows.push_back(row(m, text(words::phrase(words::month_name(m)))));
        }
        return rows;
    }

    const MonthsAnswer& answer_;
    const climate::PlaceMonths& months_;
    const TodayLook& look_;
    const YearWords& words_;
    words::UnitSystem units_;
};

} // namespace

PlaceMonthsModel::PlaceMonthsModel(std::function<Result<plan::HouseholdFacts>()> load, TodayLook look, QObject* parent)
    : SheetModel(parent), load_(std::move(load)), look_(std::move(look)),
      air_({"month", "low", "high", "coldest", "frost", "warmth", "sentence"}), sky_({"month", "rain", "day", "light", "water", "sentence"}),
      ground_({"month", "soil5", "soil10", "potLow", "potHigh", "drinks", "sentence"})
{
}

void PlaceMonthsModel::setOpen(bool open)
{
    if (open == open_) {
        return;
    }
    open_ = open;
    emit openChanged();
    if (open_) {
        read();
    } else {
        clear();
    }
}

void PlaceMonthsModel::renew()
{
    if (open_) {
        read();
    }
}

void PlaceMonthsModel::clear()
{
    for (SheetRows* rows : {&air_, &sky_, &ground_}) {
        rows->show({});
    }
    year_.clear();
    of_pot_.clear();
    emit answered();
}

void PlaceMonthsModel::setPot(const QString& pot)
{
    if (pot != pot_) {
        pot_ = pot;
        emit potChanged();
        if (open_ && pot_centimetres()) {
            read();
        }
    }
}

std::optional<double> PlaceMonthsModel::pot_centimetres() const
{
    if (pot_.trimmed().isEmpty()) {
        return climate::kUsualPotCentimetres;
    }
    const auto width = typed_centimetres(pot_, look_.words);
    return width && *width >= climate::kNarrowestPotCentimetres && *width <= climate::kWidestPotCentimetres ? width : std::nullopt;
}

QString PlaceMonthsModel::potTrouble() const
{
    if (pot_centimetres()) {
        return {};
    }
    const QString typed = pot_.trimmed();
    const bool inches = !typed.endsWith(QLatin1String("cm"), Qt::CaseInsensitive) &&
                        (typed.endsWith(QLatin1String("in"), Qt::CaseInsensitive) || look_.words.units() == Units::Us);
    const double unit = inches ? words::kCentimetresInAnInch : 1.0;
    return tr("A pot is %1 to %2 %3 across.")
        .arg(look_.words.decimal(std::ceil(climate::kNarrowestPotCentimetres / unit), 0),
             look_.words.decimal(std::floor(climate::kWidestPotCentimetres / unit), 0), inches ? tr("in") : tr("cm"));
}

QString PlaceMonthsModel::potUnit() const
{
    return look_.words.units() == Units::Us ? tr("in") : tr("cm");
}

QString PlaceMonthsModel::usualPot() const
{
    const double unit = look_.words.units() == Units::Us ? words::kCentimetresInAnInch : 1.0;
    return decimal_to_type(look_.words, climate::kUsualPotCentimetres / unit, 0);
}

void PlaceMonthsModel::read()
{
    clear_error();
    work<MonthsAnswer>(
        [load = load_, width = pot_centimetres().value_or(climate::kUsualPotCentimetres)]() -> Result<MonthsAnswer> {
            const auto facts = load();
            if (!facts) {
                return facts.error();
            }
            const auto& place = facts->climate;
            return MonthsAnswer{place.monthly, place.rain, climate::PlaceMonths::of(place, Metres::from_metres(width / 100.0)), width};
        },
        [this](const Result<MonthsAnswer>& answer) {
            if (!open_) {
                return;
            }
            if (!answer) {
                fail(answer.error());
                return;
            }
            const MonthsWords words(*answer, look_);
            air_.show(words.air());
            sky_.show(words.sky());
            ground_.show(words.ground());
            year_ = words.year();
            of_pot_ = words.of_pot();
            emit answered();
        });
}

} // namespace lathhouse::models
