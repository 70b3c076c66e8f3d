#pragma once

#include "app/cli/commands.h"

#include <optional>

namespace lathhouse::cli {

/// A meter's reading over some hours as a day's light, or the other way round.
struct ConversionOptions {
    std::optional<double> foot_candles;
    std::optional<double> moles;
    double hours = 8.0;
};
/// Declares `--foot-candles`, `--mol` and `--hours`.
void add_conversion_options(CLI::App& command, ConversionOptions& options);
bool asks_for_conversion(const ConversionOptions& options);
/// Errors: WrongUsage where both are given, OutOfRange for negative light or hours not within 0 and 24.
Result<Answer> converted(const ConversionOptions& options);

} // namespace lathhouse::cli
