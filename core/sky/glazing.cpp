#include "core/sky/glazing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lathhouse::sky {

double glass_transmittance(int panes, Angle incidence)
{
    constexpr double kIndex = 1.526;
    constexpr double kAbsorbedStraight = 0.03;
    if (panes <= 0) {
        return 1.0;
    }
    const double outside = std::clamp(incidence.radians(), 0.0, 0.5 * std::numbers::pi);
    const double inside = std::asin(std::sin(outside) / kIndex);
    double across = (kIndex - 1.0) / (kIndex + 1.0); // Straight on, both polarisations are alike.
    across *= across;
    double along = across;
    if (outside > 1e-6) {
        const auto square = [](double value) { return value * value; };
        across = square(std::sin(inside - outside) / std::sin(inside + outside));
        along = square(std::tan(inside - outside) / std::tan(inside + outside));
    }
    const auto through = [panes](double reflected) {
        return (1.0 - reflected) / (1.0 + (2.0 * panes - 1.0) * reflected);
    };
    const double unabsorbed = std::pow(1.0 - kAbsorbedStraight, panes / std::cos(inside));
    return unabsorbed * 0.5 * (through(across) + through(along));
}

double glass_transmittance_of_sky(int panes)
{
    return glass_transmittance(panes, Angle::from_degrees(60.0));
}

} // namespace lathhouse::sky
