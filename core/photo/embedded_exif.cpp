#include "core/photo/decoders.h"
#include "core/photo/segments.h"

#include <algorithm>

namespace lathhouse::photo {
namespace {

constexpr std::string_view kExifPrefix{"Exif\0\0", 6};

bool begins_with(ByteView bytes, std::string_view text)
{
    return bytes.size() >= text.size() &&
           std::equal(text.begin(), text.end(), bytes.begin(),
                      [](char letter, std::uint8_t byte) { return static_cast<std::uint8_t>(letter) == byte; });
}

} // namespace

ByteView embedded_exif(ByteView file, PhotoFormat format)
{
    for (const auto& segment : segments_of(file, format)) {
        if (format == PhotoFormat::Jpeg && segment.kind == "APP1" && begins_with(segment.content, kExifPrefix)) {
            return segment.content.subspan(kExifPrefix.size());
        }
        if (format == PhotoFormat::Png && segment.kind == "eXIf") {
            return segment.content;
        }
        if (format == PhotoFormat::WebP && segment.kind == "EXIF") {
            // Some writers put the prefix of JPEG before it.
            return begins_with(segment.content, kExifPrefix) ? segment.content.subspan(kExifPrefix.size())
                                                             : segment.content;
        }
    }
    return {};
}

} // namespace lathhouse::photo
