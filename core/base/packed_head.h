#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace lathhouse {

/// What tells a packed table from other files.
struct PackedKind {
    std::string_view magic; ///< Its first bytes.
    std::uint32_t version;  ///< Of its form.
};

/// A packed table: the magic, the version, CRC-32 and length of the body, then the body; numbers little-endian.
std::string with_packed_head(PackedKind kind, std::string_view body);

/// The body of such bytes, in which it lies. Errors: `damaged` where they are cut, changed, of another kind or of an older
/// version (tables are packed anew with every build); TooNew, with `name`, for a newer one.
Result<std::string_view> packed_body(PackedKind kind, std::string_view bytes, std::string_view name, const Error& damaged);

} // namespace lathhouse
