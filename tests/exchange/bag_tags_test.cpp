#include "core/exchange/bag_tags.h"

#include "core/base/sha256.h"
#include "core/exchange/bag_path.h"
#include "core/exchange/utf8.h"

#include <gmock/gmock.h>

namespace lathhouse::exchange {
namespace {

using testing::HasSubstr;

std::string refusal(const std::string& text)
{
    const auto read = read_manifest_text(text);
    return read ? "taken" : read.error().message;
}

TEST(BagManifest, ComesBackAsItWasWrittenWhateverThePath)
{
    const std::vector<ManifestLine> lines{{sha256_of("a"), "data/50% off.jpg"}, {sha256_of("b"), "data/%0A is text"},
                                          {sha256_of("c"), "data/a  b"}};
    const auto text = manifest_text(lines);
    EXPECT_THAT(text, HasSubstr("  data/50%25 off.jpg\n"));
    const auto read = read_manifest_text(text);
    ASSERT_TRUE(read) << read.error().message;
    ASSERT_EQ(read->size(), 3U);
    for (std::size_t at = 0; at < 3; ++at) {
        EXPECT_EQ(read->at(at).path, lines[at].path);
        EXPECT_EQ(read->at(at).sha256, lines[at].sha256);
    }
}

TEST(BagManifest, LineEndsInAPathAreWrittenAsTheStandardHasIt)
{
    // RFC 8493, 2.1.3: CR, LF and % are percent-encoded. Such a path is then no plain one, and not taken.
    const auto text = manifest_text({{sha256_of("a"), "data/a\rb\nc"}});
    EXPECT_THAT(text, HasSubstr("data/a%0Db%0Ac\n"));
    EXPECT_THAT(refusal(text), HasSubstr("control characters"));
}

TEST(BagManifest, IsReadFromEverySystem)
{
    const auto digest = sha256_of("a");
    auto upper = digest;
    for (auto& letter : upper) {
        letter = static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
    }
    const auto read = read_manifest_text(digest + "  data/a\r\n\r\n" + upper + " *data/b\r" + digest + "\t./data/c");
    ASSERT_TRUE(read) << read.error().message;
    ASSERT_EQ(read->size(), 3U);
    EXPECT_EQ(read->at(0).path, "data/a");
    EXPECT_EQ(read->at(1).path, "data/b");
    EXPECT_EQ(read->at(1).sha256, digest);
    EXPECT_EQ(read->at(2).path, "data/c");
}

TEST(BagManifest, WhatIsNoLineOfItIsRefusedWithItsNumber)
{
    const auto digest = sha256_of("a");
    EXPECT_THAT(refusal(digest + "  data/a\n" + digest.substr(1) + "  data/b\n"), HasSubstr("line 2 has no digest"));
    EXPECT_THAT(refusal(digest + "\n"), HasSubstr("line 1 has no digest"));
    EXPECT_THAT(refusal(digest + "xdata/a\n"), HasSubstr("line 1 has no digest"));
    EXPECT_THAT(refusal("g" + digest.substr(1) + "  data/a\n"), HasSubstr("line 1 has no digest"));
    EXPECT_THAT(refusal(digest + "    \n"), HasSubstr("empty name"));
    EXPECT_THAT(refusal(digest + "  data/" + std::string(1001, 'a') + "\n"), HasSubstr("1000 bytes"));
    EXPECT_THAT(refusal(digest + "  data/a\xC3\n"), HasSubstr("not UTF-8"));
    EXPECT_THAT(refusal(digest + "  data/a\n" + digest + "  data/a\n"), HasSubstr("again"));
}

TEST(BagInfo, AValueMayGoOnInTheNextLine)
{
    const auto labels = read_bag_info(" lost\nContact-Name : Nobody\n\nExternal-Description: a household\n  of pots\n\tand more\nnothing\n");
    ASSERT_EQ(labels.size(), 2U);
    EXPECT_EQ(labels[0].name, "Contact-Name");
    EXPECT_EQ(labels[0].value, "Nobody");
    EXPECT_EQ(labels[1].value, "a household of pots and more");
    const auto again = read_bag_info(bag_info_text(labels));
    ASSERT_EQ(again.size(), 2U);
    EXPECT_EQ(again[1].value, labels[1].value);
}

TEST(BagFolder, IsANameForEverySystem)
{
    EXPECT_EQ(bag_folder_name("my plants (2)"), "my_plants__2_");
    EXPECT_EQ(bag_folder_name(""), "household");
    EXPECT_EQ(bag_folder_name("..hidden"), "household..hidden");
    EXPECT_EQ(bag_folder_name(std::string(300, 'a')).size(), 100U);
}

TEST(Utf8, IsWhatTheStandardTakes)
{
    // RFC 3629, section 4: the ends of each range, and what lies beyond them.
    for (const char* text : {"", "a", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80", "\xEF\xBF\xBF",
                             "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
        EXPECT_TRUE(is_utf8(text)) << testing::PrintToString(text);
    }
    for (const char* text : {"\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
                             "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xE2\x82", "a\xFF"}) {
        EXPECT_FALSE(is_utf8(text)) << testing::PrintToString(text);
    }
}

} // namespace
} // namespace lathhouse::exchange
