#include "tests/exchange/sample_zip.h"

#include <zlib.h>

#include <cstdint>
#include <fstream>
#include <stdexcept>

namespace lathhouse::exchange {
namespace {

/// Numbers of a zip stand with their lowest byte first.
std::string number(std::uint32_t value, int bytes)
{
    std::string text;
    for (int index = 0; index < bytes; ++index) {
        text += static_cast<char>(value >> (8 * index) & 0xFFU);
    }
    return text;
}

std::string squeezed(const std::string& content)
{
    z_stream stream{};
    if (deflateInit2(&stream, 9, Z_DEFLATED, -MAX_WBITS, 9, Z_DEFAULT_STRATEGY) != Z_OK) {
        throw std::runtime_error{"zlib"};
    }
    std::string result(deflateBound(&stream, content.size()), '\0');
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(content.data()));
    stream.avail_in = static_cast<uInt>(content.size());
    stream.next_out = reinterpret_cast<Bytef*>(result.data());
    stream.avail_out = static_cast<uInt>(result.size());
    deflate(&stream, Z_FINISH);
    result.resize(stream.total_out);
    deflateEnd(&stream);
    return result;
}

} // namespace

// Made by hand after APPNOTE.TXT 6.3.9, sections 4.3.7, 4.3.12 and 4.3.16, since libraries refuse to write some of it.
void write_sample_zip(const std::filesystem::path& archive, const std::vector<SampleEntry>& entries)
{
    std::string body;
    std::string directory;
    for (const auto& [name, content, mode, method, flags, said_bytes] : entries) {
        const auto packed = squeezed(content);
        const auto sum = static_cast<std::uint32_t>(
            crc32(0, reinterpret_cast<const Bytef*>(content.data()), static_cast<uInt>(content.size())));
        const std::string common = number(20, 2) + number(flags, 2) + number(method, 2) + number(0, 2) + number(0x21, 2) +
                                   number(sum, 4) + number(static_cast<std::uint32_t>(packed.size()), 4) +
                                   number(said_bytes < 0 ? static_cast<std::uint32_t>(content.size()) : static_cast<std::uint32_t>(said_bytes), 4) +
                                   number(static_cast<std::uint32_t>(name.size()), 2) + number(0, 2);
        directory += "PK\x01\x02" + number(0x0314, 2) + common + number(0, 2) + number(0, 2) + number(0, 2) +
                     number(mode << 16U, 4) + number(static_cast<std::uint32_t>(body.size()), 4) + name;
        body += "PK\x03\x04" + common + name + packed;
    }
    const auto count = number(static_cast<std::uint32_t>(entries.size()), 2);
    const auto end = "PK\x05\x06" + number(0, 4) + count + count + number(static_cast<std::uint32_t>(directory.size()), 4) +
                     number(static_cast<std::uint32_t>(body.size()), 4) + number(0, 2);
    std::ofstream{archive, std::ios::binary | std::ios::trunc} << body << directory << end;
}

} // namespace lathhouse::exchange
