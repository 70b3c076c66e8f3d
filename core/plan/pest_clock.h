#pragma once

#include "core/calendar/date.h"
#include "core/plants/pest.h"
#include "core/units/temperature.h"

#include <functional>
#include <optional>
#include <span>

namespace lathhouse::plan {

/// The air round a plant on one day.
struct DayWarmth {
    Celsius low;
    Celsius high;
};
/// What a date is like where the plant stands.
using WarmthOn = std::function<DayWarmth(calendar::Date)>;

/// Beyond this many days a clock counts as one that does not run.
inline constexpr int kLongestClockDays = 400;

/// The day on which the phases, one after the other, are through; the day after `from` is the first to count.
/// nullopt where they are not within kLongestClockDays.
///
/// A day's degree days are those of a sine through its low and high, with a horizontal cut at the upper
/// limit (climate::degree_days). At constant temperature they are T - base, so that the days are degree days /
/// (T - base): the form in which such studies give their figures.
std::optional<calendar::Date> clock_through(std::span<const plants::PestClock* const> phases,
                                            Celsius upper_limit, calendar::Date from,
                                            const WarmthOn& warmth);

/// Whether any phase gains degree days on such a day.
bool clock_runs(std::span<const plants::PestClock* const> phases, Celsius upper_limit,
                const DayWarmth& day);

/// Days from one treatment or inspection to the next: the whole days within one stage that a treatment
/// reaches (plants::PestStage::Crawler), at least 3 and at most the pest's gap_days.
/// The least is common practice: sprays closer than that burn leaves.
int days_between_treatments(const plants::Pest& pest, calendar::Date from, const WarmthOn& warmth);

} // namespace lathhouse::plan
