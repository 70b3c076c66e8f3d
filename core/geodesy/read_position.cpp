#include "core/geodesy/read_position.h"

#include "core/base/parse.h"
#include "core/geodesy/projected_position.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::geodesy {
namespace {

enum class Part { Number, Degrees, Minutes, Seconds, Letter, Separator };
struct Token {
    Part part;
    double number = 0.0; ///< Of a number, without its sign.
    bool negative = false;
    bool whole = false;
    bool signed_number = false; ///< A sign was written.
    char letter = '\0';
};

/// The text between quotation marks, on one line and not without end, for an error's sentence.
std::string quoted(std::string_view text)
{
    constexpr std::size_t kLongest = 80;
    std::string shown{"\""};
    for (const char byte : text.substr(0, kLongest)) {
        shown += static_cast<unsigned char>(byte) < 0x20 ? '?' : byte;
    }
    return shown + (text.size() > kLongest ? "...\"" : "\"");
}

Error malformed(std::string_view text, const Said& why)
{
    return Error{ErrorCode::Malformed,
                 said("%1 is no place: %2; write it as 48.21,16.37 or 48°12'36\"N 16°22'12\"E", quoted(text), why)};
}

/// Takes `mark` off the front of `rest`.
bool take(std::string_view& rest, std::string_view mark)
{
    if (!rest.starts_with(mark)) {
        return false;
    }
    rest.remove_prefix(mark.size());
    return true;
}
bool take_any(std::string_view& rest, std::initializer_list<std::string_view> marks)
{
    return std::any_of(marks.begin(), marks.end(), [&](auto mark) { return take(rest, mark); });
}

Result<std::vector<Token>> tokens_of(std::string_view text)
{
    std::vector<Token> tokens;
    auto rest = trimmed(text);
    while (!rest.empty()) {
        if (take_any(rest, {" ", "\t", "\u00A0", "\u202F", "\u2009"})) {
            continue;
        }
        if (take_any(rest, {",", ";"})) {
            tokens.push_back({Part::Separator});
            continue;
        }
        if (take_any(rest, {"\u00B0", "\u00BA"})) { // The degree sign and its look-alike.
            tokens.push_back({Part::Degrees});
            continue;
        }
        if (take_any(rest, {"''", "\"", "\u2033", "\u201D"})) {
            tokens.push_back({Part::Seconds});
            continue;
        }
        if (take_any(rest, {"'", "\u2032", "\u2019"})) {
            tokens.push_back({Part::Minutes});
            continue;
        }
        if (const auto at = std::string_view{"NSEWnsew"}.find(rest.front()); at != std::string_view::npos) {
            tokens.push_back({Part::Letter});
            tokens.back().letter = "NSEWNSEW"[at];
            rest.remove_prefix(1);
            continue;
        }
        Token token{Part::Number};
        if (take_any(rest, {"-", "\u2212"})) {
            token.negative = token.signed_number = true;
        } else if (take(rest, "+")) {
            token.signed_number = true;
        }
        const auto digits = rest.substr(0, rest.find_first_not_of("0123456789."));
        const auto number = parse_number(digits);
        if (!number) {
            return malformed(text, said("it holds something that is neither a number nor N, S, E, W"));
        }
        token.number = *number;
        token.whole = digits.find('.') == std::string_view::npos;
        tokens.push_back(token);
        rest.remove_prefix(digits.size());
    }
    return tokens;
}

/// Where the second coordinate begins; a separator there is dropped by the caller.
std::optional<std::size_t> second_start(std::span<const Token> tokens)
{
    const auto is = [&](std::size_t i, Part part) { return tokens[i].part == part; };
    std::vector<std::size_t> separators;
    std::vector<std::size_t> letters;
    std::vector<std::size_t> degrees;
    std::size_t numbers = 0;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (is(i, Part::Separator)) {
            separators.push_back(i);
        } else if (is(i, Part::Letter)) {
            letters.push_back(i);
        } else if (is(i, Part::Degrees)) {
            degrees.push_back(i);
        } else if (is(i, Part::Number)) {
            ++numbers;
        }
    }
    if (!separators.empty()) {
        return separators.size() == 1 ? std::optional{separators.front()} : std::nullopt;
    }
    if (letters.size() == 2) {
        return letters.front() == 0 ? letters.back() : letters.front() + 1;
    }
    if (degrees.size() == 2 && degrees.back() > 0) {
        return degrees.back() - 1;
    }
    if (numbers == 2 && tokens.size() == 2) {
        return 1;
    }
    return std::nullopt;
}

struct Coordinate {
    double degrees;
    char letter; ///< '\0' where none was written.
};

