#pragma once

#include "core/calendar/day_of_year.h"
#include "core/climate/season_turn.h"
#include "core/units/probability.h"
#include "core/units/temperature.h"

#include <map>
#include <optional>
#include <vector>

namespace lathhouse::climate {

enum class ThresholdState {
    Ordinary, ///< There are dates (some may not exist).
    Never,    ///< No night at or below the line in any season.
    NoWindow, ///< Nights at or below the line in every month: no safe window.
    NoSeason, ///< The mean low swings less than 2 C in the year: no dates, only chances.
};

/// Dates between which the true date of a chance lies, as far as a count of seasons can say.
struct DateInterval {
    /// nullopt where the count sets no limit on that side: too few seasons, or seasons without such a night.
    std::optional<calendar::DayOfYear> from;
    std::optional<calendar::DayOfYear> to;
    Probability coverage; ///< Chance that such an interval holds the true date.
};

/// One end of the cold season for one line.
struct EndDates {
    std::optional<int> years;  ///< Counted seasons; nullopt from the model.
    Probability share_without; ///< Share of seasons without any such night.
    /// By percent chance. For the last night: chance of such a night after the date and before the turn. For
    /// the first: chance of one on or before the date after the turn. nullopt where no such date exists.
    std::map<double, std::optional<calendar::DayOfYear>> dates;
    /// By percent chance, at kSamplingLevel or better; empty from the model.
    std::map<double, DateInterval> intervals{};
    /// From a record: what the model says where the chance is rarer than one of the counted seasons.
    std::map<double, std::optional<calendar::DayOfYear>> model_dates{};
};

/// What is known of one line at one place; the same form from records and from the model.
struct ThresholdDates {
    Celsius threshold;
    ThresholdState state;
    double nights_per_year;
    EndDates last;
    EndDates first;
    /// By percent chance p: the number of days that the nights from a season's last to the next one's first
    /// exceed with chance p; pairs with an end missing count as longer than all (nullopt).
    std::map<double, std::optional<int>> free_days;
};

/// The percent chances that are always answered: 10, 20, ... 90.
std::vector<double> standard_percents();

/// The element rule: which of N sorted seasons (the smallest place 1; seasons without such a night first for
/// `last` and at the end for `first`) gives the date for a percent chance. 0 or N + 1 where there is none.
int element_of_last(double percent, int seasons);
int element_of_first(double percent, int seasons);

/// For counts of which only some dates are kept (the station table keeps 10, 50 and 90 percent): adds the
/// other standard percents and the sampling intervals, both read between the kept dates, straight in days
/// against the normal quantile of the chance. What lies outside the kept percents, or beside a date that does
/// not exist, stays nullopt. What is there already stays: an own record's intervals are counted from all its seasons.
/// Nothing is done where the seasons are not counted.
void complete_counted(ThresholdDates& dates, const SeasonTurn& turn);

} // namespace lathhouse::climate
