#pragma once

#include <string>
#include <string_view>

namespace lathhouse::geodesy {

/// What a name is looked up by: letters a-z and digits with single blanks between the words, so that case,
/// accents, hyphens, apostrophes and the script do not matter ("Saint-Étienne" and "St. Etienne" give
/// "st etienne", "Москва" gives "moskva"). Empty where the text holds no letter or digit.
///
/// Latin letters by Unicode's table to ASCII, other scripts by the general transliteration of their letters:
/// a Japanese name in Chinese characters is read as Chinese, Hebrew and Arabic lack their vowels; both sides
/// of a comparison are treated alike, so that the same writing meets itself. Bytes that are no UTF-8 are
/// dropped. Some microseconds a name; the first name in another script than Latin takes longer.
/// Source: ICU's transliterators Any-Latin and Latin-ASCII (Unicode CLDR).
std::string name_key(std::string_view name);

/// English name of a country by its ISO 3166 code of two letters; the code itself where it is not known.
/// Source: Unicode CLDR by ICU.
std::string country_name(std::string_view code);

} // namespace lathhouse::geodesy
