#pragma once

#include "app/models/home_facts.h"
#include "core/climate/place_climate.h"

#include <optional>
#include <vector>

namespace lathhouse::models {

/// A year of nights from January to December, for a small picture.
struct PlaceNightsYear {
    struct Day {
        double at;                   ///< Place in the year, 0..1.
        double cold, middle, warm;   ///< Night lows in the shown unit: 1 in 20 colder, half, 1 in 20 warmer.
        double day_share;            ///< Of the day from rise to set, 0..1.
    };
    std::vector<Day> days;
    double freezing = 0.0; ///< In the shown unit.
    /// Places in the year; nullopt where there is no such date.
    std::optional<double> last_half, last_tenth, first_tenth, first_half;
    QString words; ///< Beside the frost line: "no frost, most years".
};

/// What a place gives, as First start says it while one types; values only.
struct PlaceGives {
    PlaceMap map;
    PlaceNightsYear nights;
    std::vector<SheetRows::Row> figures; ///< Label, value, sentence.
    QString stations; ///< "4 stations, 11 to 52 km away"
    QString base;
    QString credits;
    QString warning; ///< May be empty.
    QString spoken;  ///< The picture of the nights in one sentence.
};

/// today: the year in which dates are named.
PlaceGives place_gives(const climate::PlaceClimate& climate, const YearWords& words, calendar::Date today);

} // namespace lathhouse::models
