#pragma once

#include "core/calendar/day_of_year.h"

#include <cstddef>

// Of use inside core/climate only: how long its tables by day and by month are.

namespace lathhouse::climate {

inline constexpr std::size_t kDays = calendar::DayOfYear::kCount;
inline constexpr std::size_t kMonths = 12;

} // namespace lathhouse::climate
