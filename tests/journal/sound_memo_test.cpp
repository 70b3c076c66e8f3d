#include "core/journal/sound_memo.h"

#include "tests/journal/temporary_folder.h"

#include <gtest/gtest.h>

#include <chrono>
#include <fstream>

namespace lathhouse::journal {
namespace {

namespace fs = std::filesystem;

class SoundMemo : public WithFolder {
protected:
    fs::path file() const { return folder_ / "household.sqlite3"; }
    /// A file of that size, written an hour ago.
    void make(std::uintmax_t bytes) const
    {
        std::ofstream{file()} << "x";
        fs::resize_file(file(), bytes);
        fs::last_write_time(file(), fs::file_time_type::clock::now() - std::chrono::hours{1});
    }
};

TEST_F(SoundMemo, HoldsUntilTheFileIsWritten)
{
    make(9'000'000);
    EXPECT_FALSE(was_found_sound(file()));
    remember_sound(file());
    EXPECT_TRUE(was_found_sound(file()));
    fs::last_write_time(file(), fs::last_write_time(file()) + std::chrono::nanoseconds{1000});
    EXPECT_FALSE(was_found_sound(file()));
    remember_sound(file());
    EXPECT_TRUE(was_found_sound(file()));
    const auto written = fs::last_write_time(file());
    fs::resize_file(file(), 9'004'096);
    fs::last_write_time(file(), written);
    EXPECT_FALSE(was_found_sound(file()));
}

TEST_F(SoundMemo, IsOfThisFileAndNoOtherOfItsName)
{
    make(9'000'000);
    remember_sound(file());
    const auto written = fs::last_write_time(file());
    fs::copy_file(file(), folder_ / "copy"); // As where a backup is put in its place.
    fs::rename(folder_ / "copy", file());
    fs::last_write_time(file(), written);
    EXPECT_FALSE(was_found_sound(file()));
}

TEST_F(SoundMemo, IsNotTrustedWhereTheFileWasJustWritten)
{
    make(9'000'000);
    fs::last_write_time(file(), fs::file_time_type::clock::now());
    remember_sound(file());
    EXPECT_FALSE(was_found_sound(file()));
}

TEST_F(SoundMemo, IsNotKeptOfSmallFilesNorWhereItIsDeleted)
{
    make(1'000'000);
    remember_sound(file());
    EXPECT_FALSE(was_found_sound(file()));
    EXPECT_FALSE(fs::exists(folder_ / "thumbnails"));
    make(9'000'000);
    remember_sound(file());
    ASSERT_TRUE(was_found_sound(file()));
    fs::remove_all(folder_ / "thumbnails");
    EXPECT_FALSE(was_found_sound(file()));
}

} // namespace
} // namespace lathhouse::journal
