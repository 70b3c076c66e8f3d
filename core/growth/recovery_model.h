#pragma once

#include "core/growth/series.h"
#include "core/growth/student_fit.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::growth {

/// A reading with its time on the growth clock.
struct ClockReading {
    double weeks; ///< Since the event; at most 0 counts as before it.
    double value; ///< As measured.
};

/// Fewest readings without which nothing is judged.
inline constexpr std::size_t kLeastBefore = 3;
inline constexpr std::size_t kLeastAfter = 4;
/// Series of more readings are searched less closely.
inline constexpr std::size_t kLongSeries = 200;

/// What the readings say of growth before and after an event, averaged over "it grew alike all the time since"
/// and "it changed again at reading i", each weighted by how well it explains the readings.
///
/// Before: y = a + b t; after: a + d + r t, or a + d + g min(t, L) + r max(t - L, 0) with a change at time L of a
/// reading that at least 4 later ones follow (3 for yellow). So r is the rate now, behind the last change, and a
/// pause does not count for ever. Weak priors: d ~ N(0, 1), r ~ N(0.4 b0, b0^2), g ~ N(0, b0^2), b0 the usual size
/// of the rate before. The yellow share is flat before (b = 0), r ~ N(0, 0.25^2 a week), g twice that wide.
/// Source: none; the procedure and its constants are our own, set by simulation
/// (docs/methods/growth-and-recovery.md has the figures). The ratio of two rates by Fieller's theorem (Biometrika
/// 41, 1954): no division by a rate that may be nought.
class RecoveryModel {
public:
    /// readings: by weeks. nullopt under 3 readings before or 3 after, and where the clock stood still over the
    /// readings before.
    static std::optional<RecoveryModel> of(SeriesKind kind, std::span<const ClockReading> readings);

    /// Chance that the share regained exceeds x: of the rate before for what grows, of the harm for yellow, whose
    /// share regained is 1 - rise now / largest rise.
    double chance_regained_above(double x) const;
    /// Chance that it now gets worse: a size shrinks, yellow rises.
    double chance_worsening() const;
    /// The share regained that has that chance of being exceeded; nullopt outside -20..20.
    std::optional<double> regained_at(double chance) const;

    double rate_before() const; ///< A week, on the transformed scale, weighted mean of the models.
    double rate_now() const;
    /// The level now, transformed.
    double level() const;
    /// What the models together expect of a reading at that time, and between what the middle of such readings lies:
    /// by their mean and variance (within and between models) and Student's t. Transformed.
    struct Expected {
        double middle;
        double low;
        double high;
    };
    Expected expected_at(double weeks, double interval_level) const;
    /// As though nothing had happened: growth before the event, carried on.
    double undisturbed_at(double weeks) const;
    double scale() const { return scale_; } ///< Of one reading's error, where spread_ratio is 1.
    /// The step at the event in the model without a later change.
    double step() const;
    /// Two-sided chance of a step as large where there is none.
    double step_chance() const;
    double weight_without_change() const { return models_.front().weight; }
    double rate_scale() const { return rate_scale_; } ///< b0.
    /// Yellow: chance that it rose at all.
    double chance_of_harm() const;
    /// Yellow: chance that it now stands less than `rise` above the level before, on the logit scale.
    double chance_rise_below(double rise) const;

private:
    struct Model {
        StudentFit fit;
        std::optional<double> change; ///< Weeks.
        double weight;
    };
    Columns rise_now(const Model& model) const;
    Columns largest_rise(const Model& model) const;
    Columns regained(const Model& model, double x) const;
    template <class ContrastOf>
    double chance_positive(ContrastOf contrast_of, double shift = 0.0) const;
    template <class Value>
    double mean(Value value) const;

    SeriesKind kind_ = SeriesKind::Size;
    double now_ = 0.0; ///< Weeks of the last reading.
    double rate_scale_ = 0.0;
    double scale_ = 0.0;
    std::vector<Model> models_; ///< The one without a later change first.
};

} // namespace lathhouse::growth
