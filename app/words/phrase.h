#pragma once

#include <array>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::words {

/// Somebody who reads another language than the source's.
struct Reader {
    std::string language; ///< Of ISO 639: a column of the tables of names and texts.
    /// What stands for a sentence of this room; empty: nothing is known for it.
    std::function<std::string(const char*)> phrase;
    char decimal_mark = '.';
    bool month_first = false; ///< Whether a date begins with its month, as "Jun 23".
};

/// From now on all is said to that reader. Called once at the start, before anything is said by any thread; a program
/// that never calls it, such as the command line, speaks the source's language, English.
void speak_to(Reader reader);

/// '.' or ','.
char decimal_mark();
bool month_first();

/// A sentence of this program for the reader. Whole sentences with places for what changes, never pieces put one behind
/// the other: languages differ in their order. `%1` to `%9` are the parts.
std::string phrase(const char* source);
std::string phrase_of(const char* source, const std::string_view* parts, std::size_t count);

template <class... Parts>
std::string phrase(const char* source, const Parts&... parts)
{
    const std::array<std::string_view, sizeof...(Parts)> all{std::string_view{parts}...};
    return phrase_of(source, all.data(), all.size());
}

/// Marks a source sentence that stands in a list and is given to `phrase` later.
constexpr const char* said_later(const char* source)
{
    return source;
}

/// "a", "a and b", "a, b and c".
std::string joined(const std::vector<std::string>& pieces);

} // namespace lathhouse::words
