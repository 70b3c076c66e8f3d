#include "core/growth/recovery_model.h"

#include "core/base/in_doubles.h"
#include "core/growth/median.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <boost/math/distributions/students_t.hpp>

namespace lathhouse::growth {
namespace {

// Places of the parameters.
constexpr std::size_t kLevel = 0;
constexpr std::size_t kBefore = 1;
constexpr std::size_t kStep = 2;
constexpr std::size_t kNow = 3;
constexpr std::size_t kBetween = 4;

constexpr double kUsualShareRegained = 0.4;  // Mean of the prior of the rate after.
constexpr double kLeastRateOfSpread = 0.25;  // A week, of the usual spread.
constexpr double kYellowRate = 0.25;         // A week.
constexpr double kHeldFlat = 1e4;            // Precision that holds a parameter at its mean.
constexpr double kWeightWithoutChange = 0.5;
constexpr double kEvidenceExponent = 0.8;    // Errors are correlated: the likelihood knows less than it says.
constexpr std::size_t kLeastCandidates = 4;
// Long series have more readings than places where it matters at which of them growth changed.
constexpr std::size_t kMostCandidates = 16;
constexpr double kSearched = 20.0;

double student_below(double t, double freedom)
{
    return boost::math::cdf(boost::math::students_t_distribution<double, InDoubles>{freedom}, t);
}

/// Median of the slopes between any two rows; nullopt where no two have a gap. Of very many rows every k-th
/// answers as well.
std::optional<double> median_slope(std::span<const FitRow> rows)
{
    constexpr std::size_t kEnough = 120;
    const std::size_t stride = (rows.size() + kEnough - 1) / kEnough;
    std::vector<double> slopes;
    for (std::size_t i = 0; i < rows.size(); i += stride) {
        for (std::size_t j = i + stride; j < rows.size(); j += stride) {
            if (const double gap = rows[j].weeks - rows[i].weeks; gap > 0.0) {
                slopes.push_back((rows[j].y - rows[i].y) / gap);
            }
        }
    }
    return slopes.empty() ? std::nullopt : std::optional{median(std::move(slopes))};
}

/// Sum of squares of the times before about their mean, exact readings counting more.
double spread_of_times(std::span<const FitRow> rows)
{
    double mean = 0.0;
    for (const auto& row : rows) {
        mean += row.weeks / static_cast<double>(rows.size());
    }
    double squares = 0.0;
    for (const auto& row : rows) {
        const double away = (row.weeks - mean) / row.ratio;
        squares += away * away;
    }
    return squares;
}

} // namespace

std::optional<RecoveryModel> RecoveryModel::of(SeriesKind kind, std::span<const ClockReading> readings)
{
    const bool yellow = kind == SeriesKind::Yellow;
    const double usual = usual_spread(kind);
    std::vector<FitRow> rows;
    rows.reserve(readings.size());
    std::size_t before = 0;
    for (const auto& reading : readings) {
        const bool is_before = reading.weeks <= 0.0;
        before += is_before ? 1 : 0;
        FitRow row{reading.weeks, {}, transformed(kind, reading.value), spread_ratio(kind, reading.value)};
        row.x[kLevel] = 1.0;
        if (is_before) {
            row.x[kBefore] = reading.weeks;
        } else {
            row.x[kStep] = 1.0;
            row.x[kNow] = reading.weeks;
        }
        rows.push_back(row);
    }
    const std::size_t after = rows.size() - before;
    if (before < kLeastBefore || after + 1 < kLeastAfter) {
        return std::nullopt;
    }

    RecoveryModel model;
    model.kind_ = kind;
    model.now_ = rows.back().weeks;
    const auto earlier = std::span{rows}.first(before);
    std::array<Prior, kMostColumns> priors{};
    if (yellow) {
        model.rate_scale_ = kYellowRate;
        priors[kBefore] = {0.0, kHeldFlat};
        priors[kNow] = {0.0, 1.0 / (kYellowRate * kYellowRate)};
        priors[kBetween] = {0.0, 0.25 / (kYellowRate * kYellowRate)};
    } else {
        const auto slope = median_slope(earlier);
        const double times = spread_of_times(earlier);
        if (!slope || !(times > 0.0)) {
            return std::nullopt;
        }
        model.rate_scale_ = std::max({*slope, usual / std::sqrt(times), kLeastRateOfSpread * usual});
        const double precision = 1.0 / (model.rate_scale_ * model.rate_scale_);
        priors[kNow] = {kUsualShareRegained * model.rate_scale_, precision};
        priors[kBetween] = {0.0, precision};
    }
    priors[kStep] = {0.0, 1.0};

    // Logarithm of prior times evidence, of what is not alike in all models.
    std::vector<double> logs;
    const auto add = [&](std::optional<double> change, double weight) {
        const std::span<const Prior> used{priors.data(), change ? kMostColumns : kMostColumns - 1};
        // Of long series a later change alters the scale but little; of short ones every fit starts alike.
        const auto start = rows.size() > kLongSeries && !model.models_.empty()
                               ? std::optional{model.models_.front().fit.scale}
                               : std::nullopt;
        auto fit = student_fit(rows, used, usual, start);
        double evidence = fit.evidence;
        for (std::size_t at = kStep; at < used.size(); ++at) {
            const double away = fit.parameters[at] - used[at].mean;
            evidence += 0.5 * std::log(used[at].precision) - 0.5 * used[at].precision * away * away;
        }
        logs.push_back(std::log(weight) + kEvidenceExponent * evidence);
        model.models_.push_back({std::move(fit), change, 0.0});
    };
    add(std::nullopt, kWeightWithoutChange);
    const std::size_t later = yellow ? 3 : 4;
    if (after > later) {
        const std::size_t places = after - later;
        const std::size_t count = std::min(places, kMostCandidates);
        const double weight =
            (1.0 - kWeightWithoutChange) / static_cast<double>(std::max(count, kLeastCandidates));
        for (std::size_t candidate = 0; candidate < count; ++candidate) {
            const double change = rows[before + candidate * places / count].weeks;
            for (std::size_t at = before; at < rows.size(); ++at) {
                rows[at].x[kBetween] = std::min(rows[at].weeks, change);
                rows[at].x[kNow] = std::max(rows[at].weeks - change, 0.0);
            }
            add(change, weight);
        }
    }
    const double most = *std::ranges::max_element(logs);
    double sum = 0.0;
    for (std::size_t at = 0; at < logs.size(); ++at) {
        model.models_[at].weight = std::exp(logs[at] - most);
        sum += model.models_[at].weight;
    }
    for (auto& of : model.models_) {
        of.weight /= sum;
    }
    model.scale_ = model.mean([](const Model& of) { return of.fit.scale; });
    return model;
}

template <class Value>
double RecoveryModel::mean(Value value) const
{
    double sum = 0.0;
    for (const auto& model : models_) {
        sum += model.weight * value(model);
    }
    return sum;
}

template <class ContrastOf>
double RecoveryModel::chance_positive(ContrastOf contrast_of, double shift) const
{
    return mean([&](const Model& model) {
        const Columns contrast = contrast_of(model);
        const double value = value_of(contrast, model.fit) + shift;
        const double variance = variance_of(contrast, model.fit);
        if (!(variance > 0.0)) {
            return value > 0.0 ? 1.0 : 0.0;
        }
        return student_below(value / std::sqrt(variance), model.fit.freedom);
    });
}

Columns RecoveryModel::rise_now(const Model& model) const
{
    Columns contrast{};
    contrast[kStep] = 1.0;
    contrast[kNow] = now_ - model.change.value_or(0.0);
    if (model.change) {
        contrast[kBetween] = *model.change;
    }
    return contrast;
}

Columns RecoveryModel::largest_rise(const Model& model) const
{
    const auto height = [&](const Columns& contrast) { return value_of(contrast, model.fit); };
    Columns largest = rise_now(model);
    Columns other{};
    other[kStep] = 1.0;
    if (height(other) > height(largest)) {
        largest = other;
    }
    if (model.change) {
        other[kBetween] = *model.change;
        if (height(other) > height(largest)) {
            largest = other;
        }
    }
    return largest;
}

Columns RecoveryModel::regained(const Model& model, double x) const
{
    if (kind_ == SeriesKind::Yellow) {
        Columns contrast = largest_rise(model);
        const Columns rise = rise_now(model);
        for (std::size_t at = 0; at < kMostColumns; ++at) {
            contrast[at] = (1.0 - x) * contrast[at] - rise[at];
        }
        return contrast;
    }
    Columns contrast{};
    contrast[kNow] = 1.0;
    contrast[kBefore] = -x;
    return contrast;
}

double RecoveryModel::chance_regained_above(double x) const
{
    return chance_positive([&](const Model& model) { return regained(model, x); });
}

double RecoveryModel::chance_worsening() const
{
    return chance_positive([&](const Model&) {
        Columns contrast{};
        contrast[kNow] = kind_ == SeriesKind::Yellow ? 1.0 : -1.0;
        return contrast;
    });
}

double RecoveryModel::chance_of_harm() const
{
    return chance_positive([&](const Model& model) { return largest_rise(model); });
}

double RecoveryModel::chance_rise_below(double rise) const
{
    return chance_positive(
        [&](const Model& model) {
            Columns contrast = rise_now(model);
            for (auto& coefficient : contrast) {
                coefficient = -coefficient;
            }
            return contrast;
        },
        rise);
}

std::optional<double> RecoveryModel::regained_at(double chance) const
{
    double low = -kSearched;
    double high = kSearched;
    if (!(chance_regained_above(low) >= chance && chance_regained_above(high) <= chance)) {
        return std::nullopt;
    }
    while (high - low > 1e-6) {
        const double middle = (low + high) / 2.0;
        (chance_regained_above(middle) >= chance ? low : high) = middle;
    }
    return (low + high) / 2.0;
}

double RecoveryModel::rate_before() const
{
    return mean([](const Model& model) { return model.fit.parameters[kBefore]; });
}

double RecoveryModel::rate_now() const
{
    return mean([](const Model& model) { return model.fit.parameters[kNow]; });
}

double RecoveryModel::level() const
{
    return mean([&](const Model& model) {
        return model.fit.parameters[kLevel] + value_of(rise_now(model), model.fit);
    });
}

RecoveryModel::Expected RecoveryModel::expected_at(double weeks, double interval_level) const
{
    const auto contrast_of = [&](const Model& model) {
        Columns contrast{};
        contrast[kLevel] = 1.0;
        if (weeks <= 0.0) {
            contrast[kBefore] = weeks;
            return contrast;
        }
        contrast[kStep] = 1.0;
        contrast[kNow] = model.change ? std::max(weeks - *model.change, 0.0) : weeks;
        if (model.change) {
            contrast[kBetween] = std::min(weeks, *model.change);
        }
        return contrast;
    };
    const double middle = mean([&](const Model& model) { return value_of(contrast_of(model), model.fit); });
    const double variance = mean([&](const Model& model) {
        const Columns contrast = contrast_of(model);
        const double away = value_of(contrast, model.fit) - middle;
        return std::max(variance_of(contrast, model.fit), 0.0) + away * away;
    });
    const double freedom = mean([](const Model& model) { return model.fit.freedom; });
    const double reach =
        boost::math::quantile(boost::math::students_t_distribution<double, InDoubles>{freedom}, 0.5 + interval_level / 2.0) * std::sqrt(variance);
    return {middle, middle - reach, middle + reach};
}

double RecoveryModel::undisturbed_at(double weeks) const
{
    return mean([&](const Model& model) { return model.fit.parameters[kLevel] + weeks * model.fit.parameters[kBefore]; });
}

double RecoveryModel::step() const
{
    return models_.front().fit.parameters[kStep];
}

double RecoveryModel::step_chance() const
{
    const auto& fit = models_.front().fit;
    const double t = std::abs(fit.parameters[kStep]) / std::sqrt(fit.covariance[kStep][kStep]);
    return 2.0 * student_below(-t, fit.freedom);
}

} // namespace lathhouse::growth
