#pragma once

#include "app/cli/commands.h"
#include "core/climate/frost_dates.h"
#include "core/climate/night_model.h"

namespace lathhouse::cli {

/// The `T` of the command line's description: one line's dates as JSON.
Json json_of(const climate::ThresholdDates& dates);
/// The same as a small table for people; ends with a line end.
std::string text_of(const climate::ThresholdDates& dates, words::UnitSystem units);
/// `{"mean_c","p10_c","p50_c","p90_c"}`: chance p of a season's lowest night at or below.
Json json_of(const climate::LowestNight& lowest);
/// One line, with its end.
std::string text_of(const climate::LowestNight& lowest, words::UnitSystem units);
/// "ordinary", "never", "no_window", "no_season".
std::string_view name_of(climate::ThresholdState state);
/// A percent as a JSON key: "10", "2.5".
std::string percent_key(double percent);

} // namespace lathhouse::cli
