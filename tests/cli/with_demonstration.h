#pragma once

#include "core/base/csv.h"
#include "tests/cli/run_command.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace lathhouse::cli {

/// A folder that goes with its owner.
class OwnFolder {
public:
    OwnFolder()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_cli_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        path_ = pattern;
    }
    ~OwnFolder()
    {
        std::error_code failure;
        std::filesystem::remove_all(path_, failure);
    }
    OwnFolder(const OwnFolder&) = delete;
    OwnFolder& operator=(const OwnFolder&) = delete;

    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

/// The demonstration household of a date without photos. Made once in a process, since tests that change it want copies.
inline const std::filesystem::path& demonstration_of(const std::string& today, const std::vector<std::string>& more)
{
    static const OwnFolder kFolder;
    static std::map<std::pair<std::string, std::vector<std::string>>, std::filesystem::path> made;
    const auto [found, is_new] = made.try_emplace({today, more}, kFolder.path() / std::to_string(made.size()));
    if (is_new) {
        std::vector<std::string> arguments{"--on", today, "demo", found->second.string(), "--photos", "0"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        EXPECT_EQ(run_command(arguments).status, 0);
    }
    return found->second;
}

/// A folder for what a test writes, with a demonstration household of its own in `home`.
class WithDemonstration : public testing::Test {
protected:
    explicit WithDemonstration(std::string today, const std::vector<std::string>& more = {}) : today_(std::move(today))
    {
        std::filesystem::copy(demonstration_of(today_, more), home(), std::filesystem::copy_options::recursive);
    }

    const std::filesystem::path& folder() const { return own_.path(); }
    std::string path(const std::string& name) const { return (folder() / name).string(); }
    std::string home() const { return path("home"); }
    /// A file with that text.
    std::string file(const std::string& name, const std::string& text) const
    {
        EXPECT_TRUE(write_file_whole(folder() / name, text));
        return path(name);
    }
    /// What the program says of the household in `home`, on the household's date if no other is given.
    Ran ask(const std::vector<std::string>& command, const std::string& on = {}) const
    {
        std::vector<std::string> arguments{"--home", home(), "--on", on.empty() ? today_ : on};
        arguments.insert(arguments.end(), command.begin(), command.end());
        return run_command(arguments);
    }

private:
    OwnFolder own_;
    std::string today_;
};

} // namespace lathhouse::cli
