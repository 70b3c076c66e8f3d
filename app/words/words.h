#pragma once

#include "core/calendar/date.h"
#include "core/calendar/day_of_year.h"
#include "core/units/length.h"
#include "core/units/probability.h"
#include "core/units/temperature.h"

#include <string>

namespace lathhouse::words {

enum class Degrees { Celsius, Fahrenheit };
enum class Measures { Metric, UsCustomary };

/// The units that are spoken in: degrees are chosen by themselves, all other measures together.
class UnitSystem {
public:
    static const UnitSystem Metric;      ///< Celsius and metric measures.
    static const UnitSystem UsCustomary; ///< Fahrenheit and US measures.

    constexpr UnitSystem(Degrees degrees, Measures measures) : degrees_(degrees), measures_(measures) {}

    constexpr bool fahrenheit() const { return degrees_ == Degrees::Fahrenheit; }
    constexpr bool us_measures() const { return measures_ == Measures::UsCustomary; }
    friend constexpr bool operator==(const UnitSystem&, const UnitSystem&) = default;

private:
    Degrees degrees_;
    Measures measures_;
};
inline constexpr UnitSystem UnitSystem::Metric{Degrees::Celsius, Measures::Metric};
inline constexpr UnitSystem UnitSystem::UsCustomary{Degrees::Fahrenheit, Measures::UsCustomary};

/// A chance as growers say it: "1 in 10", from 0.6 "6 in 10", above 0.95 "almost sure", below 0.001
/// "under 1 in 1000". Never "0 %" or "100 %". The steps are 2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 30, 50, 100,
/// 200, 500, 1000, the nearest by ratio.
std::string chance(Probability chance);

/// "8.3 °C" or "47 °F" with a thin no-break space and a true minus; whole degrees in Fahrenheit.
std::string temperature(Celsius value, UnitSystem units);
/// A difference: "+2.1 °C" or "+3.8 °F"; always with its sign.
std::string temperature_difference(KelvinDelta value, UnitSystem units);
/// "112 km" or "70 miles".
std::string distance(Metres value, UnitSystem units);
/// "243 m" or "797 ft".
std::string height(Metres value, UnitSystem units);
/// "64 mm" or "2.5 in".
std::string rain(Millimetres value, UnitSystem units);

/// "30 May".
std::string day(calendar::DayOfYear day);
std::string day(calendar::Date date);
/// "Sat 30 May 2026".
std::string full_day(calendar::Date date);
/// "17 h 30 min".
std::string hours_and_minutes(double seconds);
/// A number with that many decimals, a true minus, never "-0".
std::string number(double value, int decimals);

/// `text` filled with blanks on the right (or left) to `width` characters as they stand on screen.
std::string padded(std::string_view text, std::size_t width);
std::string right_aligned(std::string_view text, std::size_t width);

} // namespace lathhouse::words
