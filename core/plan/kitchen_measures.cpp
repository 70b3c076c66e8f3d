#include "core/plan/kitchen_measures.h"

#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace lathhouse::plan {
namespace {

struct Measure {
    std::string_view name;
    double millilitres;
};

constexpr std::array<Measure, 14> kMeasures{{{"ml", 1.0},
                                             {"l", 1000.0},
                                             {"litre", 1000.0},
                                             {"liter", 1000.0},
                                             {"cup", 236.5882365},
                                             {"cup-metric", 250.0},
                                             {"tbsp", 14.78676478125},
                                             {"tsp", 4.92892159375},
                                             {"floz-us", 29.5735295625},
                                             {"pint-us", 473.176473},
                                             {"pint-imp", 568.26125},
                                             {"quart-us", 946.352946},
                                             {"gal-us", 3785.411784},
                                             {"gal-imp", 4546.09}}};

/// "2", "0.5", "1/2".
std::optional<double> plain_or_fraction(std::string_view text)
{
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) {
        return parse_number(text);
    }
    const auto upper = parse_number(text.substr(0, slash));
    const auto lower = parse_number(text.substr(slash + 1));
    if (!upper || !lower || !(*lower > 0.0)) {
        return std::nullopt;
    }
    return *upper / *lower;
}

/// The above, or a whole number and a fraction below one: "1 1/2". No other two numbers add up: "1 000" is a thousand
/// to who writes it.
std::optional<double> quantity(std::string_view text)
{
    const auto blank = text.find(' ');
    if (blank == std::string_view::npos) {
        return plain_or_fraction(text);
    }
    const auto whole = parse_integer(text.substr(0, blank));
    const auto behind = trimmed(text.substr(blank));
    const auto part = plain_or_fraction(behind);
    const bool adds_up = whole && *whole >= 0 && part && behind.find('/') != std::string_view::npos && *part > 0.0 &&
                         *part < 1.0;
    return adds_up ? std::optional{*whole + *part} : std::nullopt;
}

/// The measure of a word in lower case, of one or of several ("cup", "cups"); nullptr for another word.
const Measure* measure_of(std::string_view name)
{
    const auto named = [](std::string_view word) { return std::ranges::find(kMeasures, word, &Measure::name); };
    const auto* found = named(name);
    if (found == kMeasures.end() && name.ends_with('s')) {
        found = named(name.substr(0, name.size() - 1));
    }
    return found == kMeasures.end() ? nullptr : &*found;
}

} // namespace

bool is_measure(std::string_view name)
{
    return measure_of(lower_case(trimmed(name))) != nullptr;
}

Result<Litres> read_amount(std::string_view text)
{
    return read_amount(text, {});
}

Result<Litres> read_amount(std::string_view text, std::span<const home::Jug> jugs)
{
    const std::string lower = lower_case(trimmed(text));
    std::string_view rest = lower;
    const auto letter = std::ranges::find_if(rest, [](char of) {
        return (of >= 'a' && of <= 'z') || static_cast<unsigned char>(of) >= 0x80; // A jug may be a Krug.
    });
    const auto split_at = static_cast<std::size_t>(letter - rest.begin());
    const auto name = rest.substr(split_at);
    const auto number = trimmed(rest.substr(0, split_at));
    std::optional<double> size;
    if (const auto* measure = measure_of(name)) {
        size = measure->millilitres;
    } else if (const auto jug = std::ranges::find(
                   jugs, name, [](const home::Jug& of) { return lower_case(of.name); });
               jug != jugs.end()) {
        size = jug->volume.millilitres();
    }
    const auto count = number.empty() ? std::optional{1.0} : quantity(number);
    if (!size || !count) {
        Said own{""};
        for (const auto& jug : jugs) {
            own = said("%1, or %2", own, jug.name);
        }
        return Error{ErrorCode::Malformed, said("\"%1\" is no amount of water; write a number and a measure, such as 2 "
                                                "L, 500 ml, cup, cup-metric, tbsp, "
                                                "tsp, floz-us, pint-us, pint-imp, quart-us, gal-us or gal-imp%2",
                                                text.substr(0, 40), own)};
    }
    const double millilitres = *count * *size;
    if (!(millilitres > 0.0 && millilitres <= 1.0e6)) {
        return Error{ErrorCode::OutOfRange, said("an amount of water must be above 0 and at most 1000 L")};
    }
    return Litres::from_millilitres(millilitres);
}

std::string us_measure(Litres volume)
{
    struct Cup {
        const char* one;
        const char* many;
        double millilitres;
    };
    constexpr std::array<Cup, 4> kCups{{{"gallon", "gallons", 3785.411784},
                                        {"cup", "cups", 236.5882365},
                                        {"tablespoon", "tablespoons", 14.78676478125},
                                        {"teaspoon", "teaspoons", 4.92892159375}}};
    for (const auto& cup : kCups) {
        const double count = volume.millilitres() / cup.millilitres;
        if (count >= 0.95 || &cup == &kCups.back()) {
            return spoons(count) + " " + (count < 1.125 ? cup.one : cup.many);
        }
    }
    return {};
}

std::string spoons(double teaspoons)
{
    if (!(teaspoons >= 1.0 / 16.0)) {
        return "less than 1/8";
    }
    // Eighths up to one, quarters up to three, halves above: finer spoons are not to be had.
    const double step = teaspoons < 1.0 ? 0.125 : teaspoons < 3.0 ? 0.25 : 0.5;
    const long eighths = std::lround(8.0 * step * std::round(teaspoons / step));
    const long whole = eighths / 8;
    constexpr std::array<const char*, 8> kParts{"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};
    const std::string part = kParts[static_cast<std::size_t>(eighths % 8)];
    return whole == 0 ? part : std::to_string(whole) + (part.empty() ? "" : " " + part);
}

} // namespace lathhouse::plan
