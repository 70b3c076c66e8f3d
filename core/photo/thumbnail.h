#pragma once

#include "core/photo/photo_file.h"

namespace lathhouse::photo {

inline constexpr int kThumbnailSide = 512; ///< Pixels of the longer side at most.

/// A small upright JPEG without any EXIF, and what is known of the photo. Reads all pixels, so that a file that breaks
/// off is found out. Errors: as read_photo.
struct Thumbnail {
    PhotoFacts facts;
    Bytes jpeg;
};
Result<Thumbnail> thumbnail_of(ByteView file, const std::string& name, const Limits& limits = {});

} // namespace lathhouse::photo
