#pragma once

#include "core/climate/daily_records.h"
#include "core/climate/season_turn.h"
#include "core/climate/station.h"

#include <array>
#include <cstdint>
#include <vector>

namespace lathhouse::climate {

/// Days `first_day`..`last_day` (both included, possibly none) of a calendar month that lie in a season.
struct SeasonPiece {
    int year;
    int month;
    int first_day;
    int last_day;
    const DailyMonth* readings; ///< nullptr where the record has none.
    std::uint32_t known = 0;    ///< Bits 0..30: days of the piece that have a low.
    int lowest_tenths = 0;      ///< Of the known lows; 0 where there are none.
    int highest_tenths = 0;     ///< The same for the highest low.
};

/// A cold season of a record: from the day after the turn to the next turn.
struct ColdSeason {
    int first_year; ///< Calendar year of the turn before it.
    bool counts;    ///< Each of its twelve months is usable.
    std::vector<SeasonPiece> pieces;
};

/// The most lows that a usable month may lack, and the run of missing days that spoils it.
/// Source: WMO-No. 1203 (2017), guidelines on the calculation of climate normals.
inline constexpr int kMostMissingDays = 10;
inline constexpr int kSpoilingRun = 5;

/// All cold seasons wholly inside the base period, counting or not, in order. A month is usable with at most
/// kMostMissingDays missing lows and never kSpoilingRun or more in a row, counted within the month. Where the
/// turn is not a month's end, the two parts of its month are counted together, runs within each part.
std::vector<ColdSeason> cold_seasons_of(const DailyRecord& record, BasePeriod base, SeasonTurn turn);

/// The turn by the record's mean lows in the base period; 31 July where it has none of the months that
/// decide.
SeasonTurn turn_of(const DailyRecord& record, BasePeriod base);

/// Mean daily low of each month over the base period; nullopt for a month without readings.
Monthly<std::optional<Celsius>> mean_lows_of(const DailyRecord& record, BasePeriod base);

} // namespace lathhouse::climate
