#pragma once

#include "core/calendar/date.h"
#include "core/climate/daily_records.h"
#include "core/climate/monthly_figures.h"
#include "core/climate/place_climate.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::climate {

enum class DoubtKind {
    Impossible,   ///< Beyond what was ever read on land (-89.2 and 56.7 C; 1825 mm): taken as a gap.
    LowAboveHigh, ///< The day's low is above its high: both taken as gaps.
    Nought,       ///< Low and high are both 0 C, as a failed reading is often written: both taken as gaps.
    Stuck,        ///< Twenty or more equal lows one after another: shown, kept.
    FarOff,       ///< Six standard deviations from the mean of its calendar month: shown, kept.
};

/// Days of a record that look wrong.
struct Doubt {
    DoubtKind kind;
    calendar::Date from;
    calendar::Date to; ///< The same day but for Stuck.
    DailyReading low;
    DailyReading high;
};

/// A record whose impossible values have become gaps, and all that was found.
struct CheckedRecord {
    DailyRecord record;
    std::vector<Doubt> doubts; ///< By kind, then in order of time.
};

/// Source: the checks of the same kind that GHCN-Daily applies (Durre, Menne, Gleason, Houston, Vose, J.
/// Appl. Meteor. Climatol. 49 (2010) 1615-1633; NOAA NCEI, "Quality control": bounds by world extremes,
/// nought, streaks of 15 to 20, six standard deviations, internal consistency). The outlier check here takes
/// the mean and spread of the calendar month rather than of 15 days, so it is the laxer one.
CheckedRecord check_record(const DailyRecord& record);

/// Days without a low, one after another.
struct Gap {
    calendar::Date from;
    calendar::Date to;
    int days() const { return calendar::days_between(from, to) + 1; }
};

/// What a record holds.
struct RecordSummary {
    calendar::Date first; ///< First and last day with a low.
    calendar::Date last;
    int days; ///< From first to last.
    int days_with_low;
    int days_with_high;
    std::vector<Gap> gaps;          ///< Those of kSpoilingRun days and more, in order of time.
    std::vector<int> years_without; ///< Calendar years between the first and the last without any low.
    int seasons;                    ///< Whole cold seasons.
    int counted_seasons;            ///< Of these, those that the rule of cold_seasons.h counts.
    Probability completeness() const
    {
        return Probability::clamped(static_cast<double>(days_with_low) / days);
    }
};
/// nullopt for a record without any low.
std::optional<RecordSummary> summary_of(const DailyRecord& record);

/// Mean low and high of a month in the record (all its readings) and how far they lie from the table's.
struct MonthCompared {
    std::optional<Celsius> low;
    std::optional<Celsius> high;
    std::optional<KelvinDelta> low_difference; ///< Record less table.
    std::optional<KelvinDelta> high_difference;
};

enum class Verdict {
    Plausible,
    Doubtful,    ///< Differs more than the table's own error explains.
    Implausible, ///< Wrong unit, place, half of the year, or thermometer.
};

struct Comparison {
    Monthly<MonthCompared> months;
    Verdict verdict;
    std::vector<Said> reasons; ///< Sentences for people without a full stop; empty where plausible.
};

/// The record, as it was read, against the table's figures for its place.
///
/// Implausible: in another unit the record would lie near the table, where as it stands it is more than 8 K
/// away on average; a tenth of its values impossible; the mean of the year's lows more than 7 K or of its
/// highs more than 9 K away (the limits of station_checks.h); or its course through the year runs against the
/// table's. Doubtful: a month's mean more than 3 K, and more than three times the table's expected error,
/// away. The limits are our own, set so that a frost hollow or a warm wall stays within them.
Comparison compare_with_table(const DailyRecord& as_read, const PlaceClimate& table);

} // namespace lathhouse::climate
