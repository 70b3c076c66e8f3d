#include "core/climate/fixed_width_line.h"

#include "core/climate/daily_lines.h"

#include <algorithm>
#include <bit>
#include <charconv>
#include <cstring>

namespace lathhouse::climate::fixed_width {
namespace {

constexpr std::size_t kFieldLength = 8;

/// The same letters, or numbers, of four days beside each other. GCC and Clang turn these into one instruction for all
/// four on every processor that has such, and into four where it has none.
using FourDays = std::uint32_t __attribute__((vector_size(16)));
using FourNumbers = std::int32_t __attribute__((vector_size(16)));
using FourReadings = std::int16_t __attribute__((vector_size(8)));

constexpr FourDays all(std::uint32_t value)
{
    return FourDays{value, value, value, value};
}
constexpr FourNumbers all_numbers(std::int32_t value)
{
    return FourNumbers{value, value, value, value};
}

struct FourValues {
    FourNumbers readings;    ///< Tenths, or kGapTenths.
    FourNumbers missing;     ///< -1 where the file says so, else 0; so the others.
    FourNumbers well_formed;
};
constexpr std::int16_t kGapTenths = 32767; ///< DailyReading's own, see the assertion below.
static_assert(std::bit_cast<std::int16_t>(DailyReading{}) == kGapTenths);

/// Four fields: a right-aligned whole number in the first five of eight characters, then three flags. Without
/// branches, the letters handled as bytes of words, the first letter lowest: `first` the first four, `rest` the last
/// digit and the flags. A blank XOR '0' is 0x10, a minus 0x1D, a digit 0..9; only the first two have bit 4 set.
FourValues values_of(FourDays first, FourDays rest)
{
    const FourDays x = first ^ all(0x30303030U);
    const FourDays blank = (x >> 4) & all(0x01010101U);
    const FourDays no_digit = (blank << 8) - blank; // Each byte all ones or all zeros.
    const FourDays d = x & ~no_digit;
    const FourDays units = (rest ^ all(0x30U)) & all(0xFFU);
    // Of the letters before the digits all are blanks but the last, which may be a minus.
    const FourDays sign = (x & no_digit) ^ (all(0x10101010U) & no_digit);
    const FourDays place_of_sign = (no_digit ^ (no_digit >> 8)) & all(0x01010101U);
    const FourDays minus = (place_of_sign << 3) + (place_of_sign << 2) + place_of_sign; // 0x0D there.
    const FourNumbers negative = sign != all(0);
    FourNumbers well_formed = (no_digit & (no_digit + all(1U))) == all(0);
    well_formed &= ~negative | (sign == minus);
    well_formed &= (((d + all(0x06060606U)) | d) & all(0xF0F0F0F0U)) == all(0);
    well_formed &= units < all(10U);
    // Four digits at once: pairs, then all.
    const FourDays pairs = ((d << 3) + (d << 1) + (d >> 8)) & all(0x00FF00FFU);
    const FourDays high = pairs & all(0xFFU);
    const FourDays tens = (high << 6) + (high << 5) + (high << 2) + (pairs >> 16);
    const FourDays size = (tens << 3) + (tens << 1) + units;
    // Two's complement: all bits turned, and one more.
    const FourNumbers number = (std::bit_cast<FourNumbers>(size) ^ negative) - negative;

    const FourNumbers missing = number == all_numbers(kMissingReading);
    const FourNumbers possible = (number > all_numbers(-kGapTenths)) & (number < all_numbers(kGapTenths));
    const FourNumbers flagged = (rest & all(0x00FF0000U)) != all(0x00200000U);
    // Flagged values are missing, however absurd they are.
    const FourNumbers known = possible & ~missing & ~flagged;
    return {(number & known) | (all_numbers(kGapTenths) & ~known), missing, well_formed & (possible | flagged)};
}

} // namespace


std::optional<Head> head_of(const char* line)
{
    const auto is_name_letter = [](char letter) {
        return (letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9') || letter == '_' ||
               letter == '-' || (letter >= 'a' && letter <= 'z');
    };
    if (!std::all_of(line, line + 11, is_name_letter) || !std::all_of(line + 17, line + 21, is_name_letter)) {
        return std::nullopt;
    }
    const Head head{{line, 11}, digits(line + 11, 4), digits(line + 15, 2), {line + 17, 4}};
    if (head.year < kFirstYearOfRecords || head.year > kLastYearOfRecords || head.month < 1 || head.month > 12) {
        return std::nullopt;
    }
    return head;
}

bool read_values(const char* line, int days, std::array<DailyReading, 31>& readings)
{
    static_assert(std::endian::native == std::endian::little);
    static_assert(sizeof(DailyReading) == sizeof(std::int16_t));
    FourNumbers good = all_numbers(-1);
    // The last four days reach back over one that is read twice, so that none is read beyond the line.
    for (const int day : {0, 4, 8, 12, 16, 20, 24, 27}) {
        const char* field = line + kHeadLength + static_cast<std::size_t>(day) * kFieldLength;
        FourDays two{};
        FourDays other_two{};
        std::memcpy(&two, field, sizeof two);
        std::memcpy(&other_two, field + sizeof two, sizeof other_two);
        const auto values = values_of(__builtin_shufflevector(two, other_two, 0, 2, 4, 6),
                                      __builtin_shufflevector(two, other_two, 1, 3, 5, 7));
        const FourNumbers beyond = FourNumbers{day, day + 1, day + 2, day + 3} >= all_numbers(days);
        good &= values.well_formed & (~beyond | values.missing);
        const auto narrow = __builtin_convertvector(values.readings, FourReadings);
        std::ranges::copy(std::bit_cast<std::array<DailyReading, 4>>(narrow), readings.begin() + day);
    }
    return (good[0] & good[1] & good[2] & good[3]) != 0;
}

Said fault_of_values(const char* line, int days)
{
    for (int day = 0; day < 31; ++day) {
        const char* field = line + kHeadLength + static_cast<std::size_t>(day) * kFieldLength;
        const std::string_view shown{field, 5};
        const auto begin = std::min(shown.find_first_not_of(' '), shown.size());
        int number = 0;
        const auto [end, failure] = std::from_chars(shown.data() + begin, shown.data() + shown.size(), number);
        if (failure != std::errc{} || end != shown.data() + shown.size()) {
            return said("\"%1\" on day %2 is no number", shown, day + 1);
        }
        if (!DailyReading::from_tenths(number) && field[6] == ' ') {
            return said("\"%1\" on day %2 is no possible value", shown, day + 1);
        }
        if (day >= days && number != kMissingReading) {
            return said("\"%1\" on day %2 belongs to a day that the month does not have", shown, day + 1);
        }
    }
    return said("the values are not of the form that GHCN-Daily has");
}

} // namespace lathhouse::climate::fixed_width
