#pragma once

#include "core/base/result.h"

#include <string>

namespace lathhouse::words {

/// What an error says, to the reader: in their language and with their decimal mark; where nothing is known of its sentence
/// in English as it stands. What the core says for the command line is said for the window.
std::string refusal(const Error& error);
std::string refusal(const Said& said);

} // namespace lathhouse::words
