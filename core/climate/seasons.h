#pragma once

#include "core/climate/monthly_figures.h"
#include "core/units/length.h"

#include <optional>
#include <string>

namespace lathhouse::climate {

/// What the year's temperatures amount to.
enum class TemperatureSeasons {
    None,       ///< The monthly means lie within 5 K (Koppen's "isothermal", the letter i): no cool season.
    CoolSeason, ///< Coldest month 18 C or more (Koppen's A): a cool and a hot season, no winter.
    Winter,     ///< Else: winter and summer.
};

/// How the rain falls.
enum class RainSeasons {
    Unknown,    ///< A month's rain is not known.
    DryAllYear, ///< Koppen's B.
    RainAllYear,
    WetAndDry, ///< Koppen's A, or no temperature seasons: months under 60 mm are dry.
    DrySummer, ///< Koppen's s.
    DryWinter, ///< Koppen's w.
};

/// The seasons of a place by published rules, so that they are named as people there know them.
struct Seasons {
    TemperatureSeasons temperature;
    KelvinDelta swing; ///< Warmest less coldest monthly mean.
    RainSeasons rain;
    std::size_t coldest_from;          ///< First month (0..11) of the three coldest in a row, by their mean.
    std::size_t warmest_from;          ///< The same for the three warmest.
    Monthly<bool> dry;                 ///< Under 60 mm; all false where rain is not known.
    std::optional<std::string> koppen; ///< nullopt where rain is not known.
};

/// Source: Koppen-Geiger as koppen.h; 5 K for isothermal and 60 mm for a dry month of the tropics are
/// Koppen's own limits.
Seasons seasons_of(const MonthlyFigures& figures, const Monthly<std::optional<Millimetres>>& rain);

} // namespace lathhouse::climate
