#include "tests/cli/with_demonstration.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

class TableCommands : public WithDemonstration {
protected:
    TableCommands() : WithDemonstration("2027-01-10") {}
};

TEST_F(TableCommands, ThereAndBack)
{
    const auto written = run_command({"--home", path("home"), "export", "csv", path("tables"), "--json"});
    ASSERT_EQ(written.status, 0) << written.err;
    const auto read = run_command({"--home", path("new"), "import", "csv", path("tables"), "--json"});
    ASSERT_EQ(read.status, 0) << read.err;
    EXPECT_EQ(read.json()["rows"], written.json()["rows"]);
    EXPECT_EQ(run_command({"--home", path("new"), "list", "plants", "--json"}).out,
              run_command({"--home", path("home"), "list", "plants", "--json"}).out);
}

TEST_F(TableCommands, SaysWhatTheTablesTellOfYourHome)
{
    const auto written = run_command({"--home", path("home"), "export", "csv", path("tables")});
    EXPECT_THAT(written.out, HasSubstr("coordinates"));
    EXPECT_THAT(written.out, HasSubstr("apostrophe"));
}

TEST_F(TableCommands, RefusesWithOneSentence)
{
    ASSERT_EQ(run_command({"--home", path("home"), "export", "csv", path("tables")}).status, 0);
    for (const auto& ran : {run_command({"--home", path("home"), "export", "csv", path("tables")}),
                            run_command({"--home", path("home"), "import", "csv", path("tables")}),
                            run_command({"--home", path("new"), "import", "csv", path("none")})}) {
        EXPECT_EQ(ran.status, 1);
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
    std::ofstream{path("tables/spots.csv")} << "id\nx\n";
    const auto malformed = run_command({"--home", path("new"), "import", "csv", path("tables")});
    EXPECT_EQ(malformed.status, 2);
    EXPECT_TRUE(is_one_clear_error(malformed)) << malformed.err;
    EXPECT_FALSE(fs::exists(path("new")));
    const auto salvage = run_command({"--home", path("home"), "export", "csv", path("saved"), "--salvage", "--json"});
    EXPECT_EQ(salvage.json()["lost"].size(), 0U);
}

} // namespace
} // namespace lathhouse::cli
