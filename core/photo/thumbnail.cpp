#include "core/photo/thumbnail.h"

#include "core/photo/encode.h"

namespace lathhouse::photo {

Result<Thumbnail> thumbnail_of(ByteView file, const std::string& name, const Limits& limits)
{
    constexpr int kQuality = 82;
    const auto photo = read_photo(file, name, kThumbnailSide, limits);
    if (!photo) {
        return photo.error();
    }
    auto jpeg = encode_jpeg(photo->picture, kQuality);
    if (!jpeg) {
        return jpeg.error();
    }
    return Thumbnail{photo->facts, *std::move(jpeg)};
}

} // namespace lathhouse::photo
