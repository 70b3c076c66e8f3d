#pragma once

#include "core/base/csv.h"
#include "core/base/result.h"
#include "core/calendar/date.h"

#include <optional>
#include <string_view>
#include <vector>

namespace lathhouse::growth {

/// What a series of measurements is of; it decides the scale on which growth is a straight line, and which way
/// is up.
enum class SeriesKind {
    Size,  ///< Height, length, area of green: logarithm; more is better.
    Count, ///< Leaves, shoots: logarithm of one more; more is better.
    Share, ///< Green cover, 0..1: logit; more is better.
    Yellow ///< Yellow or brown share, 0..1: logit; less is better.
};
std::string_view to_string(SeriesKind kind); ///< "size", "count", "share", "yellow".
std::optional<SeriesKind> series_kind_of(std::string_view word);

/// One reading of a series: the mean of what was measured on that date.
struct SeriesReading {
    calendar::Date date;
    double value;
    int repeats = 1; ///< How many measurements the mean is of.
    friend bool operator==(const SeriesReading&, const SeriesReading&) = default;
};

/// One measurement as it was taken.
struct Measured {
    calendar::Date date;
    double value;
};

/// What is wrong with a value of that kind, as the end of a sentence; nullopt where it may stand.
std::optional<std::string_view> fault_of(SeriesKind kind, double value);

/// Reads the columns `date` (YYYY-MM-DD) and `value` in any order of lines; other columns are passed over.
/// Errors: Malformed, naming the line and what to do, for a missing column or cell, for what is no date or
/// number, for sizes of 0 and less, negative counts and shares outside 0..1.
Result<std::vector<Measured>> measured_from(const CsvTable& table, SeriesKind kind);

/// By date; measurements of one date are repeats and become their mean.
std::vector<SeriesReading> readings_of(std::vector<Measured> measured);

/// The value on the scale of its kind.
///
/// Size ln v; count ln(1 + n); share logit p with p kept within 0.02..0.98; yellow logit p within 0.01..0.98.
double transformed(SeriesKind kind, double value);
/// The value of a transformed one.
double back_transformed(SeriesKind kind, double scaled);

/// Standard deviation that one reading of the kind usually has on its scale: 0.02 sizes (a ruler of 1-3 %),
/// 0.03 counts, 0.1 shares. Common practice, no source.
double usual_spread(SeriesKind kind);
/// Spread of a reading of that value as a multiple of the usual one.
///
/// Size 1. Count sqrt(1 + (0.5 / ((1 + n) 0.03))^2), from counting whole leaves. Share 1 / (4 p (1 - p)), the
/// slope of the logit scaled to 1 at a half. Yellow 0.5 + 0.12 / (p (1 - p)) with p within 0.03..0.95.
double spread_ratio(SeriesKind kind, double value);

} // namespace lathhouse::growth
