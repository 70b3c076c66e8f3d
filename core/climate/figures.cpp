#include "core/climate/figures.h"

#include "core/calendar/date.h"
#include "core/calendar/month_length.h"
#include "core/climate/month_curve.h"
#include "core/climate/normal.h"
#include "core/sky/evapotranspiration.h"
#include "core/sky/radiation.h"
#include "core/sky/sun.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {

namespace {

/// Spread of the daily highs about their course, kelvins.
Monthly<double> spread_of_highs(const MonthlyFigures& figures, const DailyCurve& mean_high)
{
    const Monthly<double> slope = variance_within_months(mean_high);
    Monthly<double> result{};
    for (std::size_t m = 0; m < 12; ++m) {
        const double high = figures.high[m].degrees();
        const double range = (figures.high[m] - figures.low[m]).kelvins();
        const auto log_of = [m](const std::optional<Monthly<KelvinDelta>>& spread) {
            return std::log(std::max((*spread)[m].kelvins(), 0.5));
        };
        double logarithm = 1.5352 + 0.0417 * range - 0.0259 * high;
        if (figures.mean_spread && figures.low_spread) {
            logarithm = 0.8454 + 1.1989 * log_of(figures.mean_spread) + 0.0161 * range - 0.0078 * high -
                        0.6024 * log_of(figures.low_spread);
        } else if (figures.mean_spread) {
            logarithm = 0.4847 + 0.7301 * log_of(figures.mean_spread) + 0.0192 * range - 0.0049 * high;
        } else if (figures.low_spread) {
            logarithm = 0.662 + 0.0321 * range - 0.0121 * high + 0.5081 * log_of(figures.low_spread);
        }
        const double given = std::exp(logarithm);
        result[m] = std::sqrt(std::max(given * given - slope[m], 0.25));
    }
    return result;
}

} // namespace

DailyCurve chances_of_heat(const MonthlyFigures& figures)
{
    // A reading above 30 C: 30.1 C where tenths are read, 87 F where whole degrees Fahrenheit are.
    const double line = 30.0 + figures.reading_step.kelvins() / 2.0;
    Monthly<double> high{};
    std::ranges::transform(figures.high, high.begin(), [](Celsius month) { return month.degrees(); });
    const DailyCurve mean_high = curve_through_months(high);
    const DailyCurve spread = curve_through_months(spread_of_highs(figures, mean_high));
    DailyCurve chances{};
    for (std::size_t d = 0; d < mean_high.size(); ++d) {
        chances[d] = normal_below((mean_high[d] - line) / std::max(spread[d], 0.5));
    }
    return chances;
}

double heat_days(const MonthlyFigures& figures)
{
    constexpr std::size_t kLeapDay = 59;
    const DailyCurve chances = chances_of_heat(figures);
    double days = 0.0;
    for (std::size_t d = 0; d < chances.size(); ++d) {
        days += d == kLeapDay ? chances[d] / 4.0 : chances[d];
    }
    return days;
}

std::string hardiness_zone(Celsius mean_lowest)
{
    constexpr double kLowestFahrenheit = -60.0;
    constexpr double kHalfZone = 5.0;
    constexpr int kHalfZones = 26;
    // A hair's breadth keeps a limit that came through Celsius on its own side.
    const double place = std::floor((mean_lowest.fahrenheit() - kLowestFahrenheit + 1e-9) / kHalfZone);
    const int half = static_cast<int>(std::clamp(place, 0.0, kHalfZones - 1.0));
    return std::to_string(half / 2 + 1) + (half % 2 == 0 ? 'a' : 'b');
}

Monthly<DailyRadiation> months_of_radiation(const MonthlyFigures& figures, Latitude latitude,
                                            Metres elevation)
{
    constexpr std::array<int, 12> kBefore{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    constexpr std::array<int, 6> kSample{3, 8, 13, 18, 23, 28};
    Monthly<DailyRadiation> months = in_every_month(DailyRadiation::from_megajoules(0.0));
    for (std::size_t m = 0; m < months.size(); ++m) {
        for (const int day : kSample) {
            months[m] = months[m] + sky::radiation_from_temperature_range(
                                        sky::extraterrestrial_radiation(latitude, kBefore[m] + day),
                                        figures.low[m], figures.high[m], elevation) /
                                        static_cast<double>(kSample.size());
        }
    }
    return months;
}

Monthly<MonthOfLight> months_of_light(const MonthlyFigures& figures, Position position, Metres elevation)
{
    constexpr int kCommonYear = 2023; // Any: a year's figures differ from another's by less than their error.
    const auto radiation = months_of_radiation(figures, position.latitude, elevation);
    const auto month_of_light = [&](std::size_t m) {
        constexpr std::array<int, 6> kSample{3, 8, 13, 18, 23, 28};
        double length = 0.0;
        double water = 0.0;
        for (const int day : kSample) {
            const calendar::Date date{static_cast<unsigned short>(kCommonYear),
                                      static_cast<unsigned short>(m + 1), static_cast<unsigned short>(day)};
            const auto extraterrestrial =
                sky::extraterrestrial_radiation(position.latitude, calendar::ordinal_of_year(date));
            length += sky::sun_day(position, date).day_length_seconds / kSample.size();
            water += sky::hargreaves_evapotranspiration(figures.low[m], figures.high[m], extraterrestrial)
                         .millimetres() /
                     kSample.size();
        }
        return MonthOfLight{length, sky::daily_light(radiation[m]),
                            Millimetres::from_millimetres(water * calendar::kMeanDaysOfMonths[m])};
    };
    return {month_of_light(0), month_of_light(1), month_of_light(2),  month_of_light(3),
            month_of_light(4), month_of_light(5), month_of_light(6),  month_of_light(7),
            month_of_light(8), month_of_light(9), month_of_light(10), month_of_light(11)};
}

} // namespace lathhouse::climate
