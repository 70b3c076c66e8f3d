#pragma once

#include "core/photo/picture.h"

namespace lathhouse::photo {

/// Each pixel is the mean of the area it covers; the picture itself where the size is already that.
/// Precondition: both sides at least 1; larger sides repeat pixels.
Picture resized(const Picture& picture, int width, int height);

/// As large as fits into a square of that side, never enlarged.
Picture fitted_into(Picture picture, int longest_side);

} // namespace lathhouse::photo
