#include "tests/growth/simulated_series.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::growth {
namespace {

bool is_good(Verdict verdict)
{
    return verdict == Verdict::NoSetback || verdict == Verdict::Recovered || verdict == Verdict::Recovering;
}

} // namespace

// SplitMix64 of Steele, Lea and Flood (2014).
double Draws::uniform(double low, double high)
{
    state_ += 0x9e3779b97f4a7c15U;
    auto bits = state_;
    bits = (bits ^ (bits >> 30U)) * 0xbf58476d1ce4e5b9U;
    bits = (bits ^ (bits >> 27U)) * 0x94d049bb133111ebU;
    bits ^= bits >> 31U;
    return low + (high - low) * (static_cast<double>(bits >> 11U) * 0x1.0p-53);
}

int Draws::whole(int low, int high)
{
    return std::min(high, low + static_cast<int>(uniform(0.0, high - low + 1.0)));
}

double Draws::normal(double spread)
{
    const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform(0.0, 1.0)));
    return spread * radius * std::cos(2.0 * std::numbers::pi * uniform(0.0, 1.0));
}

Simulated simulate(const Recipe& recipe, Draws& draws)
{
    const int before = draws.whole(recipe.before_low, recipe.before_high);
    const double rate = draws.uniform(recipe.rate_low, recipe.rate_high);
    const double share = draws.uniform(recipe.share, std::max(recipe.share, recipe.share_highest));
    const double noise = draws.uniform(recipe.noise_low, recipe.noise_high);
    const double lost = recipe.event ? std::log(1.0 - draws.uniform(0.0, recipe.step_high)) : 0.0;
    const double pause = recipe.event ? draws.uniform(recipe.pause_low, recipe.pause_high) : 0.0;
    const double start_share = draws.uniform(0.25, 0.60);
    const double leaves = draws.uniform(5.0, 14.0);
    const double green = draws.uniform(0.15, 0.45);

    std::vector<double> times(static_cast<std::size_t>(before + kLastLook));
    double time = 0.0;
    for (auto& at : times) {
        at = time;
        time += draws.uniform(recipe.gap_low, recipe.gap_high);
    }
    const auto last_before = static_cast<std::size_t>(before - 1);
    const double event = (times[last_before] + times[last_before + 1]) / 2.0;
    const double first = times.front() - event;

    // Time as the plant grows in it: standing in the pause, then at the share of the rate.
    const auto grown = [&](double t) {
        if (t <= 0.0 || !recipe.event) {
            return t - first;
        }
        return -first + share * std::max(t - pause, 0.0);
    };
    const auto log_size = [&](double t) {
        if (!recipe.logistic) {
            return rate * grown(t);
        }
        // d ln y / dt = k (1 - y / end), with the first rate as given.
        const double k = rate / (1.0 - start_share);
        const double odds = (1.0 - start_share) / start_share;
        return -std::log((1.0 + odds * std::exp(-k * grown(t))) / (1.0 + odds));
    };

    Simulated simulated;
    simulated.before = static_cast<std::size_t>(before);
    double wander = draws.normal(recipe.wander);
    double earlier = times.front();
    for (const double at : times) {
        const double t = at - event;
        const double kept = std::exp(-(at - earlier) / 2.0);
        wander = kept * wander + draws.normal(recipe.wander * std::sqrt(1.0 - kept * kept));
        earlier = at;
        const double y = log_size(t) + (t > 0.0 ? lost : 0.0) + wander;
        const bool misread = draws.chance(recipe.misread);
        const double wild = misread ? (draws.chance(0.5) ? 1.15 : 0.85) : 1.0;
        double value = 0.0;
        if (recipe.kind == SeriesKind::Count) {
            value = std::floor(leaves * std::exp(y));
            if (draws.chance(0.15)) {
                value += draws.chance(0.5) ? 1.0 : -1.0;
            }
            value = std::max(value, 0.0);
        } else if (recipe.kind == SeriesKind::Share) {
            const double logit = std::log(green / (1.0 - green)) + 2.5 * y;
            value = 1.0 / (1.0 + std::exp(-logit)) + draws.normal(0.02) + (misread ? (wild > 1.0 ? 0.1 : -0.1) : 0.0);
            value = std::clamp(value, 0.0, 1.0);
        } else {
            value = 10.0 * std::exp(y + draws.normal(noise)) * wild;
        }
        simulated.readings.push_back({t, value});
    }
    return simulated;
}

double Tally::share(int look, Verdict verdict) const
{
    return of_all(counts[static_cast<std::size_t>(look)][static_cast<std::size_t>(verdict)]);
}

double Tally::good(int look) const
{
    return share(look, Verdict::NoSetback) + share(look, Verdict::Recovered) + share(look, Verdict::Recovering);
}

double Tally::worst_good() const
{
    double worst = 0.0;
    for (int look = 1; look <= kLastLook; ++look) {
        worst = std::max(worst, good(look));
    }
    return worst;
}

Tally tally(const Recipe& recipe, int series, std::uint64_t seed)
{
    Draws draws{seed};
    Tally result;
    result.series = series;
    for (int one = 0; one < series; ++one) {
        const auto simulated = simulate(recipe, draws);
        const int last = draws.whole(1, kLastLook);
        std::optional<RecoveryModel> look_before;
        bool good_ever = false;
        bool bad_ever = false;
        for (int look = 1; look <= kLastLook; ++look) {
            const auto seen = std::span{simulated.readings}.first(simulated.before + static_cast<std::size_t>(look));
            auto now = RecoveryModel::of(recipe.kind, seen);
            auto verdict = Verdict::TooEarly;
            if (now && look >= static_cast<int>(kLeastAfter)) {
                verdict = judge(recipe.kind, *now, look_before).verdict;
            }
            look_before = std::move(now);
            ++result.counts[static_cast<std::size_t>(look)][static_cast<std::size_t>(verdict)];
            good_ever = good_ever || is_good(verdict);
            bad_ever = bad_ever || verdict == Verdict::Holding || verdict == Verdict::Declining;
            result.good_last += look == last && is_good(verdict) ? 1 : 0;
        }
        result.good_ever += good_ever ? 1 : 0;
        result.bad_ever += bad_ever ? 1 : 0;
    }
    return result;
}

} // namespace lathhouse::growth
