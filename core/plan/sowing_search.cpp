#include "core/plan/sowing_search.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
namespace {

/// How much hotter than the kind's best growth allows a day may be on average (common practice: the published
/// ranges call themselves general guidelines).
constexpr double kHeatGrace = 2.0;
constexpr int kEstablishing = 21; ///< Days in which heavy rain does harm.
/// Kinds that take years are looked after for so long at first.
constexpr double kYearsAreLong = 365.0;
constexpr double kFirstSeason = 90.0;
/// Days outdoors for one day of full growth beyond which nobody would wait, and so many besides.
constexpr double kSlowest = 2.5;
constexpr double kSlowestDays = 45.0;

double of_pace(plants::Range range, SowingPace pace)
{
    switch (pace) {
    case SowingPace::Quick:
        return range.low;
    case SowingPace::Usual:
        return (range.low + range.high) / 2.0;
    case SowingPace::Slow:
        break;
    }
    return range.high;
}

/// For each day the first from it on that `is`; the end where none is.
template <class Is>
std::vector<int> next_days(Is is)
{
    std::vector<int> next(SowingClimate::kDays + 2, SowingClimate::kDays + 1);
    for (int day = SowingClimate::kDays; day >= 0; --day) {
        const auto index = static_cast<std::size_t>(day);
        next[index] = is(day) ? day : next[index + 1];
    }
    return next;
}

} // namespace

SowingSearch::SowingSearch(const plants::SeedKind& kind, const SowingClimate& climate, Probability risk,
                           SowingPace pace, RainRule rain, int extra_weeks)
    : kind_(&kind), climate_(&climate), risk_(risk), pace_(pace), rain_(rain), extra_weeks_(extra_weeks),
      days_indoors_(kind.weeks_indoors ? static_cast<int>(std::lround(
                                             7.0 * (of_pace(*kind.weeks_indoors, SowingPace::Usual) + extra_weeks)))
                                       : 0)
{
    const double base = kind.growth_base().degrees();
    const double best = kind.growth_best.degrees();
    grown_.reserve(SowingClimate::kDays + 1);
    double grown = 0.0;
    for (int day = 0; day <= SowingClimate::kDays; ++day) {
        grown_.push_back(grown);
        if (climate.day_length_hours(day) >= kShortDayHours) {
            grown += std::clamp((climate.mean(day).degrees() - base) / (best - base), 0.0, 1.0);
        }
    }
    next_cool_ = next_days([&](int day) { return climate.usual_low(day) <= kind.safe_night; });
    const Celsius hot = kind.growth_most + KelvinDelta::from_kelvins(kHeatGrace);
    next_hot_ = next_days([&](int day) { return climate.mean(day) > hot; });
    next_wet_ = next_days([&](int day) { return climate.rain_of_month(day).value_or(0.0) > kWetMonthMillimetres; });
}

bool SowingSearch::is_raised(SowingMethod method) const
{
    return method == SowingMethod::Indoors ? kind_->weeks_indoors.has_value() : kind_->soil_warm.has_value();
}

double SowingSearch::needed(SowingMethod method, SowingPace pace) const
{
    const double days = of_pace(kind_->ready_days, pace);
    if (days >= kYearsAreLong) {
        return kFirstSeason;
    }
    const double usual_indoors =
        kind_->weeks_indoors ? 7.0 * of_pace(*kind_->weeks_indoors, SowingPace::Usual) : 0.0;
    const bool from_sowing = kind_->ready_from == plants::ReadyFrom::Sowing;
    double wanted = days;
    if (method == SowingMethod::Indoors) {
        // Extra weeks indoors are days grown, whichever day the row counts from.
        wanted -= (from_sowing ? usual_indoors : 0.0) + 7.0 * extra_weeks_;
    } else if (!from_sowing) {
        wanted += usual_indoors;
    }
    constexpr double kAtLeast = 7.0; // Any plant takes a week to settle.
    return std::max(wanted, kAtLeast);
}

std::optional<int> SowingSearch::ready_day(SowingMethod method, int day, SowingPace pace) const
{
    const double wanted = grown_[static_cast<std::size_t>(day)] + needed(method, pace);
    const auto found = std::ranges::lower_bound(grown_, wanted - 1e-9);
    if (found == grown_.end()) {
        return std::nullopt;
    }
    return static_cast<int>(found - grown_.begin());
}

std::optional<int> SowingSearch::usual_ready(SowingMethod method, int day) const
{
    return ready_day(method, day, SowingPace::Usual);
}

std::optional<DateSpan> SowingSearch::ready(SowingMethod method, int day) const
{
    if (kind_->ready_days.low >= kYearsAreLong) {
        const int sown = method == SowingMethod::Indoors ? day - days_indoors_ : day;
        return DateSpan{climate_->date(sown + static_cast<int>(kind_->ready_days.low)),
                        climate_->date(sown + static_cast<int>(kind_->ready_days.high))};
    }
    const auto quick = ready_day(method, day, SowingPace::Quick);
    const auto slow = ready_day(method, day, SowingPace::Slow);
    if (!quick || !slow) {
        return std::nullopt;
    }
    return DateSpan{climate_->date(*quick), climate_->date(*slow)};
}

