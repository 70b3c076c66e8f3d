#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <string>

namespace lathhouse::journal {

/// A test with a folder of its own that is removed afterwards.
class WithFolder : public testing::Test {
protected:
    WithFolder()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_test_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder_ = pattern;
    }
    ~WithFolder() override
    {
        std::error_code failure;
        std::filesystem::remove_all(folder_, failure);
    }
    std::filesystem::path folder_;
};

} // namespace lathhouse::journal
