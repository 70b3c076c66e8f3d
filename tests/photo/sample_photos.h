#pragma once

#include "core/photo/encode.h"
#include "core/photo/exif.h"
#include "core/photo/picture.h"

#include <libheif/heif.h>
#include <webp/encode.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <string>

// Photos drawn for the tests: our own making, nobody's.

namespace lathhouse::photo {

/// A leaf-green disc on a grey bench, lit from one side; seed moves the grain, so that no two files are alike.
inline Picture drawn_plant(int width, int height, unsigned seed = 1)
{
    Picture picture{width, height};
    const double radius = 0.3 * std::min(width, height);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            seed = seed * 1664525U + 1013904223U; // Numerical Recipes' quick generator.
            const int grain = static_cast<int>(seed >> 29) - 4;
            const double dx = x + 0.5 - 0.5 * width;
            const double dy = y + 0.5 - 0.5 * height;
            const bool leaf = dx * dx + dy * dy < radius * radius;
            const int light = 40 * x / width;
            auto* pixel = picture.at(x, y);
            pixel[0] = static_cast<std::uint8_t>((leaf ? 50 : 120) + light + grain);
            pixel[1] = static_cast<std::uint8_t>((leaf ? 140 : 118) + light + grain);
            pixel[2] = static_cast<std::uint8_t>((leaf ? 40 : 116) + light + grain);
        }
    }
    return picture;
}

inline Exif sample_exif()
{
    Exif exif;
    exif.taken = parse_local_time("2026-05-30T14:05:07").value();
    exif.zone_offset = std::chrono::minutes{120};
    exif.orientation = 1;
    exif.position = Position{Latitude::literal(-33.5), Longitude::literal(151.25)};
    exif.camera = "Invented Pocket 3";
    return exif;
}

inline Bytes jpeg_with(const Picture& picture, const Exif& exif)
{
    return with_exif(encode_jpeg(picture).value(), make_exif(exif));
}

inline Bytes webp_of(const Picture& picture)
{
    std::uint8_t* out = nullptr;
    const auto size = WebPEncodeLosslessRGB(picture.rgb.data(), picture.width, picture.height, picture.width * 3, &out);
    Bytes bytes{out, out + size};
    WebPFree(out);
    return bytes;
}

/// Empty where this system's libheif has no encoder.
inline Bytes heic_of(const Picture& picture, const Bytes& exif)
{
    Bytes bytes;
    heif_context* context = heif_context_alloc();
    heif_encoder* encoder = nullptr;
    if (heif_context_get_encoder_for_format(context, heif_compression_HEVC, &encoder).code == heif_error_Ok) {
        heif_image* image = nullptr;
        heif_image_create(picture.width, picture.height, heif_colorspace_RGB, heif_chroma_interleaved_RGB, &image);
        heif_image_add_plane(image, heif_channel_interleaved, picture.width, picture.height, 8);
        int stride = 0;
        auto* rows = heif_image_get_plane(image, heif_channel_interleaved, &stride);
        for (int y = 0; y < picture.height; ++y) {
            std::copy_n(picture.at(0, y), picture.width * 3, rows + y * stride);
        }
        heif_image_handle* handle = nullptr;
        if (heif_context_encode_image(context, image, encoder, nullptr, &handle).code == heif_error_Ok) {
            heif_context_add_exif_metadata(context, handle, exif.data(), static_cast<int>(exif.size()));
            heif_writer writer{1, [](heif_context*, const void* data, std::size_t size, void* target) {
                                   const auto* first = static_cast<const std::uint8_t*>(data);
                                   static_cast<Bytes*>(target)->assign(first, first + size);
                                   return heif_error{heif_error_Ok, heif_suberror_Unspecified, "ok"};
                               }};
            heif_context_write(context, &writer, &bytes);
            heif_image_handle_release(handle);
        }
        heif_image_release(image);
        heif_encoder_release(encoder);
    }
    heif_context_free(context);
    return bytes;
}

inline void write_bytes(const std::filesystem::path& file, const Bytes& bytes)
{
    std::ofstream{file, std::ios::binary}.write(reinterpret_cast<const char*>(bytes.data()),
                                                static_cast<std::streamsize>(bytes.size()));
}

} // namespace lathhouse::photo
