#include "core/photo/photo_file.h"

#include "core/photo/begins_with.h"
#include "core/photo/decoders.h"
#include "core/photo/resize.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <new>

namespace lathhouse::photo {
namespace {

bool stands_at(ByteView file, std::size_t at, std::string_view text)
{
    return file.size() >= at && begins_with(file.subspan(at), text);
}

std::string_view called(PhotoFormat format)
{
    switch (format) {
    case PhotoFormat::Jpeg:
        return "JPEG";
    case PhotoFormat::Png:
        return "PNG";
    case PhotoFormat::WebP:
        return "WebP";
    case PhotoFormat::Heic:
        return "HEIC";
    }
    return "";
}

Error named(const Error& inner, const std::string& name, PhotoFormat format)
{
    if (inner.code == ErrorCode::Unavailable) {
        return {
            inner.code,
            said("%1: this system's library cannot read that kind of HEIC (%2); let the phone save or share it as JPEG",
                 name, inner)};
    }
    return {inner.code,
            said("%1 is cut off or damaged (%2: %3); copy it once more from the camera", name, called(format), inner)};
}

Result<Size> stored_size(ByteView file, PhotoFormat format)
{
    switch (format) {
    case PhotoFormat::Jpeg:
        return jpeg_size(file);
    case PhotoFormat::Png:
        return png_size(file);
    case PhotoFormat::WebP:
        return webp_size(file);
    case PhotoFormat::Heic:
        break;
    }
    return heic_size(file);
}

Result<Picture> unpacked(ByteView file, PhotoFormat format, std::optional<int> longest_side)
{
    switch (format) {
    case PhotoFormat::Jpeg:
        return decode_jpeg(file, longest_side);
    case PhotoFormat::Png:
        return decode_png(file);
    case PhotoFormat::WebP:
        return decode_webp(file);
    case PhotoFormat::Heic:
        break;
    }
    return decode_heic(file);
}

} // namespace

std::string_view extension_of(PhotoFormat format)
{
    switch (format) {
    case PhotoFormat::Jpeg:
        return "jpg";
    case PhotoFormat::Png:
        return "png";
    case PhotoFormat::WebP:
        return "webp";
    case PhotoFormat::Heic:
        return "heic";
    }
    return "";
}

std::optional<PhotoFormat> format_of(ByteView file)
{
    using namespace std::string_view_literals;
    if (stands_at(file, 0, "\xFF\xD8\xFF"sv)) {
        return PhotoFormat::Jpeg;
    }
    if (stands_at(file, 0, "\x89PNG\r\n\x1A\n"sv)) {
        return PhotoFormat::Png;
    }
    if (stands_at(file, 0, "RIFF"sv) && stands_at(file, 8, "WEBP"sv)) {
        return PhotoFormat::WebP;
    }
    for (const auto brand : {"heic"sv, "heix"sv, "heim"sv, "heis"sv, "hevc"sv, "hevx"sv, "mif1"sv, "msf1"sv}) {
        if (stands_at(file, 4, "ftyp"sv) && stands_at(file, 8, brand)) {
            return PhotoFormat::Heic;
        }
    }
    return std::nullopt;
}

Result<Bytes> read_bytes(const std::filesystem::path& file, const Limits& limits)
{
    std::error_code failure;
    const auto status = std::filesystem::status(file, failure);
    if (!std::filesystem::exists(status)) {
        return Error{ErrorCode::NotFound, said("there is no file %1", file.string())};
    }
    if (!std::filesystem::is_regular_file(status)) {
        return Error{ErrorCode::Unreadable, said("%1 is not a file; name a photo", file.string())};
    }
    const auto size = std::filesystem::file_size(file, failure);
    if (failure) {
        return Error{ErrorCode::Unreadable, said("%1 cannot be read; check its rights", file.string())};
    }
    if (size > limits.file_bytes) {
        return Error{ErrorCode::OutOfRange, said("%1 has %2 MB; photos up to %3 MB are taken, so save it smaller",
                                                 file.string(), size >> 20, limits.file_bytes >> 20)};
    }
    if (size == 0) {
        return Error{ErrorCode::Malformed, said("%1 is empty; copy it once more from the camera", file.string())};
    }
    Bytes bytes(size);
    std::ifstream input{file, std::ios::binary};
    input.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(size));
    if (!input) {
        return Error{ErrorCode::Unreadable, said("%1 cannot be read; check its rights", file.string())};
    }
    return bytes;
}

