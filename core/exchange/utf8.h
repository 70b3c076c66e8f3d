#pragma once

#include <cstddef>
#include <string_view>

namespace lathhouse::exchange {

/// Length of the UTF-8 sequence that begins there; 0 where it is none. Overlong forms and surrogates are none.
/// Precondition: at < text.size(). Source: RFC 3629, section 4.
std::size_t sequence_at(std::string_view text, std::size_t at);

/// Whether the whole text is UTF-8; an empty one is.
bool is_utf8(std::string_view text);

} // namespace lathhouse::exchange
