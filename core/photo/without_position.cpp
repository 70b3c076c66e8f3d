#include "core/photo/without_position.h"

#include "core/photo/begins_with.h"
#include "core/photo/decoders.h"
#include "core/photo/heif_handles.h"
#include "core/photo/segments.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace lathhouse::photo {
namespace {

using namespace std::string_view_literals;

void append(Bytes& file, ByteView more)
{
    file.insert(file.end(), more.begin(), more.end());
}

void append(Bytes& file, std::string_view text)
{
    file.insert(file.end(), text.begin(), text.end());
}

void append_number(Bytes& file, std::size_t number, int size, bool little)
{
    for (int i = 0; i < size; ++i) {
        file.push_back(static_cast<std::uint8_t>(number >> 8 * (little ? i : size - 1 - i)));
    }
}

/// From a scan's own head to the end of the picture: parts between scans that are no pixels are left out, and what was
/// hung on behind the end (films, further pictures with their own EXIF).
void append_scans(Bytes& file, ByteView scans)
{
    std::size_t at = 0;
    while (at + 4 <= scans.size()) {
        // At a marker.
        const auto marker = scans[at + 1];
        if (marker == 0xFF) {
            ++at;
            continue;
        }
        if (marker == 0xD9) {
            break;
        }
        const auto length = std::min(scans.size() - at, std::size_t{2} + static_cast<std::size_t>(scans[at + 2] << 8 | scans[at + 3]));
        const bool talk = (marker >= 0xE0 && marker <= 0xEF) || marker == 0xFE;
        if (!talk) {
            append(file, scans.subspan(at, length));
        }
        at += length;
        if (marker == 0xDA) {
            const auto begin = at;
            while (at + 1 < scans.size() &&
                   !(scans[at] == 0xFF && scans[at + 1] != 0 && !(scans[at + 1] >= 0xD0 && scans[at + 1] <= 0xD7))) {
                ++at;
            }
            if (at + 1 >= scans.size()) {
                at = scans.size();
            }
            append(file, scans.subspan(begin, at - begin));
        }
    }
    append(file, "\xFF\xD9"sv);
}

Bytes plain_jpeg(ByteView old, ByteView exif)
{
    Bytes file{0xFF, 0xD8};
    const auto segments = segments_of(old, PhotoFormat::Jpeg);
    const auto is_jfif = [](const Segment& segment) {
        return segment.kind == "APP0" && begins_with(segment.content, "JFIF\0"sv);
    };
    if (const auto jfif = std::ranges::find_if(segments, is_jfif); jfif != segments.end()) {
        append(file, jfif->whole); // It tells the colours apart; its place is the first.
    }
    append(file, "\xFF\xE1"sv);
    append_number(file, exif.size() + 8, 2, false);
    append(file, "Exif\0\0"sv);
    append(file, exif);
    for (const auto& segment : segments) {
        const bool colours = (segment.kind == "APP2" && begins_with(segment.content, "ICC_PROFILE\0"sv)) ||
                             (segment.kind == "APP14" && begins_with(segment.content, "Adobe"sv));
        if (segment.kind == "SCAN") {
            append_scans(file, segment.whole);
        } else if (segment.kind.empty() || colours) {
            append(file, segment.whole);
        }
    }
    return file;
}

/// Source: PNG (W3C, second edition), annex D.
std::uint32_t png_checksum(ByteView bytes)
{
    std::uint32_t sum = 0xFFFFFFFF;
    for (const auto byte : bytes) {
        sum ^= byte;
        for (int bit = 0; bit < 8; ++bit) {
            sum = (sum & 1) != 0 ? 0xEDB88320 ^ sum >> 1 : sum >> 1;
        }
    }
    return ~sum;
}

Bytes plain_png(ByteView old, ByteView exif)
{
    static constexpr std::array kKept{"IHDR"sv, "PLTE"sv, "IDAT"sv, "IEND"sv, "tRNS"sv, "gAMA"sv,
                                      "cHRM"sv, "sRGB"sv, "iCCP"sv, "sBIT"sv, "bKGD"sv, "pHYs"sv};
    Bytes file{old.begin(), old.begin() + 8};
    bool put = false;
    for (const auto& chunk : segments_of(old, PhotoFormat::Png)) {
        if (chunk.kind == "IDAT" && !put) {
            Bytes block;
            append(block, "eXIf"sv);
            append(block, exif);
            append_number(file, exif.size(), 4, false);
            append(file, block);
            append_number(file, png_checksum(block), 4, false);
            put = true;
        }
        if (std::ranges::find(kKept, std::string_view{chunk.kind}) != kKept.end()) {
            append(file, chunk.whole);
        }
        if (chunk.kind == "IEND") {
            break;
        }
    }
    return file;
}

Bytes plain_webp(ByteView old, ByteView exif)
{
    static constexpr std::array kKept{"VP8X"sv, "ICCP"sv, "ALPH"sv, "VP8 "sv, "VP8L"sv};
    constexpr std::size_t kFlags = 20; // Of the VP8X chunk, always the first.
    Bytes file{old.begin(), old.begin() + 12};
    bool extended = false;
    for (const auto& chunk : segments_of(old, PhotoFormat::WebP)) {
        if (std::ranges::find(kKept, std::string_view{chunk.kind}) != kKept.end()) {
            extended = extended || chunk.kind == "VP8X";
            append(file, chunk.whole);
        }
    }
    if (extended && file.size() > kFlags) {
        constexpr unsigned kHasExif = 0x08;
        constexpr unsigned kHasXmp = 0x04;
        file[kFlags] = static_cast<std::uint8_t>((file[kFlags] & ~kHasXmp) | kHasExif);
        append(file, "EXIF"sv);
        append_number(file, exif.size(), 4, true);
        append(file, exif);
        if (exif.size() % 2 != 0) {
            file.push_back(0);
        }
    }
    Bytes size;
    append_number(size, file.size() - 8, 4, true);
    std::ranges::copy(size, file.begin() + 4);
    return file;
}

/// Every block that describes a picture of the file.
struct Block {
    bool is_exif;
    Bytes bytes;
};

std::optional<std::vector<Block>> blocks_of(ByteView file)
{
    const HeifContext context{heif_context_alloc()};
    if (heif_context_read_from_memory_without_copy(context.get(), file.data(), file.size(), nullptr).code != heif_error_Ok) {
        return std::nullopt;
    }
    std::vector<heif_item_id> pictures(
        static_cast<std::size_t>(heif_context_get_number_of_top_level_images(context.get())));
    heif_context_get_list_of_top_level_image_IDs(context.get(), pictures.data(), static_cast<int>(pictures.size()));
    std::vector<Block> blocks;
    for (const auto picture : pictures) {
        heif_image_handle* raw = nullptr;
        if (heif_context_get_image_handle(context.get(), picture, &raw).code != heif_error_Ok) {
            return std::nullopt;
        }
        const HeifHandle handle{raw};
        std::vector<heif_item_id> ids(
            static_cast<std::size_t>(heif_image_handle_get_number_of_metadata_blocks(raw, nullptr)));
        heif_image_handle_get_list_of_metadata_block_IDs(raw, nullptr, ids.data(), static_cast<int>(ids.size()));
        for (const auto id : ids) {
            Block block{heif_image_handle_get_metadata_type(raw, id) == "Exif"sv,
                        Bytes(heif_image_handle_get_metadata_size(raw, id))};
            if (heif_image_handle_get_metadata(raw, id, block.bytes.data()).code != heif_error_Ok) {
                return std::nullopt;
            }
            blocks.push_back(std::move(block));
        }
    }
    return blocks;
}

std::optional<Bytes> plain_heic(ByteView old, ByteView exif)
{
    const auto blocks = blocks_of(old);
    if (!blocks) {
        return std::nullopt;
    }
    Bytes file{old.begin(), old.end()};
    for (const auto& block : *blocks) {
        if (block.bytes.empty()) {
            continue;
        }
        const auto found = std::ranges::search(file, block.bytes);
        if (found.empty()) {
            return std::nullopt;
        }
        const bool fits = block.is_exif && block.bytes.size() >= exif.size() + 4;
        std::ranges::fill(found, static_cast<std::uint8_t>(block.is_exif ? 0 : ' '));
        if (fits) {
            std::ranges::copy(exif, found.begin() + 4);
        }
    }
    return file;
}

} // namespace

