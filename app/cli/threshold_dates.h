#pragma once

#include "app/cli/commands.h"
#include "core/climate/frost_dates.h"

namespace lathhouse::cli {

/// The `T` of the command line's description: one line's dates as JSON.
Json json_of(const climate::ThresholdDates& dates);
/// The same as a small table for people; ends with a line end.
std::string text_of(const climate::ThresholdDates& dates, words::UnitSystem units);
/// "ordinary", "never", "no_window", "no_season".
std::string_view name_of(climate::ThresholdState state);
/// A percent as a JSON key: "10", "2.5".
std::string percent_key(double percent);

} // namespace lathhouse::cli