Result<Coordinate> coordinate_of(std::string_view text, std::span<const Token> tokens)
{
    Coordinate coordinate{0.0, '\0'};
    if (!tokens.empty() && tokens.front().part == Part::Letter) {
        coordinate.letter = tokens.front().letter;
        tokens = tokens.subspan(1);
    } else if (!tokens.empty() && tokens.back().part == Part::Letter) {
        coordinate.letter = tokens.back().letter;
        tokens = tokens.first(tokens.size() - 1);
    }
    constexpr Part kMarks[] = {Part::Degrees, Part::Minutes, Part::Seconds};
    double unit = 1.0;
    std::size_t count = 0;
    bool negative = false;
    bool may_go_on = true;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        const auto& token = tokens[i];
        if (token.part != Part::Number || count == 3 || !may_go_on) {
            return malformed(text, said("its parts are not degrees, minutes and seconds in that order"));
        }
        if (count == 0) {
            negative = token.negative;
            if (token.signed_number && coordinate.letter != '\0') {
                return malformed(text, said("a coordinate has both a sign and one of N, S, E, W"));
            }
        } else {
            if (token.signed_number) {
                return malformed(text, said("minutes and seconds have no sign"));
            }
            if (token.number >= 60.0) {
                return Error{
                    ErrorCode::OutOfRange,
                    said("%1 has minutes or seconds of 60 or more; they run from 0 to below 60", quoted(text))};
            }
        }
        coordinate.degrees += token.number / unit;
        may_go_on = token.whole; // After decimals nothing smaller can follow.
        if (i + 1 < tokens.size() && tokens[i + 1].part != Part::Number) {
            if (tokens[i + 1].part != kMarks[count]) {
                return malformed(text, said("its degree, minute and second marks are not in that order"));
            }
            ++i;
        }
        ++count;
        unit *= 60.0;
    }
    if (count == 0) {
        return malformed(text, said("a coordinate has no number"));
    }
    if (negative || coordinate.letter == 'S' || coordinate.letter == 'W') {
        coordinate.degrees = -coordinate.degrees;
    }
    return coordinate;
}

std::string shown(double degrees)
{
    auto digits = std::to_string(degrees); // Six decimals.
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.back() == '.') {
        digits.pop_back();
    }
    return digits;
}

Result<Position> read_epsg(std::string_view text)
{
    const auto pieces = split(text, ':');
    if (pieces.size() == 3) {
        const auto code = parse_integer(pieces[1]);
        const auto pair = split(pieces[2], ',');
        if (code && *code > 0 && pair.size() == 2) {
            const auto easting = parse_number(pair[0]);
            const auto northing = parse_number(pair[1]);
            if (easting && northing) {
                return position_in_epsg(*code, *easting, *northing);
            }
        }
    }
    return Error{ErrorCode::Malformed,
                 said("%1 is no place: the form is EPSG:code:easting,northing, such as EPSG:32633:601000,5340000",
                      quoted(text))};
}
} // namespace

Result<Position> read_position(std::string_view text)
{
    const auto bare = trimmed(text);
    if (lower_case(bare.substr(0, 5)) == "epsg:") {
        return read_epsg(bare);
    }
    const auto tokens = tokens_of(bare);
    if (!tokens) {
        return tokens.error();
    }
    const std::span<const Token> all{*tokens};
    const auto second_at = second_start(all);
    if (!second_at) {
        return malformed(bare, said("it is not a latitude and a longitude, two numbers with a decimal point"));
    }
    const bool separated = all[*second_at].part == Part::Separator;
    const auto first = coordinate_of(bare, all.first(*second_at));
    if (!first) {
        return first.error();
    }
    const auto second = coordinate_of(bare, all.subspan(*second_at + (separated ? 1 : 0)));
    if (!second) {
        return second.error();
    }
    const auto is_east = [](char letter) { return letter == 'E' || letter == 'W'; };
    const auto is_north = [](char letter) { return letter == 'N' || letter == 'S'; };
    if ((is_east(first->letter) && is_east(second->letter)) ||
        (is_north(first->letter) && is_north(second->letter))) {
        return malformed(bare, said("it has two latitudes or two longitudes"));
    }
    const bool swapped = is_east(first->letter) || is_north(second->letter);
    const double latitude_degrees = swapped ? second->degrees : first->degrees;
    const double longitude_degrees = swapped ? first->degrees : second->degrees;
    const auto latitude = Latitude::from_degrees(latitude_degrees);
    if (!latitude) {
        const bool other_way = std::abs(longitude_degrees) <= 90.0 && std::abs(latitude_degrees) <= 180.0;
        return Error{ErrorCode::OutOfRange,
                     other_way ? said("the latitude %1 in %2 lies outside -90 to 90 degrees; the latitude comes first",
                                      shown(latitude_degrees), quoted(bare))
                               : said("the latitude %1 in %2 lies outside -90 to 90 degrees", shown(latitude_degrees),
                                      quoted(bare))};
    }
    const auto longitude = Longitude::from_degrees(longitude_degrees);
    if (!longitude) {
        return Error{ErrorCode::OutOfRange,
                     said("the longitude %1 in %2 lies outside -180 to 180 degrees; count west as negative",
                          shown(longitude_degrees), quoted(bare))};
    }
    return Position{*latitude, *longitude};
}

} // namespace lathhouse::geodesy
