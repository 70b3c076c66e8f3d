#include "core/base/packed.h"

#include "core/base/named_rows.h"
#include "core/base/packed_head.h"

#include <gmock/gmock.h>

#include <array>
#include <cstdint>
#include <limits>
#include <string>

namespace lathhouse {
namespace {

TEST(Packed, NumbersAndTextsComeBackAndTheEndIsNoted)
{
    Packer packer;
    packer.integer(std::numeric_limits<std::int64_t>::min());
    packer.integer(std::uint16_t{0xABCD});
    packer.text("pot \xC3\xA9");
    packer.text("");
    const std::string bytes = packer.bytes();
    EXPECT_EQ(bytes.substr(8, 2), "\xCD\xAB"); // The lowest byte first, on every machine.
    Unpacker whole{bytes};
    EXPECT_EQ(whole.integer<std::int64_t>(), std::numeric_limits<std::int64_t>::min());
    EXPECT_EQ(whole.integer<std::uint16_t>(), 0xABCD);
    EXPECT_EQ(whole.text(), "pot \xC3\xA9");
    EXPECT_EQ(whole.text(), "");
    EXPECT_TRUE(whole.good() && whole.at_end());
    EXPECT_EQ(whole.integer<std::uint32_t>(), 0U);
    EXPECT_FALSE(whole.good());
    for (std::size_t size = 0; size < bytes.size(); ++size) {
        Unpacker cut{std::string_view{bytes}.substr(0, size)};
        cut.integer<std::int64_t>();
        cut.integer<std::uint16_t>();
        cut.text();
        cut.text();
        EXPECT_FALSE(cut.good()) << size;
    }
    Unpacker refused{bytes};
    refused.refuse();
    EXPECT_FALSE(refused.good());
}

TEST(Packed, ATextThatSaysItIsLongerThanWhatIsLeftIsEmpty)
{
    Unpacker unpacker{std::string_view{"\x05\x00pot", 5}};
    EXPECT_EQ(unpacker.text(), "");
    EXPECT_FALSE(unpacker.good());
}

TEST(PackedHead, GivesTheBodyBackAndRefusesWhatIsAnother)
{
    constexpr PackedKind kKind{"LHPOTS\n", 3};
    const Error damaged{ErrorCode::Damaged, "pots.bin is damaged"};
    const auto bytes = with_packed_head(kKind, "twelve pots");
    EXPECT_EQ(packed_body(kKind, bytes, "pots.bin", damaged).value(), "twelve pots");
    EXPECT_EQ(packed_body(kKind, with_packed_head(kKind, ""), "pots.bin", damaged).value(), "");
    for (std::size_t size = 0; size < bytes.size(); ++size) {
        EXPECT_EQ(packed_body(kKind, bytes.substr(0, size), "pots.bin", damaged).error(), damaged) << size;
    }
    EXPECT_EQ(packed_body(kKind, bytes + "x", "pots.bin", damaged).error(), damaged);
    auto changed = bytes;
    changed.back() ^= 1;
    EXPECT_EQ(packed_body(kKind, changed, "pots.bin", damaged).error(), damaged);
    EXPECT_EQ(packed_body({"LHTUBS\n", 3}, bytes, "pots.bin", damaged).error(), damaged);
    EXPECT_EQ(packed_body({"LHPOTS\n", 4}, bytes, "pots.bin", damaged).error(), damaged) << "older";
    EXPECT_EQ(packed_body({"LHPOTS\n", 2}, bytes, "pots.bin", damaged).error().code, ErrorCode::TooNew);
}

TEST(NamedRowsLimits, AFileThatIsTooLargeIsRefusedBeforeItIsRead)
{
    constexpr std::array<std::string_view, 2> kColumns{"date", "low_c"};
    const auto large = NamedRows::parse(std::string(NamedRows::kMostBytes + 1, '1'), "big.csv", kColumns);
    ASSERT_FALSE(large);
    EXPECT_THAT(large.error().message, testing::HasSubstr("big.csv has 8 MB"));
    std::string json = "{\"date\": \"2026-01-01\", \"low_c\": [1";
    for (std::size_t row = 0; row < NamedRows::kMostRows; ++row) {
        json += ",1";
    }
    const auto many = NamedRows::parse(json + "]}", "many.json", kColumns);
    ASSERT_FALSE(many);
    EXPECT_THAT(many.error().message, testing::HasSubstr("more than 100000 rows"));
    const std::array<ColumnName, 1> names{ColumnName{"low_c", "elsewhere"}};
    const auto nothing = NamedRows::parse("{\"date\": [\"2026-01-01\"]}", "few.json", kColumns, names);
    ASSERT_FALSE(nothing);
    EXPECT_THAT(nothing.error().message, testing::HasSubstr("has nothing at \"elsewhere\"; at its top it has date"));
}

} // namespace
} // namespace lathhouse
