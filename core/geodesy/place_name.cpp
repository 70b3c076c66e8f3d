#include "core/geodesy/place_name.h"

#include <unicode/locid.h>
#include <unicode/translit.h>
#include <unicode/unistr.h>
#include <unicode/uscript.h>

#include <memory>

namespace lathhouse::geodesy {
namespace {

std::unique_ptr<const icu::Transliterator> transliterator(const char* rules)
{
    UErrorCode status = U_ZERO_ERROR;
    UParseError where;
    std::unique_ptr<icu::Transliterator> made{icu::Transliterator::createInstance(
        icu::UnicodeString::fromUTF8(rules), UTRANS_FORWARD, where, status)};
    return U_SUCCESS(status) ? std::move(made) : nullptr;
}

bool is_latin(const icu::UnicodeString& text)
{
    for (int32_t i = 0; i < text.length(); i = text.moveIndex32(i, 1)) {
        UErrorCode status = U_ZERO_ERROR;
        const auto script = uscript_getScript(text.char32At(i), &status);
        if (script != USCRIPT_LATIN && script != USCRIPT_COMMON && script != USCRIPT_INHERITED) {
            return false;
        }
    }
    return true;
}

/// Small ASCII letters and digits, single blanks between words; "saint" is written "st".
std::string words_of(std::string_view ascii)
{
    std::string key;
    std::string word;
    const auto end_word = [&] {
        if (!word.empty()) {
            key += (key.empty() ? "" : " ") + (word == "saint" ? std::string{"st"} : word);
            word.clear();
        }
    };
    for (const char byte : ascii) {
        const char letter = byte >= 'A' && byte <= 'Z' ? static_cast<char>(byte - 'A' + 'a') : byte;
        if ((letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9')) {
            word += letter;
        } else if (letter != '\'') {
            end_word();
        }
    }
    end_word();
    return key;
}

bool is_ascii(std::string_view text)
{
    for (const char byte : text) {
        if (static_cast<unsigned char>(byte) >= 0x80) {
            return false;
        }
    }
    return true;
}

} // namespace

std::string name_key(std::string_view name)
{
    if (is_ascii(name)) {
        return words_of(name);
    }
    // Marks go before the letters are brought to ASCII: the table knows precomposed letters only.
    constexpr const char* kMarksOff = "NFD; [\\u0300-\\u036F] Remove; NFC; Latin-ASCII";
    auto text = icu::UnicodeString::fromUTF8({name.data(), static_cast<int32_t>(name.size())});
    if (!is_latin(text)) {
        static const auto to_latin = transliterator("Any-Latin");
        if (to_latin) {
            to_latin->transliterate(text);
        }
    }
    static const auto to_ascii = transliterator(kMarksOff);
    if (to_ascii) {
        to_ascii->transliterate(text);
    }
    std::string ascii;
    text.toUTF8String(ascii);
    std::erase_if(ascii, [](char byte) { return static_cast<unsigned char>(byte) >= 0x80; });
    return words_of(ascii);
}

std::string country_name(std::string_view code)
{
    icu::UnicodeString shown;
    icu::Locale{"", std::string{code}.c_str()}.getDisplayCountry(icu::Locale::getEnglish(), shown);
    std::string name;
    shown.toUTF8String(name);
    return name.empty() ? std::string{code} : name;
}

} // namespace lathhouse::geodesy
