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

/// One end of the cold season for one line.
struct EndDates {
    std::optional<int> years;  ///< Counted seasons; nullopt from the model.
    Probability share_without; ///< Share of seasons without any such night.
    /// By percent chance. For the last night: chance of such a night after the date and before the turn. For
    /// the first: chance of one on or before the date after the turn. nullopt where no such date exists.
    std::map<double, std::optional<calendar::DayOfYear>> dates;
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

} // namespace lathhouse::climate
