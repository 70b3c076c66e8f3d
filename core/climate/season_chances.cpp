#include "core/climate/season_chances.h"

#include "core/climate/day_shift.h"
#include "core/climate/table_sizes.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>
#include <vector>

namespace lathhouse::climate {

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

std::map<double, std::optional<int>> SeasonChances::free_days(std::span<const double> percents) const
{
    std::array<double, kDays> by_last{};
    std::array<double, kDays> by_first{};
    for (std::size_t k = 0; k < kDays; ++k) {
        // The last night falls on k where there is one after k - 1 and none after k.
        const double after_before = k == 0 ? on_or_before_.back() : after_[k - 1];
        by_last[k] = std::max(0.0, after_before - after_[k]);
        by_first[k] = on_or_before_[k] - (k == 0 ? 0.0 : on_or_before_[k - 1]);
    }
    constexpr int kLeapPlace = 60;
    // The calendar's leap day is there in one year of four only and is not counted.
    std::array<int, kDays> days_to_place{}; // Days of a common year before a place of the season.
    const int leap_index = turn_.season_index(calendar::DayOfYear::wrapped(kLeapPlace));
    for (int k = 0; k < static_cast<int>(kDays); ++k) {
        days_to_place[static_cast<std::size_t>(k)] = k > leap_index ? k - 1 : k;
    }
    constexpr int kCommonYear = 365;
    std::vector<double> chance_of_gap(2 * kDays, 0.0);
    for (std::size_t l = 0; l < kDays; ++l) {
        if (by_last[l] < 1e-9) {
            continue;
        }
        for (std::size_t f = 0; f < kDays; ++f) {
            const int gap = std::max(0, kCommonYear - days_to_place[l] + days_to_place[f]);
            chance_of_gap[static_cast<std::size_t>(gap)] += by_last[l] * by_first[f];
        }
    }
    const double pairs = std::accumulate(chance_of_gap.begin(), chance_of_gap.end(), 0.0);
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

SeasonChances SeasonChances::moved(const DayShift& beginning, const DayShift& end,
                                   double nights_per_year) const
{
    const double any = on_or_before_.back();
    const auto read = [](const std::array<double, kDays>& chances, double place, double before_all,
                         double after_all) {
        const double under = std::floor(place);
        const auto at = [&](double whole) {
            if (whole < 0.0) {
                return before_all;
            }
            return whole >= static_cast<double>(kDays) ? after_all : chances[static_cast<std::size_t>(whole)];
        };
        return at(under) + (place - under) * (at(under + 1.0) - at(under));
    };
    SeasonChances result{turn_};
    result.nights_per_year_ = nights_per_year;
    for (std::size_t k = 0; k < kDays; ++k) {
        const auto place = static_cast<double>(k);
        result.on_or_before_[k] = read(on_or_before_, beginning.model_place(place), 0.0, any);
        result.after_[k] = read(after_, end.model_place(place), any, 0.0);
    }
    result.on_or_before_.back() = any;
    result.after_.back() = 0.0;
    return result;
}

} // namespace lathhouse::climate
