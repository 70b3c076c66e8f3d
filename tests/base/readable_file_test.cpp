#include "core/base/readable_file.h"

#include <gtest/gtest.h>

namespace lathhouse {
namespace {

TEST(ReadableFile, FolderAndWrongNameAreToldApart)
{
    const auto folder = std::filesystem::temp_directory_path();
    EXPECT_EQ(must_be_a_file(folder).error().code, ErrorCode::Unreadable);
    EXPECT_EQ(must_be_a_file(folder / "lathhouse-has-no-such-file").error().code, ErrorCode::NotFound);
    EXPECT_TRUE(must_be_a_file(LATHHOUSE_SOURCE "/README.md"));
    EXPECT_TRUE(must_be_a_file("/dev/null")); // Devices can be read.
}

} // namespace
} // namespace lathhouse