Result<PhotoFacts> read_facts(ByteView file, const std::string& name, const Limits& limits)
{
    const auto format = format_of(file);
    if (!format) {
        return Error{ErrorCode::Malformed,
                     said("%1 is no photo in JPEG, PNG, WebP or HEIC; save it as one of these", name)};
    }
    const auto size = stored_size(file, *format);
    if (!size) {
        return named(size.error(), name, *format);
    }
    if (size->width < 1 || size->height < 1) {
        return Error{ErrorCode::Malformed, said("%1 has no pixels", name)};
    }
    const auto pixels = static_cast<std::size_t>(size->width) * static_cast<std::size_t>(size->height);
    if (pixels > limits.pixels || size->width > limits.side || size->height > limits.side) {
        return Error{ErrorCode::OutOfRange,
                     said("%1 would unpack to %2 x %3 pixels; up to %4 million are taken, so save it smaller", name,
                          size->width, size->height, limits.pixels / 1'000'000)};
    }
    PhotoFacts facts{*format, size->width, size->height, {}};
    const auto heic = *format == PhotoFormat::Heic ? heic_exif(file) : Bytes{};
    const auto block = *format == PhotoFormat::Heic ? ByteView{heic} : embedded_exif(file, *format);
    if (!block.empty()) {
        auto exif = read_exif(block);
        if (!exif) {
            return Error{exif.error().code,
                         said("%1 is not safe to read (%2); save it anew without its EXIF", name, exif.error())};
        }
        facts.exif = *std::move(exif);
    }
    if (*format == PhotoFormat::Heic) {
        facts.exif.orientation = 1;
    }
    if (facts.exif.orientation >= 5) {
        std::swap(facts.width, facts.height);
    }
    return facts;
}

Result<Photo> read_photo(ByteView file, const std::string& name, std::optional<int> longest_side, const Limits& limits)
{
    const auto facts = read_facts(file, name, limits);
    if (!facts) {
        return facts.error();
    }
    try {
        auto picture = unpacked(file, facts->format, longest_side);
        if (!picture) {
            return named(picture.error(), name, facts->format);
        }
        if (longest_side) {
            *picture = fitted_into(*std::move(picture), *longest_side);
        }
        return Photo{*facts, turned_upright(*std::move(picture), facts->exif.orientation)};
    } catch (const std::bad_alloc&) {
        return Error{ErrorCode::Unavailable, said("%1: not enough memory to unpack it; close other programs", name)};
    }
}

Picture turned_upright(Picture picture, int orientation)
{
    if (orientation == 1) {
        return picture;
    }
    // How the stored picture is to be read: mirrored across, upside down, rows for columns.
    const bool swapped = orientation >= 5;
    Picture upright{swapped ? picture.height : picture.width, swapped ? picture.width : picture.height};
    const bool from_right = orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
    const bool from_below = orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
    for (int y = 0; y < upright.height; ++y) {
        for (int x = 0; x < upright.width; ++x) {
            const int column = swapped ? y : x;
            const int row = swapped ? x : y;
            const auto* old = picture.at(from_right ? picture.width - 1 - column : column,
                                         from_below ? picture.height - 1 - row : row);
            std::copy_n(old, 3, upright.at(x, y));
        }
    }
    return upright;
}

} // namespace lathhouse::photo
