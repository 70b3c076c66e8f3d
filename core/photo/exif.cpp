#include "core/photo/exif.h"

#include "core/photo/exif_types.h"

#include "core/base/parse.h"
#include "core/calendar/date.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace lathhouse::photo {
namespace {

enum Tag : unsigned {
    kMake = 0x010F,
    kModel = 0x0110,
    kOrientation = 0x0112,
    kDateTime = 0x0132,
    kExifDirectory = 0x8769,
    kGpsDirectory = 0x8825,
    kDateTimeOriginal = 0x9003,
    kDateTimeDigitized = 0x9004,
    kOffsetTime = 0x9010,
    kOffsetTimeOriginal = 0x9011,
    kOffsetTimeDigitized = 0x9012,
    kLatitudeRef = 1,
    kLatitude = 2,
    kLongitudeRef = 3,
    kLongitude = 4
};

/// Cameras write about four. A chain of a million little ones would keep a reader busy for an hour.
constexpr std::size_t kMostDirectories = 100;

struct Entry {
    unsigned tag;
    unsigned type;
    std::uint32_t count;
    std::size_t value; ///< Where the value stands in the block.
};

/// A directory's entries whose values lie within the block.
struct Directory {
    std::vector<Entry> entries;
    std::uint32_t next = 0;
};

class Reader {
public:
    Reader(ByteView block, bool little) : block_(block), little_(little) {}

    std::uint32_t number(std::size_t at, std::size_t size) const
    {
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < size; ++i) {
            value = value << 8 | block_[little_ ? at + size - 1 - i : at + i];
        }
        return value;
    }
    bool holds(std::size_t at, std::size_t size) const { return at <= block_.size() && size <= block_.size() - at; }

    /// Errors: Malformed where this directory was read before, or where there are more than any camera writes.
    Result<Directory> directory(std::uint32_t at)
    {
        if (std::ranges::find(visited_, at) != visited_.end()) {
            return Error{ErrorCode::Malformed, said("its EXIF directories lead in a circle")};
        }
        if (visited_.size() == kMostDirectories) {
            return Error{ErrorCode::Malformed, said("its EXIF has over %1 directories", kMostDirectories)};
        }
        visited_.push_back(at);
        Directory found;
        if (!holds(at, 2)) {
            damaged = true;
            return found;
        }
        const std::size_t count = number(at, 2);
        for (std::size_t i = 0; i < count; ++i) {
            const std::size_t here = at + 2 + 12 * i;
            if (!holds(here, 12)) {
                damaged = true;
                return found;
            }
            Entry entry{number(here, 2), number(here + 2, 2), number(here + 4, 4), here + 8};
            const std::size_t size = size_of(entry);
            if (size > 4) {
                entry.value = number(here + 8, 4);
            }
            if (size == 0 || !holds(entry.value, size)) {
                damaged = damaged || size != 0;
                continue;
            }
            found.entries.push_back(entry);
        }
        const std::size_t end = at + 2 + 12 * count;
        // Some writers leave the link to the next directory out at the end of the block.
        found.next = holds(end, 4) ? number(end, 4) : 0;
        return found;
    }

    std::string text(const Directory& directory, unsigned tag) const
    {
        const auto* entry = find(directory, tag, kAscii);
        if (entry == nullptr) {
            return {};
        }
        std::string letters;
        for (std::size_t i = 0; i < std::min<std::size_t>(entry->count, 64); ++i) {
            const auto letter = static_cast<char>(block_[entry->value + i]);
            if (letter == '\0') {
                break;
            }
            // Cameras write ASCII; anything else must not reach a terminal.
            letters += letter >= ' ' && letter <= '~' ? letter : ' ';
        }
        return std::string{trimmed(letters)};
    }
    std::optional<std::uint32_t> whole(const Directory& directory, unsigned tag) const
    {
        for (const auto& [type, size] : {std::pair{kShort, 2}, std::pair{kLong, 4}}) {
            if (const auto* entry = find(directory, tag, type); entry != nullptr) {
                return number(entry->value, static_cast<std::size_t>(size));
            }
        }
        return std::nullopt;
    }
    /// Degrees, minutes and seconds as one number.
    std::optional<double> angle(const Directory& directory, unsigned tag) const
    {
        const auto* entry = find(directory, tag, kRational);
        if (entry == nullptr || entry->count != 3) {
            return std::nullopt;
        }
        double degrees = 0.0;
        double unit = 1.0;
        for (std::size_t i = 0; i < 3; ++i, unit /= 60.0) {
            const double above = number(entry->value + 8 * i, 4);
            const double below = number(entry->value + 8 * i + 4, 4);
            if (below == 0.0) {
                if (above == 0.0 && i > 0) {
                    continue; // Minutes or seconds that were not measured.
                }
                return std::nullopt;
            }
            degrees += unit * above / below;
        }
        return degrees;
    }

    bool damaged = false;

private:
    static std::size_t size_of(const Entry& entry)
    {
        static constexpr std::array<std::size_t, 13> kSizes{0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};
        return entry.type < kSizes.size() ? kSizes[entry.type] * entry.count : 0;
    }
    static const Entry* find(const Directory& directory, unsigned tag, unsigned type)
    {
        const auto found = std::ranges::find_if(
            directory.entries, [&](const Entry& entry) { return entry.tag == tag && entry.type == type; });
        return found == directory.entries.end() ? nullptr : &*found;
    }

    ByteView block_;
    bool little_;
    std::vector<std::uint32_t> visited_;
};

