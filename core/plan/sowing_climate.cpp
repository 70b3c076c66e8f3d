#include "core/plan/sowing_climate.h"

#include "core/climate/ground.h"
#include "core/climate/month_curve.h"
#include "core/sky/radiation.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

std::array<double, 366> curve_of(const climate::Monthly<double>& months)
{
    return climate::curve_through_months(months);
}

} // namespace

SowingClimate::SowingClimate(const climate::PlaceClimate& place, calendar::Date today,
                             climate::NightOffset shelter)
    : today_(today), shelter_(shelter), chances_(climate::PlaceNights::of(place))
{
    places_.reserve(kDays + 1);
    for (int day = 0; day <= kDays; ++day) {
        places_.push_back(calendar::DayOfYear::of(date(day)).place());
    }
    const double warmer = shelter.mean.kelvins();
    climate::Monthly<double> mean{};
    climate::Monthly<double> soil{};
    const auto ground =
        climate::ground_temperature(place.monthly, Metres::from_metres(kSeedBedMetres));
    for (std::size_t m = 0; m < 12; ++m) {
        mean[m] = (place.monthly.low[m].degrees() + place.monthly.high[m].degrees()) / 2.0 + warmer;
        soil[m] = ground[m].mean.degrees() + warmer;
    }
    means_ = curve_of(mean);
    soils_ = curve_of(soil);
    for (int of_year = 1; of_year <= 366; ++of_year) {
        const auto index = static_cast<std::size_t>(of_year - 1);
        lows_[index] =
            chances_.nights().mean_low(calendar::DayOfYear::wrapped(of_year)).degrees() + warmer;
        lengths_[index] = sky::daylight_hours(place.position.latitude, std::min(of_year, 365));
    }
    if (std::ranges::all_of(place.rain, [](const auto& rain) { return rain.has_value(); })) {
        climate::Monthly<double> rain{};
        if (shelter == climate::NightOffset{}) {
            for (std::size_t m = 0; m < 12; ++m) {
                rain[m] = place.rain[m]->millimetres();
            }
        }
        // Straight lines: a smooth curve through a monsoon's onset would swing below and above it.
        rains_ = climate::lines_between_months(rain);
    }
}

std::optional<double> SowingClimate::rain_of_month(int day) const
{
    return rains_ ? std::optional{at(*rains_, day)} : std::nullopt;
}

double SowingClimate::expected_nights(int from, int to, Celsius line) const
{
    auto& sums = sums_[line.degrees()];
    if (sums.empty()) {
        Year on{};
        for (int of_year = 1; of_year <= 366; ++of_year) {
            on[static_cast<std::size_t>(of_year - 1)] =
                chances_.place_nights()
                    .chance_on(calendar::DayOfYear::wrapped(of_year), line, shelter_)
                    .fraction();
        }
        sums.reserve(kDays + 1);
        double sum = 0.0;
        for (int day = 0; day <= kDays; ++day) {
            sum += at(on, day);
            sums.push_back(sum);
        }
    }
    return sums[static_cast<std::size_t>(to)] - sums[static_cast<std::size_t>(from)];
}

bool SowingClimate::nights_hold(int from, int to, Celsius line, Probability risk) const
{
    if (to <= from) {
        return true;
    }
    const auto day = [&](int ahead) { return calendar::DayOfYear::wrapped(place_of(ahead)); };
    if (!has_seasons()) {
        // No chance is greater than the number of nights to expect.
        if (expected_nights(from, to, line) <= risk.fraction()) {
            return true;
        }
        return chances_.place_nights().chance_within(day(from + 1), std::min(to - from, 365), line, shelter_) <= risk;
    }
    const auto& season = chances_.season(line, shelter_);
    const auto whole = season.share_without().complement();
    const auto turns = [&](int ahead) {
        // 29 February is no turn, so every year has exactly one.
        return day(ahead) == season.turn().last_day();
    };
    const auto before_turn = turns(from) ? whole : season.after(day(from));
    int turn = from + 1;
    while (turn < to && !turns(turn)) {
        ++turn;
    }
    if (turn >= to) {
        return std::min(before_turn, season.on_or_before(day(to))) <= risk;
    }
    const auto after_turn = to - turn > 365 ? whole : season.on_or_before(day(to));
    return before_turn <= risk && after_turn <= risk;
}

Probability SowingClimate::chance_after(int day, Celsius line) const
{
    const auto of_year = calendar::DayOfYear::wrapped(place_of(day));
    return has_seasons() ? chances_.season(line, shelter_).after(of_year)
                         : chances_.place_nights().chance_within(of_year, 365, line, shelter_);
}

} // namespace lathhouse::plan
