#pragma once

#include "core/units/length.h"
#include "core/units/temperature.h"

#include <array>
#include <optional>

namespace lathhouse::climate {

/// One value for each month, January first.
template <class T>
using Monthly = std::array<T, 12>;

/// The same value twelve times, for types without a value of their own.
template <class T>
constexpr Monthly<T> in_every_month(T value)
{
    return {value, value, value, value, value, value, value, value, value, value, value, value};
}

/// A place's twelve months, as far as they are known.
struct MonthlyFigures {
    Monthly<Celsius> low;  ///< Mean daily low.
    Monthly<Celsius> high; ///< Mean daily high.
    /// Standard deviation of all daily lows of the month over the period about their mean; contains the
    /// season's slope within the month and the years' differences.
    std::optional<Monthly<KelvinDelta>> low_spread;
    /// Standard deviation of the daily mean within the month, averaged over the years.
    std::optional<Monthly<KelvinDelta>> mean_spread;
    Monthly<std::optional<Celsius>> lowest{};    ///< Lowest value of the month over the whole period.
    Monthly<std::optional<double>> frost_days{}; ///< Mean number of days with a low below 0 C; of 28.2425 in February.
    std::optional<int> years;                    ///< Years behind `lowest`.
    /// Step in which lows were read: 0.1 K, or 5/9 K where they are whole degrees Fahrenheit.
    KelvinDelta reading_step = KelvinDelta::from_kelvins(0.1);
};

} // namespace lathhouse::climate
