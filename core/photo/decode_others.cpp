#include "core/photo/decoders.h"
#include "core/photo/heif_handles.h"

#include <png.h>
#include <webp/decode.h>

#include <cstring>
#include <memory>

namespace lathhouse::photo {
namespace {

/// Laid on white, as a page shows it.
void onto_white(const std::uint8_t* rgba, std::uint8_t* rgb, std::size_t pixels)
{
    for (std::size_t i = 0; i < pixels; ++i) {
        const unsigned alpha = rgba[4 * i + 3];
        for (std::size_t channel = 0; channel < 3; ++channel) {
            rgb[3 * i + channel] =
                static_cast<std::uint8_t>((rgba[4 * i + channel] * alpha + 255 * (255 - alpha) + 127) / 255);
        }
    }
}

/// libpng's own state, freed however the caller leaves.
struct PngImage : png_image {
    PngImage() : png_image{} { version = PNG_IMAGE_VERSION; }
    PngImage(const PngImage&) = delete;
    PngImage& operator=(const PngImage&) = delete;
    ~PngImage() { png_image_free(this); }
    Error error() const { return {ErrorCode::Malformed, Said{message}}; }
};

Error error_of(const heif_error& error)
{
    const bool lacking =
        error.code == heif_error_Unsupported_feature || error.code == heif_error_Unsupported_filetype ||
        error.code == heif_error_Decoder_plugin_error;
    return {lacking ? ErrorCode::Unavailable : ErrorCode::Malformed,
            Said{error.message != nullptr ? error.message : "HEIC"}};
}

struct OpenHeif {
    HeifContext context;
    HeifHandle handle;
};

Result<OpenHeif> open_heif(ByteView file)
{
    OpenHeif open{HeifContext{heif_context_alloc()}, nullptr};
    if (const auto error = heif_context_read_from_memory_without_copy(open.context.get(), file.data(), file.size(), nullptr);
        error.code != heif_error_Ok) {
        return error_of(error);
    }
    heif_image_handle* handle = nullptr;
    if (const auto error = heif_context_get_primary_image_handle(open.context.get(), &handle);
        error.code != heif_error_Ok) {
        return error_of(error);
    }
    open.handle.reset(handle);
    return open;
}

} // namespace

Result<Size> png_size(ByteView file)
{
    PngImage image;
    if (png_image_begin_read_from_memory(&image, file.data(), file.size()) == 0) {
        return image.error();
    }
    return Size{static_cast<int>(image.width), static_cast<int>(image.height)};
}

Result<Picture> decode_png(ByteView file)
{
    PngImage image;
    if (png_image_begin_read_from_memory(&image, file.data(), file.size()) == 0) {
        return image.error();
    }
    image.flags |= PNG_IMAGE_FLAG_16BIT_sRGB; // Cameras and phones do not write linear light.
    image.format = PNG_FORMAT_RGB;
    Picture picture{static_cast<int>(image.width), static_cast<int>(image.height)};
    const png_color white{255, 255, 255};
    if (png_image_finish_read(&image, &white, picture.rgb.data(), 0, nullptr) == 0) {
        return image.error();
    }
    return picture;
}

Result<Size> webp_size(ByteView file)
{
    WebPBitstreamFeatures features;
    if (WebPGetFeatures(file.data(), file.size(), &features) != VP8_STATUS_OK) {
        return Error{ErrorCode::Malformed, said("no sound WebP header")};
    }
    if (features.has_animation != 0) {
        return Error{ErrorCode::Malformed, said("a moving picture")};
    }
    return Size{features.width, features.height};
}

Result<Picture> decode_webp(ByteView file)
{
    const auto size = webp_size(file);
    if (!size) {
        return size.error();
    }
    WebPBitstreamFeatures features;
    WebPGetFeatures(file.data(), file.size(), &features);
    Picture picture{size->width, size->height};
    const Error broken{ErrorCode::Malformed, said("its WebP data breaks off")};
    if (features.has_alpha != 0) {
        std::vector<std::uint8_t> rgba(picture.pixels() * 4);
        if (WebPDecodeRGBAInto(file.data(), file.size(), rgba.data(), rgba.size(), size->width * 4) == nullptr) {
            return broken;
        }
        onto_white(rgba.data(), picture.rgb.data(), picture.pixels());
    } else if (WebPDecodeRGBInto(file.data(), file.size(), picture.rgb.data(), picture.rgb.size(), size->width * 3) ==
               nullptr) {
        return broken;
    }
    return picture;
}

Result<Size> heic_size(ByteView file)
{
    return open_heif(file).transform([](const OpenHeif& open) {
        return Size{heif_image_handle_get_width(open.handle.get()), heif_image_handle_get_height(open.handle.get())};
    });
}

Bytes heic_exif(ByteView file)
{
    const auto open = open_heif(file);
    heif_item_id id = 0;
    if (!open || heif_image_handle_get_list_of_metadata_block_IDs(open->handle.get(), "Exif", &id, 1) != 1) {
        return {};
    }
    Bytes block(heif_image_handle_get_metadata_size(open->handle.get(), id));
    if (block.size() < 4 || heif_image_handle_get_metadata(open->handle.get(), id, block.data()).code != heif_error_Ok) {
        return {};
    }
    // Four bytes say how many more stand before the TIFF structure (ISO/IEC 23008-12, annex A.2.1).
    const std::size_t skipped = 4 + (std::size_t{block[0]} << 24 | std::size_t{block[1]} << 16 |
                                     std::size_t{block[2]} << 8 | std::size_t{block[3]});
    if (skipped >= block.size()) {
        return {};
    }
    block.erase(block.begin(), block.begin() + static_cast<std::ptrdiff_t>(skipped));
    return block;
}

Result<Picture> decode_heic(ByteView file)
{
    const auto open = open_heif(file);
    if (!open) {
        return open.error();
    }
    heif_image* decoded = nullptr;
    if (const auto error = heif_decode_image(open->handle.get(), &decoded, heif_colorspace_RGB,
                                             heif_chroma_interleaved_RGB, nullptr);
        error.code != heif_error_Ok) {
        return error_of(error);
    }
    const std::unique_ptr<heif_image, FreeHeif> image{decoded};
    int stride = 0;
    const auto* rows = heif_image_get_plane_readonly(image.get(), heif_channel_interleaved, &stride);
    const int width = heif_image_get_width(image.get(), heif_channel_interleaved);
    const int height = heif_image_get_height(image.get(), heif_channel_interleaved);
    if (rows == nullptr || width <= 0 || height <= 0) {
        return Error{ErrorCode::Malformed, said("no pixels in it")};
    }
    Picture picture{width, height};
    for (int y = 0; y < height; ++y) {
        std::memcpy(picture.at(0, y), rows + static_cast<std::ptrdiff_t>(y) * stride, static_cast<std::size_t>(width) * 3);
    }
    return picture;
}

} // namespace lathhouse::photo
