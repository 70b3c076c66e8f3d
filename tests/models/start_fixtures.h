#pragma once

#include "app/models/first_start_model.h"
#include "tests/models/shipped_door.h"

#include <QLocale>
#include <QTest>

#include <gtest/gtest.h>

#include <filesystem>
#include <random>

namespace lathhouse::models {

inline const calendar::Date kStartToday{2026, 3, 14};

inline YearWords british_words(Units units = Units::Metric)
{
    return YearWords(units, QLocale(QLocale::English, QLocale::UnitedKingdom));
}

/// A path in the system's folder for such things that nobody else has; removed at the end.
class FreshFolder {
public:
    FreshFolder()
        : path_(std::filesystem::temp_directory_path() / ("lathhouse-start-" + std::to_string(std::random_device{}())))
    {
    }
    FreshFolder(const FreshFolder&) = delete;
    FreshFolder& operator=(const FreshFolder&) = delete;
    ~FreshFolder()
    {
        std::error_code failure;
        std::filesystem::remove_all(path_, failure);
    }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

inline void wait_until_still(SheetModel& model)
{
    ASSERT_TRUE(QTest::qWaitFor([&model] { return !model.working(); }, 30'000));
}

} // namespace lathhouse::models