/// "2012:11:04 05:42:02"; blanks and zeros mean that the camera did not know.
std::optional<std::chrono::local_seconds> time_of(const std::string& text)
{
    if (text.size() < 19) {
        return std::nullopt;
    }
    std::string iso = text.substr(0, 19);
    iso[4] = iso[7] = '-';
    iso[10] = 'T';
    const auto time = parse_local_time(iso);
    return time ? std::optional{*time} : std::nullopt;
}

/// "+02:00".
std::optional<std::chrono::minutes> offset_of(const std::string& text)
{
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':') {
        return std::nullopt;
    }
    const auto hours = parse_integer(text.substr(1, 2));
    const auto minutes = parse_integer(text.substr(4, 2));
    if (!hours || !minutes || *hours < 0 || *minutes < 0 || *hours > 14 || *minutes > 59) {
        return std::nullopt;
    }
    return std::chrono::minutes{(text[0] == '-' ? -1 : 1) * (60 * *hours + *minutes)};
}

std::optional<Position> position_of(const Reader& reader, const Directory& gps)
{
    auto latitude = reader.angle(gps, kLatitude);
    auto longitude = reader.angle(gps, kLongitude);
    if (!latitude || !longitude) {
        return std::nullopt;
    }
    *latitude *= reader.text(gps, kLatitudeRef) == "S" ? -1.0 : 1.0;
    *longitude *= reader.text(gps, kLongitudeRef) == "W" ? -1.0 : 1.0;
    const auto north = Latitude::from_degrees(*latitude);
    const auto east = Longitude::from_degrees(*longitude);
    return north && east ? std::optional{Position{*north, *east}} : std::nullopt;
}

} // namespace

Result<Exif> read_exif(ByteView tiff)
{
    Exif facts;
    const bool little = tiff.size() >= 8 && tiff[0] == 'I' && tiff[1] == 'I';
    const bool big = tiff.size() >= 8 && tiff[0] == 'M' && tiff[1] == 'M';
    Reader reader{tiff, little};
    if ((!little && !big) || reader.number(2, 2) != 42) {
        facts.damaged = true;
        return facts;
    }
    const auto main = reader.directory(reader.number(4, 4));
    if (!main) {
        return main.error();
    }
    Directory detail;
    Directory gps;
    for (const auto& [tag, target] : {std::pair{kExifDirectory, &detail}, std::pair{kGpsDirectory, &gps}}) {
        if (const auto at = reader.whole(*main, tag)) {
            auto directory = reader.directory(*at);
            if (!directory) {
                return directory.error();
            }
            *target = *std::move(directory);
        }
    }
    // The rest of the chain (the camera's own thumbnail) is only followed to see that it ends.
    for (auto next = main->next; next != 0;) {
        const auto directory = reader.directory(next);
        if (!directory) {
            return directory.error();
        }
        next = directory->next;
    }
    if (const auto turned = reader.whole(*main, kOrientation); turned && *turned >= 1 && *turned <= 8) {
        facts.orientation = static_cast<int>(*turned);
    }
    struct Stamp {
        const Directory* directory;
        unsigned time;
        unsigned offset;
    };
    for (const auto& stamp : {Stamp{&detail, kDateTimeOriginal, kOffsetTimeOriginal},
                              Stamp{&detail, kDateTimeDigitized, kOffsetTimeDigitized},
                              Stamp{&*main, kDateTime, kOffsetTime}}) {
        facts.taken = time_of(reader.text(*stamp.directory, stamp.time));
        if (facts.taken) {
            facts.zone_offset = offset_of(reader.text(detail, stamp.offset));
            break;
        }
    }
    const auto make = reader.text(*main, kMake);
    const auto model = reader.text(*main, kModel);
    // Many models begin with their maker's name.
    facts.camera = model.starts_with(make) ? model : make + (model.empty() ? "" : " ") + model;
    facts.position = position_of(reader, gps);
    facts.damaged = reader.damaged;
    return facts;
}

std::string to_text(std::chrono::local_seconds time)
{
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss clock{time - day};
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02uT%02d:%02d:%02d", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(clock.hours().count()), static_cast<int>(clock.minutes().count()),
                  static_cast<int>(clock.seconds().count()));
    return text.data();
}

Result<std::chrono::local_seconds> parse_local_time(const std::string& text)
{
    const auto date = calendar::parse_date(std::string_view{text}.substr(0, 10));
    if (!date) {
        return date.error();
    }
    const std::chrono::local_seconds day{calendar::start_of_day_utc(*date).time_since_epoch()};
    if (text.size() == 10) {
        return day + std::chrono::hours{12};
    }
    const auto pieces = split(std::string_view{text}.substr(10), ':');
    const auto clock_malformed =
        Error{ErrorCode::Malformed, said("\"%1\" is no time; write it as 2027-05-09T14:30:00", text)};
    if (text.size() != 19 || text[10] != 'T' || text[13] != ':' || text[16] != ':' || pieces.size() != 3 ||
        text.find_first_not_of("0123456789:", 11) != std::string::npos) {
        return clock_malformed;
    }
    const auto hour = parse_integer(pieces[0].substr(1));
    const auto minute = parse_integer(pieces[1]);
    const auto second = parse_integer(pieces[2]);
    if (!hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 59) {
        return clock_malformed;
    }
    return day + std::chrono::hours{*hour} + std::chrono::minutes{*minute} + std::chrono::seconds{*second};
}

} // namespace lathhouse::photo
