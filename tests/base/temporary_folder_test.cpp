#include "core/base/temporary_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <string>

namespace lathhouse {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class TemporaryFolderTest : public testing::Test {
protected:
    TemporaryFolderTest()
    {
        auto pattern = (fs::temp_directory_path() / "lathhouse_part_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder_ = pattern;
    }
    ~TemporaryFolderTest() override { fs::remove_all(folder_); }
    fs::path file(const std::string& name) const
    {
        std::ofstream{folder_ / name} << name;
        return folder_ / name;
    }
    fs::path folder_;
};

/// The number of a process that is gone.
pid_t gone()
{
    const pid_t child = fork();
    if (child == 0) {
        _exit(0);
    }
    int status = 0;
    EXPECT_EQ(waitpid(child, &status, 0), child);
    return child;
}

TEST_F(TemporaryFolderTest, IsOutOfSightBesideItsTargetAndGoesWithAllInIt)
{
    fs::path made;
    {
        const auto temporary = TemporaryFolder::beside(folder_ / "new" / "home");
        ASSERT_TRUE(temporary) << temporary.error().message;
        made = temporary->path();
        EXPECT_EQ(made.parent_path(), folder_ / "new");
        EXPECT_EQ(made.filename().string().front(), '.');
        EXPECT_TRUE(is_temporary_name(made));
        std::ofstream{made / "inside"} << "x";
    }
    EXPECT_FALSE(fs::exists(made));
}

TEST_F(TemporaryFolderTest, StaysWhereItIsKept)
{
    fs::path made;
    {
        auto temporary = TemporaryFolder::beside(folder_ / "home");
        ASSERT_TRUE(temporary);
        made = temporary->path();
        temporary->keep();
    }
    EXPECT_TRUE(fs::is_directory(made));
}

TEST_F(TemporaryFolderTest, WhatAKilledProgramLeftIsRemovedAndNothingElse)
{
    const auto left = folder_ / (".home." + std::to_string(gone()) + ".part");
    const auto of_another_target = folder_ / (".house." + std::to_string(gone()) + ".part");
    const auto of_one_that_runs = folder_ / (".home." + std::to_string(getppid()) + ".part");
    const auto of_no_number = folder_ / ".home.old.part";
    const auto too_long = folder_ / ".home.12345678901234567890.part";
    for (const auto& path : {left, of_another_target, of_one_that_runs, of_no_number, too_long}) {
        fs::create_directory(path);
    }
    ASSERT_TRUE(TemporaryFolder::beside(folder_ / "home"));
    EXPECT_FALSE(fs::exists(left));
    for (const auto& path : {of_another_target, of_one_that_runs, of_no_number, too_long}) {
        EXPECT_TRUE(fs::exists(path)) << path;
    }
}

TEST_F(TemporaryFolderTest, ParentThatCannotBeMadeIsASentence)
{
    const auto refused = TemporaryFolder::beside(file("file") / "below" / "home");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Unwritable);
    EXPECT_THAT(refused.error().message, HasSubstr("choose one where you may write"));
}

TEST_F(TemporaryFolderTest, NamesOfWhatIsNotYetWhole)
{
    EXPECT_TRUE(is_temporary_name("/a/.incoming-3"));
    EXPECT_TRUE(is_temporary_name(".photo.part.7"));
    EXPECT_FALSE(is_temporary_name("photo.part.7"));
    EXPECT_FALSE(is_temporary_name("/a.part/photo.jpg"));
}

TEST_F(TemporaryFolderTest, SeparatorAtTheEndIsNoName)
{
    EXPECT_EQ(with_name("/a/b/").filename(), "b");
    EXPECT_EQ(with_name("/a/./c/../b"), "/a/b");
    EXPECT_TRUE(with_name("b").is_absolute());
}

TEST_F(TemporaryFolderTest, RenamingOverwritesNothing)
{
    const auto from = file("from");
    const auto there = file("there");
    const auto refused = rename_unless_there(from, there);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message, HasSubstr("could not be given its name"));
    EXPECT_TRUE(fs::exists(from));
    ASSERT_TRUE(rename_unless_there(from, folder_ / "free"));
    EXPECT_TRUE(fs::exists(folder_ / "free"));
}

TEST_F(TemporaryFolderTest, FolderTakesThePlaceOfAnEmptyOneAlone)
{
    for (const char* name : {"from", "empty", "full"}) {
        fs::create_directory(folder_ / name);
    }
    std::ofstream{folder_ / "full" / "inside"} << "x";
    EXPECT_FALSE(rename_unless_there(folder_ / "from", folder_ / "full"));
    EXPECT_TRUE(rename_unless_there(folder_ / "from", folder_ / "empty"));
}

TEST_F(TemporaryFolderTest, WhatIsNotThereCannotBeBroughtToTheDisk)
{
    const auto refused = flush_to_disk(folder_ / "none");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Unwritable);
    EXPECT_TRUE(flush_to_disk(file("some")));
    EXPECT_TRUE(flush_all_to_disk(folder_));
}

} // namespace
} // namespace lathhouse
