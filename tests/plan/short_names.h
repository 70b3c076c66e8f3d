#pragma once

#include "core/climate/monthly_figures.h"
#include "core/plants/plant_kind.h"
#include "core/plants/seed_kind.h"

#include <cmath>
#include <numbers>
#include <string_view>

// What many tests of this room write.

namespace lathhouse::plan {

inline Celsius celsius(double degrees)
{
    return Celsius::from_degrees(degrees);
}

inline const plants::PlantKind& plant_kind(std::string_view name)
{
    return *plants::PlantReference::built_in().find(name).value();
}

inline const plants::SeedKind& seed_kind(std::string_view name)
{
    return *plants::SeedReference::built_in().find(name).value();
}

/// Twelve months on a cosine; warmest_month 1..12.
inline climate::Monthly<Celsius> wave(double mean, double swing, int warmest_month)
{
    auto months = climate::in_every_month(celsius(mean));
    for (int month = 0; month < 12; ++month) {
        months[static_cast<std::size_t>(month)] =
            celsius(mean + swing * std::cos((month + 1 - warmest_month) * 2.0 * std::numbers::pi / 12.0));
    }
    return months;
}

} // namespace lathhouse::plan
