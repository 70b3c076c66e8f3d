#include "core/climate/chain_by_night.h"
#include "core/climate/night_model.h"
#include "core/climate/normal.h"
#include "core/climate/table_sizes.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <vector>

// Chances of whole seasons and of several nights together.

namespace lathhouse::climate {

namespace {

/// Share of the years in which a place of the year exists.
double years_share(std::size_t place_index)
{
    constexpr std::size_t kLeapDay = 59;
    return place_index == kLeapDay ? 0.25 : 1.0;
}

/// Correlation of a night with the night before, by how rare a cold night is there. In records the spells of
/// a line are the longer the rarer its nights are, and longer for deep cold; fitted on halves of the stations
/// (docs/methods/nights.md).
double persistence_at(double barrier, double line_degrees)
{
    constexpr double kAtOneDeviation = 0.66;
    constexpr double kPerDeviation = 0.07;
    constexpr double kPerKelvinOfFrost = 0.008;
    return kAtOneDeviation + kPerDeviation * std::clamp(-barrier - 1.0, -1.0, 2.0) +
           kPerKelvinOfFrost * std::clamp(-line_degrees, 0.0, 8.5);
}

/// The same for nights in time, `barriers` with one case: what joins two nights lies between what each of
/// them would ask for.
std::vector<double> persistences(const BarrierPaths& barriers, double line_degrees)
{
    std::vector<double> joins(barriers.nights());
    double before = persistence_at(static_cast<double>(barriers.at(0, 0)), line_degrees);
    for (std::size_t k = 0; k < joins.size(); ++k) {
        const double here = persistence_at(static_cast<double>(barriers.at(k, 0)), line_degrees);
        joins[k] = (before + here) / 2.0;
        before = here;
    }
    return joins;
}

} // namespace

std::array<std::size_t, 366> NightModel::places_of_season() const
{
    std::array<std::size_t, kDays> places{};
    for (std::size_t k = 0; k < kDays; ++k) {
        places[k] = static_cast<std::size_t>(turn_.day_at(static_cast<int>(k)).index());
    }
    return places;
}

void NightModel::set_cases(BarrierPaths& paths, std::size_t first_case, std::span<const std::size_t> places,
                           std::span<const QuadratureNode> season_nodes, double effective_degrees,
                           double line_degrees) const
{
    for (std::size_t k = 0; k < places.size(); ++k) {
        const double b = barrier(places[k], effective_degrees, line_degrees);
        const double shared = days_[places[k]].season_share;
        const double step = std::sqrt(shared);
        const double own = 1.0 / std::sqrt(1.0 - shared);
        for (std::size_t s = 0; s < season_nodes.size(); ++s) {
            paths.at(k, first_case + s) = static_cast<float>((b - season_nodes[s].at * step) * own);
        }
    }
}

SeasonChances NightModel::season(Celsius line, NightOffset offset) const
{
    SeasonChances result{turn_};
    const bool shares_winter =
        std::ranges::any_of(days_, [](const Day& day) { return day.season_share > 0.0; });
    const std::span<const QuadratureNode> season_nodes = shares_winter
                                                             ? std::span<const QuadratureNode>{kThreeNodes}
                                                             : std::span<const QuadratureNode>{kOneNode};
    const std::span<const QuadratureNode> offsets = offset_nodes(offset);
    const auto places = places_of_season();

    BarrierPaths forwards{kDays, offsets.size() * season_nodes.size()};
    std::vector<double> weights;
    for (std::size_t o = 0; o < offsets.size(); ++o) {
        const double open = open_air_degrees(line.degrees(), offset, offsets[o]);
        const double effective = effective_degrees(Celsius::from_degrees(open), is_bare(offset));
        set_cases(forwards, o * season_nodes.size(), places, season_nodes, effective, open);
        for (const std::size_t place : places) {
            result.nights_per_year_ +=
                offsets[o].weight * years_share(place) * chance_below(place, effective, open);
        }
        for (const QuadratureNode& node : season_nodes) {
            weights.push_back(offsets[o].weight * node.weight);
        }
    }
    // The middle of what is not known of the offset tells how rare the nights are.
    const double middle = line.degrees() - offset.mean.kelvins();
    BarrierPaths alone{kDays, 1};
    set_cases(alone, 0, places, kOneNode, effective_degrees(Celsius::from_degrees(middle), is_bare(offset)),
              middle);
    const BarrierPaths none_before = none_so_far(forwards, persistences(alone, middle));
    const BarrierPaths none_after = none_so_far(forwards.reversed(), persistences(alone.reversed(), middle));
    for (std::size_t k = 0; k < kDays; ++k) {
        for (std::size_t c = 0; c < weights.size(); ++c) {
            result.on_or_before_[k] += weights[c] * (1.0 - static_cast<double>(none_before.at(k, c)));
            if (k + 1 < kDays) {
                result.after_[k] += weights[c] * (1.0 - static_cast<double>(none_after.at(kDays - 2 - k, c)));
            }
        }
    }
    // Rounding may break the order by a hair; the dates are found by halving and need it.
    for (std::size_t k = 1; k < kDays; ++k) {
        result.on_or_before_[k] = std::max(result.on_or_before_[k], result.on_or_before_[k - 1]);
        result.after_[k] = std::min(result.after_[k], result.after_[k - 1]);
    }
    return result;
}

Probability NightModel::chance_within(calendar::DayOfYear first, int count, Celsius line,
                                      NightOffset offset) const
{
    assert(count >= 1);
    std::vector<calendar::DayOfYear> nights;
    for (int night = 0; night < count; ++night) {
        nights.push_back(calendar::DayOfYear::wrapped(first.place() + night));
    }
    return chance_among(nights, line, offset);
}

Probability NightModel::chance_among(std::span<const calendar::DayOfYear> nights, Celsius line,
                                     NightOffset offset) const
{
    assert(!nights.empty());
    const std::span<const QuadratureNode> offsets = offset_nodes(offset);
    std::vector<std::size_t> places(nights.size());
    std::ranges::transform(nights, places.begin(),
                           [](calendar::DayOfYear night) { return static_cast<std::size_t>(night.index()); });
    BarrierPaths paths{nights.size(), offsets.size() * kThreeNodes.size()};
    for (std::size_t o = 0; o < offsets.size(); ++o) {
        const double open = open_air_degrees(line.degrees(), offset, offsets[o]);
        const double effective = effective_degrees(Celsius::from_degrees(open), is_bare(offset));
        set_cases(paths, o * kThreeNodes.size(), places, kThreeNodes, effective, open);
    }
    const double middle = line.degrees() - offset.mean.kelvins();
    BarrierPaths alone{nights.size(), 1};
    set_cases(alone, 0, places, kOneNode, effective_degrees(Celsius::from_degrees(middle), is_bare(offset)),
              middle);
    const BarrierPaths none = none_so_far(paths, persistences(alone, middle));
    double any = 0.0;
    for (std::size_t o = 0; o < offsets.size(); ++o) {
        for (std::size_t s = 0; s < kThreeNodes.size(); ++s) {
            any += offsets[o].weight * kThreeNodes[s].weight *
                   (1.0 - static_cast<double>(none.at(nights.size() - 1, o * kThreeNodes.size() + s)));
        }
    }
    return Probability::clamped(any);
}

ThresholdDates NightModel::dates(Celsius line, std::span<const double> further_percents, NightOffset offset) const
{
    constexpr double kNeverShare = 0.999;
    const SeasonChances chances = season(line, offset);
    ThresholdDates result{line,
                          ThresholdState::Ordinary,
                          chances.nights_per_year(),
                          {std::nullopt, chances.share_without(), {}, {}, {}},
                          {std::nullopt, chances.share_without(), {}, {}, {}},
                          {}};
    if (no_season_) {
        result.state = ThresholdState::NoSeason;
    } else if (chances.share_without().fraction() > kNeverShare) {
        result.state = ThresholdState::Never;
    } else if (falls_in_every_month(line, offset)) {
        result.state = ThresholdState::NoWindow;
    }
    std::vector<double> percents = standard_percents();
    percents.insert(percents.end(), further_percents.begin(), further_percents.end());
    const bool has_dates =
        result.state == ThresholdState::Ordinary || result.state == ThresholdState::NoWindow;
    for (const double percent : percents) {
        const auto chance = Probability::clamped(percent / 100.0);
        result.last.dates[percent] = has_dates ? chances.last(chance) : std::nullopt;
        result.first.dates[percent] = has_dates ? chances.first(chance) : std::nullopt;
        result.free_days[percent] = std::nullopt;
    }
    if (has_dates) {
        result.free_days = chances.free_days(percents);
    }
    return result;
}

bool NightModel::falls_in_every_month(Celsius line, NightOffset offset) const
{
    for (int month = 1; month <= 12; ++month) {
        const auto start = calendar::DayOfYear::wrapped(calendar::places_before_month(month) + 1);
        if (chance_within(start, calendar::days_in_month_of_leap_year(month), line, offset).fraction() < 0.5) {
            return false;
        }
    }
    return true;
}

LowestNight NightModel::lowest_of_season() const
{
    // The mean of the lowest is the sum over lines of the chance that it lies above, less the part below the
    // first line: mean = bottom + integral of share_without from bottom up. The chance is a smooth step some
    // kelvins wide, so that the trapezium rule with 2 K steps is exact to a few thousandths.
    constexpr double kStep = 2.0;
    constexpr std::size_t kLinesAtOnce = 5;
    const auto places = places_of_season();
    const Day& coldest =
        *std::ranges::min_element(days_, {}, [](const Day& day) { return day.mean_low - 2.5 * day.spread; });
    const double top = coldest.mean_low + 2.0 * coldest.spread;
    std::vector<double>
        without; // Share of seasons without a night at or below top - kStep, top - 2 kStep ...
    while ((without.empty() || without.back() <= 1.0 - 1e-4) &&
           kStep * static_cast<double>(without.size()) < 150.0) {
        BarrierPaths paths{kDays, kLinesAtOnce * kThreeNodes.size()};
        for (std::size_t l = 0; l < kLinesAtOnce; ++l) {
            const double line = top - kStep * static_cast<double>(without.size() + l + 1);
            set_cases(paths, l * kThreeNodes.size(), places, kThreeNodes, line + reading_step_kelvins_ / 2.0,
                      line);
        }
        // One persistence for lines this near to one another.
        const double middle = top - kStep * (static_cast<double>(without.size()) + (kLinesAtOnce + 1) / 2.0);
        BarrierPaths alone{kDays, 1};
        set_cases(alone, 0, places, kOneNode, middle + reading_step_kelvins_ / 2.0, middle);
        const BarrierPaths none = none_so_far(paths, persistences(alone, middle));
        for (std::size_t l = 0; l < kLinesAtOnce; ++l) {
            double share = 0.0;
            for (std::size_t s = 0; s < kThreeNodes.size(); ++s) {
                share += kThreeNodes[s].weight *
                         static_cast<double>(none.at(kDays - 1, l * kThreeNodes.size() + s));
            }
            without.push_back(share);
        }
    }
    // mean = top - integral of the chance of a season at or below; at the top that chance is 1 (half a step).
    double mean = top - kStep / 2.0;
    for (const double share : without) {
        mean -= kStep * (1.0 - share);
    }
    const auto line_without = [&](double wanted) {
        double line = top;
        double before = 0.0;
        for (const double share : without) {
            if (share >= wanted) {
                // Straight between the lines on the scale of the normal distribution, on which the shares lie
                // almost on one.
                const double from = normal_quantile(std::max(before, 1e-6));
                const double to = normal_quantile(std::min(share, 1.0 - 1e-6));
                const double part = (normal_quantile(wanted) - from) / (to - from);
                return line - kStep * std::clamp(part, 0.0, 1.0);
            }
            before = share;
            line -= kStep;
        }
        return line;
    };
    return {Celsius::from_degrees(mean), Celsius::from_degrees(line_without(0.9)),
            Celsius::from_degrees(line_without(0.5)), Celsius::from_degrees(line_without(0.1))};
}

} // namespace lathhouse::climate
