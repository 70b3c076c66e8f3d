#include "core/photo/segments.h"

namespace lathhouse::photo {
namespace {

constexpr std::uint8_t kStartOfScan = 0xDA;
constexpr std::uint8_t kEndOfImage = 0xD9;

std::vector<Segment> jpeg_segments(ByteView file)
{
    std::vector<Segment> segments;
    for (std::size_t at = 2; at + 4 <= file.size();) {
        if (file[at] != 0xFF) {
            break;
        }
        const auto marker = file[at + 1];
        if (marker == 0xFF) { // A byte that fills up.
            ++at;
            continue;
        }
        if (marker == kStartOfScan || marker == kEndOfImage) {
            segments.push_back({"SCAN", file.subspan(at), {}});
            break;
        }
        const auto length = static_cast<std::size_t>(file[at + 2] << 8 | file[at + 3]);
        if (length < 2 || length > file.size() - at - 2) {
            break;
        }
        std::string kind;
        if (marker >= 0xE0 && marker <= 0xEF) {
            kind = "APP" + std::to_string(marker - 0xE0);
        } else if (marker == 0xFE) {
            kind = "COM";
        }
        segments.push_back({kind, file.subspan(at, length + 2), file.subspan(at + 4, length - 2)});
        at += length + 2;
    }
    return segments;
}

std::size_t number(ByteView file, std::size_t at, bool little)
{
    std::size_t value = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        value = value << 8 | file[little ? at + 3 - i : at + i];
    }
    return value;
}

std::string letters(ByteView file, std::size_t at)
{
    return {file.begin() + static_cast<std::ptrdiff_t>(at), file.begin() + static_cast<std::ptrdiff_t>(at + 4)};
}

std::vector<Segment> png_chunks(ByteView file)
{
    std::vector<Segment> chunks;
    for (std::size_t at = 8; at + 12 <= file.size();) {
        const auto length = number(file, at, false);
        if (length > file.size() - at - 12) {
            break;
        }
        chunks.push_back({letters(file, at + 4), file.subspan(at, length + 12), file.subspan(at + 8, length)});
        at += length + 12;
    }
    return chunks;
}

std::vector<Segment> webp_chunks(ByteView file)
{
    std::vector<Segment> chunks;
    for (std::size_t at = 12; at + 8 <= file.size();) {
        const auto length = number(file, at + 4, true);
        const auto padded = length + length % 2;
        if (length > file.size() - at - 8) {
            break;
        }
        chunks.push_back({letters(file, at), file.subspan(at, std::min(padded + 8, file.size() - at)),
                          file.subspan(at + 8, length)});
        at += padded + 8;
    }
    return chunks;
}

} // namespace

std::vector<Segment> segments_of(ByteView file, PhotoFormat format)
{
    switch (format) {
    case PhotoFormat::Jpeg:
        return jpeg_segments(file);
    case PhotoFormat::Png:
        return png_chunks(file);
    case PhotoFormat::WebP:
        return webp_chunks(file);
    case PhotoFormat::Heic:
        break; // Boxes that point at each other: left to its library.
    }
    return {};
}

} // namespace lathhouse::photo
