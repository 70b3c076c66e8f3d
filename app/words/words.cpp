#include "app/words/words.h"

#include "app/words/phrase.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace lathhouse::words {
namespace {

constexpr std::array kShortMonthNames = {said_later("Jan"), said_later("Feb"), said_later("Mar"), said_later("Apr"),
                                         said_later("May"), said_later("Jun"), said_later("Jul"), said_later("Aug"),
                                         said_later("Sep"), said_later("Oct"), said_later("Nov"), said_later("Dec")};
constexpr std::array kWeekdayNames = {said_later("Sun"), said_later("Mon"), said_later("Tue"), said_later("Wed"),
                                      said_later("Thu"), said_later("Fri"), said_later("Sat")};
constexpr auto kThinSpace = "\u202F";
constexpr auto kMinus = "\u2212";

std::string with_unit(double value, int decimals, const char* unit)
{
    return number(value, decimals) + kThinSpace + unit;
}

/// Characters as they stand on screen: bytes that do not continue a UTF-8 sequence.
std::size_t width_of(std::string_view text)
{
    std::size_t width = 0;
    for (const char byte : text) {
        width += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
    }
    return width;
}

} // namespace

std::string number(double value, int decimals)
{
    std::array<char, 48> text{};
    std::snprintf(text.data(), text.size(), "%.*f", decimals, std::fabs(value));
    std::string digits = text.data();
    if (const auto point = digits.find('.'); point != std::string::npos) {
        digits[point] = decimal_mark();
    }
    const bool is_zero = digits.find_first_not_of("0.,") == std::string::npos;
    return (value < 0.0 && !is_zero ? kMinus : "") + digits;
}

std::string chance(Probability chance)
{
    const double fraction = chance.fraction();
    if (fraction > 0.95) {
        return phrase("almost sure");
    }
    if (fraction >= 0.6) {
        return phrase("%1 in 10", std::to_string(std::min(9, static_cast<int>(std::lround(fraction * 10.0)))));
    }
    if (fraction < 0.001) {
        return phrase("under 1 in 1000");
    }
    constexpr std::array kSteps = {2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 30, 50, 100, 200, 500, 1000};
    int nearest = kSteps.front();
    for (const int step : kSteps) {
        if (std::fabs(std::log(fraction * step)) < std::fabs(std::log(fraction * nearest))) {
            nearest = step;
        }
    }
    return phrase("1 in %1", std::to_string(nearest));
}

std::string temperature(Celsius value, UnitSystem units)
{
    return !units.fahrenheit() ? with_unit(value.degrees(), 1, "°C")
                                       : with_unit(value.fahrenheit(), 0, "°F");
}

std::string temperature_difference(KelvinDelta value, UnitSystem units)
{
    const bool metric = !units.fahrenheit();
    const double shown = metric ? value.kelvins() : value.fahrenheit_degrees();
    return (shown >= 0.0 ? "+" : "") + with_unit(shown, 1, metric ? "°C" : "°F");
}

std::string distance(Metres value, UnitSystem units)
{
    return !units.us_measures() ? with_unit(value.kilometres(), 0, "km")
                                       : with_unit(value.miles(), 0, phrase("miles").c_str());
}

std::string height(Metres value, UnitSystem units)
{
    return !units.us_measures() ? with_unit(value.metres(), 0, "m") : with_unit(value.feet(), 0, "ft");
}

std::string rain(Millimetres value, UnitSystem units)
{
    return !units.us_measures() ? with_unit(value.millimetres(), 0, "mm")
                                       : with_unit(value.inches(), 1, "in");
}

std::string day(calendar::DayOfYear day)
{
    const auto number = std::to_string(day.day());
    const auto month = phrase(kShortMonthNames[static_cast<std::size_t>(day.month() - 1)]);
    return month_first() ? month + ' ' + number : phrase("%1 %2", number, month);
}

std::string day(calendar::Date date)
{
    return day(calendar::DayOfYear::of(date));
}

std::string full_day(calendar::Date date)
{
    const auto weekday = phrase(kWeekdayNames[date.day_of_week().as_number()]);
    const auto year = std::to_string(static_cast<int>(date.year()));
    return month_first() ? weekday + ' ' + day(date) + ", " + year : phrase("%1 %2 %3", weekday, day(date), year);
}

std::string hours_and_minutes(double seconds)
{
    const auto minutes = std::lround(seconds / 60.0);
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%ld h %02ld min", minutes / 60, minutes % 60);
    return text.data();
}

std::string padded(std::string_view text, std::size_t width)
{
    const auto shown = width_of(text);
    return std::string{text} + std::string(shown < width ? width - shown : 0, ' ');
}

std::string right_aligned(std::string_view text, std::size_t width)
{
    const auto shown = width_of(text);
    return std::string(shown < width ? width - shown : 0, ' ') + std::string{text};
}

} // namespace lathhouse::words
