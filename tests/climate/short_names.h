#pragma once

#include "core/calendar/day_of_year.h"
#include "core/units/temperature.h"

// What many tests of this room write.

namespace lathhouse::climate {

inline calendar::DayOfYear day(int month, int of_month)
{
    return calendar::DayOfYear::from_month_day(month, of_month).value();
}

inline constexpr KelvinDelta kelvins(double value)
{
    return KelvinDelta::from_kelvins(value);
}

} // namespace lathhouse::climate
