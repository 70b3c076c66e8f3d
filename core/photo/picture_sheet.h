#pragma once

#include "core/photo/picture.h"

#include <span>
#include <string>

namespace lathhouse::photo {

/// A picture with a short caption under it: digits, '-', '+', '/', ':', blanks and the letter d; other letters are left out.
struct Captioned {
    Picture picture;
    std::string caption;
};

/// Pictures of one height beside each other on white, in rows of up to `columns`, with their captions.
/// Precondition: at least one picture, height at least 32, columns at least 1.
Picture picture_sheet(std::span<const Captioned> pictures, int height, int columns);

} // namespace lathhouse::photo
