#pragma once

#include "app/cli/commands.h"
#include "core/home/household.h"

#include <optional>
#include <string>

namespace lathhouse::cli {

/// What there is to say of a household's own record.
struct RecordReport {
    Answer answer;
    std::optional<std::string> implausible; ///< Why it cannot be this place's, without a full stop.
};

/// The record summarised, checked, and month by month against the shipped table's figures for where it was
/// kept. A household without one gets the shipped stations in use instead. Errors: those of the table;
/// NoStation only where there is no record either.
Result<RecordReport> report_of(const home::Household& household, words::UnitSystem units);

} // namespace lathhouse::cli
