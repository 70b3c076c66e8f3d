#pragma once

#include "core/calendar/date.h"

#include <filesystem>

namespace lathhouse {

/// A household of sixty plants in twenty spots with ten years of events and so many measurements, photos by the tenth of
/// that (rows alone: their files are not there), in a folder below the system's temporary one that goes with this object.
/// Ends the program where it cannot be made: there would be nothing to measure.
class LargeHousehold {
public:
    static constexpr int kPlants = 60;
    LargeHousehold(int measurements, calendar::Date today);
    LargeHousehold(const LargeHousehold&) = delete;
    LargeHousehold& operator=(const LargeHousehold&) = delete;
    ~LargeHousehold();
    std::filesystem::path folder() const { return root_ / "home"; }
    double file_megabytes() const;

private:
    std::filesystem::path root_;
};

} // namespace lathhouse
