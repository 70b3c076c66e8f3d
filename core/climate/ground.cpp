#include "core/climate/ground.h"

#include "core/climate/month_curve.h"

#include <cmath>
#include <numbers>

namespace lathhouse::climate {
namespace {

constexpr double kDiffusivity = 5e-7; ///< m2/s
constexpr double kSecondsOfDay = 86400.0;
constexpr double kSecondsOfYear = 365.25 * kSecondsOfDay;
constexpr int kHarmonics = 3;

double damping_depth_metres(double period_seconds)
{
    return std::sqrt(kDiffusivity * period_seconds / std::numbers::pi); // sqrt(2 k / w), w = 2 pi / period.
}

Monthly<double> means_of_air(const MonthlyFigures& figures)
{
    Monthly<double> mean{};
    for (std::size_t m = 0; m < 12; ++m) {
        mean[m] = (figures.low[m].degrees() + figures.high[m].degrees()) / 2.0;
    }
    return mean;
}

/// Monthly means of the yearly wave at the depth.
Monthly<double> yearly_wave(const Monthly<double>& mean, double depth_metres)
{
    const DailyCurve air = curve_through_months(mean);
    constexpr double kDays = 366.0;
    DailyCurve ground{};
    double level = 0.0;
    for (const double day : air) {
        level += day / kDays;
    }
    ground.fill(level);
    for (int k = 1; k <= kHarmonics; ++k) {
        double cosine = 0.0;
        double sine = 0.0;
        const auto angle = [k](std::size_t d) {
            return 2.0 * std::numbers::pi * k * (static_cast<double>(d) + 0.5) / kDays;
        };
        for (std::size_t d = 0; d < air.size(); ++d) {
            cosine += 2.0 / kDays * air[d] * std::cos(angle(d));
            sine += 2.0 / kDays * air[d] * std::sin(angle(d));
        }
        const double down = depth_metres / damping_depth_metres(kSecondsOfYear / k);
        for (std::size_t d = 0; d < air.size(); ++d) {
            ground[d] +=
                std::exp(-down) * (cosine * std::cos(angle(d) - down) + sine * std::sin(angle(d) - down));
        }
    }
    return means_of_months(ground);
}

template <class Make>
Monthly<DayRange> ranges(Make make)
{
    return {make(0), make(1), make(2), make(3), make(4),  make(5),
            make(6), make(7), make(8), make(9), make(10), make(11)};
}

DayRange range_about(double mean, double swing)
{
    return {Celsius::from_degrees(mean), Celsius::from_degrees(mean - swing),
            Celsius::from_degrees(mean + swing)};
}

double half_range(const MonthlyFigures& figures, std::size_t month)
{
    return (figures.high[month] - figures.low[month]).kelvins() / 2.0;
}

} // namespace

Monthly<DayRange> ground_temperature(const MonthlyFigures& figures, Metres depth)
{
    const auto means = yearly_wave(means_of_air(figures), depth.metres());
    const double daily = std::exp(-depth.metres() / damping_depth_metres(kSecondsOfDay));
    return ranges([&](std::size_t m) { return range_about(means[m], daily * half_range(figures, m)); });
}

double pot_swing(Metres diameter)
{
    constexpr double kHeatCapacity = 2.1e6; // J per m3 and kelvin
    constexpr double kExchange = 10.0;      // W per m2 and kelvin
    // A cylinder as high as wide: volume pi d^3 / 4, surface pi d^2 + pi d^2 / 2.
    const double volume_by_surface = diameter.metres() / 6.0;
    const double lag = kHeatCapacity * volume_by_surface / kExchange;
    const double turn = 2.0 * std::numbers::pi * lag / kSecondsOfDay;
    return 1.0 / std::sqrt(1.0 + turn * turn);
}

Monthly<DayRange> pot_temperature(const MonthlyFigures& figures, Metres diameter)
{
    const auto means = means_of_air(figures);
    const double swing = pot_swing(diameter);
    return ranges([&](std::size_t m) { return range_about(means[m], swing * half_range(figures, m)); });
}

double pot_water_litres(Millimetres reference_evapotranspiration_of_day, Metres width)
{
    // One millimetre on a square metre is a litre.
    return reference_evapotranspiration_of_day.millimetres() * std::numbers::pi / 4.0 * width.metres() *
           width.metres();
}

} // namespace lathhouse::climate
