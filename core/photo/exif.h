#pragma once

#include "core/base/result.h"
#include "core/units/position.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::photo {

using Bytes = std::vector<std::uint8_t>;
using ByteView = std::span<const std::uint8_t>;

/// What a camera wrote beside the pixels, as far as the journal needs it.
struct Exif {
    std::optional<std::chrono::local_seconds> taken;    ///< By the camera's clock, which knew no zone.
    std::optional<std::chrono::minutes> zone_offset;    ///< Local time less UTC, where the camera wrote it.
    int orientation = 1;                                ///< 1 to 8 as EXIF numbers them; 1 is upright.
    std::optional<Position> position;                   ///< Where the camera says it was.
    std::string camera;                                 ///< Maker and model; empty where not said.
    bool damaged = false; ///< Some of it pointed out of the block or was no EXIF; what could be read is here.

    friend bool operator==(const Exif&, const Exif&) = default;
};

/// Reads the TIFF structure of an EXIF block (from "II" or "MM" on, without the "Exif" prefix). Nothing outside of
/// the block is read, whatever it says; a value that is out of its range counts as absent.
/// Errors: Malformed where a directory leads back to one that was read, or there are over 100 of them, since such a
/// file is made to trap readers.
/// Source: CIPA DC-008 (EXIF 2.32), 4.6; TIFF 6.0, section 2. Tag numbers from these.
Result<Exif> read_exif(ByteView tiff);

/// A new block (from "II" on) that holds these facts and nothing else, with the position only where there is one.
Bytes make_exif(const Exif& facts);

/// `YYYY-MM-DDThh:mm:ss`.
std::string to_text(std::chrono::local_seconds time);
/// Reads that, or `YYYY-MM-DD` as noon of the day. Errors: Malformed, OutOfRange.
Result<std::chrono::local_seconds> parse_local_time(const std::string& text);

} // namespace lathhouse::photo
