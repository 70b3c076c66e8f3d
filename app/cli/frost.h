#pragma once

#include "app/cli/commands.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::cli {

/// Options of the command `frost`, for all of its forms.
struct FrostOptions {
    std::vector<std::string> records;
    std::string base = "1991-2020";
    std::vector<double> thresholds;
    std::vector<double> risks;
    std::string turn;
    std::string stations;
    PlaceOptions place;
    std::string monthly;
    bool from_monthly = false;
};

/// The lines asked for, without any 2.2, 0 and -2.2 C. Errors: OutOfRange outside -90..60.
Result<std::vector<Celsius>> lines_of(const FrostOptions& options);

/// The form `--records`.
Result<Answer> frost_from_records(const Globals& globals, const FrostOptions& options);

/// The form `--monthly`: from monthly figures alone.
Result<Answer> frost_from_monthly(const Globals& globals, const FrostOptions& options);

/// The form `--at`: counted where a station stands there, else by the model.
Result<Answer> frost_of_place(const Globals& globals, const FrostOptions& options);

} // namespace lathhouse::cli
