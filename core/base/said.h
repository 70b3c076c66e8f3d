#pragma once

#include <algorithm>
#include <concepts>
#include <cstddef>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace lathhouse {

struct Error;

/// A text in English, and what it was made from where it was made from a sentence: so that it can be said in another
/// language. A name, a number or what a library said is a text alone. Nothing becomes a part unseen: a sentence that is
/// handed to a function as a part must be made with `said` or it does not build.
struct Said {
    std::string text;
    const char* sentence = nullptr; ///< Of the source, with %1 to %9 for the parts.
    std::vector<Said> parts;

    Said() = default;
    template <class Text>
    requires std::convertible_to<const Text&, std::string_view>
    explicit Said(const Text& of) : text(std::string_view{of})
    {
    }
    template <std::integral Number>
    requires(!std::same_as<Number, bool> && !std::same_as<Number, char>)
    explicit Said(Number number) : text(std::to_string(number))
    {
    }
    /// What an error says: the reason within a longer sentence.
    explicit Said(const Error& error);
};

/// `sentence` with `parts` in its places.
std::string filled(std::string_view sentence, const std::string_view* parts, std::size_t count);

/// A sentence that stands in the source, where app/i18n finds it, with as many places as it has parts: another does not
/// build.
template <std::size_t Parts>
struct Sentence {
    const char* source;

    consteval Sentence(const char* of) : source(of)
    {
        std::size_t places = 0;
        for (const char* at = of; *at != '\0'; ++at) {
            if (*at == '%' && at[1] >= '1' && at[1] <= '9') {
                places = std::max(places, static_cast<std::size_t>(at[1] - '0'));
            }
        }
        if (places != Parts) {
            throw "a sentence has other places than parts";
        }
    }
};

Said put_together(const char* sentence, std::vector<Said> parts);

/// A sentence that stands in a list; what is said of it later is `put_together`, or without parts `said_now`.
template <std::size_t Parts = 0>
consteval Sentence<Parts> said_later(const char* sentence)
{
    return {sentence};
}
inline Said said_now(Sentence<0> sentence)
{
    return put_together(sentence.source, {});
}

/// A whole sentence, or a part of one that is said in words; never a text that was put together from pieces.
template <class... Parts>
Said said(std::type_identity_t<Sentence<sizeof...(Parts)>> sentence, const Parts&... parts)
{
    return put_together(sentence.source, std::vector<Said>{Said(parts)...});
}

} // namespace lathhouse
