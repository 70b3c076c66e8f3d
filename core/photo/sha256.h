#pragma once

#include "core/photo/exif.h"

#include <string>

namespace lathhouse::photo {

/// 64 lower-case hexadecimal digits. Source: FIPS 180-4, by OpenSSL.
std::string sha256_of(ByteView bytes);

} // namespace lathhouse::photo
