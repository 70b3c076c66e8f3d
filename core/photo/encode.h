#pragma once

#include "core/base/result.h"
#include "core/photo/exif.h"
#include "core/photo/picture.h"

#include <filesystem>

namespace lathhouse::photo {

/// quality: 1 to 100. Errors: Unavailable (memory, sides over 65,500).
Result<Bytes> encode_jpeg(const Picture& picture, int quality = 90);
/// Errors: Unavailable (memory).
Result<Bytes> encode_png(const Picture& picture);
/// By the file's ending, .jpg, .jpeg or .png, written whole or not at all.
/// Errors: WrongUsage for another ending, Unwritable.
Result<void> write_picture(const std::filesystem::path& file, const Picture& picture);

/// The pixels' file with an EXIF block (from "II" on) put behind its signature.
Bytes with_exif(ByteView jpeg, ByteView exif);

} // namespace lathhouse::photo
