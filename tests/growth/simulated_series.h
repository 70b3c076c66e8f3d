#pragma once

#include "core/growth/recovery.h"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace lathhouse::growth {

/// Random numbers that are alike with every compiler.
class Draws {
public:
    explicit Draws(std::uint64_t seed) : state_(seed) {}
    double uniform(double low, double high);
    int whole(int low, int high); ///< Both included.
    double normal(double spread);
    bool chance(double share) { return uniform(0.0, 1.0) < share; }

private:
    std::uint64_t state_;
};

/// How an invented plant grows, and what happens to it. Weeks throughout; rates on the transformed scale.
struct Recipe {
    std::string name;
    SeriesKind kind = SeriesKind::Size;
    double share = 1.0;       ///< True rate after, of that before.
    double share_highest = -1e9; ///< Drawn between both where higher.
    double rate_low = 0.02;
    double rate_high = 0.08;
    double noise_low = 0.01; ///< Of one reading.
    double noise_high = 0.03;
    double misread = 0.03; ///< Chance of a reading 15 % too high or too low.
    double wander = 0.0;   ///< Standard deviation of slow deviations that last about two weeks.
    int before_low = 3;
    int before_high = 16;
    double gap_low = 4.0 / 7.0;
    double gap_high = 12.0 / 7.0;
    double pause_low = 0.0; ///< Weeks of standstill after the event.
    double pause_high = 4.0;
    double step_high = 0.4; ///< Largest share that the event takes.
    bool event = true;      ///< Nothing happens where not.
    bool logistic = false;  ///< Slows by itself: starts at 25-60 % of its final size.
};

inline constexpr int kLastLook = 20;

struct Simulated {
    std::vector<ClockReading> readings; ///< Up to look kLastLook.
    std::size_t before = 0;
};
Simulated simulate(const Recipe& recipe, Draws& draws);

/// Verdicts of a recipe's plants, by the number of readings after the event.
struct Tally {
    int series = 0;
    std::array<std::array<int, 6>, kLastLook + 1> counts{}; ///< By look, then by Verdict.
    int good_ever = 0;  ///< Series called no_setback, recovered or recovering at any look.
    int bad_ever = 0;   ///< Series called holding or declining at any look.
    int good_last = 0;  ///< At a look drawn from 1..20, as if the grower stopped there.

    double share(int look, Verdict verdict) const;
    double good(int look) const;
    double of_all(int count) const { return static_cast<double>(count) / series; }
    double worst_good() const;
};
Tally tally(const Recipe& recipe, int series, std::uint64_t seed);

} // namespace lathhouse::growth
