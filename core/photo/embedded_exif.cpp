#include "core/photo/begins_with.h"
#include "core/photo/decoders.h"
#include "core/photo/segments.h"

namespace lathhouse::photo {
namespace {

constexpr std::string_view kExifPrefix{"Exif\0\0", 6};

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
