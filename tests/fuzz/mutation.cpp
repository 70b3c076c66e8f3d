#include "tests/fuzz/mutation.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace lathhouse::fuzz {
namespace {

using namespace std::string_view_literals;

constexpr std::size_t kLongest = 1U << 20U;

constexpr std::array kWords{
    "-9999"sv, "2147483648"sv, "-2147483649"sv, "99999999999999999999"sv, "1e999"sv, "-1e-999"sv, "nan"sv, "inf"sv, "0"sv, ""sv,
    ","sv, ";"sv, "\t"sv, "\""sv, "\"\""sv, "\r\n"sv, "\n"sv, "\r"sv, "'"sv, "="sv, "{"sv, "}"sv, "[[[[[["sv, "null"sv, "../"sv, "/"sv,
    "\\"sv, "%0D%0A"sv, "\xEF\xBB\xBF"sv, "\xC3"sv, "\xF0\x9F\xAA\xB4"sv, "\xED\xA0\x80"sv, "TMIN"sv, "TMAX"sv, "date"sv, "low_c"sv,
    "2024-02-29"sv, "2023-02-29"sv, "9999-12-31"sv, "0000-00-00"sv, "-"sv, ":"sv, "#"sv, "PK\x03\x04"sv, "PK\x05\x06"sv, "\xFF\xFF\xFF\xFF"sv,
    "\0\0\0\0"sv};

class Draw {
public:
    explicit Draw(std::mt19937_64& source) : source_(&source) {}
    std::size_t below(std::size_t limit) { return limit == 0 ? 0 : static_cast<std::size_t>((*source_)() % limit); }

private:
    std::mt19937_64* source_;
};

/// A place in the text, its end included.
std::size_t place(const std::string& text, Draw& draw)
{
    return draw.below(text.size() + 1);
}

void change(std::string& text, std::span<const std::string> seeds, Draw& draw)
{
    const auto at = place(text, draw);
    const auto run = 1 + draw.below(draw.below(4) == 0 ? 4096 : 16);
    switch (draw.below(9)) {
    case 0: // A bit.
        if (at < text.size()) {
            text[at] = static_cast<char>(static_cast<unsigned char>(text[at]) ^ (1U << draw.below(8)));
        }
        return;
    case 1: // A byte.
        if (at < text.size()) {
            text[at] = static_cast<char>(draw.below(256));
        }
        return;
    case 2:
        text.erase(at, run);
        return;
    case 3:
        text.insert(at, text.substr(at, run));
        return;
    case 4:
        text.insert(at, kWords[draw.below(kWords.size())]);
        return;
    case 5: { // A number.
        const auto begin = text.find_first_of("0123456789", at);
        if (begin != std::string::npos) {
            const auto end = text.find_first_not_of("0123456789", begin);
            text.replace(begin, end == std::string::npos ? end : end - begin, kWords[draw.below(10)]);
        }
        return;
    }
    case 6: // A run moved.
        if (at < text.size()) {
            const auto moved = text.substr(at, run);
            text.erase(at, run);
            text.insert(place(text, draw), moved);
        }
        return;
    case 7: { // Another's tail.
        const auto& other = seeds[draw.below(seeds.size())];
        text = text.substr(0, at) + other.substr(place(other, draw));
        return;
    }
    default: // Cut off.
        if (draw.below(4) == 0) {
            text.resize(at);
        } else if (at + 4 <= text.size()) { // Four bytes as binary forms have their lengths.
            const auto value = static_cast<std::uint32_t>(draw.below(3) == 0 ? draw.below(1U << 16U) : draw.below(1ULL << 32U));
            for (std::size_t index = 0; index < 4; ++index) {
                text[at + index] = static_cast<char>(value >> (8 * index) & 0xFFU);
            }
        }
    }
}

} // namespace

std::string mutated(std::span<const std::string> seeds, std::mt19937_64& source)
{
    Draw draw{source};
    std::string text = seeds[draw.below(seeds.size())];
    for (auto changes = 1 + draw.below(8); changes > 0; --changes) {
        change(text, seeds, draw);
    }
    if (text.size() > kLongest) {
        text.resize(kLongest);
    }
    return text;
}

} // namespace lathhouse::fuzz
