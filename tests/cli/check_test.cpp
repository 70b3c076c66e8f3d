#include "tests/cli/with_demonstration.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

class CheckCommand : public WithDemonstration {
protected:
    CheckCommand() : WithDemonstration("2027-01-10") {}
    Ran check(bool json = false) const
    {
        return json ? run_command({"--home", home(), "check", "--json"}) : run_command({"--home", home(), "check"});
    }
};

TEST_F(CheckCommand, ASoundHouseholdIsSaidToBe)
{
    const auto ran = check();
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("is sound"));
    EXPECT_EQ(check(true).json()["findings"].size(), 0U);
}

TEST_F(CheckCommand, TellsOfTheLastBackupAndWhatCameSince)
{
    EXPECT_THAT(check().out, HasSubstr("No backup of it is known"));
    EXPECT_TRUE(check(true).json()["last_backup"].is_null());
    const auto file = (folder() / "one.zip").string();
    ASSERT_EQ(run_command({"--on", "2027-01-10", "--home", home(), "backup", file}).status, 0);
    EXPECT_THAT(check().out, HasSubstr("Last backup on 2027-01-10 to " + file + "; nothing was entered since."));
    ASSERT_EQ(run_command({"--on", "2027-01-11", "--home", home(), "log", "event", "watered", "--plant", "1"}).status, 0);
    EXPECT_THAT(check().out, HasSubstr("; 1 entry since."));
    const auto backup = check(true).json()["last_backup"];
    EXPECT_EQ(backup["on"], "2027-01-10");
    EXPECT_EQ(backup["entries_since"], 1);
    EXPECT_EQ(check(true).json()["folder"], "local");
}

TEST_F(CheckCommand, AMemoOfTheLastBackupThatIsDamagedIsNone)
{
    fs::create_directories(folder() / "home/backups");
    std::ofstream{folder() / "home/backups/last-backup.json"} << "{\"on\": \"2027-02-30\", \"file\": \"x\", \"last_entry\": 1}";
    const auto ran = check();
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("No backup of it is known"));
}

TEST_F(CheckCommand, SaysWhatToDoAboutEach)
{
    const auto photos = folder() / "home/photos/ab";
    fs::create_directories(photos);
    std::ofstream{photos / ("ab" + std::string(62, '0') + ".jpg")} << "altered";
    std::ofstream{folder() / "home/letter.txt"} << "x";
    const auto ran = check();
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.out, HasSubstr("A photo was altered: photos/ab/ab"));
    EXPECT_THAT(ran.out, HasSubstr("What to do: put the original back"));
    EXPECT_THAT(ran.out, HasSubstr("A file is not the program's: letter.txt"));
    const auto json = check(true);
    EXPECT_EQ(json.status, 1);
    EXPECT_EQ(json.json()["sound"], false);
    EXPECT_EQ(json.json()["findings"][0]["kind"], "photo_altered");
    EXPECT_EQ(json.json()["findings"][0]["fault"], true);
    EXPECT_FALSE(json.json()["findings"][0]["to_do"].get<std::string>().empty());
}

} // namespace
} // namespace lathhouse::cli
