#include "app/cli/long_work.h"
#include "app/cli/shell_word.h"
#include "tests/cli/with_demonstration.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include <sys/wait.h>
#include <unistd.h>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

class BackupCommands : public WithDemonstration {
protected:
    BackupCommands() : WithDemonstration("2027-01-10") {}
    Ran at_home(const std::vector<std::string>& command, const std::string& home = "home") const
    {
        std::vector<std::string> arguments{"--home", path(home), "--on", "2027-03-01"};
        arguments.insert(arguments.end(), command.begin(), command.end());
        return run_command(arguments);
    }
};

TEST_F(BackupCommands, ThereAndBack)
{
    const auto made = at_home({"backup", path("plants.zip"), "--json"});
    ASSERT_EQ(made.status, 0) << made.err;
    EXPECT_EQ(made.json()["files"], 1);
    EXPECT_EQ(made.json()["verified"], true);
    const auto restored = run_command({"restore", path("plants.zip"), path("new"), "--json"});
    ASSERT_EQ(restored.status, 0) << restored.err;
    EXPECT_EQ(restored.json()["backed_up_on"], "2027-03-01");
    EXPECT_EQ(at_home({"list", "plants"}, "new").out, at_home({"list", "plants"}).out);
    EXPECT_EQ(at_home({"check"}, "new").status, 0);
}

/// What the system's own shell makes of a word.
std::string read_by_shell(const std::string& word)
{
    FILE* said = popen(("printf %s " + word).c_str(), "r");
    std::array<char, 256> letters{};
    const auto count = std::fread(letters.data(), 1, letters.size(), said);
    EXPECT_EQ(pclose(said), 0) << word;
    return {letters.data(), count};
}

TEST_F(BackupCommands, WhatIsToBeTypedIsReadByAShellAsItIs)
{
    for (const char* name : {"plants", "two words", "it's", "$HOME `ls` \"x\" *", "-a;b&c|d", "~", "Küche", ""}) {
        EXPECT_EQ(read_by_shell(shell_word(name)), name);
    }
    ASSERT_EQ(at_home({"backup", path("plants.zip")}).status, 0);
    EXPECT_THAT(run_command({"restore", path("plants.zip"), path("my new")}).out,
                HasSubstr("lathhouse --home '" + path("my new") + "'\n"));
}

TEST_F(BackupCommands, SaysWhatItTellsOfYourHome)
{
    const auto made = at_home({"backup", path("plants.zip")});
    EXPECT_THAT(made.out, HasSubstr("coordinates"));
    EXPECT_THAT(made.out, HasSubstr("read back and compared"));
    EXPECT_THAT(made.out, HasSubstr("lathhouse restore"));
}

TEST_F(BackupCommands, RefusesWithOneSentence)
{
    std::ofstream{path("there.zip")} << "precious";
    std::ofstream{path("text.zip")} << "not a zip";
    for (const auto& ran : {at_home({"backup", path("there.zip")}), at_home({"backup", path("x.zip")}, "none"),
                            run_command({"restore", path("none.zip"), path("new")}), run_command({"restore", path("there.zip"), path("home")}),
                            at_home({"check"}, "none")}) {
        EXPECT_EQ(ran.status, 1);
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
    const auto malformed = run_command({"restore", path("text.zip"), path("new")});
    EXPECT_EQ(malformed.status, 2);
    EXPECT_TRUE(is_one_clear_error(malformed)) << malformed.err;
    EXPECT_FALSE(fs::exists(path("new")));
    EXPECT_EQ(at_home({"backup", path("there.zip"), "--replace"}).status, 0);
}

TEST_F(BackupCommands, AnInterruptLeavesNothing)
{
    // Large enough that the interrupt comes while it works.
    fs::create_directories(folder() / "home/photos/zz");
    std::ofstream{folder() / "home/photos/zz/big.jpg"} << std::string(300'000'000, 'p');
    fs::create_directory(folder() / "kept");
    const pid_t child = fork();
    if (child == 0) {
        const auto ran = at_home({"backup", path("kept/plants.zip")});
        _exit(ran.status == 1 && ran.err.find("stopped") != std::string::npos && is_one_clear_error(ran) ? 7 : 1);
    }
    while (fs::is_empty(folder() / "kept")) {
        usleep(1'000);
    }
    usleep(50'000);
    kill(child, SIGINT);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 7);
    EXPECT_TRUE(fs::is_empty(folder() / "kept"));
}

TEST(LongWorks, GoOnOverAHangUpWhereTheyWereStartedToIgnoreIt)
{
    const auto before = std::signal(SIGHUP, SIG_IGN); // As by nohup.
    {
        const LongWork work{"Testing"};
        std::raise(SIGHUP);
        EXPECT_FALSE(LongWork::stop_asked());
        std::raise(SIGINT);
        EXPECT_TRUE(LongWork::stop_asked());
    }
    std::signal(SIGHUP, before);
}

} // namespace
} // namespace lathhouse::cli