bool SowingSearch::slow_sort_holds(SowingMethod method, int day, Probability risk) const
{
    const auto slow = ready_day(method, day, SowingPace::Slow);
    return slow && climate_->nights_hold(day, *slow, kind_->damaging_night(), risk);
}

bool SowingSearch::is_wet(SowingMethod method, int day) const
{
    const auto ready = ready_day(method, day, pace_);
    return next_wet_[static_cast<std::size_t>(day)] <= day + kEstablishing ||
           (ready && next_wet_[static_cast<std::size_t>(*ready)] == *ready);
}

std::set<SowingLimit> SowingSearch::limits(SowingMethod method, int day) const
{
    std::set<SowingLimit> against;
    const auto index = static_cast<std::size_t>(day);
    const auto& least = method == SowingMethod::Indoors ? kind_->soil_least : kind_->soil_warm;
    if (least && climate_->soil(day) < *least) {
        against.insert(SowingLimit::ColdSoil);
    }
    if (method == SowingMethod::Outdoors && climate_->soil(day) > kind_->germ_most) {
        against.insert(SowingLimit::HotSoil);
    }
    if (minds_rain() && is_wet(method, day)) {
        against.insert(SowingLimit::Rain);
    }
    const auto ready = ready_day(method, day, pace_);
    const double longest = kSlowest * needed(method, pace_) + kSlowestDays;
    if (!ready || *ready - day > longest) {
        against.insert(SowingLimit::SlowGrowth);
    }
    const int until = ready ? std::min(*ready, day + static_cast<int>(longest)) : day + static_cast<int>(longest);
    const int last = std::min(until, SowingClimate::kDays);
    if (next_cool_[index + 1] <= last) {
        against.insert(SowingLimit::CoolNights);
    }
    if (next_hot_[index] <= last) {
        against.insert(SowingLimit::Heat);
    }
    if (!climate_->nights_hold(day, last, kind_->damaging_night(), risk_)) {
        against.insert(SowingLimit::DamagingNight);
    }
    return against;
}

std::optional<SowingRun> SowingSearch::run_from(SowingMethod method, int start) const
{
    if (!is_raised(method)) {
        return std::nullopt;
    }
    for (int first = start; first < start + kDaysOfAYear; ++first) {
        if (!limits(method, first).empty()) {
            continue;
        }
        int last = first;
        while (last - first < kDaysOfAYear && limits(method, last + 1).empty()) {
            ++last;
        }
        return SowingRun{first, last, last - first >= kDaysOfAYear};
    }
    return std::nullopt;
}

NoDate SowingSearch::diagnose() const
{
    const auto method = kind_->weeks_indoors ? SowingMethod::Indoors : SowingMethod::Outdoors;
    NoDate found{SowingLimit::SlowGrowth,
                 0,
                 static_cast<int>(std::lround(needed(method, pace_))),
                 climate_->soil(0),
                 climate_->usual_low(0),
                 climate_->mean(0),
                 {}};
    // Which limit no day of the year passes by itself: nights and heat of that day only, since how long it
    // must hold is what SlowGrowth stands for.
    bool soil_does = false;
    bool night_does = false;
    bool heat_does = false;
    int stretch = 0;
    const auto& least = method == SowingMethod::Indoors ? kind_->soil_least : kind_->soil_warm;
    for (int day = 0; day < 2 * kDaysOfAYear; ++day) {
        const auto index = static_cast<std::size_t>(day);
        const bool soil = !least || climate_->soil(day) >= *least;
        const bool night = next_cool_[index] != day && climate_->nights_hold(day, day + 14, kind_->damaging_night(), risk_);
        const bool heat = next_hot_[index] != day;
        soil_does = soil_does || soil;
        night_does = night_does || night;
        heat_does = heat_does || heat;
        stretch = night && heat ? stretch + 1 : 0;
        found.longest_stretch_days = std::min(std::max(found.longest_stretch_days, stretch), kDaysOfAYear);
        found.warmest_soil = std::max(found.warmest_soil, climate_->soil(day));
        found.mildest_usual_low = std::max(found.mildest_usual_low, climate_->usual_low(day));
        found.coolest_day_mean = std::min(found.coolest_day_mean, climate_->mean(day));
    }
    if (!heat_does) {
        found.reason = SowingLimit::Heat;
    } else if (!night_does) {
        found.reason = SowingLimit::CoolNights;
    } else if (!soil_does) {
        found.reason = SowingLimit::ColdSoil;
    }
    return found;
}

} // namespace lathhouse::plan
