#include "core/photo/decoders.h"
#include "core/photo/jpeg_failure.h"

#include <jerror.h>

namespace lathhouse::photo {
namespace {

// A progressive picture is held whole while it is unpacked; this is enough for 128 megapixels.
constexpr long kMostMemory = 900L << 20;
// Real files have about ten; thousands of them are made to keep a reader busy.
constexpr int kMostScans = 200;

void heed_message(j_common_ptr info, int level)
{
    // The library would fill what is missing with grey and go on. Stray bytes between segments are harmless.
    const int code = info->err->msg_code;
    if (level < 0 && (code == JWRN_JPEG_EOF || code == JWRN_HIT_MARKER || code == JWRN_HUFF_BAD_CODE ||
                      code == JWRN_ARITH_BAD_CODE || code == JWRN_NOT_SEQUENTIAL || code == JWRN_BOGUS_PROGRESSION)) {
        leave_with_message(info);
    }
}

void count_scans(j_common_ptr info)
{
    const auto* reading = reinterpret_cast<j_decompress_ptr>(info);
    if (info->is_decompressor && reading->input_scan_number > kMostScans) {
        auto* failure = reinterpret_cast<JpegFailure*>(info->err);
        std::snprintf(failure->message, sizeof failure->message, "more than %d scans", kMostScans);
        std::longjmp(failure->leave, 1);
    }
}

struct Reading {
    jpeg_decompress_struct info;
    jpeg_progress_mgr progress;
    JpegFailure failure;
};

bool read_header(Reading& reading, const unsigned char* bytes, unsigned long size)
{
    reading.info.err = jpeg_std_error(&reading.failure.base);
    reading.failure.base.error_exit = leave_with_message;
    reading.failure.base.emit_message = heed_message;
    if (setjmp(reading.failure.leave) != 0) {
        return false;
    }
    jpeg_create_decompress(&reading.info);
    reading.info.mem->max_memory_to_use = kMostMemory;
    reading.progress.progress_monitor = count_scans;
    reading.info.progress = &reading.progress;
    jpeg_mem_src(&reading.info, bytes, size);
    jpeg_read_header(&reading.info, TRUE);
    return true;
}

bool start(Reading& reading, unsigned eighths)
{
    if (setjmp(reading.failure.leave) != 0) {
        return false;
    }
    auto& info = reading.info;
    info.scale_num = eighths;
    info.scale_denom = 8;
    // Inks cannot be turned into light by the library; see from_inks.
    const bool inks = info.jpeg_color_space == JCS_CMYK || info.jpeg_color_space == JCS_YCCK;
    info.out_color_space = inks ? JCS_CMYK : JCS_RGB;
    jpeg_start_decompress(&info);
    return true;
}

bool read_rows(Reading& reading, unsigned char* rows, std::size_t stride)
{
    if (setjmp(reading.failure.leave) != 0) {
        return false;
    }
    auto& info = reading.info;
    while (info.output_scanline < info.output_height) {
        JSAMPROW row = rows + stride * info.output_scanline;
        jpeg_read_scanlines(&info, &row, 1);
    }
    return true;
}

/// Destroys what the library holds at the end of the caller.
class Guard {
public:
    explicit Guard(Reading& reading) : reading_(reading) {}
    Guard(const Guard&) = delete;
    Guard& operator=(const Guard&) = delete;
    ~Guard() { jpeg_destroy_decompress(&reading_.info); }

private:
    Reading& reading_;
};

Error error_of(const Reading& reading)
{
    return {ErrorCode::Malformed, Said{reading.failure.message}};
}

/// Adobe writes inks upside down: 255 is none.
Picture from_inks(const std::vector<std::uint8_t>& inks, int width, int height, bool upside_down)
{
    Picture picture{width, height};
    for (std::size_t i = 0; i < picture.pixels(); ++i) {
        const auto light = [&](std::size_t ink) {
            const auto value = inks[4 * i + ink];
            return static_cast<unsigned>(upside_down ? value : 255 - value);
        };
        for (std::size_t channel = 0; channel < 3; ++channel) {
            picture.rgb[3 * i + channel] = static_cast<std::uint8_t>(light(channel) * light(3) / 255);
        }
    }
    return picture;
}

} // namespace

Result<Size> jpeg_size(ByteView file)
{
    Reading reading{};
    const Guard guard{reading};
    if (!read_header(reading, file.data(), file.size())) {
        return error_of(reading);
    }
    return Size{static_cast<int>(reading.info.image_width), static_cast<int>(reading.info.image_height)};
}

Result<Picture> decode_jpeg(ByteView file, std::optional<int> longest_side)
{
    Reading reading{};
    const Guard guard{reading};
    if (!read_header(reading, file.data(), file.size())) {
        return error_of(reading);
    }
    unsigned eighths = 8;
    if (longest_side) {
        const auto side = std::max(reading.info.image_width, reading.info.image_height);
        for (eighths = 1; eighths < 8 && 4 * side * eighths < 3 * 8 * static_cast<unsigned>(*longest_side); eighths *= 2) {
        }
    }
    if (!start(reading, eighths)) {
        return error_of(reading);
    }
    const auto width = static_cast<int>(reading.info.output_width);
    const auto height = static_cast<int>(reading.info.output_height);
    if (reading.info.out_color_space == JCS_CMYK) {
        std::vector<std::uint8_t> inks(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 4);
        if (!read_rows(reading, inks.data(), static_cast<std::size_t>(width) * 4)) {
            return error_of(reading);
        }
        return from_inks(inks, width, height, reading.info.saw_Adobe_marker != 0);
    }
    Picture picture{width, height};
    if (!read_rows(reading, picture.rgb.data(), static_cast<std::size_t>(width) * 3)) {
        return error_of(reading);
    }
    return picture;
}

} // namespace lathhouse::photo
