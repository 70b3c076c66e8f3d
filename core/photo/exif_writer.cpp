#include "core/photo/exif.h"

#include <cmath>
#include <cstdio>

namespace lathhouse::photo {
namespace {

constexpr unsigned kAscii = 2;
constexpr unsigned kShort = 3;
constexpr unsigned kLong = 4;
constexpr unsigned kRational = 5;

void put(Bytes& bytes, std::uint32_t value, int size)
{
    for (int i = 0; i < size; ++i) {
        bytes.push_back(static_cast<std::uint8_t>(value >> 8 * i));
    }
}

struct Field {
    unsigned tag;
    unsigned type;
    std::uint32_t count;
    Bytes value;
};

Field text_field(unsigned tag, const std::string& text)
{
    Bytes value{text.begin(), text.end()};
    value.push_back(0);
    return {tag, kAscii, static_cast<std::uint32_t>(value.size()), value};
}

Field number_field(unsigned tag, unsigned type, std::uint32_t number)
{
    Bytes value;
    put(value, number, type == kShort ? 2 : 4);
    return {tag, type, 1, value};
}

/// Degrees, minutes and hundred-thousandths of a second (0.3 mm on the ground).
Field angle_field(unsigned tag, double degrees)
{
    constexpr double kParts = 100000.0;
    auto parts = static_cast<std::uint64_t>(std::llround(std::abs(degrees) * 3600.0 * kParts));
    const auto minute = static_cast<std::uint64_t>(60.0 * kParts);
    Bytes value;
    put(value, static_cast<std::uint32_t>(parts / (60 * minute)), 4);
    put(value, 1, 4);
    put(value, static_cast<std::uint32_t>(parts / minute % 60), 4);
    put(value, 1, 4);
    put(value, static_cast<std::uint32_t>(parts % minute), 4);
    put(value, static_cast<std::uint32_t>(kParts), 4);
    return {tag, kRational, 3, value};
}

std::size_t size_of(const std::vector<Field>& fields)
{
    std::size_t size = 2 + 12 * fields.size() + 4;
    for (const auto& field : fields) {
        size += field.value.size() > 4 ? field.value.size() + field.value.size() % 2 : 0;
    }
    return size;
}

/// One directory with its values behind it. Precondition: fields in the order of their tags.
void put_directory(Bytes& block, const std::vector<Field>& fields)
{
    auto values_at = static_cast<std::uint32_t>(block.size() + 2 + 12 * fields.size() + 4);
    Bytes values;
    put(block, static_cast<std::uint32_t>(fields.size()), 2);
    for (const auto& field : fields) {
        put(block, field.tag, 2);
        put(block, field.type, 2);
        put(block, field.count, 4);
        if (field.value.size() > 4) {
            put(block, values_at + static_cast<std::uint32_t>(values.size()), 4);
            values.insert(values.end(), field.value.begin(), field.value.end());
            if (values.size() % 2 != 0) {
                values.push_back(0);
            }
        } else {
            auto inside = field.value;
            inside.resize(4);
            block.insert(block.end(), inside.begin(), inside.end());
        }
    }
    put(block, 0, 4);
    block.insert(block.end(), values.begin(), values.end());
}

} // namespace

Bytes make_exif(const Exif& facts)
{
    std::vector<Field> detail;
    if (facts.taken) {
        auto time = to_text(*facts.taken);
        time[4] = time[7] = ':';
        time[10] = ' ';
        detail.push_back(text_field(0x9003, time));
        if (facts.zone_offset) {
            const auto minutes = static_cast<int>(facts.zone_offset->count());
            char text[32];
            std::snprintf(text, sizeof text, "%c%02d:%02d", minutes < 0 ? '-' : '+', std::abs(minutes) / 60,
                          std::abs(minutes) % 60);
            detail.push_back(text_field(0x9011, text));
        }
    }
    std::vector<Field> gps;
    if (facts.position) {
        const double latitude = facts.position->latitude.degrees();
        const double longitude = facts.position->longitude.degrees();
        gps = {text_field(1, latitude < 0 ? "S" : "N"), angle_field(2, latitude),
               text_field(3, longitude < 0 ? "W" : "E"), angle_field(4, longitude)};
    }
    std::vector<Field> main;
    if (!facts.camera.empty()) {
        main.push_back(text_field(0x0110, facts.camera));
    }
    main.push_back(number_field(0x0112, kShort, static_cast<std::uint32_t>(facts.orientation)));
    const auto link = [&](unsigned tag) { main.push_back(number_field(tag, kLong, 0)); };
    if (!detail.empty()) {
        link(0x8769);
    }
    if (!gps.empty()) {
        link(0x8825);
    }
    auto at = 8 + size_of(main);
    for (auto& field : main) {
        if (field.tag == 0x8769 || field.tag == 0x8825) {
            field = number_field(field.tag, kLong, static_cast<std::uint32_t>(at));
            at += size_of(field.tag == 0x8769 ? detail : gps);
        }
    }
    Bytes block{'I', 'I', 42, 0, 8, 0, 0, 0};
    put_directory(block, main);
    if (!detail.empty()) {
        put_directory(block, detail);
    }
    if (!gps.empty()) {
        put_directory(block, gps);
    }
    return block;
}

} // namespace lathhouse::photo
