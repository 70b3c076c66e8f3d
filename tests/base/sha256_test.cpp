#include "core/base/sha256.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace lathhouse {
namespace {

// Source: NIST, "Example Algorithms: SHA256" (the one-block, two-block and million letter messages that FIPS 180-2,
// appendix B, works through and FIPS 180-4 refers to) and NIST's byte-oriented short messages file SHA256ShortMsg.rsp
// (CAVS 11.0) for the empty one.
TEST(Sha256, GivesThePublishedDigests)
{
    EXPECT_EQ(sha256_of(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(sha256_of("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256_of("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256_of(std::string(1'000'000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Sha256, PiecesGiveWhatTheWholeGives)
{
    Sha256 digest;
    for (int piece = 0; piece < 1000; ++piece) {
        digest.update(std::string(1000, 'a'));
    }
    EXPECT_EQ(digest.hex(), sha256_of(std::string(1'000'000, 'a')));
}

TEST(Sha256, BeginsAnewAfterADigest)
{
    Sha256 digest;
    digest.update("something else");
    (void)digest.hex();
    digest.update("abc");
    EXPECT_EQ(digest.hex(), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(Sha256, OfAFileIsThatOfItsBytes)
{
    auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_test_XXXXXX").string();
    ASSERT_NE(mkdtemp(pattern.data()), nullptr);
    const auto file = std::filesystem::path{pattern} / "bytes";
    const std::string bytes((std::size_t{1} << 20) + 7, '\0'); // More than one piece, the last one short.
    std::ofstream{file, std::ios::binary} << bytes;
    EXPECT_EQ(sha256_of_file(file).value(), sha256_of(bytes));
    EXPECT_EQ(sha256_of_file(file.parent_path()).error().code, ErrorCode::Unreadable);
    EXPECT_EQ(sha256_of_file(file.parent_path() / "none").error().code, ErrorCode::NotFound);
    std::filesystem::remove_all(pattern);
}

} // namespace
} // namespace lathhouse
