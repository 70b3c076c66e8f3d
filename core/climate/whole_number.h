#pragma once

#include <cmath>
#include <string>

// Of use inside core/climate only: numbers in its remarks.

namespace lathhouse::climate {

/// The nearest whole number as text.
inline std::string whole(double number)
{
    return std::to_string(std::lround(number));
}

} // namespace lathhouse::climate
