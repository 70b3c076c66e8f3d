#include "core/home/shelter.h"

namespace lathhouse::home {

climate::NightOffset prior_offset(SpotKind kind)
{
    const auto offset = [](double mean, double spread) {
        return climate::NightOffset{KelvinDelta::from_kelvins(mean), KelvinDelta::from_kelvins(spread)};
    };
    switch (kind) {
    case SpotKind::Indoors:
        return offset(0.0, 0.0);
    case SpotKind::Open:
        return offset(0.5, 0.8);
    case SpotKind::Roofed:
        return offset(1.5, 1.0);
    case SpotKind::Screened:
        return offset(1.0, 1.0);
    case SpotKind::Glazed:
        return offset(3.0, 1.5);
    }
    return {};
}

} // namespace lathhouse::home
