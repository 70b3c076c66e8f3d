#include "core/geodesy/place_name.h"

#include <gtest/gtest.h>

namespace lathhouse::geodesy {
namespace {

struct KeyCase {
    const char* name;
    const char* written;
    const char* key;
};
void PrintTo(const KeyCase& row, std::ostream* out)
{
    *out << row.written;
}
class NameKey : public testing::TestWithParam<KeyCase> {};
TEST_P(NameKey, IsTheSameForAllWritings)
{
    EXPECT_EQ(name_key(GetParam().written), GetParam().key);
}
INSTANTIATE_TEST_SUITE_P(
    Writings, NameKey,
    testing::Values(
        KeyCase{"Plain", "Graz", "graz"}, KeyCase{"Capitals", "NEW YORK", "new york"},
        KeyCase{"Umlaut", "Zürich", "zurich"}, KeyCase{"Decomposed", "Zu\u0308rich", "zurich"},
        KeyCase{"Strokes", "Łódź", "lodz"}, KeyCase{"Slashed", "Tromsø", "tromso"},
        KeyCase{"Ligature", "Ærøskøbing", "aeroskobing"}, KeyCase{"SharpS", "Straßwalchen", "strasswalchen"},
        KeyCase{"DotlessI", "Diyarbakır", "diyarbakir"},
        KeyCase{"Hyphen", "Stratford-upon-Avon", "stratford upon avon"},
        KeyCase{"Apostrophe", "L'Aquila", "laquila"}, KeyCase{"TypographicApostrophe", "L’Aquila", "laquila"},
        KeyCase{"Saint", "Saint-Étienne", "st etienne"}, KeyCase{"SaintShort", "St. Etienne", "st etienne"},
        KeyCase{"Cyrillic", "Москва", "moskva"}, KeyCase{"Greek", "Λάρισα", "larisa"},
        KeyCase{"Vietnamese", "Đà Nẵng", "da nang"}, KeyCase{"Blanks", "  Bad   Ischl ", "bad ischl"},
        KeyCase{"NothingInIt", " -'. ", ""}, KeyCase{"Empty", "", ""}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(NameKeyOf, BytesThatAreNoTextIsPlainAscii)
{
    const auto key = name_key("Gr\xFF\xFE\x80z\x01\x7F");
    for (const char letter : key) {
        EXPECT_TRUE(letter == ' ' || (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9'));
    }
}
TEST(NameKeyOf, AKeyIsItself)
{
    for (const char* name : {"Saint-Étienne", "東京", "القاهرة", "Hà Nội", "Ōsaka"}) {
        const auto key = name_key(name);
        EXPECT_FALSE(key.empty()) << name;
        EXPECT_EQ(name_key(key), key) << name;
    }
}

TEST(CountryName, IsEnglish)
{
    EXPECT_EQ(country_name("AT"), "Austria");
    EXPECT_EQ(country_name("US"), "United States");
}
TEST(CountryName, OfAnUnknownCodeIsTheCode)
{
    EXPECT_EQ(country_name("X9"), "X9");
}

} // namespace
} // namespace lathhouse::geodesy
