#pragma once

#include <string>

namespace lathhouse::words {

/// Lamps, water and heat; stands wherever lamps are reckoned.
std::string lamp_caution();
/// For a lamp that would burn longer than kLongestLampDay.
std::string lamp_burns_too_long();

} // namespace lathhouse::words
