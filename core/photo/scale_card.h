#pragma once

#include <string>

namespace lathhouse::photo {

/// A card to print and stand beside a plant, as SVG true to the millimetre at 100 %: a ruler of 100 mm with a target at
/// each end, a neutral grey patch for the white balance, and a line that says how to check the print.
std::string scale_card_svg();

} // namespace lathhouse::photo
