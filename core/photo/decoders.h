#pragma once

#include "core/photo/photo_file.h"

// The libraries that unpack pixels; of use inside core/photo only. Each error is one clause without the file's name.

namespace lathhouse::photo {

struct Size {
    int width;
    int height;
};

/// Errors: Malformed. The size as stored, before any turning.
Result<Size> jpeg_size(ByteView file);
Result<Size> png_size(ByteView file);
Result<Size> webp_size(ByteView file);

/// Errors: Malformed.
Result<Picture> decode_jpeg(ByteView file, std::optional<int> longest_side);
Result<Picture> decode_png(ByteView file);
Result<Picture> decode_webp(ByteView file);

/// Size once upright. Errors: Malformed, Unavailable.
Result<Size> heic_size(ByteView file);
Result<Picture> decode_heic(ByteView file);
Bytes heic_exif(ByteView file); ///< From "II" or "MM" on; empty where there is none.

/// Where the EXIF block (from "II" or "MM" on) lies in a JPEG, PNG or WebP file; empty where there is none.
ByteView embedded_exif(ByteView file, PhotoFormat format);

/// As EXIF numbers the eight ways a camera can be held. Precondition: 1 to 8.
Picture turned_upright(Picture picture, int orientation);

} // namespace lathhouse::photo
