#pragma once

#include "app/cli/commands.h"
#include "core/climate/place_climate.h"

namespace lathhouse::cli {

/// Climate of the place that `--at` and `--elevation` name, else of the household's. The household's own
/// record answers where it was kept there (within 5 km and 100 m of height); else the shipped stations do.
/// Errors: WrongUsage where neither a place nor a household is named.
Result<climate::PlaceClimate> climate_of(const Globals& globals, const PlaceOptions& options);

/// A spot's offset as options: `--offset` and `--offset-sd`.
struct OffsetOptions {
    double mean_kelvins = 0.0;
    double spread_kelvins = 0.0;
};
void add_offset_options(CLI::App& command, OffsetOptions& options);
/// Errors: OutOfRange for a negative spread and for what no spot does (over 30 K).
Result<climate::NightOffset> offset_of(const OffsetOptions& options);

/// The same for JSON: base, trend, stations, distance, expected error, credits and what a chance is.
Json attribution_of(const climate::PlaceClimate& place);
/// "3 stations, the nearest 12 km away, 1991-2018; a month's mean low is right to about 0.8 K", the trend
/// where there is one, that chances are no promises, and who publishes the figures; two or three lines. Says
/// so where the household's own record answers.
std::string sources_in_words(const climate::PlaceClimate& place, words::UnitSystem units);

} // namespace lathhouse::cli
