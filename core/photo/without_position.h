#pragma once

#include "core/photo/photo_file.h"

namespace lathhouse::photo {

/// The same file without where it was taken: only what pictures need stays (pixels to the bit, colour profile) and a
/// new EXIF block with date, zone, orientation and camera. All else goes, since cameras hide places in more than one
/// part (EXIF, XMP, captions, makers' own blocks, pictures appended behind the end). In HEIC, whose parts point at
/// each other by their place, these parts are written over instead, at the same length.
/// Errors: as read_facts; Unavailable where a HEIC file keeps its parts so that they cannot be found.
Result<Bytes> without_position(ByteView file, const std::string& name, const Limits& limits = {});

} // namespace lathhouse::photo
