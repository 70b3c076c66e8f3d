#pragma once

#include "core/climate/leave_one_out.h"

#include <string>

namespace lathhouse::climate {

/// A picture (SVG) of the errors at stations left out: longitude to the right, latitude up, a dot a station,
/// larger and darker where the mean low is farther off. Classes are told apart by size as well as by colour.
std::string error_map_svg(const LeaveOneOut& result);

} // namespace lathhouse::climate
