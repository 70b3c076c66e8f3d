#pragma once

#include "core/calendar/date.h"
#include "core/climate/frost_dates.h"
#include "core/climate/place_nights.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::climate {

/// Whether dates that were counted stand before those of the model.
enum class CountedDates { ComeFirst, AreLeftOut };

/// The dates of lines at a place, and what they rest on.
struct LineDates {
    std::vector<ThresholdDates> lines; ///< One for each line asked for.
    bool counted = false; ///< At a station that stands there or in the household's own record; else the model's.
    bool moved = false;   ///< The model's, moved to dates that were counted near or in the own record.
    double error_days;    ///< How far a date may be wrong at the middle chances.
};

/// A count answers for its own chances alone: a further one needs the model, but in the household's own record, which is
/// counted anew. Precondition: at least one line.
LineDates dates_of_lines(const PlaceClimate& place, std::span<const Celsius> lines,
                         std::span<const double> further_percents = {}, CountedDates counted = CountedDates::ComeFirst);

/// The dates of a line at a spot whose nights are warmer or colder than the open air by that; nobody counted there, so they
/// are the model's, moved as those of the open air's line.
LineDates dates_at_spot(const PlaceClimate& place, Celsius line, NightOffset offset,
                        std::span<const double> further_percents = {});

/// Nights at or below a line among those between two dates, and round them.
struct NightsBetween {
    int nights;      ///< Among which.
    Probability any; ///< At least one of them.
    double expected; ///< How many of them, on average.
    std::optional<Probability> before; ///< One before them since the turn of the season; nullopt without a cold season.
    std::optional<Probability> after;  ///< One after them up to the next turn.
};

/// The last night is at most so long after the first.
inline constexpr int kMostDaysBetween = 366;

/// from, to: the first and the last night, named by their mornings. Errors: WrongUsage where they are not in order or more
/// than a year apart.
Result<NightsBetween> nights_between(const PlaceNights& nights, calendar::Date from, calendar::Date to, Celsius line,
                                     NightOffset offset = {});

} // namespace lathhouse::climate
