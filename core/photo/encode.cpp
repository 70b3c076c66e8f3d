#include "core/photo/encode.h"

#include "core/photo/jpeg_failure.h"

#include "core/base/csv.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <cstdlib>

#include <png.h>

namespace lathhouse::photo {
namespace {

struct Writing {
    jpeg_compress_struct info;
    JpegFailure failure;
    unsigned char* bytes;
    unsigned long size;
};

/// libjpeg leaves by longjmp: nothing with a destructor lives here.
bool write_rows(Writing& writing, const unsigned char* rows, unsigned width, unsigned height, int quality)
{
    auto& info = writing.info;
    info.err = jpeg_std_error(&writing.failure.base);
    writing.failure.base.error_exit = leave_with_message;
    if (setjmp(writing.failure.leave) != 0) {
        return false;
    }
    jpeg_create_compress(&info);
    jpeg_mem_dest(&info, &writing.bytes, &writing.size);
    info.image_width = width;
    info.image_height = height;
    info.input_components = 3;
    info.in_color_space = JCS_RGB;
    jpeg_set_defaults(&info);
    jpeg_set_quality(&info, quality, TRUE);
    jpeg_start_compress(&info, TRUE);
    while (info.next_scanline < info.image_height) {
        auto* row = const_cast<unsigned char*>(rows + static_cast<std::size_t>(info.next_scanline) * width * 3);
        jpeg_write_scanlines(&info, &row, 1);
    }
    jpeg_finish_compress(&info);
    return true;
}

} // namespace

Result<Bytes> encode_jpeg(const Picture& picture, int quality)
{
    Writing writing{};
    const bool written = write_rows(writing, picture.rgb.data(), static_cast<unsigned>(picture.width),
                                    static_cast<unsigned>(picture.height), quality);
    Bytes bytes;
    if (written) {
        bytes.assign(writing.bytes, writing.bytes + writing.size);
    }
    jpeg_destroy_compress(&writing.info);
    std::free(writing.bytes);
    if (!written) {
        return Error{ErrorCode::Unavailable, said("the JPEG cannot be made (%1)", writing.failure.message)};
    }
    return bytes;
}

Result<Bytes> encode_png(const Picture& picture)
{
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    image.width = static_cast<png_uint_32>(picture.width);
    image.height = static_cast<png_uint_32>(picture.height);
    image.format = PNG_FORMAT_RGB;
    // Room for the worst case, so that it is written once.
    png_alloc_size_t size = PNG_IMAGE_PNG_SIZE_MAX(image);
    Bytes bytes(size);
    const int done = png_image_write_to_memory(&image, bytes.data(), &size, 0, picture.rgb.data(), 0, nullptr);
    const std::string message = image.message;
    png_image_free(&image);
    if (done == 0) {
        return Error{ErrorCode::Unavailable, said("the PNG cannot be made (%1)", message)};
    }
    bytes.resize(size);
    return bytes;
}

Result<void> write_picture(const std::filesystem::path& file, const Picture& picture)
{
    const auto ending = lower_case(file.extension().string());
    if (ending != ".jpg" && ending != ".jpeg" && ending != ".png") {
        return Error{ErrorCode::WrongUsage,
                     said("%1 must end in .jpg or .png, so that its form is known", file.string())};
    }
    const auto bytes = ending == ".png" ? encode_png(picture) : encode_jpeg(picture);
    if (!bytes) {
        return bytes.error();
    }
    return write_file_whole(file, {reinterpret_cast<const char*>(bytes->data()), bytes->size()});
}

Bytes with_exif(ByteView jpeg, ByteView exif)
{
    const auto length = exif.size() + 8; // Its own two bytes and "Exif\0\0" included.
    const std::array<std::uint8_t, 12> head{
        0xFF, 0xD8, 0xFF, 0xE1, static_cast<std::uint8_t>(length >> 8), static_cast<std::uint8_t>(length), 'E', 'x', 'i', 'f', 0, 0};
    Bytes file(head.size() + exif.size() + jpeg.size() - 2);
    const auto after_head = std::ranges::copy(head, file.begin()).out;
    const auto after_exif = std::ranges::copy(exif, after_head).out;
    std::ranges::copy(jpeg.subspan(2), after_exif);
    return file;
}

} // namespace lathhouse::photo
