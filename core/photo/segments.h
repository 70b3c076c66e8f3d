#pragma once

#include "core/photo/photo_file.h"

#include <vector>

// How JPEG, PNG and WebP files are put together; of use inside core/photo only.

namespace lathhouse::photo {

struct Segment {
    std::string kind;  ///< JPEG: "APP0" to "APP15", "COM", "SCAN" (from the first scan to the file's end), else "". PNG and WebP: the chunk's four letters.
    ByteView whole;    ///< With its own head (and checksum or padding).
    ByteView content;
};

/// The segments in their order, as far as the file is sound; pixels are not looked at. The signature at the file's
/// start is not among them. Sources: ITU-T T.81, annex B; PNG (W3C, second edition), 5.3; WebP container
/// specification (RIFF).
std::vector<Segment> segments_of(ByteView file, PhotoFormat format);

} // namespace lathhouse::photo
