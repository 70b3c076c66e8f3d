#include "core/plan/emergence.h"

#include "core/climate/normal.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
namespace {

constexpr double kStep = 5.0; // Of the table's temperatures.

std::optional<double> by_thermal_time(const plants::SeedKind& kind, Celsius mix)
{
    if (!kind.thermal_time || mix > kind.thermal_time->up_to) {
        return std::nullopt;
    }
    return std::max(0.0, (mix - kind.thermal_time->base).kelvins() / kind.thermal_time->degree_days);
}

EmergenceRate by_table(const plants::SeedKind& kind, Celsius mix)
{
    const double place = mix.degrees() / kStep;
    const auto last = static_cast<double>(kind.rate_at.size() - 1);
    if (place < 0.0 || place > last) {
        return {0.0, 0.0, EmergenceBasis::Table};
    }
    const auto below = static_cast<std::size_t>(std::min(std::floor(place), last - 1.0));
    const double share = place - static_cast<double>(below);
    const auto& low = kind.rate_at[below];
    const auto& high = kind.rate_at[below + 1];
    const auto same = [](double rate, EmergenceBasis basis) { return EmergenceRate{rate, rate, basis}; };
    if (low && (share == 0.0 || (high && (*low > 0.0) == (*high > 0.0)))) {
        return same(share == 0.0 ? *low : *low + share * (*high - *low), EmergenceBasis::Table);
    }
    if (high && share == 1.0) {
        return same(*high, EmergenceBasis::Table);
    }
    const bool rising = high && *high > 0.0; // The cool end of what was counted.
    if (rising) {
        if (const auto rate = by_thermal_time(kind, mix)) {
            return same(std::min(*rate, *high), EmergenceBasis::ThermalTime);
        }
    }
    if (low && high) {
        return same(*low + share * (*high - *low), EmergenceBasis::Table);
    }
    const bool within = mix >= kind.germ_least && mix <= kind.germ_most;
    const auto nearest = low ? low : high;
    return same(within && nearest ? *nearest : 0.0, EmergenceBasis::Table);
}

EmergenceRate by_typical_days(const plants::SeedKind& kind, Celsius mix)
{
    const double quick = 1.0 / kind.days_typical.low;
    const double slow = 1.0 / kind.days_typical.high;
    if (mix < kind.germ_least || mix > kind.germ_most) {
        return {0.0, 0.0, EmergenceBasis::TypicalDays};
    }
    const Celsius base = kind.germ_least - KelvinDelta::from_kelvins(2.0);
    const double share = std::min(1.0, (mix - base).kelvins() / (kind.germ_best_low - base).kelvins());
    return {quick * share, slow * share, EmergenceBasis::TypicalDays};
}

} // namespace

EmergenceRate emergence_rate(const plants::SeedKind& kind, Celsius mix)
{
    if (kind.has_table()) {
        return by_table(kind, mix);
    }
    if (kind.thermal_time) {
        if (const auto rate = by_thermal_time(kind, mix); rate && mix >= kind.germ_least) {
            return {*rate, *rate, EmergenceBasis::ThermalTime};
        }
    }
    return by_typical_days(kind, mix);
}

std::optional<EmergenceDays> emergence_days(const plants::SeedKind& kind, Celsius mix)
{
    const auto error = KelvinDelta::from_kelvins(kMixError);
    const auto here = emergence_rate(kind, mix);
    if (!(here.slow > 0.0)) {
        return std::nullopt;
    }
    double quick = here.quick;
    double slow = here.slow;
    for (const Celsius near : {mix - error, mix + error}) {
        const auto rate = emergence_rate(kind, near);
        if (rate.slow > 0.0) {
            quick = std::max(quick, rate.quick);
            slow = std::min(slow, rate.slow);
        }
    }
    constexpr double kRounding = 1e-9; // 1 / (1 / 7) must not become eight days.
    return EmergenceDays{std::max(1, static_cast<int>(std::floor(1.0 / quick + kRounding))),
                         static_cast<int>(std::ceil(1.0 / slow - kRounding)), here.basis};
}

double share_emerged(const plants::SeedKind& kind, Celsius mix, int days)
{
    constexpr double kSpread = 0.25;
    const auto rate = emergence_rate(kind, mix);
    if (!(rate.slow > 0.0) || days <= 0) {
        return 0.0;
    }
    const double middle = 2.0 / (rate.quick + rate.slow);
    return climate::normal_below(std::log(days / middle) / kSpread);
}

} // namespace lathhouse::plan
