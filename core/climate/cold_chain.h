#pragma once

#include <cstddef>
#include <vector>

namespace lathhouse::climate {

/// Barriers of several cases side by side, night after night. A night is cold where the day-to-day chain
/// (a Gaussian with variance 1 and a lag-one correlation, its persistence) lies at or below that night's
/// barrier.
class BarrierPaths {
public:
    static constexpr std::size_t kMostCases = 16;

    /// Precondition: 1 <= cases <= kMostCases.
    BarrierPaths(std::size_t nights, std::size_t cases);

    std::size_t nights() const { return nights_; }
    std::size_t cases() const { return cases_; }
    /// Cases as they are stored: rounded up to 4, 8 or 16; the surplus ones are never cold.
    std::size_t lanes() const { return lanes_; }
    float& at(std::size_t night, std::size_t which) { return values_[night * lanes_ + which]; }
    float at(std::size_t night, std::size_t which) const { return values_[night * lanes_ + which]; }
    const float* row(std::size_t night) const { return values_.data() + night * lanes_; }
    BarrierPaths reversed() const;

private:
    std::size_t nights_;
    std::size_t cases_;
    std::size_t lanes_;
    std::vector<float> values_;
};

inline constexpr double kLeastPersistence = 0.70;
inline constexpr double kMostPersistence = 0.78;

/// Chance that no night up to and including each one is cold: as `at(night, case)` of the result.
///
/// Exact recursion on 104 states of width 0.1. Accuracy: within 0.0015 of a grid ten times finer; single
/// precision adds less than 1e-5. persistence: kLeastPersistence to kMostPersistence, taken to the nearest
/// hundredth.
BarrierPaths none_so_far(const BarrierPaths& barriers, double persistence = kLeastPersistence);

} // namespace lathhouse::climate
