#pragma once

#include "core/base/result.h"
#include "core/photo/exif.h"
#include "core/photo/picture.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace lathhouse::photo {

enum class PhotoFormat { Jpeg, Png, WebP, Heic };
/// "jpg", "png", "webp", "heic": the ending under which a photo is kept.
std::string_view extension_of(PhotoFormat format);
/// By the file's first bytes, whatever its name says. nullopt for anything else.
std::optional<PhotoFormat> format_of(ByteView file);

/// What is refused before memory is spent on it: small files can unpack to gigabytes.
struct Limits {
    std::size_t file_bytes = std::size_t{256} << 20;
    std::size_t pixels = 128'000'000; ///< 384 MB once unpacked.
    int side = 40'000;
};

/// What is known of a photo without unpacking its pixels.
struct PhotoFacts {
    PhotoFormat format;
    int width;  ///< Pixels across once it is upright.
    int height; ///< Pixels down once it is upright.
    /// HEIC: orientation is always 1, since its own turning instructions are carried out by the library.
    Exif exif;
};

/// The whole file. Errors: NotFound, Unreadable (a folder, no right), OutOfRange over the limit, Malformed where empty.
Result<Bytes> read_bytes(const std::filesystem::path& file, const Limits& limits = {});

/// name: what errors call the file. Errors: Malformed (no photo of a form that is read, cut off, damaged, looped
/// EXIF), OutOfRange (over the limits), Unavailable (HEIC that the library of this system cannot read).
Result<PhotoFacts> read_facts(ByteView file, const std::string& name, const Limits& limits = {});

/// The upright picture. Where `longest_side` is given, a smaller one may come: the unpacking is cut short as long as
/// three quarters of that side are left (JPEG only; other forms are scaled after unpacking), never larger than asked.
/// Errors: as read_facts; Malformed with the library's own word where the pixels are cut off or damaged.
struct Photo {
    PhotoFacts facts;
    Picture picture;
};
Result<Photo> read_photo(ByteView file, const std::string& name, std::optional<int> longest_side = {},
                         const Limits& limits = {});

} // namespace lathhouse::photo
