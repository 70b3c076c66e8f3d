#pragma once

#include "core/climate/cold_seasons.h"
#include "core/climate/frost_dates.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

/// What is asked of a record.
struct FrostQuestion {
    BasePeriod base{1991, 2020};
    std::vector<Celsius> lines;
    std::vector<double> percents = standard_percents(); ///< Each within 0..100.
    std::optional<SeasonTurn> turn;                     ///< Instead of the one that the lows give.
};

/// What a record answers.
struct FrostRecord {
    std::string station;
    SeasonTurn turn;
    int counted_seasons;
    /// One for each line, in the order asked; nullopt under kFewestSeasons counted seasons.
    std::optional<std::vector<ThresholdDates>> thresholds;
};

/// Adds `model_dates` for the percents asked that are rarer than one of the counted seasons: a record has no
/// answer there. The model rests on the record's own monthly figures. Nothing is added where there are no
/// counted dates, or where the record is too thin for monthly figures.
void add_rare_dates(FrostRecord& answer, const DailyRecord& record, const FrostQuestion& question);

inline constexpr int kFewestSeasons = 10;

/// First and last nights at or below the lines, by counting: the element rule, without interpolation.
///
/// Readings and lines are compared in tenths of a degree. With N counted seasons in order of their place in
/// the season, `first` for chance p is element ceil(p N / 100), seasons without such a night after
/// everything; `last` is element N - floor(p N / 100), seasons without before everything. Where the element
/// is such a season there is no date. `free_days` takes element N - floor(p N / 100) of the lengths between
/// consecutive counted seasons (date of the first less date of the last), pairs with an end missing after
/// everything.
///
/// States: NoSeason where the mean lows swing under 2 C (no dates then); Never without any such night;
/// NoWindow where each calendar month has such a night in at least half of the counted seasons; else
/// Ordinary. nights_per_year is the share of nights at or below the line in each month, times its days.
/// Accuracy: exact counts; the sampling error is that of N seasons.
/// Source: docs/methods/records.md.
FrostRecord frost_dates_of(const DailyRecord& record, const FrostQuestion& question);
/// The same from seasons already laid out. Precondition: they are cold_seasons_of the record, base and turn.
FrostRecord frost_dates_of(const DailyRecord& record, const FrostQuestion& question, SeasonTurn turn,
                           std::span<const ColdSeason> seasons);

} // namespace lathhouse::climate
