#include "core/climate/koppen.h"

#include <algorithm>

namespace lathhouse::climate {
namespace {

struct HalfYear {
    double temperature = 0.0; ///< Sum.
    double rain = 0.0;        ///< Sum.
    double driest = 1e9;
    double wettest = 0.0;
};

/// April to September, or October to March.
HalfYear half_year(const Monthly<Celsius>& mean, const Monthly<Millimetres>& rain, bool from_april)
{
    HalfYear half;
    for (std::size_t m = 0; m < 12; ++m) {
        if ((m >= 3 && m <= 8) == from_april) {
            half.temperature += mean[m].degrees();
            half.rain += rain[m].millimetres();
            half.driest = std::min(half.driest, rain[m].millimetres());
            half.wettest = std::max(half.wettest, rain[m].millimetres());
        }
    }
    return half;
}

} // namespace

std::string koppen_class(const Monthly<Celsius>& mean, const Monthly<Millimetres>& rain)
{
    const HalfYear april = half_year(mean, rain, true);
    const HalfYear october = half_year(mean, rain, false);
    const bool april_is_summer = april.temperature >= october.temperature;
    const HalfYear& summer = april_is_summer ? april : october;
    const HalfYear& winter = april_is_summer ? october : april;
    const double year_rain = summer.rain + winter.rain;
    const double year_mean = (summer.temperature + winter.temperature) / 12.0;
    const double coldest = std::ranges::min(mean).degrees();
    const double warmest = std::ranges::max(mean).degrees();
    const auto months_of_ten =
        std::ranges::count_if(mean, [](Celsius month) { return month.degrees() >= 10.0; });

    constexpr double kMostOfRain = 0.7;
    const double dryness = 2.0 * year_mean + (winter.rain >= kMostOfRain * year_rain   ? 0.0
                                              : summer.rain >= kMostOfRain * year_rain ? 28.0
                                                                                       : 14.0);
    if (year_rain < 10.0 * dryness) {
        return std::string{year_rain < 5.0 * dryness ? "BW" : "BS"} + (year_mean >= 18.0 ? "h" : "k");
    }
    if (coldest >= 18.0) {
        const double driest = std::min(summer.driest, winter.driest);
        return driest >= 60.0 ? "Af" : driest >= 100.0 - year_rain / 25.0 ? "Am" : "Aw";
    }
    if (warmest <= 10.0) {
        return warmest > 0.0 ? "ET" : "EF";
    }
    const bool dry_summer = summer.driest < 40.0 && summer.driest < winter.wettest / 3.0;
    const bool dry_winter = winter.driest < summer.wettest / 10.0;
    std::string name = coldest > 0.0 ? "C" : "D";
    name += dry_summer && (!dry_winter || summer.rain < winter.rain) ? "s" : dry_winter ? "w" : "f";
    name += warmest >= 22.0 ? "a" : months_of_ten >= 4 ? "b" : name[0] == 'D' && coldest < -38.0 ? "d" : "c";
    return name;
}

Monthly<Celsius> mean_temperatures(const MonthlyFigures& figures)
{
    const auto mean = [&figures](std::size_t m) {
        return figures.low[m] + KelvinDelta::from_kelvins((figures.high[m] - figures.low[m]).kelvins() / 2.0);
    };
    return {mean(0), mean(1), mean(2), mean(3), mean(4),  mean(5),
            mean(6), mean(7), mean(8), mean(9), mean(10), mean(11)};
}

} // namespace lathhouse::climate
