#include "core/base/packed_head.h"

#include "core/base/packed.h"

#include <boost/crc.hpp>

namespace lathhouse {
namespace {

std::uint32_t checksum(std::string_view bytes)
{
    boost::crc_32_type crc;
    crc.process_bytes(bytes.data(), bytes.size());
    return crc.checksum();
}

} // namespace

std::string with_packed_head(PackedKind kind, std::string_view body)
{
    Packer head;
    head.integer(kind.version);
    head.integer(checksum(body));
    head.integer(static_cast<std::uint64_t>(body.size()));
    std::string bytes{kind.magic};
    bytes += head.bytes();
    bytes += body;
    return bytes;
}

Result<std::string_view> packed_body(PackedKind kind, std::string_view bytes, std::string_view name, const Error& damaged)
{
    if (!bytes.starts_with(kind.magic)) {
        return damaged;
    }
    Unpacker head{bytes.substr(kind.magic.size())};
    const auto version = head.integer<std::uint32_t>();
    const auto expected = head.integer<std::uint32_t>();
    const auto size = head.integer<std::uint64_t>();
    if (head.good() && version > kind.version) {
        return Error{ErrorCode::TooNew, said("%1 was packed for a newer version of this program", name)};
    }
    const auto body = bytes.substr(bytes.size() - head.left());
    if (!head.good() || version != kind.version || body.size() != size || checksum(body) != expected) {
        return damaged;
    }
    return body;
}

} // namespace lathhouse
