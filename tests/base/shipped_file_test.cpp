#include "core/base/shipped_file.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace lathhouse {
namespace {

TEST(ShippedFile, IsTheOneThatTheEnvironmentNames)
{
    ::setenv("LATHHOUSE_TEST_TABLE", "/some/where/table.bin", 1);
    const auto file = find_shipped_file("table.bin", "LATHHOUSE_TEST_TABLE", "the table");
    ::unsetenv("LATHHOUSE_TEST_TABLE");
    ASSERT_TRUE(file) << file.error().message;
    EXPECT_EQ(*file, "/some/where/table.bin");
}
TEST(ShippedFile, ThatIsMissingIsNamedWithThePlacesAndTheRemedy)
{
    const auto file = find_shipped_file("no-such-table.bin", "LATHHOUSE_TEST_TABLE", "the table of nothing");
    ASSERT_FALSE(file);
    EXPECT_EQ(file.error().code, ErrorCode::NotFound);
    EXPECT_NE(file.error().message.find("the table of nothing"), std::string::npos);
    EXPECT_NE(file.error().message.find("no-such-table.bin"), std::string::npos);
    EXPECT_NE(file.error().message.find("LATHHOUSE_TEST_TABLE"), std::string::npos);
}

} // namespace
} // namespace lathhouse
