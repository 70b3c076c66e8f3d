#pragma once

#include "core/journal/household_check.h"

#include <string>

namespace lathhouse::words {

/// What a look through the household found, as a statement without a full stop: "A photo is missing".
std::string what_it_is(journal::FindingKind kind);

/// What helps, without a full stop; names commands where one does.
std::string what_to_do(journal::FindingKind kind);

} // namespace lathhouse::words
