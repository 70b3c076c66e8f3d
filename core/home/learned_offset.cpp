#include "core/home/learned_offset.h"

#include "core/climate/night_outlook.h"
#include "core/climate/student.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <cstdlib>

namespace lathhouse::home {
namespace {

using climate::NightKind;
using climate::NightOffset;

/// The two means: clear calm nights, other nights.
struct Pair {
    double clear_calm = 0.0;
    double other = 0.0;
};
/// A symmetric two by two matrix.
struct Square {
    double clear = 0.0;
    double both = 0.0;
    double other = 0.0;
    double determinant() const { return clear * other - both * both; }
    Square inverse() const
    {
        const double size = determinant();
        return {other / size, -both / size, clear / size};
    }
    Pair times(Pair v) const
    {
        return {clear * v.clear_calm + both * v.other, both * v.clear_calm + other * v.other};
    }
    double around(Pair v) const { return v.clear_calm * times(v).clear_calm + v.other * times(v).other; }
    void add(Pair v, double weight)
    {
        clear += weight * v.clear_calm * v.clear_calm;
        both += weight * v.clear_calm * v.other;
        other += weight * v.other * v.other;
    }
};
void add(Pair& sum, Pair v, double weight)
{
    sum.clear_calm += weight * v.clear_calm;
    sum.other += weight * v.other;
}
double dot(Pair a, Pair b)
{
    return a.clear_calm * b.clear_calm + a.other * b.other;
}

constexpr Pair kHalfAndHalf{0.5, 0.5};
Pair part_of(NightKind kind)
{
    switch (kind) {
    case NightKind::ClearCalm:
        return {1.0, 0.0};
    case NightKind::Other:
        return {0.0, 1.0};
    case NightKind::Unknown:
        break;
    }
    return kHalfAndHalf;
}

/// The state of knowledge: means and their covariance.
struct Belief {
    Pair mean;
    Square covariance;
};

Belief prior_belief(NightOffset prior)
{
    constexpr double kLeastSpread = 0.1; // Nobody knows a spot better than a thermometer would tell.
    const double spread = std::max(prior.spread.kelvins(), kLeastSpread);
    // Variance of the mean of two values with correlation 1/2 is 3/4 of theirs.
    const double variance = spread * spread * 4.0 / 3.0;
    return {{1.5 * prior.mean.kelvins(), 0.5 * prior.mean.kelvins()}, {variance, 0.5 * variance, variance}};
}

NightOffset offset_along(const Belief& belief, Pair part)
{
    return {KelvinDelta::from_kelvins(dot(part, belief.mean)),
            KelvinDelta::from_kelvins(std::sqrt(belief.covariance.around(part)))};
}

LearnedOffset offsets_of(const Belief& belief)
{
    return {.usual = offset_along(belief, kHalfAndHalf),
            .clear_calm = offset_along(belief, part_of(NightKind::ClearCalm)),
            .other = offset_along(belief, part_of(NightKind::Other))};
}

/// Information from nights that have only the season's mean to compare with: generalized least squares over
/// their joint covariance, by its Cholesky factor.
struct Information {
    Square matrix;
    Pair vector;
};
Information of_season_nights(const std::vector<const OffsetEvidence*>& nights)
{
    constexpr double kFromNightToNight = 0.70;
    const std::size_t count = nights.size();
    std::vector<double> factor(count * count, 0.0);
    std::vector<double> rows(count * 3); // Whitened parts and difference.
    const double scatter = kNightScatter.kelvins();
    Information found;
    for (std::size_t i = 0; i < count; ++i) {
        const auto part = part_of(nights[i]->kind);
        double row[3] = {part.clear_calm, part.other, nights[i]->difference.kelvins()};
        for (std::size_t j = 0; j <= i; ++j) {
            const int days = std::abs(calendar::days_between(nights[j]->night, nights[i]->night));
            double value = nights[i]->reference_error.kelvins() * nights[j]->reference_error.kelvins() *
                           std::pow(kFromNightToNight, days);
            value += i == j ? scatter * scatter : 0.0;
            for (std::size_t k = 0; k < j; ++k) {
                value -= factor[i * count + k] * factor[j * count + k];
            }
            if (i == j) {
                factor[i * count + i] = std::sqrt(value);
            } else {
                factor[i * count + j] = value / factor[j * count + j];
                for (std::size_t c = 0; c < 3; ++c) {
                    row[c] -= factor[i * count + j] * rows[j * 3 + c];
                }
            }
        }
        for (std::size_t c = 0; c < 3; ++c) {
            rows[i * 3 + c] = row[c] / factor[i * count + i];
        }
        const Pair whitened{rows[i * 3], rows[i * 3 + 1]};
        found.matrix.add(whitened, 1.0);
        add(found.vector, whitened, rows[i * 3 + 2]);
    }
    return found;
}

} // namespace

climate::NightOffset LearnedOffset::of_night(NightKind kind) const
{
    const auto widened = [](NightOffset offset, double further_variance) {
        const double scatter = kNightScatter.kelvins();
        const double spread = offset.spread.kelvins();
        return NightOffset{offset.mean, KelvinDelta::from_kelvins(std::sqrt(
                                            spread * spread + scatter * scatter + further_variance))};
    };
    switch (kind) {
    case NightKind::ClearCalm:
        return widened(clear_calm, 0.0);
    case NightKind::Other:
        return widened(other, 0.0);
    case NightKind::Unknown:
        break;
    }
    const double half = (clear_calm.mean - other.mean).kelvins() / 2.0;
    return widened(usual, half * half);
}

LearnedOffset before_readings(climate::NightOffset prior)
{
    return offsets_of(prior_belief(prior));
}

LearnedOffset learn_offset(climate::NightOffset prior, std::span<const OffsetEvidence> evidence)
{
    constexpr double kAssumedNights = 6.0; // What the assumed size of the noise counts for; by simulation.
    constexpr int kSweeps = 30;
    constexpr std::size_t kMostSeasonNights = 120;

    std::vector<const OffsetEvidence*> compared;
    std::vector<const OffsetEvidence*> season_only;
    for (const auto& night : evidence) {
        (night.season_only ? season_only : compared).push_back(&night);
    }
    if (season_only.size() > kMostSeasonNights) {
        season_only.erase(season_only.begin(), season_only.end() - kMostSeasonNights);
    }
    const Belief before = prior_belief(prior);
    const Square prior_information = before.covariance.inverse();
    const Information from_season = of_season_nights(season_only);
    Square fixed = prior_information;
    fixed.clear += from_season.matrix.clear;
    fixed.both += from_season.matrix.both;
    fixed.other += from_season.matrix.other;
    Pair fixed_vector = prior_information.times(before.mean);
    add(fixed_vector, from_season.vector, 1.0);

    const auto variance_of = [&](const OffsetEvidence& night, const Belief& belief) {
        const double scatter = kNightScatter.kelvins();
        const double error = night.reference_error.kelvins();
        const double half =
            night.kind == NightKind::Unknown ? (belief.mean.clear_calm - belief.mean.other) / 2.0 : 0.0;
        return error * error + scatter * scatter + half * half;
    };
    constexpr double kScale = climate::kUnitStudentScale * climate::kUnitStudentScale;
    constexpr double kFreedom = climate::kTailFreedom;
    Belief belief = before;
    double noise = 1.0; // Its variance in units of the assumed one.
    for (int sweep = 0; sweep < kSweeps; ++sweep) {
        Square information = fixed;
        Pair vector = fixed_vector;
        double squares = kAssumedNights;
        for (const auto* night : compared) {
            const Pair part = part_of(night->kind);
            const double scale = variance_of(*night, belief) * kScale;
            const double rest = night->difference.kelvins() - dot(part, belief.mean);
            const double weight = (kFreedom + 1.0) / (kFreedom + rest * rest / (scale * noise));
            information.add(part, weight / (scale * noise));
            add(vector, part, weight * night->difference.kelvins() / (scale * noise));
            squares +=
                weight * (rest * rest + belief.covariance.around(part) * (sweep > 0 ? 1.0 : 0.0)) / scale;
        }
        belief.covariance = information.inverse();
        belief.mean = belief.covariance.times(vector);
        noise = squares / (kAssumedNights + static_cast<double>(compared.size()));
    }
    Square information = fixed;
    for (const auto* night : compared) {
        const double scale = variance_of(*night, belief) * kScale * noise;
        information.add(part_of(night->kind), (kFreedom + 1.0) / (kFreedom + 3.0) / scale);
    }
    belief.covariance = information.inverse();
    LearnedOffset learned = offsets_of(belief);
    learned.nights = static_cast<int>(evidence.size());
    learned.clear_calm_nights =
        static_cast<int>(std::ranges::count(evidence, NightKind::ClearCalm, &OffsetEvidence::kind));
    learned.other_nights =
        static_cast<int>(std::ranges::count(evidence, NightKind::Other, &OffsetEvidence::kind));
    return learned;
}

} // namespace lathhouse::home
