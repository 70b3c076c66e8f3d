#include "core/climate/night_model.h"

#include "core/climate/cold_chain.h"
#include "core/climate/normal.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>
#include <vector>

namespace lathhouse::climate {

namespace {

constexpr std::size_t kDays = 366;
constexpr std::size_t kMonths = 12;

struct Node {
    double at; ///< In standard deviations.
    double weight;
};

/// Whole-season part of the variance: Gauss-Hermite with three nodes.
constexpr std::array<Node, 3> kSeasonNodes{
    {{-1.7320508075688772, 1.0 / 6.0}, {0.0, 2.0 / 3.0}, {1.7320508075688772, 1.0 / 6.0}}};
constexpr std::array<Node, 1> kOneNode{{{0.0, 1.0}}};
/// Offset of a spot: Gauss-Hermite with five nodes (exact for polynomials of the ninth degree).
constexpr std::array<Node, 5> kOffsetNodes{{{-2.856970013872806, 0.011257411327720689},
                                            {-1.355626179974266, 0.22207592200561265},
                                            {0.0, 0.53333333333333333},
                                            {1.355626179974266, 0.22207592200561265},
                                            {2.856970013872806, 0.011257411327720689}}};

std::span<const Node> offset_nodes(NightOffset offset)
{
    if (offset.spread.kelvins() > 0.0) {
        return kOffsetNodes;
    }
    return kOneNode;
}

bool is_none(NightOffset offset)
{
    return offset == NightOffset{};
}

/// Line of the open air that the spot's line is at one node of the offset.
double open_air_degrees(double line_degrees, NightOffset offset, const Node& node)
{
    return line_degrees - offset.mean.kelvins() - node.at * offset.spread.kelvins();
}

// Tail correction, fitted as a probit regression of the share of nights at or below 17 lines.
struct TailKnot {
    double constant, linear, square;
};
constexpr double kFirstKnot = -8.0;
constexpr double kKnotStep = 5.0;
constexpr std::array<TailKnot, 7> kTail{{{-0.140, -0.202, 0.012},
                                         {0.051, 0.120, 0.106},
                                         {0.085, 0.099, -0.021},
                                         {-0.113, -0.161, -0.134},
                                         {-0.075, -0.126, -0.084},
                                         {-0.124, -0.177, -0.070},
                                         {-0.111, -0.092, 0.002}}};

TailKnot tail_at(double mean_low)
{
    const double place = std::clamp((mean_low - kFirstKnot) / kKnotStep, 0.0, 6.0);
    const auto left = std::min(static_cast<std::size_t>(place), kTail.size() - 2);
    const double right_share = place - static_cast<double>(left);
    const auto mix = [right_share](double a, double b) { return a + (b - a) * right_share; };
    const TailKnot& a = kTail[left];
    const TailKnot& b = kTail[left + 1];
    return {mix(a.constant, b.constant), mix(a.linear, b.linear), mix(a.square, b.square)};
}

bool reads_whole_fahrenheit(double step_kelvins)
{
    return std::abs(step_kelvins - 5.0 / 9.0) < 0.01;
}

std::size_t first_place_of_month(std::size_t month)
{
    return static_cast<std::size_t>(calendar::places_before_month(static_cast<int>(month) + 1));
}

std::size_t length_of_month(std::size_t month)
{
    return static_cast<std::size_t>(calendar::days_in_month_of_leap_year(static_cast<int>(month) + 1));
}

/// Share of the years in which a place of the year exists.
double years_share(std::size_t place_index)
{
    constexpr std::size_t kLeapDay = 59;
    return place_index == kLeapDay ? 0.25 : 1.0;
}

} // namespace

// SeasonChances

Probability SeasonChances::on_or_before(calendar::DayOfYear day) const
{
    return Probability::clamped(on_or_before_[static_cast<std::size_t>(turn_.season_index(day))]);
}

Probability SeasonChances::after(calendar::DayOfYear day) const
{
    return Probability::clamped(after_[static_cast<std::size_t>(turn_.season_index(day))]);
}

Probability SeasonChances::share_without() const
{
    return Probability::clamped(1.0 - on_or_before_.back());
}

std::optional<calendar::DayOfYear> SeasonChances::first(Probability chance) const
{
    const auto found = std::ranges::lower_bound(on_or_before_, chance.fraction());
    if (found == on_or_before_.end()) {
        return std::nullopt;
    }
    return turn_.day_at(static_cast<int>(found - on_or_before_.begin()));
}

std::optional<calendar::DayOfYear> SeasonChances::last(Probability chance) const
{
    if (on_or_before_.back() <= chance.fraction()) {
        return std::nullopt;
    }
    const auto found = std::ranges::lower_bound(after_, chance.fraction(), std::greater{});
    return turn_.day_at(static_cast<int>(found - after_.begin()));
}

// NightModel

NightModel NightModel::from_monthly(const MonthlyFigures& figures, Latitude latitude)
{
    NightModel model{SeasonTurn::of_lows(figures.low)};
    model.no_season_ = has_no_season(figures.low);
    model.basis_ = spread_basis(figures);
    model.reading_step_kelvins_ = figures.reading_step.kelvins();

    Monthly<double> low{};
    std::ranges::transform(figures.low, low.begin(), [](Celsius month) { return month.degrees(); });
    const DailyCurve mean_low = curve_through_months(low);
    Monthly<double> spread = spread_of_nights(figures, mean_low, latitude);
    model.set_course(mean_low, spread);
    // Where the spread of the lows is known it already holds what these two could tell.
    if (model.basis_ != SpreadBasis::Lows) {
        model.use_lowest_values(figures, spread);
        model.set_course(mean_low, spread);
        model.use_frost_days(figures.frost_days);
    }
    return model;
}

void NightModel::set_course(const DailyCurve& mean_low, const Monthly<double>& spread)
{
    constexpr double kLeastSpread = 0.5;
    constexpr double kSquareBySpread = 0.111;
    constexpr double kWinterShare = 0.12;
    const DailyCurve spreads = curve_through_months(spread);
    for (std::size_t i = 0; i < kDays; ++i) {
        Day& day = days_[i];
        day.mean_low = mean_low[i];
        day.spread = std::max(spreads[i], kLeastSpread);
        const TailKnot tail = tail_at(day.mean_low);
        day.constant = tail.constant;
        day.linear = tail.linear;
        day.square = tail.square - kSquareBySpread * std::log(std::clamp(day.spread, 2.5, 8.0) / 4.5);
        day.season_share = kWinterShare * std::clamp((2.0 - day.mean_low) / 8.0, 0.0, 1.0);
        day.frost_shift = 0.0;
    }
}

void NightModel::use_lowest_values(const MonthlyFigures& figures, Monthly<double>& spread)
{
    if (!figures.years || *figures.years < 1) {
        return;
    }
    // 0.45 of the nights count as independent; of the lowest of so many, 0.69 = ln 2 is the median.
    constexpr double kIndependentShare = 0.45;
    constexpr double kExpectedBelow = 0.69;
    Monthly<std::optional<double>> ratio{};
    double sum = 0.0;
    int count = 0;
    for (std::size_t m = 0; m < kMonths; ++m) {
        if (!figures.lowest[m]) {
            continue;
        }
        const std::size_t start = first_place_of_month(m);
        const double nights = kIndependentShare * *figures.years;
        double low = figures.low[m].degrees() - 60.0;
        double high = figures.low[m].degrees() + 10.0;
        for (int halving = 0; halving < 30; ++halving) {
            const double line = (low + high) / 2.0;
            double below = 0.0;
            for (std::size_t d = start; d < start + length_of_month(m); ++d) {
                below += chance_below(d, line, line);
            }
            (nights * below < kExpectedBelow ? low : high) = line;
        }
        const double expected = (low + high) / 2.0 - reading_step_kelvins_ / 2.0;
        const double mean = figures.low[m].degrees();
        ratio[m] = std::log(
            std::clamp((mean - figures.lowest[m]->degrees()) / std::max(mean - expected, 1.0), 0.4, 2.5));
        sum += *ratio[m];
        ++count;
    }
    if (count == 0) {
        return;
    }
    const double year = sum / count * count / (count + 1.33);
    Monthly<double> rest{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        rest[m] = ratio[m] ? *ratio[m] - year : 0.0;
    }
    for (std::size_t m = 0; m < kMonths; ++m) {
        const double smooth = (rest[(m + 11) % kMonths] + rest[m] + rest[(m + 1) % kMonths]) / 3.0;
        spread[m] *= std::exp(year + 0.5 * smooth);
    }
}

void NightModel::use_frost_days(const Monthly<std::optional<double>>& frost_days)
{
    // "Below 0" ends half a step under the reading 0.
    const double effective = -reading_step_kelvins_ / 2.0;
    DailyCurve base{};
    for (std::size_t d = 0; d < kDays; ++d) {
        base[d] = barrier(d, effective, 0.0);
    }
    const auto usable = [&frost_days](std::size_t m) {
        constexpr double kFromTheEnds = 0.4;
        return frost_days[m] && *frost_days[m] >= kFromTheEnds &&
               *frost_days[m] <= static_cast<double>(length_of_month(m)) - kFromTheEnds;
    };
    Monthly<double> shift{};
    for (int sweep = 0; sweep < 6; ++sweep) {
        const DailyCurve daily = lines_between_months(shift);
        for (std::size_t m = 0; m < kMonths; ++m) {
            if (!usable(m)) {
                continue;
            }
            const std::size_t start = first_place_of_month(m);
            const auto length = static_cast<double>(length_of_month(m));
            double share = 0.0;
            double density = 0.0;
            for (std::size_t d = start; d < start + length_of_month(m); ++d) {
                share += normal_below(base[d] + daily[d]) / length;
                density += normal_density(base[d] + daily[d]) / length;
            }
            const double step = (*frost_days[m] / length - share) / std::max(density, 0.002);
            shift[m] += 0.8 * std::clamp(step, -0.3, 0.3);
        }
    }
    // A month that would need more than this contradicts the place's other figures.
    constexpr double kContradiction = 0.7;
    double sum = 0.0;
    int count = 0;
    Monthly<bool> used{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        used[m] = usable(m) && std::abs(shift[m]) <= kContradiction;
        if (used[m]) {
            shift[m] = std::clamp(shift[m], -0.5, 0.5);
            sum += shift[m];
            ++count;
        }
    }
    if (count == 0) {
        return;
    }
    for (std::size_t m = 0; m < kMonths; ++m) {
        if (!used[m]) {
            shift[m] = 0.7 * sum / count;
        }
    }
    const DailyCurve daily = lines_between_months(shift);
    for (std::size_t d = 0; d < kDays; ++d) {
        days_[d].frost_shift = daily[d];
    }
}

double NightModel::effective_degrees(Celsius line, bool bare) const
{
    if (bare && reads_whole_fahrenheit(reading_step_kelvins_)) {
        // The warmest whole degree Fahrenheit whose value in tenths of a degree Celsius is at or below it.
        const double line_tenths = line.degrees() * 10.0 + 1e-6;
        double reading = std::floor(line.fahrenheit()) + 1.0;
        while (std::round(Celsius::from_fahrenheit(reading).degrees() * 10.0) > line_tenths) {
            reading -= 1.0;
        }
        return Celsius::from_fahrenheit(reading + 0.5).degrees();
    }
    return line.degrees() + reading_step_kelvins_ / 2.0;
}

double NightModel::barrier(std::size_t place_index, double effective_degrees, double line_degrees) const
{
    const Day& day = days_[place_index];
    const double u = (effective_degrees - day.mean_low) / day.spread;
    const double w = std::clamp(u, -3.2, 0.0);
    double result = u + day.constant + day.linear * w + day.square * (w * w - 1.0);
    if (day.frost_shift != 0.0) {
        result += day.frost_shift * std::exp(-std::abs(line_degrees) / 6.0);
    }
    return result;
}

double NightModel::chance_below(std::size_t place_index, double effective_degrees, double line_degrees) const
{
    return normal_below(barrier(place_index, effective_degrees, line_degrees));
}

double NightModel::chance_at_line(std::size_t place_index, double line_degrees, NightOffset offset) const
{
    double chance = 0.0;
    for (const Node& node : offset_nodes(offset)) {
        const double line = open_air_degrees(line_degrees, offset, node);
        chance +=
            node.weight *
            chance_below(place_index, effective_degrees(Celsius::from_degrees(line), is_none(offset)), line);
    }
    return chance;
}

Celsius NightModel::mean_low(calendar::DayOfYear day) const
{
    return Celsius::from_degrees(days_[static_cast<std::size_t>(day.index())].mean_low);
}

KelvinDelta NightModel::spread(calendar::DayOfYear day) const
{
    return KelvinDelta::from_kelvins(days_[static_cast<std::size_t>(day.index())].spread);
}

Probability NightModel::chance_on(calendar::DayOfYear day, Celsius line, NightOffset offset) const
{
    return Probability::clamped(
        chance_at_line(static_cast<std::size_t>(day.index()), line.degrees(), offset));
}

Celsius NightModel::quantile(calendar::DayOfYear day, Probability chance, NightOffset offset) const
{
    const auto place = static_cast<std::size_t>(day.index());
    const Day& course = days_[place];
    const double reach = 12.0 * (course.spread + offset.spread.kelvins()) + 5.0;
    const double centre = course.mean_low + offset.mean.kelvins();
    double low = centre - reach;
    double high = centre + reach;
    for (int halving = 0; halving < 50; ++halving) {
        const double line = (low + high) / 2.0;
        double below = 0.0;
        for (const Node& node : offset_nodes(offset)) {
            const double open = open_air_degrees(line, offset, node);
            below += node.weight * chance_below(place, open + reading_step_kelvins_ / 2.0, open);
        }
        (below < chance.fraction() ? low : high) = line;
    }
    return Celsius::from_degrees((low + high) / 2.0);
}

SeasonChances NightModel::season(Celsius line, NightOffset offset) const
{
    SeasonChances result{turn_};
    const bool shares_winter =
        std::ranges::any_of(days_, [](const Day& day) { return day.season_share > 0.0; });
    const std::span<const Node> season_nodes =
        shares_winter ? std::span<const Node>{kSeasonNodes} : std::span<const Node>{kOneNode};
    const std::span<const Node> offsets = offset_nodes(offset);

    BarrierPaths forwards{kDays, offsets.size() * season_nodes.size()};
    std::vector<double> weights;
    for (std::size_t o = 0; o < offsets.size(); ++o) {
        const double open = open_air_degrees(line.degrees(), offset, offsets[o]);
        const double effective = effective_degrees(Celsius::from_degrees(open), is_none(offset));
        for (std::size_t k = 0; k < kDays; ++k) {
            const auto place = static_cast<std::size_t>(turn_.day_at(static_cast<int>(k)).index());
            const double b = barrier(place, effective, open);
            result.nights_per_year_ += offsets[o].weight * years_share(place) * normal_below(b);
            const double shared = days_[place].season_share;
            const double own = 1.0 / std::sqrt(1.0 - shared);
            const double step = std::sqrt(shared);
            for (std::size_t s = 0; s < season_nodes.size(); ++s) {
                forwards.at(k, o * season_nodes.size() + s) =
                    static_cast<float>((b - season_nodes[s].at * step) * own);
            }
        }
        for (const Node& node : season_nodes) {
            weights.push_back(offsets[o].weight * node.weight);
        }
    }
    const BarrierPaths none_before = none_so_far(forwards);
    const BarrierPaths none_after = none_so_far(forwards.reversed());
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
    const std::span<const Node> offsets = offset_nodes(offset);
    BarrierPaths paths{nights.size(), offsets.size() * kSeasonNodes.size()};
    for (std::size_t o = 0; o < offsets.size(); ++o) {
        const double open = open_air_degrees(line.degrees(), offset, offsets[o]);
        const double effective = effective_degrees(Celsius::from_degrees(open), is_none(offset));
        for (std::size_t k = 0; k < nights.size(); ++k) {
            const auto place = static_cast<std::size_t>(nights[k].index());
            const double b = barrier(place, effective, open);
            const double shared = days_[place].season_share;
            for (std::size_t s = 0; s < kSeasonNodes.size(); ++s) {
                paths.at(k, o * kSeasonNodes.size() + s) = static_cast<float>(
                    (b - kSeasonNodes[s].at * std::sqrt(shared)) / std::sqrt(1.0 - shared));
            }
        }
    }
    const BarrierPaths none = none_so_far(paths);
    double any = 0.0;
    for (std::size_t o = 0; o < offsets.size(); ++o) {
        for (std::size_t s = 0; s < kSeasonNodes.size(); ++s) {
            any += offsets[o].weight * kSeasonNodes[s].weight *
                   (1.0 - static_cast<double>(none.at(nights.size() - 1, o * kSeasonNodes.size() + s)));
        }
    }
    return Probability::clamped(any);
}

namespace {

/// Days in the gap from the last night of one season to the first of the next, by percent chance of
/// exceeding.
///
/// The two ends are taken as independent: they lie half a year apart, and the chain forgets within a few
/// weeks.
std::map<double, std::optional<int>> free_days_between(const std::array<double, kDays>& by_last,
                                                       const std::array<double, kDays>& by_first,
                                                       const SeasonTurn& turn,
                                                       std::span<const double> percents)
{
    constexpr int kLeapPlace = 60;
    // The calendar's leap day is there in one year of four only and is not counted.
    std::array<int, kDays> days_to_place{}; // Days of a common year before a place of the season.
    int leap_index = turn.season_index(calendar::DayOfYear::wrapped(kLeapPlace));
    for (int k = 0; k < static_cast<int>(kDays); ++k) {
        days_to_place[static_cast<std::size_t>(k)] = k > leap_index ? k - 1 : k;
    }
    constexpr int kCommonYear = 365;
    std::vector<double> chance_of_gap(2 * kDays, 0.0);
    double pairs = 0.0;
    for (std::size_t l = 0; l < kDays; ++l) {
        if (by_last[l] < 1e-9) {
            continue;
        }
        for (std::size_t f = 0; f < kDays; ++f) {
            const int gap = std::max(0, kCommonYear - days_to_place[l] + days_to_place[f]);
            chance_of_gap[static_cast<std::size_t>(gap)] += by_last[l] * by_first[f];
        }
    }
    pairs = std::accumulate(chance_of_gap.begin(), chance_of_gap.end(), 0.0);
    std::map<double, std::optional<int>> result;
    for (const double percent : percents) {
        double longer = 1.0; // Pairs that lack an end are longer than all.
        std::optional<int> value;
        for (std::size_t gap = 0; gap < chance_of_gap.size() && 1.0 - pairs <= percent / 100.0; ++gap) {
            longer -= chance_of_gap[gap];
            if (longer <= percent / 100.0 + 1e-9) {
                value = static_cast<int>(gap);
                break;
            }
        }
        result[percent] = value;
    }
    return result;
}

} // namespace

ThresholdDates NightModel::dates(Celsius line, std::span<const double> further_percents) const
{
    constexpr double kNeverShare = 0.999;
    const SeasonChances chances = season(line);
    ThresholdDates result{line,
                          ThresholdState::Ordinary,
                          chances.nights_per_year(),
                          {std::nullopt, chances.share_without(), {}},
                          {std::nullopt, chances.share_without(), {}},
                          {}};
    if (no_season_) {
        result.state = ThresholdState::NoSeason;
    } else if (chances.share_without().fraction() > kNeverShare) {
        result.state = ThresholdState::Never;
    } else if (falls_in_every_month(line)) {
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
        std::array<double, kDays> by_last{};
        std::array<double, kDays> by_first{};
        for (std::size_t k = 0; k < kDays; ++k) {
            // The last night falls on k where there is one after k - 1 and none after k.
            const double after_before = k == 0 ? chances.on_or_before_.back() : chances.after_[k - 1];
            by_last[k] = std::max(0.0, after_before - chances.after_[k]);
            by_first[k] = chances.on_or_before_[k] - (k == 0 ? 0.0 : chances.on_or_before_[k - 1]);
        }
        result.free_days = free_days_between(by_last, by_first, turn_, percents);
    }
    return result;
}

bool NightModel::falls_in_every_month(Celsius line) const
{
    for (std::size_t m = 0; m < kMonths; ++m) {
        const auto start = calendar::DayOfYear::wrapped(static_cast<int>(first_place_of_month(m)) + 1);
        if (chance_within(start, static_cast<int>(length_of_month(m)), line).fraction() < 0.5) {
            return false;
        }
    }
    return true;
}

Celsius NightModel::lowest_of_season() const
{
    // The mean of the lowest is the sum over lines of the chance that it lies above, less the part below the
    // first line: mean = bottom + integral of share_without from bottom up. The chance is a smooth step some
    // kelvins wide, so that the trapezium rule with 2 K steps is exact to a few thousandths.
    constexpr double kStep = 2.0;
    constexpr std::size_t kLinesAtOnce = 5;
    const Day& coldest =
        *std::ranges::min_element(days_, {}, [](const Day& day) { return day.mean_low - 2.5 * day.spread; });
    double top = coldest.mean_low + 2.0 * coldest.spread;
    double bottom = top;
    double sum = 0.0;
    bool certain = false;
    while (!certain && top - bottom < 150.0) {
        BarrierPaths paths{kDays, kLinesAtOnce * kSeasonNodes.size()};
        for (std::size_t l = 0; l < kLinesAtOnce; ++l) {
            const double line = bottom - kStep * static_cast<double>(l + 1);
            const double effective = line + reading_step_kelvins_ / 2.0;
            for (std::size_t k = 0; k < kDays; ++k) {
                const auto place = static_cast<std::size_t>(turn_.day_at(static_cast<int>(k)).index());
                const double b = barrier(place, effective, line);
                const double shared = days_[place].season_share;
                for (std::size_t s = 0; s < kSeasonNodes.size(); ++s) {
                    paths.at(k, l * kSeasonNodes.size() + s) = static_cast<float>(
                        (b - kSeasonNodes[s].at * std::sqrt(shared)) / std::sqrt(1.0 - shared));
                }
            }
        }
        const BarrierPaths none = none_so_far(paths);
        for (std::size_t l = 0; l < kLinesAtOnce; ++l) {
            double without = 0.0;
            for (std::size_t s = 0; s < kSeasonNodes.size(); ++s) {
                without += kSeasonNodes[s].weight *
                           static_cast<double>(none.at(kDays - 1, l * kSeasonNodes.size() + s));
            }
            sum += kStep * (1.0 - without);
            certain = without > 1.0 - 1e-4;
        }
        bottom -= kStep * kLinesAtOnce;
    }
    // mean = top - integral of the chance of a season at or below; at the top that chance is 1 (half a step).
    return Celsius::from_degrees(top - sum - kStep / 2.0);
}

} // namespace lathhouse::climate