Result<Bytes> without_position(ByteView file, const std::string& name, const Limits& limits)
{
    const auto facts = read_facts(file, name, limits);
    if (!facts) {
        return facts.error();
    }
    auto kept = facts->exif;
    kept.position.reset();
    const auto exif = make_exif(kept);
    std::optional<Bytes> plain;
    switch (facts->format) {
    case PhotoFormat::Jpeg:
        plain = plain_jpeg(file, exif);
        break;
    case PhotoFormat::Png:
        plain = plain_png(file, exif);
        break;
    case PhotoFormat::WebP:
        plain = plain_webp(file, exif);
        break;
    case PhotoFormat::Heic:
        plain = plain_heic(file, exif);
        break;
    }
    // What leaves the house is looked at once more.
    const auto left = plain ? read_facts(*plain, name, limits)
                            : Result<PhotoFacts>{Error{ErrorCode::Unavailable, said("its parts cannot be found")}};
    if (!left || left->exif.position) {
        return Error{ErrorCode::Unavailable, left ? said("%1: where it was taken cannot be taken out of it; export it "
                                                         "with its position, or save it as JPEG",
                                                         name)
                                                  : said("%1: where it was taken cannot be taken out of it (%2); "
                                                         "export it with its position, or save it as JPEG",
                                                         name, left.error())};
    }
    return *std::move(plain);
}

} // namespace lathhouse::photo
