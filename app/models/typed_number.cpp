#include "app/models/typed_number.h"

#include "app/models/translated.h"
#include "app/models/typed_decimal.h"
#include "core/home/thermometer.h"

#include <cmath>

namespace lathhouse::models {

namespace {

/// Lowest temperatures of a night above this are taken for a slip of the pen (common practice, no source).
constexpr double kWarmestNight = 45.0;

/// The number without its unit, and which unit that is.
struct Degrees {
    QString number;
    bool fahrenheit;

    Degrees(const QString& typed, const YearWords& words) : number(typed.trimmed()), fahrenheit(words.fahrenheit())
    {
        if (number.endsWith(QLatin1Char('C'), Qt::CaseInsensitive) || number.endsWith(QLatin1Char('F'), Qt::CaseInsensitive)) {
            fahrenheit = number.back().toUpper() == QLatin1Char('F');
            number.chop(1);
        }
        number.remove(QChar(0xB0)).remove(QChar(0x202F));
    }
    Celsius celsius(double degrees) const
    {
        return fahrenheit ? Celsius::from_fahrenheit(degrees) : Celsius::from_degrees(degrees);
    }
};

QString to_type(Celsius value, const YearWords& words)
{
    return decimal_to_type(words, words.shown(value), 1);
}

} // namespace

TypedTemperature typed_temperature(const QString& typed, const YearWords& words)
{
    const Degrees read(typed, words);
    const auto& [number, fahrenheit] = read;
    if (number.trimmed().isEmpty()) {
        return {std::nullopt, tr("A number is missing: the lowest temperature, such as %1.")
                                  .arg(words.decimal(fahrenheit ? 43.0 : 6.2, fahrenheit ? 0 : 1))};
    }
    const auto degrees = typed_decimal(number);
    if (!degrees) {
        return {std::nullopt, tr("“%1” is not a number; write it as %2.")
                                  .arg(typed.trimmed(), words.decimal(fahrenheit ? 43.0 : 6.2, fahrenheit ? 0 : 1))};
    }
    const auto value = read.celsius(*degrees);
    if (!(value >= home::kColdestLogged)) {
        return {std::nullopt, tr("%1 is colder than any night ever measured.").arg(words.temperature(value))};
    }
    if (!(value.degrees() <= kWarmestNight)) {
        const double tenth = *degrees / 10.0;
        return {std::nullopt,
                tr("%1 is no night low. Did you mean %2?").arg(words.temperature(value), words.decimal(tenth, 1)),
                fahrenheit == words.fahrenheit() ? to_type(read.celsius(tenth), words) : QString{}};
    }
    return {value, {}};
}

Slip slip_of_low(Celsius low, Celsius usual, const YearWords& words)
{
    if (!home::is_slip_of_low(low, usual)) {
        return {};
    }
    const auto tenth = words.fahrenheit() ? Celsius::from_fahrenheit(low.fahrenheit() / 10.0) : Celsius::from_degrees(low.degrees() / 10.0);
    if (home::is_slip_of_low(tenth, usual)) {
        return {tr("Such a night usually has %1 here; %2 cannot be right.").arg(words.temperature(usual), words.temperature(low))};
    }
    return {tr("Such a night usually has %1 here. Instead of %2, did you mean %3?")
                .arg(words.temperature(usual), words.temperature(low), words.temperature(tenth)),
            to_type(tenth, words)};
}

std::optional<Celsius> typed_degrees(const QString& typed, const YearWords& words)
{
    const Degrees read(typed, words);
    const auto degrees = typed_decimal(read.number);
    return degrees ? std::optional{read.celsius(*degrees)} : std::nullopt;
}

std::optional<Celsius> typed_plant_line(const QString& typed, const YearWords& words)
{
    constexpr double kFurthest = 60.0;
    const auto value = typed_degrees(typed, words);
    return value && std::abs(value->degrees()) <= kFurthest ? value : std::nullopt;
}

} // namespace lathhouse::models
