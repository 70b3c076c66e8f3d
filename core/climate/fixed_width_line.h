#pragma once

#include "core/climate/daily_records.h"

#include <optional>
#include <string>
#include <string_view>

/// One line of GHCN-Daily's fixed-width form: a month of one element of one station. `line` has kLength characters.
/// Source: GHCN-Daily readme, NOAA NCEI, section III.
namespace lathhouse::climate::fixed_width {

inline constexpr std::size_t kLength = 269; ///< Without its line end.
inline constexpr std::size_t kHeadLength = 21;

struct Head {
    std::string_view station;
    int year;
    int month;
    std::string_view element;
};
/// nullopt where the first kHeadLength characters are no head.
std::optional<Head> head_of(const char* line);

/// Fills the readings of a month with so many days. Returns whether all values are well formed and within the month;
/// where they are not the readings are of no use.
bool read_values(const char* line, int days, std::array<DailyReading, 31>& readings);

/// What is wrong with a line that read_values refused.
Said fault_of_values(const char* line, int days);

} // namespace lathhouse::climate::fixed_width
