#include "app/desktop.h"

#include <gtest/gtest.h>

#include <string>

namespace lathhouse {
namespace {

TEST(Surroundings, NameWhatTheyAreNotAskedFor)
{
    for (const char* name : {"LATHHOUSE_THEME", "LATHHOUSE_TEXT", "LATHHOUSE_MOTION"}) {
        const QByteArray before = qgetenv(name);
        qputenv(name, "plaid");
        testing::internal::CaptureStderr();
        settings_of_surroundings();
        const std::string said = testing::internal::GetCapturedStderr();
        EXPECT_NE(said.find(name), std::string::npos) << said;
        EXPECT_NE(said.find("plaid"), std::string::npos) << said;
        before.isNull() ? qunsetenv(name) : qputenv(name, before);
    }
}

} // namespace
} // namespace lathhouse
