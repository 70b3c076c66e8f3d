#pragma once

#include <cmath>
#include <cstdint>
#include <random>

namespace lathhouse::home {

/// Random numbers for invented households. The engine is fixed by the C++ standard and the mappings are
/// written out here, since those of std::uniform_real_distribution differ between libraries.
class Draws {
public:
    explicit Draws(std::uint32_t seed) : engine_(seed) {}

    /// In [0, 1), in steps of 2^-32.
    double share() { return static_cast<double>(engine_()) / 4294967296.0; }
    /// In [low, high), rounded to two decimals.
    double between(double low, double high)
    {
        return std::round((low + (high - low) * share()) * 100.0) / 100.0;
    }
    /// 0 .. count - 1. Precondition: count > 0.
    int below(int count) { return static_cast<int>(share() * count); }

private:
    std::mt19937 engine_;
};

} // namespace lathhouse::home
